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

// ofSizes are the numbers of all sizes: "5 (6, 7)".
func (o GradedTaper) ofSizes(number func(SizedTaper) int) string {
	words := make([]string, len(o.Sizes))
	for i, s := range o.Sizes {
		words[i] = strconv.Itoa(number(s))
	}
	return o.listed(words)
}

// rowsEven is the rows that all sizes work even, "9 (0, 7) rows".
func (o GradedTaper) rowsEven(number func(SizedTaper) int) string {
	words := make([]string, len(o.Sizes))
	for i, s := range o.Sizes {
		words[i] = strconv.Itoa(number(s))
	}
	if o.among != nil && report.OfSizes(words) != words[0] {
		words = o.among(words, "0")
	}
	return report.AmountOf(report.OfSizes(words), noun(o.t.round)+"s")
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
	if len(o.parts) > 0 {
		d := o.partDirections()
		if o.t.round {
			d = append([]string{o.t.roundBegins()}, d...)
		}
		return d
	}
	row, change := noun(o.t.round), "Increase"
	if o.RowChangeStitches < 0 {
		change = "Decrease"
	}
	var d []string
	if o.t.round && o.among == nil {
		d = append(d, o.t.roundBegins())
	}
	if !o.everywhere(0, evenBefore) {
		even := "Work " + o.rowsEven(evenBefore) + " even"
		if !o.t.round && o.t.firstSide == stitch.WrongSide {
			even += ", ending with a WS row"
		}
		d = append(d, even+".")
	}
	if o.RowChangeStitches == 0 {
		return o.evenAfter(d)
	}
	first := shapingDirection(change, row, stitch.RightSide, o.t.round, &o.RightSideRow)
	claim := o.claim
	if o.among == nil {
		claim = o.counted(ends, "stitches")
	}
	if len(o.Runs) == 0 {
		return o.readZeros(o.evenAfter(append(d, strings.TrimSuffix(first, ".")+": "+claim+".")))
	}
	runs := make([]string, len(o.Runs))
	for i, r := range o.Runs {
		runs[i] = o.gradedWords(r, row, i == 0)
	}
	return o.readZeros(o.evenAfter(append(d, first,
		"Repeat the "+strings.ToLower(change)+" "+row+" "+strings.Join(runs, ", then ")+": "+claim+".")))
}

// readingZeros says what a 0 means.
const readingZeros = "Where your size has 0, skip that part."

// readZeros begins with what a 0 means, where there is one: it has to be known before.
func (o GradedTaper) readZeros(d []string) []string {
	if o.among != nil || !o.zeros() {
		return d
	}
	return append([]string{readingZeros}, d...)
}

// evenAfter adds the rows that end the taper.
func (o GradedTaper) evenAfter(d []string) []string {
	if !o.everywhere(0, evenAfter) {
		d = append(d, "Work "+o.rowsEven(evenAfter)+" even.")
	}
	return d
}

// zeros reports whether a size has a 0 where others have a number.
func (o GradedTaper) zeros() bool {
	for _, r := range o.Runs {
		if slices.Contains(r.Times, 0) {
			return true
		}
	}
	for _, number := range []func(SizedTaper) int{evenBefore, evenAfter} {
		none := func(s SizedTaper) bool { return number(s) == 0 }
		if slices.ContainsFunc(o.Sizes, none) && !o.everywhere(0, number) {
			return true
		}
	}
	return false
}

// gradedWords is "every 8th (8th, 6th) row 5 (6, 7) times", or "every 2nd and 4th row
// alternately 5 (6, 7) times each". The first run is so many times more than the row was
// worked already.
func (o GradedTaper) gradedWords(r schedule.GradedRun, noun string, more bool) string {
	rows := every(o.ordinals(r.EveryRows), noun)
	if r.AlternateRows != nil {
		rows = everyOfTwo(o.ordinals(r.EveryRows), o.ordinals(r.AlternateRows), noun)
	}
	often := o.listed(countWords(r.Times))
	if o.among != nil && len(r.Times) > 1 { // beside intervals with dashes, which sizes do not work at all
		often = report.OfSizes(o.among(countWords(r.Times), "-"))
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
			words[i] = "-"
		}
		alike = alike && (n == 0 || n == most)
	}
	if alike {
		return report.Ordinal(most)
	}
	return o.listed(words)
}

// beyondNotices say in which sizes the schedule lies farther from the line than was
// asked, and what tolerance would have allowed it.
func beyondNotices(beyond []int, sizes []SizedTaper) []report.Notice {
	if len(beyond) == 0 {
		return nil
	}
	wanting := 0.0
	for _, k := range beyond {
		wanting = max(wanting, sizes[k].GreatestDepartureStitches-sizes[k].LeastDepartureStitches)
	}
	hundredths := float64(measure.CeilQuotient(wanting, 1.0/100)) / 100
	return []report.Notice{{Reason: BeyondTolerance, Field: "tolerance_stitches",
		Description: "in " + sizesWord(beyond) + " no schedule of two runs, one of which may alternate, lies that near to the straight line, " +
			"and the nearest is taken; " +
			"a tolerance of " + report.AmountOf(measure.Decimal(hundredths, 2), "stitches") + " at each edge allows it"}}
}

// sizesWord is "size 1", "sizes 1, 2 and 4" of sizes counted from 0.
func sizesWord(sizes []int) string {
	numbers := make([]string, len(sizes))
	for i, k := range sizes {
		numbers[i] = strconv.Itoa(k + 1)
	}
	if len(numbers) == 1 {
		return "size " + numbers[0]
	}
	return "sizes " + report.Listed(numbers)
}

// endNotices say in which sizes the first row shapes, or the last.
func (o GradedTaper) endNotices() []report.Notice {
	var first, last []int
	for i, s := range o.Sizes {
		if fault.Or(s.FirstShapingRowNumber, 0) == 1 {
			first = append(first, i)
		}
		if s.EvenAfterRows == 0 {
			last = append(last, i)
		}
	}
	noun := noun(o.t.round)
	var notices []report.Notice
	if len(first) > 0 {
		notices = append(notices, report.Notice{Reason: ShapedAtAnEnd, Field: "even_before_rows",
			Description: "in " + sizesWord(first) + " the first " + noun + " shapes; after a cast-on, work a " + noun + " even first"})
	}
	if len(last) > 0 {
		notices = append(notices, report.Notice{Reason: ShapedAtAnEnd, Field: "even_after_rows",
			Description: "in " + sizesWord(last) + " the last " + noun + " shapes; before a bind-off, work a " + noun + " even after it"})
	}
	return notices
}
