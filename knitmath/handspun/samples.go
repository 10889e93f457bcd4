package handspun

import (
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/yardage"
	"example.com/knitmath/knitmath/yarn"
)

// usualScatter is how even spinning by hand is. Common practice.
const usualScatter = 0.10

// within is a figure with what is usual around it.
func within(x, part float64) yardage.Range {
	return yardage.Range{Low: x * (1 - part), Likely: x, High: x * (1 + part)}
}

// times are all figures of a range times one.
func times(r yardage.Range, factor float64) yardage.Range {
	return yardage.Range{Low: r.Low * factor, Likely: r.Likely * factor, High: r.High * factor}
}

// samples are what to measure, and what it means.
func (o Plan) samples() []SampleCheck {
	inches := o.unit == measure.DisplayUnitIn
	metres, thickness, per, aLength := within(o.MetresPer100G, usualScatter), "m to 100 g", 1.0, "to the cm"
	if inches {
		metres, thickness, per, aLength = times(metres, yarn.TexYards/1e5), "yd to the pound", measure.CmPerInch, "to the inch"
	}
	angles := within(o.Twist.AngleDegrees, usualScatter)
	angles.High = min(angles.High, 90)
	checks := []SampleCheck{
		{"length and mass of the washed sample, as " + thickness, metres, thickness,
			"it is thicker: fewer stitches to a width, and less length of the same fibre",
			"it is thinner: more stitches to a width, or a looser fabric"},
		{"wraps around a ruler, side by side and without pull", times(o.WrapsPerCm, per), aLength,
			"it is loftier or thicker: a larger needle", "it is more compact or thinner, or was pulled: a smaller needle"},
		{"angle of the twist to the length of the yarn", angles, "degrees",
			"softer, and pills sooner; " + longer, "firmer and harder wearing; " + shorter},
	}
	if o.count > 1 {
		c := *o.PlyContractionPercent
		left := yardage.Range{Low: max(100-2*c, 0), Likely: 100 - c, High: 100 - c/2}
		checks = append(checks, o.plying(per, aLength), SampleCheck{
			"length of the washed yarn, against that of the singles it was plied of", left, "percent",
			"plying and washing took up more: there is less of it; " + shorter + "; plan again with what you measured",
			"they took up less: there is more of it; " + longer})
	}
	return checks
}

// plying is the check of the ply twist. A ply that was chosen is held against what was
// chosen: where it is not balanced, more or less is nearer to balance or farther from it.
//
// What more turns do to the gauge is what they do to the thickness: they draw the yarn
// together in length, and a shorter yarn of the same fibre is a thicker one.
func (o Plan) plying(per float64, aLength string) SampleCheck {
	check := SampleCheck{"turns of the plying, counted as a measured length is untwisted", times(*o.BalancedPerCm, per), aLength,
		"the plies stand apart; the loop turns the way it was plied, as it would if it were plied further; " + longer,
		"the yarn is hard and round; the loop turns " + o.backWords() + "; " + shorter}
	if o.plyAsked {
		check.Expected = times(within(o.Twist.PerCm, usualScatter), per)
	}
	switch o.balance() {
	case underplied:
		check.IfLess = "the plies stand apart still more, and the loop turns more strongly the way it was plied; " + longer
		check.IfMore = "it is nearer to balance, at " + o.balancedWords() + ", and the loop turns less; " + shorter
	case overplied:
		check.IfLess = "it is nearer to balance, at " + o.balancedWords() + ", and the loop turns less; " + longer
		check.IfMore = "the yarn is harder still, and the loop turns more strongly " + o.backWords() + "; " + shorter
	}
	if o.neverBalanced() {
		check.IfLess = "the plies stand apart, and the loop turns less; " + longer
	}
	return check
}

// longer and shorter are what turns do to a yarn, and by that to the gauge.
const (
	longer  = "the yarn is longer and thinner than planned: more stitches to a width, or a looser fabric"
	shorter = "the yarn is shorter and thicker than planned: fewer stitches to a width, or a firmer fabric"
)

// backWords say which way an overplied yarn turns. Where the singles were spun both ways
// there is no one way of theirs.
func (o Plan) backWords() string {
	if o.mixed {
		return "against the way it was plied"
	}
	return "the way the singles were spun"
}

// neverBalanced reports whether the turns of the singles undo one another, so that none
// are left for a plying to take up.
func (o Plan) neverBalanced() bool {
	return o.BalancedPerCm != nil && o.plyAsked && o.BalancedPerCm.Likely < MinTwist
}

// balanceOf is which side of balance a ply lies on.
type balanceOf int

const (
	inBalance balanceOf = iota
	underplied
	overplied
)

// balance compares the ply twist with the range in which yarns are balanced.
func (o Plan) balance() balanceOf {
	switch {
	case o.BalancedPerCm == nil || !o.plyAsked:
		return inBalance
	case o.Twist.PerCm < o.BalancedPerCm.Low:
		return underplied
	case o.Twist.PerCm > o.BalancedPerCm.High:
		return overplied
	}
	return inBalance
}

// balancedWords are the turns of a balanced ply.
func (o Plan) balancedWords() string {
	r, aLength := *o.BalancedPerCm, "to the cm"
	if o.unit == measure.DisplayUnitIn {
		r, aLength = times(r, measure.CmPerInch), "to the inch"
	}
	return measure.Decimal(r.Low, 2) + " to " + measure.Decimal(r.High, 2) + " turns " + aLength
}

// loopWords say what a loop of the yarn does that hangs freely.
func (o Plan) loopWords() string {
	if o.neverBalanced() {
		return "No plying balances singles whose turns undo one another: a loop of it that hangs freely turns against the way it was plied."
	}
	switch o.balance() {
	case underplied:
		return "It is plied with less than balances it, " + o.balancedWords() + ": a loop of it that hangs freely turns the way it was plied."
	case overplied:
		return "It is plied with more than balances it, " + o.balancedWords() +
			": a loop of it that hangs freely turns " + o.backWords() + "."
	}
	return "A loop of it that hangs freely after washing should not turn; if it turns, change the plying and not the singles."
}
