package knitmath_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/solid"
)

// publishedBodies are balls and other bodies.
var publishedBodies = map[string]printed{
	"ball_6k": {
		work: func(t *testing.T) string {
			out, widest, down := ball(t, &gauge.Gauge{Stitches: 20, Rows: 20}, 36, 6), 0, ""
			for _, r := range out.Rounds {
				switch {
				case r.Instruction.EndStitches == out.GreatestStitches:
					widest = r.RoundNumber
				case r.Instruction.StartStitches == out.GreatestStitches:
					widest = r.RoundNumber - widest - 1
				}
				if r.Instruction.EndStitches < r.Instruction.StartStitches {
					down += fmt.Sprintf(" %d", r.Instruction.EndStitches)
				}
			}
			return fmt.Sprintf("%d even rounds; then %s", widest, down)
		},
		ours: "3 even rounds; then 30 24 18 12 6",
		why: "the counts; the book's grows in every round to its widest and is a tube there, where a sphere grows less and less: rounds " +
			"are even between too, and 3 at the widest",
	},
	"ball_80": {work: func(t *testing.T) string {
		out, ups := ball(t, ordinaryBall, 80, 8), 0
		for _, r := range out.Rounds {
			if r.Instruction.EndStitches > r.Instruction.StartStitches {
				ups++
			}
		}
		if out.GreatestStitches != 80 {
			t.Errorf("%d at its widest", out.GreatestStitches)
		}
		return fmt.Sprintf("%d increase rounds after %d", ups, out.StartStitches)
	}},
	"ball_64": {work: func(t *testing.T) string { return counts(ball(t, ordinaryBall, 64, 8), 24) }},
	"cone_5_12": {
		work: func(t *testing.T) string {
			out, err := solid.PlanSolid(solid.SolidInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 26}, Form: solid.FormCone, AcrossCm: new(10.0),
				HeightCm: new(12.0), BaseOpeningCm: new(10.0), WedgeCount: new(1)})
			must(t, out, err)
			first, last := out.Rounds[0], out.Rounds[len(out.Rounds)-1]
			each := (first.WantedStitches - last.WantedStitches) / float64(last.RoundNumber-first.RoundNumber)
			return fmt.Sprintf("slant %v; %d rounds; base %d; %.3f per round", out.MeridianCm, out.TotalRounds, out.GreatestStitches, each)
		},
		ours: "slant 13; 34 rounds; base 62; 1.848 per round",
		why: "33.8 rounds are worked as 34, and the first holds what its middle wants, 61.9 of the 62.8 at the rim; the derivation has the " +
			"rim itself, over 33.8 rounds",
	},
	"torus_6_2": {work: torus},
}

var ordinaryBall = &gauge.Gauge{Stitches: 20, Rows: 28}

// ball is a ball of so many wedges, and stitches round its widest.
func ball(t *testing.T, g *gauge.Gauge, stitches, wedges int) solid.Solid {
	t.Helper()
	across := float64(stitches) * 10 / g.Stitches / math.Pi
	out, err := solid.PlanSolid(solid.SolidInput{Gauge: g, Form: solid.FormSphere, AcrossCm: &across, WedgeCount: &wedges})
	return must(t, out, err)
}

// counts are those from one on of the rounds of a body that increase.
func counts(out solid.Solid, least int) string {
	words := ""
	for _, r := range out.Rounds {
		if r.Instruction.EndStitches > r.Instruction.StartStitches && r.Instruction.EndStitches >= least {
			words += fmt.Sprintf(" %d", r.Instruction.EndStitches)
		}
	}
	return strings.TrimSpace(words)
}

// torus is knit in two halves, outside and inside, of profiles open at both ends.
func torus(t *testing.T) string {
	rounds, most, least := 0, 0, math.MaxInt
	for _, outer := range []float64{1, -1} {
		var points []solid.ProfilePoint
		for i := range 20 {
			sin, cos := math.Sincos(math.Pi * (float64(i)/19 - 0.5))
			points = append(points, solid.ProfilePoint{HeightCm: 2 + 2*sin, AcrossCm: 2 * (6 + outer*2*cos)})
		}
		edge := 12.0
		out, err := solid.PlanSolid(solid.SolidInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 26}, Form: solid.FormProfile, Points: points,
			WedgeCount: new(1), BaseOpeningCm: &edge, TopOpeningCm: &edge})
		must(t, out, err)
		rounds, most = rounds+out.TotalRounds, max(most, out.GreatestStitches)
		for _, r := range out.Rounds {
			least = min(least, r.Instruction.EndStitches)
		}
	}
	return fmt.Sprintf("%d rounds; max %d; min %d", rounds, most, least)
}
