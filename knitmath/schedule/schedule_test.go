package schedule

import (
	"math"
	"reflect"
	"slices"
	"testing"
)

func TestOfJoinsEqualNeighbours(t *testing.T) {
	s := Of([]int{8, 8, 6, 8})
	want := Schedule{{[]int{8}, 2}, {[]int{6}, 1}, {[]int{8}, 1}}
	if !reflect.DeepEqual(s, want) {
		t.Errorf("%v, want %v", s, want)
	}
	if got := s.Intervals(); !reflect.DeepEqual(got, []int{8, 8, 6, 8}) {
		t.Errorf("written out again: %v", got)
	}
	if s.Effort() != 6 {
		t.Errorf("three runs of two numbers take %d", s.Effort())
	}
	alternating := Schedule{{[]int{8, 6}, 2}}
	if got := alternating.Intervals(); !reflect.DeepEqual(got, []int{8, 6, 8, 6}) {
		t.Errorf("alternating: %v", got)
	}
	if got := slices.Collect(alternating.From(3)); !reflect.DeepEqual(got, []int{3, 11, 17, 25, 31}) {
		t.Errorf("from 3 on: %v", got)
	}
	for at := range alternating.From(3) {
		if at > 3 {
			break // whoever has seen enough is shown no more
		}
	}
	if two := (Schedule{{[]int{8}, 2}, {[]int{6}, 2}}).Effort(); two >= alternating.Effort() {
		t.Errorf("two runs take %d, alternating %d", two, alternating.Effort())
	}
	if Of(nil).Effort() != 0 {
		t.Error("nothing is not nothing to remember")
	}
}

// lines are all lines of up to so many places, at several slopes and starts.
func lines(places int, do func(Line)) {
	for n := 1; n <= places; n++ {
		for times := 1; times <= n; times++ {
			for _, span := range []int{2*n - 1, 2 * n, 2*n + 1} {
				for start := -3; start <= 3; start++ {
					unit := 4 * times
					do(Line{Times: times, Places: n, Start: span + start*times - unit/2, Step: 2 * span, Unit: unit})
				}
			}
		}
	}
}

// Every choice of places there is: none departs less than the nearest.
func TestNoChoiceIsNearerThanTheNearest(t *testing.T) {
	lines(11, func(l Line) {
		places := l.Nearest()
		for i, p := range places {
			if p < 0 || p >= l.Places || i > 0 && p <= places[i-1] {
				t.Fatalf("%+v: %v are no places in order", l, places)
			}
		}
		best := math.MaxInt
		for set := range 1 << l.Places {
			var chosen []int
			for p := range l.Places {
				if set>>p&1 == 1 {
					chosen = append(chosen, p)
				}
			}
			if len(chosen) == l.Times {
				best = min(best, l.Departure(chosen))
			}
		}
		if got := l.Departure(places); got != best {
			t.Fatalf("%+v: %v departs by %d, and %d is possible", l, places, got, best)
		}
	})
}

// Every choice of places again, as runs: none that is allowed is easier than what is
// found, or as easy and nearer.
func TestNoScheduleIsEasierThanTheEasiest(t *testing.T) {
	found, none, turned := 0, 0, 0
	lines(11, func(l Line) {
		least := l.Departure(l.Nearest())
		for i, more := range []int{0, l.Unit / 2, l.Step, l.Unit / 2, l.Step} {
			if l.Even = i > 2; l.Even && l.Places > 9 { // there even intervals two apart, which are not looked at, may be liked better
				break
			}
			first, s, ok := l.Easiest(least + more)
			easy := easiestByTrial(l, least+more, leastEffort)
			if !easy.found { // only then
				if easy = easiestByTrial(l, least+more, leastOfTurns); easy.found {
					turned++
				}
			}
			if ok != easy.found {
				t.Fatalf("%+v, departing %d: found is %v, and there is %+v", l, least+more, ok, easy)
			}
			if !ok {
				none++
				continue
			}
			found++
			places := []int{first}
			for _, every := range s.Intervals() {
				places = append(places, places[len(places)-1]+every)
			}
			if len(places) != l.Times || first < 0 || places[len(places)-1] >= l.Places {
				t.Fatalf("%+v: first %d, then %v lies outside", l, first, s)
			}
			if got := l.Departure(places); got > least+more || s.Effort() != easy.effort || got != easy.off {
				t.Fatalf("%+v, at most %d: first %d, then %v takes %d and departs %d; %v takes %d and departs %d",
					l, least+more, first, s, s.Effort(), got, easy.places, easy.effort, easy.off)
			}
		}
	})
	if found < 500 || none < 30 || turned < 10 {
		t.Errorf("%d found, %d of them in turn, %d not: the sweep has shrunk", found, turned, none)
	}
}

type trial struct {
	found       bool
	effort, off int
	places      []int
}

// isEven reports whether all intervals are of even numbers of places.
func isEven(places []int) bool {
	for i := range places[1:] {
		if (places[i+1]-places[i])%2 != 0 {
			return false
		}
	}
	return true
}

// easiestByTrial tries every choice of places, and reads each in every way as at
// most two runs.
func easiestByTrial(l Line, departure int, least func(places []int) (int, bool)) (best trial) {
	var even trial
	for set := range 1 << l.Places {
		var places []int
		for p := range l.Places {
			if set>>p&1 == 1 {
				places = append(places, p)
			}
		}
		if len(places) != l.Times {
			continue
		}
		off := l.Departure(places)
		effort, ok := least(places)
		if !ok || off > departure {
			continue
		}
		t := trial{true, effort, off, places}
		if !best.found || effort < best.effort || effort == best.effort && off < best.off {
			best = t
		}
		if isEven(places) && (!even.found || effort < even.effort || effort == even.effort && off < even.off) {
			even = t
		}
	}
	if l.Even && even.found && even.effort == best.effort && even.off-best.off <= l.Step/4 {
		return even
	}
	return best
}

func leastEffort(places []int) (effort int, ok bool) {
	var gaps []int
	for i := range places[1:] {
		gaps = append(gaps, places[i+1]-places[i])
	}
	if len(gaps) == 0 {
		return 0, true
	}
	effort = math.MaxInt
	if one := effortOfRun(gaps); one > 0 {
		effort = one
	}
	for cut := 1; cut < len(gaps); cut++ {
		a, b := effortOfRun(gaps[:cut]), effortOfRun(gaps[cut:])
		if a > 0 && b > 0 && min(a, b) == 2 { // at most one of the two alternates
			effort = min(effort, a+b)
		}
	}
	return effort, effort < math.MaxInt
}

// leastOfTurns is leastEffort of places of which the intervals are three or four in turn at least twice, the last of them one more or less
// than the others, which are alike; and before them or after them perhaps another run.
func leastOfTurns(places []int) (effort int, ok bool) {
	var gaps []int
	for i := range places[1:] {
		gaps = append(gaps, places[i+1]-places[i])
	}
	effort = effortOfTurns(gaps)
	for cut := 1; cut < len(gaps); cut++ {
		for _, part := range [][2][]int{{gaps[:cut], gaps[cut:]}, {gaps[cut:], gaps[:cut]}} {
			a, b := effortOfTurns(part[0]), effortOfRun(part[1])
			if other := effortOfTurns(part[1]); b == 0 || other > 0 && other < b {
				b = other
			}
			if a > 0 && b > 0 && slices.Max(gaps)-slices.Min(gaps) == 1 && (effort == 0 || a+b < effort) {
				effort = a + b
			}
		}
	}
	return effort, effort > 0
}

// effortOfTurns is the effort of one run of three or four intervals in turn, and 0 where it is none.
func effortOfTurns(gaps []int) int {
	for _, size := range []int{3, 4} {
		last := size - 1
		ok := len(gaps)%size == 0 && len(gaps) >= 2*size
		for i := 0; ok && i < len(gaps); i++ {
			ok = gaps[i] == gaps[0] && i%size != last || gaps[i] == gaps[last] && i%size == last
		}
		if ok && (gaps[last] == gaps[0]+1 || gaps[last] == gaps[0]-1) {
			return 6 // "3 of 4" is no harder to remember than "2 of 3"
		}
	}
	return 0
}

// effortOfRun is the effort of one run, and 0 where it is none.
func effortOfRun(gaps []int) int {
	equal, alternating := true, len(gaps)%2 == 0
	for i := range gaps {
		equal = equal && gaps[i] == gaps[0]
		alternating = alternating && gaps[i] == gaps[i%2]
	}
	switch {
	case equal:
		return 2
	case alternating:
		return 5
	}
	return 0
}
