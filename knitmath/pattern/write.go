package pattern

import (
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/stitch"
)

// RepeatStyle is how a repeat is written.
type RepeatStyle int32

// The styles. A repeat inside another, and one that some sizes work once or not
// at all, stands in brackets whatever the style: stars cannot say it.
const (
	RepeatStyleUnspecified RepeatStyle = iota // brackets
	RepeatStyleBrackets                       // [k2, p2] 4 times
	RepeatStyleParentheses                    // (k2, p2) 4 times
	RepeatStyleStars                          // *k2, p2; rep from * 3 more times
)

// form says how a number is written with what is worked.
type form uint8

const (
	formBracketed form = iota // [k2tog] 3 times
	formJoined                // k5, k5 tbl
	formSpaced                // sl 1, work 5
)

// forms is how every operation is written, read off from the words of package
// stitch: what stands before the number and after it.
var forms = func() map[stitch.Op]opForm {
	const mark = "7654"
	m := map[stitch.Op]opForm{}
	for _, op := range stitch.Ops() {
		text := stitch.RowOf(stitch.Do(op, 7654)).Text()
		before, after, _ := strings.Cut(text, mark)
		f := formJoined
		switch {
		case strings.HasPrefix(text, "["):
			f = formBracketed
		case strings.HasSuffix(before, " "):
			f = formSpaced
		}
		m[op] = opForm{f, before, after}
	}
	return m
}()

type opForm struct {
	form
	before, after string
}

func formOf(s *Step) form {
	switch {
	case s.Operation != 0:
		return forms[s.Operation].form
	case s.Name == "work":
		return formSpaced
	}
	return formBracketed
}

// abbr is what a step without a group works, in words.
func (s *Step) abbr() string {
	if s.Operation != 0 {
		return s.Operation.Abbr()
	}
	return s.Name
}

// Text writes a line: its label, its steps, its claim; or its direction.
func (l *Line) Text(style RepeatStyle) string {
	if l.Direction != "" {
		return l.Direction
	}
	var w writer
	w.style = style
	if l.Label != "" {
		w.WriteString(l.Label)
		w.WriteString(":")
		if len(l.Steps) > 0 {
			w.WriteString(" ")
		}
	}
	w.steps(l.Steps, true)
	w.claim(l)
	return w.String()
}

// Text writes all lines, each on a line of its own.
func Text(lines []Line, style RepeatStyle) string {
	texts := make([]string, len(lines))
	for i := range lines {
		texts[i] = lines[i].Text(style)
		// A long row with a label would go on in a next line without one.
		if l := &lines[i]; i+1 < len(lines) && l.Label != "" && l.Direction == "" && lines[i+1].Label == "" && lines[i+1].Direction == "" {
			texts[i] += "."
		}
	}
	return strings.Join(texts, "\n")
}

type writer struct {
	strings.Builder
	style RepeatStyle
}

func (w *writer) int(n int) { w.WriteString(strconv.Itoa(n)) }

func (w *writer) steps(steps []Step, top bool) {
	for i := range steps {
		if i > 0 {
			w.WriteString(", ")
		}
		w.step(&steps[i], top)
	}
}

// numbers writes "5" or "5 (6, 7, 8)".
func (w *writer) numbers(n []int) {
	if len(n) == 0 {
		w.int(1)
		return
	}
	w.int(n[0])
	for i, v := range n[1:] {
		if i == 0 {
			w.WriteString(" (")
		} else {
			w.WriteString(", ")
		}
		w.int(v)
	}
	if len(n) > 1 {
		w.WriteString(")")
	}
}

func (w *writer) step(s *Step, top bool) {
	switch {
	case s.Steps != nil:
		w.group(s, top)
	case s.Name == "hold", s.Name == holdWorked:
		w.held(s)
	case s.RemainingStitches != nil || s.BeforeMarkerStitches != nil:
		w.WriteString(s.abbr())
		w.manner(s)
		w.upTo(s)
	default:
		w.run(s)
	}
}

// run writes an operation or a name, so many times.
func (w *writer) run(s *Step) {
	if w.fromElsewhere(s) {
		return
	}
	f := opForm{form: formOf(s), before: "[" + s.Name + "]"}
	if s.Operation != 0 {
		f = forms[s.Operation]
	} else if f.form == formSpaced {
		f.before = s.Name + " "
	}
	if f.form == formBracketed {
		if single(s.Times, 1) || s.Times == nil {
			w.WriteString(s.abbr())
			return
		}
		w.WriteString("[")
		w.WriteString(s.abbr())
		w.WriteString("]")
		w.times(s.Times, "")
		return
	}
	w.WriteString(f.before)
	w.numbers(s.Times)
	w.WriteString(f.after)
	w.manner(s)
}

func (w *writer) manner(s *Step) {
	if !s.Manner.said() {
		return
	}
	for _, part := range []string{slipParts[s.Manner].wise, slipParts[s.Manner].yarn} {
		if part != "" {
			w.WriteString(" ")
			w.WriteString(part)
		}
	}
}

// times writes " twice" or " 3 (4, 5) more times".
func (w *writer) times(n []int, more string) {
	switch {
	case single(n, 1):
		w.WriteString(" once" + more)
		return
	case single(n, 2):
		w.WriteString(" twice" + more)
		return
	}
	w.WriteString(" ")
	w.numbers(n)
	w.WriteString(more)
	w.WriteString(" times")
}
