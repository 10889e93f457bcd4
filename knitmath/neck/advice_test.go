package neck

import (
	"cmp"
	"errors"
	"math/rand/v2"
	"regexp"
	"strconv"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/knittest"
)

// farOff is a question that is more often refused than not, by a number: odd remainders,
// middles and slopes too wide, depths too small.
func farOff(seed uint64) Input {
	r := rand.New(rand.NewPCG(seed, 53))
	some := func(low, high int) *int {
		if r.IntN(3) > 0 {
			return nil
		}
		return new(low + r.IntN(high-low+1))
	}
	in := Input{Gauge: ordinary(), Shape: Shape(r.IntN(5)), WidthStitches: new(20 + r.IntN(100)), NeckStitches: some(1, 120),
		FrontDepthRows: some(0, 60), BackDepthRows: some(0, 8), ShoulderSlopeRows: some(0, 80), EdgeStitches: some(1, 6),
		FrontWidthStitches: some(10, 130)}
	if in.Shape <= ShapeV {
		in.FrontCentreStitches, in.BackCentreStitches = some(0, 40), some(0, 40)
	}
	if in.NeckStitches == nil {
		in.ShoulderStitches = some(1, 60)
	}
	if r.IntN(3) == 0 {
		in.ShoulderMethod = ShoulderMethodShortRows
	}
	return in
}

// An advice is what a refusal says, and the field that it is of; of none its own.
type advice struct {
	words *regexp.Regexp
	field string
}

var advices = []advice{
	{regexp.MustCompile(`a neck of (\d+) does`), "neck_stitches"},
	{regexp.MustCompile(`does, or one of (\d+)`), "neck_stitches"},
	{regexp.MustCompile(`a neck of at most (\d+) does`), "neck_stitches"},
	{regexp.MustCompile(`each may have at most (\d+)`), "shoulder_stitches"},
	{regexp.MustCompile(`; (\d+) and \d+ are the next`), ""},
	{regexp.MustCompile(`; \d+ and (\d+) are the next`), ""},
	{regexp.MustCompile(`; (\d+) is the next`), ""},
	{regexp.MustCompile(`a depth of (\d+) rows is (?:enough|the least)`), ""},
	{regexp.MustCompile(`need a depth of (\d+) rows`), ""},
	{regexp.MustCompile(`it can slope by (\d+) rows`), ""},
	{regexp.MustCompile(`at once, without a slope()`), ""},
	{regexp.MustCompile(`leave no neck; at least (\d+) do`), ""},
	{regexp.MustCompile(`at most (\d+) can be`), ""},
}

// kind is a refusal without its numbers.
func kind(v fault.Violation) string {
	return v.Field + regexp.MustCompile(`[0-9.]+.*`).ReplaceAllString(v.Detail, "")
}

func firstViolation(err error) fault.Violation {
	var in *fault.InputError
	errors.As(err, &in)
	return in.Violations[0]
}

// with is the question with another count in a field.
func (in Input) with(field string, n int) Input {
	for name, to := range map[string]**int{"neck_stitches": &in.NeckStitches, "width_stitches": &in.WidthStitches,
		"shoulder_stitches": &in.ShoulderStitches, "front_depth_rows": &in.FrontDepthRows, "back_depth_rows": &in.BackDepthRows,
		"front_centre_stitches": &in.FrontCentreStitches, "back_centre_stitches": &in.BackCentreStitches,
		"shoulder_slope_rows": &in.ShoulderSlopeRows, "front_width_stitches": &in.FrontWidthStitches} {
		if name == field {
			*to = &n
		}
	}
	if field == "neck_stitches" {
		in.ShoulderStitches = nil
	}
	return in
}

// What a refusal says can be is not refused for the same again, and more than half of what is
// far off is told.
func TestAdviceIsTaken(t *testing.T) {
	refused, told := 0, 0
	nothing := map[string]int{}
	for seed := range knittest.Sweep(6_000, 600) {
		in := farOff(uint64(seed))
		_, err := PlanNeckline(in)
		if err == nil {
			continue
		}
		knittest.CheckInputError(t, err)
		refused++
		v, some := firstViolation(err), false
		for _, a := range advices {
			m := a.words.FindStringSubmatch(v.Detail)
			if m == nil {
				continue
			}
			some = true
			n, _ := strconv.Atoi(m[1])
			again := in.with(cmp.Or(a.field, v.Field), n)
			if _, other := PlanNeckline(again); other != nil && kind(firstViolation(other)) == kind(v) {
				t.Errorf("question %d: %v\nasked again with %s: %v", seed, v, m[0], firstViolation(other))
			}
		}
		if some {
			told++
		} else {
			nothing[kind(v)]++
		}
	}
	t.Logf("%d refused, %d of them told what can be; not told: %v", refused, told, nothing)
	if 2*told < refused || refused < knittest.Sweep(1_500, 150) {
		t.Errorf("%d refused, %d of them told what can be", refused, told)
	}
}
