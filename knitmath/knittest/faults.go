package knittest

import "testing"

// A Plant is a fault that a question may have, by a name.
type Plant[Q any] struct {
	Name string
	Into func(*Q)
}

// CheckBothListed plants two faults at a time, neither of which hides the other, and wants every field
// that is refused for one of them alone to be refused for both.
func CheckBothListed[Q any](t *testing.T, question Q, ask func(Q) error, plants ...Plant[Q]) {
	t.Helper()
	fields := func(p ...Plant[Q]) map[string]bool {
		q, found := question, map[string]bool{}
		for _, one := range p {
			one.Into(&q)
		}
		if err := ask(q); err != nil {
			for _, v := range Reasons(err) {
				found[v.Field] = true
			}
		}
		return found
	}
	for i, a := range plants {
		alone := fields(a)
		if len(alone) == 0 {
			t.Errorf("%+v: %s is no fault", question, a.Name)
		}
		for _, b := range plants[:i] {
			both := fields(a, b)
			for _, f := range [2]map[string]bool{alone, fields(b)} {
				for field := range f {
					if !both[field] {
						t.Errorf("%+v\n%s and %s: %s is not refused, but %v", question, a.Name, b.Name, field, both)
					}
				}
			}
		}
	}
}
