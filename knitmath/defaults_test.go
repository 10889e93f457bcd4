package knitmath_test

import (
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/hand"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/sock"
	"example.com/knitmath/knitmath/solid"
)

// A share is a figure that is taken where nobody gives it, as it comes out in an answer.
type share struct {
	came, want float64
	answer     report.Answer
	cited      string // how its source says it
	status     report.SourceStatus
}

// fine is a gauge at which a count lies within half a percent of what is wanted.
var fine = &gauge.Gauge{Stitches: 100, Rows: 140}

func part100(of, all int) float64 { return float64(of) / float64(all) }

// footShares are what is taken of a foot. Sources: the rows of facts.md on socks, and the works named.
func footShares(t *testing.T) []share {
	heelOf := func(kind sock.HeelKind) sock.Heel {
		return heel(t, sock.HeelInput{Kind: kind, RoundStitches: new(144)})
	}
	round, square, short := heelOf(sock.HeelKindRound), heelOf(sock.HeelKindSquare), heelOf(sock.HeelKindShortRows)
	toeOf := func(kind sock.ToeKind) sock.Toe { return toe(t, sock.ToeInput{Kind: kind, RoundStitches: new(144)}) }
	wedge, star, cup := toeOf(sock.ToeKindWedge), toeOf(sock.ToeKindStar), toeOf(sock.ToeKindShortRows)
	foot := sock.ToeInput{Kind: sock.ToeKindRound, Gauge: fine, FootCircumferenceCm: new(24.0), FootLengthCm: new(25.0)}
	around := toe(t, foot)
	foot.Gauge = &gauge.Gauge{Stitches: 30, Rows: 42}
	long := toe(t, foot)
	practice, published, memory := report.SourceStatusCommonPractice, report.SourceStatusPublished, report.SourceStatusFromMemory
	return []share{
		{part100(round.HeelStitches, 144), 0.5, round, "heel over half of the stitches", published},
		{part100(*round.FlapRows, round.HeelStitches), 1, round, "as many flap rows as stitches", practice},
		{float64(*round.PickUpStitches), float64(*round.FlapRows/2 + 1), round, "half its rows and one for the corner", practice},
		{part100(*square.CentreStitches, square.HeelStitches), 1 / 3.0, square, "a third of the heel at each side of its turn", published},
		{part100(*short.CentreStitches, short.HeelStitches), 1 / 3.0, short, "over half of the sock down to a third", practice},
		{part100(wedge.TipStitches, 144), 0.25, wedge, "to about a quarter", practice},
		{float64(star.TipStitches), 8, star, "then every round, to 8", practice},
		{part100(*cup.CentreStitches, 72), 0.5, cup, "short rows down to half of the stitches", practice},
		{part100(around.RoundStitches, 240), 0.9, around, "a sock a tenth narrower than the foot", memory},
		{math.Round(20**long.LengthCm/25) / 20, 0.25, long, "a toe a quarter of the foot long", published},
		{*long.LengthCm + *long.FootToToeCm, 24, long, "a sock a centimetre shorter than the foot", memory},
	}
}

// handShares are what is taken of a hand and of a head.
func handShares(t *testing.T) []share {
	cm := new(20.0)
	planned, err := hand.PlanThumb(hand.ThumbInput{Gauge: fine, HandCm: cm})
	thumb := must(t, planned, err)
	planned, err = hand.PlanThumb(hand.ThumbInput{Gauge: fine, HandCm: cm, Gusset: hand.GussetNone})
	none := must(t, planned, err)
	hatOf := func(shape solid.CrownShape) solid.Crown {
		out, err := solid.PlanCrown(solid.CrownInput{Gauge: &gauge.Gauge{Stitches: 40, Rows: 56}, HeadCm: new(56.0), Shape: shape})
		return must(t, out, err)
	}
	hat, slouchy := hatOf(solid.CrownShapeUnspecified), hatOf(solid.CrownShapeSlouchy)
	practice, own := report.SourceStatusCommonPractice, report.SourceStatusOwnDerivation
	return []share{
		{thumb.MittenCm / *cm, 1.03, thumb, "ease of 3 %", report.SourceStatusFromMemory},
		{part100(thumb.GussetStitches, thumb.HandStitches), 0.37, thumb, "gusset of 37 % of the hand", own},
		{part100(thumb.GussetRounds, (thumb.GussetStitches-2)/2), 3, thumb, "two increases every 3rd round", report.SourceStatusPublished},
		{thumb.LengthCm / thumb.MittenCm, 0.3, thumb, "length of the thumb, 0.3 of the hand", practice},
		{part100(none.HoldStitches, none.HandStitches), 0.2, none, "a fifth of the hand is held", practice},
		{hat.HatCm / 56, 0.92, hat, "ease of -8 %", practice},
		{hat.TotalCm / 56, 0.4, hat, "height of the hat, 0.4 of the head", practice},
		{slouchy.TotalCm / 56, 0.55, slouchy, "and 0.15 more where it slouches", practice},
	}
}

// What is taken of feet, hands and heads where nobody says it is what the source beside it says, which stands in the answer with how
// sure it is.
func TestDefaultsAreAsCited(t *testing.T) {
	for _, s := range append(footShares(t), handShares(t)...) {
		if math.Abs(s.came/s.want-1) > 0.02 {
			t.Errorf("%s: %v, cited %v", s.cited, s.came, s.want)
		}
		found := false
		for _, source := range s.answer.Sources() {
			found = found || strings.Contains(source.Figure, s.cited) && source.Status == s.status && source.Citation != ""
		}
		if !found {
			t.Errorf("%q is not among the sources: %v", s.cited, s.answer.Sources())
		}
	}
}

// What is given needs no source, and has none.
func TestWhatIsGivenIsNotCited(t *testing.T) {
	foot := sock.HeelInput{Gauge: fine, FootCircumferenceCm: new(24.0), EasePercent: new(-5.0)}
	flap, square, short := foot, foot, foot
	flap.HeelStitches, flap.FlapRows, flap.FlapStitch, flap.PickUpStitches = new(112), new(100), sock.FlapStitchStockinette, new(60)
	square.Kind, square.CentreStitches, square.GussetEveryRounds = sock.HeelKindSquare, new(40), new(3)
	short.Kind, short.CentreStitches = sock.HeelKindShortRows, new(40)
	up := foot
	up.Direction, up.CentreStitches, up.FootLengthCm, up.LengthEaseCm = sock.DirectionToeUp, new(40), new(25.0), new(-0.5)
	up.GussetEveryRounds = new(3)
	for _, c := range []struct {
		answer report.Answer
		never  []string
	}{
		{toe(t, sock.ToeInput{Gauge: fine, FootCircumferenceCm: new(24.0), EasePercent: new(-5.0), FootLengthCm: new(25.0),
			LengthEaseCm: new(-0.5)}), []string{"narrower", "shorter"}},
		{toe(t, sock.ToeInput{Kind: sock.ToeKindShortRows, RoundStitches: new(64), CentreStitches: new(12)}), []string{"half of the"}},
		{heel(t, flap), []string{"narrower", "over half", "flap rows as", "slipped", "stitches along the flap"}},
		{heel(t, square), []string{"narrower", "a third", "gussets shaped"}},
		{heel(t, short), []string{"narrower", "a third"}},
		{heel(t, up), []string{"narrower", "a third", "shorter", "gussets shaped"}},
	} {
		for _, s := range c.answer.Sources() {
			for _, words := range c.never {
				if strings.Contains(s.Figure, words) {
					t.Errorf("%q is cited, and was given otherwise", s.Figure)
				}
			}
		}
	}
}
