package neck

import (
	"slices"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/report"
)

// A figure that the designer gives has no source; what is taken for it has one.
func TestNecksCiteWhatIsTaken(t *testing.T) {
	given := Input{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, WidthStitches: new(90)}
	for name, c := range map[string]struct {
		change func(*Input)
		source report.Source
		cited  bool
	}{
		"a third taken":       {func(*Input) {}, thirdCited, true},
		"neck given":          {func(in *Input) { in.NeckStitches = new(30) }, thirdCited, false},
		"neck in cm":          {func(in *Input) { in.NeckCm = new(15.0) }, thirdCited, false},
		"shoulders given":     {func(in *Input) { in.ShoulderStitches = new(28) }, thirdCited, false},
		"shoulders in cm":     {func(in *Input) { in.ShoulderCm = new(13.0) }, thirdCited, false},
		"slope taken":         {func(*Input) {}, slopeCited, true},
		"slope in rows":       {func(in *Input) { in.ShoulderSlopeRows = new(8) }, slopeCited, false},
		"slope in cm":         {func(in *Input) { in.ShoulderSlopeCm = new(2.5) }, slopeCited, false},
		"slope in degrees":    {func(in *Input) { in.ShoulderSlopeDegrees = new(12.0) }, slopeCited, false},
		"round by a curve":    {func(*Input) {}, curveCited, true},
		"square without":      {func(in *Input) { in.Shape = ShapeSquare }, curveCited, false},
		"square has a depth":  {func(in *Input) { in.Shape = ShapeSquare }, depthCited, true},
		"boat has none":       {func(in *Input) { in.Shape = ShapeBoat }, depthCited, false},
		"boat":                {func(in *Input) { in.Shape = ShapeBoat }, boatCited, true},
		"round is no boat":    {func(*Input) {}, boatCited, false},
		"V slants":            {func(in *Input) { in.Shape = ShapeV }, slantCited, true},
		"V has a point":       {func(in *Input) { in.Shape = ShapeV }, pointCited, true},
		"round has no point":  {func(*Input) {}, pointCited, false},
		"head given":          {func(in *Input) { in.HeadCm = new(56.0) }, headCited, false},
		"a head is stretched": {func(in *Input) { in.HeadCm = new(56.0) }, stretchCited, true},
	} {
		in := given
		c.change(&in)
		out, err := PlanNeckline(in)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if got := slices.Contains(out.Sources(), c.source); got != c.cited {
			t.Errorf("%s: %q is cited: %v", name, c.source.Figure, got)
		}
	}
}
