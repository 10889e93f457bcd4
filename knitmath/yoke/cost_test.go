package yoke

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/shaping"
)

// Prices by hand. A yoke of 200 and two sleeves of 50 joins 300: eight steps for each, two where they are grouped, ten
// for each of three decrease rounds and a band, a step for 100 of twice the stitches at
// each of them where there are bands, whose easy counts are tried in 38 ways, twenty for each row of a raise. A raglan: ten
// steps for each round, the most there are if none are asked for, and 100 for up to 100.
func TestPrices(t *testing.T) {
	standard := &gauge.Gauge{Stitches: 20, Rows: 30}
	for name, c := range map[string]struct {
		in   interface{ Cost() int }
		want int
	}{
		"yoke": {CircularInput{Gauge: standard, BodyStitches: 200, SleeveStitches: new(50)}, 50 + 8*300 + 40 + 4*32*32/300},
		"banded": {CircularInput{Gauge: standard, BodyStitches: 200, SleeveStitches: new(50), Bands: make([]Band, 1)},
			50 + 8*300 + 150 + 3*15*600/300 + 38*15*32*32/300},
		"narrow": {CircularInput{Gauge: standard, BodyStitches: 200, SleeveStitches: new(50), NeckStitches: new(60)},
			50 + 8*300 + 70 + 7*32*32/300},
		"raised": {CircularInput{Gauge: standard, BodyStitches: 200, SleeveStitches: new(50), BackRaise: &BackRaise{RiseRows: new(6)}},
			50 + 8*300 + 40 + 20*6 + 4*32*32/300},
		"grouped": {CircularInput{Gauge: standard, BodyStitches: 200, SleeveStitches: new(50), Spread: shaping.GapSpreadGrouped},
			50 + 2*300 + 40 + 4*32*32/300},
		"raglan":       {RaglanInput{Gauge: standard, BodyStitches: 200, DepthRounds: new(60)}, 50 + 10*60 + 100*60},
		"deep in cm":   {RaglanInput{Gauge: standard, BodyStitches: 200, DepthCm: new(20.0)}, 50 + 10*60 + 100*60},
		"of any depth": {RaglanInput{Gauge: standard, BodyStitches: 200}, 50 + 10*MaxRounds + 100*100},
	} {
		if got := c.in.Cost(); got != c.want {
			t.Errorf("%s: %d, want %d", name, got, c.want)
		}
	}
}
