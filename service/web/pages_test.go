package web_test

import (
	"context"
	"encoding/json"
	"fmt"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// asked is the summary that the service itself gives.
func asked(t *testing.T, base, question string) string {
	t.Helper()
	reply, err := http.Get(base + question)
	if err != nil {
		t.Fatal(err)
	}
	defer reply.Body.Close()
	var answer struct{ Summary string }
	if err := json.NewDecoder(reply.Body).Decode(&answer); err != nil || answer.Summary == "" {
		t.Fatalf("%s: HTTP %d %v", question, reply.StatusCode, err)
	}
	return answer.Summary
}

func shows(summary string) string {
	return fmt.Sprintf(`document.querySelector('.summary')?.textContent === %q`, summary)
}

// questions are all there are, as addresses write them.
func questions(t *testing.T) []string {
	t.Helper()
	names, err := filepath.Glob("../../gen/forms/*.json")
	if err != nil || len(names) == 0 {
		t.Fatal("no forms", err)
	}
	for i, name := range names {
		names[i] = strings.Replace(strings.TrimSuffix(filepath.Base(name), ".json"), ".", "/", 1)
	}
	return names
}

// readAxe is axe-core, or nothing where it is not named.
func readAxe(t *testing.T) string {
	t.Helper()
	if *axePath == "" {
		t.Log("*** NOT CHECKED by axe-core, which -axe names ***")
		return ""
	}
	data, err := os.ReadFile(*axePath)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// Every page opens on an answered example, fits a narrow screen, and keeps nobody out.
func TestEveryPage(t *testing.T) {
	t.Parallel() // it mostly waits for the browser
	in, base, axe := browser(t), serve(t, ""), readAxe(t)
	p := open(t, in)
	unsaid := false
	for _, question := range append([]string{""}, questions(t)...) {
		at, name := base+"/ask/"+question, strings.ReplaceAll(question, "/", ".")
		if question == "" {
			at, name = base, "start"
		}
		p.run(chromedp.EmulateViewport(1200, 900), chromedp.Navigate(at))
		// Without an example of its own a page may have to ask for more than the contract
		// says must be given.
		if _, err := os.Stat("questions/" + name + ".json"); err == nil || question == "" {
			p.until(answered)
		} else {
			p.until(answered + ` || [...document.querySelectorAll('.fault')].some((f) => !f.hidden)`)
			unsaid = true
		}
		p.pictures(name)
		checkAxe(p, axe, name)
		checkReflow(p, name)
	}
	if !unsaid {
		p.checked(false)
	}
	p.run(chromedp.EmulateViewport(1200, 900), chromedp.Navigate(base+"/ask/shaping/planTaper"))
	dark := []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: "dark"}}
	call(p, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: dark})
	p.until(answered)
	p.picture("dark")
	checkAxe(p, axe, "dark")
}

// checkReflow looks at a page on a screen as narrow as a telephone's, and as low as
// one of 1280 by 1024 is at 400 % (WCAG 2.2, 1.4.10), and as wide as those on which form and answer just stand side by side:
// nothing lies beside it.
func checkReflow(p *tab, name string) {
	p.Helper()
	for _, screen := range [...]int64{1100, 970, 320} {
		p.run(chromedp.EmulateViewport(screen, screen*4/5))
		if wide := p.text("document.documentElement.scrollWidth"); wide != fmt.Sprint(screen) {
			p.Errorf("%s is %s wide on a screen of %d", name, wide, screen)
		}
	}
}

// checkAxe lets axe-core look at what is open.
func checkAxe(p *tab, axe, name string) {
	p.Helper()
	if axe == "" {
		return
	}
	p.run(chromedp.Evaluate[chromedp.Void](axe))
	found := get(p, chromedp.Evaluate[[]string](
		`axe.run().then((r) => r.violations.map((v) =>
			v.id + ': ' + v.nodes.map((n) => n.html + ' ' + n.failureSummary).slice(0, 3).join(' | ')))`,
		chromedp.EvalAwaitPromise))
	for _, violation := range found {
		p.Errorf("%s: %s", name, violation)
	}
}

// typed types over what stands in a field, by key where the text is one, and else all at
// once: a key takes three turns of the browser's protocol.
func typed(path, text string) chromedp.Action[chromedp.Void] {
	enter := chromedp.KeyEvent(text)
	if len(text) > 1 {
		enter = chromedp.Func(func(ctx context.Context, _ *chromedp.Target) error {
			_, err := chromedp.Call(ctx, input.InsertText, input.InsertTextParams{Text: text})
			return err
		})
	}
	return chromedp.Steps(
		chromedp.Evaluate[chromedp.Void](fmt.Sprintf(`document.querySelector('[data-path="%s"]').select()`, path)), enter)
}

// A page answers while it is typed in, says what the service says, has its values in
// its address, and puts faults where they belong.
func TestTyping(t *testing.T) {
	in, base := browser(t), serve(t, "")
	p := open(t, in)
	p.run(chromedp.EmulateViewport(1200, 900), chromedp.Navigate(base+"/ask/gauge/computeCastOn?gauge.stitches=22&gauge.rows=30&width_cm=50"))
	p.until(shows(asked(t, base, "/v1/gauge:computeCastOn?gauge.stitches=22&gauge.rows=30&width_cm=50")))
	// By the keyboard alone, from the top of the page.
	for range 40 {
		if p.text(`document.activeElement?.dataset?.path`) == "width_cm" {
			break
		}
		p.run(chromedp.KeyEvent(kb.Tab))
	}
	p.run(chromedp.KeyEvent(kb.End), chromedp.KeyEvent(kb.Backspace), chromedp.KeyEvent("3,5"))
	p.until(shows(asked(t, base, "/v1/gauge:computeCastOn?gauge.stitches=22&gauge.rows=30&width_cm=53.5")))
	if got := p.text("location.search"); got != "?gauge.stitches=22&gauge.rows=30&width_cm=53.5" {
		t.Errorf("the address is %s", got)
	}
	if got := p.text(`document.activeElement.dataset.path`); got != "width_cm" {
		t.Errorf("the answer took the cursor to %s", got)
	}
	p.run(chromedp.Reload())
	p.until(shows(asked(t, base, "/v1/gauge:computeCastOn?gauge.stitches=22&gauge.rows=30&width_cm=53.5")))
	p.checked(false)

	faultOf := func(path string) string {
		described := fmt.Sprintf(`document.querySelector('[data-path="%s"]').getAttribute('aria-describedby')`, path)
		return `document.getElementById(` + described + `.split(' ').at(-1)).textContent`
	}
	p.run(typed("width_cm", "0.01"))
	p.until(faultOf("width_cm") + `.startsWith('Must be from 0.1 cm to 1000 cm')`)
	p.picture("fault")
	p.run(typed("width_cm", "wide"))
	p.until(faultOf("width_cm") + `.startsWith('Cannot be read as a number')`)
	p.run(typed("width_cm", "50"), typed("gauge.rows", kb.Backspace))
	p.until(faultOf("gauge.rows") + `=== 'Needs a value.'`)
	p.run(typed("gauge.rows", "30"))
	p.until(answered + ` && ` + faultOf("gauge.rows") + `=== ''`)
	p.run(chromedp.Navigate(base + "/ask/gauge/computeCastOn?gauge.stitches=22&gauge.rows=thirty&width_cm=50"))
	p.until(`document.querySelector('.asks') && ` + faultOf("gauge.rows") +
		`=== 'Cannot be read as a number; write it like 22, 22.5 or 22 1/2.'`)
	p.checked(true)
}

// What belongs to one shape alone is asked once that shape is chosen, and the cursor stays
// where it was.
func TestFieldsComeAndGo(t *testing.T) {
	in, base := browser(t), serve(t, "")
	p := open(t, in)
	p.run(chromedp.EmulateViewport(1200, 900), chromedp.Navigate(base+"/ask/flat/planFlatShape"))
	p.until(answered)
	const asksFor = `['across_cm', 'hole_cm', 'corner_count'].map((f) => !!document.querySelector('[data-path="' + f + '"]'))`
	if got := p.text(asksFor); got != "true,false,false" {
		t.Errorf("a disc: %s", got)
	}
	p.run(chromedp.Evaluate[chromedp.Void](`(() => { const f = document.querySelector('[data-path=form]'); f.focus();
		f.value = 'FLAT_FORM_RING'; f.dispatchEvent(new Event('change')); })()`))
	p.until(`document.querySelector('[data-path=hole_cm]') && document.querySelector('.answer.stale')`)
	if got := p.text(asksFor + `+ document.activeElement.dataset.path`); got != "true,true,falseform" {
		t.Errorf("a ring: %s", got)
	}
	p.run(typed("hole_cm", "8"))
	p.until(answered + ` && document.querySelector('.summary').textContent.startsWith('A ring')`)
	// What another shape does not have is not asked of it, and is there again for the first.
	choose := func(form string) {
		p.run(chromedp.Evaluate[chromedp.Void](`(() => { const f = document.querySelector('[data-path=form]'); f.focus();
			f.value = '` + form + `'; f.dispatchEvent(new Event('change')); })()`))
	}
	choose("FLAT_FORM_POLYGON")
	p.until(`document.querySelector('[data-path=corner_count]')`)
	if got := p.text(asksFor + `+ document.querySelector('[data-path=form]').value`); got != "false,false,trueFLAT_FORM_POLYGON" {
		t.Errorf("a polygon: %s", got)
	}
	p.run(typed("side_cm", "12"), typed("corner_count", "6"))
	p.until(answered + ` && document.querySelector('.summary').textContent.startsWith('A hexagon')`)
	choose("FLAT_FORM_RING")
	p.until(answered + ` && document.querySelector('.summary').textContent.startsWith('A ring of 23.7 cm')`)
	p.checked(true) // the hole was wanting, and the side
}

// Whoever measures in inches and says nothing else has counted over 4 of them, not over 10 cm.
func TestGaugeInInches(t *testing.T) {
	in, base := browser(t), serve(t, "")
	p := open(t, in)
	p.run(chromedp.EmulateViewport(1200, 900), chromedp.Navigate(base+"/ask/gauge/computeCastOn"))
	p.until(answered)
	p.run(chromedp.Click(chromedp.CSS(`input[name=unit][value=in]`)), chromedp.Evaluate[chromedp.Void](
		`[...document.querySelectorAll('.tools button')].find((b) => b.textContent === 'Clear').click()`))
	p.until(`document.querySelector('[data-path="gauge.over_cm"]').value === ''`)
	p.run(typed("gauge.stitches", "22"), typed("gauge.rows", "30"), typed("width_cm", "20"))
	p.until(shows(asked(t, base, "/v1/gauge:computeCastOn?gauge.stitches=22&gauge.rows=30&gauge.over_cm=10.16&width_cm=50.8"+
		"&display_unit=DISPLAY_UNIT_IN")))
	if got := p.text(`document.querySelector('[data-path="gauge.over_cm"]').value`); got != "4" {
		t.Errorf("counted over %s", got)
	}
	p.checked(true) // there was nothing to begin with
}

// Inches are a way of writing: what is asked is the same length, and the choice is
// all that is kept.
func TestInches(t *testing.T) {
	in, base := browser(t), serve(t, "")
	p := open(t, in)
	query := "?gauge.stitches=22&gauge.rows=30&gauge.over_cm=10.16&width_cm=50.8"
	p.run(chromedp.EmulateViewport(1200, 900), chromedp.Navigate(base+"/ask/gauge/computeCastOn"+query))
	p.until(shows(asked(t, base, "/v1/gauge:computeCastOn"+query)))
	p.run(chromedp.Click(chromedp.CSS(`input[name=unit][value=in]`)))
	p.until(shows(asked(t, base, "/v1/gauge:computeCastOn"+query+"&display_unit=DISPLAY_UNIT_IN")))
	values := `['gauge.over_cm', 'width_cm'].map((path) => document.querySelector('[data-path="' + path + '"]').value)`
	if got := p.text(values); got != "4,20" {
		t.Errorf("in inches the fields say %s", got)
	}
	if got := p.text("location.search"); got != query {
		t.Errorf("the address is %s", got)
	}
	p.run(typed("width_cm", "19 1/2"))
	p.until(shows(asked(t, base, strings.Replace("/v1/gauge:computeCastOn"+query+"&display_unit=DISPLAY_UNIT_IN", "50.8", "49.53", 1))))
	p.picture("inches")
	p.run(chromedp.Navigate(base + "/ask/yarn/estimateYarn"))
	p.until(answered + ` && document.querySelector('input[value=in]').checked`)
	if got := p.text("JSON.stringify(Object.entries(localStorage)) + document.cookie"); got != `[["knitmath.unit","in"]]` {
		t.Errorf("kept: %s", got)
	}
	p.checked(false)
}

// Rows that are done stay so in the address; a printed page is the answer without
// what only a screen has a use for.
func TestTickingAndPrinting(t *testing.T) {
	in, base := browser(t), serve(t, "")
	p := open(t, in)
	p.run(chromedp.EmulateViewport(1200, 900),
		chromedp.Navigate(base+"/ask/shaping/planTaper?start_stitches=48&end_stitches=76&height_rows=120"))
	p.until(answered)
	p.run(chromedp.Click(chromedp.CSS(`.directions li:nth-child(2) input`)))
	p.until(`location.hash === '#done=2'`)
	p.run(chromedp.Reload())
	p.until(answered)
	if got := p.text(`[...document.querySelectorAll('.directions input')].map((i) => i.checked).slice(0, 3)`); got != "false,true,false" {
		t.Errorf("ticked: %s", got)
	}
	call(p, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: "print"})
	seen := `['.summary', '.drawing', '.directions', '.tools', '.units', 'button'].
		map((s) => document.querySelector(s).getClientRects().length > 0)`
	if got := p.text(seen); got != "true,true,true,false,false,false" {
		t.Errorf("printed: %s", got)
	}
	p.picture("print")
	pdf := get(p, chromedp.PrintToPDF())
	if len(pdf) < 1000 {
		t.Errorf("printed %d bytes", len(pdf))
	}
	p.checked(false)
}
