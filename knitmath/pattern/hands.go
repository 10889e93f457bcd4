package pattern

import (
	"errors"

	"example.com/knitmath/knitmath/stitch"
)

// needsHands reports whether counting a row is not the whole truth of it.
func needsHands(steps []Step) bool {
	for i := range steps {
		s := &steps[i]
		switch s.Operation {
		case stitch.M1, stitch.M1L, stitch.M1R, stitch.M1P, stitch.M1LP, stitch.M1RP,
			stitch.Turn, stitch.WrapTurn, stitch.MakeDouble, stitch.KnitDouble, stitch.PurlDouble,
			stitch.KnitWrapped, stitch.PurlWrapped, stitch.ShortRowYO:
			return true
		}
		if needsHands(s.Steps) {
			return true
		}
	}
	return false
}

// picksUp reports whether a row takes rows of an edge rather than stitches.
func picksUp(steps []Step) bool {
	for i := range steps {
		switch steps[i].Operation {
		case stitch.PickUp, stitch.PickUpTwo, stitch.SkipRow:
			return true
		}
		if picksUp(steps[i].Steps) {
			return true
		}
	}
	return false
}

// byHand has the stitch machine work a row that was counted already. The machine
// comes in with the first row that needs it, on plain knitting, and stays until
// no short row is open. What it refuses becomes a finding, and it goes.
func (r *runner) byHand(i int, p *profile, before hand) {
	l := &r.piece.Lines[i]
	if r.quiet || r.machine == nil && (!needsHands(l.Steps) || before.behind != 0 || before.left < 1 || r.side == stitch.SideUnspecified) {
		return
	}
	if r.hands -= int(3*before.total() + 100); r.hands < 0 {
		r.machine = nil
		r.found.add(KindReading, ReasonCountedOnly, l.info.at, "from here on rows are counted, and no longer worked stitch by stitch")
		return
	}
	if r.machine == nil && !r.pickUp(before) {
		return
	}
	row, places, ok := r.rowOf(l.Steps, before.left)
	if !ok {
		r.machine = nil
		return
	}
	if err := r.machine.Work(row); err != nil {
		r.refused(l, err, places)
		r.machine = nil
		return
	}
	if p.turn == 0 && !r.machine.ShortRowOpen() && r.machine.Unresolved() == 0 || int64(r.machine.StitchCount()) != r.now.total() {
		r.machine = nil
	}
}

// pickUp puts the stitches on the machine's needles, in plain knitting, with the
// right side of the work facing.
func (r *runner) pickUp(before hand) bool {
	style, plain := stitch.Flat, 2
	if r.round {
		style, plain = stitch.InTheRound, 1
	}
	if r.side == stitch.WrongSide {
		if r.round {
			return false
		}
		plain = 1
	}
	m := stitch.NewMachine(style)
	if m.CastOn(int(before.left)) != nil {
		return false
	}
	for range plain {
		if m.Work(stitch.RowOf(stitch.ToEnd(stitch.Slip))) != nil {
			return false
		}
	}
	r.machine = m
	return true
}

// rowOf is a row in one size as the machine takes it, and the place in the text
// of each of its steps; a place without text is one that stands for another.
func (r *runner) rowOf(steps []Step, left int64) (stitch.Row, []span, bool) {
	var row stitch.Row
	var places []span
	put := func(at span, steps ...stitch.Step) {
		for _, s := range steps {
			row.Steps = append(row.Steps, s)
			places = append(places, at)
		}
	}
	for i := range steps {
		s := &steps[i]
		place := s.at
		if s.Steps == nil && s.Operation == 0 || s.IntoOneStitch {
			place = span{}
		}
		switch {
		case s.stretch() && s.Operation != 0:
			last := int64(at(s.RemainingStitches, r.size))
			put(place, stitch.ToLast(s.Operation, int(last)))
			left = last
		case s.stretch():
			each := s.pass(r.size).takes
			last := int64(at(s.RemainingStitches, r.size))
			if each < 1 || left < last {
				return row, nil, false
			}
			once, ok := r.once(s)
			if n := (left - last) / each; n > 0 {
				if !ok {
					return row, nil, false
				}
				put(place, stitch.Repeat(int(n), once...))
			}
			left = last
		default:
			n := 1
			if s.Times != nil {
				n = at(s.Times, r.size)
			}
			left -= s.pass(r.size).takes * int64(n)
			if n == 0 {
				continue
			}
			if i == 0 && s.Operation == stitch.YO && r.turned == stitch.Turn {
				put(place, stitch.Do(stitch.ShortRowYO, 1))
				if n--; n == 0 {
					continue
				}
			}
			if s.Operation != 0 {
				put(place, stitch.Do(s.Operation, n))
				continue
			}
			once, ok := r.once(s)
			if !ok {
				return row, nil, false
			}
			if len(once) > 0 {
				put(place, stitch.Repeat(n, once...))
			}
		}
	}
	return row, places, true
}

// once is one working of a group or a name.
func (r *runner) once(s *Step) ([]stitch.Step, bool) {
	if s.Steps == nil || s.IntoOneStitch {
		t := s.pass(r.size)
		return surrogate(int(t.takes), int(t.leaves))
	}
	var out []stitch.Step
	for i := range s.Steps {
		in := &s.Steps[i]
		n := 1
		if in.Times != nil {
			n = at(in.Times, r.size)
		}
		if n == 0 {
			continue
		}
		if in.Operation != 0 {
			out = append(out, stitch.Do(in.Operation, n))
			continue
		}
		once, ok := r.once(in)
		if !ok {
			return nil, false
		}
		if len(once) > 0 {
			out = append(out, stitch.Repeat(n, once...))
		}
	}
	return out, true
}

// surrogate is plain work that takes and leaves as many stitches as an
// abbreviation of which only these numbers are known.
func surrogate(takes, leaves int) ([]stitch.Step, bool) {
	if leaves < 0 {
		return nil, false
	}
	var out []stitch.Step
	if takes > leaves {
		out = append(out, stitch.Do(stitch.BindOff, takes-leaves))
	}
	if n := min(takes, leaves); n > 0 {
		out = append(out, stitch.Do(stitch.Knit, n))
	}
	if leaves > takes {
		out = append(out, stitch.Do(stitch.YO, leaves-takes))
	}
	return out, true
}

// handTexts is what the machine's refusals mean; others it has no say in.
var handTexts = map[stitch.Reason]string{
	stitch.ReasonDouble:     "a double stitch is worked here as an ordinary one: write k DS or p DS where it comes",
	stitch.ReasonNotDouble:  "the stitch here is no double stitch",
	stitch.ReasonNotWrapped: "the stitch here has no wrap",
	stitch.ReasonYarnOver:   "the yarn over of a short row is not worked together with its neighbour here",
	stitch.ReasonNotAtTurn:  "a double stitch is made at once after a turn",
	stitch.ReasonNoStrand:   "a make one needs a strand between two stitches: there is none here",
	stitch.ReasonStrandUsed: "the strand here has been lifted for a make one already",
	stitch.ReasonNoNext:     "no stitch is left here to wrap",
}

// refused makes a finding of what the machine refused.
func (r *runner) refused(l *Line, err error, places []span) {
	var fault *stitch.RowError
	if !errors.As(err, &fault) {
		return
	}
	at := l.info.at
	if len(fault.Path) > 0 {
		if i := fault.Path[0].Step; i < len(places) {
			at = places[i]
		}
	}
	if at.end == 0 {
		return // it met a step that only stands for another
	}
	if fault.Reason == stitch.ReasonWrapped {
		r.fault(KindReading, ReasonPassedOver, at, 0, "a wrapped stitch is worked here without its wrap: the count is the same")
		return
	}
	if text, ok := handTexts[fault.Reason]; ok {
		r.fault(KindQuestion, ReasonHands, at, 0, text)
	}
}

// StitchRow is a row of the piece in one size, counted from 0, as package stitch
// has it, for so many stitches on the left needle; false for a direction, for a
// row that could not be read, and for one that has no such form on these
// stitches.
func (p *Piece) StitchRow(line, size, onNeedle int) (stitch.Row, bool) {
	l := &p.Lines[line]
	if l.Direction != "" {
		return stitch.Row{}, false
	}
	r := runner{engine: &engine{piece: p}, size: size}
	row, _, ok := r.rowOf(l.Steps, int64(onNeedle))
	return row, ok
}
