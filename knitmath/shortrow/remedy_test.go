package shortrow

import (
	"math/rand/v2"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
)

var (
	lowerRise   = regexp.MustCompile(`hold at most \d+, a rise of (\d+) row`)
	wider       = regexp.MustCompile(`this rise takes at least (\d+), one of them`)
	wedgesToUse = regexp.MustCompile(`; use (\d+) wedge`)
)

// named is the number that a refusal names as what would do.
func named(t *testing.T, err error, remedy *regexp.Regexp) (n int, ok bool) {
	t.Helper()
	m := remedy.FindStringSubmatch(err.Error())
	if m == nil {
		return 0, false
	}
	n, bad := strconv.Atoi(m[1])
	if bad != nil {
		t.Fatal(bad)
	}
	return n, true
}

// Every remedy of a refused wedge is asked of the planner itself: the highest rise that the
// stitches hold, and one pair of rows more is refused; the fewest stitches; two rows.
func TestRemediesOfWedgesWork(t *testing.T) {
	rises, widths := 0, 0
	for width := 2; width <= 40; width++ {
		for rise := 1; rise <= 90; rise += knittest.Sweep(1, 4) {
			for tall := TallEndRight; tall <= TallEndSides; tall++ {
				for method := TurnMethodWrapAndTurn; method <= TurnMethodYarnOver; method++ {
					in := WedgeInput{WidthStitches: width, RiseRows: &rise, TallEnd: tall, TurnMethod: method}
					_, err := PlanWedge(in)
					if err == nil {
						continue
					}
					again := in
					if n, ok := named(t, err, lowerRise); ok {
						rises++
						again.RiseRows = &n
					} else if n, ok := named(t, err, wider); ok {
						widths++
						again.WidthStitches, again.RiseRows = n, new(2)
					} else {
						t.Fatalf("%s: nothing is offered: %v", describe(in), err)
					}
					if _, err := PlanWedge(again); err != nil {
						t.Fatalf("%s: refused again with what was named: %v", describe(in), err)
					}
					if n, ok := named(t, err, lowerRise); ok && n+2 <= rise {
						again.RiseRows = new(n + 2)
						if _, err := PlanWedge(again); err == nil {
							t.Fatalf("%s: %d rows would do, and %d were named", describe(in), n+2, n)
						}
					}
				}
			}
		}
	}
	if rises < knittest.Sweep(5_000, 1_000) || widths < 100 {
		t.Errorf("%d rises and %d widths named: the sweep has shrunk", rises, widths)
	}
}

// A rise of one row, rounded down, is no pair of short rows: 2 rows are, and one rounded up.
func TestRisesOfNoPairAreOffered(t *testing.T) {
	for width := 6; width <= 40; width++ {
		in := WedgeInput{WidthStitches: width, RiseRows: new(1), TallEnd: TallEndLeft, Rounding: measure.RoundingDown}
		if _, err := PlanWedge(in); err == nil || !strings.Contains(err.Error(), "it takes 2 rows, or rounding up") {
			t.Fatalf("%s: %v", describe(in), err)
		}
		up, more := in, in
		up.Rounding, more.RiseRows = measure.RoundingUp, new(2)
		for _, again := range []WedgeInput{up, more} {
			if _, err := PlanWedge(again); err != nil {
				t.Fatalf("%s: refused again: %v", describe(again), err)
			}
		}
	}
}

// Grouped turns that leave the profile by too much are planned in every other spread, as the
// refusal says.
func TestOtherSpreadsArePlanned(t *testing.T) {
	refused := 0
	for width := 4; width <= 80; width += knittest.Sweep(1, 5) {
		for rise := 2; rise <= 120; rise += knittest.Sweep(2, 6) {
			for tall := TallEndRight; tall <= TallEndSides; tall++ {
				in := WedgeInput{WidthStitches: width, RiseRows: &rise, TallEnd: tall, Spread: TurnSpreadGrouped}
				if _, err := PlanWedge(in); err == nil || !strings.Contains(err.Error(), "use another spread") {
					continue
				}
				refused++
				for _, other := range []TurnSpread{TurnSpreadUnspecified, TurnSpreadInterleaved, TurnSpreadLeastEffort} {
					in.Spread = other
					if _, err := PlanWedge(in); err != nil {
						t.Fatalf("%s: refused again: %v", describe(in), err)
					}
				}
			}
		}
	}
	if refused < knittest.Sweep(500, 30) {
		t.Errorf("%d refused: the sweep has shrunk", refused)
	}
}

// The number of wedges that a refused circle names is planned.
func TestRemediesOfCirclesWork(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 9))
	offered, refused := 0, 0
	for range knittest.Sweep(2_000, 400) {
		in := CircleInput{Gauge: &gauge.Gauge{Stitches: 10 + 20*rng.Float64(), Rows: 14 + 30*rng.Float64()}, WidthStitches: new(3 + rng.IntN(80)),
			InnerRadiusCm: new(30 * rng.Float64()), WedgeCount: new(1 + rng.IntN(40)), TurnMethod: TurnMethod(1 + rng.IntN(4))}
		_, err := PlanCircleOfWedges(in)
		if err == nil {
			continue
		}
		refused++
		n, ok := named(t, err, wedgesToUse)
		if !ok {
			continue
		}
		offered++
		again := in
		again.WedgeCount = &n
		if _, err := PlanCircleOfWedges(again); err != nil {
			t.Fatalf("%+v: refused again with %d wedges: %v", in, n, err)
		}
	}
	if offered < knittest.Sweep(200, 35) {
		t.Errorf("%d of %d refused circles were offered a number: the sweep has shrunk", offered, refused)
	}
}
