package pattern

import (
	"errors"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/stitch"
)

// Every faulty step is counted, also those that are not listed; too many steps
// are one fault, however many rows go on after it.
func TestManyFaultsOfRows(t *testing.T) {
	count := func(rows []Row) int {
		_, err := FormatInstructions(FormatInstructionsInput{Rows: rows})
		var in *fault.InputError
		if !errors.As(err, &in) {
			t.Fatalf("%v", err)
		}
		return len(in.Violations) + in.Unlisted
	}
	empty := Row{Steps: make([]Step, 100)}
	if n := count([]Row{empty, empty, empty}); n != 300 {
		t.Errorf("%d faults of 300 empty steps", n)
	}
	full := make([]Step, MaxStepsGiven/MaxRowsGiven+1)
	for i := range full {
		full[i] = Step{Operation: stitch.Knit}
	}
	rows := make([]Row, MaxRowsGiven)
	for i := range rows {
		rows[i] = Row{Steps: full}
	}
	if n := count(rows); n != 1 {
		t.Errorf("%d faults of more steps than there may be", n)
	}
}
