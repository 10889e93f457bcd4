package web_test

import (
	"testing"

	"github.com/chromedp/chromedp"
)

// What few people need lies behind a fold, is open where a link has filled it in, and where
// something is wrong in it; what is only not yet given leaves it shut.
func TestFolds(t *testing.T) {
	in, base := browser(t), serve(t, "")
	p := open(t, in)
	const asks = "?yarns[0].left_g=84&yarns[0].put_up.ball_m=115&yarns[0].put_up.ball_g=50&sections[0].rows=70&sections[0].stitches=139" +
		"&gauge.stitches=22&gauge.rows=30"
	const folded = `[...document.querySelectorAll('.later')].map((fold) => fold.open).join()`
	load := func(query string) {
		p.run(chromedp.EmulateViewport(1200, 900), chromedp.Navigate(base+"/ask/yarn/planRemainingYarn"+query))
		p.until(`document.querySelector('.summary')?.textContent && !document.querySelector('.later') === false`)
	}
	load(asks)
	p.until(answered)
	if got := p.text(folded); got != "false,false" {
		t.Errorf("open: %s", got)
	}
	load(asks + "&sections[0].pattern_factor=1.2")
	p.until(answered)
	if got := p.text(folded); got != "false,true" {
		t.Errorf("filled in by a link, open: %s", got)
	}
	load(asks + "&sections[0].pattern_factor=500")
	p.until(`document.querySelector('.answer.stale, .summary').textContent.startsWith('No answer yet')`)
	p.run(chromedp.Evaluate[chromedp.Void](`document.querySelectorAll('.later').forEach((fold) => { fold.open = false; })`),
		typed("sections[0].rows", "71"))
	p.until(folded + ` === 'false,true'`)
	p.checked(true)

	// A gauge alone: what else may be given in its place is not pushed at the visitor.
	p.run(chromedp.Navigate(base + "/ask/yarn/estimateYarn?put_up.ball_m=100"))
	p.until(`document.querySelector('.summary')?.textContent.startsWith('Fill in what needs a value')`)
	const seen = `[...document.querySelectorAll('.asks .fault')].filter((f) => f.checkVisibility()).map((f) => f.textContent).join(' ')`
	if got := p.text(seen); got !=
		"Give this or “Gauge, by its stitches alone”. Give one of these. Needs a value." {
		t.Errorf("what is wanting: %s", got)
	}
	if got := p.text(`document.querySelector('.more').open`); got != "false" {
		t.Errorf("more choices are open: %s", got)
	}
}
