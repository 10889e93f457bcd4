package neck

import (
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outlinetest"
	"example.com/knitmath/knitmath/report"
)

// Every answer tells its figures, what to do and where they come from, in the grammar of
// English, and both sides of every piece are written out.
func TestWordsOfAllNecklines(t *testing.T) {
	eachDrawn(t, func(at string, in Input, out Neckline) {
		words := append([]string{out.Summary()}, out.Directions()...)
		for _, n := range out.Notices {
			words = append(words, n.Description+".")
		}
		for _, s := range words {
			for _, bad := range []string{" 1 stitches", " 1 rows", "  ", "..", " ,", "plain", ": .", "(1 stitches", "?", "BO 0", "k0", "p0", "reverse", " 0 stitches"} {
				if strings.Contains(s, bad) {
					t.Errorf("%s: %q in %q", at, bad, s)
				}
			}
			if s[0] >= 'a' && s[0] <= 'z' && !strings.HasPrefix(s, "w&t") && !strings.HasPrefix(s, "make DS") && !strings.HasPrefix(s, "the ") && !strings.HasPrefix(s, "no ") {
				t.Errorf("%s: %q begins small", at, s)
			}
			if !strings.HasSuffix(s, ".") && !strings.HasSuffix(s, ":") {
				t.Errorf("%s: %q does not end", at, s)
			}
		}
		text := strings.Join(words, "\n")
		for _, side := range []string{"Left back:", "Right back", "Left front", "Right front"} {
			if in.Shape != ShapeBoat && out.Front.DepthRows > 0 && out.Back.DepthRows > 0 && !strings.Contains(text, side) {
				t.Errorf("%s: nothing of the %s", at, side)
			}
		}
		for _, s := range out.Sources() {
			if s.Figure == "" || s.Citation == "" || s.Status == report.SourceStatusUnspecified {
				t.Errorf("%s: source %+v", at, s)
			}
		}
	})
}

// The directions of a small neck, whole, as they are printed.
func TestDirectionsByHand(t *testing.T) {
	out, err := PlanNeckline(Input{Gauge: ordinary(), WidthStitches: new(63), NeckStitches: new(25), ShoulderSlopeRows: new(6),
		FrontDepthRows: new(14), BackDepthRows: new(2), DisplayUnit: measure.DisplayUnitIn})
	if err != nil {
		t.Fatal(err)
	}
	got := out.Directions()
	want := strings.Split(strings.TrimSpace(directionsByHand), "\n")
	if !slices.Equal(got, want) {
		t.Errorf("got\n%s", strings.Join(got, "\n"))
	}
}

// Of 25 stitches the middle takes 11 in front and all behind; 2, 2, 1, 1 and 1 go beside it; the
// shoulders are those of a coat of 1918.
const directionsByHand = `
Work front and back on 63 stitches each, 19 for each shoulder, in steps of 7, 6 and 6 from the armhole on, and 25 for the neck. Rows that are not written are worked even, in pattern.
Back: row 1 is a right-side row, with 4 rows (0.52 in) from there to the end of the shoulder at the neck.
Row 1 (RS): BO 7, k to end: 56 stitches.
Row 2 (WS): BO 7, p to end: 49 stitches.
Right back:
Row 3 (RS): BO 6, k6, place 37 sts on hold: 6 stitches.
Row 5 (RS): BO 6.
Left back: put the stitches on hold back on the needle and join the yarn at the neck edge, the right side facing.
Row 3 (RS): BO 25, k to end: 12 stitches.
Row 4 (WS): BO 6, p to end: 6 stitches.
Row 6 (WS): BO 6.
Front: row 1 is a right-side row, with 14 rows (1.84 in) from there to the end of the shoulder at the neck.
Left front:
Row 1 (RS): k26, place 37 sts on hold: 26 stitches.
Row 2 (WS): BO 2, p to end: 24 stitches.
Row 4 (WS): BO 2, p to end: 22 stitches.
Row 7 (RS, decrease row): k to last 3 sts, k2tog, k1. Repeat the decrease row on the following 2nd row: 20 stitches.
Row 11 (RS): BO 7, k to last 3 sts, k2tog, k1: 12 stitches.
Row 13 (RS): BO 6, k to end: 6 stitches.
Row 15 (RS): BO 6.
Right front: put the stitches on hold back on the needle and join the yarn at the neck edge, the right side facing.
Row 1 (RS): BO 11, k to end: 26 stitches.
Row 3 (RS): BO 2, k to end: 24 stitches.
Row 5 (RS): BO 2, k to end: 22 stitches.
Row 7 (RS, decrease row): k1, ssk, k to end. Repeat the decrease row every 2nd row twice more: 19 stitches.
Row 12 (WS): BO 7, p to end: 12 stitches.
Row 14 (WS): BO 6, p to end: 6 stitches.
Row 16 (WS): BO 6.
Band: with the shoulders joined and the right side facing, begin at the right shoulder, as worn, and pick up and knit 28 across the back, 13 down the left front, 11 across the middle of the front, 13 up the right front: 65 stitches. Join to work in the round.`

// The outline of a piece: from armhole to armhole, as high as its rows, and symmetrical.
func TestOutlines(t *testing.T) {
	eachDrawn(t, func(at string, in Input, _ Neckline) {
		in.WithOutline = true
		out, err := PlanNeckline(in)
		if err != nil {
			t.Fatal(err)
		}
		outlinetest.CheckFrame(t, out.Outline)
		for i, p := range []Piece{out.Front, out.Back} {
			line := out.Outline.Lines[i]
			points := line.Points
			if line.Name != [2]string{"front", "back"}[i] || points[0].X != -points[len(points)-1].X {
				t.Errorf("%s: %s from %v to %v", at, line.Name, points[0], points[len(points)-1])
			}
			high, low, wide := points[0].Y, points[0].Y, 0.0
			for k, q := range points {
				high, low, wide = max(high, q.Y), min(low, q.Y), max(wide, 2*q.X)
				if mirror := points[len(points)-1-k]; mirror.X != -q.X || mirror.Y != q.Y {
					t.Fatalf("%s: %v is not over against %v", at, q, mirror)
				}
			}
			if wide < out.WidthCm-1e-9 || wide > out.WidthCm+1e-9 || high-low < p.DepthCm-1e-9 {
				t.Errorf("%s: %s is %v cm wide and %v high", at, line.Name, wide, high-low)
			}
		}
	})
}
