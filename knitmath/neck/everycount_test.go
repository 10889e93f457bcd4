package neck

import (
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// ruled is a neck whose counts rules bind, by a number, as often far off as not.
func ruled(seed uint64) Input {
	r := rand.New(rand.NewPCG(seed, 5))
	in := sound(r)
	if r.IntN(2) == 0 {
		in = farOff(seed)
	}
	rule := func() *gauge.CountRule {
		if r.IntN(2) == 0 {
			return nil
		}
		m := 1 + r.IntN(12)
		return &gauge.CountRule{Multiple: &m, Remainder: new(r.IntN(m))}
	}
	in.NeckRule, in.WidthRule, in.BandRule = rule(), rule(), rule()
	return in
}

// Every count is one that its rule allows; what is refused for a rule says what would do, which is planned as it is printed,
// or which remainder would mend this fault, or that none would.
func TestEveryCountUnderItsRule(t *testing.T) {
	done, refused, told := 0, 0, 0
	for seed := range knittest.Sweep(4_000, 400) {
		in := ruled(uint64(seed))
		out, err := PlanNeckline(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			n := min(knittest.CheckOffers(t, in, err, ask), 1)
			if strings.Contains(err.Error(), "_rule: ") && !strings.Contains(err.Error(), "must be from ") {
				refused++
				if told += n; n == 0 && !strings.Contains(err.Error(), "; no remainder would mend this") &&
					!strings.Contains(err.Error(), "; what would do takes too long to look for") {
					t.Errorf("question %d is told nothing: %v", seed, err)
				}
			}
			continue
		}
		done++
		for field, x := range map[string]struct {
			rule  *gauge.CountRule
			count int
		}{
			"width_rule": {in.WidthRule, out.WidthStitches}, "neck_rule": {in.NeckRule, out.NeckStitches},
			"neck_rule in front": {in.NeckRule, out.Front.NeckStitches}, "band_rule": {in.BandRule, out.PickedUpStitches},
		} {
			if rule := gauge.VetRule(&fault.Checks{}, "", x.rule); !rule.Allows(x.count) {
				t.Errorf("question %d: %d stitches under %s", seed, x.count, field)
			}
		}
	}
	t.Logf("%d planned, %d refused for a rule, %d of them told what would do", done, refused, told)
	if 10*told < 9*refused || min(done, refused) < knittest.Sweep(1_000, 90) {
		t.Errorf("%d planned, %d refused for a rule, %d of them told what would do", done, refused, told)
	}
}
