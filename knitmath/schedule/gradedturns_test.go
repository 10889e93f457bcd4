package schedule

import (
	"math"
	"math/rand/v2"
	"testing"
)

// Of all choices in all sizes of two intervals that alternate, of a run beside them and
// of how often each comes, none takes less effort than what is found, or as much and
// departs less.
func TestNoFormThatAlternatesIsEasier(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 7))
	found, zeros, none, alone := 0, 0, 0, 0
	for range 400 {
		lines := make([]Line, 1+rng.IntN(3))
		for i := range lines {
			places := 6 + rng.IntN(18)
			lines[i] = sleeve(min(1+rng.IntN(min(places, 10))+2*(1-min(i, 1)), places), places)
			lines[i].Even = rng.IntN(2) == 0
		}
		kind := AlternatingFirst + GradedForm(rng.IntN(2))
		sizes := sized([]float64{0.2, 0.5, 1}[rng.IntN(3)], lines...)
		g, ok := Grade(sizes, kind)
		effort, off := turnsByTrial(sizes, kind)
		if ok != (effort < math.MaxInt) {
			t.Fatalf("%+v: found is %v, and effort %d is possible", sizes, ok, effort)
		}
		if !ok {
			none++
			continue
		}
		found++
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
			t.Fatalf("%v %+v: %+v departs by %v in all; effort %d and %v are possible", kind, sizes, g, sum, effort, off)
		}
		if len(g.Runs) == 1 && g.Runs[0].AlternateRows != nil {
			alone++
		}
		for _, r := range g.Runs {
			for _, n := range r.Times {
				if n == 0 {
					zeros++
				}
			}
		}
	}
	if found < 160 || zeros < 30 || alone < 5 || none < 1 {
		t.Errorf("%d found, %d zeros, %d alone, %d without a form: the sweep has shrunk", found, zeros, alone, none)
	}
}

// turnsByTrial tries all forms of a kind, one after the other.
func turnsByTrial(sizes []Size, kind GradedForm) (effort int, off float64) {
	pairs := map[[2]int]bool{}
	for _, s := range sizes {
		if s.Line.Times < 3 {
			continue
		}
		for short := max(s.Line.Step/s.Line.Unit-1, 1); short <= max(s.Line.Step/s.Line.Unit, 1); short++ {
			pairs[[2]int{short, short + 1}], pairs[[2]int{short + 1, short}] = true, true
		}
	}
	var states []state
	for p := range pairs {
		if !worked(sizes, p, kind) {
			continue
		}
		states = append(states, state{p[0], p[1], p[0]}, state{p[0], p[1], p[1]})
		if kind == AlternatingFirst {
			states = append(states, state{p[0], p[1], 0})
		}
	}
	effort, off = math.MaxInt, math.Inf(1)
	var join func(i, effortSoFar int, offSoFar float64, last state, beside bool)
	join = func(i, effortSoFar int, offSoFar float64, last state, beside bool) {
		if i == len(sizes) {
			if last != (state{}) && (effortSoFar < effort || effortSoFar == effort && offSoFar < off-1e-9) {
				effort, off = effortSoFar, offSoFar
			}
			return
		}
		if sizes[i].Line.Times == 1 {
			zeros := 1
			if beside {
				zeros = 2
			}
			_, departs, _ := sizes[i].Line.lay(form{})
			join(i+1, effortSoFar+3*zeros, offSoFar+float64(departs)/float64(sizes[i].Line.Step), last, beside)
			return
		}
		for _, s := range states {
			change := 0
			for k := range s {
				if last != (state{}) && s[k] != last[k] {
					change += 2
				}
			}
			if s[2] != 0 != beside {
				continue
			}
			for m := 0; 2*m < sizes[i].Line.Times; m++ {
				if e, departs, ok := turnsOnce(sizes[i], s, m, kind); ok {
					join(i+1, effortSoFar+change+e, offSoFar+departs, s, beside)
				}
			}
		}
	}
	join(0, 0, 0, state{}, true)
	join(0, 0, 0, state{}, false)
	return effort, off
}

// worked reports whether any size has a schedule in which these alternate.
func worked(sizes []Size, p [2]int, kind GradedForm) bool {
	for _, s := range sizes {
		for m := 1; 2*m < s.Line.Times; m++ {
			for _, beside := range []int{p[0], p[1], 0} {
				if _, _, ok := turnsOnce(s, state{p[0], p[1], beside}, m, kind); ok {
					return true
				}
			}
		}
	}
	return false
}

// turnsOnce is what so many turns and the run beside them cost in a size, if they lie
// near enough.
func turnsOnce(s Size, st state, m int, kind GradedForm) (effort int, off float64, ok bool) {
	n := s.Line.Times - 1 - 2*m
	if st[2] == 0 && (n != 0 || m == 0) {
		return 0, 0, false
	}
	low := s.Line.Step / s.Line.Unit
	if m > 0 && (min(st[0], st[1]) < max(low-1, 1) || min(st[0], st[1]) > max(low, 1)) || m == 0 && !tried(s.Line, st[2]) {
		return 0, 0, false
	}
	for times, cost := range map[int]int{m: 5, n + 1000: 2} {
		switch {
		case times == 1000 && st[2] == 0:
		case times%1000 == 0:
			effort += 3
		case times%1000 == 1:
			effort += cost + 1
		default:
			effort += cost
		}
	}
	var gaps []int
	for range m {
		gaps = append(gaps, st[0], st[1])
	}
	rest := make([]int, n)
	for i := range rest {
		rest[i] = st[2]
	}
	if kind == AlternatingLast {
		gaps = append(rest, gaps...)
	} else {
		gaps = append(gaps, rest...)
	}
	best := -1
	for first := range s.Line.Places {
		places := []int{first}
		for _, every := range gaps {
			places = append(places, places[len(places)-1]+every)
		}
		if departs := s.Line.Departure(places); places[len(places)-1] < s.Line.Places && (best < 0 || departs < best) {
			best = departs
		}
	}
	if best < 0 || best > s.Departure {
		return 0, 0, false
	}
	off = float64(best) / float64(s.Line.Step)
	if s.Line.Even && Of(gaps).Odd() {
		off += 0.25
	}
	return effort, off, true
}
