package pattern

import (
	"math/rand/v2"
	"reflect"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// plain strips steps of where they were read, and makes numbers explicit.
func plain(steps []Step) []Step {
	out := make([]Step, len(steps))
	for i, s := range steps {
		s.at, s.takes, s.leaves = span{}, 0, 0
		if s.Times == nil && s.RemainingStitches == nil {
			s.Times = one
		}
		if s.Steps != nil {
			s.Steps = plain(s.Steps)
		}
		out[i] = s
	}
	return out
}

// anyStep is a step that the notation can say, for a number of sizes.
func anyStep(rng *rand.Rand, sizes, depth int, last bool) Step {
	numbers := func(least int) []int {
		n := make([]int, 1)
		if rng.IntN(3) == 0 {
			n = make([]int, sizes)
		}
		for i := range n {
			n[i] = least + rng.IntN(12)
		}
		return tidy(n)
	}
	if depth < stitch.MaxDepth && rng.IntN(4) == 0 {
		s := Step{Times: numbers(0)}
		for range 1 + rng.IntN(3) {
			s.Steps = append(s.Steps, anyStep(rng, sizes, depth+1, false))
		}
		if takes := (&s).pass(0).takes; depth == 0 && takes > 0 && rng.IntN(4) == 0 {
			s.Times, s.RemainingStitches = nil, numbers(0)
		}
		return simple(s)
	}
	s := Step{Times: numbers(0)}
	switch rng.IntN(8) {
	case 0:
		s.Name = []string{"c4f", "2/1 lpc", "work", "k3tog tbl", "lt", "kyok"}[rng.IntN(6)]
	case 1:
		if depth > 0 {
			s.Operation = stitch.Purl
			return s
		}
		s.Operation = []stitch.Op{stitch.Knit, stitch.Purl, stitch.K2tog, stitch.SSK}[rng.IntN(4)]
		s.Times, s.RemainingStitches = nil, numbers(0)
	case 2:
		if depth == stitch.MaxDepth {
			s.Operation = stitch.Knit
			return s
		}
		return Step{IntoOneStitch: true, Times: numbers(0), Steps: []Step{
			{Operation: stitch.Knit, Times: one}, {Operation: stitch.YO, Times: one}, {Operation: stitch.Knit, Times: one}}}
	case 3:
		s.Operation, s.Manner = stitch.Slip, SlipManner(rng.IntN(int(slipMannerEnd)))
	default:
		for {
			s.Operation = stitch.Ops()[rng.IntN(len(stitch.Ops())-1)] // but for Hold, which is read as a direction
			if s.Operation.EndsRow() && last {
				s.Times = one
				return s
			}
			if !s.Operation.EndsRow() && s.Operation != stitch.ShortRowYO {
				break
			}
		}
	}
	s.takes, s.leaves = int16(s.Operation.Takes()), int16(s.Operation.Leaves())
	return s
}

// TestWrittenRowsReadBack: parse(write(x)) is x, in every style, and what is
// written and read is written the same again; compressed, it is the same knitting.
func TestWrittenRowsReadBack(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 4))
	for range 1500 {
		sizes := 1 + rng.IntN(4)
		var steps []Step
		n := 1 + rng.IntN(5)
		for i := range n {
			steps = append(steps, anyStep(rng, sizes, 0, i == n-1))
		}
		line := Line{Steps: steps}
		if rng.IntN(2) == 0 {
			line.Label = "Row 3 (WS)"
		}
		if rng.IntN(2) == 0 {
			line.ClaimedStitches = tidy([]int{90, 100, -1, 120}[:sizes])
			if line.ClaimedStitches[0] < 0 {
				line.ClaimedStitches = nil
			}
		}
		for style := RepeatStyleBrackets; style <= RepeatStyleStars; style++ {
			text := line.Text(style)
			p := readRow(text, sizes, nil)
			if len(p.found.list) > 0 && p.found.list[0].Kind != KindReading || len(p.Lines) != 1 {
				t.Fatalf("%q: %+v", text, p.found.list)
			}
			got := &p.Lines[0]
			if !reflect.DeepEqual(plain(got.Steps), plain(steps)) || got.Label != line.Label ||
				!reflect.DeepEqual(got.ClaimedStitches, line.ClaimedStitches) {
				t.Fatalf("%q reads as\n%+v, not\n%+v", text, plain(got.Steps), plain(steps))
			}
			checkStable(t, p, style)
		}
	}
}

// checkStable writes a text that was read, compressed, and reads and writes it
// again: the same text, and the same knitting.
func checkStable(t *testing.T, p *Piece, style RepeatStyle) {
	t.Helper()
	if short, long := Text(Compress(p.Lines), RepeatStyleBrackets), Text(p.Lines, RepeatStyleBrackets); len(short) > len(long) {
		t.Fatalf("%q is compressed to\n%q, which is longer", long, short)
	}
	text := Text(Compress(p.Lines), style)
	again := readRow(text, p.SizeCount, nil)
	if got := Text(Compress(again.Lines), style); got != text {
		t.Fatalf("%q is written again as\n%q", text, got)
	}
	if len(p.Lines) != len(again.Lines) {
		t.Fatalf("%q has %d lines, had %d", text, len(again.Lines), len(p.Lines))
	}
	sameWork(t, p, again, style)
}

// checkAnew writes a text anew, whatever was found in it, and what was written once
// more: the same text, and the same knitting.
func checkAnew(t *testing.T, text string, style RepeatStyle) {
	t.Helper()
	in := FormatInstructionsInput{Text: text, RepeatStyle: style}
	once, err := FormatInstructions(in)
	if err != nil {
		return // no text
	}
	in.Text = once.Text
	twice, err := FormatInstructions(in)
	if err != nil || twice.Text != once.Text {
		t.Fatalf("%q is written\n%q, and that\n%q (%v)", text, once.Text, twice.Text, err)
	}
	p, again := Read(text, Options{}), Read(once.Text, Options{})
	if len(p.Lines) != len(again.Lines) {
		t.Fatalf("%q has %d lines, and %q %d", text, len(p.Lines), once.Text, len(again.Lines))
	}
	sameWork(t, p, again, style)
}

// sameWork fails unless the rows of two pieces come to the same.
func sameWork(t *testing.T, p, again *Piece, style RepeatStyle) {
	t.Helper()
	for i := range p.Lines {
		if p.Lines[i].Steps == nil || p.Lines[i].Direction != "" {
			continue
		}
		for size := range p.SizeCount {
			a, b := profileOf(p.Lines[i].Steps, size), profileOf(again.Lines[i].Steps, size)
			for _, on := range []int64{0, 7, 40, 96} {
				x, y := a.work(on), b.work(on)
				if x.takes != y.takes || x.leaves != y.leaves || x.reason != y.reason {
					t.Fatalf("%q compressed to %q: %+v, %+v on %d", p.Lines[i].Text(style), again.Lines[i].Text(style), x, y, on)
				}
			}
			if sameKnitting(&p.Lines[i], &again.Lines[i], size) == false {
				t.Fatalf("%q compressed to %q", p.Lines[i].Text(style), again.Lines[i].Text(style))
			}
		}
	}
}

// sameKnitting compares rows operation by operation, each worked on 60 stitches.
func sameKnitting(a, b *Line, size int) bool {
	return strings.Join(unrolled(nil, a.Steps, size), " ") == strings.Join(unrolled(nil, b.Steps, size), " ")
}

// unrolled is a row as a list of words, a stretch as one word; long rows are cut
// off.
func unrolled(out []string, steps []Step, size int) []string {
	for _, s := range steps {
		if s.RemainingStitches != nil {
			last := at(s.RemainingStitches, size)
			s.RemainingStitches = nil
			out = append(unrolled(append(out, "("), []Step{s}, size), ") to last "+strconv.Itoa(last))
			continue
		}
		n := 1
		if s.Times != nil {
			n = at(s.Times, size)
		}
		for range n {
			if len(out) > 5000 {
				return out
			}
			if s.Steps != nil {
				if s.IntoOneStitch {
					out = append(out, "into one")
				}
				out = unrolled(out, s.Steps, size)
				continue
			}
			out = append(out, s.abbr()+string(rune('a'+s.Manner)))
		}
	}
	return out
}

// FuzzRead: any bytes are read, worked, written and mirrored, without a panic and
// within the limits; findings have a place in the text.
func FuzzRead(f *testing.F) {
	for _, seed := range []string{"", "k5, [k2tog, k8] 4 times, k5", "*k2, p2; rep from * to last 3 sts, k3 (96 sts)",
		"Row 1 (RS): k5 (6, 7).\nRow 2 and all WS rows: p.\nRow 3: ssk, k to end (95, 96 sts)\nRep Rows 1-4 three times",
		"CO 9 sts. BO 4 sts at beg of next 2 rows. Work even until 3 cm, ending with a WS row. Rep last 2 rows until 5 sts rem.",
		"*k1, **p1; rep from ** twice, (k1, yo, k1) in next st; rep from * around", "k4, w&t. make DS, p to last 2 sts, turn", "((((((",
		"*\xff\n\r\n(–, 3 sts",
		"Rows 1-9999: k1, M1L, k to end. Rep Rows 1-9999 9999 more times", "2/2 lc, sl 1, k1, psso, psso, k2 (-, 3) [4]",
		"000.\nRow 00And:"} {
		f.Add(seed, uint16(40), false)
	}
	for _, text := range sentenceTexts(f) {
		f.Add(text, uint16(40), false)
	}
	f.Fuzz(func(t *testing.T, text string, on uint16, round bool) {
		p := Read(text, Options{})
		start := Start{Counts: []int{1 + int(on)%stitch.MaxStitches}}
		if round {
			start.Construction = stitch.InTheRound
		}
		w := p.Work(start)
		lines := 1 + strings.Count(text, "\n") + strings.Count(text, "\r")
		for _, f := range w.Findings {
			if f.LineNumber < 0 || f.LineNumber > lines || f.ColumnNumber < 0 || f.ColumnNumber > len(text)+1 || f.Description == "" ||
				f.Reason == "" || f.Kind == 0 {
				t.Fatalf("%q: %+v", text, f)
			}
		}
		for size := range p.SizeCount {
			if w.EndStitches[size] < -1 || w.EndStitches[size] > stitch.MaxStitches || w.WorkedRows[size] > MaxRows {
				t.Fatalf("%q: ends with %d after %d rows", text, w.EndStitches[size], w.WorkedRows[size])
			}
		}
		p.Mirror()
		for style := RepeatStyleBrackets; style <= RepeatStyleStars; style++ {
			checkAnew(t, text, style)
		}
	})
}
