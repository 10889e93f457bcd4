package yoke

import (
	"math/rand/v2"
	"regexp"
	"strconv"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
)

var levelOffer = regexp.MustCompile(`make it at most ([\d.]+) (cm|in) \((\d+) rounds?\) deep`)

// TestLevelDepthsHoldAsPrinted: a yoke that comes up at the throat does so no more at the depth that its notice names, asked for
// in the length or in the rounds that are printed; a round deeper it does.
func TestLevelDepthsHoldAsPrinted(t *testing.T) {
	r := rand.New(rand.NewPCG(26, 11))
	told := 0
	for range knittest.Sweep(3000, 400) {
		st := 12 + r.Float64()*24
		rows := st * (1.1 + r.Float64()*1.1)
		body := 2 * (int(st*(4+r.Float64()*8)) / 2)
		in := CircularInput{Gauge: &gauge.Gauge{Stitches: st, Rows: rows}, BodyStitches: body, NeckCm: new(float64(body) / st * 4.4),
			DepthCm:     new(float64(body) / st * 5 * (0.56 + r.Float64()*0.1)),
			DisplayUnit: measure.DisplayUnit(r.IntN(2) * int(measure.DisplayUnitIn))}
		level := func(in CircularInput) (string, bool) {
			out, err := PlanCircularYoke(in)
			for _, n := range out.Notices {
				if n.Reason == FrontAsHighAsBack {
					return n.Description, true
				}
			}
			return "", err != nil
		}
		said, is := level(in)
		if !is || said == "" {
			continue
		}
		m := levelOffer.FindStringSubmatch(said)
		if m == nil {
			t.Fatalf("%q", said)
		}
		told++
		cm, _ := strconv.ParseFloat(m[1], 64)
		if m[2] == "in" {
			cm *= measure.CmPerInch
		}
		rounds, _ := strconv.Atoi(m[3])
		in.DepthCm = &cm
		if again, is := level(in); is {
			t.Errorf("%+v: %q, and then %q", in, said, again)
		}
		in.DepthCm, in.DepthRounds = nil, &rounds
		if again, is := level(in); is {
			t.Errorf("%+v: %q, and then %q", in, said, again)
		}
		rounds++
		if _, is := level(in); !is {
			t.Errorf("%+v: %q, but a round more is no higher", in, said)
		}
	}
	if told < knittest.Sweep(300, 40) {
		t.Errorf("only %d were told", told)
	}
}
