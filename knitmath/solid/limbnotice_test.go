package solid

import (
	"regexp"
	"strconv"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
)

var roundWith = regexp.MustCompile(`; with (\d+) stitches the limb has a round one`)

// A ring is said not to be round just where its drawing is not, to 0.03 of its radius; but for 1 in 200, near the point of a cone or
// across a bend of a profile, which look otherwise unrolled, or from the own middle of the ring. With as many stitches as are offered,
// asked as they are printed, it is round.
func TestUnroundRings(t *testing.T) {
	rings, said, offered, other := 0, 0, 0, 0
	for name, in := range roundBodies() {
		for _, g := range []gauge.Gauge{{Stitches: 20, Rows: 20}, {Stitches: 22, Rows: 30}, {Stitches: 20, Rows: 40}} {
			in.Gauge, in.Limbs = &g, nil
			whole, err := PlanSolid(in)
			if err != nil {
				t.Fatal(err)
			}
			for n := MinLimbStitches; n <= 20; n++ {
				for place := 0; place < 27; place += knittest.Sweep(1, 4) {
					in.Limbs = []LimbInput{{n, (0.1 + 0.1*float64(place/3)) * whole.MeridianCm, [3]float64{0, 40, 200}[place%3]},
						{12, 0.5 * whole.MeridianCm, 120}}
					out, err := PlanSolid(in)
					if err != nil {
						continue
					}
					knittest.CheckNotices(t, "PlanSolid", out.Notices)
					notice := noticeAt(out.Notices, "limbs[0].stitches")
					least, greatest := flat(out, out.Limbs[0]).radii()
					if notice == nil && (least < 0.77 || greatest > 1.29) || notice != nil && least > 0.83 && greatest < 1.21 {
						other++
						t.Logf("%s, %v stitches to %v rows, %d stitches: from %v to %v: %v", name, g.Stitches, g.Rows, n, least, greatest, notice)
					}
					rings++
					if notice == nil {
						continue
					}
					said++
					if with := roundWith.FindStringSubmatch(notice.Description); with != nil {
						offered++
						in.Limbs[0].Stitches, _ = strconv.Atoi(with[1])
						if again, err := PlanSolid(in); err != nil || noticeAt(again.Notices, "limbs[0].stitches") != nil {
							t.Errorf("%s, %d stitches: %v, but: %v", name, n, notice.Description, err)
						}
					}
				}
			}
		}
	}
	t.Logf("of %d rings %d are not round, for %d a number of stitches is offered; %d look otherwise", rings, said, offered, other)
	if other*200 > rings || said < knittest.Sweep(150, 30) || offered < said*9/10 {
		t.Error("more look otherwise, or fewer are said and offered")
	}
}

// noticeAt is the one on a ring at a field.
func noticeAt(notices []report.Notice, field string) *report.Notice {
	for _, n := range notices {
		if n.Reason == LimbUnround && n.Field == field {
			return &n
		}
	}
	return nil
}
