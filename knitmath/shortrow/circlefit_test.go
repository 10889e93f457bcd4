package shortrow

import (
	"regexp"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// A circle that some number of wedges makes is made where none is asked for: the
// default steps to the nearest that fits. A disc of 2 cm takes 6, 7 or 8.
func TestDefaultWedgesFit(t *testing.T) {
	out, err := PlanCircleOfWedges(CircleInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, OuterRadiusCm: new(2.0)})
	if err != nil || out.WedgeCount != 8 {
		t.Errorf("%d wedges, %v", out.WedgeCount, err)
	}
	// 25.1 rows over 3 stitches: of 26 a sixth has at most 2 pairs over its 2 full rows,
	// which turn before the last stitch and the one before it.
	out, err = PlanCircleOfWedges(CircleInput{Gauge: &gauge.Gauge{Stitches: 18, Rows: 24}, WidthStitches: new(3)})
	if err != nil || out.WedgeCount != 6 || out.OuterRows != 26 {
		t.Errorf("%d wedges, %d rows, %v", out.WedgeCount, out.OuterRows, err)
	}
	sweepCircles(func(in CircleInput) {
		_, err := PlanCircleOfWedges(in)
		for n := 1; err != nil && n <= MaxWedges; n++ {
			in.WedgeCount = &n
			if _, e := PlanCircleOfWedges(in); e == nil {
				t.Fatalf("%s, though %d wedges fit", err, n)
			}
		}
	})
}

// Every number of wedges that a refusal names can be knit, and it names one where
// there is one.
func TestSuggestedWedgesFit(t *testing.T) {
	use := regexp.MustCompile(`; use (\d+) wedges?`)
	suggested, hopeless := 0, 0
	sweepCircles(func(in CircleInput) {
		_, none := PlanCircleOfWedges(in)
		for _, n := range []int{1, 2, 3, 4, 9, 10, 30, 100} {
			in.WedgeCount = &n
			_, err := PlanCircleOfWedges(in)
			if err == nil {
				continue
			}
			said := use.FindStringSubmatch(err.Error())
			if said == nil {
				hopeless++
				if none == nil || !strings.Contains(err.Error(), "no number of wedges from 1 to 100 fits") {
					t.Fatalf("%d wedges of %d: %v", n, *in.WidthStitches, err)
				}
				continue
			}
			suggested++
			count, _ := strconv.Atoi(said[1])
			in.WedgeCount = &count
			if _, e := PlanCircleOfWedges(in); e != nil {
				t.Fatalf("%d wedges of %d: %v; and then %v", n, *in.WidthStitches, err, e)
			}
		}
	})
	if suggested < knittest.Sweep(1000, 200) || hopeless < knittest.Sweep(10, 1) {
		t.Errorf("%d suggestions, %d without: the sweep has shrunk", suggested, hopeless)
	}
}

// Where fewer wedges are advised against a hole, one fewer can be knit.
func TestFewerWedgesFit(t *testing.T) {
	advised, not := 0, 0
	sweepCircles(func(in CircleInput) {
		for n := 1; n <= 20; n++ {
			in.WedgeCount = &n
			out, err := PlanCircleOfWedges(in)
			if err != nil || len(out.Notices) == 0 {
				continue
			}
			fewer := n - 1
			in.WedgeCount = &fewer
			_, e := PlanCircleOfWedges(in)
			says := strings.Contains(out.Notices[0].Description, "fewer wedges")
			if says != (e == nil) {
				t.Fatalf("%d wedges of %d: %q, %v", n, *in.WidthStitches, out.Notices[0].Description, e)
			}
			if says {
				advised++
			} else {
				not++
			}
		}
	})
	if advised < knittest.Sweep(100, 20) || not < knittest.Sweep(10, 1) {
		t.Errorf("%d advised, %d not: the sweep has shrunk", advised, not)
	}
}

// sweepCircles asks for small discs and rings, whole and in part.
func sweepCircles(ask func(CircleInput)) {
	for _, g := range []gauge.Gauge{{Stitches: 22, Rows: 30}, {Stitches: 18, Rows: 24}, {Stitches: 10, Rows: 40}} {
		for width := 2; width <= 20; width += knittest.Sweep(1, 3) + width/8 {
			for _, inner := range []float64{0, 1, 4} {
				for _, turn := range []float64{360, 90} {
					for _, method := range []TurnMethod{TurnMethodWrapAndTurn, TurnMethodGerman} {
						ask(CircleInput{Gauge: &g, WidthStitches: &width, InnerRadiusCm: &inner, TurnDegrees: &turn, TurnMethod: method})
					}
				}
			}
		}
	}
}
