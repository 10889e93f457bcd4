package pattern

import (
	"context"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// CheckInstructionsInput asks for a text to be read and worked in all its sizes.
// It mirrors CheckInstructionsRequest.
type CheckInstructionsInput struct {
	Text          string
	StartStitches []int
	Construction  stitch.Construction
	FirstSide     stitch.Side
	Abbreviations []Abbreviation
	WithProof     bool
	WithRuns      bool
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
	Proof       string
	Runs        []RowRun
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
// A text whose rows and repeats are too many to work stops with a finding, TOO_MANY,
// and is not called right; what comes before is checked. The error is that of the
// context when it ends before the answer is there.
//
// Text must have at most MaxTextBytes bytes. See the package's comment for the
// grammar, and for how a count goes on after a mistake.
//
// Source: own derivation; the notation is common practice.
func CheckInstructions(ctx context.Context, in CheckInstructionsInput) (CheckedInstructions, error) {
	var c fault.Checks
	vetText(&c, in.Text)
	vetStart(&c, in)
	vetAbbreviations(&c, in.Abbreviations)
	if err := c.Err(); err != nil {
		return CheckedInstructions{}, err
	}
	sizes := 0 // the text has to say it
	if len(in.StartStitches) > 1 {
		sizes = len(in.StartStitches)
	}
	own := ownNames(in.Abbreviations)
	first := new(room)
	piece, given := first.begun(in, own, sizes)
	if len(in.StartStitches) == 0 && !piece.CastsOn() {
		c.Add("start_stitches", fault.ReasonRequired,
			"is missing, and the text does not begin with a cast-on such as \"CO 96 (104, 112) sts\"")
		return CheckedInstructions{}, c.Err()
	}
	start := Start{Counts: given, Construction: in.Construction, Side: in.FirstSide, noted: in.WithRuns}
	g := glanceAt(in.Text)
	worked, err := first.work(ctx, piece, start, in.charge(g))
	if err != nil {
		return CheckedInstructions{}, err
	}
	var stands *footing
	if anyMistake(worked.Findings) {
		known := parser{tokens: first.tokens, own: own, patterns: piece.patterns, found: findings{source: in.Text}}
		stands = newFooting(piece, &worked, known.strangeWords())
	}
	try := corrector{ctx: ctx, own: own, sizes: sizes, start: start, piece: piece, worked: &worked, room: first.forTrials(),
		spare: chargesPerStep * trying(in.once(g))}
	try.start.noted = false
	try.correct()
	if stands != nil {
		stands.askDoubtful(worked.Findings)
		piece.askUnsure(worked.Findings, sizes > 1)
	}
	out := CheckedInstructions{SizeCount: piece.SizeCount, Lines: checkedLines(piece, worked), EndStitches: worked.EndStitches,
		WorkedRows: worked.WorkedRows, RowsOpen: worked.RowsOpen, Findings: worked.Findings, Runs: worked.runs}
	out.tell(worked.MoreCount, worked.unsaid)
	if in.WithProof {
		out.Proof = out.proof(piece, &worked)
	}
	return out, nil
}

// checkedLines puts what was read and what was worked side by side.
func checkedLines(piece *Piece, worked Worked) []CheckedLine {
	lines := make([]CheckedLine, len(piece.Lines))
	for i := range lines {
		l, w := &piece.Lines[i], &worked.Lines[i]
		lines[i] = CheckedLine{
			LineNumber: l.Number(), Label: l.Label, Text: l.Text(RepeatStyleBrackets), Steps: l.Steps, Direction: l.Direction,
			Side: w.Side, StartStitches: w.StartStitches, TakenStitches: w.TakenStitches, LeftStitches: w.LeftStitches,
			UnworkedStitches: w.UnworkedStitches, MissingStitches: w.MissingStitches, EndStitches: w.EndStitches,
			ClaimedStitches: l.ClaimedStitches, ClaimedChangeStitches: l.ClaimedChangeStitches,
		}
	}
	return lines
}

// tell counts the findings and says when there are more.
func (o *CheckedInstructions) tell(more, unsaid int) {
	for _, f := range o.Findings {
		switch f.Kind {
		case KindMistake:
			o.mistakes++
		case KindQuestion:
			o.questions++
		}
	}
	o.Agrees = o.mistakes == 0 && o.questions == 0 && more == 0
	o.Notices = moreNotices("text", len(o.Findings), more+unsaid)
}
