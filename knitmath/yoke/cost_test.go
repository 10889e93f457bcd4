package yoke

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

// Prices by hand. A yoke of 200 and two sleeves of 50 joins 300: a step for 50 of them
// at each of three decrease rounds and one band, ten for each decrease round, twenty
// for each row of a raise. A raglan: a step for each round, the most there are if none
// are asked for.
func TestPrices(t *testing.T) {
	standard := &gauge.Gauge{Stitches: 20, Rows: 30}
	for name, c := range map[string]struct {
		in   interface{ Cost() int }
		want int
	}{
		"yoke": {CircularInput{Gauge: standard, BodyStitches: 200, SleeveStitches: new(50)}, 50 + 3*300/50 + 30},
		"banded": {CircularInput{Gauge: standard, BodyStitches: 200, SleeveStitches: new(50), Bands: make([]Band, 1)},
			50 + 4*300/50 + 30},
		"raised": {CircularInput{Gauge: standard, BodyStitches: 200, SleeveStitches: new(50), BackRaise: &BackRaise{RiseRows: new(6)}},
			50 + 3*300/50 + 30 + 20*6},
		"raglan":       {RaglanInput{Gauge: standard, BodyStitches: 200, DepthRounds: new(60)}, 50 + 60},
		"deep in cm":   {RaglanInput{Gauge: standard, BodyStitches: 200, DepthCm: new(20.0)}, 50 + 60},
		"of any depth": {RaglanInput{Gauge: standard, BodyStitches: 200}, 50 + MaxRounds},
	} {
		if got := c.in.Cost(); got != c.want {
			t.Errorf("%s: %d, want %d", name, got, c.want)
		}
	}
}
