package pattern

import (
	"slices"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// PatternRow is a row with its label and claim, or a direction. It mirrors the
// message of the same name.
type PatternRow struct {
	Label           string
	Steps           []Step
	ClaimedStitches []int
	// ClaimedChangeStitches are claims such as "(2 sts dec)", below 0.
	ClaimedChangeStitches []int
	Direction             string
}

// FormatInstructionsInput asks for rows to be written, or for a text to be
// rewritten. It mirrors FormatInstructionsRequest.
type FormatInstructionsInput struct {
	Text          string
	Rows          []PatternRow
	Abbreviations []Abbreviation
	RepeatStyle   RepeatStyle
}

// MirrorInstructionsInput asks for the same rows for the other edge. It mirrors
// MirrorInstructionsRequest.
type MirrorInstructionsInput struct {
	Text          string
	Rows          []PatternRow
	Abbreviations []Abbreviation
	RepeatStyle   RepeatStyle
}

// WrittenInstructions is a text with its rows. It mirrors FormatInstructionsResponse.
type WrittenInstructions struct {
	SizeCount int
	Text      string
	Rows      []PatternRow
	Findings  []Finding
	Notices   []report.Notice
}

// MirroredInstructions is a text for the other edge, with its rows. It mirrors
// MirrorInstructionsResponse.
type MirroredInstructions struct {
	SizeCount int
	Text      string
	Rows      []PatternRow
	Findings  []Finding
	Notices   []report.Notice
	refused   int
}

// FormatInstructions writes rows as patterns do, in the shortest honest form: see
// stitch.Compress. Numbers that differ between sizes stay as they are grouped. A
// text may be given in place of rows: it is read and written anew, which is how
// to change the style of its repeats. Reading what is written gives rows that
// mean the same, and writing that again gives the same text.
//
// Source: own derivation; the notation is common practice.
func FormatInstructions(in FormatInstructionsInput) (WrittenInstructions, error) {
	piece, err := readPattern(in.Text, in.Rows, in.Abbreviations, in.RepeatStyle)
	if err != nil {
		return WrittenInstructions{}, err
	}
	lines := Compress(piece.Lines)
	findings, more := piece.Findings()
	return WrittenInstructions{SizeCount: piece.SizeCount, Text: Text(lines, in.RepeatStyle), Rows: patternRows(lines),
		Findings: findings, Notices: moreNotices(more)}, nil
}

// MirrorInstructions writes every row for the other edge: from its end to its
// beginning, with right- and left-leaning decreases and increases exchanged. The
// counts stay. A row that has no mirror image, such as a short row, comes back
// without steps, with a finding that says why. Rows are not compressed, so that
// each step can be found again.
//
// Mirroring twice gives the row again, except that what has no partner of its own
// kind, skp or sk2p, comes back as its equal, ssk or sssk; a finding says so.
//
// Source: own derivation; which operation leans which way is common practice.
func MirrorInstructions(in MirrorInstructionsInput) (MirroredInstructions, error) {
	piece, err := readPattern(in.Text, in.Rows, in.Abbreviations, in.RepeatStyle)
	if err != nil {
		return MirroredInstructions{}, err
	}
	m := piece.Mirror()
	out := MirroredInstructions{SizeCount: piece.SizeCount, Text: Text(m.Lines, in.RepeatStyle), Rows: patternRows(m.Lines),
		Findings: m.Findings, Notices: moreNotices(m.MoreCount)}
	for _, r := range out.Rows {
		if r.Direction == "" && len(r.Steps) == 0 {
			out.refused++
		}
	}
	return out, nil
}

func patternRows(lines []Line) []PatternRow {
	rows := make([]PatternRow, len(lines))
	for i, l := range lines {
		if l.Direction != "" {
			rows[i].Direction = l.Direction
			continue
		}
		rows[i] = PatternRow{l.Label, l.Steps, l.ClaimedStitches, l.ClaimedChangeStitches, l.Direction}
	}
	return rows
}

// readPattern checks a question that has a text or rows, and reads it.
func readPattern(text string, rows []PatternRow, own []Abbreviation, style RepeatStyle) (*Piece, error) {
	var c fault.Checks
	switch {
	case text != "" && len(rows) > 0:
		c.Add("text", fault.ReasonContradictory, "a text and rows were given; give one of them")
		c.Add("rows", fault.ReasonContradictory, "a text and rows were given; give one of them")
	case len(rows) == 0:
		vetPatternText(&c, text)
	default:
		c.Items("", "rows", len(rows), MaxLines)
	}
	vetAbbreviations(&c, own)
	fault.Enum(&c, "", "repeat_style", style, RepeatStyleStars)
	if err := c.Err(); err != nil {
		return nil, err
	}
	if len(rows) == 0 {
		return Read(text, Options{Abbreviations: own}), nil
	}
	w := rowWriter{Checks: &c, own: own, names: Names(own), sizes: 1}
	for i := range rows {
		w.row(i, rows[i])
	}
	if err := c.Err(); err != nil {
		return nil, err
	}
	piece := w.read(rows)
	return piece, c.Err()
}

// rowWriter checks rows that were given as trees.
type rowWriter struct {
	*fault.Checks
	own    []Abbreviation
	names  func(string) bool
	sizes  int // the longest list so far
	steps  int
	listed int
}

// row checks the fields of one row.
func (w *rowWriter) row(i int, r PatternRow) {
	at := fault.Index("rows", i)
	if r.Direction != "" {
		if r.Label != "" || len(r.Steps) > 0 || len(r.ClaimedStitches) > 0 || len(r.ClaimedChangeStitches) > 0 {
			w.Add(fault.Join(at, "direction"), fault.ReasonContradictory, "a row is a direction, or has label, steps and claim; give one")
		}
	} else if len(r.Steps) == 0 {
		w.Add(fault.Join(at, "steps"), fault.ReasonRequired, "is missing, and there is no direction either")
	}
	for _, t := range []struct{ field, text string }{{"label", r.Label}, {"direction", r.Direction}} {
		if n := len([]rune(t.text)); n > MaxLabelLength {
			w.Add(fault.Join(at, t.field), fault.ReasonTooMany, "has %d characters; at most %d are allowed", n, MaxLabelLength)
		}
	}
	if r.Label != "" && !IsLabel(r.Label) {
		w.Add(fault.Join(at, "label"), fault.ReasonInfeasible, "%q is no label: write \"Row 1 (RS)\", or at most four words and row or rnd", cut(r.Label, fault.MaxNameLength))
	}
	w.stepList(fault.Join(at, "steps"), r.Steps, 1)
	w.numbers(at, "claimed_stitches", r.ClaimedStitches, -1)
	w.numbers(at, "claimed_change_stitches", r.ClaimedChangeStitches, -MaxNumber)
	switch {
	case len(r.ClaimedChangeStitches) == 0:
	case len(r.ClaimedStitches) > 0:
		w.Add(fault.Join(at, "claimed_change_stitches"), fault.ReasonContradictory, "a row claims a count or a change; give one of claimed_stitches and claimed_change_stitches")
	case slices.Min(r.ClaimedChangeStitches) < 0 && slices.Max(r.ClaimedChangeStitches) > 0:
		w.Add(fault.Join(at, "claimed_change_stitches"), fault.ReasonContradictory, "the notation has no word for an increase in one size and a decrease in another")
	}
}

// stepList checks steps that lie depth-1 groups deep.
func (w *rowWriter) stepList(at string, steps []Step, depth int) {
	if w.steps > MaxSteps {
		return // that has been said
	}
	if w.steps += len(steps); w.steps > MaxSteps {
		w.Add(at, fault.ReasonTooMany, "all rows together have at most %d steps", MaxSteps)
		return
	}
	for i := range steps {
		w.step(fault.Index(at, i), &steps[i], depth)
	}
}

func (w *rowWriter) step(at string, s *Step, depth int) {
	kinds := 0
	if s.Operation != 0 {
		kinds++
		if !s.Operation.Valid() {
			w.Add(fault.Join(at, "operation"), fault.ReasonUnknownValue, "is no operation known here")
		}
	}
	if s.Name != "" {
		kinds++
		if !w.names(s.Name) {
			w.Add(fault.Join(at, "name"), fault.ReasonUnknownValue, "%q is not known here: declare it, with the stitches it takes and leaves", cut(s.Name, fault.MaxNameLength))
		}
	}
	if len(s.Steps) > 0 {
		kinds++
		if depth > stitch.MaxDepth {
			w.Add(fault.Join(at, "steps"), fault.ReasonTooMany, "groups lie at most %d deep in one another", stitch.MaxDepth)
			return
		}
		w.stepList(fault.Join(at, "steps"), s.Steps, depth+1)
	}
	switch {
	case kinds == 0:
		w.Add(fault.Join(at, "operation"), fault.ReasonRequired, "is missing; a step has an operation, a name or steps")
	case kinds > 1:
		w.Add(at, fault.ReasonContradictory, "a step has one of operation, name and steps")
	}
	w.numbers(at, "times", s.Times, 0)
	w.numbers(at, "remaining_stitches", s.RemainingStitches, 0)
	if len(s.Times) > 0 && len(s.RemainingStitches) > 0 {
		w.Add(fault.Join(at, "remaining_stitches"), fault.ReasonContradictory, "a step is worked a number of times or until stitches remain; give one of times and remaining_stitches")
	}
	if s.IntoOneStitch && len(s.Steps) == 0 {
		w.Add(fault.Join(at, "into_one_stitch"), fault.ReasonContradictory, "only a group is worked into one stitch")
	}
	if fault.Enum(w.Checks, at, "manner", s.Manner, SlipMannerPwiseWyib) && s.Manner != 0 && s.Operation != stitch.Slip {
		w.Add(fault.Join(at, "manner"), fault.ReasonContradictory, "only a slipped stitch has a manner")
	}
}

// numbers checks a list for the sizes: one number, or as many as the other lists.
func (w *rowWriter) numbers(at, field string, n []int, least int) {
	if !w.Items(at, field, len(n), MaxSizes) {
		return
	}
	if len(n) > 1 {
		if w.sizes > 1 && w.sizes != len(n) {
			w.Add(fault.Join(at, field), fault.ReasonContradictory, "has %d numbers; other lists have %d", len(n), w.sizes)
		}
		w.sizes = max(w.sizes, len(n))
		if w.listed += len(n); w.listed > MaxListed {
			w.Add(fault.Join(at, field), fault.ReasonTooMany, "all lists together hold at most %d numbers", MaxListed)
			return
		}
	}
	for i, v := range n {
		w.Count(at, fault.Index(field, i), v, least, MaxNumber)
	}
}

// read writes each row and reads it again: what the notation cannot say, or a row
// that is no row, is found by the same rules as in a text.
func (w *rowWriter) read(rows []PatternRow) *Piece {
	whole := &Piece{SizeCount: w.sizes}
	for i, r := range rows {
		line := Line{Label: r.Label, Steps: r.Steps, ClaimedStitches: r.ClaimedStitches,
			ClaimedChangeStitches: r.ClaimedChangeStitches, Direction: r.Direction}
		text := line.Text(RepeatStyleBrackets)
		if len(text) > MaxTextBytes {
			w.Add(fault.Join(fault.Index("rows", i), "steps"), fault.ReasonTooMany, "the row is longer than %d bytes when it is written", MaxTextBytes)
			continue
		}
		one := Read(text, Options{SizeCount: w.sizes, Abbreviations: w.own})
		field, detail, ok := one.OneLine(&line)
		if !ok {
			w.Add(fault.Join(fault.Index("rows", i), field), fault.ReasonInfeasible, "%q does not read as one row: %s", cut(text, fault.MaxNameLength), detail)
			continue
		}
		whole.Lines = append(whole.Lines, one.Lines...)
	}
	return whole
}
