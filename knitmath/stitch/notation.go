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
	b.Grow(32) // as most rows are
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
		writeTimes(b, s.Times)
	case s.kind() == kindToLast:
		b.WriteString(s.Op.Abbr())
		writeLast(b, *s.ToLast)
	case s.kind() == kindCount:
		writeRun(b, s.Op, s.Count)
	default:
		b.WriteByte('?')
	}
}

// writeRun writes op worked n times: "k5", "k5 tbl", "BO 4", "k2tog",
// "[k2tog] 3 times".
func writeRun(b *strings.Builder, op Op, n int) {
	f := op.facts()
	switch f.form {
	case joined:
		writeAll(b, strings.TrimSuffix(f.abbr, f.tail), strconv.Itoa(n), f.tail)
	case spaced:
		writeAll(b, f.abbr, " ", strconv.Itoa(n))
	case placed:
		sts := " sts"
		if n == 1 {
			sts = " st"
		}
		writeAll(b, strings.TrimSuffix(strings.TrimSuffix(f.abbr, f.tail), " sts"), " ", strconv.Itoa(n), sts, f.tail)
	default:
		if n == 1 {
			b.WriteString(f.abbr)
			return
		}
		writeAll(b, "[", f.abbr, "]")
		writeTimes(b, n)
	}
}

func writeAll(b *strings.Builder, parts ...string) {
	for _, p := range parts {
		b.WriteString(p)
	}
}

// writeTimes writes " once", " twice" or " 3 times".
func writeTimes(b *strings.Builder, n int) {
	switch n {
	case 1:
		b.WriteString(" once")
	case 2:
		b.WriteString(" twice")
	default:
		writeAll(b, " ", strconv.Itoa(n), " times")
	}
}

// writeLast writes " to end", " to last st" or " to last 3 sts".
func writeLast(b *strings.Builder, n int) {
	switch n {
	case 0:
		b.WriteString(" to end")
	case 1:
		b.WriteString(" to last st")
	default:
		writeAll(b, " to last ", strconv.Itoa(n), " sts")
	}
}
