package pattern

import (
	"math/rand/v2"
	"testing"
)

// TestFirstStretch works rows part by part, and by what is worked out once.
func TestFirstStretch(t *testing.T) {
	rng := rand.New(rand.NewPCG(4, 4))
	for range 20000 {
		var parts []part
		for range rng.IntN(4) {
			parts = append(parts, part{tally{rng.Int64N(5), rng.Int64N(5), 1}, &Step{}, tally{rng.Int64N(4), rng.Int64N(4), 1}, rng.Int64N(8)})
		}
		rest := tally{rng.Int64N(6), rng.Int64N(6), 1}
		on := rng.Int64N(30)
		slow := course{left: on}
		for i := range parts {
			slow.stretch(&parts[i])
		}
		slow.end(rest, 0)
		fast := profile{rest: rest}
		if len(parts) > 0 {
			fast.stretches, fast.first = true, parts[0]
			for way, reason := range wayReasons {
				after := course{left: parts[0].last, outcome: outcome{reason: reason}}
				for i := range parts[1:] {
					after.stretch(&parts[i+1])
				}
				after.end(rest, 0)
				fast.then[way] = after.outcome
			}
		}
		got, want := fast.work(on), slow.outcome
		got.misses, got.halts, want.misses, want.halts = false, false, false, false
		if got != want {
			t.Fatalf("%+v, then %+v, on %d: %+v, part by part %+v", parts, rest, on, got, want)
		}
	}
}
