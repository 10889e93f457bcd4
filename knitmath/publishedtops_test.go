package knitmath_test

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/hand"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/solid"
	"example.com/knitmath/knitmath/stitch"
)

// publishedTops are crowns, tops of hats, and mittens.
var publishedTops = map[string]printed{
	"helmet1918_two": {work: func(t *testing.T) string {
		plan := closed(t, solid.Closing{StartStitches: 48, Wedges: 3, EndStitches: 9, Pace: solid.AtRates(solid.Rate{EveryRounds: 2})})
		return fmt.Sprintf("%d decrease rows", len(plan.Rounds))
	}},
	"bbl25_sections": {work: func(t *testing.T) string {
		var all []string
		for _, stitches := range []int{80, 84, 88} {
			plan := closed(t, solid.Closing{StartStitches: stitches, Wedges: 6, Uneven: solid.UnevenTwoSizes, EndStitches: 6,
				Pace: solid.EveryRound()})
			sizes, of := map[int]int{}, []int{}
			for _, n := range plan.WedgeStitches {
				sizes[n]++
			}
			for n := range sizes {
				of = append(of, n)
			}
			slices.SortFunc(of, func(a, b int) int { return sizes[b] - sizes[a] })
			words := ""
			for _, n := range of {
				words += fmt.Sprintf("+%dx%d", sizes[n], n)
			}
			all = append(all, words[1:])
		}
		return strings.Join(all, "; ")
	}},
	"prj_crown": {work: func(t *testing.T) string {
		plan := closed(t, solid.Closing{StartStitches: 117, Wedges: 14, Uneven: solid.UnevenLeftOver, EndStitches: 8,
			Pace: solid.AtRates(solid.Rate{EveryRounds: 3})})
		var counts, left []int
		for i, r := range plan.Rounds {
			if counts = append(counts, r.Instruction.EndStitches); i < 4 {
				left = append(left, leftOver(r.Instruction))
			}
			if i > 0 && r.RoundNumber != plan.Rounds[i-1].RoundNumber+3 {
				t.Errorf("round %d: 2 are even between", r.RoundNumber)
			}
		}
		return joined(counts, " ") + "; " + joined(left, ",") + " left over"
	}},
	"glove1918_gusset": {work: func(t *testing.T) string {
		// From 4 stitches to 10, and with those that are increased beside them 14 of the thumb.
		out, err := hand.PlanThumb(hand.ThumbInput{Gauge: mittenGauge, HandStitches: new(52), GussetStitches: new(10), StartStitches: new(4),
			BesideStitches: new(2), GapStitches: new(4), EveryRounds: new(5)})
		must(t, out, err)
		return fmt.Sprintf("%d; thumb %d; hand %d", beforeHeld(out), out.ThumbStitches, out.AfterStitches)
	}},
	"mitten1918_thumb": {work: func(t *testing.T) string {
		// The hand's stitches and where the gusset begins are taken.
		out, err := hand.PlanThumb(hand.ThumbInput{Gauge: mittenGauge, HandStitches: new(60), GussetStitches: new(21), StartStitches: new(1),
			GapStitches: new(21 / 3)})
		must(t, out, err)
		return fmt.Sprintf("cast on %d = %d/%d over the gap", out.ThumbStitches-out.HoldStitches, 1, out.HoldStitches/out.GapStitches)
	}},
	"hyper_20": {work: func(t *testing.T) string {
		out, err := shaping.PlanEvenSpacing(shaping.EvenSpacingInput{StartStitches: 20, EndStitches: 25, Construction: stitch.InTheRound})
		return strconv.Itoa(must(t, out, err).Instruction.EndStitches)
	}},
}

var mittenGauge = &gauge.Gauge{Stitches: 22, Rows: 30}

func closed(t *testing.T, q solid.Closing) solid.ClosingPlan {
	t.Helper()
	plan, refused := q.Plan()
	if refused != "" {
		t.Fatal(refused)
	}
	return plan
}

var atTheEnd = regexp.MustCompile(`, k(\d+)$`)

// leftOver is how many stitches are knit after the repeats of a round.
func leftOver(in stitch.Instruction) int {
	found := atTheEnd.FindStringSubmatch(in.Row.Text())
	if found == nil {
		return 0
	}
	n, _ := strconv.Atoi(found[1])
	return n
}

// beforeHeld are the stitches of a hand in the round that puts the thumb on hold.
func beforeHeld(out hand.Thumb) int { return out.HandRounds[len(out.HandRounds)-1].Right.StartStitches }
