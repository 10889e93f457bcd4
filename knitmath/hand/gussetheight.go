package hand

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/solid"
)

// heightField is the field that says how high the gusset is; empty where none does.
func (in ThumbInput) heightField() string {
	switch {
	case in.GussetRounds != nil:
		return "gusset_rounds"
	case in.GussetCm != nil:
		return "gusset_cm"
	}
	return ""
}

// hangOn keeps the fields that the question has, of those that a refusal hangs on; where it has
// none it hangs on the size, or the gauge.
func (t *thumb) hangOn(in ThumbInput, fields ...string) []string {
	has := map[string]bool{"gusset_stitches": in.GussetStitches != nil, "start_stitches": in.StartStitches != nil,
		"hold_stitches": in.HoldStitches != nil, "gap_stitches": in.GapStitches != nil, "palm_stitches": in.PalmStitches != nil,
		"beside_stitches": in.BesideStitches != nil,
		"gusset_rounds":   in.GussetRounds != nil, "gusset_cm": in.GussetCm != nil, "every_rounds": in.EveryRounds != nil, t.field: t.given}
	var kept []string
	for _, f := range fields {
		if has[f] && !slices.Contains(kept, f) {
			kept = append(kept, f)
		}
	}
	switch {
	case kept == nil && t.given:
		return []string{t.field}
	case kept == nil:
		return []string{"gauge"}
	}
	return kept
}

// usualGusset is as wide as published ones are, two stitches more than its beginning at least.
func (t *thumb) usualGusset() int {
	return t.start + 2*max(1, int(measure.RoundHalfUp((gussetOfHand*float64(t.stitches)-float64(t.start))/2)))
}

// settleHeight shares the rounds of a gusset whose height is wanted out among its increase
// rounds: at the rate that is asked for as many as there is room for, else as many as its width
// takes, the slower rate first.
func (t *thumb) settleHeight(c *fault.Checks, in ThumbInput) {
	field, rounds := in.heightField(), t.rounds(c, in.GussetRounds, in.GussetCm, 0, "gusset", "gusset_rounds", "gusset_cm")
	if c.Err() != nil {
		return
	}
	if in.EveryRounds != nil {
		times := rounds / *in.EveryRounds
		if times < 1 {
			c.Infeasible("a gusset of "+report.CountOf(rounds, "rounds")+" has no room for an increase round every "+
				report.CountOf(*in.EveryRounds, "rounds"), field, "every_rounds")
			return
		}
		t.gusset, t.gussetField = t.start+2*times, field
		last := rounds - (times-1)**in.EveryRounds // what is over lies before the thumb is held
		t.rates = []solid.Rate{{EveryRounds: *in.EveryRounds, Times: times - 1}, {EveryRounds: last, Times: 1}}
		return
	}
	times := max((t.gusset-t.start)/2, 1)
	if rounds < times {
		c.Infeasible("a gusset of "+strconv.Itoa(t.gusset)+" from "+report.CountOf(t.start, "stitches")+" takes at least "+
			report.CountOf(times, "rounds")+", one for each increase round", t.hangOn(in, field, "gusset_stitches", "start_stitches")...)
		return
	}
	every, over := rounds/times, rounds%times
	t.rates = []solid.Rate{{EveryRounds: every + 1, Times: over}, {EveryRounds: every, Times: times - over}}
}
