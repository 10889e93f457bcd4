package neck

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// One fault is told once, where one field settles both counts.
func TestOneFaultOnce(t *testing.T) {
	_, err := PlanNeckline(Input{Gauge: ordinary(), WidthStitches: new(3)})
	knittest.WantViolations(t, err, "width_stitches INFEASIBLE")
	_, odd := PlanNeckline(Input{Gauge: ordinary(), WidthStitches: new(60), NeckStitches: new(1)})
	for _, err := range []error{err, odd} {
		if err == nil || strings.Contains(err.Error(), "1 stitches") {
			t.Errorf("%v", err)
		}
	}
}
