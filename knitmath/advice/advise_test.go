package advice

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
)

// What would do is the nearest value below and above, of a count that must be a multiple and of a length that
// must be long enough; where two fields have to change, both are told.
func TestAdd(t *testing.T) {
	for name, c := range map[string]struct {
		count  int
		cm     float64
		does   func(count int, cm float64) []string
		advice map[string]string
	}{
		"multiple": {50, 1, func(n int, _ float64) []string {
			if n%6 > 0 {
				return []string{"count"}
			}
			return nil
		}, map[string]string{"count": "; 48 or 54 would do"}},
		"length": {1, 3.2, func(_ int, cm float64) []string {
			if cm < 7.3 {
				return []string{"cm"}
			}
			return nil
		}, map[string]string{"cm": "; 7.5 cm would do"}},
		"next": {1, 3.2, func(_ int, cm float64) []string {
			if cm > 3.1 {
				return []string{"cm"}
			}
			return nil
		}, map[string]string{"cm": "; 3 cm would do"}},
		"far": {400, 1, func(n int, _ float64) []string {
			if n > 7 {
				return []string{"count"}
			}
			return nil
		}, map[string]string{"count": "; 7 would do"}},
		"both": {5, 2, func(n int, cm float64) (fields []string) {
			if n%2 > 0 {
				fields = append(fields, "count")
			}
			if cm < 4 {
				fields = append(fields, "cm")
			}
			return fields
		}, map[string]string{"count": "; 6 would do together with the others", "cm": "; 4 cm would do together with the others"}},
		"neither": {5, 2, func(int, float64) []string { return []string{"count", "cm"} }, map[string]string{"count": "", "cm": ""}},
	} {
		count, cm := &c.count, &c.cm
		ask := func() error {
			var checks fault.Checks
			for _, field := range c.does(*count, *cm) {
				checks.Infeasible("no", field)
			}
			return checks.Err()
		}
		err := Add(ask(), func() int { return 100 }, ask, 0,
			Knob{Field: "count", Count: &count, Least: 1, Most: 500}, Knob{Field: "cm", Cm: &cm, Least: 0.1, Most: 100})
		var refused *fault.InputError
		if !errors.As(err, &refused) || len(refused.Violations) != len(c.advice) {
			t.Fatalf("%s: %v", name, err)
		}
		for _, v := range refused.Violations {
			if v.Detail != "no"+c.advice[v.Field] {
				t.Errorf("%s: %s %q", name, v.Field, v.Detail)
			}
		}
	}
}

// Where nothing that is tried is cheap enough, nothing is offered.
func TestAdviseTriesNothingDear(t *testing.T) {
	count, other, price := new(5), new(5), 0
	ask := func() error {
		var checks fault.Checks
		checks.Infeasible("no", "count", "other")
		return checks.Err()
	}
	cost := func() int { price++; return price * price * 100 }
	err := Add(ask(), cost, ask, 0, Knob{Field: "count", Count: &count, Least: 1, Most: 50},
		Knob{Field: "other", Count: &other, Least: 1, Most: 50})
	if err == nil || err.Error() != ask().Error() {
		t.Error(err)
	}
}

// A field that has no value near that does, and that may be left out, is told so, where that was asked and does; it stays as it is.
func TestAdviseLeavesOut(t *testing.T) {
	for name, c := range map[string]struct {
		optional, does bool
		want           string
	}{
		"does": {true, true, "no; leave it out, and what does is taken"}, "does not": {true, false, "no"}, "must be given": {false, true, "no"},
	} {
		n := 7
		count := &n
		ask := func() error {
			if count == nil && c.does {
				return nil
			}
			var checks fault.Checks
			checks.Infeasible("no", "count")
			return checks.Err()
		}
		err := Add(ask(), func() int { return 100 }, ask, 0, Knob{Field: "count", Count: &count, Least: 1, Most: 500, Optional: c.optional})
		var refused *fault.InputError
		if !errors.As(err, &refused) || refused.Violations[0].Detail != c.want || count != &n {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// A refusal asks no more questions than MaxSteps pay for, and says what they cost.
func TestAdviceIsPaidFor(t *testing.T) {
	for _, price := range []int{1, 75, 2_000, 7_000, 45_000, MaxSteps, 3 * MaxSteps} {
		count, other, worked := new(250), new(250), 0
		ask := func() error {
			worked += price
			var checks fault.Checks
			checks.Infeasible("no", "count", "other")
			return checks.Err()
		}
		err := ask()
		worked = 0
		err = Add(err, func() int { return price }, ask, 0, Knob{Field: "count", Count: &count, Least: 1, Most: 500, Optional: true},
			Knob{Field: "other", Count: &other, Least: 1, Most: 500, Optional: true})
		var refused *fault.InputError
		if !errors.As(err, &refused) || refused.Sought != worked || worked > max(0, MaxSteps-price) || price <= 2_000 && worked == 0 {
			t.Errorf("a price of %d: worked %d, said %+v", price, worked, refused)
		}
	}
}

// Small lengths are tried in tenths of a centimetre, and a length may be left out as a count may.
func TestAddTurnsLengths(t *testing.T) {
	for name, c := range map[string]struct {
		cm, least float64
		unit      measure.DisplayUnit
		without   bool
		want      string
	}{
		"small": {0.6, 0.75, 0, false, "no; 0.8 cm would do"}, "left out": {3, 1000, 0, true, "no; leave it out, and what does is taken"},
		"inches": {3, 4.5, measure.DisplayUnitIn, false, "no; 2 in would do"}, // 1.75 in are 4.445 cm
		// 0.3 in are 0.762 cm
		"small, in inches": {0.6, 0.75, measure.DisplayUnitIn, false, "no; 0.3 in would do"},
	} {
		cm := &c.cm
		ask := func() error {
			var checks fault.Checks
			if cm == nil && !c.without || cm != nil && *cm < c.least {
				checks.Infeasible("no", "cm")
			}
			return checks.Err()
		}
		err := Add(ask(), func() int { return 1 }, ask, c.unit,
			Knob{Field: "cm", Cm: &cm, Least: 0.1, Most: 100, Optional: true})
		var refused *fault.InputError
		if !errors.As(err, &refused) || refused.Violations[0].Detail != c.want || cm != &c.cm {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// What is refused for another reason than that it has no answer, or in fields without a knob, is told as it is.
func TestAddLeavesOthersAlone(t *testing.T) {
	count := new(5)
	ask := func() error { t.Error("asked"); return nil }
	for name, refuse := range map[string]func(*fault.Checks){
		"nothing":          func(*fault.Checks) {},
		"a missing field":  func(c *fault.Checks) { c.Infeasible("no", "count"); c.RequiredCount("", "rows", 0, 1, 9) },
		"fields unturned":  func(c *fault.Checks) { c.Infeasible("no", "rows") },
		"one not given":    func(c *fault.Checks) { c.Infeasible("no", "other") },
		"a range, no more": func(c *fault.Checks) { c.RequiredCount("", "count", 0, 1, 9) },
	} {
		var checks fault.Checks
		refuse(&checks)
		was := fmt.Sprint(checks.Err())
		err := Add(checks.Err(), func() int { return 1 }, ask, 0, Knob{Field: "count", Count: &count, Least: 1, Most: 9},
			Knob{Field: "other", Count: new(*int), Least: 1, Most: 9})
		if fmt.Sprint(err) != was {
			t.Errorf("%s: %v, was %s", name, err, was)
		}
	}
}

// A number that a refusal ends with is not offered once more.
func TestAddSaysNothingTwice(t *testing.T) {
	for detail, want := range map[string]string{"can only have 2": "can only have 2", "can have 2 to 12": "can have 2 to 12; 2 would do"} {
		count := new(1)
		ask := func() error {
			var checks fault.Checks
			if *count != 2 {
				checks.Infeasible(detail, "count")
			}
			return checks.Err()
		}
		err := Add(ask(), func() int { return 1 }, ask, 0, Knob{Field: "count", Count: &count, Least: 1, Most: 9})
		if err.Error() != "count: "+want {
			t.Errorf("%v, want %s", err, want)
		}
	}
}

// What is offered is asked as it is printed, to the last bit, and is never what was refused.
func TestOffersAreAskedAsPrinted(t *testing.T) {
	for tenths := 1; tenths <= 10; tenths++ {
		refused := float64(tenths) / 10
		cm := &refused
		ask := func() error {
			if *cm > refused+0.05 && float64(int(*cm*10+0.5))/10 == *cm {
				return nil
			}
			return &fault.InputError{Violations: []fault.Violation{{Field: "height_cm", Reason: fault.ReasonInfeasible}}}
		}
		err := Add(ask(), func() int { return 1 }, ask, 0,
			Knob{Field: "height_cm", Cm: &cm, Least: 0.1, Most: 100})
		want := measure.DisplayUnitCm.Size(refused+0.1) + " would do"
		if !strings.Contains(err.Error(), "; "+want) {
			t.Errorf("%v cm: %v, want %s", refused, err, want)
		}
	}
}

// Where another field is refused whatever is done, AddOrMend says what mends a field's own fault, and Add nothing.
func TestAddOrMend(t *testing.T) {
	count := new(5)
	ask := func() error {
		var c fault.Checks
		if *count%2 > 0 {
			c.Infeasible("is odd", "count")
		}
		c.Infeasible("never is", "other")
		return c.Err()
	}
	for want, add := range map[string]func(error, func() int, func() error, measure.DisplayUnit, ...Knob) error{
		"is odd": Add, "is odd; 4 or 6 would mend this": AddOrMend} {
		var refused *fault.InputError
		knob := Knob{Field: "count", Count: &count, Least: 1, Most: 9}
		errors.As(add(ask(), func() int { return 1 }, ask, measure.DisplayUnitCm, knob), &refused)
		if got := refused.Violations[0].Detail; got != want {
			t.Errorf("%q, not %q", got, want)
		}
	}
}
