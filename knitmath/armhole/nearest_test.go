package armhole

import (
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// Bodies of babies to the widest, all asked with a cap of free height. As cap_excess_percent has it,
// its edge is within a quarter of a percent of what is wanted, or within three quarters and the cap is a
// bell of three runs at most, or no cap of a given height is nearer by more than a quarter: what is no
// bell counts as half a percent farther off, and so does what is unlike any rule, a cap without
// bind-offs towards its top as a quarter. Of what is taken within three quarters the check is looser than of
// the rest: that a nearer cap is not to be had is not asked there.
func TestNearestCapIsTaken(t *testing.T) {
	asked, farther, plain := 0, 0, 0
	for i, in := range freeCaps() {
		if i%knittest.Sweep(1, 5) != 0 {
			continue
		}
		out, err := Plan(in)
		if err != nil {
			continue
		}
		asked++
		off := math.Abs(out.CapExcessPercent - DefaultExcess)
		best, at := nearestOfHeights(in, out.Back.HeightRows, off <= nearEnough)
		if off += unlike(out); off <= easyEnough && out.Cap.Effort <= easy && unlike(out) == 0 {
			plain++
			continue
		}
		if off > goodEnough && off > best+goodEnough {
			farther++
			t.Logf("%v chest %v arm %v: %.2f of %d rows, %.2f of %d", *in.Gauge, *in.ChestCm, *in.UpperArmCm, off, out.Cap.HeightRows, best, at)
		}
	}
	t.Logf("%d asked, %d easy, %d farther off than need be", asked, plain, farther)
	if asked < knittest.Sweep(40, 8) || farther > 0 {
		t.Errorf("%d of %d caps are farther off than need be", farther, asked)
	}
	// 3.28 % where 2.5 % were asked, and 2.71 % was to be had.
	if out := mustPlan(t, pullover()); math.Abs(out.CapExcessPercent-DefaultExcess) > goodEnough {
		t.Errorf("%v %%", out.CapExcessPercent)
	}
}

// nearestOfHeights is the cap of a given height that comes nearest, and its rows; with decreases on
// wrong-side rows only where a free one need not do without.
func nearestOfHeights(in Input, most int, without bool) (best float64, at int) {
	best = math.Inf(1)
	for rows := leastCapRows; rows <= most; rows += 2 {
		in.CapHeightRows = &rows
		other, err := Plan(in)
		if err != nil || without && everyRow(other.sew.top.plan) {
			continue
		}
		if off := math.Abs(other.CapExcessPercent-DefaultExcess) + unlike(other); off < best {
			best, at = off, rows
		}
	}
	return best, at
}

// unlike is what a cap's form weighs, in percent of its edge.
func unlike(out Armhole) float64 {
	weight := 0.0
	if !out.sew.top.wellFormed() {
		weight += ofForm
	}
	if out.sew.top.standsUpright() {
		weight += ofForm
	}
	if !out.sew.top.rounded() {
		weight += ofRound
	}
	if out.set.unlikeRule(out.Cap.HeightRows) != 0 {
		weight += ofForm
	}
	return weight
}

// everyRow reports whether a plan decreases on a wrong-side row.
func everyRow(p curve.Plan) bool {
	return slices.ContainsFunc(p.Right, func(s curve.Step) bool { return s.Kind == curve.KindDecrease && s.RowNumber%2 == 0 })
}

func freeCaps() []Input {
	var list []Input
	for _, g := range [][2]float64{{22, 30}, {18, 24}, {28, 36}, {14, 20}, {24, 40}} {
		for i := range 10 {
			chest := 50 + 10*float64(i)
			list = append(list, Input{Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]}, ChestCm: &chest,
				AcrossBackCm: new(chest * (0.37 + 0.03*float64(i%3))), ArmholeDepthCm: new(7 + chest*0.13),
				UpperArmCm: new(chest * (0.28 + 0.03*float64(i%3)))})
		}
	}
	return list
}

// Arms, depths, backs and caps so far off that no cap fits, with every rule of its height: the
// refusal says what would do. LESS_BY_CHEST and LESS_TOP said nothing, nor did one in fifteen
// of the others.
func TestRefusalsSayWhatWouldDo(t *testing.T) {
	refused := 0
	for i, in := range freeCaps() {
		if i%knittest.Sweep(1, 5) != 0 {
			continue
		}
		for n := range 5 * 4 * 3 {
			far := in
			far.CapHeightRule = CapHeightRule(n % 5)
			share := []float64{0.5, 0.7, 1.5, 2}[n/5%4]
			switch n / 20 {
			case 0:
				far.UpperArmCm = new(min(*in.UpperArmCm*share, MaxWidth/in.Gauge.Stitches*10-DefaultEase-1))
			case 1:
				far.ArmholeDepthCm = new(min(*in.ArmholeDepthCm*share, 139/in.Gauge.Rows*10))
			default:
				far.CapHeightRule, far.CapHeightCm = 0, new(*in.ArmholeDepthCm*share/2)
			}
			if _, err := Plan(far); err != nil {
				refused++
				if !strings.Contains(err.Error(), " would do") {
					t.Errorf("%d: chest %v, %v: %v", n, *in.ChestCm, *in.Gauge, err)
				}
			}
		}
	}
	t.Logf("%d refused", refused)
	if refused < knittest.Sweep(1000, 150) {
		t.Errorf("%d refused", refused)
	}
}

var topAdvised = regexp.MustCompile(`; (\d+) would do|a top of (\d+) stitches`)

// A top that is said to do, does; a top that leaves nothing to shape is refused with one.
func TestAdvisedTopsAreHad(t *testing.T) {
	advised, refused := 0, 0
	for top := 30; top <= 120; top += 2 {
		in := pullover()
		in.CapTopStitches = &top
		_, err := Plan(in)
		if err == nil {
			continue
		}
		refused++
		for _, m := range topAdvised.FindAllStringSubmatch(err.Error(), -1) {
			advised++
			n, _ := strconv.Atoi(m[1] + m[2])
			again := in
			again.CapTopStitches = &n
			if _, err := Plan(again); err != nil {
				t.Errorf("%d asked, %d advised: %v", top, n, err)
			}
		}
		if top >= 74 && !strings.Contains(err.Error(), " would do") {
			t.Errorf("%d asked: %v", top, err)
		}
	}
	if advised < refused-1 || refused < 20 {
		t.Errorf("%d tops advised, %d refused", advised, refused)
	}
}
