package pattern

import (
	"slices"
	"strings"

	"example.com/knitmath/knitmath/stitch"
)

// changesTried is the most changes of single stitches that are counted for a row.
const changesTried = 400

// oneStitch looks for one stitch that is left out, or stands there in vain, or in the place of
// another: of those that change the count.
func (e *rowEdits) oneStitch() {
	if len(e.steps) > longestMended {
		return
	}
	ops := e.shapers()
	tried := 0
	var within func(steps *[]Step)
	within = func(steps *[]Step) {
		for i := range *steps {
			s := (*steps)[i]
			if s.Steps != nil && !s.IntoOneStitch {
				within(&(*steps)[i].Steps)
				continue
			}
			if tried++; tried > changesTried || e.spare <= 0 || s.Operation.EndsRow() {
				return
			}
			e.leftOut(steps, i)
			for _, op := range ops {
				e.inItsPlace(steps, i, op)
				e.putAfter(steps, i, op)
			}
		}
	}
	within(&e.steps)
	for _, op := range ops {
		e.putFirst(op)
	}
}

// longestMended is how many steps a row has at most that a stitch is put into: each try
// writes the row anew. Nobody's row is longer.
const longestMended = 500

// shapers are the operations of the row that change the count, with their mirror images, and
// the commonest.
func (e *rowEdits) shapers() []stitch.Op {
	var ops []stitch.Op
	add := func(op stitch.Op) {
		if op != 0 && !slices.Contains(ops, op) {
			ops = append(ops, op)
		}
	}
	var gather func(steps []Step)
	gather = func(steps []Step) {
		for i := range steps {
			s := &steps[i]
			gather(s.Steps)
			if s.Steps == nil && s.takes != s.leaves && !s.Operation.EndsRow() && s.Operation != stitch.BindOff && s.Operation != stitch.CastOn {
				add(mirrored(s.Operation))
				add(s.Operation)
			}
		}
	}
	gather(e.steps)
	increases, decreases := false, false
	for _, op := range ops {
		increases, decreases = increases || op.Leaves() > op.Takes(), decreases || op.Leaves() < op.Takes()
	}
	if !increases {
		add(stitch.YO)
	}
	if !decreases {
		add(stitch.K2tog)
	}
	return ops[:min(len(ops), 6)]
}

func stepOf(op stitch.Op) Step {
	return Step{Operation: op, Times: one, takes: int16(op.Takes()), leaves: int16(op.Leaves())}
}

// wordOff is how far a word is off that is put in or taken out: more than a number that is typed wrong.
const wordOff = 3

// with tries the row with other steps in place of those from i to k in one of its lists, and notes
// the change if it comes out.
func (e *rowEdits) with(steps *[]Step, i, k int, others []Step, q candidate) {
	was := *steps
	e.tried = append(append(append(e.tried[:0], was[:i]...), others...), was[k:]...)
	*steps = e.tried
	if e.allFit() {
		q.row, q.balanced, q.alike, q.far = e.row, balanced(e.steps), e.alikeBeside(), wordOff
		e.found = append(e.found, q)
	}
	*steps = was
}

// leftOut tries the row without a stitch that changes the count.
func (e *rowEdits) leftOut(steps *[]Step, i int) {
	s := (*steps)[i]
	if s.takes == s.leaves || s.stretch() || len(*steps) < 2 || !single(s.Times, 1) {
		return
	}
	at := s.at
	said := e.piece.source[at.start:at.end]
	if next := e.piece.source[at.end:]; len(next) > 1 && next[0] == ',' && i+1 < len(*steps) {
		at.end++
		for int(at.end) < len(e.piece.source) && e.piece.source[at.end] == ' ' {
			at.end++
		}
	}
	e.with(steps, i, i+1, nil, candidate{at: at, says: joined(said) + " left out"})
}

// inItsPlace tries the row with another stitch in the place of a single one.
func (e *rowEdits) inItsPlace(steps *[]Step, i int, op stitch.Op) {
	s := (*steps)[i]
	said := e.piece.source[s.at.start:s.at.end]
	if s.stretch() || s.Operation == op || s.Operation == 0 || !single(s.Times, 1) || !e.alone(&s) ||
		slices.Contains(knownOps[s.Operation], op) {
		return
	}
	put := e.spelt(op)
	e.with(steps, i, i+1, []Step{stepOf(op)}, candidate{at: s.at, put: put, other: true, says: put + " instead of " + joined(said)})
}

// putAfter tries the row with a stitch more after one of its steps.
func (e *rowEdits) putAfter(steps *[]Step, i int, op stitch.Op) {
	s := (*steps)[i]
	if s.stretch() && i == len(*steps)-1 || s.at.end <= s.at.start {
		return
	}
	put := e.spelt(op)
	at := after(e.piece.source, s.at, span{end: s.at.end})
	e.with(steps, i+1, i+1, []Step{stepOf(op)},
		candidate{at: at, put: ", " + put, says: put + " put in after " + joined(e.piece.source[s.at.start:s.at.end])})
}

// putFirst tries the row with a stitch more before its first.
func (e *rowEdits) putFirst(op stitch.Op) {
	if e.spare <= 0 {
		return
	}
	at := e.steps[0].at
	if e.steps[0].Steps != nil || at.end <= at.start {
		return
	}
	at.end = at.start
	put := e.spelt(op)
	e.with(&e.steps, 0, 0, []Step{stepOf(op)}, candidate{at: at, put: put + ", ", says: put + " put in first"})
}

// alone reports whether a step is written as one word, so that another can take its place.
func (e *rowEdits) alone(s *Step) bool {
	tokens := scan(e.piece.source[s.at.start:s.at.end])
	return len(tokens) > 0 && tokens[0].kind == tokenWord && (len(tokens) == 1 || tokens[1].kind == tokenEnd)
}

// spelt is an operation as the row spells it, or as it is abbreviated.
func (e *rowEdits) spelt(op stitch.Op) string {
	text, known := e.spellings[op]
	if known {
		return text
	}
	if text = e.asWritten(e.piece.Lines[e.row].Steps, op); text == "" {
		text = inCaseOf(op.Abbr(), e.asWritten(e.piece.Lines[e.row].Steps, mirrored(op)))
	}
	if e.spellings == nil {
		e.spellings = map[stitch.Op]string{}
	}
	e.spellings[op] = text
	return text
}

// asWritten is an operation as some steps spell it, "" where they do not have it.
func (e *rowEdits) asWritten(steps []Step, op stitch.Op) string {
	text := ""
	for i := range steps {
		s := &steps[i]
		switch {
		case text != "":
		case s.Steps != nil:
			text = e.asWritten(s.Steps, op)
		case s.Operation == op && s.at.end > s.at.start && e.alone(s):
			text = e.piece.source[s.at.start:s.at.end]
		}
	}
	return text
}

// inCaseOf is a word with small letters where another as long has them: "m1R" beside "m1L".
func inCaseOf(word, other string) string {
	if len(other) != len(word) {
		return word
	}
	small := strings.ToLower(word)
	for i := range word {
		if other[i] == small[i] && other[i] != word[i] {
			word = word[:i] + small[i:i+1] + word[i+1:]
		}
	}
	return word
}
