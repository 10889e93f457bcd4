package flat

import (
	"math"
	"regexp"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/outlinetest"
	"example.com/knitmath/knitmath/report"
)

var _ report.Answer = Shape{}

// The words of every form and gauge are sentences: no count disagrees with its noun, nothing
// stands twice, and no figure has more places than anybody measures.
func TestWordsAreSentences(t *testing.T) {
	wrong := regexp.MustCompile(`\b1 (stitches|rows|rounds)\b|\b[02-9]\d* (stitch|row|round)\b|\ba [aeio]|  |\.\.|,\.|\d\.\d{3}|NaN|Inf|%!`)
	for _, rows := range []float64{18, 26, 33} {
		for _, cm := range []float64{3, 11, 40} {
			for _, in := range wide(&gauge.Gauge{Stitches: 20, Rows: rows}, cm) {
				out, err := PlanFlatShape(in)
				if err != nil {
					for _, line := range strings.Split(err.Error(), "; ") {
						if wrong.MatchString(line) {
							t.Errorf("%q", line)
						}
					}
					continue
				}
				lines := append(out.Directions(), out.Summary())
				for _, n := range out.Notices {
					lines = append(lines, report.Sentence(n.Description)+".")
				}
				for _, line := range lines {
					if wrong.MatchString(line) || !strings.HasSuffix(line, ".") || line != report.Sentence(line) {
						t.Errorf("%q", line)
					}
				}
				if len(out.Sources()) == 0 {
					t.Errorf("%+v has no sources", in)
				}
			}
		}
	}
}

// The outline of every form is as wide and as high as is said.
func TestOutlines(t *testing.T) {
	for _, in := range wide(&gauge.Gauge{Stitches: 20, Rows: 28}, 30) {
		out, err := PlanFlatShape(in)
		if err != nil {
			t.Fatal(err)
		}
		outlinetest.CheckFrame(t, out.Outline)
		w, h := out.Outline.X.Greatest-out.Outline.X.Least, out.Outline.Y.Greatest-out.Outline.Y.Least
		if in.Form == FormBiasStrip { // turned: its length lies aslant
			w, h = out.WidthCm, h/math.Cos(*out.LeanDegrees*math.Pi/180)
		}
		// Arcs have a point every 3 degrees, and so may miss their widest by 0.04 %.
		if math.Abs(w-out.WidthCm) > 0.001*out.WidthCm || math.Abs(h-out.HeightCm) > 0.001*out.HeightCm {
			t.Errorf("form %d: drawn %v by %v, said %v by %v", in.Form, w, h, out.WidthCm, out.HeightCm)
		}
	}
}

// Refusals, by field and reason.
func TestRefusals(t *testing.T) {
	g := &gauge.Gauge{Stitches: 20, Rows: 28}
	cm, high, small := 20.0, 2.0, 0.2
	p := knittest.Ptr[int]
	for _, c := range []struct {
		in   Input
		want []string
	}{
		{Input{}, []string{"gauge REQUIRED", "form REQUIRED"}},
		{Input{Gauge: g, Form: FormRing, AcrossCm: &cm}, []string{"hole_cm REQUIRED"}},
		{Input{Gauge: g, Form: FormRing, AcrossCm: &high, HoleCm: &cm}, []string{"hole_cm INFEASIBLE", "across_cm INFEASIBLE"}},
		{Input{Gauge: g, Form: FormDisc, AcrossCm: &cm, SideCm: &cm}, []string{"side_cm CONTRADICTORY"}},
		{Input{Gauge: g, Form: FormDisc, AcrossCm: &cm, WedgeCount: p(4)}, []string{"wedge_count INFEASIBLE", "gauge.rows INFEASIBLE"}},
		{Input{Gauge: g, Form: FormDisc, AcrossCm: &cm, WedgeCount: p(9), StartStitches: p(8)},
			[]string{"start_stitches INFEASIBLE", "wedge_count INFEASIBLE"}},
		{Input{Gauge: g, Form: FormDisc, AcrossCm: &cm, StartStitches: p(97)}, []string{"start_stitches INFEASIBLE"}},
		{Input{Gauge: g, Form: FormDisc, AcrossCm: &small}, []string{"across_cm INFEASIBLE", "gauge.rows INFEASIBLE"}},
		{Input{Gauge: g, Form: FormTriangleFromPoint, WidthCm: &cm, HeightCm: &high}, []string{"width_cm INFEASIBLE", "height_cm INFEASIBLE"}},
		{Input{Gauge: g, Form: FormSector, AcrossCm: &cm, Direction: DirectionInwards}, []string{"direction CONTRADICTORY"}},
		{Input{Gauge: g, Form: FormBiasStrip, WidthCm: &small, LengthCm: &cm}, []string{"width_cm INFEASIBLE", "length_cm INFEASIBLE"}},
	} {
		_, err := PlanFlatShape(c.in)
		knittest.WantViolations(t, err, c.want...)
	}
}

// The height that a refusal offers is one that is planned, and no lower one is.
func TestTheHeightOfferedWouldDo(t *testing.T) {
	offered := regexp.MustCompile(`height_cm: [^;]*; ([\d.]+) cm would do`)
	for _, form := range []Form{FormTriangleFromPoint, FormTriangleFromSide} {
		for width := 20.0; width < 90; width += 3.7 {
			low := width / 16
			in := Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Form: form, WidthCm: &width, HeightCm: &low}
			_, err := PlanFlatShape(in)
			if err == nil {
				t.Fatalf("%v is planned so low", width)
			}
			found := offered.FindStringSubmatch(err.Error())
			if found == nil {
				t.Fatalf("%v offers nothing", err)
			}
			low = knittest.Cell(t, found[1])
			if _, err := PlanFlatShape(in); err != nil {
				t.Errorf("%v cm wide: %v cm high was offered: %v", width, low, err)
			}
			if low -= 0.5; low > 0.1 {
				if _, err := PlanFlatShape(in); err == nil {
					t.Errorf("%v cm wide: %v cm high would do, and more was offered", width, low)
				}
			}
		}
	}
}

func FuzzPlanFlatShape(f *testing.F) {
	f.Add(20.0, 28.0, int32(1), 24.0, 8.0, 180.0, int32(1), int32(1), 9, 4, 1.0)
	f.Add(18.0, 36.0, int32(4), 24.0, 8.0, 180.0, int32(2), int32(0), 0, 5, 0.0)
	f.Add(20.0, 40.0, int32(7), 30.0, 8.0, 90.0, int32(0), int32(0), 0, 0, 0.0)
	f.Fuzz(func(t *testing.T, stitches, rows float64, form int32, cm, other, turn float64, way, arrangement int32, wedges, corners int,
		tolerance float64) {
		in := Input{Gauge: &gauge.Gauge{Stitches: stitches, Rows: rows}, Form: Form(form), Direction: Direction(way), WithOutline: true}
		switch in.Form {
		case FormDisc, FormRing, FormSector:
			in.AcrossCm, in.Arrangement = &cm, Arrangement(arrangement)
			if in.Form == FormRing {
				in.HoleCm = &other
			} else if in.Form == FormSector {
				in.TurnDegrees = &turn
			}
			if wedges != 0 {
				in.WedgeCount, in.ToleranceRows = &wedges, &tolerance
			}
		case FormStar:
			in.AcrossCm, in.CornerCount = &cm, &corners
			if other != 0 {
				in.ValleyCm = &other
			}
		case FormPolygon:
			in.SideCm, in.CornerCount = &cm, &corners
		case FormMitredSquare:
			in.SideCm = &cm
		case FormTriangleFromTop:
			in.WidthCm = &cm
		case FormBiasStrip:
			in.WidthCm, in.LengthCm = &other, &cm
		default:
			in.WidthCm, in.HeightCm = &cm, &other
		}
		out, err := PlanFlatShape(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, out)
		count := out.StartStitches
		for _, r := range out.Rows {
			if r.Instruction.StartStitches != count || r.RowNumber < 1 || r.RowNumber > out.TotalRows {
				t.Fatalf("row %d begins with %d, %d were left", r.RowNumber, r.Instruction.StartStitches, count)
			}
			count = r.Instruction.EndStitches
		}
		if count != out.EndStitches {
			t.Fatalf("%d stitches at the end, %d said", count, out.EndStitches)
		}
	})
}

func BenchmarkFlatDisc(b *testing.B) {
	cm := 40.0
	in := Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Form: FormDisc, AcrossCm: &cm}
	for b.Loop() {
		if _, err := PlanFlatShape(in); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkFlatHexagon(b *testing.B) {
	cm, corners := 20.0, 6
	in := Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Form: FormPolygon, SideCm: &cm, CornerCount: &corners}
	for b.Loop() {
		if _, err := PlanFlatShape(in); err != nil {
			b.Fatal(err)
		}
	}
}
