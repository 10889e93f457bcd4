package pattern

import "slices"

// group writes "[k2, p2] 4 times", in the style asked for.
func (w *writer) group(s *Step, top bool) {
	if top && w.style == RepeatStyleStars && starred(s) {
		w.star(s)
		return
	}
	opener, closer := "[", "]"
	if w.style == RepeatStyleParentheses || s.IntoOneStitch {
		opener, closer = "(", ")"
	}
	w.WriteString(opener)
	w.steps(s.Steps, false)
	w.WriteString(closer)
	if s.IntoOneStitch {
		w.WriteString(" in next st")
	}
	switch {
	case s.RemainingStitches != nil || s.BeforeMarkerStitches != nil:
		w.upTo(s)
	case s.IntoOneStitch && (s.Times == nil || single(s.Times, 1)):
	default:
		w.times(s.Times, "")
	}
}

// starred reports whether stars can say how often a group is worked: twice at
// least in every size, or to the last stitches.
func starred(s *Step) bool {
	if s.IntoOneStitch {
		return false
	}
	if len(s.Times) > 0 && slices.Min(s.Times) < 2 {
		return false
	}
	return len(s.Times) > 0 || s.RemainingStitches != nil
}

// star writes "*k2, p2; rep from * 3 more times".
func (w *writer) star(s *Step) {
	w.WriteString("*")
	w.steps(s.Steps, false)
	w.WriteString("; rep from *")
	if s.Times != nil {
		more := make([]int, len(s.Times))
		for i, n := range s.Times {
			more[i] = n - 1
		}
		w.times(more, " more")
	}
	w.upTo(s)
}

// held writes "place 20 sts on hold", as rows of package stitch do.
func (w *writer) held(s *Step) {
	w.WriteString("place ")
	worked := ""
	if s.Name == holdWorked {
		w.WriteString("last ")
		worked = " worked"
	}
	if s.RemainingStitches != nil {
		w.WriteString("rem sts on hold")
		return
	}
	if s.BeforeMarkerStitches != nil {
		w.WriteString("sts to m on hold")
		return
	}
	w.numbers(s.Times)
	if single(s.Times, 1) {
		w.WriteString(" st" + worked + " on hold")
		return
	}
	w.WriteString(" sts" + worked + " on hold")
}

// fromElsewhere writes "pick up and knit 15 sts" and "k 25 sts from holder".
func (w *writer) fromElsewhere(s *Step) bool {
	before, after := "", ""
	switch s.Name {
	case pickedUp:
		before = "pick up and knit "
	case takenUp:
		before, after = "k ", " from holder"
	default:
		return false
	}
	w.WriteString(before)
	w.numbers(s.Times)
	if single(s.Times, 1) {
		w.WriteString(" st" + after)
	} else {
		w.WriteString(" sts" + after)
	}
	return true
}
