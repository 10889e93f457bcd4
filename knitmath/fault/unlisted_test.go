package fault

import (
	"errors"
	"fmt"
	"strings"
	"testing"
)

// However many faults there are, the first hundred are listed, in order, and the
// rest is counted.
func TestUnlistedFaultsAreCounted(t *testing.T) {
	for _, n := range []int{1, 99, 100, 101, 300} {
		var c Checks
		for i := range n {
			c.Add(Index("items", i), ReasonRequired, "is missing")
		}
		var in *InputError
		if err := c.Err(); !errors.As(err, &in) {
			t.Fatalf("%d faults: %v", n, err)
		}
		if len(in.Violations) != min(n, MaxViolations) || len(in.Violations)+in.Unlisted != n {
			t.Errorf("%d faults: %d listed, %d not", n, len(in.Violations), in.Unlisted)
		}
		if last := len(in.Violations) - 1; in.Violations[last].Field != Index("items", last) {
			t.Errorf("%d faults: the last one listed is of %s", n, in.Violations[last].Field)
		}
		more := fmt.Sprintf("; and %d faults more", n-MaxViolations)
		if strings.HasSuffix(in.Error(), more) != (n > MaxViolations) {
			t.Errorf("%d faults: %s", n, in.Error())
		}
	}
	if err := new(Checks).Err(); err != nil {
		t.Errorf("no faults: %v", err)
	}
}
