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
	"example.com/knitmath/knitmath/measure"
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

// A remedy is a pattern of words, and what to do about its numbers.
type remedy struct {
	words *regexp.Regexp
	take  func(in *Input, n int)
}

// violations are those of a refusal.
func violations(err error) []fault.Violation {
	var in *fault.InputError
	errors.As(err, &in)
	return in.Violations
}

var remedies = []remedy{
	{regexp.MustCompile(`a sleeve of (\d+) stitches`), func(in *Input, n int) {
		in.SleeveStitches, in.UpperArmCm, in.SleeveEaseCm, in.SleeveRule = &n, nil, nil, nil
	}},
	{regexp.MustCompile(`armholes of (\d+) rows`),
		func(in *Input, n int) { in.ArmholeDepthRows, in.ArmholeDepthCm = &n, nil }},
	{regexp.MustCompile(`(?:a top|one) of (\d+)`), func(in *Input, n int) {
		in.CapTopStitches, in.CapTopCm, in.TopRule = &n, nil, nil
	}},
	{regexp.MustCompile(`a cap of (\d+) rows`), func(in *Input, n int) {
		in.CapHeightRows, in.CapHeightCm, in.CapHeightRule = &n, nil, 0
	}},
	{regexp.MustCompile(`shaping over (\d+) rows`), func(in *Input, n int) { in.ShapingRows = &n }},
	{regexp.MustCompile(`an underarm of (\d+) stitches`), func(in *Input, n int) { in.UnderarmStitches = &n }},
	{regexp.MustCompile(`bind-offs of up to (\d+) stitches`), func(in *Input, n int) { in.LargestGroupStitches = &n }},
}

// byCm is by how much a measure that is given in cm is to be moved.
var byCm = regexp.MustCompile(`\(([0-9.]+) (cm|in) (wider|narrower|deeper|less deep|higher|lower)\)`)

// moveCm moves the measure that is given in cm as a way says, and reports whether it says so.
func (in *Input) moveCm(way string) bool {
	m := byCm.FindStringSubmatch(way)
	if m == nil {
		return false
	}
	by, _ := strconv.ParseFloat(m[1], 64)
	if m[2] == "in" {
		by *= measure.CmPerInch
	}
	if m[3] == "narrower" || m[3] == "less deep" || m[3] == "lower" {
		by = -by
	}
	for words, field := range map[string]**float64{"a sleeve of": &in.UpperArmCm, "armholes of": &in.ArmholeDepthCm,
		"a cap of": &in.CapHeightCm} {
		if strings.Contains(way, words) && *field != nil {
			*field = new(**field + by)
			return true
		}
	}
	return false
}

// asAdvised are the questions that a refusal says would do, by its words: a way may move two measures. What is
// told as a count and in cm is asked both ways, in cm with the caller's rule.
func asAdvised(in Input, v fault.Violation) map[string]Input {
	_, ways, _ := strings.Cut(v.Detail, "; ")
	asked := map[string]Input{}
	for _, way := range strings.Split(strings.TrimSuffix(ways, " would do"), ", or ") {
		again, some := in, strings.Contains(way, "a cap not by the rule")
		if some {
			again.CapHeightRule = 0
		}
		cm := again
		if moved := cm.moveCm(way); moved {
			for _, a := range remedies { // beside it
				if m := a.words.FindStringSubmatch(way); m != nil && !strings.Contains(way, m[0]+" (") && !strings.Contains(way, m[0]+" rows (") {
					n, _ := strconv.Atoi(m[1])
					a.take(&cm, n)
				}
			}
			asked[way+", in cm"] = cm
		}
		for _, a := range remedies {
			if m := a.words.FindStringSubmatch(way); m != nil {
				n, _ := strconv.Atoi(m[1])
				a.take(&again, n)
				some = true
			}
		}
		if some {
			asked[way] = again
		}
	}
	return asked
}

func ask(in Input) error { _, err := Plan(in); return err }

// checkAdvice asks a refused question again as its refusal says, and gives how many times.
func checkAdvice(t *testing.T, at int, in Input, err error) int {
	t.Helper()
	asked := knittest.CheckOffers(t, in, err, ask)
	for words, again := range asAdvised(in, violations(err)[0]) {
		asked++
		if other := ask(again); other != nil {
			t.Errorf("question %d: %v\nasked again with %s: %v", at, err, words, other)
		}
	}
	return asked
}

// What a refusal says would do is planned, and what it says would mend it does. Nine in ten are told so; of what is far off
// in counts half were not.
func TestAdviceIsTaken(t *testing.T) {
	for name, question := range map[string]func(uint64) Input{"counts": farOff, "lengths": garment} {
		refused, told, taken := 0, 0, 0
		for seed := range knittest.Sweep(2_000, 200) {
			in := question(uint64(seed))
			err := ask(in)
			if err == nil {
				continue
			}
			knittest.CheckInputError(t, err)
			refused++
			n := checkAdvice(t, seed, in, err)
			taken += n
			told += min(n, 1)
		}
		t.Logf("%s: %d refused, %d of them told what would do, %d asked again", name, refused, told, taken)
		if 10*told < 9*refused || refused < knittest.Sweep(900, 60) {
			t.Errorf("%s: %d refused, %d of them told what would do", name, refused, told)
		}
	}
}
