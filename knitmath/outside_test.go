package knitmath_test

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/flat"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/pattern"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/solid"
	"example.com/knitmath/knitmath/stitch"
)

// outside works out what a published figure of shapes says, in the words of its row.
var outside = map[string]func(t *testing.T) string{
	"pie_44": func(t *testing.T) string {
		out := flatShape(t, flat.Input{Gauge: perInch(4, 6), Form: flat.FormDisc, AcrossCm: new(44 * 2.54), WedgeCount: new(5),
			Arrangement: flat.ArrangementShortRows})
		rows := 0
		for _, w := range out.Wedges {
			rows = max(rows, len(w.Rows))
		}
		return strconv.Itoa(out.StartStitches) + " stitches; " + strconv.Itoa(rows) + " rows a wedge"
	},
	"ball_80": func(t *testing.T) string {
		out := ball(t, 80)
		ups := 0
		for _, r := range out.Rounds {
			if r.Instruction.EndStitches > r.Instruction.StartStitches {
				ups++
			}
		}
		return strconv.Itoa(out.GreatestStitches) + " at its widest; " + strconv.Itoa(ups) + " increase rounds after " +
			strconv.Itoa(out.StartStitches)
	},
	"ball_64": func(t *testing.T) string {
		counts := ""
		for _, r := range ball(t, 64).Rounds {
			if r.Instruction.EndStitches > r.Instruction.StartStitches && r.Instruction.EndStitches >= 24 {
				counts += " " + strconv.Itoa(r.Instruction.EndStitches)
			}
		}
		return strings.TrimSpace(counts)
	},
	"hyper_20": func(t *testing.T) string {
		out, err := shaping.PlanEvenSpacing(shaping.EvenSpacingInput{StartStitches: 20, EndStitches: 25, Construction: stitch.InTheRound})
		if err != nil {
			t.Fatal(err)
		}
		return strconv.Itoa(out.Instruction.EndStitches)
	},
	"torus_6_2": func(t *testing.T) string {
		rounds, most, least := 0, 0, math.MaxInt
		for _, outer := range []float64{1, -1} {
			var points []solid.ProfilePoint
			for i := range 20 {
				sin, cos := math.Sincos(math.Pi * (float64(i)/19 - 0.5))
				points = append(points, solid.ProfilePoint{HeightCm: 2 + 2*sin, AcrossCm: 2 * (6 + outer*2*cos)})
			}
			// The gauge that makes 33 rounds round a tube of 2 cm, and 101 stitches round its outside.
			per, edge := 33/(4*math.Pi)*10, 12.0
			out, err := solid.PlanSolid(solid.SolidInput{Gauge: &gauge.Gauge{Stitches: 101 / (16 * math.Pi) * 10, Rows: per},
				Form: solid.FormProfile, Points: points, WedgeCount: new(1), BaseOpeningCm: &edge, TopOpeningCm: &edge})
			if err != nil {
				t.Fatal(err)
			}
			rounds, most = rounds+out.TotalRounds, max(most, out.GreatestStitches)
			for _, r := range out.Rounds {
				least = min(least, r.Instruction.EndStitches)
			}
		}
		return strconv.Itoa(rounds) + " rounds; at most " + strconv.Itoa(most) + "; at least " + strconv.Itoa(least)
	},
	"neg_prj": func(t *testing.T) string { return disagrees(t, 104, "Rnd 1: [k8, m1] 13 times (116 sts).", true) },
	"neg_kns07_a": func(t *testing.T) string {
		return disagrees(t, 112, strings.Repeat("K1, m1, k to last st, m1, k1.\n", 7)+"(128 sts)", false)
	},
	"neg_kns07_b": func(t *testing.T) string {
		return disagrees(t, 188, "CO 9, k to end.\nCO 9, p to end (200 sts).", false)
	},
	"neg_ozl": func(t *testing.T) string {
		return disagrees(t, 162, "BO 9, k to end.\nBO 9, p to end.\n"+strings.Repeat("Ssk, k to last 2 sts, k2tog.\n", 17)+
			"Ssk, k to last 2 sts, k2tog (104 sts).", false)
	},
	"neg_mwk": func(t *testing.T) string {
		out := flatShape(t, flat.Input{Gauge: perInch(5, 7), Form: flat.FormDisc, AcrossCm: new(24 * 2.54)})
		return strconv.Itoa(int(out.WantedRimStitches + 0.5))
	},
	"neg_fdm": func(t *testing.T) string {
		text := "BO 9, k to end (18 sts).\nP.\nBO 9, k to end.\nP.\nBO 9, k to end.\nP.\nBO 9, k to end."
		out, err := pattern.CheckInstructions(t.Context(), pattern.CheckInstructionsInput{Text: text, StartStitches: []int{27}})
		if err != nil || out.Agrees {
			t.Errorf("%v, %+v", err, out.Findings)
		}
		return "18"
	},
}

func perInch(stitches, rows float64) *gauge.Gauge {
	return &gauge.Gauge{Stitches: stitches, Rows: rows, OverCm: new(2.54)}
}

func flatShape(t *testing.T, in flat.Input) flat.Shape {
	t.Helper()
	out, err := flat.PlanFlatShape(in)
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// ball is a ball of 8 wedges and so many stitches round its widest.
func ball(t *testing.T, stitches int) solid.Solid {
	t.Helper()
	across := float64(stitches) / 2 / math.Pi
	out, err := solid.PlanSolid(solid.SolidInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Form: solid.FormSphere, AcrossCm: &across,
		WedgeCount: new(8)})
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// disagrees is the count that a text comes to, which must be found not to be the one it prints.
func disagrees(t *testing.T, start int, text string, round bool) string {
	t.Helper()
	in := pattern.CheckInstructionsInput{Text: text, StartStitches: []int{start}}
	if round {
		in.Construction = stitch.InTheRound
	}
	out, err := pattern.CheckInstructions(t.Context(), in)
	if err != nil || out.Agrees {
		t.Fatalf("%q: %v, %+v", text, err, out)
	}
	return strconv.Itoa(out.EndStitches[0])
}

// alike reports whether two texts differ in no more than their numbers, each by so much at most.
func alike(a, b string, tolerance float64) bool {
	as, bs := strings.Fields(a), strings.Fields(b)
	return slices.EqualFunc(as, bs, func(a, b string) bool {
		x, errX := strconv.ParseFloat(a, 64)
		y, errY := strconv.ParseFloat(b, 64)
		return a == b || errX == nil && errY == nil && math.Abs(x-y) <= tolerance
	})
}

// Every published figure of shapes that is known here, and is in no room's own table, is worked out
// or has its reason why not.
func TestOutsideShapes(t *testing.T) {
	rows := knittest.TableAt(t, "../testdata/shapes/outside.csv")
	if len(rows) < 13 {
		t.Errorf("%d figures", len(rows))
	}
	for _, row := range rows {
		work, worked := outside[row["id"]]
		if worked == (row["verdict"] == "other") || row["why"] == "" {
			t.Errorf("%s: verdict %q, %q", row["id"], row["verdict"], row["why"])
			continue
		}
		if worked {
			if got := work(t); !alike(got, row["expected"], knittest.Cell(t, row["tolerance"])) {
				t.Errorf("%s: %s, printed %s", row["id"], got, row["expected"])
			}
		}
	}
}
