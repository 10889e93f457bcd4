package schedule

import (
	"math/rand/v2"
	"reflect"
	"strings"
	"testing"
)

// sleeve is the line of so many things on so many places, from end to end.
func sleeve(times, places int) Line {
	return Line{Times: times, Places: places, Start: places - times, Step: 2 * places, Unit: 2 * times}
}

// sized are sizes that may depart by so many things beyond what they must.
func sized(things float64, lines ...Line) []Size {
	sizes := make([]Size, len(lines))
	for i, l := range lines {
		most := l.Departure(l.Nearest()) + int(things*float64(l.Step))
		sizes[i] = Size{l, max(most, min(l.LeastGraded(ShortFirst), l.LeastGraded(LongFirst)))}
	}
	return sizes
}

// either is the better form of both orders.
func either(sizes []Size) (Graded, bool) {
	g, ok := Grade(sizes, ShortFirst)
	if h, also := Grade(sizes, LongFirst); also && (!ok || h.Easier(g)) {
		return h, true
	}
	return g, ok
}

// Four sizes by hand. 9 things on 45 places are 5 apart, 8 on 40 too, 10 on 40 are 4
// apart and 12 on 48: a run each, with one change between the second and the third.
func TestGradedByHand(t *testing.T) {
	g, ok := either(sized(0.5, sleeve(9, 45), sleeve(8, 40), sleeve(10, 40), sleeve(12, 48)))
	want := []GradedRun{{[]int{5, 5, 4, 4}, nil, []int{8, 7, 9, 11}}}
	if !ok || !reflect.DeepEqual(g.Runs, want) || g.Effort != 4*2+effortOfChange {
		t.Errorf("%+v, %v; want %+v", g, ok, want)
	}
	if got := g.InRows(2).Of(2); !reflect.DeepEqual(got, Schedule{{[]int{8}, 9}}) {
		t.Errorf("the third size: %v", got)
	}
	// A size with a single thing works no run, and one where all have one has no runs.
	g, ok = either(sized(1, sleeve(9, 45), sleeve(1, 5)))
	if want := []GradedRun{{[]int{5, 5}, nil, []int{8, 0}}}; !ok || !reflect.DeepEqual(g.Runs, want) || g.Effort != 2+effortOfZero {
		t.Errorf("%+v, %v; want %+v", g, ok, want)
	}
	if g, ok = either(sized(1, sleeve(1, 9), sleeve(1, 5))); !ok || g.Runs != nil || g.Effort != 0 || len(g.Firsts) != 2 {
		t.Errorf("%+v, %v", g, ok)
	}
	// A departure that no schedule keeps to.
	if g, ok = either([]Size{{sleeve(5, 23), 0}}); ok {
		t.Errorf("%+v", g)
	}
}

// Five sizes as they are, twenty of the longest pieces, and twenty that have nothing in
// common.
func BenchmarkGraded(b *testing.B) {
	for name, line := range map[string]func(i int) Line{
		"five sleeves":    func(i int) Line { return sleeve(12+i, 100+3*i) },
		"twenty blankets": func(i int) Line { return sleeve(4000-150*i, 5000) },
		"twenty unlike":   func(i int) Line { return sleeve(20, 60+90*i) },
	} {
		b.Run(name, func(b *testing.B) {
			lines := make([]Line, 5)
			if strings.HasPrefix(name, "twenty") {
				lines = make([]Line, 20)
			}
			for i := range lines {
				lines[i] = line(i)
			}
			sizes := sized(0.5, lines...)
			for b.Loop() {
				if _, ok := Grade(sizes, ShortFirst); !ok {
					b.Fatal("nothing found")
				}
			}
		})
	}
}

// What is found by halving is what trying every split finds, on lines of every slope,
// with room to spare and without.
func TestSplitsAreTheNearest(t *testing.T) {
	rng := rand.New(rand.NewPCG(6, 1))
	compared := 0
	for range 4000 {
		l := sleeve(3+rng.IntN(60), 0)
		l.Places = l.Times + rng.IntN(5*l.Times)
		l = sleeve(l.Times, l.Places)
		l.Start += (rng.IntN(9) - 4) * l.Unit / 3
		low, high := l.intervals()
		a, b, n := low+rng.IntN(high-low+1), low+rng.IntN(high-low+1), l.Times-1
		if a == b {
			continue
		}
		nearest := func(show func(func(form) (int, bool))) map[int]int { // by how many runs come once
			best := map[int]int{}
			show(func(f form) (int, bool) {
				_, off, ok := l.lay(f)
				once := 0
				for _, r := range f {
					if r.times == 1 {
						once++
					}
				}
				if old, known := best[once]; ok && (!known || off < old) {
					best[once] = off
				}
				return off, ok
			})
			return best
		}
		got := nearest(func(lay func(form) (int, bool)) { l.split(a, b, lay) })
		want := nearest(func(lay func(form) (int, bool)) {
			for m := 1; m < n; m++ {
				lay(form{{a, 0, m}, {b, 0, n - m}})
			}
		})
		if !reflect.DeepEqual(got, want) {
			t.Fatalf("%+v, %d and %d: %v, and %v by trying all", l, a, b, got, want)
		}
		compared += len(want)
	}
	if compared < 3000 {
		t.Errorf("%d compared: the sweep has shrunk", compared)
	}
}
