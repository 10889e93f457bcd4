package web_test

import (
	"bytes"
	"encoding/json"
	"net/http"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/evanw/esbuild/pkg/api"
)

// looking draws an answer as a page does, and says what is wrong with the drawing: sums that
// did not come out, words that lie beside the canvas or on one another, a caption that says
// nothing.
const looking = `window.look = (answer, made, gauge, unit, width) => {
	const root = document.querySelector('.answer');
	root.style.width = width + 'px';
	const shown = new drawing.Answer(root, made, { unit, mark: '' }, () => {});
	shown.show(answer, [], { label: () => '', value: (name) => name });
	const wrong = [];
	const figure = root.querySelector('figure');
	if (!figure) return answer.outline?.lines.length ? ['nothing is drawn'] : [];
	const caption = figure.querySelector('figcaption').textContent;
	if (/NaN|undefined|Infinity/.test(figure.outerHTML)) wrong.push('no number: ' + caption);
	if (!/^[A-Z0-9].{15,}\.$/s.test(caption) || /[ ,;:.][,;:.]|  /.test(caption)) wrong.push('the caption is ' + caption);
	const svg = figure.querySelector('svg');
	const turned = svg.querySelectorAll('.mark').length;
	if (answer.turn_count && turned && turned !== answer.turn_count) wrong.push(turned + ' turns are marked of ' + answer.turn_count);
	if (answer.turn_count && !caption.startsWith(answer.turn_count + ' turning point')) wrong.push('the caption is ' + caption);
	if (answer.turn_count && turned) window.marked = (window.marked ?? 0) + 1;
	const { width: right, height: foot } = svg.viewBox.baseVal;
	const boxes = [...svg.querySelectorAll('text')].map((text) => [text.textContent, text.getBBox()]);
	for (const [text, b] of boxes) {
		if (b.x < -1 || b.y < -1 || b.x + b.width > right + 1 || b.y + b.height > foot + 2) wrong.push(text + ' is cut off');
	}
	boxes.forEach(([text, a], i) => boxes.slice(i + 1).forEach(([other, b]) => {
		const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
		const up = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
		if (across > 2 && up > 6) wrong.push(text + ' lies on ' + other);
	}));
	// What is counted beside a length is what the gauge makes of it, as near as the length is said.
	for (const [text, length, sign, count, of] of svg.textContent.matchAll(/([\d.]+) (cm|in)(?:, )?(\d+) (sts|rows|rnds)/g)) {
		const perCm = (of === 'sts' ? gauge.stitches : gauge.rows) / (gauge.over_cm ?? 10);
		const cm = length * (sign === 'in' ? 2.54 : 1);
		if (!(Math.abs(cm * perCm - count) < 0.06 * perCm + 0.001)) wrong.push(text + ' at ' + perCm + ' to the cm');
		window.compared = (window.compared ?? 0) + 1;
	}
	return wrong;
};`

// Every plan of the wire cases is drawn, on a desk and on a telephone, in both units, with its
// words where they can be read.
func TestDrawings(t *testing.T) {
	t.Parallel() // it mostly waits for the browser
	in, base := browser(t), serve(t, "")
	made := api.Build(api.BuildOptions{
		Stdin:  &api.StdinOptions{Contents: `export { Answer } from './answer.js';`, ResolveDir: "files"},
		Bundle: true, Format: api.FormatIIFE, GlobalName: "drawing",
	})
	if len(made.Errors) > 0 {
		t.Fatal(made.Errors)
	}
	p := open(t, in)
	p.run(chromedp.EmulateViewport(1200, 900), chromedp.Navigate(base+"/ask/gauge/computeCastOn"))
	p.until(answered)
	// A plain declaration would not outlast the evaluation.
	script := strings.Replace(string(made.OutputFiles[0].Contents), "var drawing =", "window.drawing =", 1)
	p.run(chromedp.Evaluate[chromedp.Void](script + looking))
	drawn := map[string]int{}
	for _, file := range wireCases(t) {
		question, form := formOf(t, file.Method)
		if !form.Outline || file.Response == nil {
			continue
		}
		var asks map[string]any
		if err := json.Unmarshal(file.Request, &asks); err != nil {
			t.Fatal(err)
		}
		delete(asks, "fields")
		asks["with_outline"] = true
		answer := posted(t, base+form.Path, asks)
		own, err := os.ReadFile("questions/" + strings.ReplaceAll(question, "/", ".") + ".json")
		if err != nil {
			t.Fatal(err)
		}
		gauge, err := json.Marshal(asks["gauge"])
		if err != nil {
			t.Fatal(err)
		}
		for _, look := range []string{"'cm', 600", "'in', 343"} {
			if wrong := p.text(`look(` + answer + `, ` + string(own) + `, ` + string(gauge) + `, ` + look + `).join('; ')`); wrong != "" {
				t.Errorf("%s, %s: %s", file.path, look, wrong)
			}
			if *screenshots != "" && look == "'cm', 600" {
				p.picture("drawn-" + strings.ReplaceAll(strings.TrimSuffix(file.path, ".json"), "/", "-"))
			}
		}
		drawn[question]++
	}
	if len(drawn) < 22 {
		t.Errorf("plans were drawn of %d methods: %v", len(drawn), drawn)
	}
	if n, err := strconv.Atoi(p.text("compared")); err != nil || n < 100 {
		t.Errorf("only %d counts were compared, %v", n, err)
	}
	if n, err := strconv.Atoi(p.text("marked")); err != nil || n < 16 {
		t.Errorf("the turns of only %d wedges were marked, %v", n, err)
	}
	p.checked(false)
}

// A wireFile is a case of the wire: a question, and what it is answered.
type wireFile struct {
	Method            string
	Request, Response json.RawMessage
	path              string
}

func wireCases(t *testing.T) []wireFile {
	t.Helper()
	names, err := filepath.Glob("../../testdata/*/*.json")
	if err != nil || len(names) < 100 {
		t.Fatal(len(names), err)
	}
	var files []wireFile
	for _, name := range names {
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		var file wireFile
		// Other things lie there too.
		if json.Unmarshal(data, &file) == nil && file.Request != nil {
			file.path = strings.TrimPrefix(name, "../../testdata/")
			files = append(files, file)
		}
	}
	return files
}

// formOf is the question of a method, as addresses write it, and its form.
func formOf(t *testing.T, method string) (question string, form describedQuestion) {
	t.Helper()
	_, name, _ := strings.Cut(method, "/")
	found, err := filepath.Glob("../../gen/forms/*." + strings.ToLower(name[:1]) + name[1:] + ".json")
	if err != nil || len(found) != 1 {
		t.Fatal(method, found, err)
	}
	data, err := os.ReadFile(found[0])
	if err == nil {
		err = json.Unmarshal(data, &form)
	}
	if err != nil {
		t.Fatal(err)
	}
	return strings.Replace(strings.TrimSuffix(filepath.Base(found[0]), ".json"), ".", "/", 1), form
}

// posted is the answer to a question, as text.
func posted(t *testing.T, address string, body any) string {
	t.Helper()
	asked, err := json.Marshal(body)
	if err != nil {
		t.Fatal(err)
	}
	reply, err := http.Post(address, "application/json", bytes.NewReader(asked))
	if err != nil {
		t.Fatal(err)
	}
	defer reply.Body.Close()
	var b bytes.Buffer
	if _, err := b.ReadFrom(reply.Body); err != nil || reply.StatusCode != http.StatusOK {
		t.Fatalf("%s: HTTP %d %v %s", asked, reply.StatusCode, err, b.String())
	}
	return b.String()
}
