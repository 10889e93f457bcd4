package pattern

import (
	"math/rand/v2"
	"testing"
)

// TestNumbering looks rules and numbers up one by one.
func TestNumbering(t *testing.T) {
	rng := rand.New(rand.NewPCG(6, 1))
	for range 300 {
		n := &numbering{}
		var rules []numbered
		written := map[int32]bool{}
		for line := range 1 + rng.IntN(30) {
			number := int32(1 + rng.IntN(100))
			n.write(number, line)
			written[number] = true
			if rng.IntN(2) == 0 {
				n.every(number, line)
				rules = append(rules, numbered{number, line})
			}
		}
		ruled := func(number int32, from int) int {
			for i := len(rules) - 1; i >= 0; i-- {
				if q := rules[i]; q.line >= from && number > q.last && (number-q.last)%2 == 0 {
					return q.line
				}
			}
			return -1
		}
		for number := int32(1); number < 120; number++ {
			from := rng.IntN(31)
			next, nextRuled := number, number
			for next <= 120 && !written[next] {
				next++
			}
			for nextRuled <= 120 && ruled(nextRuled, from) < 0 {
				nextRuled++
			}
			if got := n.ruled(number, from); got != ruled(number, from) {
				t.Fatalf("row %d from line %d by %v: line %d, want %d", number, from, rules, got, ruled(number, from))
			}
			if got := min(n.next(number), 121); got != next {
				t.Fatalf("after %d: %d, want %d", number, got, next)
			}
			if got := min(n.nextRuled(number, from), 121); got != nextRuled {
				t.Fatalf("after %d from line %d by %v: %d, want %d", number, from, rules, got, nextRuled)
			}
		}
	}
}
