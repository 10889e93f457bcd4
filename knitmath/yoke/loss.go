package yoke

import (
	"fmt"
	"strconv"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// sliver is how much more than its schedule says a round may take without a word, in percent of its
// stitches, a stitch at least: a neck is rarely just the one that the schedule leaves. Own choice.
const sliver = 2

// takesMuch reports whether a round takes more than a third of its stitches, and more than the
// schedule itself says. Around bands the schedule says nothing of what a round takes.
func (r Round) takesMuch(said float64) bool {
	lost, start := r.StartStitches-r.EndStitches, float64(r.StartStitches)
	return lost > third.of(r.StartStitches) && float64(lost) > said*start+max(1, start*sliver/100)
}

// muchTaken are the rounds that do.
func (y *circular) muchTaken() []Round {
	var list []Round
	for i, r := range y.written {
		if r.takesMuch(y.changes[i].said) {
			list = append(list, r)
		}
	}
	return list
}

// lossNotices remark on the rounds of a yoke without bands that take much. The first says what
// would do instead.
func (y *circular) lossNotices(in CircularInput) []report.Notice {
	var notices []report.Notice
	for _, r := range y.muchTaken() {
		notices = append(notices, report.Notice{Reason: MoreThanAThird, Field: y.lossField(in),
			Description: fmt.Sprintf("round %d takes %d of %s, more than a third", r.RoundNumber, r.StartStitches-r.EndStitches,
				report.CountOf(r.StartStitches, "stitches"))})
	}
	if len(notices) > 0 {
		notices[0].Description += y.calmer(in)
	}
	return notices
}

// lossField is the field that a remark on what rounds take is about: what would have more of them.
func (y *circular) lossField(in CircularInput) string {
	switch {
	case in.Schedule == ScheduleOwn:
		return "steps"
	case in.DecreaseRounds != nil:
		return "decrease_rounds"
	}
	return y.depthField
}

// calmer says with what no round would take much: more decrease rounds of a cone, a depth that holds
// more of the percentage system's, or the neck that own steps leave. It has been asked.
func (y *circular) calmer(in CircularInput) string {
	if in.tooDearToTry() {
		return ""
	}
	words := ""
	switch {
	case in.Schedule == ScheduleOwn:
		n := leftOf(y.join, in.Steps)
		in.NeckStitches, in.NeckCm = &n, nil
		words = "a neck of " + report.CountOf(n, "stitches")
	case in.Schedule == ScheduleCone:
		n := calmConeRounds(y.join, y.wantedNeck)
		in.DecreaseRounds = &n
		words = report.CountOf(n, "decrease rounds")
	default:
		n := y.narrowDepth(y.wantedNeck)
		in.DepthRounds, in.DepthCm = &n, nil
		words = "a depth of " + report.CountOf(n, "rounds")
	}
	if other, err := in.settled(true); err != nil || len(other.muchTaken()) > 0 {
		return ""
	}
	return "; " + words + " would do"
}

// calmConeRounds is how few decrease rounds of equal loss come down to a neck so that the last
// takes no more than a third: half of what is left, at the most, is lost in each.
func calmConeRounds(join, neck int) int {
	return int(measure.CeilDiv(int64(2*(join-neck)), int64(neck)))
}

// mostTakenWords says which round takes most, and how much, if that is more than a third.
func (o Circular) mostTakenWords() string {
	most, at := 0.0, 0
	for i, r := range o.Rounds {
		if part := float64(r.StartStitches-r.EndStitches) / float64(r.StartStitches); part > most {
			most, at = part, i
		}
	}
	if len(o.Bands) > 0 || len(o.Rounds) == 0 || o.Rounds[at].StartStitches-o.Rounds[at].EndStitches <= third.of(o.Rounds[at].StartStitches) {
		return ""
	}
	which := "the last"
	if at < len(o.Rounds)-1 {
		which = "that on round " + strconv.Itoa(o.Rounds[at].RoundNumber)
	}
	return ", of which " + which + " takes " + strconv.FormatInt(measure.RoundHalfUp(100*most), 10) + " % of its stitches"
}
