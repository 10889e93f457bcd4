package pattern

import (
	"strings"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// mirrorOps are the operations whose mirror image is another. Source: the lean of
// each as the list has it; skp and sk2p lean left like ssk and sssk, and have no
// right-leaning partner of their own kind.
var mirrorOps = map[stitch.Op]stitch.Op{
	stitch.K2tog: stitch.SSK, stitch.SSK: stitch.K2tog, stitch.SKP: stitch.K2tog,
	stitch.P2tog: stitch.SSP, stitch.SSP: stitch.P2tog,
	stitch.K3tog: stitch.SSSK, stitch.SSSK: stitch.K3tog, stitch.SK2P: stitch.K3tog,
	stitch.P3tog: stitch.SSSP, stitch.SSSP: stitch.P3tog,
	stitch.M1L: stitch.M1R, stitch.M1R: stitch.M1L, stitch.M1LP: stitch.M1RP, stitch.M1RP: stitch.M1LP,
}

// partnersCited is the source of mirrorOps.
var partnersCited = report.Source{Figure: "left- and right-leaning partners", Status: report.SourceStatusCommonPractice,
	Citation: "k2tog and ssk, p2tog and ssp, k3tog and sssk, M1L and M1R"}

// mirrorNames does the same for other abbreviations.
var mirrorNames = map[string]string{"kll": "krl", "krl": "kll", "lt": "rt", "rt": "lt", "lli": "rli", "rli": "lli",
	"klli": "krli", "krli": "klli", "llinc": "rlinc", "rlinc": "llinc", "inc 1 left": "inc 1 right", "inc 1 right": "inc 1 left",
	"fc": "bc", "bc": "fc", "tw2l": "tw2r", "tw2r": "tw2l", "brssk": "brk2tog", "brk2tog": "brssk"}

// mirrorRemarks are the mirror images with a catch.
var mirrorRemarks = map[stitch.Op]string{
	stitch.SKP:  "skp leans left; its mirror image is k2tog, and the mirror image of that is written ssk",
	stitch.SK2P: "sk2p leans left; its mirror image is k3tog, and the mirror image of that is written sssk",
	stitch.M1:   "M1 leans either way: lean it the other way here, or write M1L or M1R",
	stitch.M1P:  "M1P leans either way: lean it the other way here, or write M1LP or M1RP",
	stitch.KFB:  "the bar of kfb is its second stitch here too: work it one stitch earlier where the bar shows",
	stitch.PFB:  "the bar of pfb is its second stitch here too: work it one stitch earlier where the bar shows",
}

// mirrorRefusals are the operations without a mirror image in the same row.
var mirrorRefusals = map[stitch.Op]string{
	stitch.Turn:        "a short row turns at one edge: for the other one work it on the next row",
	stitch.WrapTurn:    "a short row turns at one edge: for the other one work it on the next row",
	stitch.MakeDouble:  "a double stitch is made after a turn: for the other edge work the short rows one row later",
	stitch.KnitDouble:  "a double stitch belongs to a short row: for the other edge work the short rows one row later",
	stitch.PurlDouble:  "a double stitch belongs to a short row: for the other edge work the short rows one row later",
	stitch.KnitWrapped: "a wrap belongs to a short row: for the other edge work the short rows one row later",
	stitch.PurlWrapped: "a wrap belongs to a short row: for the other edge work the short rows one row later",
	stitch.ShortRowYO:  "this yarn over belongs to a short row: for the other edge work the short rows one row later",
}

// Mirrored is a text for the other edge.
type Mirrored struct {
	// Lines are the rows in their order, each from its other end. A row without
	// a mirror image stays as it was written.
	Lines    []Line
	Findings []Finding
	// MoreCount is how many findings are not listed.
	MoreCount int
	rows      int // that are mirrored
	refused   int // rows and directions that stay as they were
}

// Mirror reverses every row of the piece and exchanges what leans left and what
// leans right. Directions and claims stay.
//
// A row worked up to the last n stitches becomes one worked up to as many as came
// before: "k1, ssk, k to end" becomes "k to last 3 sts, k2tog, k1". Of several
// such stretches in a row the later ones have a fixed number of stitches already.
func (p *Piece) Mirror() Mirrored {
	m := p.mirrored()
	return m.result()
}

// mirrored mirrors the lines one by one.
func (p *Piece) mirrored() *mirror {
	m := &mirror{piece: p, found: p.found, lines: make([]Line, len(p.Lines))}
	m.found.list = append([]Finding(nil), p.found.list...)
	m.found.at = nil
	for i := range p.Lines {
		l := &m.lines[i]
		*l = p.Lines[i]
		m.direction(l)
		if l.Direction != "" {
			continue
		}
		if steps := m.row(l); steps != nil {
			l.Steps = steps
		} else {
			m.keep(i)
		}
	}
	return m
}

type mirror struct {
	piece *Piece
	found findings
	lines []Line
	kept  int // rows and directions that stay as they were
}

// keep leaves a row as it was written.
func (m *mirror) keep(i int) {
	m.lines[i] = m.piece.Lines[i]
	m.lines[i].info.asGiven = true
	m.kept++
}

func (m *mirror) result() Mirrored {
	out := Mirrored{Lines: m.lines, Findings: m.found.list, MoreCount: m.found.more + m.found.unsaid, refused: m.kept}
	for i := range m.lines {
		if l := &m.lines[i]; l.Direction == "" && len(l.Steps) > 0 && !l.info.asGiven {
			out.rows++
		}
	}
	return out
}

// refuse says why a row has no mirror image.
func (m *mirror) refuse(at span, text string) []Step {
	m.found.add(KindQuestion, ReasonNoMirror, at, text)
	return nil
}

// row mirrors one row, nil if it cannot be.
func (m *mirror) row(l *Line) []Step {
	if l.info.kind == lineUnread || len(l.Steps) == 0 || !m.mirrors(l) {
		return nil
	}
	steps, ok := m.oneStretch(l.Steps)
	if !ok || !m.edgesFree(steps) {
		return nil
	}
	out := make([]Step, 0, len(steps))
	for i := len(steps) - 1; i >= 0; i-- {
		s, ok := m.step(steps[i])
		if !ok || s.stretch() && !m.upToAfter(&s, steps[:i]) {
			return nil
		}
		out = append(out, s)
	}
	return out
}

// mirrors reports whether all that a row does is said by steps with a mirror image, or says why not.
func (m *mirror) mirrors(l *Line) bool {
	switch {
	case l.info.asGiven:
		m.refuse(l.info.at, "what its words say beside the stitches is not mirrored here")
		return false
	case l.info.coloured:
		m.refuse(l.info.at, "the colours of a row are not mirrored here")
		return false
	case l.fromElsewhere():
		m.refuse(l.info.at, "along which edge stitches are picked up, and in what order they are taken up again, is for a person to mirror")
		return false
	}
	for i := range l.Steps {
		if s := &l.Steps[i]; toMarkerWithin(s) || s.Name == "hold" || s.Name == holdWorked {
			m.refuse(s.at, "a row that is worked from marker to marker, or puts stitches aside, is not mirrored here")
			return false
		}
	}
	return true
}

// edgesFree reports whether a row binds nothing off at its edges, or says why that has no mirror
// image.
func (m *mirror) edgesFree(steps []Step) bool {
	for i := range steps {
		if s := &steps[i]; s.Operation == stitch.BindOff && (i == 0 || i == len(steps)-1) && len(steps) > 1 {
			m.refuse(s.at, "binding off at the edge belongs to the row that begins there: "+
				"for the other edge bind off at the beginning of the next row")
			return false
		}
	}
	return true
}

// step mirrors one step, its place aside.
func (m *mirror) step(s Step) (Step, bool) {
	if s.Steps != nil {
		group := make([]Step, 0, len(s.Steps))
		for i := len(s.Steps) - 1; i >= 0; i-- {
			in, ok := m.step(s.Steps[i])
			if !ok {
				return s, false
			}
			group = append(group, in)
		}
		s.Steps = group
		return s, true
	}
	if text, ok := mirrorRefusals[s.Operation]; ok {
		m.refuse(s.at, text)
		return s, false
	}
	if text, ok := mirrorRemarks[s.Operation]; ok {
		m.found.add(KindReading, ReasonMirrorNote, s.at, text)
	}
	if op, ok := mirrorOps[s.Operation]; ok {
		s.Operation = op
		return s, true
	}
	if s.Name == "" {
		return s, true
	}
	name, ok := mirrorName(s.Name)
	switch {
	case !ok && (s.leaves < 0 || strings.HasSuffix(s.Name, " tbl")):
		m.refuse(s.at, s.Name+" has no mirror image of its own")
		return s, false
	case !ok:
		m.found.add(KindReading, ReasonMirrorNote, s.at, s.Name+" is left as it is: if it leans, declare and write its partner")
	}
	s.Name = name
	return s, true
}
