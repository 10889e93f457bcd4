package solid

import (
	"math"
	"testing"
)

// The rhythm along a curve against every rhythm there is: none within the tolerance turns slower
// fewer times, or is easier where it does so as often.
func TestFewestRuns(t *testing.T) {
	for _, slope := range []float64{1, 1.3, 1.5, 1.74, 2, 2.4, 3.1} {
		for n := 1; n <= 6; n++ {
			for _, bend := range []float64{0, 0.2, -0.15} {
				steps := make([]step, n)
				for i := range steps {
					steps[i] = step{from: 2 * (n - i), to: 2*(n-i) - 2}
				}
				at := func(left float64) float64 {
					done := float64(n) - (left+1)/2
					return done*slope + bend*done*done
				}
				const tolerance, depth = 1.37, 20 // no whole number of rounds from any of the curves
				got := Along(func(left float64) float64 { return at(left) / depth }, depth, 1, tolerance).place(steps)
				ideal := func(i int) float64 { return max(at(float64(2*(n-i)-1))+1, 1) }
				best, ok := bestRhythm(ideal, n, tolerance)
				if judged := judge(got.rounds); ok && judged != best {
					t.Errorf("slope %v, bend %v, %d steps: %v is %+v, the best %+v", slope, bend, n, got.rounds, judged, best)
				}
			}
		}
	}
}

// A judgement is how often rounds turn slower, and what their runs are to remember.
type judgement struct{ slower, effort int }

func (a judgement) less(b judgement) bool {
	return a.slower < b.slower || a.slower == b.slower && a.effort < b.effort
}

// judge reads rounds as runs in every way there is, and says what the best of them is.
func judge(rounds []int) judgement {
	var gaps []int
	for i := 1; i < len(rounds); i++ {
		gaps = append(gaps, rounds[i]-rounds[i-1])
	}
	return judgeGaps(gaps, math.Inf(1))
}

// judgeGaps does so after a run of a mean gap.
func judgeGaps(gaps []int, before float64) judgement {
	if len(gaps) == 0 {
		return judgement{}
	}
	best := judgement{slower: math.MaxInt}
	for n := 1; n <= len(gaps); n++ {
		other := gaps[min(1, n-1)]
		regular := true
		for i, gap := range gaps[:n] {
			regular = regular && gap == [2]int{gaps[0], other}[i%2]
		}
		apart := max(gaps[0]-other, other-gaps[0])
		if !regular || apart > 1 || apart == 1 && n < 3 {
			continue
		}
		mean, effort := float64(gaps[0]+other)/2, 2+3*apart
		rest := judgeGaps(gaps[n:], mean)
		rest.effort += effort
		if mean > before {
			rest.slower++
		}
		if rest.less(best) {
			best = rest
		}
	}
	return best
}

// bestRhythm tries all; not ok where there is none.
func bestRhythm(ideal func(int) float64, n int, tolerance float64) (best judgement, ok bool) {
	rounds := make([]int, 0, n)
	var try func()
	try = func() {
		if len(rounds) == n {
			if j := judge(rounds); !ok || j.less(best) {
				best, ok = j, true
			}
			return
		}
		first := 1
		if len(rounds) > 0 {
			first = rounds[len(rounds)-1] + 1
		}
		x := ideal(len(rounds))
		for round := first; float64(round) <= x+tolerance; round++ {
			if float64(round) >= x-tolerance {
				rounds = append(rounds, round)
				try()
				rounds = rounds[:len(rounds)-1]
			}
		}
	}
	try()
	return best, ok
}
