package knitmath_test

import (
	"maps"
	"math"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/hand"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/sock"
	"example.com/knitmath/knitmath/solid"
)

// A share is a figure that is taken where nobody gives it, as it comes out in an answer.
type share struct {
	came   float64
	answer report.Answer
}

// fine is a gauge at which a count lies within half a percent of what is wanted.
var fine = &gauge.Gauge{Stitches: 100, Rows: 140}

func part100(of, all int) float64 { return float64(of) / float64(all) }

// footShares are what is taken of a foot, by the row of shapes/shares.csv.
func footShares(t *testing.T) map[string]share {
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
	return map[string]share{
		"heel":           {part100(round.HeelStitches, 144), round},
		"flap":           {part100(*round.FlapRows, round.HeelStitches), round},
		"picked_up":      {float64(*round.PickUpStitches - *round.FlapRows/2), round},
		"square_centre":  {part100(*square.CentreStitches, square.HeelStitches), square},
		"short_row_heel": {part100(*short.CentreStitches, short.HeelStitches), short},
		"gusset_rate":    {part100(*round.GussetRounds-1, *round.GussetDecreaseRounds-1), round},
		"wedge_toe":      {part100(wedge.TipStitches, 144), wedge},
		"star_toe":       {float64(star.TipStitches), star},
		"short_row_toe":  {part100(*cup.CentreStitches, 72), cup},
		"sock_around":    {part100(around.RoundStitches, 240), around},
		"toe_of_foot":    {math.Round(20**long.LengthCm/25) / 20, long},
		"sock_long":      {25 - *long.LengthCm - *long.FootToToeCm, long},
	}
}

// handShares are what is taken of a hand and of a head.
func handShares(t *testing.T) map[string]share {
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
	return map[string]share{
		"mitten_around": {thumb.MittenCm / *cm, thumb},
		"gusset":        {part100(thumb.GussetStitches, thumb.HandStitches), thumb},
		"thumb_rate":    {part100(thumb.GussetRounds, (thumb.GussetStitches-2)/2), thumb},
		"thumb_long":    {thumb.LengthCm / thumb.MittenCm, thumb},
		"held":          {part100(none.HoldStitches, none.HandStitches), none},
		"hat_around":    {hat.HatCm / 56, hat},
		"hat_high":      {hat.TotalCm / 56, hat},
		"hat_slouch":    {(slouchy.TotalCm - hat.TotalCm) / 56, slouchy},
	}
}

// What is taken of feet, hands and heads where nobody says it is the default of its row, which lies within what is published of it; and
// the answer cites it, with how sure it is. Every row is taken by an answer.
func TestDefaultsAreAsPublished(t *testing.T) {
	shares := footShares(t)
	maps.Copy(shares, handShares(t))
	for _, row := range knittest.TableAt(t, "../testdata/shapes/shares.csv") {
		s, ok := shares[row["id"]]
		if delete(shares, row["id"]); !ok {
			t.Errorf("%s: no answer takes it", row["id"])
			continue
		}
		want, least, most := knittest.Cell(t, row["default"]), knittest.Cell(t, row["least"]), knittest.Cell(t, row["most"])
		if math.Abs(s.came/want-1) > 0.02 {
			t.Errorf("%s: %v, not %v", row["id"], s.came, want)
		}
		if most > 0 && (want < least || want > most) || (most > 0) != (row["fact"] != "") {
			t.Errorf("%s: %v, published %q, from %v to %v", row["id"], want, row["fact"], least, most)
		}
		if !slices.ContainsFunc(s.answer.Sources(), func(c report.Source) bool {
			return strings.Contains(c.Figure, row["figure"]) && c.Status == statuses[row["status"]] && c.Citation != ""
		}) {
			t.Errorf("%q, %s, is not among the sources: %v", row["figure"], row["status"], s.answer.Sources())
		}
	}
	for id := range shares {
		t.Errorf("%s has no row", id)
	}
}

// statuses are how sure a figure is, by the words of its row.
var statuses = map[string]report.SourceStatus{"published": report.SourceStatusPublished, "from memory": report.SourceStatusFromMemory,
	"common practice": report.SourceStatusCommonPractice, "own derivation": report.SourceStatusOwnDerivation}

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
