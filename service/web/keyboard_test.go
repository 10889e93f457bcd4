package web_test

import (
	"strconv"
	"strings"
	"testing"

	permission "github.com/chromedp/cdproto/browser"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// listening notes what the keyboard comes to, and whether one sees that it did.
const listening = `window.reached = new Set(); window.unseen = [];
document.addEventListener('focusin', (e) => {
	reached.add(e.target);
	if (getComputedStyle(e.target).outlineStyle === 'none') unseen.push(e.target.outerHTML.slice(0, 100));
});`

// operated are all things that do something. Of radio buttons the chosen one is come
// to, and the arrows do the rest.
const operated = `[...document.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex="0"]')]
	.filter((e) => e.checkVisibility() && !e.disabled && !(e.type === 'radio' && !e.checked))`

// The keyboard alone comes to everything on every page, is seen where it is, and is
// caught nowhere.
func TestKeyboard(t *testing.T) {
	in, base := browser(t), serve(t, "")
	p := open(t, in)
	paths := []string{"", "reference", "reference/gauge/computeCastOn"}
	for _, question := range questions(t) {
		paths = append(paths, "ask/"+question)
	}
	for _, path := range paths {
		p.run(chromedp.EmulateViewport(1200, 900), chromedp.Navigate(base+"/"+path))
		switch {
		case path == "reference":
		case strings.HasPrefix(path, "reference"):
			p.until(tried)
		default:
			p.until(answered + ` || [...document.querySelectorAll('.fault')].some((f) => !f.hidden)`)
		}
		p.run(chromedp.Evaluate[chromedp.Void](listening))
		n, err := strconv.Atoi(p.text(operated + ".length"))
		if err != nil || n < 4 {
			t.Fatalf("%s: %d things to operate, %v", path, n, err)
		}
		// The skip link comes first, and is on the way once it has the cursor.
		p.run(chromedp.KeyEvent(strings.Repeat(kb.Tab, n+2)))
		if missed := p.text(operated + `.filter((e) => !reached.has(e)).map((e) => e.outerHTML.slice(0, 100)).join('; ')`); missed != "" {
			t.Errorf("/%s: the keyboard does not come to %s", path, missed)
		}
		if unseen := p.text(`unseen.join('; ')`); unseen != "" {
			t.Errorf("/%s: nothing shows that the keyboard is at %s", path, unseen)
		}
	}
}

// reach goes to something with the tab key alone, from where the keyboard is.
func reach(p *tab, selector string) {
	p.Helper()
	for range 150 {
		if p.text(`document.activeElement?.matches('`+selector+`')`) == "true" {
			return
		}
		p.run(chromedp.KeyEvent(kb.Tab))
	}
	p.Fatalf("the keyboard does not come to %s", selector)
}

// Whoever has only a keyboard fills in a page, reads its answer, chooses from a list, switches
// to inches, ticks rows and takes a link along: on three pages, with nothing but keys.
func TestByKeyboardAlone(t *testing.T) {
	in, base := browser(t), serve(t, "")
	permit(t, in, permission.PermissionSettingGranted)
	for _, page := range []struct {
		question, field, text string
		choice, begins        string // and how the one that is chosen begins
	}{
		{"shaping/planTaper", "end_stitches", "84", "construction", "in"},
		{"solid/planCrown", "gauge.stitches", "20", "head_size", "m"},
		{"short-row/planWedge", "width_stitches", "30", "tall_end", "the left"},
	} {
		p := open(t, in)
		p.run(chromedp.EmulateViewport(1200, 900), chromedp.Navigate(base+"/ask/"+page.question))
		p.until(answered)
		before := p.text(`document.querySelector('.summary').textContent`)
		reach(p, `[data-path="`+page.field+`"]`)
		p.run(chromedp.KeyEvent(kb.End), chromedp.KeyEvent(strings.Repeat(kb.Backspace, 6)), chromedp.KeyEvent(page.text))
		p.until(answered + ` && document.querySelector('.summary').textContent !== ` + quote(t, before))
		if page.choice == "construction" {
			reach(p, `.more > summary`)
			p.run(chromedp.KeyEvent(kb.Enter))
		}
		reach(p, `select[data-path="`+page.choice+`"]`)
		chosen := p.text(`document.activeElement.value`)
		p.run(chromedp.KeyEvent(page.begins))
		p.until(`document.activeElement.value !== ` + quote(t, chosen) + ` && ` + answered +
			` && location.search.includes(document.activeElement.value)`)
		want := asked(t, base, pathOf(t, page.question)+p.text(`location.search`)+"&display_unit=DISPLAY_UNIT_CM")
		p.until(shows(want))

		// Round the page once more to the switch of the units.
		reach(p, `input[name=unit]`)
		p.run(chromedp.KeyEvent(kb.ArrowRight))
		p.until(`document.querySelector('input[value=in]').checked`)
		want = asked(t, base, pathOf(t, page.question)+p.text(`location.search`)+"&display_unit=DISPLAY_UNIT_IN")
		p.until(answered + ` && ` + shows(want))

		// A wedge has the same answer in either unit. Whoever is at one of its rows when it comes
		// stays there: asked once more, the page leaves the keyboard where it is.
		reach(p, `.directions li:nth-child(2) input`)
		p.run(chromedp.Evaluate[chromedp.Void](`document.querySelector('.asks').requestSubmit()`))
		p.until(answered)
		if at := p.text(`document.activeElement.matches('.directions li:nth-child(2) input')`); at != "true" {
			t.Errorf("%s: an answer that comes again takes the keyboard from its rows", page.question)
		}

		// One after the other, as a hand does: a page that is busy takes its time between them.
		reach(p, `.directions li:nth-child(1) input`)
		p.run(chromedp.KeyEvent(" "))
		p.until(`location.hash === '#done=1'`)
		reach(p, `.directions li:nth-child(2) input`)
		p.run(chromedp.KeyEvent(" "))
		p.until(`location.hash === '#done=1.2'`)
		reach(p, `.tools button:nth-child(2)`)
		p.run(chromedp.KeyEvent(kb.Enter))
		p.until(`document.querySelector('.says').textContent.startsWith('The link is copied')`)
		if got, at := copied(p), p.text(`location.href`); got != at {
			t.Errorf("the link is %s, the page at %s", got, at)
		}
		p.checked(false)
		p.run(chromedp.Evaluate[chromedp.Void](`localStorage.clear()`))
	}
}

// pathOf is where a question is asked.
func pathOf(t *testing.T, question string) string {
	t.Helper()
	return described(t, question).Path
}
