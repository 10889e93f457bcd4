package knittest

import "testing"

// Sweep is how far a sweep goes: not all the way in a short run, which is for
// mutants, hundreds of which are tried one after the other.
func Sweep(full, short int) int {
	if testing.Short() {
		return short
	}
	return full
}
