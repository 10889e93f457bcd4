package neck

import (
	"regexp"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
)

func ordinary() *gauge.Gauge { return &gauge.Gauge{Stitches: 22, Rows: 30} }

func reasonsOf(list []report.Notice) string {
	var words []string
	for _, n := range list {
		words = append(words, strings.TrimSpace(string(n.Reason)+" "+n.Field))
	}
	return strings.Join(words, ", ")
}

func TestNotices(t *testing.T) {
	for name, c := range map[string]struct {
		in   Input
		want string
	}{
		"an ordinary neck":              {Input{WidthStitches: new(88)}, ""},
		"a V, and no armhole said":      {Input{WidthStitches: new(88), Shape: ShapeV}, "NECK_IN_ARMHOLE armhole_rows"},
		"a V beside a straight armhole": {Input{WidthStitches: new(88), Shape: ShapeV, ArmholeRows: new(60)}, ""},
		"a back scooped into an armhole": {Input{WidthStitches: new(88), FrontDepthRows: new(56), BackDepthRows: new(50)},
			"NECK_IN_ARMHOLE armhole_rows, NECK_IN_ARMHOLE armhole_rows"},
		"a boat neck":            {Input{WidthStitches: new(88), NeckStitches: new(60), Shape: ShapeBoat}, ""},
		"a large head":           {Input{WidthStitches: new(88), NeckStitches: new(30), HeadCm: new(70.0)}, "NECK_BELOW_HEAD"},
		"a head of a giant":      {Input{WidthStitches: new(88), HeadCm: new(90.0)}, "NECK_BELOW_HEAD"},
		"a band that gives less": {Input{WidthStitches: new(88), NeckStitches: new(30), StretchRatio: new(1.2)}, "NECK_BELOW_HEAD"},
		"and a wider neck":       {Input{WidthStitches: new(88), StretchRatio: new(1.2)}, ""},
		"a toy":                  {Input{WidthStitches: new(26)}, ""},
		"a child born early":     {Input{WidthStitches: new(30), FrontDepthRows: new(8)}, "NECK_BELOW_HEAD"},
		"a toy of a small body":  {Input{WidthStitches: new(88), NeckStitches: new(20), BodyCm: new(20.0)}, ""},
		"as deep behind": {Input{WidthStitches: new(88), FrontDepthRows: new(16), BackDepthRows: new(16)},
			"FRONT_NOT_BELOW_BACK front_depth_rows"},
		"deeper behind":  {Input{WidthStitches: new(88), BackDepthCm: new(9.0)}, "FRONT_NOT_BELOW_BACK front_depth_cm"},
		"a narrow neck":  {Input{WidthStitches: new(130), NeckStitches: new(26)}, "NECK_SHARE_UNUSUAL neck_stitches"},
		"a wide neck":    {Input{WidthStitches: new(88), ShoulderCm: new(10.0)}, "NECK_SHARE_UNUSUAL shoulder_cm"},
		"half a stitch":  {Input{WidthCm: new(40.25), NeckStitches: new(29), Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}}, "HALFWAY width_cm"},
		"half-way necks": {Input{WidthStitches: new(81), NeckCm: new(15.0), Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}}, "HALFWAY neck_cm"},
	} {
		if c.in.Gauge == nil {
			c.in.Gauge = ordinary()
		}
		out, err := PlanNeckline(c.in)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if got := reasonsOf(out.Notices); got != c.want {
			t.Errorf("%s: %q, want %q: %v", name, got, c.want, out.Notices)
		}
	}
}

// A thousand ordinary pullovers, for babies to men: none of them is remarked on.
func TestOrdinaryNecksRaiseNothing(t *testing.T) {
	for _, g := range [][2]float64{{28, 36}, {24, 32}, {22, 30}, {18, 24}, {14, 19}} {
		for width := 24; width <= 46; width++ {
			for _, shape := range []Shape{ShapeRound, ShapeV} {
				for _, method := range []ShoulderMethod{ShoulderMethodSteppedBindOff, ShoulderMethodShortRows} {
					in := Input{Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]}, WidthCm: new(float64(width)), Shape: shape, ShoulderMethod: method,
						NeckCm: new(float64(width) * 0.4)}
					if shape == ShapeV { // which begins beside the armhole
						in.ArmholeRows = new(2 * int(float64(width)*0.45*g[1]/20))
						in.ArmholeSteps = []ArmholeStep{{1, 4, true}, {3, 2, true}, {5, 1, false}, {7, 1, false}}
					}
					out, err := PlanNeckline(in)
					if err != nil {
						t.Fatalf("%+v: %v", in, err)
					}
					for _, n := range out.Notices {
						if n.Reason != gauge.Halfway {
							t.Errorf("%v by %d cm, %d: %s", g, width, shape, n.Description)
						}
					}
				}
			}
		}
	}
}

var remedied = regexp.MustCompile(`(?:a front (\d+) rows deep)|(?:a neck of (\d+) stitches)`)

// What is said to let a head through, does; and a step less does not.
func TestRemediesLetTheHeadThrough(t *testing.T) {
	offered := 0
	for width := 60; width <= 110; width += 2 {
		for head := 50.0; head <= 70; head += 4 {
			in := Input{Gauge: ordinary(), WidthStitches: &width, HeadCm: &head, Shape: Shape(1 + width%4), StretchRatio: new(1.3)}
			if in.Shape != ShapeBoat {
				in.NeckStitches = new(width/3 + (width+width/3)%2)
			}
			out, err := PlanNeckline(in)
			if err != nil {
				t.Fatal(err)
			}
			for _, n := range out.Notices {
				if n.Reason != NeckBelowHead {
					continue
				}
				for _, m := range remedied.FindAllStringSubmatch(n.Description, -1) {
					offered++
					for less, want := range []bool{true, false} {
						again := in
						if m[1] != "" {
							rows, _ := strconv.Atoi(m[1])
							again.FrontDepthRows = new(rows - 2*less)
						} else {
							neck, _ := strconv.Atoi(m[2])
							again.NeckStitches = new(neck - 2*less)
						}
						got, err := PlanNeckline(again)
						if err != nil && want || err == nil && *got.GoesOverHead != want {
							t.Errorf("%q, %d less: %v, %v", n.Description, 2*less, got.StretchedCm, err)
						}
					}
				}
			}
		}
	}
	if offered < 50 {
		t.Errorf("%d remedies: the sweep has shrunk", offered)
	}
}

// What is picked up, by hand: 30 stitches bound off in front and behind and 20 rows of 1/3 cm
// up each side, which are 14.67 stitches of 10/22 cm; 6 rows behind are 4.4.
func TestPickedUpByHand(t *testing.T) {
	in := Input{Gauge: ordinary(), Shape: ShapeSquare, WidthStitches: new(88), NeckStitches: new(30), FrontDepthRows: new(20),
		BackDepthRows: new(6)}
	out, err := PlanNeckline(in)
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range []float64{30 + 2*4.4, 44.0 / 3, 30, 44.0 / 3} {
		knittest.Near(t, "section", out.Sections[i].WantedStitches, want, 1e-9)
	}
	if out.PickedUpStitches != 39+15+30+15 {
		t.Errorf("%d stitches", out.PickedUpStitches)
	}
	knittest.Near(t, "opening", out.OpeningCm, 99*10/22.0, 1e-9)
	knittest.Near(t, "stretched", out.StretchedCm, 1.6*990/22.0, 1e-9)

	in.BandRule = &gauge.CountRule{Multiple: new(4)} // 98.1 wanted: 100, of which the two sides get none
	in.Centre = CentreHeld
	if out, err = PlanNeckline(in); err != nil || out.PickedUpStitches != 100 {
		t.Fatalf("%d stitches, %v", out.PickedUpStitches, err)
	}
	sum := 0
	for _, s := range out.Sections {
		sum += s.Stitches
	}
	if sum != 100 || out.Sections[1].Stitches != out.Sections[3].Stitches ||
		out.Sections[0].LiveStitches != 30 || out.Sections[2].Stitches != 30 {
		t.Errorf("%+v", out.Sections)
	}

	// 120 are 21 more than 99: 4 for each side by its 15 of 69, and the rest behind.
	in.BandRule = &gauge.CountRule{Multiple: new(60)}
	if out, err = PlanNeckline(in); err != nil || out.PickedUpStitches != 120 {
		t.Fatalf("%d stitches, %v", out.PickedUpStitches, err)
	}
	for i, want := range []int{52, 19, 30, 19} {
		if got := out.Sections[i].Stitches; got != want {
			t.Errorf("section %d has %d stitches, want %d", i+1, got, want)
		}
	}
}

// Whose head goes through is known by the width across the shoulders, as the trade's chart
// has it: 79 stitches of 22 to 10 cm are a grown person's, of whom the median is taken and
// not the least (ListBodySizes: boys of 17, 56.9 cm); 25 cm are a child's of 4, whose body is
// 62.5 cm, between 2 years and 5 (48.3 and 52.7 cm for 55 and 68).
func TestHeadByTheWidth(t *testing.T) {
	for width, want := range map[float64]float64{35.9: 56.9, 45: 56.9, 25: 48.3 + 4.4*7.5/13} {
		out, err := PlanNeckline(Input{Gauge: ordinary(), WidthCm: &width})
		if err != nil || out.HeadCm == nil {
			t.Fatal(err, out.HeadCm)
		}
		knittest.Near(t, "head", *out.HeadCm, want, 0.4)
	}
}

// A front whose depth nobody says is deep enough for the head, as far as 7.5 cm let it.
func TestDefaultFrontLetsTheHeadThrough(t *testing.T) {
	for width := 22.0; width <= 46; width++ {
		for _, shape := range []Shape{ShapeRound, ShapeSquare} {
			out, err := PlanNeckline(Input{Gauge: ordinary(), Shape: shape, WidthCm: &width, NeckCm: new(0.42 * width)})
			if err != nil {
				t.Fatal(err)
			}
			if !*out.GoesOverHead || out.Front.DepthCm > 7.5 {
				t.Errorf("%v cm: %s", width, out.Summary())
			}
		}
	}
}
