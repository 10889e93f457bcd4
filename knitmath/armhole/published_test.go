package armhole

import (
	"encoding/csv"
	"os"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
)

// settledOf is a question in counts, if it is sound.
func settledOf(in Input) (settled, bool) {
	var c fault.Checks
	s := vet(&c, in, true)
	return s, c.Err() == nil
}

// Armholes as they were published: what is bound off and decreased at each edge, one after
// the other, and what is left. Five stitches and seven rows to the inch.
func TestPublishedArmholes(t *testing.T) {
	for _, r := range table(t, "armholes.csv") {
		name, numbers, steps := r[0], ints(t, r[1:6]), r[6]
		in := Input{Gauge: &gauge.Gauge{Stitches: 5, Rows: 7, OverCm: new(measure.CmPerInch)}, BackStitches: &numbers[0],
			AcrossBackStitches: &numbers[1], UnderarmStitches: &numbers[2], ShapingRows: &numbers[3], LargestGroupStitches: &numbers[4],
			ArmholeDepthRows: new(56), UpperArmCm: new(28.0)}
		if numbers[2] == 0 {
			in.UnderarmStitches = nil // our own rule must find it
		}
		s, ok := settledOf(in)
		if !ok {
			t.Errorf("%s: refused", name)
			continue
		}
		p, ok := s.armhole(s.back, s.backLost)
		if !ok {
			t.Errorf("%s: no plan", name)
			continue
		}
		var got []string
		for _, st := range p.plan.Right {
			got = append(got, strconv.Itoa(st.Stitches))
		}
		if strings.Join(got, " ") != steps || p.start-2*p.lost != numbers[1] {
			t.Errorf("%s: %v, published %s", name, got, steps)
		}
	}
}

// Heights of caps by the published rules, in inches.
func TestPublishedCapHeights(t *testing.T) {
	for _, r := range table(t, "caps.csv") {
		v := floats(t, r[2:6])
		s := settled{st: gauge.NewDensity(5, measure.CmPerInch), rw: gauge.NewDensity(6.5, measure.CmPerInch), chestCm: v[0] * measure.CmPerInch}
		s.depth, s.top = int(measure.RoundHalfUp(v[1]*6.5)), int(v[2]*5)
		rule, ok := map[string]CapHeightRule{"less by chest": CapHeightRuleLessByChest, "less top": CapHeightRuleLessTop,
			"two thirds": CapHeightRuleTwoThirds}[r[1]]
		if !ok {
			t.Fatalf("%s: no rule %q", r[0], r[1])
		}
		// The depth itself is rounded to a row.
		if got := s.ruleCm(rule) / measure.CmPerInch; got < v[3]-1/6.5 || got > v[3]+1/6.5 {
			t.Errorf("%s: %v in, published %v", r[0], got, v[3])
		}
	}
}

// The published cap of 66 stitches over 8.5 inches: 36 rows, 16 left of 66 less what is
// bound off, which is 10 at the foot, 8 in the steps before the top and 16 at the top.
func TestPublishedCapIsPlanned(t *testing.T) {
	out, err := Plan(Input{Gauge: &gauge.Gauge{Stitches: 5, Rows: 6.5, OverCm: new(measure.CmPerInch)}, BackStitches: new(94),
		AcrossBackStitches: new(74), UnderarmStitches: new(5), ArmholeDepthCm: new(8.5 * measure.CmPerInch), SleeveStitches: new(66),
		CapTopStitches: new(16), CapHeightCm: new(5.5 * measure.CmPerInch)})
	if err != nil {
		t.Fatal(err)
	}
	if out.Cap.HeightRows != 36 || out.Cap.EndStitches != 16 || out.UnderarmStitches != 5 {
		t.Errorf("%d rows, %d left, %d at the foot", out.Cap.HeightRows, out.Cap.EndStitches, out.UnderarmStitches)
	}
	t.Logf("its edge is %.1f %% longer than the armhole's", out.CapExcessPercent)
}

func table(t *testing.T, name string) [][]string {
	t.Helper()
	file, err := os.Open("../../testdata/armhole/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	rows, err := csv.NewReader(file).ReadAll()
	if err != nil || len(rows) < 2 {
		t.Fatal(err)
	}
	return rows[1:]
}

func ints(t *testing.T, cells []string) []int {
	t.Helper()
	list := make([]int, len(cells))
	for i, c := range cells {
		n, err := strconv.Atoi(c)
		if err != nil {
			t.Fatal(err)
		}
		list[i] = n
	}
	return list
}

func floats(t *testing.T, cells []string) []float64 {
	t.Helper()
	list := make([]float64, len(cells))
	for i, c := range cells {
		n, err := strconv.ParseFloat(c, 64)
		if err != nil {
			t.Fatal(err)
		}
		list[i] = n
	}
	return list
}
