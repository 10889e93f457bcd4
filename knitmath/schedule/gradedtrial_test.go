package schedule

import (
	"math"
	"math/rand/v2"
	"testing"
)

// Of every choice of places in every size, and of all forms that these allow, none
// takes less effort than what is found, or as much and departs less.
func TestNoFormForAllSizesIsEasier(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 4))
	zeros, none, forms := 0, 0, [3]int{}
	for range 250 {
		lines := make([]Line, 2+rng.IntN(2))
		for i := range lines {
			places := 5 + rng.IntN(8)
			lines[i] = sleeve(1+rng.IntN(min(places, 6)), places)
			lines[i].Start += rng.IntN(5) - 2
			lines[i].Even = rng.IntN(2) == 0
		}
		sizes := sized([]float64{0, 0.5, 1}[rng.IntN(3)], lines...)
		g, ok := either(sizes)
		effort, off := gradedByTrial(sizes)
		if ok != (effort < math.MaxInt) {
			t.Fatalf("%+v: found is %v, and effort %d is possible", sizes, ok, effort)
		}
		if !ok {
			none++ // one size has its only schedule in the one order, one in the other
			continue
		}
		sum := 0.0
		for i, s := range sizes {
			places := []int{g.Firsts[i]}
			for _, every := range g.Of(i).Intervals() {
				places = append(places, places[len(places)-1]+every)
			}
			departs := s.Line.Departure(places)
			if len(places) != s.Line.Times || places[0] < 0 || places[len(places)-1] >= s.Line.Places || departs > s.Departure {
				t.Fatalf("%+v: %+v lies at %v in size %d", sizes, g, places, i+1)
			}
			sum += float64(departs) / float64(s.Line.Step)
			if s.Line.Even && g.Of(i).Odd() {
				sum += 0.25
			}
		}
		if g.Effort != effort || math.Abs(sum-off) > 1e-5 {
			t.Fatalf("%+v: %+v departs by %v in all; effort %d and %v are possible", sizes, g, sum, effort, off)
		}
		forms[len(g.Runs)]++
		for _, r := range g.Runs {
			for _, n := range r.Times {
				if n == 0 {
					zeros++
				}
			}
		}
	}
	if forms[1] < 40 || forms[2] < 40 || zeros < 20 {
		t.Errorf("%v of no, one and two runs, %d zeros, %d without a form: the sweep has shrunk", forms, zeros, none)
	}
}

// A written is a way to print a schedule of one size: two intervals and how often each
// comes.
type written struct {
	a, b, m, n int
	off        float64 // in things
}

// effort is that of one size.
func (w written) effort(runs int) int {
	effort := 0
	for _, n := range []int{w.m, w.n}[:runs] {
		switch n {
		case 0:
			effort += 3
		case 1:
			effort += 3
		default:
			effort += 2
		}
	}
	return effort
}

// gradedByTrial tries every form that the places of all sizes allow.
func gradedByTrial(sizes []Size) (effort int, off float64) {
	var printed []int // intervals that any size may print
	for every := 1; every < 20; every++ {
		for _, s := range sizes {
			if tried(s.Line, every) {
				printed = append(printed, every)
				break
			}
		}
	}
	effort, off = math.MaxInt, math.Inf(1)
	for _, kind := range []struct {
		runs int
		fits func(w written) bool
	}{
		{1, func(w written) bool { return w.n == 0 && w.b == 0 }},
		{2, func(w written) bool { return w.a < w.b }},
		{2, func(w written) bool { return w.a > w.b && w.b > 0 }},
	} {
		ways := make([][]written, len(sizes))
		for i, s := range sizes {
			for _, w := range writtenIn(s, printed) {
				if kind.fits(w) {
					ways[i] = append(ways[i], w)
				}
			}
		}
		var join func(i, effortSoFar int, offSoFar float64, last written, any bool)
		join = func(i, effortSoFar int, offSoFar float64, last written, any bool) {
			if i == len(ways) {
				if !any {
					effortSoFar = 0
				}
				if effortSoFar < effort || effortSoFar == effort && offSoFar < off-1e-9 {
					effort, off = effortSoFar, offSoFar
				}
				return
			}
			for _, w := range ways[i] {
				change := 0
				if i > 0 && w.a != last.a {
					change += 2
				}
				if i > 0 && w.b != last.b {
					change += 2
				}
				join(i+1, effortSoFar+w.effort(kind.runs)+change, offSoFar+w.off, w, any || w.m+w.n > 0)
			}
		}
		join(0, 0, 0, written{}, false)
	}
	return effort, off
}

// tried: an interval lies within one of the two about the line's.
func tried(l Line, every int) bool {
	return every >= 1 && float64(every) > float64(l.Step)/float64(l.Unit)-2 && every <= l.Step/l.Unit+2
}

// writtenIn are the ways to print what a size may work, the nearest of each.
func writtenIn(s Size, printed []int) []written {
	best := map[[4]int]float64{}
	note := func(a, b, m, n int, off float64) {
		key := [4]int{a, b, m, n}
		if old, known := best[key]; !known || off < old {
			best[key] = off
		}
	}
	for set := range 1 << s.Line.Places {
		var places, gaps []int
		for p := range s.Line.Places {
			if set>>p&1 == 1 {
				if len(places) > 0 {
					gaps = append(gaps, p-places[len(places)-1])
				}
				places = append(places, p)
			}
		}
		if len(places) != s.Line.Times || s.Line.Departure(places) > s.Departure {
			continue
		}
		off := float64(s.Line.Departure(places)) / float64(s.Line.Step)
		if s.Line.Even && Of(gaps).Odd() {
			off += 0.25
		}
		cut := 0 // gaps before the first that differs
		for cut < len(gaps) && gaps[cut] == gaps[0] {
			cut++
		}
		rest, ok := gaps[cut:], true
		for i, gap := range gaps {
			ok = ok && tried(s.Line, gap) && (i < cut || gap == rest[0])
		}
		switch {
		case !ok:
		case len(rest) > 0:
			note(gaps[0], rest[0], cut, len(rest), off)
		default:
			for _, other := range printed {
				for _, a := range printed {
					switch {
					case len(gaps) == 0:
						note(a, other, 0, 0, off)
						note(a, 0, 0, 0, off)
					case a == gaps[0]:
						note(a, other, cut, 0, off)
						note(other, a, 0, cut, off)
						note(a, 0, cut, 0, off)
					}
				}
			}
		}
	}
	var all []written
	for k, off := range best {
		all = append(all, written{k[0], k[1], k[2], k[3], off})
	}
	return all
}
