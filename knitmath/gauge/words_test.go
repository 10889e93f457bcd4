package gauge

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
)

// What a conversion says of every kind of change, and of the size to follow.
func TestConversionInWords(t *testing.T) {
	sizes := []PrintedSize{{WidthCm: 90}, {Name: "M", WidthCm: 100}}
	for _, c := range []struct {
		own    Gauge
		wanted *float64
		unit   measure.DisplayUnit
		want   string
	}{
		// 20 and 28 in the pattern.
		{Gauge{Stitches: 20, Rows: 28}, nil, 0, "Knit as written it comes out no wider and no longer."},
		{Gauge{Stitches: 16, Rows: 35}, nil, 0, "Knit as written it comes out 25 % wider and 20 % shorter."},
		{Gauge{Stitches: 25, Rows: 20}, nil, 0, "Knit as written it comes out 20 % narrower and 40 % longer."},
		{Gauge{Stitches: 20.001, Rows: 27.999}, nil, 0,
			"Knit as written it comes out less than 0.05 % narrower and less than 0.05 % longer."},
		{Gauge{Stitches: 20, Rows: 28}, knittest.Ptr(89.0), 0,
			"Knit as written it comes out no wider and no longer. Follow the 1st size: 90 cm wide, 1 cm more than asked."},
		{Gauge{Stitches: 20, Rows: 28}, knittest.Ptr(100.0), measure.DisplayUnitIn,
			"Knit as written it comes out no wider and no longer. Follow size M: 39.37 in wide, exactly as asked."},
	} {
		in := ConversionInput{PatternGauge: &Gauge{Stitches: 20, Rows: 28}, OwnGauge: &c.own, WantedWidthCm: c.wanted, DisplayUnit: c.unit}
		figures := []string{"change if knit as written"}
		if c.wanted != nil {
			in.Sizes = sizes
			figures = append(figures, "size to follow")
		}
		out, err := ConvertGauge(in)
		if err != nil {
			t.Fatal(err)
		}
		if got := out.Summary(); got != c.want {
			t.Errorf("got %q, want %q", got, c.want)
		}
		var got []string
		for _, s := range out.Sources() {
			got = append(got, s.Figure)
			if s.Citation == "" || s.Status == 0 {
				t.Errorf("source %+v", s)
			}
		}
		if strings.Join(got, ", ") != strings.Join(figures, ", ") {
			t.Errorf("sources of %q, want %q", got, figures)
		}
		if len(out.Directions()) != 0 {
			t.Errorf("directions %q, and there is nothing to work", out.Directions())
		}
	}
}

// A cast-on says the halves that were asked, where their figures come from, and
// has nothing to work yet.
func TestCastOnInWords(t *testing.T) {
	cm := 20.0
	for _, c := range []struct {
		width, height *float64
		want          string
	}{
		{&cm, nil, "Work on 44 stitches: 20 cm wide, exactly as asked."},
		{nil, &cm, "Work 60 rows: 20 cm tall, exactly as asked."},
		{&cm, &cm, "Work on 44 stitches: 20 cm wide, exactly as asked. Work 60 rows: 20 cm tall, exactly as asked."},
	} {
		out, err := ComputeCastOn(CastOnInput{Gauge: &Gauge{Stitches: 22, Rows: 30}, WidthCm: c.width, HeightCm: c.height})
		if err != nil {
			t.Fatal(err)
		}
		if got := out.Summary(); got != c.want {
			t.Errorf("got %q, want %q", got, c.want)
		}
		if s := out.Sources(); len(s) != 1 || s[0] != countCited || len(out.Directions()) != 0 {
			t.Errorf("sources %+v, directions %q", s, out.Directions())
		}
	}
}
