package armhole

import (
	"errors"
	"math/rand/v2"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// farOff is a question that is more often refused than not, by a number: measures that do not
// go together, odd remainders, tops and underarms too wide.
func farOff(seed uint64) Input {
	r := rand.New(rand.NewPCG(seed, 37))
	some := func(low, high int) *int {
		if r.IntN(4) > 0 {
			return nil
		}
		return new(low + r.IntN(high-low+1))
	}
	g := [][2]float64{{22, 30}, {18, 24}, {28, 36}, {14, 20}}[r.IntN(4)]
	in := Input{Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]}, Style: Style(r.IntN(5)), BackStitches: new(40 + r.IntN(120)),
		FrontStitches: some(40, 160), ArmholeDepthRows: new(2 * (8 + r.IntN(40))), UnderarmStitches: some(1, 60)}
	if in.Style == StyleDrop {
		in.UnderarmStitches = nil
	}
	if in.Style.straight() {
		in.SleeveStitches = some(20, 120)
		return in
	}
	in.AcrossBackStitches = new(max(1, *in.BackStitches*(5+r.IntN(5))/10))
	in.SleeveStitches = new(20 + r.IntN(120))
	in.CapTopStitches, in.ShapingRows, in.LargestGroupStitches = some(4, 60), some(4, 60), some(1, 12)
	if in.AcrossFrontStitches = some(10, 100); in.Style == StyleSaddle {
		in.NeckStitches = some(1, 60)
	}
	switch r.IntN(3) {
	case 0:
		in.CapHeightRows = new(6 + r.IntN(60))
	case 1:
		in.CapHeightRule = CapHeightRule(r.IntN(5))
	}
	return in
}

// An advice is a pattern of words, and what to do about its numbers.
type advice struct {
	words *regexp.Regexp
	take  func(in *Input, n int, field string)
}

// toField puts a count where the refusal was.
func toField(in *Input, n int, field string) {
	for name, to := range map[string]**int{"underarm_stitches": &in.UnderarmStitches, "cap_top_stitches": &in.CapTopStitches,
		"across_back_stitches": &in.AcrossBackStitches, "across_front_stitches": &in.AcrossFrontStitches,
		"neck_stitches": &in.NeckStitches, "armhole_depth_rows": &in.ArmholeDepthRows, "sleeve_stitches": &in.SleeveStitches} {
		if name == field {
			*to = &n
		}
	}
}

// violations are those of a refusal.
func violations(err error) []fault.Violation {
	var in *fault.InputError
	errors.As(err, &in)
	return in.Violations
}

var advices = []advice{
	{regexp.MustCompile(`a sleeve of (\d+) stitches`), func(in *Input, n int, _ string) {
		in.SleeveStitches, in.UpperArmCm, in.SleeveEaseCm = &n, nil, nil
	}},
	{regexp.MustCompile(`armholes of (\d+) rows`),
		func(in *Input, n int, _ string) { in.ArmholeDepthRows, in.ArmholeDepthCm = &n, nil }},
	{regexp.MustCompile(`(?:a top|one) of (\d+)`), func(in *Input, n int, _ string) { in.CapTopStitches = &n }},
	{regexp.MustCompile(`a cap of (\d+) rows`), func(in *Input, n int, _ string) {
		in.CapHeightRows, in.CapHeightCm, in.CapHeightRule = &n, nil, 0
	}},
	{regexp.MustCompile(`shaping over (\d+) rows`), func(in *Input, n int, _ string) { in.ShapingRows = &n }},
	{regexp.MustCompile(`bind-offs of up to (\d+) stitches`), func(in *Input, n int, _ string) { in.LargestGroupStitches = &n }},
}

// asAdvised are the questions that a refusal says would do, by its words: a way may move two measures.
func asAdvised(in Input, v fault.Violation) map[string]Input {
	_, remedies, _ := strings.Cut(v.Detail, "; ")
	asked := map[string]Input{}
	for _, way := range strings.Split(strings.TrimSuffix(remedies, " would do"), ", or ") {
		again, some := in, strings.Contains(way, "a cap not by the rule")
		if some {
			again.CapHeightRule = 0
		}
		for _, a := range advices {
			if m := a.words.FindStringSubmatch(way); m != nil {
				n, _ := strconv.Atoi(m[1])
				a.take(&again, n, v.Field)
				some = true
			}
		}
		if some {
			asked[way] = again
		}
	}
	return asked
}

// facts are what a refusal says of its own field alone: what can be there, beside whatever else
// does not fit.
var facts = []advice{
	{regexp.MustCompile(`a depth of (\d+) rows is the least`), toField},
	{regexp.MustCompile(`at most (\d+) can be bound off`), toField},
	{regexp.MustCompile(`at least (\d+) across do`), toField},
	{regexp.MustCompile(`; (\d+) and \d+ are the next`), toField},
	{regexp.MustCompile(`; \d+ and (\d+) are the next`), toField},
	{regexp.MustCompile(`from (\d+) to \d+ (?:can be|stitches are)`), toField},
	{regexp.MustCompile(`from \d+ to (\d+) (?:can be|stitches are)`), toField},
}

// kind is a refusal without its numbers.
func kind(v fault.Violation) string {
	return v.Field + regexp.MustCompile(`[0-9.]+.*`).ReplaceAllString(v.Detail, "")
}

// What a refusal says would do is planned; what it says can be is not refused for the same
// again. More than half of what is far off is told either.
func TestAdviceIsTaken(t *testing.T) {
	refused, told, taken := 0, 0, 0
	for seed := range knittest.Sweep(2_000, 200) {
		in := farOff(uint64(seed))
		_, err := Plan(in)
		if err == nil {
			continue
		}
		knittest.CheckInputError(t, err)
		refused++
		v := violations(err)
		some := false
		for words, again := range asAdvised(in, v[0]) {
			some = true
			taken++
			if _, other := Plan(again); other != nil {
				t.Errorf("question %d: %s: %s\nasked again with %s: %v", seed, v[0].Field, v[0].Detail, words, violations(other)[0])
			}
		}
		for _, a := range facts {
			m := a.words.FindStringSubmatch(v[0].Detail)
			if m == nil {
				continue
			}
			some = true
			n, _ := strconv.Atoi(m[1])
			again := in
			a.take(&again, n, v[0].Field)
			if _, other := Plan(again); other != nil && kind(violations(other)[0]) == kind(v[0]) {
				t.Errorf("question %d: %s: %s\nasked again with %s: %v", seed, v[0].Field, v[0].Detail, m[0], violations(other)[0])
			}
		}
		if some {
			told++
		}
	}
	t.Logf("%d refused, %d of them told what would do, %d asked again", refused, told, taken)
	if 2*told < refused || refused < knittest.Sweep(600, 60) {
		t.Errorf("%d refused, %d of them told what would do", refused, told)
	}
}
