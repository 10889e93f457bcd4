package sock

import (
	"regexp"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/outlinetest"
	"example.com/knitmath/knitmath/report"
)

// clumsy is what no answer may say: one of many, nothing of something, a place left open.
var clumsy = regexp.MustCompile(`\b1 (stitches|rows|rounds|times|rows|slipped stitches|flap rows|decrease rounds)\b|` +
	`\b[kp]0\b|\b0 (more times|times)\b|  |\.\.|\b(11st|12nd|13rd|1th|2th|3th)\b|%!|\bplain\b|, \.|one of it`)

var linesRead = map[string]bool{}

// checkWords reads everything that an answer says.
func checkWords(t *testing.T, at string, a report.Answer, notices []report.Notice) {
	t.Helper()
	knittest.CheckDirections(t, at, a.Directions())
	method := "PlanToe"
	if _, ok := a.(Heel); ok {
		method = "PlanHeel"
	}
	knittest.CheckNotices(t, method, notices)
	all := append([]string{a.Summary()}, a.Directions()...)
	for _, n := range notices {
		all = append(all, n.Description)
	}
	for _, line := range all {
		if linesRead[line] {
			continue // as most of a pattern is like another's
		}
		if found := clumsy.FindString(line); found != "" || line == "" {
			t.Fatalf("%s: %q in %q", at, found, line)
		}
		linesRead[line] = true
	}
	for _, line := range all[:len(all)-len(notices)] {
		if last := line[len(line)-1]; last != '.' && last != ':' {
			t.Fatalf("%s: %q does not end", at, line)
		}
	}
	if len(a.Directions()) < 3 || len(a.Sources()) == 0 {
		t.Fatalf("%s: %d directions, %d sources", at, len(a.Directions()), len(a.Sources()))
	}
	for _, s := range a.Sources() {
		if s.Figure == "" || s.Citation == "" || s.Status == report.SourceStatusUnspecified {
			t.Fatalf("%s: source %+v", at, s)
		}
	}
}

func TestHeelsAreWellSaid(t *testing.T) {
	flapHeels(t, func(at string, _ HeelInput, o Heel) { checkWords(t, at, o, o.Notices) })
	for round := MinRound + 8; round <= 120; round += 5 {
		for _, kind := range []HeelKind{HeelKindShortRows, HeelKindWasteYarn} {
			o, err := PlanHeel(HeelInput{Kind: kind, RoundStitches: &round, Gauge: standard})
			if err != nil {
				t.Fatal(round, kind, err)
			}
			checkWords(t, "short", o, o.Notices)
		}
	}
}

func TestToeUpHeelsAreWellSaid(t *testing.T) {
	toeUpHeels(t, func(at string, o Heel) { checkWords(t, at, o, o.Notices) })
}

func TestToesAreWellSaid(t *testing.T) {
	toes(t, func(at string, o Toe) { checkWords(t, at, o, o.Notices) })
}

// The notices, each once.
func TestNotices(t *testing.T) {
	heel := func(in HeelInput) []report.Notice {
		o, err := PlanHeel(in)
		if err != nil {
			t.Fatal(err)
		}
		checkWords(t, "notices", o, o.Notices)
		return o.Notices
	}
	toe := func(in ToeInput) []report.Notice {
		o, err := PlanToe(in)
		if err != nil {
			t.Fatal(err)
		}
		checkWords(t, "notices", o, o.Notices)
		return o.Notices
	}
	// 20 cm less a tenth at 3 stitches are 54, half-way between 52 and 56.
	halfway := gauge.Gauge{Stitches: 30, Rows: 40}
	for name, c := range map[string]struct {
		got  []report.Notice
		want []string
	}{
		"halfway":     {heel(HeelInput{FootCircumferenceCm: new(20.0), Gauge: &halfway}), []string{"HALFWAY foot_circumference_cm"}},
		"narrow heel": {heel(HeelInput{RoundStitches: new(60), HeelStitches: new(20)}), []string{"HEEL_UNLIKE_HALF heel_stitches"}},
		"wide heel":   {heel(HeelInput{RoundStitches: new(60), HeelStitches: new(42)}), []string{"HEEL_UNLIKE_HALF heel_stitches"}},
		"half":        {heel(HeelInput{RoundStitches: new(60), HeelStitches: new(36)}), nil},
		"many":        {heel(HeelInput{RoundStitches: new(60), PickUpStitches: new(20)}), []string{"PICK_UP_UNLIKE_EDGE pick_up_stitches"}},
		"few":         {heel(HeelInput{RoundStitches: new(60), PickUpStitches: new(14)}), []string{"PICK_UP_UNLIKE_EDGE pick_up_stitches"}},
		"usual":       {heel(HeelInput{RoundStitches: new(60), PickUpStitches: new(19)}), nil},
		"toe halfway": {toe(ToeInput{FootCircumferenceCm: new(20.0), Gauge: &halfway}), []string{"HALFWAY foot_circumference_cm"}},
		"adjusted":    {toe(ToeInput{RoundStitches: new(61)}), []string{"COUNT_ADJUSTED round_stitches"}},
		"baby":        {toe(ToeInput{RoundStitches: new(36), Gauge: standard}), []string{"LOOSE_ENDS "}},
		"child":       {toe(ToeInput{RoundStitches: new(40), Gauge: standard}), nil},
		"adjusted too": {toe(ToeInput{Kind: ToeKindStar, FootCircumferenceCm: new(22.0), Gauge: standard, WedgeCount: new(7)}),
			[]string{"COUNT_ADJUSTED foot_circumference_cm"}},
	} {
		var got []string
		for _, n := range c.got {
			got = append(got, string(n.Reason)+" "+n.Field)
		}
		if strings.Join(got, "; ") != strings.Join(c.want, "; ") {
			t.Errorf("%s: %q, want %q", name, got, c.want)
		}
	}
}

// A toe of a foot of 24.5 cm, 22 round: 22 less a tenth are 19.8 cm, 59.4 stitches, 60 to
// the multiple of 4. To half, 30, every 2nd round: 8 decrease rounds, the last of which
// comes to 28 and needs none after it; to 16, three more: 18 rounds, 4.29 cm of 23.5.
func TestAFoot(t *testing.T) {
	o, err := PlanToe(ToeInput{FootCircumferenceCm: new(22.0), FootLengthCm: new(24.5), Gauge: standard, WithOutline: true})
	if err != nil {
		t.Fatal(err)
	}
	if o.RoundStitches != 60 || *o.DecreaseRounds != 11 || o.LengthRows != 18 {
		t.Errorf("%+v", o)
	}
	knittest.Near(t, "foot to the toe", *o.FootToToeCm, 23.5-18*10.0/42, 1e-12)
	knittest.Near(t, "toe", *o.LengthCm, 18*10.0/42, 1e-12)
	outlinetest.CheckFrame(t, o.Outline)
	knittest.Near(t, "width", o.Outline.X.Greatest-o.Outline.X.Least, 10, 1e-12)
	h, err := PlanHeel(HeelInput{FootCircumferenceCm: new(22.0), Gauge: standard})
	if err != nil || h.HeelStitches != 30 || *h.FlapRows != 30 {
		t.Fatalf("%+v, %v", h, err)
	}
	knittest.Near(t, "flap", *h.DepthCm, 30*10.0/42, 1e-12)
}

// A round toe of sections that make it nearest to a quarter of the foot: 28, 45 or 66
// rounds are 5.6, 9 or 13.2 cm at 5 to the cm.
func TestRoundToeOfAFoot(t *testing.T) {
	for length, section := range map[float64]int{20: 8, 36: 10, 60: 12} {
		o, err := PlanToe(ToeInput{Kind: ToeKindRound, RoundStitches: new(120), FootLengthCm: &length,
			Gauge: &gauge.Gauge{Stitches: 35, Rows: 50}})
		if err != nil || 120 / *o.WedgeCount != section {
			t.Errorf("a foot of %v cm: sections of %d, want %d; %v", length, 120 / *o.WedgeCount, section, err)
		}
	}
}

// The drawings stand in their frames, bend at every corner, and are as wide as what they
// draw: the heel's stitches at the foot of a flap, the sole's at the end of the gussets.
func TestOutlines(t *testing.T) {
	for _, kind := range []HeelKind{HeelKindRound, HeelKindSquare, HeelKindShortRows, HeelKindWasteYarn} {
		for _, g := range []*gauge.Gauge{nil, standard} {
			o, err := PlanHeel(HeelInput{Kind: kind, RoundStitches: new(64), Gauge: g, WithOutline: true})
			if err != nil {
				t.Fatal(err)
			}
			outlinetest.CheckFrame(t, o.Outline)
			for _, l := range o.Outline.Lines {
				outlinetest.CheckCorners(t, l)
			}
			if g == nil && kind != HeelKindWasteYarn {
				if got := o.Outline.Lines[0].Points[0].X; got != -16 {
					t.Errorf("kind %d: half of the heel is %v stitches", kind, got)
				}
				if kind < HeelKindShortRows {
					if got := top(o.Outline.Lines[1]); got.X != -16 || got.Y != float64(*o.FlapRows+o.HeelStitches-*o.TurnedStitches+*o.GussetRounds) {
						t.Errorf("kind %d: half of the sole ends at %v", kind, got)
					}
				}
			}
		}
	}
	for kind := ToeKindWedge; kind <= ToeKindShortRows; kind++ {
		o, err := PlanToe(ToeInput{Kind: kind, RoundStitches: new(64), WithOutline: true})
		if err != nil {
			t.Fatal(err)
		}
		outlinetest.CheckFrame(t, o.Outline)
		for _, l := range o.Outline.Lines {
			outlinetest.CheckCorners(t, l)
		}
		if got := o.Outline.X.Greatest - o.Outline.X.Least; got != 32 {
			t.Errorf("kind %d: %v stitches wide", kind, got)
		}
		end := float64(o.TipStitches) / 2
		if kind == ToeKindShortRows {
			end = float64(*o.CentreStitches)
		}
		if got := top(o.Outline.Lines[0]); got.X*-2 != end || got.Y != float64(o.LengthRows) {
			t.Errorf("kind %d: it ends at %v", kind, got)
		}
	}
}

// top is where the left edge of a part ends.
func top(l outline.Line) outline.Point { return l.Points[(len(l.Points)-1)/2-1] }
