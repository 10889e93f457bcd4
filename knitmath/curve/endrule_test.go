package curve

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

// A rule moves the end to the nearest count that it allows, by half a repeat at most, and
// what went straight up still does.
func TestEndRule(t *testing.T) {
	for inward := 4.0; inward < 12; inward += 0.25 {
		in := CurvedEdgeInput{StartStitches: 103, Gauge: &gauge.Gauge{Stitches: 22, Rows: 30},
			EndRule: &gauge.CountRule{Multiple: new(6), Remainder: new(1)},
			Points:  []CurvePoint{{HeightCm: new(8.0), InwardCm: &inward, Shape: ShapeQuarterEllipse}, {HeightCm: new(12.0), InwardCm: &inward}}}
		out, err := PlanCurvedEdge(in)
		if err != nil {
			t.Fatal(err)
		}
		checkCurvedEdge(t, in, out)
		free := in
		free.EndRule = nil
		was, err := PlanCurvedEdge(free)
		if err != nil {
			t.Fatal(err)
		}
		if off := out.EndStitches - was.EndStitches; out.EndStitches%6 != 1 || off > 3 || off < -3 || out.Rows[len(out.Rows)-1].RowNumber > 24 {
			t.Errorf("%v cm: %d stitches, without the rule %d", inward, out.EndStitches, was.EndStitches)
		}
		in.Edges = EdgesLeft
		if out, err = PlanCurvedEdge(in); err != nil || out.EndStitches%6 != 1 {
			t.Errorf("%v cm, one edge: %d stitches, %v", inward, out.EndStitches, err)
		}
	}
	_, err := PlanCurvedEdge(CurvedEdgeInput{StartStitches: 102, Gauge: &gauge.Gauge{Stitches: 22, Rows: 30},
		EndRule: &gauge.CountRule{Multiple: new(6), Remainder: new(1)},
		Points:  []CurvePoint{{HeightCm: new(8.0), InwardCm: new(7.0)}}})
	knittest.WantViolations(t, err, "end_rule INFEASIBLE")
}

// What a refusal under a rule offers: other last points, other starts, something more that is let.
var (
	endings = regexp.MustCompile(`(?:of a start of (\d+) stitch(?:es)?, )?` +
		`(\d+) stitch(?:es)? (in|out)ward would leave (\d+)(?: with ([^,;]+))?`)
	starts  = regexp.MustCompile(`a start of (\d+)(?: or (\d+))? stitch(?:es)? would do`)
	lastRow = regexp.MustCompile(`a last point at row (\d+) would do`)
	more    = regexp.MustCompile(`this would do(?:, with a start of (\d+) stitch(?:es)?)?: (.+)$`)
)

// letMore is what is let by the words of a remedy.
func letMore(in CurvedEdgeInput, words string) CurvedEdgeInput {
	if let := lets[words]; let != nil {
		let(&in)
	}
	return in
}

// A ruledOffer is a question that a refusal offers, and what it says is left, 0 if it does not say.
type ruledOffer struct {
	in   CurvedEdgeInput
	left int
}

// ruledOffers are the questions that a refusal offers, as they are printed.
func ruledOffers(in CurvedEdgeInput, detail string) (all []ruledOffer) {
	number := func(s string) int { n, _ := strconv.Atoi(s); return n }
	of := ""
	for _, m := range endings.FindAllStringSubmatch(detail, -1) {
		again, inward := in, number(m[2])
		if of = m[1] + of; of != "" { // said once, of all that follow
			again.StartStitches = number(of)
		}
		if m[3] == "out" {
			inward = -inward
		}
		lastIn(inward).ask(&again)
		all = append(all, ruledOffer{letMore(again, m[5]), number(m[4])})
	}
	if m := starts.FindStringSubmatch(detail); m != nil {
		for _, start := range m[1:] {
			if again := in; start != "" {
				again.StartStitches = number(start)
				all = append(all, ruledOffer{again, 0})
			}
		}
	}
	if m := lastRow.FindStringSubmatch(detail); m != nil {
		again := in
		lastAt(number(m[1])).ask(&again)
		all = append(all, ruledOffer{again, 0})
	}
	if m := more.FindStringSubmatch(detail); m != nil {
		if m[1] != "" {
			in.StartStitches = number(m[1])
		}
		for words := range strings.SplitSeq(m[2], ", or ") {
			all = append(all, ruledOffer{letMore(in, words), 0})
		}
	}
	return all
}

// ruledEdge is a question under a rule by a number, as often refused as not.
func ruledEdge(seed uint64) CurvedEdgeInput {
	r := rand.New(rand.NewPCG(seed, 5))
	in := CurvedEdgeInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Edges: Edges(r.IntN(4)), StartStitches: 20 + r.IntN(100),
		Points:  []CurvePoint{{HeightRows: new(2 + r.IntN(40)), InwardStitches: new(r.IntN(90) - 20), Shape: Shape(r.IntN(3))}},
		EndRule: &gauge.CountRule{Multiple: new(2 + r.IntN(12)), Remainder: new(r.IntN(6)), Rounding: measure.Rounding(r.IntN(4))}}
	if *in.EndRule.Remainder >= *in.EndRule.Multiple {
		in.EndRule.Edge, in.EndRule.Remainder = in.EndRule.Remainder, new(0)
	}
	if r.IntN(2) == 0 {
		in.LargestGroupStitches = new(r.IntN(3))
	}
	if r.IntN(3) == 0 {
		in.Points[0].InwardCm, in.Points[0].InwardStitches = new(float64(*in.Points[0].InwardStitches)*0.47), nil
	}
	if r.IntN(3) == 0 {
		in.Points = append([]CurvePoint{{HeightRows: new(1 + *in.Points[0].HeightRows/2), InwardStitches: new(r.IntN(12))}}, in.Points[0])
	}
	return in
}

// nothingDoes ends a refusal that found nothing.
var nothingDoes = regexp.MustCompile(`; (?:none near it that it allows is planned|of no start near it is any planned|` +
	`no start near it does|no other setting does, nor a higher last point)$`)

// checkRuled asks a refused question again as its refusal says, and gives how many times.
func checkRuled(t *testing.T, in CurvedEdgeInput, rule gauge.Rule, detail string) int {
	t.Helper()
	offers := ruledOffers(in, detail)
	if strings.Contains(detail, " -") || len(offers) == 0 && !nothingDoes.MatchString(detail) {
		t.Errorf("%+v: %v", in, detail)
	}
	for _, o := range offers {
		out, err := PlanCurvedEdge(o.in)
		if err != nil || !rule.Allows(out.EndStitches) || o.left > 0 && out.EndStitches != o.left {
			t.Errorf("%+v: %v\nasked again: %d stitches, %v", in, detail, out.EndStitches, err)
		}
	}
	return len(offers)
}

// What is planned under a rule ends as it allows, whatever is asked; what is refused says what would do, which is planned as it
// is printed and leaves what is said, or in words that nothing near does. No refusal counts below 0.
func TestEveryCountUnderEndRule(t *testing.T) {
	done, refused, told, asked := 0, 0, 0, 0
	for seed := range knittest.Sweep(6_000, 600) {
		in := ruledEdge(uint64(seed))
		out, err := PlanCurvedEdge(in)
		rule := gauge.VetRule(&fault.Checks{}, "", in.EndRule)
		if err == nil {
			if done++; !rule.Allows(out.EndStitches) {
				t.Errorf("question %d: %d stitches are left", seed, out.EndStitches)
			}
			checkCurvedEdge(t, in, out)
			continue
		}
		var input *fault.InputError
		errors.As(err, &input)
		detail := input.Violations[0].Detail
		if strings.HasPrefix(detail, "no point lies a stitch") {
			continue
		}
		refused++
		n := checkRuled(t, in, rule, detail)
		told += min(n, 1)
		asked += n
	}
	t.Logf("%d planned, %d refused, %d of them told what would do, %d asked again", done, refused, told, asked)
	if 100*told < 99*refused || min(done, refused) < knittest.Sweep(1_200, 100) {
		t.Errorf("%d planned, %d refused, %d of them told what would do", done, refused, told)
	}
}
