package flat

import (
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/outlinetest"
)

// Stars of many gauges, points and sizes are knit, and lie about as flat as their rounds let them:
// all stitches together are those of 2 p triangles between point, valley and centre.
func TestStarsAreKnit(t *testing.T) {
	planned, worst := 0, 0.0
	for _, rows := range []float64{22, 26, 28, 33, 40} {
		for points := 4; points <= MaxCorners; points++ {
			for cm := 8.0; cm < 60; cm += float64(knittest.Sweep(9, 24)) {
				in := Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: rows}, Form: FormStar, AcrossCm: &cm, CornerCount: &points, WithOutline: true,
					Direction: Direction(planned % 3)}
				out, err := PlanFlatShape(in)
				if err != nil {
					knittest.CheckInputError(t, err)
					continue
				}
				planned++
				checkShape(t, in, out)
				outlinetest.CheckFrame(t, out.Outline)
				for _, r := range out.Rows { // no valley takes what its points have just gained
					if narrow := min(r.Instruction.StartStitches, r.Instruction.EndStitches); takes(r) && narrow < 2*points*(settled+1) {
						t.Errorf("%d points, %v cm, %v rows: a valley of %d stitches in round %d", points, cm, rows, narrow, r.RowNumber)
					}
				}
				count, next, total := out.StartStitches, 0, 0
				for row := 1; row <= out.TotalRows; row++ {
					if next < len(out.Rows) && out.Rows[next].RowNumber == row {
						count = out.Rows[next].Instruction.EndStitches
						next++
					}
					total += count
				}
				area := float64(points) * out.of.tip * out.of.valley * math.Sin(math.Pi/float64(points))
				wanted := area * 20 * rows / 100
				worst = max(worst, math.Abs(float64(total)/wanted-1))
				if said := len(out.Notices) > 0; said != (math.Abs(100*float64(total)/wanted-100) > blockedOut) {
					t.Errorf("%d points, %v cm, %v rows: %d stitches, %v wanted: %v", points, cm, rows, total, wanted, out.Notices)
				}
				if cm > 20 && math.Abs(float64(total)/wanted-1) > 0.15 {
					t.Errorf("%d points, %v cm, %v rows: %d stitches, %v wanted", points, cm, rows, total, wanted)
				}
			}
		}
	}
	if planned < knittest.Sweep(180, 60) {
		t.Errorf("planned %d stars: the sweep has shrunk", planned)
	}
	t.Logf("%d stars; all stitches within %.1f %%", planned, 100*worst)
}

// takes reports whether a round of a star works its valleys, and not its points alone.
func takes(r Row) bool {
	text := r.Instruction.Row.Text()
	return strings.Contains(text, "M1") && (strings.Contains(text, "CDD") || strings.Contains(text, "k2tog"))
}

// Worked by hand: a star of five points whose valleys lie at half of its points has the side
// sqrt(1 + 1/4 - cos 36) = 0.6640 of its radius, 0.5 sin 36 / 0.6640 = 0.4426 of it from the
// centre; 20 cm at 2.8 rows to the cm are 12.4 rounds, too sharp at that gauge: cot a is 2.026.
func TestStarByHand(t *testing.T) {
	cm, valley, points := 20.0, 10.0, 5
	in := Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Form: FormStar, AcrossCm: &cm, CornerCount: &points, ValleyCm: &valley}
	_, err := PlanFlatShape(in)
	knittest.WantViolations(t, err, "valley_cm INFEASIBLE", "across_cm INFEASIBLE")
	in.Gauge.Rows = 42
	out, err := PlanFlatShape(in)
	if err != nil || out.TotalRows != 19 { // 4.426 cm are 18.6 rounds
		t.Errorf("%d rounds, %v", out.TotalRows, err)
	}
}

// A disc of short rows is that of room shortrow, in the fields of this one.
func TestShortRows(t *testing.T) {
	cm, hole := 30.0, 0.3
	g := &gauge.Gauge{Stitches: 20, Rows: 28}
	out, err := PlanFlatShape(Input{Gauge: g, Form: FormDisc, AcrossCm: &cm, Arrangement: ArrangementShortRows, WithOutline: true})
	if err != nil || out.StartStitches != 30 || len(out.Wedges) == 0 || out.Outline == nil || out.WidthCm != 30 {
		t.Fatalf("%+v, %v", out, err)
	}
	_, err = PlanFlatShape(Input{Gauge: g, Form: FormRing, AcrossCm: &hole, HoleCm: &cm, Arrangement: ArrangementShortRows})
	knittest.WantViolations(t, err, "across_cm INFEASIBLE", "hole_cm INFEASIBLE")
	_, err = PlanFlatShape(Input{Gauge: g, Form: FormDisc, AcrossCm: &cm, Arrangement: ArrangementShortRows, Direction: DirectionInwards})
	knittest.WantViolations(t, err, "direction CONTRADICTORY")
}

func BenchmarkFlatStar(b *testing.B) {
	cm, points := 30.0, 5
	in := Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Form: FormStar, AcrossCm: &cm, CornerCount: &points}
	for b.Loop() {
		if _, err := PlanFlatShape(in); err != nil {
			b.Fatal(err)
		}
	}
}
