package web_test

import (
	"bytes"
	"encoding/json"
	"fmt"
	"net/http"
	"net/url"
	"os"
	"regexp"
	"strconv"
	"strings"
	"sync/atomic"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

// A formField is a field as a page's description has it.
type formField struct {
	Name, Kind string
	List       bool
	Fields     []formField
}

// A described question: its form, what is said of it here, and its example.
type describedQuestion struct {
	Path           string
	Units, Outline bool
	Fields         []formField
	made           struct {
		Example map[string]string
		Always  map[string]any
		Texts   []struct{ Path string }
	}
}

func described(t *testing.T, question string) describedQuestion {
	t.Helper()
	name := strings.ReplaceAll(question, "/", ".")
	var q describedQuestion
	for file, into := range map[string]any{"../../gen/forms/" + name + ".json": &q, "questions/" + name + ".json": &q.made} {
		data, err := os.ReadFile(file)
		if err == nil {
			err = json.Unmarshal(data, into)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	return q
}

// step is one part of a path: a name, and its place where it is a list of groups.
var step = regexp.MustCompile(`^(\w+)(?:\[(\d+)\])?$`)

// body is the example as the service is asked it, without any code of the pages.
func (q describedQuestion) body(t *testing.T) map[string]any {
	t.Helper()
	body := map[string]any{}
	for path, text := range q.made.Example {
		fields, at := q.Fields, body
		for _, part := range strings.Split(path, ".") {
			found := step.FindStringSubmatch(part)
			var field formField
			for _, f := range fields {
				if f.Name == found[1] {
					field = f
				}
			}
			fields = field.Fields
			switch {
			case field.Kind == "group" && field.List:
				i, err := strconv.Atoi(found[2])
				if err != nil {
					t.Fatalf("%s: %v", path, err)
				}
				items, _ := at[field.Name].([]any)
				for len(items) <= i {
					items = append(items, map[string]any{})
				}
				at[field.Name] = items
				at = items[i].(map[string]any)
			case field.Kind == "group":
				inner, ok := at[field.Name].(map[string]any)
				if !ok {
					inner = map[string]any{}
					at[field.Name] = inner
				}
				at = inner
			default:
				at[field.Name] = field.value(text)
			}
		}
	}
	for name, value := range q.made.Always {
		body[name] = value
	}
	return body
}

func (f formField) value(text string) any {
	one := func(text string) any {
		switch f.Kind {
		case "number", "whole":
			return json.Number(text)
		case "flag":
			return text == "true"
		default:
			return text
		}
	}
	if !f.List {
		return one(text)
	}
	split := strings.Fields(text)
	if f.Kind == "text" {
		split = strings.Split(text, "\n")
	}
	var all []any
	for _, part := range split {
		all = append(all, one(part))
	}
	return all
}

// post asks the service, and gives what a page must show of its answer: the sentence, the
// directions without the colon of headings, and texts that are answers themselves.
func (q describedQuestion) post(t *testing.T, base, unit string) []string {
	t.Helper()
	body := q.body(t)
	if q.Units {
		body["display_unit"] = unit
	}
	asked, err := json.Marshal(body)
	if err != nil {
		t.Fatal(err)
	}
	reply, err := http.Post(base+q.Path, "application/json", bytes.NewReader(asked))
	if err != nil {
		t.Fatal(err)
	}
	defer reply.Body.Close()
	var answer map[string]any
	if err := json.NewDecoder(reply.Body).Decode(&answer); err != nil || reply.StatusCode != http.StatusOK {
		t.Fatalf("%s: HTTP %d %v %v", asked, reply.StatusCode, err, answer)
	}
	shown := []string{answer["summary"].(string)}
	directions, _ := answer["directions"].([]any)
	for _, d := range directions {
		shown = append(shown, strings.TrimSuffix(named.ReplaceAllString(d.(string), ""), ":"))
	}
	for _, text := range q.made.Texts {
		if said, ok := answer[text.Path].(string); ok && said != "" {
			shown = append(shown, said)
		}
	}
	return shown
}

// named is a method that a direction names for programs.
var named = regexp.MustCompile(` \(Plan\w+\)`)

// query is the example as a page's address carries it.
func (q describedQuestion) query() string {
	values := url.Values{}
	for path, text := range q.made.Example {
		values.Set(path, text)
	}
	return values.Encode()
}

const (
	// shown are the same things as they stand on the page.
	shownOnPage = `JSON.stringify([document.querySelector('.summary').textContent,
	...[...document.querySelectorAll('.directions h3, .directions li label > span:last-child')].map((e) => e.textContent),
	...[...document.querySelectorAll('.texts pre')].map((e) => e.textContent)])`
	// everything opens what is folded, for what it says to be read.
	everything = `document.querySelectorAll('details').forEach((d) => { d.open = true; })`
	// codeWords are what no visitor should meet: names of fields and of values.
	codeWords = `(document.querySelector('main').innerText
	.match(/\[object|undefined|NaN|\b[a-z]+_[a-z_]+\b|\b[A-Z]{2,}_[A-Z_]+\b|\b(Plan|Compute|Check|List|Estimate|Convert)[A-Z]\w+/g)
	?? []).join(' ')`
	// inCentimetres is what a form that is asked in inches still says of centimetres.
	inCentimetres = `[...document.querySelectorAll('.asks .unit, .asks .hint, .asks label, .answer .key dd, .answer td, .answer dd')]
	.filter((e) => /\d ?cm\b|\bin cm\b|^cm$/.test(e.innerText.replace('4 in is not 10 cm', '')))
	.map((e) => e.innerText.slice(0, 80)).join(' | ')`
	// numberTyped is a number of the form that may be typed: that none is too much for.
	numberTyped = `[...document.querySelectorAll('.asks input[inputmode]')]
	.find((e) => e.checkVisibility() && !e.disabled)?.dataset.path ?? ''`
)

// Every page answers its example as the service does, in centimetres and in inches, in
// words that no visitor has to look up, and says beside a field what is wrong with it.
func TestAnswersOfEveryPage(t *testing.T) {
	in := browser(t)
	var numbers atomic.Int32
	t.Run("pages", func(t *testing.T) {
		// What takes time is the waiting for a pause in typing: tabs wait beside one another.
		const tabs = 2
		for first := range tabs {
			t.Run(strconv.Itoa(first), func(t *testing.T) {
				t.Parallel()
				// Each has a service, and so an origin: the choice of the unit is kept by origin.
				p, base := open(t, in), serve(t, "")
				call(p, emulation.SetFocusEmulationEnabled, emulation.SetFocusEmulationEnabledParams{Enabled: true})
				all := questions(t)
				for i := first; i < len(all); i += tabs {
					if checkPage(p, t, base, all[i]) {
						numbers.Add(1)
					}
				}
				p.checked(true)
			})
		}
	})
	if n := numbers.Load(); n < 30 {
		t.Errorf("only %d of all pages have a number to be typed", n)
	}
}

// checkPage checks a page, and tells whether a number could be typed there.
func checkPage(p *tab, t *testing.T, base, question string) bool {
	t.Helper()
	q := described(t, question)
	p.run(chromedp.EmulateViewport(1200, 900), chromedp.Navigate(base+"/ask/"+question+"?"+q.query()))
	p.until(answered)
	q.check(p, base, question, "DISPLAY_UNIT_CM")
	if q.Units {
		p.run(chromedp.Evaluate[chromedp.Void](`document.querySelector('input[name=unit][value=in]').click()`))
		q.check(p, base, question, "DISPLAY_UNIT_IN")
		p.run(chromedp.Evaluate[chromedp.Void](everything))
		if found := p.text(inCentimetres); found != "" {
			t.Errorf("%s, in inches, still says %s", question, found)
		}
		p.run(chromedp.Evaluate[chromedp.Void](`document.querySelector('input[name=unit][value=cm]').click()`))
		p.until(answered)
	}
	p.run(chromedp.Evaluate[chromedp.Void](everything))
	if found := p.text(codeWords); found != "" {
		t.Errorf("%s speaks of %s", question, found)
	}
	path := p.text(numberTyped)
	if path == "" {
		return false
	}
	fault := fmt.Sprintf(`(() => { const f = document.querySelector('[data-path="%s"]');
		return f.getAttribute('aria-invalid') &&
		document.getElementById(f.getAttribute('aria-describedby').split(' ').at(-1)).textContent; })()`, path)
	p.run(typed(path, "many"))
	p.until(`(` + fault + ` ?? '').startsWith('Cannot be read as a number')`)
	p.run(typed(path, "123456789"))
	p.until(`/^Must be |^.{12,}/.test(` + fault + ` ?? '') && !(` + fault + `).startsWith('Cannot')`)
	if question == questions(t)[0] {
		p.picture("refused")
	}
	return true
}

// check compares what a page shows with what the service answers.
func (q describedQuestion) check(p *tab, base, question, unit string) {
	p.Helper()
	want := q.post(p.TB.(*testing.T), base, unit)
	t := p.TB.(*testing.T)
	p.run(chromedp.Evaluate[chromedp.Void](`window.wanted = ` + quote(t, want[0])))
	p.until(answered + ` && (document.querySelector('.summary').textContent === wanted ||
	performance.now() > (window.late ??= performance.now() + 15000))`)
	var got []string
	if err := json.Unmarshal([]byte(p.text(shownOnPage)), &got); err != nil {
		p.Fatal(err)
	}
	if strings.Join(got, "\n") != strings.Join(want, "\n") {
		p.Errorf("%s, %s: the page shows\n%s\nthe service answers\n%s", question, unit, strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}
