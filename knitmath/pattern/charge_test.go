package pattern

import (
	"context"
	"errors"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/stitch"
)

// A text that asks for more than its price stops where that is spent, says so, and
// is not called right.
func TestTooMuchToWork(t *testing.T) {
	text := "Row 1: k to end\nRow 2: p to end\nRep last 2 rows 999 times\n" + strings.Repeat("Rep last 2000 rows until 8 sts\n", 45)
	eights := slices.Repeat([]int{8}, MaxSizes)
	out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text, StartStitches: eights})
	if err != nil {
		t.Fatal(err)
	}
	last := out.Findings[1] // after a reading
	if last.Kind != KindMistake || last.Reason != ReasonTooMany || last.LineNumber < 15 || len(last.SizeNumbers) != 0 ||
		!strings.Contains(last.Description, "ask for the text in parts, or for fewer sizes") {
		t.Errorf("%+v", last)
	}
	if out.Agrees || out.EndStitches[0] != -1 || out.WorkedRows[0] != 2000 || out.Lines[2].EndStitches[5] != 8 {
		t.Errorf("agrees %v, ends with %v after %v rows", out.Agrees, out.EndStitches, out.WorkedRows)
	}
	// The remedy: the same rows with fewer repeats, and in one size.
	parts := strings.Join(strings.Split(text, "\n")[:12], "\n")
	out, err = CheckInstructions(t.Context(), CheckInstructionsInput{Text: parts, StartStitches: []int{8}})
	if err != nil || !out.Agrees {
		t.Errorf("%+v, %v", out.Findings, err)
	}
}

// A size is not worked on after the context's end, nor is the next.
func TestContextEnds(t *testing.T) {
	in := CheckInstructionsInput{Text: "Row 1: k2tog, k to end\nRep last row 5000 times", StartStitches: make([]int, MaxSizes)}
	for i := range in.StartStitches {
		in.StartStitches[i] = 9000
	}
	for looks := range 4 {
		ctx := &endingContext{Context: context.Background(), left: looks}
		if _, err := CheckInstructions(ctx, in); !errors.Is(err, context.Canceled) {
			t.Errorf("after %d looks at the context: %v", looks, err)
		}
		if ctx.left < -1 {
			t.Errorf("%d looks at a context after its end", -1-ctx.left)
		}
	}
	ctx := &endingContext{Context: context.Background(), left: 1 << 30}
	if out, err := CheckInstructions(ctx, in); err != nil || !out.Agrees || out.EndStitches[19] != 3999 {
		t.Errorf("%v, %v", out.EndStitches, err)
	}
	if looks := 1<<30 - ctx.left; looks < 20 {
		t.Errorf("%d looks at the context in 100,020 rows", looks)
	}
}

// endingContext ends after so many looks.
type endingContext struct {
	context.Context
	left int
}

func (c *endingContext) Err() error {
	if c.left--; c.left < 0 {
		return context.Canceled
	}
	return nil
}

// TestPricesOfTexts: a price is in range for any text, and that of a text for
// knitting buys several times what it takes.
func TestPricesOfTexts(t *testing.T) {
	for _, in := range []CheckInstructionsInput{
		{}, {Text: strings.Repeat("Rep last 9999 rows 9999 times\n", 5000), StartStitches: make([]int, 1000)},
		{Text: strings.Repeat("\xff", MaxTextBytes+1), Abbreviations: make([]Abbreviation, 5000)},
	} {
		if p := in.Cost(); p < 1 || p > MaxCheckCost {
			t.Errorf("a text of %d bytes is priced %d", len(in.Text), p)
		}
	}
	text, counts := gradedPiece(300)
	in := CheckInstructionsInput{Text: text, StartStitches: counts}
	piece := read(in.Text, len(counts), nil, true)
	w, err := new(room).work(t.Context(), piece, Start{Counts: counts}, in.charge(glanceAt(text)))
	if err != nil || len(piece.Lines) != 300 || len(w.Findings) > 0 || w.charge > in.charge(glanceAt(text))/3 {
		t.Errorf("%d lines: charged %d of %d, priced %d, %+v, %v", len(piece.Lines), w.charge, in.charge(glanceAt(text)), in.Cost(),
			w.Findings, err)
	}
}

// TestGlance: what is seen without reading.
func TestGlance(t *testing.T) {
	for _, c := range []struct {
		text               string
		lines, rows, sizes int
	}{
		{"", 1, 0, 1},
		{"Row 1: k5, p5 (10 sts)", 1, 0, 1},
		{"CO 96 (104, 112) sts\nRow 1: k3 (4, 5)", 2, 0, 3},
		{"k1 (2) (3, -) [4; 5: 6], (9 sts)", 1, 0, 7},
		{"(1, x, 2, 3)", 1, 0, 1},
		{"Rows 1-8: k. KNIT 10 ROWS", 2, 18, 1},
		{"Rows 1 to 8: k", 1, 8, 1},
		{"Row 2: k\nRow 3: k\nRnd 60: k, p 99", 3, 1 + 56, 1},
		{"BO 5 sts at beg of next 2 (4, 90) rows", 1, 90, 3},
		{"REP Rows 3 and 4 12 times", 1, 13*20 + 3*20, 1},
		{"Rep last 30 rows 40 times", 1, 30 + 41*30 + 3*40, 1},
		{"rep last row 9999 times", 1, MaxRows + 3*9999, 1},
		{"Rep last ten rows nine times", 1, 1_000 + 60, 1},
		{"Rep Rows 1 and 2 until 76 sts rem", 1, 1_000 + 3*76, 1},
		{"k1. rep last 2 rows twice; repeat last row 99999999999999999999 times", 2, 2 + 3*20 + 60 + MaxRows + 3*MaxRows, 1},
	} {
		if g := glanceAt(c.text); g.lines != c.lines || g.rows != c.rows || g.sizes != c.sizes {
			t.Errorf("%q: %d lines, %d rows, %d sizes; want %d, %d, %d", c.text, g.lines, g.rows, g.sizes, c.lines, c.rows, c.sizes)
		}
	}
}

// TestPricesOfWriting: what is unrolled to be compressed is paid for, however short it
// is written.
func TestPricesOfWriting(t *testing.T) {
	// A text has some hundred runs compressed, and as many more as half its bytes.
	long := Step{Steps: []Step{{Operation: stitch.Knit}, {Operation: stitch.Purl}}, Times: []int{5000}}
	for _, c := range []struct {
		in          FormatInstructionsInput
		least, most int
	}{
		{FormatInstructionsInput{}, 20, 30},
		{FormatInstructionsInput{Text: "Row 1: k5, p5"}, 20, 50},
		{FormatInstructionsInput{Text: "[k1, p2] 5000 times"}, 1_500, 1_600},
		{FormatInstructionsInput{Text: "[[k1, p2] 70 times, k2] 70 times"}, 1_500, 1_600},
		{FormatInstructionsInput{Text: "[k1 p2] 5000 times"}, 1_500, 1_600},
		{FormatInstructionsInput{Text: "*k1, p2; rep from * 4999 more times"}, 1_500, 1_600},
		{FormatInstructionsInput{Text: strings.Repeat("[k", MaxTextBytes)}, 16_000, cost.Limit},
		{FormatInstructionsInput{Text: strings.Repeat("[k1, p2] 99999 times", MaxTextBytes)}, 34_000, cost.Limit},
		{FormatInstructionsInput{Rows: []Row{{Steps: []Step{long}}}}, 18_000, 18_100},
		{FormatInstructionsInput{Rows: []Row{{Steps: slices.Repeat([]Step{long}, 9999)}}}, 30_000, cost.Limit},
	} {
		if p := c.in.Cost(); p < c.least || p > c.most {
			t.Errorf("%.40q and %d rows: priced %d, want %d to %d", c.in.Text, len(c.in.Rows), p, c.least, c.most)
		}
	}
}
