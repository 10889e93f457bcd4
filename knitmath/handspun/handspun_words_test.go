package handspun

import (
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/yardage"
	"example.com/knitmath/knitmath/yarn"
)

func TestHandspunNotices(t *testing.T) {
	two := func(a, b float64) []Ply { return []Ply{{Count: inTex(a)}, {Count: inTex(b)}} }
	for _, c := range []struct {
		name string
		in   Input
		want []string
	}{
		{"quiet", Input{Plies: two(180, 190)}, nil},
		{"single", Input{Plies: two(300, 0)[:1]}, []string{"plies SINGLE"}},
		{"unequal", Input{Plies: two(120, 181)}, []string{"plies UNEQUAL_PLIES"}},
		{"mixed", Input{Plies: []Ply{{Count: inTex(140), TwistPerCm: new(3.0)},
			{Count: inTex(140), TwistPerCm: new(2.5), Direction: yarn.TwistDirectionS}}},
			[]string{"plies MIXED_TWIST"}},
		{"not balanced", Input{Plies: []Ply{{Count: inTex(180), Times: new(2), TwistPerCm: new(3.0)}}, PlyTwistPerCm: new(1.7)},
			[]string{"ply_twist_per_cm NOT_BALANCED"}},
		{"balanced", Input{Plies: []Ply{{Count: inTex(180), Times: new(2), TwistPerCm: new(3.0)}}, PlyTwistPerCm: new(1.9)}, nil},
		{"little", Input{Plies: two(180, 190), TwistAngleDegrees: new(14.0)}, []string{"plies[0] LITTLE_TWIST", "plies[1] LITTLE_TWIST"}},
		// Plied to balance they make a ply of 41 degrees.
		{"much", Input{Plies: two(180, 190), TwistAngleDegrees: new(41.0)},
			[]string{"plies[0] MUCH_TWIST", "plies[1] MUCH_TWIST", "plies MUCH_TWIST"}},
		{"much of the plying", Input{Plies: two(180, 190), PlyTwistPerCm: new(3.3)},
			[]string{"ply_twist_per_cm NOT_BALANCED", "ply_twist_per_cm MUCH_TWIST", "plies[0] UNSPUN", "plies[1] UNSPUN"}},
		{"eight soft ones", Input{Plies: []Ply{{Count: inTex(50), Times: new(8)}}}, nil},
		{"eight as soft as two", Input{Plies: []Ply{{Count: inTex(50), Times: new(8)}}, TwistAngleDegrees: new(20.0)},
			[]string{"plies MUCH_TWIST"}},
		// (4 + 2) / 3 = 2 turns to the cm are put in.
		{"unspun", Input{Plies: []Ply{{Count: inTex(180), TwistPerCm: new(4.0)}, {Count: inTex(190), TwistPerCm: new(2.0)}}},
			[]string{"plies[1] UNSPUN"}},
		{"plied out", Input{Plies: []Ply{{Count: inTex(180), Times: new(2), TwistPerCm: new(3.0)}}, PlyTwistPerCm: new(3.0)},
			[]string{"ply_twist_per_cm NOT_BALANCED", "plies[0] UNSPUN"}},
		{"lace", Input{Plies: two(60, 60)}, []string{"plies BEYOND_BANDS"}},
		{"rope", Input{Plies: two(700, 700)}, []string{"plies BEYOND_BANDS"}},
		{"cancelling", Input{Plies: []Ply{{Count: inTex(180), TwistPerCm: new(3.0)},
			{Count: inTex(180), TwistPerCm: new(3.0), Direction: yarn.TwistDirectionS}}, PlyTwistPerCm: new(2.0)},
			[]string{"plies MIXED_TWIST", "ply_twist_per_cm NOT_BALANCED"}},
		{"off by stitches alone", Input{Plies: two(250, 250), StitchGauge: &yardage.StitchGauge{Stitches: 30}},
			[]string{"stitch_gauge OFF_GAUGE"}},
		{"off", Input{Plies: two(250, 250), Gauge: &gauge.Gauge{Stitches: 30, Rows: 40}}, []string{"gauge OFF_GAUGE"}},
	} {
		var got []string
		for _, n := range planOf(t, c.in).Notices {
			got = append(got, n.Field+" "+string(n.Reason))
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%s: got %q, want %q", c.name, got, c.want)
		}
	}
}

// Singles are counted off only where there are others, and what is said of thick and of thin
// yarn is not the same.
func TestHandspunWords(t *testing.T) {
	for _, c := range []struct {
		in         Input
		spin, says string
	}{
		{Input{Plies: []Ply{{Count: inTex(50)}}}, "Spin the single Z", "lace is knit far more loosely"},
		{Input{Plies: []Ply{{Count: inTex(800), Times: new(2)}}}, "Spin the singles (2 plies) Z", "only a swatch tells of a rope"},
		{Input{Plies: []Ply{{Count: inTex(50)}, {Count: inTex(60)}}}, "Spin the 1st single Z", "lace is knit"},
	} {
		out := planOf(t, c.in)
		if d := out.Directions()[1]; !strings.HasPrefix(d, c.spin) {
			t.Errorf("%q, want %q", d, c.spin)
		}
		if n := out.Notices[len(out.Notices)-1].Description; !strings.Contains(n, c.says) {
			t.Errorf("%q, want %q", n, c.says)
		}
	}
}

// Singles that were spun both ways were not spun "the way the singles were", and where their
// turns undo one another no range of turns is a balance.
func TestWordsOnSinglesSpunBothWays(t *testing.T) {
	ask := func(s float64) string {
		out := planOf(t, Input{Plies: []Ply{{Count: inTex(180), TwistPerCm: new(3.0)},
			{Count: inTex(180), TwistPerCm: &s, Direction: yarn.TwistDirectionS}}, PlyTwistPerCm: new(2.0)})
		all := out.Summary() + strings.Join(out.Directions(), " ")
		for _, n := range out.Notices {
			all += n.Description
		}
		for _, c := range out.Samples {
			all += c.IfLess + c.IfMore
		}
		return all
	}
	for _, s := range []float64{3, 1} {
		words := ask(s)
		for _, untrue := range []string{"0 to 0", "the way the singles were spun"} {
			if strings.Contains(words, untrue) {
				t.Errorf("%v turns S against 3 Z: %q is said in %q", s, untrue, words)
			}
		}
		if undone := strings.Contains(words, "undo one another"); undone != (s == 3) {
			t.Errorf("%v turns S against 3 Z: %q", s, words)
		}
	}
}

// Every check of a sample says what a deviation does to the gauge.
func TestSamplesSpeakOfTheGauge(t *testing.T) {
	for _, in := range []Input{
		{Plies: []Ply{{Count: inTex(180), Times: new(2)}}},
		{Plies: []Ply{{Count: inTex(180), Times: new(2), TwistPerCm: new(3.0)}}, PlyTwistPerCm: new(1.0)},
		{Plies: []Ply{{Count: inTex(180), Times: new(2), TwistPerCm: new(3.0)}}, PlyTwistPerCm: new(2.9)},
	} {
		for _, c := range planOf(t, in).Samples {
			for _, words := range []string{c.IfLess, c.IfMore} {
				if !strings.Contains(words, "stitches to a width") && !strings.Contains(words, "needle") {
					t.Errorf("%s: %q", c.What, words)
				}
			}
		}
	}
}
