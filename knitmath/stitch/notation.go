package stitch

import (
	"strconv"
	"strings"
)

// Text writes the row as patterns do, in the grammar of the package comment:
//
//	k5, [k2tog, k8] 4 times, k5
//	k1, M1L, k to last st, M1R, k1
//
// Any row gives some text; a step that is no step is written "?".
func (r Row) Text() string {
	var room [64]byte // most rows are no longer
	return string(r.AppendText(room[:0]))
}

// AppendText adds the same to a text.
func (r Row) AppendText(to []byte) []byte { return appendSteps(to, r.Steps, 0) }

func appendSteps(b []byte, steps []Step, depth int) []byte {
	for i := range steps {
		if i > 0 {
			b = append(b, ", "...)
		}
		b = appendStep(b, &steps[i], depth)
	}
	return b
}

func appendStep(b []byte, s *Step, depth int) []byte {
	switch kind := s.kind(); {
	case kind == kindGroup && depth < MaxDepth:
		b = appendSteps(append(b, '['), s.Group, depth+1)
		return appendTimes(append(b, ']'), s.Times)
	case kind == kindToLast:
		return appendLast(append(b, s.Op.Abbr()...), *s.ToLast)
	case kind == kindCount:
		return appendRun(b, s.Op, s.Count)
	}
	return append(b, '?')
}

// appendRun adds op worked n times: "k5", "k5 tbl", "BO 4", "k2tog",
// "[k2tog] 3 times".
func appendRun(b []byte, op Op, n int) []byte {
	f := op.facts()
	switch f.form {
	case joined:
		b = appendNumber(append(b, strings.TrimSuffix(f.abbr, f.tail)...), "", n, f.tail)
	case spaced:
		b = appendNumber(append(b, f.abbr...), " ", n, "")
	case placed:
		sts := " sts"
		if n == 1 {
			sts = " st"
		}
		b = appendNumber(append(b, strings.TrimSuffix(strings.TrimSuffix(f.abbr, f.tail), " sts")...), " ", n, sts)
		b = append(b, f.tail...)
	default:
		if n == 1 {
			return append(b, f.abbr...)
		}
		b = append(append(b, '['), f.abbr...)
		b = appendTimes(append(b, ']'), n)
	}
	return b
}

func appendNumber(b []byte, before string, n int, after string) []byte {
	return append(strconv.AppendInt(append(b, before...), int64(n), 10), after...)
}

// appendTimes adds " once", " twice" or " 3 times".
func appendTimes(b []byte, n int) []byte {
	switch n {
	case 1:
		return append(b, " once"...)
	case 2:
		return append(b, " twice"...)
	}
	return appendNumber(b, " ", n, " times")
}

// appendLast adds " to end", " to last st" or " to last 3 sts".
func appendLast(b []byte, n int) []byte {
	switch n {
	case 0:
		return append(b, " to end"...)
	case 1:
		return append(b, " to last st"...)
	}
	return appendNumber(b, " to last ", n, " sts")
}
