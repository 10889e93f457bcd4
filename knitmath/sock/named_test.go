package sock

import (
	"errors"
	"reflect"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
)

// fieldGiven reports whether a question has the field of a path.
func fieldGiven(in any, path string) bool {
	first, _, _ := strings.Cut(path, ".")
	first, _, _ = strings.Cut(first, "[")
	name := ""
	for _, word := range strings.Split(first, "_") {
		name += strings.ToUpper(word[:1]) + word[1:]
	}
	v := reflect.ValueOf(in).FieldByName(name)
	return v.IsValid() && !v.IsZero()
}

// checkNamed wants what could not be planned to be said of fields that were given.
func checkNamed(t *testing.T, in any, err error) {
	t.Helper()
	var faults *fault.InputError
	if !errors.As(err, &faults) {
		t.Fatalf("%+v: %v", in, err)
	}
	for _, v := range faults.Violations {
		if v.Reason == fault.ReasonInfeasible && !fieldGiven(in, v.Field) {
			t.Fatalf("%+v: refused for %s, which was not given: %s", in, v.Field, v.Detail)
		}
	}
}

// What cannot be planned is never said of a field that the question does not have.
func TestRefusalsNameWhatWasGiven(t *testing.T) {
	refused := 0
	ask := func(in HeelInput) {
		if _, err := PlanHeel(in); err != nil {
			refused++
			checkNamed(t, in, err)
		}
	}
	for round := MinRound; round <= 40; round++ {
		for kind := HeelKindUnspecified; kind <= HeelKindWasteYarn; kind++ {
			for direction := DirectionCuffDown; direction <= DirectionToeUp; direction++ {
				in := HeelInput{Kind: kind, Direction: direction, RoundStitches: &round}
				ask(in)
				ask(HeelInput{Kind: kind, Direction: direction, FootCircumferenceCm: new(float64(round) / 3), Gauge: standard})
				for _, n := range []int{1, 2, 7, 10, 14, 21, 60} {
					for _, field := range []func(*HeelInput, *int){
						func(in *HeelInput, n *int) { in.HeelStitches = n }, func(in *HeelInput, n *int) { in.CentreStitches = n },
						func(in *HeelInput, n *int) { in.FlapRows = n }, func(in *HeelInput, n *int) { in.PickUpStitches = n },
						func(in *HeelInput, n *int) { in.EndStitches = n }, func(in *HeelInput, n *int) { in.SuccessiveRounds = n },
					} {
						one := in
						field(&one, &n)
						ask(one)
					}
				}
			}
		}
	}
	if refused < 1000 {
		t.Errorf("%d refused", refused)
	}
	refused = 0
	for round := MinRound; round <= 40; round++ {
		for kind := ToeKindUnspecified; kind <= ToeKindShortRows; kind++ {
			for n := range 60 {
				for _, in := range []ToeInput{{TipStitches: given(n)}, {CentreStitches: given(n)}, {WedgeCount: given(n)},
					{FootLengthCm: new(float64(n)), Gauge: standard}} {
					in.Kind, in.RoundStitches = kind, &round
					if _, err := PlanToe(in); err != nil {
						refused++
						checkNamed(t, in, err)
					}
				}
			}
		}
	}
	if refused < 1000 {
		t.Errorf("%d toes refused", refused)
	}
}
