package web_test

import (
	"strconv"
	"strings"
	"testing"

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
