package curve

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// publishedSteps reads the steps of a row of the table, one in every second row.
func publishedSteps(t *testing.T, row map[string]string) (steps []Step, lost int) {
	t.Helper()
	for i, word := range strings.Fields(row["steps"]) {
		n, err := strconv.Atoi(word)
		if err != nil {
			t.Fatal(err)
		}
		kind := KindBindOff
		if n == 1 && row["decreases"] != "" {
			kind = KindDecrease
		}
		steps = append(steps, Step{2*i + 1, kind, n})
		lost += n
	}
	return steps, lost
}

// throughSteps is the course through the middles of steps.
func throughSteps(steps []Step, lost, last int) Course {
	path, before := From(Point{}), 0
	for _, x := range steps {
		path = path.Line(Point{dk.SizeCm(2*before+x.Stitches) / 2, dkRows.SizeCm(x.RowNumber - 1)})
		before += x.Stitches
	}
	return path.Line(At(lost, last, dk, dkRows)).Courses(dk, dkRows)[0]
}

// Edges as they were printed. Through the middles of their steps goes a curve, and the
// nearest plan along it is the printed one, or lies nearer still.
func TestPublishedEdges(t *testing.T) {
	for _, row := range knittest.Table(t, "curve/published_edges.csv") {
		steps, lost := publishedSteps(t, row)
		last := steps[len(steps)-1].RowNumber + 1
		s := Settings{Edges: EdgesBoth}
		if row["edges"] == "one" {
			s.Edges = EdgesRight
		}
		if row["decreases"] == "" {
			s.LargestChange = -1
		}
		c := throughSteps(steps, lost, last)
		p, ok := Follow(c, s)
		if !ok {
			t.Fatalf("%s: no plan", row["id"])
		}
		printed := worstCorner(c, bothOf(c, s, steps))
		if p.Departure > printed+1e-5 {
			t.Errorf("%s: departs by %v, as printed by %v", row["id"], p.Departure, printed)
		}
		if same := slices.Equal(p.Right, steps); same != (row["same"] != "") {
			t.Errorf("%s: the same is %v: %+v", row["id"], same, p.Right)
		}
		// Allowed to depart as far as it was printed, no plan has more to remember.
		s.Tolerance = printed - p.Least + 1e-5
		if p, _ = Follow(c, s); p.Effort > effortOf(c, s, steps) {
			t.Errorf("%s: effort %d, as printed %d", row["id"], p.Effort, effortOf(c, s, steps))
		}
	}
}

// The nearest plans of quarter ellipses are the bind-offs that the textbook prints: 3,
// 2, 2 and then singles for the front of a neck, 4 and 2 for the back.
func TestTextbookNecksAreEllipses(t *testing.T) {
	for _, x := range []struct {
		stitches, rows int
		want           []int
	}{{10, 19, []int{3, 2, 2, 1, 1, 1}}, {6, 4, []int{4, 2}}} {
		p, ok := Follow(From(Point{}).Ellipse(At(x.stitches, x.rows, dk, dkRows), LeavingAcross).Courses(dk, dkRows)[0],
			Settings{Edges: EdgesRight})
		var got []int
		for _, s := range p.Right {
			got = append(got, s.Stitches)
		}
		if !ok || !slices.Equal(got, x.want) {
			t.Errorf("%v: %v", x, got)
		}
	}
}

// The front of a cardigan of 1918: 25 stitches, 6 increased, 7 cast on, 12 increased, 10
// cast on. Where the curve runs level the cast-ons are those printed.
// Source: as ladies1918_armhole in the table. Which rows increase is not told; here it
// is every second one.
func TestPublishedFrontIncreases(t *testing.T) {
	at := func(stitches, rows int) Point { return Point{-dk.SizeCm(stitches), dkRows.SizeCm(rows)} }
	c := From(Point{}).Line(at(6, 12)).Line(at(13, 12)).Line(at(25, 38)).Line(at(35, 38)).Line(at(35, 42)).Courses(dk, dkRows)[0]
	for _, tolerance := range []float64{0, DefaultTolerance} {
		p, ok := Follow(c, Settings{Edges: EdgesRight, Tolerance: tolerance})
		count, counts := 25, []int{25}
		for _, r := range p.Runs {
			count += r.Stitches * r.Times
			counts = append(counts, count)
		}
		if !ok || !c.Gains || !slices.Equal(counts, []int{25, 31, 38, 50, 60}) {
			t.Errorf("tolerance %v: %v %v %+v", tolerance, ok, counts, p.Runs)
		}
	}
}

// The order of the trade is nobody's recipe here: along quarter ellipses that begin
// level, as armholes and necks do, bind-offs come first and grow smaller, decreases
// after them at intervals that grow, in all of 1,596 plans.
func TestOrderOfTheTrade(t *testing.T) {
	plans := 0
	for _, edges := range []Edges{EdgesBoth, EdgesRight} {
		for stitches := 3; stitches <= 40; stitches++ {
			for rows := 8; rows <= 70; rows += 3 {
				c := From(Point{}).Ellipse(At(stitches, rows, dk, dkRows), LeavingAcross).Courses(dk, dkRows)[0]
				p, ok := Follow(c, Settings{Edges: edges, Tolerance: DefaultTolerance})
				if !ok {
					continue
				}
				plans++
				size, every := c.Stitches, 0
				for _, r := range p.Runs {
					if r.Stitches > size || !r.Kind.Groups() && r.Times > 1 && r.EveryRows < every {
						t.Errorf("%d stitches over %d rows: %+v", stitches, rows, p.Runs)
					}
					size = r.Stitches
					if !r.Kind.Groups() && r.Times > 1 {
						every = r.EveryRows
					}
				}
			}
		}
	}
	if plans != 1_596 {
		t.Errorf("%d plans", plans)
	}
}
