package armhole

import (
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// tight is a common garment whose armholes are to be shaped over too few rows, or by bind-offs too
// narrow, near to what would do and far from it, by a number.
func tight(seed uint64) Input {
	r := rand.New(rand.NewPCG(seed, 41))
	who := charted[r.IntN(len(charted))]
	g := [][2]float64{{22, 30}, {18, 24}, {28, 36}, {14, 20}, {20, 28}}[r.IntN(5)]
	in := Input{Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]}, ChestCm: &who[0], AcrossBackCm: new(who[1] * (0.8 + 0.2*r.Float64())),
		ArmholeDepthCm: new(who[2] * (0.9 + 0.4*r.Float64())), UpperArmCm: &who[3]}
	if r.IntN(3) == 0 {
		in.Style = StyleSaddle
	}
	if r.IntN(4) > 0 {
		in.ShapingRows = new(4 + r.IntN(24))
	}
	if r.IntN(3) > 0 || in.ShapingRows == nil {
		in.LargestGroupStitches = new(1 + r.IntN(4))
	}
	switch r.IntN(4) {
	case 0:
		in.CapHeightRule = CapHeightRule(r.IntN(5))
	case 1:
		in.CapHeightRows = new(int(who[2] / 10 * g[1] * (0.5 + 0.4*r.Float64())))
	}
	return in
}

// What would do where armholes are too steep is asked as it is printed: with the cap, not the
// armholes alone. Of 8 shapings offered 6 were refused for the cap.
func TestTightArmholesAreToldWhatWouldDo(t *testing.T) {
	refused, told, taken := 0, 0, 0
	for seed := range knittest.Sweep(4_000, 400) {
		in := tight(uint64(seed))
		_, err := Plan(in)
		if err == nil || !strings.HasPrefix(violations(err)[0].Detail, "an edge loses ") {
			continue
		}
		knittest.CheckInputError(t, err)
		refused++
		asked := asAdvised(in, violations(err)[0])
		if len(asked) > 0 {
			told++
		}
		for words, again := range asked {
			taken++
			if _, other := Plan(again); other != nil {
				t.Errorf("question %d: %s\nasked again with %s: %v", seed, violations(err)[0].Detail, words, violations(other)[0])
			}
		}
	}
	t.Logf("%d refused, %d of them told what would do, %d asked again", refused, told, taken)
	if 10*told < 9*refused || refused < knittest.Sweep(100, 10) {
		t.Errorf("%d refused, %d of them told what would do", refused, told)
	}
}
