package solid

import (
	"math"
	"regexp"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// checkSolid knits a solid from its answer and measures it against the surface: every round
// can be worked and has the count that is said, no two rounds differ by more than lie flat
// or a step, and all stitches together are those of the surface.
func checkSolid(t *testing.T, in SolidInput, out Solid, area float64) {
	t.Helper()
	m := knittest.CastOn(t, out.StartStitches, true)
	flat := 2 * math.Pi * in.Gauge.Stitches / in.Gauge.Rows
	total, most, next := 0, 0, 0
	for round := 1; round <= out.TotalRounds; round++ {
		before, row := m.StitchCount(), knittest.PlainRow(m)
		if next < len(out.Rounds) && out.Rounds[next].RoundNumber == round {
			row = out.Rounds[next].Instruction.Row
			if out.Rounds[next].Instruction.StartStitches != before {
				t.Fatalf("round %d begins with %d, %d said", round, before, out.Rounds[next].Instruction.StartStitches)
			}
			next++
		}
		if err := m.Work(row); err != nil {
			t.Fatalf("%+v: round %d, %q: %v", in, round, row.Text(), err)
		}
		n := m.StitchCount()
		if row := out.Rounds[max(next-1, 0):next]; len(row) > 0 && row[0].RoundNumber == round && row[0].Instruction.EndStitches != n {
			t.Fatalf("round %d: %d stitches, %d said", round, n, row[0].Instruction.EndStitches)
		}
		if change := math.Abs(float64(n - before)); change > flat+float64(out.WedgeCount) {
			t.Fatalf("%+v: round %d changes by %v, and %v lie flat: %v, %v", in, round, change, flat, out.of.counts, out.of.wanted)
		}
		total, most = total+n, max(most, n)
	}
	if next != len(out.Rounds) || m.StitchCount() != out.EndStitches || total != out.TotalStitches || most != out.GreatestStitches {
		t.Fatalf("%+v: %d of %d rounds; %d stitches in all, %d said", in, next, len(out.Rounds), total, out.TotalStitches)
	}
	for _, h := range m.Heights() {
		if h != out.TotalRounds {
			t.Fatalf("%d rounds under a stitch, want %d", h, out.TotalRounds)
		}
	}
	wanted := area * in.Gauge.Stitches * in.Gauge.Rows / 100
	// Curves are pieces of straight lines.
	if off := math.Abs(float64(total) - wanted); off > max(0.0102*wanted, float64(out.TotalRounds)) && !told(out.Notices, SurfaceUnmet) {
		t.Fatalf("%+v: %d stitches, the surface has %v", in, total, wanted)
	}
}

// surface is the area of a whole form by its closed formula.
func surface(in SolidInput) float64 {
	a := *in.AcrossCm / 2
	cap := func(c float64) float64 { // half an ellipsoid of revolution
		switch {
		case math.Abs(c-a) < 1e-12:
			return 2 * math.Pi * a * a
		case c > a:
			e := math.Sqrt(1 - a*a/c/c)
			return math.Pi * a * a * (1 + c/a/e*math.Asin(e))
		}
		e := math.Sqrt(1 - c*c/a/a)
		return math.Pi * a * a * (1 + (1-e*e)/e*math.Atanh(e))
	}
	disc := math.Pi * a * a
	switch in.Form {
	case FormSphere:
		return 4 * disc
	case FormEgg:
		return cap(widestEgg**in.HeightCm) + cap((1-widestEgg)**in.HeightCm)
	case FormCone:
		return disc + math.Pi*a*math.Hypot(a, *in.HeightCm)
	case FormCylinder:
		return 2*disc + 2*math.Pi*a**in.HeightCm
	}
	d := *in.HeightCm - a // a drop: the ball below its tangent, and the cone
	return 2*math.Pi*a*(a+a*a/d) + math.Pi*a*math.Sqrt(1-a*a/d/d)*math.Sqrt(d*d-a*a)
}

// solids are forms of many sizes and gauges, whole ones.
func solids(step float64) []SolidInput {
	var list []SolidInput
	for _, rows := range []float64{16, 20, 26, 28, 33, 40} {
		g := &gauge.Gauge{Stitches: 20, Rows: rows}
		for across := 2.5; across < 40; across += step {
			for form := FormSphere; form <= FormDrop; form++ {
				for i, times := range []float64{1.1, 1.4, 2.5} {
					high := across * times
					in := SolidInput{Gauge: g, Form: form, AcrossCm: &across, HeightCm: &high, Start: Start(1 + i%2), Lines: Lines(i), WithOutline: true}
					switch {
					case form == FormSphere:
						in.HeightCm = nil
						fallthrough
					case i == 2:
						in.WedgeCount = knittest.Ptr(1 + int(across+float64(form))%12)
					}
					list = append(list, in)
				}
			}
		}
	}
	return list
}

// checkLine wants a line to end, and to say nothing that is wrong. What it has read it knows: most of a pattern is like another's.
func checkLine(t *testing.T, line, end string) {
	t.Helper()
	if linesRead[line] {
		return
	}
	if linesRead[line] = true; wrongWords.MatchString(line) || !strings.HasSuffix(line, end) {
		t.Errorf("%q", line)
	}
}

var linesRead = map[string]bool{}

var wrongWords = regexp.MustCompile(`(^|[^.\d])1 (stitches|rounds)\b|\b[02-9]\d* (stitch|round)\b|  |\.\.|,\.|\d\.\d{3}|NaN|Inf|%!`)
