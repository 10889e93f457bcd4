package pattern

import (
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// engine works the sizes one after the other and joins what they find.
type engine struct {
	meter
	room    *room
	piece   *Piece
	start   Start
	journal *journal // nil where the runs are not wanted
	out     *Worked
	found   *findings
	details []*detail // of findings, by their index; nil for what was found on reading
	hands   int       // stitches the machine may still work
	changes int       // how often something was noted that is part of the answer

	facts    []facts
	profiles []profile
	doneFor  []int8 // the size that a profile is for, from 1; 0 for none yet, allSizes

	among map[*shapings]bool // stretches whose first row is one of their times

	// What a size needs for itself, and leaves to the next.
	written    *numbering
	history    []int16
	lines      []int16
	steps      []stitch.Step
	places     []span
	last       profile // of a row that ends with "fasten off"
	turningRow profile // of a row that must end with a turn
	between    profile // of a row whose increases are made between stitches
	turns      []int16 // rows between two shapings, and the one that is shaped
	seen       []bool  // lines that were worked in this size
	held       []int64 // stitches put aside, in the order in which they were
	inRows     []int64 // those that were put aside within rows
	partly     []partTaken
	emptied    []int64 // how many stitches were worked straight from holders
	unsureHeld bool    // some were put aside, and it is not known how many
	rowsBefore []int32 // each line's first working, where rows are told; -1 for none yet
}

// allSizes is for a profile that is the same in all sizes.
const allSizes = -1

func (in *room) newEngine(p *Piece, start Start, w *Worked, found *findings) *engine {
	last := in.engine
	if last == nil {
		last = &engine{written: &numbering{}}
	}
	e := &engine{room: in, piece: p, start: start, out: w, found: found,
		details: zeroed(last.details, len(found.list)), hands: handWork, written: last.written,
		facts: zeroed(last.facts, len(p.Lines)), profiles: zeroed(last.profiles, len(p.Lines)), doneFor: zeroed(last.doneFor, len(p.Lines)),
		seen: zeroed(last.seen, len(p.Lines)), history: last.history, lines: last.lines, steps: last.steps, places: last.places}
	for i := range p.Lines {
		e.facts[i] = factsOf(&p.Lines[i])
	}
	if len(p.rows) > 0 {
		e.rowsBefore = make([]int32, len(p.Lines))
	}
	return e
}

// profile is what a row does in a size.
func (r *runner) profile(i int) *profile {
	if done := r.doneFor[i]; done == allSizes || int(done) == r.size+1 {
		return &r.profiles[i]
	}
	f := &r.facts[i]
	r.spend(f.stepCount)
	r.profiles[i] = profileOf(r.piece.Lines[i].worked(), r.size)
	r.doneFor[i] = allSizes
	if f.graded {
		r.doneFor[i] = int8(r.size + 1)
	}
	return &r.profiles[i]
}

// detail is what a finding says of each size.
type detail struct {
	texts   []string
	differs bool // the sizes have numbers
}

// wanted reports whether a finding of this place and reason is still to be worded
// for this size. Where there is no room for it, it is counted.
func (r *runner) wanted(reason report.Reason, at span) bool {
	return !r.quiet && r.wantedTimes(reason, at, 1)
}

// wantedTimes is wanted for what is found so many times in succession.
func (r *runner) wantedTimes(reason report.Reason, at span, n int) bool {
	i, known := r.found.at[findingKey{at.start, reason}]
	if known {
		sizes := r.found.list[i].SizeNumbers
		return r.details[i] != nil && sizes[len(sizes)-1] != r.size+1
	}
	if len(r.found.list) < MaxFindings {
		return true
	}
	r.found.more += n
	r.changes++
	return false
}

// fault adds a finding about a size. difference is the number of stitches it is
// off by, 0 for none; text says it in words.
func (r *runner) fault(kind Kind, reason report.Reason, at span, difference int, text string) {
	if !r.wanted(reason, at) {
		return
	}
	r.spend(chargeFinding)
	r.changes++
	i, isNew := r.found.place(kind, reason, at, "")
	if i < 0 {
		return
	}
	f := &r.found.list[i]
	if isNew {
		r.details = append(r.details, &detail{})
		f.WorkedRowNumber, f.from = r.rows+1, r.here.start
	}
	d := r.details[i]
	f.SizeNumbers = append(f.SizeNumbers, r.size+1)
	f.DifferenceStitches = append(f.DifferenceStitches, difference)
	d.texts = append(d.texts, text)
	d.differs = d.differs || difference != 0
}

// remark adds a finding about all sizes.
func (r *runner) remark(reason report.Reason, at span, text string) {
	if _, known := r.found.at[findingKey{at.start, reason}]; known {
		return
	}
	r.changes++
	if _, isNew := r.found.place(KindReading, reason, at, text); isNew {
		r.details = append(r.details, nil)
	}
}

// describe puts together what the sizes said: once if they all say the same.
func (e *engine) describe() {
	e.saidOnce()
	for i, d := range e.details {
		if d == nil {
			continue
		}
		f := &e.found.list[i]
		if !d.differs {
			f.DifferenceStitches = nil
		}
		f.Description = textOfSizes(d.texts, f.SizeNumbers)
		if len(f.SizeNumbers) == e.piece.SizeCount && len(f.DifferenceStitches) == 0 {
			f.SizeNumbers = nil
		}
	}
}

// textOfSizes is the texts of some sizes in one.
func textOfSizes(texts []string, sizes []int) string {
	same, length := true, 0
	for _, t := range texts {
		same = same && t == texts[0]
		length += len(t) + len("; size 20: ")
	}
	if same {
		return texts[0]
	}
	var b strings.Builder
	b.Grow(length)
	for k, t := range texts {
		if k > 0 {
			b.WriteString("; ")
		}
		b.WriteString("size ")
		b.WriteString(strconv.Itoa(sizes[k]))
		b.WriteString(": ")
		b.WriteString(t)
	}
	return b.String()
}
