package solid

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// A maker's hats over the upper ends of the heads they are said to fit (a size table read
// in full): between 0.83 and 0.92, where the ease of -8 % lies at the upper end.
func TestEaseIsOfPublishedHats(t *testing.T) {
	for _, c := range [][2]float64{{33, 30}, {40.5, 33.5}, {46, 42.5}, {53.5, 46.5}, {61, 51}} {
		out, err := PlanCrown(CrownInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, HeadCm: &c[0], StitchRule: &gauge.CountRule{}})
		if err != nil {
			t.Fatal(err)
		}
		if off := out.HatCm/c[1] - 1; off < -0.02 || off > 0.12 {
			t.Errorf("a head of %v cm: %v cm, published %v", c[0], out.HatCm, c[1])
		}
	}
}

// Heads of the growth references and the army's means: the mean of girls and boys.
func TestHeadSizes(t *testing.T) {
	for size, want := range map[HeadSize]float64{HeadSizeMonths3: 40, HeadSizeMonths6: 42.75, HeadSizeYear1: 45.5, HeadSizeYears2: 47.75,
		HeadSizeYears5: 52.2, HeadSizeYears10: 54.1, HeadSizeWoman: 54.6, HeadSizeMan: 56.8} {
		out, err := PlanCrown(CrownInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, HeadSize: size})
		if err != nil {
			t.Fatal(err)
		}
		knittest.Near(t, "head", out.HeadCm, want, 1e-9)
		if baby := size <= HeadSizeYears2; told(out.Notices, BabyCare) != baby {
			t.Errorf("size %d: %v", size, out.Notices)
		}
		if out.Sources()[1].Figure != "head" {
			t.Errorf("size %d has no source", size)
		}
	}
}

// A crown is as many rounds deep as was asked for, an adjusting round counted, where there are
// rounds enough for its decreases.
func TestAskedDepthsAreMet(t *testing.T) {
	asked := 0
	for stitches := 80; stitches <= 111; stitches += knittest.Sweep(1, 3) {
		for rounds := 15; rounds <= 46; rounds += knittest.Sweep(1, 2) {
			for _, shape := range []CrownShape{CrownShapeFlat, CrownShapeRounded} {
				in := CrownInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, HatStitches: &stitches, CrownRounds: &rounds, Shape: shape}
				out, err := PlanCrown(in)
				if err != nil {
					knittest.CheckInputError(t, err)
					continue
				}
				checkCrown(t, in, out)
				if asked++; out.CrownRounds != rounds && rounds > len(out.Rounds) {
					t.Errorf("%d stitches, shape %d: %d rounds, %d asked", stitches, shape, out.CrownRounds, rounds)
				}
			}
		}
	}
	if asked < knittest.Sweep(1_500, 200) {
		t.Errorf("%d crowns: the sweep has shrunk", asked)
	}
}
