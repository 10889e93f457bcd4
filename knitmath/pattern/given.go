package pattern

import (
	"slices"
	"unicode/utf8"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/stitch"
)

// readQuestion checks a question that has a text or rows, and reads it.
func readQuestion(text string, rows []Row, own []Abbreviation, style RepeatStyle) (*Piece, error) {
	var c fault.Checks
	c.OneOf(text != "", len(rows) > 0, "text", "rows")
	switch {
	case text != "" && len(rows) == 0:
		vetText(&c, text)
	case c.Sound("rows"):
		c.Items("", "rows", len(rows), MaxRowsGiven)
	}
	vetAbbreviations(&c, own)
	fault.Enum(&c, "", "repeat_style", style, RepeatStyleStars)
	if err := c.Err(); err != nil {
		return nil, err
	}
	if len(rows) == 0 {
		return Read(text, Options{Abbreviations: own}), nil
	}
	mine := ownNames(own)
	g := givenRows{Checks: &c, own: mine, names: namesOf(mine), sizes: 1}
	for i := range rows {
		g.vetRow(fault.Index("rows", i), rows[i])
	}
	if err := c.Err(); err != nil {
		return nil, err
	}
	piece := g.read(rows)
	return piece, c.Err()
}

// givenRows checks rows that were given as trees.
type givenRows struct {
	*fault.Checks
	own    map[string]meaning
	names  func(string) bool
	sizes  int // the longest list so far
	steps  int
	listed int
}

// vetRow checks the fields of one row.
func (g *givenRows) vetRow(at string, r Row) {
	claims := len(r.ClaimedStitches) > 0 || len(r.ClaimedChangeStitches) > 0
	switch {
	case r.Direction == "" && len(r.Steps) == 0:
		g.Add(fault.Join(at, "steps"), fault.ReasonRequired, "is missing, and there is no direction either")
	case r.Direction != "" && (r.Label != "" || len(r.Steps) > 0 || claims):
		g.Add(fault.Join(at, "direction"), fault.ReasonContradictory,
			"a row is a direction, or has label, steps and claim; give one")
	}
	g.vetLength(at, "label", r.Label)
	g.vetLength(at, "direction", r.Direction)
	if r.Label != "" && !isLabel(r.Label) {
		g.Add(fault.Join(at, "label"), fault.ReasonUnreadable,
			"%q is no label: write \"Row 1 (RS)\", or at most four words and row or rnd", shorten(r.Label, fault.MaxNameLength))
	}
	g.vetSteps(fault.Join(at, "steps"), r.Steps, 1)
	g.vetNumbers(at, "claimed_stitches", r.ClaimedStitches, -1)
	g.vetNumbers(at, "claimed_change_stitches", r.ClaimedChangeStitches, -MaxNumber)
	switch {
	case len(r.ClaimedChangeStitches) == 0:
	case slices.Min(r.ClaimedChangeStitches) < 0 && slices.Max(r.ClaimedChangeStitches) > 0:
		g.Add(fault.Join(at, "claimed_change_stitches"), fault.ReasonContradictory,
			"the notation has no word for an increase in one size and a decrease in another")
	}
}

// vetLength checks the length of a label or a direction.
func (g *givenRows) vetLength(at, field, text string) {
	if n := utf8.RuneCountInString(text); n > MaxLabelLength {
		g.Add(fault.Join(at, field), fault.ReasonTooMany, "has %d characters; at most %d are allowed", n, MaxLabelLength)
	}
}

// vetSteps checks steps that lie depth-1 groups deep.
func (g *givenRows) vetSteps(at string, steps []Step, depth int) {
	if g.steps > MaxStepsGiven {
		return // that has been said
	}
	if g.steps += len(steps); g.steps > MaxStepsGiven {
		g.Add(at, fault.ReasonTooMany, "all rows together have at most %d steps", MaxStepsGiven)
		return
	}
	for i := range steps {
		g.vetStep(fault.Index(at, i), &steps[i], depth)
	}
}

// vetStep checks one step: what is worked, then how often.
func (g *givenRows) vetStep(at string, s *Step, depth int) {
	g.vetWork(at, s)
	if len(s.Steps) > 0 {
		if depth > stitch.MaxDepth {
			g.Add(fault.Join(at, "steps"), fault.ReasonTooMany, "groups lie at most %d deep in one another", stitch.MaxDepth)
			return
		}
		g.vetSteps(fault.Join(at, "steps"), s.Steps, depth+1)
	}
	switch kinds := s.kinds(); {
	case kinds == 0:
		g.Add(fault.Join(at, "operation"), fault.ReasonRequired, "is missing; a step has an operation, a name or steps")
	case kinds > 1:
		g.Add(at, fault.ReasonContradictory, "a step has one of operation, name and steps")
	}
	g.vetNumbers(at, "times", s.Times, 0)
	g.vetNumbers(at, "remaining_stitches", s.RemainingStitches, 0)
	if len(s.Times) > 0 && len(s.RemainingStitches) > 0 {
		g.Add(fault.Join(at, "remaining_stitches"), fault.ReasonContradictory,
			"a step is worked a number of times or until stitches remain; give one of times and remaining_stitches")
	}
	g.vetNumbers(at, "before_marker_stitches", s.BeforeMarkerStitches, 0)
	if len(s.BeforeMarkerStitches) > 0 && len(s.Times)+len(s.RemainingStitches) > 0 {
		g.Add(fault.Join(at, "before_marker_stitches"), fault.ReasonContradictory,
			"a step is worked up to a marker, a number of times or until stitches remain; give one")
	}
	if s.IntoOneStitch && len(s.Steps) == 0 {
		g.Add(fault.Join(at, "into_one_stitch"), fault.ReasonContradictory, "only a group is worked into one stitch")
	}
	fault.Enum(g.Checks, at, "manner", s.Manner, SlipMannerPwiseWyib)
	if s.Manner.said() && s.Operation != stitch.Slip {
		g.Add(fault.Join(at, "manner"), fault.ReasonContradictory, "only a slipped stitch has a manner")
	}
}

// vetWork checks an operation and a name.
func (g *givenRows) vetWork(at string, s *Step) {
	if s.Operation != 0 && !s.Operation.Valid() {
		g.Add(fault.Join(at, "operation"), fault.ReasonUnknownValue, "is no operation known here")
	}
	if s.Name != "" && !g.names(s.Name) {
		g.Add(fault.Join(at, "name"), fault.ReasonUnknownValue,
			"%q is not known here: declare it, with the stitches it takes and leaves", shorten(s.Name, fault.MaxNameLength))
	}
}

// kinds is how many of operation, name and group a step has: it should be one.
func (s *Step) kinds() int {
	n := 0
	for _, has := range [...]bool{s.Operation != 0, s.Name != "", len(s.Steps) > 0} {
		if has {
			n++
		}
	}
	return n
}

// vetNumbers checks a list for the sizes: one number, or as many as the other
// lists.
func (g *givenRows) vetNumbers(at, field string, numbers []int, least int) {
	list := fault.Join(at, field)
	if len(numbers) > MaxSizes {
		g.Items(at, field, len(numbers), MaxSizes)
		return
	}
	if len(numbers) > 1 {
		if g.sizes > 1 && g.sizes != len(numbers) {
			g.Add(list, fault.ReasonContradictory, "has %d numbers; other lists have %d", len(numbers), g.sizes)
		}
		g.sizes = max(g.sizes, len(numbers))
		if g.listed += len(numbers); g.listed > MaxListedGiven {
			g.Add(list, fault.ReasonTooMany, "all lists together hold at most %d numbers", MaxListedGiven)
			return
		}
	}
	for i, n := range numbers {
		g.Count(at, fault.Index(field, i), n, least, MaxNumber)
	}
}

// read writes each row and reads it again: what the notation cannot say, or a row
// that is no row, is found by the same rules as in a text.
func (g *givenRows) read(rows []Row) *Piece {
	whole := &Piece{SizeCount: g.sizes}
	for i, r := range rows {
		line := Line{Label: r.Label, Steps: r.Steps, ClaimedStitches: r.ClaimedStitches,
			ClaimedChangeStitches: r.ClaimedChangeStitches, Direction: r.Direction}
		text := line.Text(RepeatStyleBrackets)
		if len(text) > MaxTextBytes {
			g.Add(fault.Join(fault.Index("rows", i), "steps"), fault.ReasonTooMany,
				"the row is longer than %d bytes when it is written", MaxTextBytes)
			continue
		}
		one := readRow(text, g.sizes, g.own)
		field, detail, ok := one.oneLine(&line)
		if !ok {
			reason := fault.ReasonUnreadable
			if field == "steps" {
				reason = fault.ReasonInfeasible // they are no words of the caller
			}
			g.Add(fault.Join(fault.Index("rows", i), field), reason, "%q does not read as one row: %s", shorten(text, fault.MaxNameLength), detail)
			continue
		}
		whole.Lines = append(whole.Lines, one.Lines...)
	}
	return whole
}
