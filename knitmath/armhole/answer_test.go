package armhole

import (
	"reflect"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outlinetest"
)

// pullover is a woman's size of common measures.
func pullover() Input {
	return Input{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, ChestCm: new(92.0), AcrossBackCm: new(36.0), ArmholeDepthCm: new(19.5),
		UpperArmCm: new(28.5)}
}

func mustPlan(t *testing.T, in Input) Armhole {
	t.Helper()
	out, err := Plan(in)
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// What is bound off again and again is told once, a decrease just before others with them, and a
// piece that is shaped says on how many stitches it begins.
var (
	lone   = regexp.MustCompile(`Dec 1 st each end of next row: \d+ stitches\.\nWork 1 row even\.\nDec 1 st each end of next row, then every`)
	twice  = regexp.MustCompile(`, (\d+ sts) at beg of next \d+ rows, (\d+ sts) at`)
	begins = regexp.MustCompile(`^Note: the first bind-off is in a right-side row, on (\d+) stitches\.$`)
)

func TestPrintedPieces(t *testing.T) {
	told := 0
	for _, in := range questions() {
		out, err := Plan(in)
		if err != nil {
			continue
		}
		var starts []string
		if m := lone.FindString(strings.Join(out.Directions(), "\n")); m != "" {
			t.Errorf("%+v: %q", in, m)
		}
		for _, d := range out.Directions() {
			for _, m := range twice.FindAllStringSubmatch(d, -1) {
				if m[1] == m[2] {
					t.Errorf("%+v: %q", in, d)
				}
			}
			if m := begins.FindStringSubmatch(d); m != nil {
				starts = append(starts, m[1])
			}
		}
		want := []string{strconv.Itoa(out.Back.StartStitches), strconv.Itoa(out.Front.StartStitches), strconv.Itoa(out.Cap.StartStitches)}
		if len(starts) == 2 { // back and front are told together
			want = want[1:]
		}
		if told++; !slices.Equal(starts, want) {
			t.Errorf("%+v: %v, want %v", in, starts, want)
		}
	}
	if told < 100 {
		t.Errorf("%d are told: the sweep has shrunk", told)
	}
}

// Counts by hand: (92 + 5)/2 cm at 2.2 are 106.7, 107 stitches; 36 cm are 79.2, 79, so that
// 14 go at each edge and 7 of them at once; 19.5 cm at 3 are 58.5, 58 rows; 33.5 cm are
// 73.7, 74 stitches. A top of 3 inches is 16.76, 17, one more for the even sleeve.
func TestCountsByHand(t *testing.T) {
	out := mustPlan(t, pullover())
	if out.Back.StartStitches != 107 || out.Back.EndStitches != 79 || out.UnderarmStitches != 7 || out.Back.HeightRows != 58 ||
		out.Cap.StartStitches != 74 || out.Cap.EndStitches != 18 || !reflect.DeepEqual(out.Front, out.Back) {
		t.Errorf("%+v", out)
	}
	if out.CapExcessPercent < 1.5 || out.CapExcessPercent > 3.5 {
		t.Errorf("%v %% longer, wanted 2.5", out.CapExcessPercent)
	}
}

// Words over the sweep: number and grammar, nothing written twice.
var odd = regexp.MustCompile(`\b1 (stitches|rows|sts|times)\b|\b(0|[2-9]|\d\d+) (stitch|row|st)\b|  |, \.|NaN|-\d`)

func TestWords(t *testing.T) {
	for i, in := range questions() {
		if i%7 != 0 {
			continue
		}
		in.DisplayUnit = measure.DisplayUnit(i % 3)
		out, err := Plan(in)
		if err != nil {
			if odd.MatchString(strings.ReplaceAll(err.Error(), "0 to 5 %", "x")) {
				t.Errorf("%q", err)
			}
			continue
		}
		lines := append(out.Directions(), out.Summary())
		for _, n := range out.Notices {
			lines = append(lines, n.Description)
		}
		for _, l := range lines {
			if m := odd.FindString(l); m != "" {
				t.Errorf("%q: %q", m, l)
			}
		}
		if left := strconv.Itoa(out.Cap.EndStitches); !slices.Contains(out.Directions(), "BO remaining "+left+" stitches.") {
			t.Errorf("%q", out.Directions())
		}
		if len(out.Sources()) < 7 {
			t.Error("sources are missing")
		}
		if out.Outline != nil {
			outlinetest.CheckFrame(t, out.Outline)
		}
	}
}

func TestNotices(t *testing.T) {
	in := pullover()
	if out := mustPlan(t, in); len(out.Notices) != 0 {
		t.Errorf("an ordinary one: %+v", out.Notices)
	}
	in.UnderarmStitches = new(4) // 1.8 cm
	if out := mustPlan(t, in); !hasNotice(out, UnderarmNarrow) {
		t.Errorf("%+v", out.Notices)
	}
	in = pullover()
	in.UpperArmCm = new(18.0)
	if out := mustPlan(t, in); !hasNotice(out, CapUnlikeRule) {
		t.Errorf("%v: %+v", out.Cap.HeightCm, out.Notices)
	}
}

// A child's cap is judged as a grown person's: in stitches and rows the same, at half the size
// and twice the gauge it is remarked on alike.
func TestCapsAreJudgedByTheirSize(t *testing.T) {
	remarked := 0
	for sleeve := 40; sleeve <= 92; sleeve += 2 {
		var unlike [2]bool
		for i, scale := range []float64{1, 2} {
			out, err := Plan(Input{Gauge: &gauge.Gauge{Stitches: 20 * scale, Rows: 28 * scale}, BackStitches: new(100),
				AcrossBackStitches: new(76), ArmholeDepthRows: new(56), SleeveStitches: &sleeve, CapTopStitches: new(14),
				UnderarmStitches: new(6)})
			if err != nil {
				knittest.CheckInputError(t, err)
				continue
			}
			unlike[i] = hasNotice(out, CapUnlikeRule)
		}
		if unlike[0] != unlike[1] {
			t.Errorf("a sleeve of %d: %v", sleeve, unlike)
		}
		if unlike[0] {
			remarked++
		}
	}
	if remarked < 3 {
		t.Errorf("%d remarked on", remarked)
	}
}

func TestFaults(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(in *Input)
		want   []string
	}{
		{"nothing", func(in *Input) { *in = Input{} }, []string{"gauge REQUIRED", "chest_cm REQUIRED", "back_stitches REQUIRED",
			"across_back_cm REQUIRED", "across_back_stitches REQUIRED", "armhole_depth_cm REQUIRED", "armhole_depth_rows REQUIRED",
			"upper_arm_cm REQUIRED", "sleeve_stitches REQUIRED"}},
		{"both widths", func(in *Input) { in.BackStitches = new(100) }, []string{"chest_cm CONTRADICTORY", "back_stitches CONTRADICTORY"}},
		{"ease of counts", func(in *Input) { in.ChestCm, in.BackStitches, in.ChestEaseCm = nil, new(100), new(5.0) },
			[]string{"chest_ease_cm CONTRADICTORY"}},
		{"rules of counts", func(in *Input) {
			in.ChestCm, in.BackStitches, in.StitchRule = nil, new(100), &gauge.CountRule{}
			in.UpperArmCm, in.SleeveStitches, in.SleeveRule = nil, new(70), &gauge.CountRule{}
		}, []string{"stitch_rule CONTRADICTORY", "sleeve_rule CONTRADICTORY"}},
		{"as wide across", func(in *Input) { in.AcrossBackCm = new(48.6) }, []string{"across_back_cm INFEASIBLE", "chest_cm INFEASIBLE"}},
		{"an odd difference", func(in *Input) {
			in.AcrossBackCm, in.AcrossBackStitches, in.ChestCm, in.BackStitches = nil, new(78), nil, new(107)
		}, []string{"across_back_stitches INFEASIBLE"}},
		{"an odd front", func(in *Input) { in.AcrossFrontStitches, in.FrontStitches = new(70), new(107) },
			[]string{"across_front_stitches INFEASIBLE"}},
		{"an odd top", func(in *Input) { in.CapTopStitches, in.UpperArmCm, in.SleeveStitches = new(17), nil, new(74) },
			[]string{"cap_top_stitches INFEASIBLE"}},
		{"a wide top", func(in *Input) { in.CapTopStitches = new(74) }, []string{"cap_top_stitches INFEASIBLE"}},
		{"a wide underarm", func(in *Input) { in.UnderarmStitches = new(15) }, []string{"underarm_stitches INFEASIBLE"}},
		{"too shallow", func(in *Input) { in.ArmholeDepthCm = new(1.0) }, []string{"armhole_depth_cm INFEASIBLE", "gauge INFEASIBLE"}},
		{"shaped too long", func(in *Input) { in.ShapingRows = new(60) }, []string{"shaping_rows INFEASIBLE"}},
		{"decreases in too few rows", func(in *Input) { in.ShapingRows, in.LargestGroupStitches = new(10), new(1) },
			[]string{"shaping_rows INFEASIBLE", "largest_group_stitches INFEASIBLE"}},
		{"a rule and a height", func(in *Input) { in.CapHeightRule, in.CapHeightRows = CapHeightRuleFree, new(40) },
			[]string{"cap_height_rule CONTRADICTORY"}},
		{"a rule of nothing", func(in *Input) { in.ArmholeDepthCm, in.CapHeightRule = new(8.0), CapHeightRuleLessByChest },
			[]string{"cap_height_rule INFEASIBLE", "armhole_depth_cm INFEASIBLE"}},
		{"an arm too thick", func(in *Input) { in.UpperArmCm = new(60.0) }, []string{"upper_arm_cm INFEASIBLE", "armhole_depth_cm INFEASIBLE"}},
		{"a cap too low", func(in *Input) { in.CapHeightRows = new(10) },
			[]string{"upper_arm_cm INFEASIBLE", "armhole_depth_cm INFEASIBLE", "cap_height_rows INFEASIBLE"}},
		{"unknown", func(in *Input) { in.CapHeightRule, in.DisplayUnit = 5, 3 },
			[]string{"cap_height_rule UNKNOWN_VALUE", "display_unit UNKNOWN_VALUE"}},
	} {
		in := pullover()
		c.change(&in)
		_, err := Plan(in)
		t.Run(c.name, func(t *testing.T) { knittest.WantViolations(t, err, c.want...) })
	}
}

func TestCost(t *testing.T) {
	widest := Input{Gauge: &gauge.Gauge{Stitches: 60, Rows: 80}, BackStitches: new(MaxWidth), AcrossBackStitches: new(300),
		ArmholeDepthRows: new(MaxDepth), SleeveStitches: new(MaxWidth)}
	if got := widest.Cost(); got > cost.Limit {
		t.Errorf("the widest costs %d", got)
	}
	if got := (Input{}).Cost(); got < 1 {
		t.Errorf("nothing costs %d", got)
	}
}

// FuzzPlan: any question gives an answer whose cap fits, or an error; no float that is not
// finite.
func FuzzPlan(f *testing.F) {
	f.Add(107, 79, 59, 74, 7, 16, 2.5, uint8(0), 2.2, 3.0)
	f.Add(40, 38, 200, 12, 1, 1, 0.0, uint8(3), 1.0, 4.0)
	f.Fuzz(func(t *testing.T, back, across, depth, sleeve, underarm, top int, excess float64, rule uint8, st, rw float64) {
		in := Input{Gauge: &gauge.Gauge{Stitches: st * 10, Rows: rw * 10}, BackStitches: &back, AcrossBackStitches: &across,
			ArmholeDepthRows: &depth, SleeveStitches: &sleeve, UnderarmStitches: &underarm, CapTopStitches: &top,
			CapExcessPercent: &excess, CapHeightRule: CapHeightRule(rule % 5), WithOutline: true}
		if in.Cost() > cost.Limit {
			return
		}
		out, err := Plan(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, out)
		if out.CapExcessPercent < 0 || out.CapExcessPercent > 5 || out.Back.EndStitches != across || out.Cap.EndStitches != top {
			t.Fatalf("%+v", out)
		}
		_, _ = out.Summary(), out.Directions()
	})
}
