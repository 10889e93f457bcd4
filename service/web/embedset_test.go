package web_test

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// settingHost is a page of elements and a script that hears by their ids what they answer
// and refuse, and what is said to its developer.
const settingHost = `<!doctype html><html lang="en"><title>A shop</title><link rel="icon" href="data:,">
<script>window.heard = {}; window.refused = {}; window.said = [];
const error = console.error; console.error = (...words) => said.push(words.join(' '));
document.addEventListener('knitmath-answer', (e) => { heard[e.target.id] = e.detail; });
document.addEventListener('knitmath-refusal', (e) => { refused[e.target.id] = e.detail; });</script>
<script src="%s/embed/v1.js" async></script>%s</html>`

// embedded shows elements of given attributes, called a, b, c and so on, on a page elsewhere.
func embedded(t *testing.T, allowed bool, elements ...string) *tab {
	t.Helper()
	in := browser(t)
	var base, all string
	for i, attributes := range elements {
		all += fmt.Sprintf(`<knitmath-question id="%c" %s></knitmath-question>`, 'a'+i, attributes)
	}
	shop := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		fmt.Fprintf(w, settingHost, base, all)
	}))
	t.Cleanup(shop.Close)
	base = serve(t, "https://shop.example")
	if allowed {
		base = serve(t, shop.URL)
	}
	p := open(t, in)
	p.run(chromedp.Navigate(shop.URL))
	p.until(fmt.Sprintf(`Object.keys({ ...heard, ...refused }).length === %d`, len(elements)))
	return p
}

// What a page sets and the question does not have is refused, as of a link to the JSON face,
// and told to the page, to its developer and in the element: the example that stands in its
// place would be taken for what was meant.
func TestEmbeddedSetWrongly(t *testing.T) {
	wrong := [][2]string{
		{`question="yarn/estimateYarn" locked="put_up.ballm=400&amp;put_up.ball_g=100"`, "put_up.ballm"},
		{`question="yarn/estimateYarn" preset="ball_m=400"`, "ball_m"},
		{`question="yarn/estimateYarn" locked="put_up=400"`, "put_up"},
		{`question="yarn/estimateYarn" preset="pieces.times=2"`, "pieces.times"},
		{`question="yarn/estimateYarn" preset="pieces[100].times=2"`, "pieces[100].times"},
		{`question="yarn/estimateYarn" preset="gauge[0].stitches=22"`, "gauge[0].stitches"},
		{`question="gauge/computeCastOn" locked="fields=summary"`, "fields"},
	}
	elements := make([]string, 0, len(wrong))
	for _, element := range wrong {
		elements = append(elements, element[0])
	}
	p := embedded(t, true, elements...)
	for i, element := range wrong {
		id := string(rune('a' + i))
		got := p.text(fmt.Sprintf(`heard.%[1]s === undefined && refused.%[1]s.violations.map((v) => v.field + v.reason)`, id))
		if got != element[1]+"UNKNOWN_FIELD" {
			t.Errorf("%s: %s", element[0], got)
		}
		shown := p.text(`document.getElementById('` + id + `').shadowRoot.textContent`)
		if !strings.Contains(shown, "“"+element[1]+"”") {
			t.Errorf("%s: shows %.200s", element[0], shown)
		}
		if said := p.text(`said.join('\n')`); !strings.Contains(said, "“"+element[1]+"”") {
			t.Errorf("%s: the console says %s", element[0], said)
		}
	}
	p.checked(false)
}

// Of what a page sets in part, nothing else is an example, nor of what excludes it.
func TestEmbeddedSetInPart(t *testing.T) {
	for _, c := range []struct{ attributes, want string }{
		{`question="yarn/estimateYarn" locked="put_up.ball_m=400"`, `put_up.ball_g REQUIRED`},
		{`question="yarn/estimateYarn" locked="gauge.stitches=22"`, `gauge.rows REQUIRED`},
		{`question="yarn/estimateYarn" units="in" locked="gauge.stitches=22&amp;gauge.rows=30"`, `{"stitches":22,"rows":30}`},
		{`question="yarn/estimateYarn" locked="stitch_gauge.stitches=22"`, `undefined`},
		{`question="gauge/computeCastOn" locked="width_cm=22,5"`, `{"stitches":22,"rows":30}`},
	} {
		p := embedded(t, true, c.attributes)
		got := p.text(`heard.a ? JSON.stringify(heard.a.values.gauge) : refused.a.violations.map((v) => v.field + ' ' + v.reason)`)
		if got != c.want {
			t.Errorf("%s: %s, want %s", c.attributes, got, c.want)
		}
	}
}

// A link may carry numbers as people type them; what is no number is said to be none.
func TestEmbeddedNumbers(t *testing.T) {
	for value, want := range map[string]string{"22,5": "22.5", "22 1/2": "22.5",
		"1,000": "width_cm WRONG_TYPE", "wide": "width_cm WRONG_TYPE"} {
		p := embedded(t, true, `question="gauge/computeCastOn" locked="width_cm=`+value+`"`)
		if got := p.text(`heard.a ? heard.a.values.width_cm : refused.a.violations.map((v) => v.field + ' ' + v.reason)`); got != want {
			t.Errorf("%s: %s, want %s", value, got, want)
		}
	}
}

// Why nothing can be shown is said to whoever made the page.
func TestEmbeddedCauses(t *testing.T) {
	for _, c := range []struct {
		attributes string
		allowed    bool
		want       string
	}{
		{`question="yarn/noSuch"`, true, "there is no question “yarn/noSuch”"},
		{`question="yarn/estimateYarn"`, false, "-allowed-origins"},
		{`question="yarn/estimateYarn" units="inch"`, true, "units"},
	} {
		p := embedded(t, c.allowed, c.attributes)
		if got := p.text(`said.join('\n')`); !strings.Contains(got, c.want) {
			t.Errorf("%s: the console says %q", c.attributes, got)
		}
	}
}
