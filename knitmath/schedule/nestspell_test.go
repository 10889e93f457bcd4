package schedule

import (
	"math"
	"slices"
	"testing"
)

// toldInSpells is the least effort of telling steps in spells, with the steps by which the blocks
// of it are more than they count as; false if that cannot be.
func toldInSpells(steps []Step, every int) (int, bool) {
	best := math.MaxInt
	for before := range 2 {
		for after := range 2 {
			inner := steps[before:max(before, len(steps)-after)]
			for cut := 1; cut <= len(inner); cut++ {
				one, ok := spelled(inner[:cut], before == 0, every)
				if !ok {
					continue
				}
				two, ok := 0, cut == len(inner)
				if !ok {
					two, ok = spelled(inner[cut:], false, every)
				}
				if ok && one+two >= 6 && (two > 2 || one > 2) {
					best = min(best, 2*before+2*after+one+two)
				}
			}
		}
	}
	return best, best < math.MaxInt
}

// spelled is the effort of a spell that is just these steps, and false if there is none. The very first
// step of all may come after any number of rows.
func spelled(steps []Step, start bool, every int) (int, bool) {
	if len(steps) > 1 && comeAgain(steps, 1, start) {
		return 2, true
	}
	best := math.MaxInt
	for size := 3; 2*size <= len(steps); size++ {
		if len(steps)%size == 0 && comeAgain(steps, size, start) && isSpell(steps[size:2*size], every) {
			best = min(best, max(size, 6)) // what four steps are told with is one more than five take
			if size == 4 {
				best = 7
			}
		}
	}
	return best, best < math.MaxInt
}

// isSpell reports whether one of these steps, the first, the last or the one in the middle, is odd, and
// whether the intervals beside it are alike or alternate.
func isSpell(steps []Step, every int) bool {
	if oddOnes(steps) != 1 {
		return false
	}
	n := len(steps)
	alternate := n%2 == 0
	for i := 2; i < n; i++ {
		alternate = alternate && steps[i].Every == steps[i-2].Every
	}
	for _, place := range []int{0, n / 2, n - 1} {
		rest := slices.DeleteFunc(slices.Clone(steps), func(s Step) bool { return s == steps[place] })
		level := steps[place].Level
		if slices.ContainsFunc(rest, func(s Step) bool { return s.Level == level }) {
			continue
		}
		alike := true
		var others []int
		for i, s := range steps {
			if i != place && i != (place+1)%n {
				others = append(others, s.Every)
			}
		}
		for _, o := range others {
			alike = alike && o == others[0]
		}
		if alike || alternate {
			return true
		}
	}
	return false
}

// Every choice there is: where one can be told in spells InSpells finds one that takes no more, and
// nothing else.
func TestNestedInSpellsAgainstEveryChoice(t *testing.T) {
	asked, found := 0, 0
	nests(sweep(10, 8), func(n Nest) {
		if len(n.Times) < 2 || n.slots() > 9 || n.Rows%2 > 0 && n.slots() > 8 {
			return
		}
		least := n.Nearest().Departure
		for _, allowed := range []int{least, least + n.Rows/2, 2 * n.Rows} {
			effort := math.MaxInt
			choices(n, func(rows, levels []int) {
				if departureByHand(n, rows, levels) > allowed || !oneApart(n, rows) {
					return
				}
				choice := Nested{Rows: rows, Levels: levels}
				for thing := range n.Times {
					if !runsByHand(intervalsByHand(choice, thing)) {
						return
					}
				}
				if told, ok := toldInSpells(stepsOf(rows, levels, 0), n.Every); ok {
					effort = min(effort, told)
				}
			})
			asked++
			got, ok := n.InSpells(allowed, math.MaxInt)
			if ok != (effort < math.MaxInt) {
				t.Fatalf("%+v, at most %d: found is %v (%v), and there is one of %d", n, allowed, ok, got.Blocks(), effort)
			}
			if !ok {
				continue
			}
			found++
			if d := departureByHand(n, got.Rows, got.Levels); d != got.Departure || d > allowed {
				t.Fatalf("%+v, at most %d: %+v departs by %d", n, allowed, got, d)
			}
			if n.Apart == 0 && Effort(got.Blocks()) > effort {
				t.Fatalf("%+v, at most %d: %v takes %d, and %d is possible", n, allowed, got.Blocks(), Effort(got.Blocks()), effort)
			}
			for thing, k := range n.Times {
				if rows := got.RowsOf(thing); len(rows) != k || !runsByHand(intervalsByHand(got, thing)) {
					t.Fatalf("%+v, at most %d: thing %d in %v", n, allowed, thing, rows)
				}
			}
			if less, ok := n.InSpells(allowed, Effort(got.Blocks())); ok && n.Apart == 0 && Effort(less.Blocks()) >= Effort(got.Blocks()) {
				t.Fatalf("%+v: %v is not below %v", n, less.Blocks(), got.Blocks())
			}
		}
	})
	if asked < sweep(400, 150) || found < 30 {
		t.Errorf("%d asked, %d found", asked, found)
	}
	t.Logf("%d asked, %d found", asked, found)
}

// Long blocks are told with the least effort, and as they are worked: of five to seven steps, the odd one anywhere,
// two or three times, with other steps before and after.
func TestLongBlocksAreTold(t *testing.T) {
	long := 0
	for size := 5; size <= 7; size++ {
		for odd := range size {
			for times := 2; times <= 3; times++ {
				for around := range 16 {
					for gaps := range sweep(1<<size, 8) {
						p := longChoice(size, odd, times, around, gaps)
						blocks := p.Blocks()
						steps := stepsOf(p.Rows, p.Levels, 0)
						if got, want := Effort(blocks), leastTold(steps); got != want {
							t.Fatalf("%v: %v takes %d, want %d", steps, blocks, got, want)
						}
						at := 0
						for _, b := range blocks {
							for i := range b.Times * len(b.Steps) {
								if s := b.Steps[i%len(b.Steps)]; s.Level != steps[at].Level || at > 0 && s.Every != steps[at].Every {
									t.Fatalf("%v are told as %v", steps, blocks)
								}
								at++
							}
							if len(b.Steps) > mostSteps {
								long++
							}
						}
						if at != len(steps) {
							t.Fatalf("%v are told as %v", steps, blocks)
						}
					}
				}
			}
		}
	}
	if long < 1000 {
		t.Errorf("%d long blocks", long)
	}
}

// longChoice is a block of so many steps, so many times, of which the odd one is of level 1, with intervals of 2 or
// 3 as bits say; around it bits say whether there are steps of level 1 or 2 before and after.
func longChoice(size, odd, times, around, gaps int) Nested {
	var p Nested
	row := 1
	step := func(every, level int) {
		row += every
		p.Rows, p.Levels = append(p.Rows, row), append(p.Levels, level)
	}
	if around&1 > 0 {
		step(2, 1+around>>2&1)
	}
	for range times {
		for i := range size {
			level := 2
			if i == odd {
				level = 1
			}
			step(2+gaps>>i&1, level)
		}
	}
	if around&2 > 0 {
		step(3, 1+around>>3&1)
	}
	return p
}
