package curve

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

var (
	dk     = gauge.NewDensity(22, 10)
	dkRows = gauge.NewDensity(30, 10)
)

// What the course wants of a quarter ellipse is the closed form, to the millionth.
func TestCourseOfAnEllipse(t *testing.T) {
	for _, n := range [][2]int{{10, 12}, {20, 56}, {1, 1}, {300, 7}} {
		s, r := float64(n[0]), float64(n[1])
		across := From(Point{}).Ellipse(At(n[0], n[1], dk, dkRows), LeavingAcross).Courses(dk, dkRows)[0]
		up := From(Point{}).Ellipse(At(n[0], n[1], dk, dkRows), LeavingUp).Courses(dk, dkRows)[0]
		if across.Stitches != n[0] || across.Rows != n[1] || across.Gains {
			t.Fatalf("%v: %d stitches over %d rows", n, across.Stitches, across.Rows)
		}
		for y := range n[1] + 1 {
			rest := 1 - float64(y)/r
			want := 1e6 * s * math.Sqrt(max(0, 1-rest*rest))
			if got := float64(across.across[y].from); math.Abs(got-want) > 1 {
				t.Errorf("%v across at row %d: %v, want %v", n, y, got, want)
			}
			want = 1e6 * s * (1 - math.Sqrt(1-float64(y)*float64(y)/r/r))
			if got := float64(up.across[y].from); math.Abs(got-want) > 1 {
				t.Errorf("%v up at row %d: %v, want %v", n, y, got, want)
			}
		}
		for x := range n[0] + 1 {
			want := 1e6 * r * (1 - math.Sqrt(1-float64(x)*float64(x)/s/s))
			if got := float64(across.up[x].from); math.Abs(got-want) > 1 {
				t.Errorf("%v up at stitch %d: %v, want %v", n, x, got, want)
			}
		}
	}
}

// Whole counts come out whole, and a level or upright piece is found where it lies.
func TestCourseOfLines(t *testing.T) {
	p := From(Point{}).Line(At(6, 0, dk, dkRows)).Line(At(6, 4, dk, dkRows)).Line(At(16, 24, dk, dkRows)).Line(At(20, 24, dk, dkRows))
	c := p.Courses(dk, dkRows)[0]
	if c.Stitches != 20 || c.Rows != 24 {
		t.Fatalf("%d stitches over %d rows", c.Stitches, c.Rows)
	}
	for row, want := range map[int]span{0: {0, 6e6}, 2: {6e6, 6e6}, 4: {6e6, 6e6}, 5: {65e5, 65e5}, 14: {11e6, 11e6}, 24: {16e6, 20e6}} {
		if c.across[row] != want {
			t.Errorf("row %d: %v, want %v", row, c.across[row], want)
		}
	}
	for st, want := range map[int]span{0: {0, 0}, 3: {0, 0}, 6: {0, 4e6}, 11: {14e6, 14e6}, 16: {24e6, 24e6}, 19: {24e6, 24e6}} {
		if c.up[st] != want {
			t.Errorf("stitch %d: %v, want %v", st, c.up[st], want)
		}
	}
	// In to 10, upright, out to 4: two courses, and the second counts what is gained.
	turned := From(Point{}).Line(At(10, 20, dk, dkRows)).Line(At(10, 31, dk, dkRows)).Line(At(4, 47, dk, dkRows)).Courses(dk, dkRows)
	if len(turned) != 2 || turned[0].Rows != 31 || turned[1].RowsBefore != 31 || turned[1].StitchesBefore != 10 ||
		turned[1].Stitches != 6 || turned[1].Rows != 16 || !turned[1].Gains || turned[1].across[8].from != 3e6 {
		t.Errorf("%+v", turned)
	}
}

// The spans of any path rise, and the two tables are each other's inverse.
func TestSpansAreInverse(t *testing.T) {
	r := rand.New(rand.NewPCG(13, 1))
	for range 2_000 {
		c := randomCourse(r, 40, 80)
		for y := range c.across {
			if y > 0 && c.across[y].from < c.across[y-1].to || c.across[y].to < c.across[y].from {
				t.Fatalf("falls at row %d: %v", y, c.across)
			}
		}
		for x := range c.up {
			if x > 0 && c.up[x].from < c.up[x-1].to || c.up[x].to < c.up[x].from {
				t.Fatalf("falls at stitch %d: %v", x, c.up)
			}
			for y := range c.across {
				left, below := c.across[y].from > int64(x)*1e6+2, c.up[x].to < int64(y)*1e6
				if left && !below && c.up[x].to < int64(c.Rows)*1e6-1e6 {
					t.Fatalf("row %d, stitch %d: %v %v", y, x, c.across[y], c.up[x])
				}
			}
		}
	}
}

// randomPath is some pieces of all sorts, going in.
func randomPath(r *rand.Rand, stitches, rows int) Path {
	p := From(Point{})
	s, h := 0, 0
	for range 1 + r.IntN(3) {
		s, h = s+r.IntN(stitches/2+1), h+r.IntN(rows/2+1)
		to := At(s, h, dk, dkRows)
		way := Leaving(r.IntN(2))
		switch r.IntN(4) {
		case 0:
			p = p.Line(to)
		case 1:
			end := p.End()
			if q, ok := p.Arc(to, math.Hypot(to.X-end.X, to.Y-end.Y)*(0.7+r.Float64()), way); ok && q.rises() {
				p = q
				break
			}
			p = p.Line(to)
		default:
			p = p.Ellipse(to, way)
		}
	}
	return p.Line(At(s+r.IntN(3), h+1+r.IntN(3), dk, dkRows))
}

// rises reports whether the path only goes in.
func (p Path) rises() bool {
	for _, s := range p.pieces {
		if s.to.X < s.from.X {
			return false
		}
	}
	return true
}

func randomCourse(r *rand.Rand, stitches, rows int) Course {
	for {
		if all := randomPath(r, stitches, rows).Courses(dk, dkRows); len(all) == 1 && all[0].Stitches > 0 {
			return all[0]
		}
	}
}
