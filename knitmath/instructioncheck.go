package knitmath

import (
	"strconv"

	"example.com/knitmath/knitmath/pattern"
	"example.com/knitmath/knitmath/stitch"
)

// The shapes of written instructions are those of package pattern.
type (
	// An Abbreviation is one of the caller's own: name, stitches taken and left.
	Abbreviation = pattern.Abbreviation
	// A PatternStep is one part of a row, with numbers for every size.
	PatternStep = pattern.Step
	// A Finding is one remark on a text, at its place in it.
	Finding = pattern.Finding
	// FindingKind says whether a finding is a mistake, a question or a reading.
	FindingKind = pattern.Kind
	// RepeatStyle is how repeats are written.
	RepeatStyle = pattern.RepeatStyle
)

// MaxAbbreviations is the most abbreviations of the caller's own: the trade's
// whole list has about a hundred.
const MaxAbbreviations = 100

// CheckInstructionsInput asks for a text to be read and worked in all its sizes.
// It mirrors CheckInstructionsRequest.
type CheckInstructionsInput struct {
	Text          string
	StitchCounts  []int
	Construction  Construction
	FirstSide     Side
	Abbreviations []Abbreviation
}

// CheckedInstructions is what a text comes to. It mirrors
// CheckInstructionsResponse.
type CheckedInstructions struct {
	SizeCount int
	Agrees    bool
	Lines     []CheckedLine
	EndCounts []int
	RowCounts []int
	RowsOpen  bool
	Findings  []Finding
	Notices   []Notice
	questions int
	mistakes  int
}

// CheckedLine is one row or direction of the text, worked for the first time. It
// mirrors the message of the same name. Lists have one number for each size, -1
// where it is not known.
type CheckedLine struct {
	LineNumber     int
	Label          string
	Text           string
	Steps          []PatternStep
	Direction      string
	Side           Side
	StartCounts    []int
	TakenCounts    []int
	LeftCounts     []int
	UnworkedCounts []int
	MissingCounts  []int
	EndCounts      []int
	ClaimedCounts  []int
	ClaimedChanges []int
}

// CheckInstructions reads rows as they are written and works them in every size:
// whether the stitches are there, and whether the counts that the text claims
// are right. What is wrong with the text is part of the answer, a Finding; an
// error is only for a question that cannot be answered.
//
// Counting is exact: a row takes the sum of what its steps take and leaves the
// sum of what they leave, a repeat so many times as much, and a repeat "to last n
// sts" comes out when
//
//	(stitches before it - n) mod (stitches a repeat takes) = 0
//
// Text must have at most pattern.MaxTextBytes bytes. See package pattern for the
// grammar, and for how a count goes on after a mistake.
//
// Source: own derivation; the notation is common practice.
func CheckInstructions(in CheckInstructionsInput) (CheckedInstructions, error) {
	var c checks
	c.patternText(in.Text)
	sizes := c.sizeCounts(in.StitchCounts)
	enum(&c, "", "construction", in.Construction, ConstructionRound)
	if enum(&c, "", "first_side", in.FirstSide, SideWrong) && in.FirstSide == SideWrong && in.Construction == ConstructionRound {
		c.add("first_side", ReasonContradictory, "in the round every round is on the right side")
	}
	c.abbreviations(in.Abbreviations)
	if err := c.err(); err != nil {
		return CheckedInstructions{}, err
	}
	piece := pattern.Read(in.Text, pattern.Options{SizeCount: sizes, Abbreviations: in.Abbreviations})
	if len(in.StitchCounts) == 0 && !piece.CastsOn() {
		c.add("stitch_counts", ReasonRequired, "is missing, and the text does not begin with a cast-on such as \"CO 96 (104, 112) sts\"")
		return CheckedInstructions{}, c.err()
	}
	worked := piece.Work(pattern.Start{Counts: in.StitchCounts, Round: in.Construction == ConstructionRound,
		WrongSide: in.FirstSide == SideWrong})
	out := CheckedInstructions{SizeCount: piece.SizeCount, Lines: checkedLines(piece, worked), EndCounts: worked.EndCounts,
		RowCounts: worked.RowCounts, RowsOpen: worked.RowsOpen, Findings: worked.Findings}
	out.tell(worked.MoreCount)
	return out, nil
}

// checkedLines puts what was read and what was worked side by side.
func checkedLines(piece *pattern.Piece, worked pattern.Worked) []CheckedLine {
	lines := make([]CheckedLine, len(piece.Lines))
	for i := range lines {
		l, w := &piece.Lines[i], &worked.Lines[i]
		lines[i] = CheckedLine{
			LineNumber: l.Number(), Label: l.Label, Text: l.Text(pattern.RepeatStyleBrackets), Steps: l.Steps, Direction: l.Direction,
			Side: Side(w.Side), StartCounts: w.StartCounts, TakenCounts: w.TakenCounts, LeftCounts: w.LeftCounts,
			UnworkedCounts: w.UnworkedCounts, MissingCounts: w.MissingCounts, EndCounts: w.EndCounts, ClaimedCounts: l.ClaimedCounts,
			ClaimedChanges: l.ClaimedChanges,
		}
	}
	return lines
}

// tell counts the findings and says when there are more.
func (o *CheckedInstructions) tell(more int) {
	for _, f := range o.Findings {
		switch f.Kind {
		case pattern.KindMistake:
			o.mistakes++
		case pattern.KindQuestion:
			o.questions++
		}
	}
	o.Agrees = o.mistakes == 0 && o.questions == 0 && more == 0
	o.Notices = moreNotices(more)
}

// moreNotices says that findings are left out.
func moreNotices(more int) []Notice {
	if more == 0 {
		return nil
	}
	return []Notice{{"TOO_MANY_FINDINGS", "text", "the first " + strconv.Itoa(pattern.MaxFindings) + " findings are listed; " +
		strconv.Itoa(more) + " more are not: mend these and ask again"}}
}

// patternText checks the length of a text.
func (c *checks) patternText(text string) bool {
	switch {
	case text == "":
		c.add("text", ReasonRequired, "is missing")
	case len(text) > pattern.MaxTextBytes:
		c.add("text", ReasonTooMany, "has %d bytes; at most %d are read", len(text), pattern.MaxTextBytes)
	default:
		return true
	}
	return false
}

// sizeCounts checks the stitches on the needle and returns the number of sizes,
// 0 where the text has to say it.
func (c *checks) sizeCounts(counts []int) int {
	if !c.items("", "stitch_counts", len(counts), pattern.MaxSizes) {
		return 0
	}
	for i, n := range counts {
		c.count("", index("stitch_counts", i), n, 1, stitch.MaxStitches)
	}
	if len(counts) > 1 {
		return len(counts)
	}
	return 0
}

// abbreviations checks the caller's own abbreviations.
func (c *checks) abbreviations(own []Abbreviation) {
	if !c.items("", "abbreviations", len(own), MaxAbbreviations) {
		return
	}
	seen := map[string]bool{}
	for i, a := range own {
		at := index("abbreviations", i)
		name := pattern.Folded(a.Name)
		switch text, ok := pattern.Declarable(a.Name); {
		case a.Name == "":
			c.add(join(at, "name"), ReasonRequired, "is missing")
		case !ok:
			c.add(join(at, "name"), ReasonInfeasible, "%q %s", shorten(a.Name, MaxNameLength), text)
		case seen[name]:
			c.add(join(at, "name"), ReasonContradictory, "%q is declared twice", a.Name)
		}
		seen[name] = true
		c.count(at, "takes_count", a.TakesCount, 0, pattern.MaxTakes)
		c.count(at, "leaves_count", a.LeavesCount, 0, pattern.MaxTakes)
	}
}

// shorten cuts off a text at so many characters.
func shorten(s string, most int) string {
	n := 0
	for i := range s {
		if n == most {
			return s[:i] + "…"
		}
		n++
	}
	return s
}
