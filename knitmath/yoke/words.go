package yoke

import (
	"fmt"
	"sort"

	"example.com/knitmath/knitmath/report"
)

// Directions write the yoke as a pattern would.
func (o Circular) Directions() []string {
	d := report.Room(4*len(o.Rounds)+8, 128*len(o.Rounds)+512)
	holdUnderarms(&d, o.UnderarmStitches)
	o.joinDirections(&d)
	last := 0
	for _, w := range o.work() {
		d.Even("round", last+1, w.first-1)
		if w.round != nil {
			w.round.direction(&d)
		}
		for _, line := range w.text {
			d.End(line)
		}
		last = w.last
	}
	d.Even("round", last+1, o.DepthRounds)
	finishing(&d, o.UnderarmStitches)
	return d.Strings()
}

// holdUnderarms is what is done before the joining.
func holdUnderarms(d *report.Lines, stitches int) {
	if stitches > 0 {
		d.Say("Place ")
		d.Count(stitches, "stitches")
		d.End(" on hold at each underarm: of the body at both sides, and of each sleeve.")
	}
}

// finishing is what becomes of the neck, and of the stitches on hold. A neck is bound off
// loosely because it goes over a head. Common practice.
func finishing(d *report.Lines, underarm int) {
	d.End("Go on with the neckband, or bind off loosely.")
	if underarm > 0 {
		d.Say("Graft the ")
		d.Count(underarm, "stitches")
		d.End(" on hold of the body to those of the sleeve at each underarm.")
	}
}

// task is rounds that are not worked even: a decrease round, or what to do in them.
type task struct {
	first, last int
	round       *Round
	text        []string
}

// direction tells the round.
func (r *Round) direction(d *report.Lines) {
	d.Rows("round", r.RoundNumber, r.RoundNumber)
	if r.Adjusts {
		d.Say(", to adjust the count")
	}
	d.Say(": ")
	d.Append(r.Instruction.Row.AppendText)
	d.Say(" (")
	d.Count(r.EndStitches, "stitches")
	d.End(").")
}

// work lists what is not worked even, from the join up.
func (o Circular) work() []task {
	list := make([]task, 0, len(o.Rounds)+len(o.Bands)+1)
	for i := range o.Rounds {
		r := &o.Rounds[i]
		list = append(list, task{first: r.RoundNumber, last: r.RoundNumber, round: r})
	}
	for i, b := range o.Bands {
		list = append(list, task{first: b.FirstRoundNumber, last: b.LastRoundNumber, text: []string{fmt.Sprintf("%s: band %d on %s, %s of %d.",
			report.Rows("round", b.FirstRoundNumber, b.LastRoundNumber), i+1, report.CountOf(b.Stitches, "stitches"),
			report.CountOf(b.RepeatCount, "repeats"), b.Stitches/b.RepeatCount)}})
	}
	if r := o.BackRaise; r != nil {
		list = append(list, task{first: r.FirstRoundNumber, last: r.FirstRoundNumber + raiseRounds - 1, text: r.directions()})
	}
	if len(list) > len(o.Rounds) { // rounds alone lie in order
		sort.SliceStable(list, func(i, j int) bool { return list[i].first < list[j].first })
	}
	return list
}

// Summary says the answer in words.
func (o Circular) Summary() string {
	adjusting, changes := ".", len(o.Rounds)
	if changes > 0 && o.Rounds[0].Adjusts {
		adjusting, changes = ", the count being adjusted first.", changes-1
	}
	s := report.Room(0, 192)
	s.Say("Join ")
	s.Count(o.JoinStitches, "stitches")
	s.Say(" (", o.unit.Size(o.JoinCm), ") and decrease to ")
	s.Number(o.NeckStitches)
	s.Say(" (", o.unit.Size(o.NeckCm), ") over ")
	s.Count(o.DepthRounds, "rounds")
	s.Say(" (", o.unit.Size(o.DepthCm), "), in ")
	if len(o.Bands) > 0 {
		s.Count(changes, "changes")
		s.Say(" of the count around ")
		s.Count(len(o.Bands), "bands")
		s.Say(" of pattern")
	} else {
		s.Count(changes, "decrease rounds")
	}
	s.Say(o.mostTakenWords(), adjusting)
	return s.Line()
}

// circularFigures are those of the percentage system that a circular yoke takes.
const circularFigures = percentageFigures + "; rounds at 1/2, 3/4 and the end"

// Sources says where the figures come from.
func (o Circular) Sources() []report.Source {
	sources := []report.Source{
		percentageCited(circularFigures),
		scalingCited, easiestCited, coneSpacingCited, steepnessCited, spreadCited("places of the decreases"),
	}
	if len(o.Bands) > 0 {
		sources = append(sources, bandsCited)
	}
	if o.BackRaise != nil {
		sources = append(sources, raiseCited...)
	}
	return sources
}
