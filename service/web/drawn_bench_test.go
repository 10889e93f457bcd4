package web_test

import (
	"slices"
	"strconv"
	"testing"

	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
)

// watching notes when an answer stands on the page: in the task after the frame in
// which its words appeared.
const watching = `new MutationObserver((_, self) => {
	const fold = document.querySelector('.answer .fold');
	if (!fold || fold.hidden) return;
	self.disconnect();
	requestAnimationFrame(() => setTimeout(() => { window.drawnAt = performance.now(); }));
}).observe(document, { subtree: true, childList: true, attributes: true });`

// BenchmarkDrawn measures how long after its reply the first answer of a page is
// drawn, in milliseconds: the median and the most of the runs, by the clock of the browser.
// The service and the browser share the machine.
func BenchmarkDrawn(b *testing.B) {
	in, base := browser(b), serve(b, "")
	for _, question := range []string{"gauge/computeCastOn", "shaping/planTaper", "short-row/planCircleOfWedges", "yoke/planCircularYoke",
		"yarn/estimateYarn"} {
		b.Run(question, func(b *testing.B) {
			p := open(b, in)
			call(p, page.AddScriptToEvaluateOnNewDocument, page.AddScriptToEvaluateOnNewDocumentParams{Source: watching})
			var all []float64
			for range b.N {
				p.run(chromedp.EmulateViewport(412, 900), chromedp.Navigate(base+"/ask/"+question))
				p.until(`window.drawnAt`)
				took, err := strconv.ParseFloat(p.text(
					`drawnAt - performance.getEntriesByType('resource').find((e) => e.name.includes('/v1/')).responseEnd`), 64)
				if err != nil {
					b.Fatal(err)
				}
				all = append(all, took)
			}
			slices.Sort(all)
			b.ReportMetric(all[len(all)/2], "median-ms")
			b.ReportMetric(all[len(all)-1], "most-ms")
		})
	}
}
