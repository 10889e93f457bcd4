package armhole

import (
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// ruled is a garment of any style whose counts rules bind, by a number.
func ruled(seed uint64) Input {
	in, r := garment(seed), rand.New(rand.NewPCG(seed, 5))
	rule := func() *gauge.CountRule {
		if r.IntN(2) == 0 {
			return nil
		}
		m := 1 + r.IntN(12)
		return &gauge.CountRule{Multiple: &m, Remainder: new(r.IntN(m))}
	}
	in.StitchRule, in.SleeveRule, in.AcrossRule = rule(), rule(), rule()
	if in.UnderarmStitches == nil {
		in.UnderarmRule = rule()
	}
	if in.CapTopStitches == nil {
		in.TopRule = rule()
	}
	if in.Style = Style(r.IntN(5)); in.Style.straight() {
		in.LargestGroupStitches, in.ShapingRows, in.CapHeightRule, in.CapHeightCm, in.CapHeightRows = nil, nil, 0, nil, nil
		in.CapTopCm, in.CapTopStitches, in.TopRule = nil, nil, nil
	}
	switch {
	case in.Style == StyleModifiedDrop && r.IntN(2) == 0:
		in.UnderarmStitches, in.UnderarmRule = nil, nil
	case in.Style.straight():
		if in.AcrossBackCm, in.AcrossRule = nil, nil; in.Style == StyleDrop {
			in.UnderarmStitches, in.UnderarmRule = nil, nil
		}
	}
	return in
}

// Every count that is worked out is one that its rule allows, in every style; what is refused for a rule says what would do,
// which is planned as it is printed, or which remainder would mend this fault, or that none would.
func TestEveryCountUnderItsRule(t *testing.T) {
	done, refused, told := 0, 0, 0
	for seed := range knittest.Sweep(3_000, 300) {
		in := ruled(uint64(seed))
		out, err := Plan(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			n := min(checkAdvice(t, seed, in, err), 1)
			if field := violations(err)[0].Field; strings.HasSuffix(field, "_rule") && field != "cap_height_rule" {
				refused++
				if told += n; n == 0 && !strings.Contains(err.Error(), "; no remainder would mend this") {
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
			"stitch_rule": {in.StitchRule, out.Back.StartStitches}, "stitch_rule in front": {in.StitchRule, out.Front.StartStitches},
			"sleeve_rule": {in.SleeveRule, out.Cap.StartStitches}, "underarm_rule": {in.UnderarmRule, out.UnderarmStitches},
			"across_rule": {in.AcrossRule, out.Back.EndStitches}, "across_rule in front": {in.AcrossRule, out.Front.EndStitches},
			"top_rule": {in.TopRule, out.Cap.EndStitches},
		} {
			if rule := gauge.VetRule(&fault.Checks{}, "", x.rule); x.count > 0 && !rule.Allows(x.count) {
				t.Errorf("question %d: %d stitches under %s", seed, x.count, field)
			}
		}
	}
	t.Logf("%d planned, %d refused for a rule, %d of them told what would do", done, refused, told)
	if 100*told < 99*refused || min(done, 4*refused) < knittest.Sweep(1_000, 90) {
		t.Errorf("%d planned, %d refused for a rule, %d of them told what would do", done, refused, told)
	}
}
