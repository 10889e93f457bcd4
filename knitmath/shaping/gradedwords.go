package shaping

import (
	"slices"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/schedule"
	"example.com/knitmath/knitmath/stitch"
)

// none stands where a size does without.
const none = "-"

// readingNone says so.
const readingNone = "Where your size has " + none + ", skip that part."

// ofSizes are the numbers of all sizes: "5 (6, 7)".
func (o GradedTaper) ofSizes(number func(SizedTaper) int) string {
	words := make([]string, len(o.Sizes))
	for i, s := range o.Sizes {
		words[i] = strconv.Itoa(number(s))
	}
	return o.listed(words)
}

// listed are the words of all sizes, "5 (6, 7)", or one word where they are alike. Sizes that are told
// elsewhere do without, and so does one that has 0 of what others have.
func (o GradedTaper) listed(words []string) string {
	if one := report.OfSizes(words); one == words[0] {
		return one
	}
	return report.OfSizes(o.amongAll(words))
}

// amongAll are the words of all sizes, each with its own.
func (o GradedTaper) amongAll(words []string) []string {
	words = slices.Clone(words)
	for i, w := range words {
		if w == "0" {
			words[i] = none
		}
	}
	if o.among == nil {
		return words
	}
	return o.among(words)
}

// counted is the numbers of all sizes with their noun, "1 row", "1 (1, 2) rows".
func (o GradedTaper) counted(number func(SizedTaper) int, plural string) string {
	return report.AmountOf(o.ofSizes(number), plural)
}

// everywhere reports whether all sizes have this number.
func (o GradedTaper) everywhere(n int, number func(SizedTaper) int) bool {
	return !slices.ContainsFunc(o.Sizes, func(s SizedTaper) bool { return number(s) != n })
}

func ends(s SizedTaper) int         { return s.EndStitches }
func evenBefore(s SizedTaper) int   { return fault.Or(s.FirstShapingRowNumber, 1) - 1 }
func evenAfter(s SizedTaper) int    { return s.EvenAfterRows }
func shapingCount(s SizedTaper) int { return s.ShapingRows }

// Summary says the answer in words.
func (o GradedTaper) Summary() string {
	rows := noun(o.t.round) + "s"
	worst := 0.0
	for _, s := range o.Sizes {
		worst = max(worst, s.GreatestDepartureStitches)
	}
	shaping, change := o.counted(shapingCount, "shaping "+rows), report.CountOf(measure.Abs(o.RowChangeStitches), "stitches")
	if o.everywhere(1, shapingCount) {
		shaping += " of " + change
	} else {
		shaping += ", " + change + " each"
	}
	return report.CountOf(len(o.Sizes), "sizes") + ", from " + o.ofSizes(func(s SizedTaper) int { return s.StartStitches }) + " to " +
		o.counted(ends, "stitches") + " over " + o.counted(func(s SizedTaper) int { return s.HeightRows }, rows) + ": " +
		shaping + ", " + departureWords(worst, "a straight line") + "."
}

// Directions write the taper as a pattern would, in the sentences that written
// instructions are read in.
func (o GradedTaper) Directions() []string {
	d := o.rowDirections()
	if len(o.parts) > 0 {
		d = o.partDirections()
	}
	if o.t.round {
		d = append([]string{o.t.roundBegins()}, d...)
	}
	if slices.ContainsFunc(d, hasNone) { // it has to be known before
		d = append([]string{readingNone}, d...)
	}
	return append(d, o.sideNotes()...)
}

// hasNone reports whether a size does without in a sentence.
func hasNone(sentence string) bool {
	words := strings.FieldsFunc(sentence, func(r rune) bool { return strings.ContainsRune(" (),:", r) })
	return slices.Contains(words, none)
}

// sideNotes say in which sizes the last row is a right-side row, as [Taper.Directions] does.
func (o GradedTaper) sideNotes() []string {
	var sizes []int
	for i, s := range o.Sizes {
		if o.t.side(s.HeightRows) == stitch.RightSide {
			sizes = append(sizes, i)
		}
	}
	switch {
	case o.t.round || len(sizes) == 0:
		return nil
	case len(sizes) == len(o.Sizes):
		return []string{endsOnRightSide("")}
	}
	return []string{endsOnRightSide("in the " + ordinalSizes(sizes) + " ")}
}

// rowDirections tell sizes that are all shaped the same way.
func (o GradedTaper) rowDirections() []string {
	row, change := noun(o.t.round), "Increase"
	if o.RowChangeStitches < 0 {
		change = "Decrease"
	}
	var d []string
	if !o.everywhere(0, evenBefore) {
		even := "Work " + o.counted(evenBefore, row+"s") + " even"
		if !o.t.round && o.t.firstSide == stitch.WrongSide {
			even += ", ending with a WS row"
		}
		d = append(d, even+".")
	}
	if o.RowChangeStitches == 0 {
		return o.keptDirections()
	}
	first := shapingDirection(change, row, stitch.RightSide, o.t.round, &o.RightSideRow)
	claim := o.counted(ends, "stitches")
	if len(o.Runs) == 0 {
		return o.evenAfter(append(d, strings.TrimSuffix(first, ".")+": "+claim+"."))
	}
	runs := make([]string, len(o.Runs))
	for i, r := range o.Runs {
		runs[i] = o.gradedWords(r, row, i == 0)
	}
	return o.evenAfter(append(d, first,
		"Repeat the "+strings.ToLower(change)+" "+row+" "+strings.Join(runs, ", then ")+": "+claim+"."))
}

// keptDirections tell sizes that keep their width.
func (o GradedTaper) keptDirections() []string {
	even := "Work " + o.counted(evenAfter, noun(o.t.round)+"s") + " even"
	if !o.t.round && o.t.firstSide == stitch.WrongSide {
		even += ", beginning with a WS row"
	}
	return []string{even + "."}
}

// evenAfter adds the rows that end the taper.
func (o GradedTaper) evenAfter(d []string) []string {
	if !o.everywhere(0, evenAfter) {
		d = append(d, "Work "+o.counted(evenAfter, noun(o.t.round)+"s")+" even.")
	}
	return d
}

// gradedWords is "every 8th (8th, 6th) row 5 (6, 7) times", or "every 2nd and 4th row
// alternately 5 (6, 7) times each". The first run is so many times more than the row was
// worked already.
func (o GradedTaper) gradedWords(r schedule.GradedRun, noun string, more bool) string {
	rows := every(o.ordinals(r.EveryRows), noun)
	if r.AlternateRows != nil {
		rows = "every " + o.ordinals(r.EveryRows) + " and " + o.ordinals(r.AlternateRows) + " " + noun
	}
	often := o.listed(countWords(r.Times))
	if o.among != nil && len(r.Times) > 1 { // beside intervals with dashes, which sizes do not work at all
		often = report.OfSizes(o.amongAll(countWords(r.Times)))
	}
	switch {
	case often == "1" || often == "2":
		often = report.Times(r.Times[0])
		if more {
			often += " more"
		}
	case more:
		often += " more times"
	default:
		often += " times"
	}
	if r.AlternateRows != nil {
		return rows + " alternately " + often + " each"
	}
	return rows + " " + often
}

// ordinals are those of all sizes, "8th (8th, 6th)", with a dash where a size has none, or the
// one that all have that have any.
func (o GradedTaper) ordinals(numbers []int) string {
	most := slices.Max(numbers)
	words := make([]string, len(numbers))
	alike := true
	for i, n := range numbers {
		words[i] = report.Ordinal(n)
		if n == 0 {
			words[i] = none
		}
		alike = alike && (n == 0 || n == most)
	}
	if alike {
		return report.Ordinal(most)
	}
	return o.listed(words)
}
