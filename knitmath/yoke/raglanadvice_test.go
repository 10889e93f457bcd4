package yoke

import (
	"encoding/json"
	"errors"
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// randomRaglan is any raglan there may be, with a fixed seed.
func randomRaglan(r *rand.Rand) RaglanInput {
	in := RaglanInput{Gauge: &gauge.Gauge{Stitches: float64(12 + r.IntN(25)), Rows: float64(16 + r.IntN(40))},
		BodyStitches: 10 + r.IntN(400), LineFrom: RaglanLineFrom(r.IntN(4)), RoundChoice: RoundChoice(r.IntN(3))}
	part := func(share float64, least int) *int {
		if r.IntN(2) == 0 {
			return nil
		}
		return new(least + int(2*share*r.Float64()*float64(in.BodyStitches)))
	}
	in.SleeveStitches, in.UnderarmStitches, in.SleeveTopStitches = part(0.33, MinSleeve), part(0.08, 0), part(0.06, 0)
	in.FrontNeckStitches, in.BackNeckStitches = part(0.15, MinRaglanNeck), part(0.15, MinRaglanNeck)
	if r.IntN(2) == 0 {
		in.LineStitches = new(r.IntN(12))
	}
	switch r.IntN(3) {
	case 0:
		in.DepthRounds = new(1 + r.IntN(90))
	case 1:
		in.DepthCm = new(float64(1+r.IntN(280)) / 10)
	}
	return in
}

// What a refusal of a raglan says would do has been asked, and does: by itself, or where several
// fields are refused and no one of them is enough, all that are named together.
func TestAdviceOnRaglansDoes(t *testing.T) {
	r := rand.New(rand.NewPCG(9, 31))
	refusals, helped, together := 0, 0, 0
	for range knittest.Sweep(4_000, 500) {
		in := randomRaglan(r)
		_, err := PlanRaglan(in)
		var refused *fault.InputError
		if !errors.As(err, &refused) {
			continue
		}
		refusals++
		all, some, alone := in, false, true
		for _, v := range refused.Violations {
			text := strings.TrimSuffix(v.Detail, " together with the others")
			if !strings.HasSuffix(text, " would do") {
				continue
			}
			some = true
			text = text[strings.LastIndex(text, "; ")+2:]
			for _, word := range strings.Split(strings.TrimSuffix(text, " would do"), " or ") {
				one := in
				setRaglan(t, &one, v.Field, word)
				setRaglan(t, &all, v.Field, word)
				if _, err := PlanRaglan(one); err != nil {
					alone = false
				}
			}
		}
		if !some {
			continue
		}
		helped++
		if !alone {
			together++
			if _, err := PlanRaglan(all); err != nil {
				t.Fatalf("%+v: %v; together: %v", in, refused, err)
			}
		}
	}
	t.Logf("of %d refusals %d say what would do, %d of them in several fields together", refusals, helped, together)
	if 3*helped < refusals || together < knittest.Sweep(20, 2) {
		t.Errorf("of %d refusals %d say what would do", refusals, helped)
	}
}

// setRaglan sets a field to what is said to do there.
func setRaglan(t *testing.T, in *RaglanInput, field, value string) {
	t.Helper()
	var number float64
	value = strings.TrimSuffix(value, " cm")
	if err := json.Unmarshal([]byte(value), &number); err != nil {
		t.Fatalf("%s: %q: %v", field, value, err)
	}
	count := int(number)
	switch field {
	case "depth_cm":
		in.DepthCm = &number
	case "depth_rounds":
		in.DepthRounds = &count
	case "sleeve_stitches":
		in.SleeveStitches = &count
	case "underarm_stitches":
		in.UnderarmStitches = &count
	case "line_stitches":
		in.LineStitches = &count
	case "front_neck_stitches":
		in.FrontNeckStitches = &count
	case "back_neck_stitches":
		in.BackNeckStitches = &count
	case "sleeve_top_stitches":
		in.SleeveTopStitches = &count
	default:
		t.Fatalf("advice at %s", field)
	}
}
