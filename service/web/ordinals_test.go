package web_test

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// Of a round that is worked even no instruction is shown: there is no number 0 of anything.
func TestOrdinalsBeginAtOne(t *testing.T) {
	in, base := browser(t), serve(t, "")
	p := open(t, in)
	p.run(chromedp.Navigate(base + "/ask/yoke/planRaglan"))
	p.until(`document.querySelector('.summary')?.textContent`)
	got := p.text(`[...document.querySelectorAll('.tree dt')].filter((dt) => / number$/.test(dt.textContent))
		.map((dt) => dt.nextSibling.textContent).join(' ')`)
	if !strings.Contains(got, "1") || strings.Contains(" "+got+" ", " 0 ") {
		t.Errorf("the numbers are %s", got)
	}
}
