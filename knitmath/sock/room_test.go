package sock

import (
	"regexp"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// The length of a wedge toe and the depth of a heel of short rows that a sock is thought to have are those of
// the plans.
func TestRoomIsThatOfThePlans(t *testing.T) {
	for round := MinRound; round <= MaxRound; round++ {
		r := rounds{round: round}
		toe, err := PlanToe(ToeInput{RoundStitches: &round})
		if err != nil || toe.LengthRows != wedgeToeRows(round) {
			t.Errorf("%d stitches: a wedge toe of %d rows, thought %d: %v", round, toe.LengthRows, wedgeToeRows(round), err)
		}
		heel, err := PlanHeel(HeelInput{Kind: HeelKindShortRows, RoundStitches: &round, Gauge: standard})
		if err != nil {
			t.Fatal(round, err)
		}
		_, r.rw = gauge.Vet(&fault.Checks{}, "gauge", standard)
		knittest.Near(t, strconv.Itoa(round)+" stitches", r.shallowHeelCm(), *heel.DepthCm, 1e-9)
	}
}

// A foot that has no room for a toe before its heel, worked from the toe up, is refused with one that has;
// where there is room for the shortest toe alone, that is said.
func TestToeUpHeelsLeaveRoomForAToe(t *testing.T) {
	offer := regexp.MustCompile(`; (?:[0-9.]+ cm or )?([0-9.]+) cm would do`)
	refused, told := 0, 0
	for round := 24; round <= 90; round += knittest.Sweep(6, 22) {
		for kind := HeelKindRound; kind <= HeelKindWasteYarn; kind++ {
			for foot := 4.0; foot <= 30; foot += 0.5 {
				in := HeelInput{Kind: kind, Direction: DirectionToeUp, RoundStitches: &round, Gauge: standard, FootLengthCm: &foot}
				out, err := PlanHeel(in)
				if err != nil {
					refused++
					longer, _ := strconv.ParseFloat(offer.FindStringSubmatch(err.Error())[1], 64)
					in.FootLengthCm = &longer
					if _, err := PlanHeel(in); err != nil || longer <= foot {
						t.Errorf("%d stitches, kind %d, foot %v: a foot of %v was offered: %v", round, kind, foot, longer, err)
					}
					continue
				}
				shortest, wedge := 100.0, 0.0
				for toe := ToeKindWedge; toe <= ToeKindShortRows; toe++ {
					o, err := PlanToe(ToeInput{Kind: toe, RoundStitches: &round, Gauge: standard, Direction: DirectionToeUp})
					if err != nil {
						t.Fatal(err)
					}
					if shortest = min(shortest, *o.LengthCm); toe == ToeKindWedge {
						wedge = *o.LengthCm
					}
				}
				said := len(out.Notices) > 0 && out.Notices[0].Reason == ToeMustBeShort
				if said {
					told++
				}
				const row = 10/42.0 + millimetre // a toe from its tip has a round more, after its cast-on
				if *out.FootToHeelCm < shortest-row-1e-9 || !said && *out.FootToHeelCm < wedge-row-1e-9 {
					t.Errorf("%d stitches, kind %d, foot %v: %v cm when the heel begins, for toes of %v to %v", round, kind, foot,
						*out.FootToHeelCm, shortest, wedge)
				}
			}
		}
	}
	if refused < knittest.Sweep(500, 200) || told < knittest.Sweep(10, 5) {
		t.Errorf("%d refused, %d told", refused, told)
	}
}

// A sock too short for its toe is told of a foot that has room for it, and of a kind of toe that
// has room on this foot, if one has; both do.
func TestShortFeetAreToldAWayOut(t *testing.T) {
	kinds := map[string]ToeKind{}
	for kind, name := range toeNames {
		kinds[strings.ToLower(name)] = kind
	}
	offer := regexp.MustCompile(`(?:; (a [a-z ]+) is only [0-9.]+ cm long)?; ([0-9.]+) cm would do`)
	feet, others := 0, 0
	for kind := ToeKindWedge; kind <= ToeKindShortRows; kind++ {
		for foot := 2.0; foot < 12; foot += 0.5 {
			in := ToeInput{Kind: kind, RoundStitches: new(64), FootLengthCm: &foot, Gauge: standard}
			if kind == ToeKindRound {
				in.WedgeCount = new(8)
			}
			_, err := PlanToe(in)
			if err == nil {
				continue
			}
			said := offer.FindStringSubmatch(err.Error())
			if said == nil {
				t.Fatalf("kind %d, foot %v: %v", kind, foot, err)
			}
			longer, _ := strconv.ParseFloat(said[2], 64)
			in.FootLengthCm = &longer
			if _, err := PlanToe(in); err != nil {
				t.Errorf("kind %d: a foot of %v was offered: %v", kind, longer, err)
			}
			feet++
			if said[1] == "" {
				continue
			}
			others++
			in.FootLengthCm, in.Kind, in.WedgeCount = &foot, kinds[said[1]], nil
			if _, err := PlanToe(in); err != nil {
				t.Errorf("a foot of %v: %s was offered: %v", foot, said[1], err)
			}
		}
	}
	if feet < 40 || others < 5 {
		t.Errorf("%d feet and %d kinds offered", feet, others)
	}
}
