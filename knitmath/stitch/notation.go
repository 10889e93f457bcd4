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
	var b strings.Builder
	writeSteps(&b, r.Steps, 0)
	return b.String()
}

func writeSteps(b *strings.Builder, steps []Step, depth int) {
	for i, s := range steps {
		if i > 0 {
			b.WriteString(", ")
		}
		writeStep(b, s, depth)
	}
}

func writeStep(b *strings.Builder, s Step, depth int) {
	switch {
	case s.kind() == kindGroup && depth < MaxDepth:
		b.WriteByte('[')
		writeSteps(b, s.Group, depth+1)
		b.WriteByte(']')
		b.WriteString(timesText(s.Times))
	case s.kind() == kindToLast:
		b.WriteString(s.Op.Abbr())
		b.WriteString(lastText(*s.ToLast))
	case s.kind() == kindCount:
		b.WriteString(runText(s.Op, s.Count))
	default:
		b.WriteByte('?')
	}
}

// runText writes op worked n times: "k5", "k5 tbl", "BO 4", "k2tog",
// "[k2tog] 3 times".
func runText(op Op, n int) string {
	f := op.facts()
	switch f.form {
	case joined:
		return strings.TrimSuffix(f.abbr, f.tail) + strconv.Itoa(n) + f.tail
	case spaced:
		return f.abbr + " " + strconv.Itoa(n)
	case placed:
		sts := " sts"
		if n == 1 {
			sts = " st"
		}
		return strings.TrimSuffix(f.abbr, " sts"+f.tail) + " " + strconv.Itoa(n) + sts + f.tail
	}
	if n == 1 {
		return f.abbr
	}
	return "[" + f.abbr + "]" + timesText(n)
}

// timesText writes " once", " twice" or " 3 times".
func timesText(n int) string {
	switch n {
	case 1:
		return " once"
	case 2:
		return " twice"
	}
	return " " + strconv.Itoa(n) + " times"
}

// lastText writes " to end", " to last st" or " to last 3 sts".
func lastText(n int) string {
	switch n {
	case 0:
		return " to end"
	case 1:
		return " to last st"
	}
	return " to last " + strconv.Itoa(n) + " sts"
}
