package web_test

import (
	"testing"

	"github.com/chromedp/chromedp"
)

// A 0 that is typed or in a link is not missing, as the service has it: it is marked, and what may
// stand there is said. What is not given is said quietly.
func TestZeroIsGiven(t *testing.T) {
	in, base := browser(t), serve(t, "")
	p := open(t, in)
	p.run(chromedp.Navigate(base + "/ask/gauge/computeCastOn?gauge.stitches=0&width_cm=-3"))
	p.until(`document.querySelector('.summary')?.textContent.includes('attention')`)
	for path, want := range map[string]string{
		"gauge.stitches": "true:Must be more than 0, and 1000 at the most.",
		"gauge.rows":     "null:Needs a value.",
		"width_cm":       "true:Must be from 0.1 cm to 1000 cm.",
	} {
		field := `document.querySelector('[data-path="` + path + `"]')`
		marked := field + `.getAttribute('aria-invalid') + ':' + `
		if got := p.text(marked + field + `.closest('.field').querySelector('.fault').textContent`); got != want {
			t.Errorf("%s: %s, want %s", path, got, want)
		}
	}
	p.checked(true)
}
