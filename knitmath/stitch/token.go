package stitch

import "encoding/binary"

// token is what fold arranges: a run, or a whole group as one piece.
type token struct {
	key   int  // equal for runs of one operation, and for equal groups
	count int  // workings of a run; 1 for a group
	apart bool // may not stand within a group
	step  Step // the run or group itself
}

// runToken returns the token of a run. A turn never stands within a group.
func runToken(r Run) token {
	return token{key: int(r.Op), count: r.Count, apart: r.Op.EndsRow(), step: Do(r.Op, r.Count)}
}

// groupToken returns the token of a group found by fold, with a key of its own
// for each different group. A group with brackets inside already nests one deep.
func groupToken(s Step, keys map[string]int) token {
	apart := false
	id := binary.AppendUvarint(nil, uint64(s.Times))
	for _, in := range s.Group {
		id = binary.AppendUvarint(append(id, byte(in.Op)), uint64(in.Count))
		apart = apart || bracketedRun(in.Op, in.Count)
	}
	key, known := keys[string(id)]
	if !known {
		key = int(opEnd) + len(keys)
		keys[string(id)] = key
	}
	return token{key: key, count: 1, apart: apart, step: s}
}

// innerTokens returns what a group holds, ready to be folded within; brackets
// around a single operation may then not go into yet another pair. It returns
// false for a step that is not a group of runs.
func innerTokens(s Step) ([]token, bool) {
	tokens := make([]token, 0, len(s.Group))
	for _, in := range s.Group {
		if in.Group != nil {
			return nil, false
		}
		t := runToken(Run{in.Op, in.Count})
		t.apart = t.apart || bracketedRun(in.Op, in.Count)
		tokens = append(tokens, t)
	}
	return tokens, len(tokens) > 0
}

// bracketedRun reports whether op worked n times is written with brackets.
func bracketedRun(op Op, n int) bool { return op.facts().form == bracketed && n > 1 }

// part returns the step for n of the token's workings.
func (t *token) part(n int) Step {
	if t.step.Group != nil {
		return t.step
	}
	return Do(t.step.Op, n)
}

// width returns the length of the text of n of the token's workings, and of the
// ", " after it.
func (t *token) width(n int) int {
	if t.step.Group != nil {
		return t.step.width() + 2
	}
	return runWidth(t.step.Op, n) + 2
}

// stepsWidth returns the length of the text of the steps and of a ", " after it.
func stepsWidth(steps []Step) int {
	n := 0
	for _, s := range steps {
		n += s.width() + 2
	}
	return n
}

// width returns the length of the step's text.
func (s Step) width() int {
	if s.Group == nil {
		return runWidth(s.Op, s.Count)
	}
	// The "[" and "]" are as long as the ", " that does not follow the last step.
	return stepsWidth(s.Group) + timesWidth(s.Times)
}

// runWidth returns the length of what appendRun adds.
func runWidth(op Op, n int) int {
	f := op.facts()
	switch {
	case f.form == joined:
		return len(f.abbr) + digits(n)
	case f.form == spaced:
		return len(f.abbr) + 1 + digits(n)
	case f.form == placed && n == 1:
		return len(f.abbr) + 1 // one digit and a space more, one letter less
	case f.form == placed:
		return len(f.abbr) + 1 + digits(n)
	case n == 1:
		return len(f.abbr)
	}
	return len(f.abbr) + 2 + timesWidth(n)
}

// timesWidth returns the length of what appendTimes adds.
func timesWidth(n int) int {
	switch n {
	case 1:
		return len(" once")
	case 2:
		return len(" twice")
	}
	return len(" times") + 1 + digits(n)
}

func digits(n int) int {
	switch {
	case n < 10:
		return 1
	case n < 100:
		return 2
	case n < 1000:
		return 3
	}
	return 3 + digits(n/1000)
}
