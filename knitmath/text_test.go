package knitmath_test

import (
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/flat"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/pattern"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
	"example.com/knitmath/knitmath/yoke"
)

// readBack reads the text of an instruction and compares it with its tree.
func readBack(t *testing.T, in stitch.Instruction, on int) stitch.Row {
	t.Helper()
	text := in.Row.Text()
	p := pattern.Read(text, pattern.Options{})
	findings, _ := p.Findings()
	for _, f := range findings {
		// An m1 may lean either way, and the reader says so.
		if f.Kind != pattern.KindReading || !strings.HasPrefix(strings.ToLower(f.Text), "m1") {
			t.Fatalf("%q reads with %+v", text, f)
		}
	}
	if len(p.Lines) != 1 {
		t.Fatalf("%q reads as %d lines", text, len(p.Lines))
	}
	if got := p.Lines[0].Text(pattern.RepeatStyleBrackets); got != text {
		t.Fatalf("%q is written again as %q", text, got)
	}
	row, ok := p.StitchRow(0, 0, on)
	if !ok {
		t.Fatalf("%q is no row", text)
	}
	want, errW := stitch.Expand(in.Row, on)
	got, errG := stitch.Expand(row, on)
	for i := range want { // one text stands for both yarn overs
		if want[i].Op == stitch.ShortRowYO {
			want[i].Op = stitch.YO
		}
	}
	if errW != nil || errG != nil || !slices.Equal(want, got) {
		t.Fatalf("%q reads as %v (%v), not %v (%v)", text, got, errG, want, errW)
	}
	return row
}

// checkText reads an instruction back and has it checked and knit from its text.
func checkText(t *testing.T, in stitch.Instruction, round bool) {
	t.Helper()
	row := readBack(t, in, in.StartStitches)
	m := knittest.CastOn(t, in.StartStitches, round)
	if err := m.Work(row); err != nil || m.StitchCount() != in.EndStitches {
		t.Fatalf("%q on %d: %d stitches, %v; want %d", row.Text(), in.StartStitches, m.StitchCount(), err, in.EndStitches)
	}
	checkPiece(t, in.Row.Text(), in.StartStitches, in.EndStitches, round, stitch.RightSide)
}

// checkPiece has a whole text checked: it must have no fault and end with so many
// stitches.
func checkPiece(t *testing.T, text string, start, end int, round bool, first stitch.Side) {
	t.Helper()
	ask := pattern.CheckInstructionsInput{Text: text, StartStitches: []int{start}, FirstSide: first}
	if round {
		ask.Construction = stitch.InTheRound
	}
	out, err := pattern.CheckInstructions(t.Context(), ask)
	if err != nil || !out.Agrees || out.EndStitches[0] != end {
		t.Fatalf("%q on %d: %v, %+v; want %d", text, start, err, out, end)
	}
}

func TestSpacingTextIsKnit(t *testing.T) {
	planned := 0
	for start := 1; start <= 15; start++ {
		for end := 1; end <= 2*start; end++ {
			for _, op := range knittest.ShapingOps {
				if end == start || (end-start)*op.Net() < 0 || (end-start)%op.Net() != 0 {
					continue
				}
				for _, cons := range []stitch.Construction{stitch.Flat, stitch.InTheRound} {
					for order := shaping.GapSpreadGrouped; order <= shaping.GapSpreadMirrored; order++ {
						out, err := shaping.PlanEvenSpacing(shaping.EvenSpacingInput{
							StartStitches: start, EndStitches: end, Operation: op, Construction: cons, Spread: order})
						if err != nil {
							continue
						}
						planned++
						in := out.Instruction
						row := readBack(t, in, start)
						m := knittest.CastOn(t, start, cons == stitch.InTheRound)
						if err := m.Work(row); err != nil || m.StitchCount() != end {
							t.Fatalf("%q on %d: %d stitches, %v", row.Text(), start, m.StitchCount(), err)
						}
						checkPiece(t, in.Row.Text(), start, end, cons == stitch.InTheRound, stitch.RightSide)
					}
				}
			}
		}
	}
	if planned < 3000 {
		t.Errorf("planned %d: the sweep has shrunk", planned)
	}
}

func TestFlatTextIsKnit(t *testing.T) {
	planned := 0
	for form := flat.FormDisc; form <= flat.FormBiasStrip; form++ {
		for _, rows := range []float64{18, 24, 28, 36} {
			for corners := range 10 {
				in := flat.Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: rows}, Form: form, Direction: flat.Direction(corners % 3)}
				cm, hole := 11+float64(corners), 5.0
				switch form {
				case flat.FormDisc, flat.FormSector:
					in.AcrossCm, in.Arrangement = &cm, flat.Arrangement(corners%4)
				case flat.FormRing:
					in.AcrossCm, in.HoleCm = &cm, &hole
				case flat.FormPolygon:
					in.SideCm, in.CornerCount = &hole, knittest.Ptr(3+corners)
				case flat.FormMitredSquare:
					in.SideCm = &hole
				case flat.FormTriangleFromTop:
					in.WidthCm = &cm
				case flat.FormBiasStrip:
					in.WidthCm, in.LengthCm = &hole, &cm
				default:
					in.WidthCm, in.HeightCm = &cm, &hole
				}
				out, err := flat.PlanFlatShape(in)
				if err != nil {
					continue
				}
				for _, r := range out.Rows {
					planned++
					readBack(t, r.Instruction, r.Instruction.StartStitches)
				}
			}
		}
	}
	if planned < 1800 {
		t.Errorf("read %d rows: the sweep has shrunk", planned)
	}
}

func TestTaperTextIsKnit(t *testing.T) {
	planned := 0
	for start := 6; start <= 16; start += 2 {
		for end := 4; end <= 24; end++ {
			for variant := range 2 * 3 * 2 * 2 {
				rows, per := 24, 1+variant%2
				in := shaping.TaperInput{StartStitches: start, EndStitches: end, HeightRows: &rows, EdgeChangeStitches: &per,
					Edges: shaping.ShapedEdges(1 + variant/2%3), RowChoice: shaping.RowChoice(1 + variant/6%2)}
				if variant/12 == 1 {
					in.Construction = stitch.InTheRound
				}
				out, err := shaping.PlanTaper(in)
				if err != nil {
					continue
				}
				planned++
				var text strings.Builder
				row, count := 0, start
				for _, s := range out.Rows {
					for row++; row < s.RowNumber; row++ {
						text.WriteString("work to end\n")
					}
					instruction := out.RightSideRow
					if s.Side == stitch.WrongSide {
						instruction = out.WrongSideRow
					}
					readBack(t, *instruction, count)
					count = s.EndStitches
					text.WriteString(instruction.Row.Text() + "\n")
				}
				if len(out.Rows) > 0 {
					checkPiece(t, text.String(), start, end, in.Construction == stitch.InTheRound, stitch.SideUnspecified)
				}
			}
		}
	}
	if planned < 500 {
		t.Errorf("planned %d: the sweep has shrunk", planned)
	}
}

func TestWedgeTextIsKnit(t *testing.T) {
	planned := 0
	for width := 2; width <= 14; width++ {
		for rise := 2; rise <= 2*width+2; rise += 2 {
			for tall := shortrow.TallEndRight; tall <= shortrow.TallEndSides; tall++ {
				for order := shortrow.OrderLongestFirst; order <= shortrow.OrderShortestFirst; order++ {
					for method := shortrow.TurnMethodWrapAndTurn; method <= shortrow.TurnMethodYarnOver; method++ {
						in := shortrow.WedgeInput{WidthStitches: width, RiseRows: &rise, TallEnd: tall, Order: order, TurnMethod: method}
						out, err := shortrow.PlanWedge(in)
						if err != nil || len(out.Rows) == 0 {
							continue
						}
						planned++
						checkWedgeText(t, in, out)
					}
				}
			}
		}
	}
	if planned < 1000 {
		t.Errorf("planned %d: the sweep has shrunk", planned)
	}
}

// checkWedgeText knits a wedge from its texts alone, and has them checked as one
// piece. The machine is told of the short rows' yarn overs by their place: at the
// beginning of a row after one that ended with "turn".
func checkWedgeText(t *testing.T, in shortrow.WedgeInput, out shortrow.Wedge) {
	t.Helper()
	m := knittest.CastOn(t, in.WidthStitches, false)
	if out.Rows[0].Side == stitch.WrongSide {
		if err := m.Work(knittest.PlainRow(m)); err != nil {
			t.Fatal(err)
		}
	}
	turned := false
	var text strings.Builder
	for _, r := range out.Rows {
		row := readBack(t, r.Instruction, m.ToWork())
		if first := &row.Steps[0]; turned && first.Op == stitch.YO {
			first.Op = stitch.ShortRowYO
		}
		if err := m.Work(row); err != nil {
			t.Fatalf("%+v: row %d, %q: %v", in, r.RowNumber, row.Text(), err)
		}
		turned = row.Steps[len(row.Steps)-1].Op == stitch.Turn
		text.WriteString(r.Instruction.Row.Text() + "\n")
	}
	if m.StitchCount() != in.WidthStitches || m.Unresolved() != 0 {
		t.Fatalf("%+v: %d stitches, %d gaps open", in, m.StitchCount(), m.Unresolved())
	}
	checkPiece(t, text.String(), in.WidthStitches, in.WidthStitches, false, out.Rows[0].Side)
}

func TestYokeTextIsKnit(t *testing.T) {
	planned := 0
	for body := 80; body <= 320; body += 4 {
		for schedule := yoke.SchedulePercentage; schedule <= yoke.ScheduleCone; schedule++ {
			for order := shaping.GapSpreadGrouped; order <= shaping.GapSpreadMirrored; order++ {
				out, err := yoke.PlanCircularYoke(yoke.CircularInput{
					Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: body, Schedule: schedule, Spread: order})
				if err != nil {
					continue
				}
				planned++
				var text strings.Builder
				next := 1
				for _, r := range out.Rounds {
					for ; next < r.RoundNumber; next++ {
						text.WriteString("k to end\n")
					}
					next++
					checkText(t, r.Instruction, true)
					text.WriteString(r.Instruction.Row.Text() + "\n")
				}
				checkPiece(t, text.String(), out.JoinStitches, out.NeckStitches, true, stitch.SideUnspecified)
			}
		}
	}
	if planned < 200 {
		t.Errorf("planned %d: the sweep has shrunk", planned)
	}
}
