package knitmath_test

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/armhole"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/neck"
	"example.com/knitmath/knitmath/pattern"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shortrow"
)

// pieceRead has a printed piece checked: nothing in it is asked about or disagrees, and it ends
// with so many stitches. It gives the rows that were worked.
func pieceRead(t *testing.T, at string, lines []string, start, end int) int {
	t.Helper()
	q := pattern.CheckInstructionsInput{Text: strings.Join(lines, "\n"), StartStitches: []int{start}}
	out, err := pattern.CheckInstructions(t.Context(), q)
	if err != nil || !out.Agrees || out.EndStitches[0] != end {
		var found []string
		for _, f := range out.Findings {
			if f.Kind != pattern.KindReading {
				found = append(found, fmt.Sprintf("%d %s %q %s", f.LineNumber, f.Reason, f.Text, f.Description))
			}
		}
		t.Fatalf("%s: %v, %v, want %d\n%s\n%s", at, err, out.EndStitches, end, q.Text, strings.Join(found, "\n"))
	}
	return out.WorkedRows[0]
}

var usualGauges = [][2]float64{{14, 20}, {16, 22}, {18, 24}, {20, 28}, {22, 30}, {24, 32}, {28, 36}, {32, 42}}

// turnsWithoutStitch are the turns that leave nothing on the needle that is not counted.
var turnsWithoutStitch = [2]shortrow.TurnMethod{shortrow.TurnMethodGerman, shortrow.TurnMethodWrapAndTurn}

// What a neck says of its back and of its front is read whole, with every count, beside an armhole
// too; of shoulders in short rows the last stays on the needle.
func TestNecksAreReadBack(t *testing.T) {
	r := rand.New(rand.NewPCG(31, 13))
	read := 0
	for i := range knittest.Sweep(160, 40) {
		g := usualGauges[r.IntN(len(usualGauges))]
		in := neck.Input{Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]}, WidthCm: new(20 + r.Float64()*28), Shape: neck.Shape(1 + i%4),
			Centre: neck.Centre(i / 4 % 3)}
		if r.IntN(2) == 0 {
			in.ArmholeRows = new(2 * int(*in.WidthCm*0.22*g[1]/10))
			in.ArmholeSteps = []neck.ArmholeStep{{RowNumber: 1, Stitches: 4, BoundOff: true}, {RowNumber: 3, Stitches: 2, BoundOff: true},
				{RowNumber: 5, Stitches: 1}, {RowNumber: 7, Stitches: 1}}
		}
		left, ends := 0, "Band: "
		if r.IntN(3) == 0 {
			in.ShoulderMethod, in.TurnMethod, ends = neck.ShoulderMethodShortRows, turnsWithoutStitch[r.IntN(2)], "Join "
			if r.IntN(2) == 0 {
				in.ShoulderSlopeRows = new(0)
			}
		}
		out, err := neck.PlanNeckline(in)
		if err != nil {
			t.Fatalf("%+v: %v", in, err)
		}
		if in.ShoulderMethod == neck.ShoulderMethodShortRows {
			left = out.ShoulderStitches
		}
		d := out.Directions()
		back, front := slices.Index(d, "Back:"), slices.Index(d, "Front:")
		band := slices.IndexFunc(d, func(s string) bool { return strings.HasPrefix(s, ends) })
		at := fmt.Sprintf("question %d", i)
		for _, p := range []struct {
			neck.Piece
			from, to int
		}{{out.Back, back, front}, {out.Front, front, band}} {
			rows := pieceRead(t, at, d[p.from:p.to], p.StartStitches, left)
			if want := rowsOfSides(p.Piece, left > 0); p.DepthRows > 0 && rows != want {
				t.Errorf("%s: %d rows are told, %d are worked\n%s", at, rows, want, strings.Join(d[p.from:p.to], "\n"))
			}
			read++
		}
	}
	t.Logf("%d pieces read", read)
}

// rowsOfSides are the rows of a piece in which a neck has a depth: those below it, and of each side as
// many as it is deep, and the last bind-off.
func rowsOfSides(p neck.Piece, held bool) int {
	rows := p.NeckRowNumber - 1 + p.DepthRows + p.SecondSideDepthRows
	if !held {
		rows += 2
	}
	return rows
}

// What an armhole and its cap say is read whole, with every count.
func TestArmholesAreReadBack(t *testing.T) {
	r := rand.New(rand.NewPCG(37, 13))
	read := 0
	for i := range knittest.Sweep(160, 40) {
		g := usualGauges[r.IntN(len(usualGauges))]
		chest := 55 + r.Float64()*80
		in := armhole.Input{Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]}, Style: armhole.Style(1 + i%4), ChestCm: &chest,
			ArmholeDepthCm: new(7 + chest*0.13)}
		if in.Style == armhole.StyleSetIn || in.Style == armhole.StyleSaddle {
			in.AcrossBackCm, in.UpperArmCm = new(chest*0.39), new(chest*0.31)
		}
		out, err := armhole.Plan(in)
		if err != nil {
			continue
		}
		d := out.Directions()
		sleeve := slices.IndexFunc(d, func(s string) bool { return strings.HasPrefix(s, "Sleeve") })
		sew := slices.IndexFunc(d, func(s string) bool { return strings.HasPrefix(s, "Sew ") })
		left := out.Back.EndStitches
		if out.Strap != nil {
			left = 0 // what is on hold is on no needle
		}
		at := fmt.Sprintf("question %d, style %d", i, in.Style)
		pieceRead(t, at+", back", d[:sleeve], out.Back.StartStitches, left)
		pieceRead(t, at+", sleeve", d[sleeve:sew], out.Cap.StartStitches, 0)
		if out.Strap != nil {
			checkSaddleNeck(t, at, in.Gauge, out)
		}
		read++
	}
	t.Logf("%d armholes read", read)
}

// checkSaddleNeck asks for the neck of a saddle: its back is worked there as the armhole has it, from the shoulders in the same two rows
// to the same stitches on hold.
func checkSaddleNeck(t *testing.T, at string, g *gauge.Gauge, out armhole.Armhole) {
	t.Helper()
	over, err := neck.PlanNeckline(neck.Input{Gauge: g, WidthStitches: &out.Back.EndStitches, NeckStitches: &out.Strap.BackNeckStitches,
		StrapStitches: &out.Strap.Stitches})
	if err != nil {
		t.Errorf("%s: %v", at, err)
		return
	}
	n, held := out.Strap.ShoulderStitches, out.Strap.BackNeckStitches
	want := []string{fmt.Sprintf("BO %d, k to end", n), fmt.Sprintf("BO %d, place %d sts on hold", n, held)}
	var got []string
	for _, r := range over.Back.Rows {
		got = append(got, strings.ReplaceAll(r.Instruction.Row.Text(), " st on hold", " sts on hold"))
	}
	told := fmt.Sprintf("at beg of next 2 rows: %s.\nPlace the remaining %[1]s on hold for the neck.", report.CountOf(held, "stitches"))
	if !slices.Equal(got, want) || !strings.Contains(strings.Join(out.Directions(), "\n"), told) {
		t.Errorf("%s: %q, and %q beside %q", at, out.Directions(), got, want)
	}
}
