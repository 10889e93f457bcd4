package pattern

import (
	"slices"
	"strings"

	"example.com/knitmath/knitmath/stitch"
)

// "Complete to match the first side, reversing shaping" is asked about, and where the first side has
// been read whole its rows are offered, written out for the second: rows are mirrored, what is bound
// off at the beginning of a row is at the beginning of one on the other side. They are tried as any
// other correction.

// secondSide is the first side written out for the second in place of a direction that only refers
// to it.
func (c *corrector) secondSide(f *Finding, i int) []candidate {
	if !c.piece.Lines[i].info.matches {
		return nil
	}
	first, last := c.firstSide(i)
	if first > last {
		return nil
	}
	side := otherSide{corrector: c, plain: c.onlyKnit(first, last)}
	var texts []string
	length := 0
	for k := first; k <= last; k++ {
		text, ok := side.line(k)
		if length += len(text); !ok || length > longestSide {
			return nil
		}
		if text != "" {
			texts = append(texts, strings.TrimRight(text, " .\n")+".")
		}
	}
	if len(texts) == 0 {
		return nil
	}
	put := strings.TrimSuffix(strings.Join(texts, "\n"), ".")
	return []candidate{{at: f.at, put: put, says: "the rows of the first side, written out for the second", row: -1, written: true}}
}

// longestSide is how many bytes a side has at most that is written out.
const longestSide = 4000

// firstSide are the lines of the side that was worked before: from after the last division to where
// its stitches are all bound off, before yarn is joined again.
func (c *corrector) firstSide(i int) (first, last int) {
	lines := c.piece.Lines
	for last = i - 1; last >= 0 && !c.endsSide(last); last-- {
	}
	for first = last; first > 0; first-- {
		before := &lines[first-1].info
		if before.holdRest || before.only != nil || before.onThese || before.kind == lineHold || before.kind == lineCastOn {
			break
		}
		if before.kind == lineUnread || before.heading && before.kind != linePassed {
			return 1, 0
		}
	}
	if last < 0 || first == 0 || lines[first-1].info.kind == lineCastOn {
		return 1, 0
	}
	return first, last
}

// endsSide reports whether no stitch is left after a line.
func (c *corrector) endsSide(i int) bool {
	kind, w := c.piece.Lines[i].info.kind, &c.worked.Lines[i]
	return kind == lineOff || (kind == lineRow || kind == lineBeginning) && w.EndStitches[0] == 0
}

// otherSide writes the lines of one side for the other.
type otherSide struct {
	*corrector
	plain bool // every row is knit, so that a row later is the same
	later bool // the rows are worked a row later than on the first side
}

// line is a line as it is on the other side; "" for one that only tells something.
func (s *otherSide) line(i int) (string, bool) {
	l := &s.piece.Lines[i]
	raw := s.piece.source[l.info.at.start:l.info.at.end]
	switch l.info.kind {
	case lineUnread, lineTake, linePickUp, lineCastOn, lineRepeat, lineAgain:
		return "", false
	case linePassed:
		return "", true
	case lineRow:
		return s.row(l, raw)
	case lineBeginning:
		s.later = true
	case lineEven:
		s.later = s.later || s.boundOffAfter(i)
	}
	if s.later {
		return sidesExchanged(raw), true
	}
	return raw, true
}

// row is a row from its other end, or one row later.
func (s *otherSide) row(l *Line, raw string) (string, bool) {
	s.later = s.later || l.Steps[0].Operation == stitch.BindOff
	switch {
	case s.later && (len(l.Steps) == 1 || l.Steps[0].Operation == stitch.BindOff):
		if raw = sidesExchanged(raw); !s.plain {
			raw = facesExchanged.Replace(raw)
		}
		return raw, true
	case s.later:
		return "", false // decreases on the other side of the fabric are for a person to write
	case len(l.Steps) == 1:
		return raw, true
	}
	m := mirror{piece: s.piece}
	steps := m.row(l)
	if steps == nil {
		return "", false
	}
	turned := *l
	turned.Steps = steps
	return turned.Text(RepeatStyleBrackets), true
}

// facesExchanged writes the stitches of the other face of the fabric.
var facesExchanged = strings.NewReplacer("Purl", "Knit", "purl", "knit", "Knit", "Purl", "knit", "purl", " k to end", " p to end",
	" p to end", " k to end", " K to end", " P to end", " P to end", " K to end")

// onlyKnit reports whether no row of some lines is purled.
func (c *corrector) onlyKnit(first, last int) bool {
	for i := first; i <= last; i++ {
		for k := range c.piece.Lines[i].Steps {
			if op := c.piece.Lines[i].Steps[k].Operation; op == stitch.Purl || op == stitch.P2tog {
				return false
			}
		}
	}
	return true
}

// boundOffAfter reports whether the next line binds off at the beginning of a row.
func (c *corrector) boundOffAfter(i int) bool {
	for i++; i < len(c.piece.Lines); i++ {
		l := &c.piece.Lines[i]
		if l.info.kind != linePassed {
			return l.info.kind == lineBeginning || len(l.Steps) > 1 && l.Steps[0].Operation == stitch.BindOff
		}
	}
	return false
}

var sidesOther = strings.NewReplacer("RS", "WS", "WS", "RS", "right side", "wrong side", "wrong side", "right side",
	"right-side", "wrong-side",
	"wrong-side", "right-side")

func sidesExchanged(text string) string { return sidesOther.Replace(text) }

// alongside are findings of before as they stand when so many lines are put in at a place.
func alongside(before []Finding, at int32, lines int) []Finding {
	moved := slices.Clone(before)
	for i := range moved {
		if moved[i].at.start > at {
			moved[i].LineNumber += lines
		}
	}
	return moved
}
