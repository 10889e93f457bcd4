package armhole

import (
	"math/rand/v2"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

var sleeveOffered = regexp.MustCompile(`a sleeve of (\d+) stitches`)

// ruledArm is a common garment whose sleeve a repeat binds and whose arm is too wide or too narrow, by
// a number.
func ruledArm(seed uint64) Input {
	r := rand.New(rand.NewPCG(seed, 59))
	who := charted[r.IntN(len(charted))]
	g := [][2]float64{{22, 30}, {18, 24}, {28, 36}, {24, 32}, {20, 28}}[r.IntN(5)]
	return Input{Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]}, ChestCm: &who[0], AcrossBackCm: &who[1], ArmholeDepthCm: &who[2],
		UpperArmCm: new(who[3] * (0.6 + 1.2*r.Float64())),
		SleeveRule: &gauge.CountRule{Multiple: new(2 + 2*r.IntN(4)), Remainder: new(r.IntN(4))}}
}

// A sleeve that is said to do is a count of the caller's rule, and does. Of 761 offers 359 were none.
func TestOfferedSleevesKeepTheRule(t *testing.T) {
	offered, refused := 0, 0
	for seed := range knittest.Sweep(2_000, 200) {
		in := ruledArm(uint64(seed))
		_, err := Plan(in)
		if err == nil {
			continue
		}
		refused++
		m := sleeveOffered.FindStringSubmatch(violations(err)[0].Detail)
		if m == nil {
			continue
		}
		offered++
		n, _ := strconv.Atoi(m[1])
		if multiple, rest := *in.SleeveRule.Multiple, *in.SleeveRule.Remainder; (n-rest)%multiple != 0 {
			t.Errorf("question %d: %d stitches are no multiple of %d and %d", seed, n, multiple, rest)
		}
		counted := in
		counted.UpperArmCm, counted.SleeveRule, counted.SleeveStitches = nil, nil, &n
		if _, err := Plan(counted); err != nil {
			t.Errorf("question %d: %d stitches: %v", seed, n, err)
		}
	}
	t.Logf("%d refused, %d of them offered a sleeve", refused, offered)
	if offered < knittest.Sweep(200, 20) || 2*offered < refused {
		t.Errorf("%d refused, %d of them offered a sleeve", refused, offered)
	}
}

// One stitch is no plural, and a rule is told the most alone that it may come to.
func TestRefusalsInTheSingular(t *testing.T) {
	for ease, want := range map[float64]string{-28: "comes to 1 stitch; from ", -27.5: "comes to 2 stitches; from "} {
		_, err := Plan(Input{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, ChestCm: new(92.0), AcrossBackCm: new(36.0), ArmholeDepthCm: new(19.5),
			UpperArmCm: new(28.5), SleeveEaseCm: &ease})
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%v cm: %v", ease, err)
		}
	}
	_, err := Plan(Input{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, ChestCm: new(92.0), AcrossBackCm: new(45.0), ArmholeDepthCm: new(19.5),
		UpperArmCm: new(28.5), UnderarmRule: &gauge.CountRule{Multiple: new(50)}})
	if err == nil || !strings.Contains(err.Error(), "allows no count up to ") {
		t.Error(err)
	}
}
