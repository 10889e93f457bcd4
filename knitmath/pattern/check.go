package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// MaxAbbreviations is the most abbreviations of the caller's own: the trade's
// whole list has about a hundred.
const MaxAbbreviations = 100

// CheckInstructionsInput asks for a text to be read and worked in all its sizes.
// It mirrors CheckInstructionsRequest.
type CheckInstructionsInput struct {
	Text          string
	StartStitches []int
	Construction  stitch.Construction
	FirstSide     stitch.Side
	Abbreviations []Abbreviation
}

// CheckedInstructions is what a text comes to. It mirrors
// CheckInstructionsResponse.
type CheckedInstructions struct {
	SizeCount   int
	Agrees      bool
	Lines       []CheckedLine
	EndStitches []int
	WorkedRows  []int
	RowsOpen    bool
	Findings    []Finding
	Notices     []report.Notice
	questions   int
	mistakes    int
}

// CheckedLine is one row or direction of the text, worked for the first time. It
// mirrors the message of the same name. Lists have one number for each size, -1
// where it is not known.
type CheckedLine struct {
	LineNumber            int
	Label                 string
	Text                  string
	Steps                 []Step
	Direction             string
	Side                  stitch.Side
	StartStitches         []int
	TakenStitches         []int
	LeftStitches          []int
	UnworkedStitches      []int
	MissingStitches       []int
	EndStitches           []int
	ClaimedStitches       []int
	ClaimedChangeStitches []int
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
	var c fault.Checks
	vetPatternText(&c, in.Text)
	sizes := vetSizeCounts(&c, in.StartStitches)
	fault.Enum(&c, "", "construction", in.Construction, stitch.InTheRound)
	if fault.Enum(&c, "", "first_side", in.FirstSide, stitch.WrongSide) && in.FirstSide == stitch.WrongSide && in.Construction == stitch.InTheRound {
		c.Add("first_side", fault.ReasonContradictory, "in the round every round is on the right side")
	}
	vetAbbreviations(&c, in.Abbreviations)
	if err := c.Err(); err != nil {
		return CheckedInstructions{}, err
	}
	piece := Read(in.Text, Options{SizeCount: sizes, Abbreviations: in.Abbreviations})
	if len(in.StartStitches) == 0 && !piece.CastsOn() {
		c.Add("start_stitches", fault.ReasonRequired, "is missing, and the text does not begin with a cast-on such as \"CO 96 (104, 112) sts\"")
		return CheckedInstructions{}, c.Err()
	}
	worked := piece.Work(Start{Counts: in.StartStitches, Round: in.Construction == stitch.InTheRound,
		WrongSide: in.FirstSide == stitch.WrongSide})
	out := CheckedInstructions{SizeCount: piece.SizeCount, Lines: checkedLines(piece, worked), EndStitches: worked.EndStitches,
		WorkedRows: worked.WorkedRows, RowsOpen: worked.RowsOpen, Findings: worked.Findings}
	out.tell(worked.MoreCount)
	return out, nil
}

// checkedLines puts what was read and what was worked side by side.
func checkedLines(piece *Piece, worked Worked) []CheckedLine {
	lines := make([]CheckedLine, len(piece.Lines))
	for i := range lines {
		l, w := &piece.Lines[i], &worked.Lines[i]
		lines[i] = CheckedLine{
			LineNumber: l.Number(), Label: l.Label, Text: l.Text(RepeatStyleBrackets), Steps: l.Steps, Direction: l.Direction,
			Side: stitch.Side(w.Side), StartStitches: w.StartStitches, TakenStitches: w.TakenStitches, LeftStitches: w.LeftStitches,
			UnworkedStitches: w.UnworkedStitches, MissingStitches: w.MissingStitches, EndStitches: w.EndStitches, ClaimedStitches: l.ClaimedStitches,
			ClaimedChangeStitches: l.ClaimedChangeStitches,
		}
	}
	return lines
}

// tell counts the findings and says when there are more.
func (o *CheckedInstructions) tell(more int) {
	for _, f := range o.Findings {
		switch f.Kind {
		case KindMistake:
			o.mistakes++
		case KindQuestion:
			o.questions++
		}
	}
	o.Agrees = o.mistakes == 0 && o.questions == 0 && more == 0
	o.Notices = moreNotices(more)
}

// moreNotices says that findings are left out.
func moreNotices(more int) []report.Notice {
	if more == 0 {
		return nil
	}
	return []report.Notice{{Reason: "TOO_MANY_FINDINGS", Field: "text", Description: "the first " + strconv.Itoa(MaxFindings) + " findings are listed; " +
		strconv.Itoa(more) + " more are not: mend these and ask again"}}
}

// vetPatternText checks the length of a text.
func vetPatternText(c *fault.Checks, text string) bool {
	switch {
	case text == "":
		c.Add("text", fault.ReasonRequired, "is missing")
	case len(text) > MaxTextBytes:
		c.Add("text", fault.ReasonTooMany, "has %d bytes; at most %d are read", len(text), MaxTextBytes)
	default:
		return true
	}
	return false
}

// vetSizeCounts checks the stitches on the needle and returns the number of sizes,
// 0 where the text has to say it.
func vetSizeCounts(c *fault.Checks, counts []int) int {
	if !c.Items("", "start_stitches", len(counts), MaxSizes) {
		return 0
	}
	for i, n := range counts {
		c.Count("", fault.Index("start_stitches", i), n, 1, stitch.MaxStitches)
	}
	if len(counts) > 1 {
		return len(counts)
	}
	return 0
}

// vetAbbreviations checks the caller's own abbreviations.
func vetAbbreviations(c *fault.Checks, own []Abbreviation) {
	if !c.Items("", "abbreviations", len(own), MaxAbbreviations) {
		return
	}
	seen := map[string]bool{}
	for i, a := range own {
		at := fault.Index("abbreviations", i)
		name := Folded(a.Name)
		switch text, ok := Declarable(a.Name); {
		case a.Name == "":
			c.Add(fault.Join(at, "name"), fault.ReasonRequired, "is missing")
		case len([]rune(a.Name)) > MaxNameLength:
			c.Add(fault.Join(at, "name"), fault.ReasonTooMany, "has %d characters; at most %d are allowed", len([]rune(a.Name)), MaxNameLength)
		case !ok:
			c.Add(fault.Join(at, "name"), fault.ReasonInfeasible, "%q %s", cut(a.Name, fault.MaxNameLength), text)
		case seen[name]:
			c.Add(fault.Join(at, "name"), fault.ReasonContradictory, "%q is declared twice", a.Name)
		}
		seen[name] = true
		c.Count(at, "takes_stitches", a.TakesStitches, 0, MaxTakes)
		c.Count(at, "leaves_stitches", a.LeavesStitches, 0, MaxTakes)
	}
}

// cut cuts off a text at so many characters.
func cut(s string, most int) string {
	n := 0
	for i := range s {
		if n == most {
			return s[:i] + "…"
		}
		n++
	}
	return s
}
