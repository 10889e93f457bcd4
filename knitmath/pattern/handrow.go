package pattern

import "example.com/knitmath/knitmath/stitch"

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

// rowOf is a row in one size as the machine takes it, and the place in the text
// of each of its steps; a place without text is one that stands for another. Both
// are good until the next row.
func (r *runner) rowOf(steps []Step, left int64) (stitch.Row, []span, bool) {
	b := rowBuilder{runner: r, left: left, row: stitch.Row{Steps: r.steps[:0]}, places: r.places[:0]}
	defer func() { r.steps, r.places = b.row.Steps, b.places }() // room for the next row
	for i := range steps {
		s := &steps[i]
		b.place = s.at
		if s.Steps == nil && s.Operation == 0 || s.IntoOneStitch {
			b.place = span{}
		}
		ok := false
		if toMarkerWithin(s) {
			return b.row, nil, false // where a marker lies is for a walker to find
		}
		if s.stretch() {
			ok = b.stretch(s)
		} else {
			// After a turn a yarn over is the loop of a short row.
			ok = b.fixed(s, i == 0 && s.Operation == stitch.YO && r.turned == stitch.Turn)
		}
		if !ok {
			return b.row, nil, false
		}
	}
	return b.row, b.places, true
}

// rowBuilder builds a row for the machine.
type rowBuilder struct {
	*runner
	left   int64 // on the left needle
	place  span  // of the step at hand
	row    stitch.Row
	places []span
}

func (b *rowBuilder) put(s stitch.Step) {
	b.row.Steps = append(b.row.Steps, s)
	b.places = append(b.places, b.place)
}

// stretch puts what is worked until some stitches remain.
func (b *rowBuilder) stretch(s *Step) bool {
	last := int64(at(s.RemainingStitches, b.size))
	if s.Operation != 0 {
		b.put(stitch.ToLast(s.Operation, int(last)))
		b.left = last
		return true
	}
	each := s.pass(b.size).takes
	if each < 1 || b.left < last {
		return false
	}
	once, ok := b.once(s)
	n := (b.left - last) / each
	if n > 0 && ok {
		b.put(stitch.Repeat(int(n), once...))
	}
	b.left = last
	return ok || n == 0
}

// fixed puts what is worked a number of times.
func (b *rowBuilder) fixed(s *Step, afterTurn bool) bool {
	n := s.workings(b.size)
	b.left -= s.pass(b.size).takes * int64(n)
	if afterTurn && n > 0 {
		b.put(stitch.Do(stitch.ShortRowYO, 1))
		n--
	}
	if n == 0 {
		return true
	}
	if s.Operation != 0 {
		b.put(stitch.Do(s.Operation, n))
		return true
	}
	once, ok := b.once(s)
	if ok && len(once) > 0 {
		b.put(stitch.Repeat(n, once...))
	}
	return ok
}

// once is one working of a group or a name.
func (r *runner) once(s *Step) ([]stitch.Step, bool) {
	if s.Steps == nil || s.IntoOneStitch {
		t := s.pass(r.size)
		return surrogate(int(t.takes), int(t.leaves))
	}
	out := make([]stitch.Step, 0, len(s.Steps))
	for i := range s.Steps {
		in := &s.Steps[i]
		n := in.workings(r.size)
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

// toMarkerWithin reports whether a step, or one of its group, is worked up to a marker.
func toMarkerWithin(s *Step) bool {
	if s.BeforeMarkerStitches != nil {
		return true
	}
	for i := range s.Steps {
		if toMarkerWithin(&s.Steps[i]) {
			return true
		}
	}
	return false
}
