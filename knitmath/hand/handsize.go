package hand

import (
	"example.com/knitmath/knitmath/body"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/report"
)

// Size is a hand of the list of sizes.
type Size int32

// The sizes.
const (
	SizeUnspecified Size = iota
	SizeInfant
	SizeYears1
	SizeYears2
	SizeYears4
	SizeYears6
	SizeYears8
	SizeYears10
	SizeWoman
	SizeMan
)

// sizeRows name the hands in the list of sizes.
var sizeRows = [...]struct {
	group body.Group
	size  string
}{
	SizeInfant:  {body.GroupHand, "infant"},
	SizeYears1:  {body.GroupHand, "1 to 2 years"},
	SizeYears2:  {body.GroupHand, "2 to 3 years"},
	SizeYears4:  {body.GroupHand, "4 to 6 years"},
	SizeYears6:  {body.GroupHand, "6 to 8 years"},
	SizeYears8:  {body.GroupHand, "8 to 10 years"},
	SizeYears10: {body.GroupHand, "10 to 12 years"},
	SizeWoman:   {body.GroupWoman, "mean, US Army 1988"},
	SizeMan:     {body.GroupMan, "mean, US Army 1988"},
}

// cm is the girth of the hand of a size, a woman's where nothing is said, the mean of what the list says, and where it comes from.
func (s Size) cm() (float64, report.Source) {
	if s == SizeUnspecified {
		s = SizeWoman
	}
	row := sizeRows[s]
	list, _ := body.ListBodySizes(body.ListInput{Group: row.group, Measure: body.MeasureHandCircumference}) // both are known
	for _, r := range list.Rows {
		if r.Size == row.size {
			return (r.LowCm + r.HighCm) / 2, report.Source{Figure: "hand", Citation: r.Basis + ": " + r.Citation, Status: r.Status,
				Uncertain: r.Uncertain}
		}
	}
	return 0, report.Source{}
}

// vetGiven wants at most one of the three ways to say how wide the mitten is.
func (in size) vetGiven(c *fault.Checks) {
	ways := [...]struct {
		field string
		given bool
	}{{"hand_stitches", in.handStitches != nil}, {"hand_cm", in.handCm != nil}, {"hand_size", in.handSize != SizeUnspecified}}
	given := 0
	for _, w := range ways {
		if w.given {
			given++
		}
	}
	for _, w := range ways {
		if given > 1 && w.given {
			c.Add(w.field, fault.ReasonContradictory, "is one of several; give one of hand_stitches, hand_cm and hand_size")
		}
	}
}
