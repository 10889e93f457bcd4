package solid

import (
	"math"

	"example.com/knitmath/knitmath/body"
	"example.com/knitmath/knitmath/report"
)

// A curve is the profile of a crown along its fabric, from where it begins (0) to the top
// (1): the part of the hat's circumference there.
type curve struct{ rounded bool }

func (s CrownShape) curve() curve { return curve{s == CrownShapeRounded} }

// depth is how deep the crown of a hat is that has the shape exactly.
func (k curve) depth(hatCm float64) float64 {
	if k.rounded {
		return hatCm / 4
	}
	return hatCm / (2 * math.Pi)
}

// left is the part of the stitches at a part of the depth.
func (k curve) left(at float64) float64 {
	if k.rounded {
		return math.Cos(at * math.Pi / 2)
	}
	return 1 - at
}

// fall is the part of the depth at which that part of the stitches is left.
func (k curve) fall(left float64) float64 {
	if k.rounded {
		return math.Acos(min(max(left, 0), 1)) * 2 / math.Pi
	}
	return 1 - left
}

// departure is how far the radius of the worked crown lies from that of the shape, drawn
// to the same depth, at most, in cm.
func (h *hat) departure(k curve) float64 {
	worst, count, next := 0.0, h.plan.StartStitches, 0
	rounds := h.plan.RoundCount
	radius := h.st.SizeCm(h.stitches) / (2 * math.Pi)
	for round := range rounds {
		if next < len(h.plan.Rounds) && h.plan.Rounds[next].RoundNumber == round+1 {
			count = h.plan.Rounds[next].Instruction.EndStitches
			next++
		}
		ideal := k.left((float64(round) + 0.5) / float64(rounds))
		worst = max(worst, math.Abs(float64(count)/float64(h.stitches)-ideal)*radius)
	}
	return worst
}

// steepness is the stitches that the crown loses over what a flat disc does in as many
// rounds: all of it, and from where its stitches are half.
func (h *hat) steepness() (whole, upper float64) {
	rounds, end := h.plan.RoundCount, h.plan.EndStitches
	whole = h.slope(h.plan.StartStitches-end, rounds)
	for i, r := range h.plan.Rounds {
		if count := r.Instruction.StartStitches; 2*count <= h.stitches || i == len(h.plan.Rounds)-1 {
			upper = h.slope(count-end, rounds-r.RoundNumber+1)
			break
		}
	}
	return whole, upper
}

// slope is the stitches lost over so many rounds, over what a flat disc loses.
func (h *hat) slope(lost, rounds int) float64 {
	return h.st.SizeCm(lost) / (2 * math.Pi * h.rw.SizeCm(rounds))
}

// steepest is the greatest slope over a few decrease rounds of the lower part of the crown;
// what follows near the top is gathered up.
func (h *hat) steepest() float64 {
	var low []ClosingRound
	for _, r := range h.plan.Rounds {
		if !r.Adjusts && 3*r.Instruction.StartStitches > h.stitches {
			low = append(low, r)
		}
	}
	window := min(steepWindow, len(low)-1)
	worst := 0.0
	for i := 0; window > 0 && i+window < len(low); i++ {
		worst = max(worst, h.slope(low[i].Instruction.StartStitches-low[i+window].Instruction.StartStitches,
			low[i+window].RoundNumber-low[i].RoundNumber))
	}
	return worst
}

// steepWindow is how many decrease rounds blocking evens out. Own choice.
const steepWindow = 4

// headRows name the heads in the list of sizes; where there are two, their mean.
var headRows = [...]struct {
	group body.Group
	sizes [2]string
}{
	HeadSizeMonths3: {body.GroupHead, [2]string{"girls, 3 months, median", "boys, 3 months, median"}},
	HeadSizeMonths6: {body.GroupHead, [2]string{"girls, 6 months, median", "boys, 6 months, median"}},
	HeadSizeYear1:   {body.GroupHead, [2]string{"girls, 1 year, median", "boys, 1 year, median"}},
	HeadSizeYears2:  {body.GroupHead, [2]string{"girls, 2 years, median", "boys, 2 years, median"}},
	HeadSizeYears5:  {body.GroupHead, [2]string{"girls, 5 years, median", "boys, 5 years, median"}},
	HeadSizeYears10: {body.GroupHead, [2]string{"girls, 10 years, median", "boys, 10 years, median"}},
	HeadSizeWoman:   {body.GroupWoman, [2]string{"mean, US Army 1988"}},
	HeadSizeMan:     {body.GroupMan, [2]string{"mean, US Army 1988"}},
}

// head is the head of a size, and where it comes from.
func (s HeadSize) head() (cm float64, source *report.Source) {
	rows, n := headRows[s], 0
	list, _ := body.ListBodySizes(body.ListInput{Group: rows.group, Measure: body.MeasureHeadCircumference}) // both are known
	for _, r := range list.Rows {
		if r.Size == rows.sizes[0] || r.Size == rows.sizes[1] {
			cm += r.LowCm
			n++
			source = &report.Source{Figure: "head", Citation: r.Basis + ": " + r.Citation, Status: r.Status, Uncertain: r.Uncertain}
		}
	}
	return cm / float64(n), source
}
