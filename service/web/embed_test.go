package web_test

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// hostPage is a shop's page: styles that would spoil everything, two questions with
// the shop's yarn and gauge, and a script that hears the answers. %s is the service.
const hostPage = `<!doctype html><html lang="en"><title>A shop</title><link rel="icon" href="data:,">
<style>input, label, .summary { display: none !important } knitmath-question { --knitmath-accent: #6b2d73; margin: 1rem }
knitmath-question::part(summary) { font-weight: 700 }</style>
<h1>Our wool</h1>
<script>window.heard = []; document.addEventListener('knitmath-answer', (e) => heard.push(e.detail));</script>
<script src="%[1]s/embed/v1.js" async></script>
<knitmath-question id="yarn" question="yarn/estimateYarn" locked="put_up.ball_m=115&amp;put_up.ball_g=50"
 preset="gauge.stitches=22&amp;gauge.rows=30&amp;pieces[0].counted.stitches=110&amp;pieces[0].counted.rows=180"></knitmath-question>
<knitmath-question id="row" question="shaping/planEvenSpacing" units="in"></knitmath-question></html>`

// Two questions stand on a page of another origin, and neither they nor the page
// disturb one another.
func TestEmbedded(t *testing.T) {
	in := browser(t)
	var base string
	shop := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		fmt.Fprintf(w, hostPage, base)
	}))
	defer shop.Close()
	base = serve(t, shop.URL)
	p := open(t, in)
	p.run(chromedp.EmulateViewport(700, 900), chromedp.Navigate(shop.URL))
	p.until(`heard.some((d) => d.question === 'yarn/estimateYarn') && heard.some((d) => d.question === 'shaping/planEvenSpacing')`)
	p.picture("embedded")
	if got := p.text(`heard.find((d) => d.question === 'yarn/estimateYarn').answer.ball_count > 0`); got != "true" {
		t.Errorf("balls for the basket: %s", got)
	}
	field := `document.getElementById('%s').shadowRoot.querySelector('[data-path="%s"]')`
	if got := p.text(fmt.Sprintf(`getComputedStyle(`+field+`).display + `+field+`.disabled + `+field+`.value`,
		"yarn", "put_up.ball_m", "yarn", "put_up.ball_m", "yarn", "put_up.ball_m")); got != "blocktrue115" && got != "inline-blocktrue115" {
		t.Errorf("the locked length is %s", got)
	}
	const summary = `document.getElementById('row').shadowRoot.querySelector('.summary')`
	if got := p.text(`getComputedStyle(` + summary + `).fontWeight`); got != "700" {
		t.Errorf("the host's ::part gives %s", got)
	}
	if got := p.text(`document.querySelectorAll('.summary').length`); got != "0" {
		t.Errorf("the page sees %s summaries", got)
	}
	want := asked(t, base, "/v1/shaping:planEvenSpacing?start_stitches=96&end_stitches=88")
	if got := p.text(summary + `.textContent`); got != want {
		t.Errorf("the row says %s, want %s", got, want)
	}
	typing := `heard.length = 0; (() => { const f = ` + field + `; f.value = '80'; f.dispatchEvent(new Event('input')); })()`
	p.run(chromedp.Evaluate[chromedp.Void](fmt.Sprintf(typing, "row", "end_stitches")))
	p.until(`heard.length === 1 && heard[0].answer.change_count === 16 && heard[0].values.end_stitches === 80`)
	p.checked(false)
}

// fightingHost is a page that resets everything, hides whatever is asked with, hands down what
// nobody could read, counts in tens, and lets in nothing but the script. %[1]s is the service.
const fightingHost = `<!doctype html><html lang="en"><title>A shop</title><link rel="icon" href="data:,">
<link rel="stylesheet" href="/fight.css"><main><h1>Wool</h1>
<knitmath-question id="yarn" question="yarn/estimateYarn" locked="put_up.ball_m=115&amp;put_up.ball_g=50"></knitmath-question>
<knitmath-question id="taper" question="shaping/planTaper"></knitmath-question></main>
<script src="%[1]s/embed/v1.js" async></script></html>`

const fightingStyle = `* { all: unset } button, input, select, label, fieldset, svg, summary { display: none !important }
html, body, main, h1, knitmath-question { display: block } html { font-size: 62.5% }
body { letter-spacing: .3em; text-transform: uppercase; white-space: nowrap; font-size: 40px; line-height: 3; text-align: right;
direction: rtl; cursor: wait; visibility: hidden; color: red } div, p, section, form { position: absolute !important }`

// However a page fights, what stands in the elements is as it stands elsewhere.
func TestEmbeddedInAFightingPage(t *testing.T) {
	in := browser(t)
	var base string
	shop := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if r.URL.Path == "/fight.css" {
			w.Header().Set("Content-Type", "text/css")
			fmt.Fprint(w, fightingStyle)
			return
		}
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		w.Header().Set("Content-Security-Policy",
			fmt.Sprintf("default-src 'none'; script-src %[1]s; connect-src %[1]s; style-src 'self'; img-src data:", base))
		fmt.Fprintf(w, fightingHost, base)
	}))
	defer shop.Close()
	base = serve(t, shop.URL)
	p := open(t, in)
	p.run(chromedp.EmulateViewport(700, 900), chromedp.Navigate(shop.URL))
	inside := func(id string) string {
		return `document.getElementById('` + id + `').shadowRoot?.querySelector('.summary')`
	}
	p.until(inside("yarn") + `?.textContent && ` + inside("taper") + `?.textContent`)
	p.picture("embedded-fought")
	for style, want := range map[string]string{"letterSpacing": "normal", "textTransform": "none", "whiteSpace": "normal",
		"fontSize": "20.8px", "lineHeight": "29.12px", "textAlign": "start", "direction": "ltr",
		"cursor": "auto", "visibility": "visible", "position": "static"} {
		if got := p.text(`getComputedStyle(` + inside("taper") + `).` + style); got != want {
			t.Errorf("%s is %s, want %s", style, got, want)
		}
	}
	got := p.text(`['input', 'button', 'select', 'svg', 'summary'].filter((s) =>
		!['yarn', 'taper'].some((id) => [...document.getElementById(id).shadowRoot.querySelectorAll(s)].some((e) => e.getClientRects().length)))`)
	if got != "" {
		t.Errorf("not to be seen: %s", got)
	}
	checkReflow(p, "a page that fights")
	p.checked(false)
}

// A page that is not on the list gets no answer, and says so in the element.
func TestEmbeddedElsewhere(t *testing.T) {
	in, base := browser(t), serve(t, "https://shop.example")
	shop := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		fmt.Fprintf(w, hostPage, base)
	}))
	defer shop.Close()
	p := open(t, in)
	p.run(chromedp.Navigate(shop.URL))
	p.until(`document.getElementById('row').shadowRoot?.textContent.includes('cannot be shown')`)
}

// plainHost is a shop's page without styles of its own, which says the right things
// to people who do not see it. %[1]s is the service.
const plainHost = `<!doctype html><html lang="en"><meta name="viewport" content="width=device-width">
<meta name="color-scheme" content="light dark">
<title>A shop</title><link rel="icon" href="data:,">
<script>window.heard = []; window.refused = [];
document.addEventListener('knitmath-answer', (e) => heard.push(e.detail));
document.addEventListener('knitmath-refusal', (e) => refused.push(e.detail));</script>
<script src="%[1]s/embed/v1.js" async></script>
<main><h1>Our wool</h1><knitmath-question id="first" question="yarn/estimateYarn"
 locked="put_up.ball_m=115&amp;put_up.ball_g=50"></knitmath-question>
<knitmath-question id="second" question="shaping/planTaper"></knitmath-question>
<knitmath-question id="third" question="yarn/estimateYarn" units="in"></knitmath-question></main></html>`

// reachedInside notes what the keyboard comes to within the elements, and what shows it.
const reachedInside = `window.reached = new Set(); window.unseen = [];
document.addEventListener('focusin', () => {
	let at = document.activeElement;
	while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
	reached.add(at);
	if (getComputedStyle(at).outlineStyle === 'none') unseen.push(at.outerHTML.slice(0, 100));
}, true);
for (const host of document.querySelectorAll('knitmath-question')) host.shadowRoot.addEventListener('focusin', () => {
	const at = host.shadowRoot.activeElement;
	reached.add(at);
	if (getComputedStyle(at).outlineStyle === 'none') unseen.push(at.outerHTML.slice(0, 100));
});`

// operatedInside are all things within the elements that do something.
const operatedInside = `[...document.querySelectorAll('knitmath-question')].flatMap((host) =>
	[...host.shadowRoot.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex="0"]')])
	.filter((e) => e.checkVisibility() && !e.disabled)`

// The keyboard alone comes to everything in both elements and out of them again, and on
// paper is the answer without what only a screen has a use for.
func TestEmbeddedByKeyboardAndOnPaper(t *testing.T) {
	in := browser(t)
	var base string
	shop := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		fmt.Fprintf(w, plainHost, base)
	}))
	defer shop.Close()
	base = serve(t, shop.URL)
	p := open(t, in)
	p.run(chromedp.EmulateViewport(900, 900), chromedp.Navigate(shop.URL))
	p.until(`heard.length >= document.querySelectorAll("knitmath-question").length`)
	p.run(chromedp.Evaluate[chromedp.Void](reachedInside))
	n, err := strconv.Atoi(p.text(operatedInside + ".length"))
	if err != nil || n < 20 {
		t.Fatalf("%d things to operate, %v", n, err)
	}
	p.run(chromedp.KeyEvent(strings.Repeat(kb.Tab, n+1)))
	if missed := p.text(operatedInside + `.filter((e) => !reached.has(e)).map((e) => e.outerHTML.slice(0, 100)).join('; ')`); missed != "" {
		t.Errorf("the keyboard does not come to %s", missed)
	}
	if unseen := p.text(`unseen.join('; ')`); unseen != "" {
		t.Errorf("nothing shows that the keyboard is at %s", unseen)
	}
	if inside := p.text(`document.activeElement?.tagName`); inside == "KNITMATH-QUESTION" {
		t.Error("the keyboard is caught in an element")
	}
	call(p, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: "print"})
	seen := `['.summary', '.drawing', '.directions', 'button', '.given'].map((s) =>
		[...document.getElementById('second').shadowRoot.querySelectorAll(s)].some((e) => e.getClientRects().length > 0))`
	if got := p.text(seen); got != "true,true,true,false,false" {
		t.Errorf("printed: %s", got)
	}
	p.picture("embedded-print")
	p.checked(false)
}

// A page that is light whatever the visitor's machine likes keeps its elements light.
func TestEmbeddedInALightPage(t *testing.T) {
	in := browser(t)
	var base string
	shop := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		fmt.Fprintf(w, hostPage, base)
	}))
	defer shop.Close()
	base = serve(t, shop.URL)
	p := open(t, in)
	call(p, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: []*emulation.MediaFeature{
		{Name: "prefers-color-scheme", Value: "dark"}}})
	p.run(chromedp.EmulateViewport(700, 900), chromedp.Navigate(shop.URL))
	p.until(`heard.length >= document.querySelectorAll("knitmath-question").length`)
	field := `getComputedStyle(document.getElementById('row').shadowRoot.querySelector('input')).backgroundColor`
	if got := p.text(field); got != "rgb(255, 255, 255)" {
		t.Errorf("a field on a light page is %s", got)
	}
	p.checked(false)
}

// An element keeps nobody out, in the light and in the dark, and fits the narrowest
// screen; of what it cannot answer it tells the page too.
func TestEmbeddedForEverybody(t *testing.T) {
	in, axe := browser(t), readAxe(t)
	var base string
	shop := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		fmt.Fprintf(w, plainHost, base)
	}))
	defer shop.Close()
	base = serve(t, shop.URL)
	p := open(t, in)
	for _, scheme := range []string{"light", "dark"} {
		call(p, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: []*emulation.MediaFeature{
			{Name: "prefers-color-scheme", Value: scheme}}})
		p.run(chromedp.EmulateViewport(900, 900), chromedp.Navigate(shop.URL))
		p.until(`heard.length >= document.querySelectorAll("knitmath-question").length`)
		p.picture("embedded-" + scheme)
		checkAxe(p, axe, "embedded, "+scheme)
		checkReflow(p, "embedded, "+scheme)
		p.picture("embedded-320-" + scheme)
	}
	p.run(chromedp.Evaluate[chromedp.Void](`(() => {
		const f = document.getElementById('second').shadowRoot.querySelector('[data-path=height_rows]');
		f.value = '0'; f.dispatchEvent(new Event('input')); })()`))
	p.until(`refused.length === 1 && refused[0].question === 'shaping/planTaper' && refused[0].violations.length > 0`)
	checkAxe(p, axe, "embedded, refused")
	p.checked(true)
}
