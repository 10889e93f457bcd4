package neck

import (
	"testing"

	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/gauge"
)

// The dearest neckline there is costs no more than a question may, and an ordinary one far
// less.
func TestPrices(t *testing.T) {
	most := Input{Gauge: ordinary(), WidthStitches: new(1500), NeckStitches: new(MaxNeckStitches), FrontDepthRows: new(MaxDepthRows),
		BackDepthRows: new(MaxDepthRows), ToleranceStitches: new(MaxTolerance)}
	if got := most.Cost(); got > cost.Limit || got < cost.Limit/2 {
		t.Errorf("the dearest costs %d", got)
	}
	for rows := 0; rows <= 2*remedyMost; rows += 50 { // where remedies are tried
		in := most
		in.FrontDepthRows, in.BackDepthRows, in.NeckStitches = new(rows/2), new(rows/2), new(2*remedyMost-rows)
		if got := in.Cost(); got > cost.Limit {
			t.Errorf("%d rows: %d", rows, got)
		}
	}
	for name, in := range map[string]Input{
		"round": {Gauge: ordinary(), WidthCm: new(40.0)}, "V": {Gauge: ordinary(), WidthCm: new(40.0), Shape: ShapeV},
	} {
		if got := in.Cost(); got < 500 || got > 20_000 {
			t.Errorf("%s costs %d", name, got)
		}
	}
	if got := (Input{Gauge: &gauge.Gauge{}}).Cost(); got < 1 {
		t.Errorf("nothing costs %d", got)
	}
}
