package neck

import (
	"os"
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
			for _, bad := range []string{" 1 stitches", " 1 rows", "  ", "..", " ,",
				"plain", ": .", "alternately once", "(1 stitches", "?", "BO 0", "k0", "p0", "reverse", " 0 stitches"} {
				if strings.Contains(s, bad) {
					t.Errorf("%s: %q in %q", at, bad, s)
				}
			}
			first, _, _ := strings.Cut(s, " ")
			if s[0] >= 'a' && s[0] <= 'z' && !slices.Contains([]string{"the", "no"}, first) {
				t.Errorf("%s: %q begins small", at, s)
			}
			if !strings.HasSuffix(s, ".") && !strings.HasSuffix(s, ":") {
				t.Errorf("%s: %q does not end", at, s)
			}
		}
		text := strings.Join(words, "\n")
		for _, p := range []Piece{out.Back, out.Front} { // a piece says on how many stitches it begins
			heading := report.Sentence(p.layout.piece) + ":"
			if i := slices.Index(words, heading); !strings.Contains(words[i+1], " row, on "+report.CountOf(p.StartStitches, "stitches")) {
				t.Errorf("%s: %q and %q", at, heading, words[i+1])
			}
		}
		for _, side := range []string{"Left back:", "Right back", "Left front", "Right front"} {
			if in.Shape != ShapeBoat && out.Front.DepthRows > 0 && out.Back.DepthRows > 0 && !strings.Contains(text, side) {
				t.Errorf("%s: nothing of the %s", at, side)
			}
		}
		held := 0 // shoulders that are left on hold
		if in.ShoulderMethod == ShoulderMethodShortRows {
			held = 4
		}
		if told := strings.Count(text, report.CountOf(out.ShoulderStitches, "stitches")+" on hold until"); told != held {
			t.Errorf("%s: %d shoulders are told to be held, %d are", at, told, held)
		}
		for _, s := range out.Sources() {
			if s.Figure == "" || s.Citation == "" || s.Status == report.SourceStatusUnspecified {
				t.Errorf("%s: source %+v", at, s)
			}
		}
	})
}

// The directions of a small neck, whole, as they are printed. Of 25 stitches the middle takes
// 11 in front and all behind; 2, 2, 1, 1 and 1 go beside it; the shoulders are those of a coat
// of 1918.
func TestDirectionsByHand(t *testing.T) {
	out, err := PlanNeckline(Input{Gauge: ordinary(), WidthStitches: new(63), NeckStitches: new(25), ShoulderSlopeRows: new(6),
		FrontDepthRows: new(14), BackDepthRows: new(2), DisplayUnit: measure.DisplayUnitIn})
	if err != nil {
		t.Fatal(err)
	}
	got := out.Directions()
	text, err := os.ReadFile("../../testdata/neck/directions.txt")
	if err != nil {
		t.Fatal(err)
	}
	want := strings.Split(strings.TrimSpace(string(text)), "\n")
	if !slices.Equal(got, want) {
		t.Errorf("got\n%s", strings.Join(got, "\n"))
	}
}

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
			want := p.layout.st.SizeCm(p.StartStitches)
			if wide < want-1e-9 || wide > want+1e-9 || high-low < p.DepthCm-1e-9 {
				t.Errorf("%s: %s is %v cm wide and %v high", at, line.Name, wide, high-low)
			}
		}
	})
}

// Where a neck is bound off with the end of a shoulder, how many stitches are whose is said: of
// 67 stitches 17, in steps of 5, 4, 4 and 4, are each shoulder's.
func TestBoatSaysWhatItBindsOff(t *testing.T) {
	out, err := PlanNeckline(Input{Gauge: ordinary(), Shape: ShapeBoat, WidthStitches: new(67), NeckStitches: new(33),
		ShoulderSlopeRows: new(8)})
	if err != nil {
		t.Fatal(err)
	}
	text := strings.Join(out.Directions(), "\n")
	for _, want := range []string{"Row 7 (RS): BO 37, k to end: 4 stitches.\nNote: of the 37 stitches bound off in row 7 " +
		"the first 4 are the end of the left shoulder, the other 33 the neck.\nRight front:"} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is not in %s", want, text)
		}
	}
}
