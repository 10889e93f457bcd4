package yoke

import (
	"encoding/csv"
	"os"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

// Raglans that are published come out as published: testdata/published_raglans.csv,
// which has the source of each. There is one whose rounds are told; another work read
// gives a depth from the top down only, which is no question here.
//
// The digest gives the sleeves all their 50 stitches, so that the lines are the body's:
// 84 - 2*2 = 80 of front and back, and 80 - 2*25 = 30.
func TestPublishedRaglans(t *testing.T) {
	file, err := os.Open("testdata/published_raglans.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer func() { _ = file.Close() }()
	rows, err := csv.NewReader(file).ReadAll()
	if err != nil || len(rows) != 2 || rows[1][0] != "digest_k200" {
		t.Fatalf("%v, %v", rows, err)
	}
	asked, expected := figures(t, rows[1][1]), figures(t, rows[1][2])
	depth := 2 * expected["decrease rounds"]
	out, err := PlanRaglan(RaglanInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, BodyStitches: asked["body"],
		SleeveStitches: new(asked["sleeve"]), UnderarmStitches: new(asked["underarm"]), LineFrom: RaglanLineFromBody,
		DepthRounds: &depth, FrontNeckStitches: new(30), BackNeckStitches: new(30), RoundChoice: RoundChoiceEverySecond})
	if err != nil {
		t.Fatal(err)
	}
	got := map[string]int{"join": out.JoinStitches, "sleeve": out.Sleeve.StartStitches, "front": out.Front.StartStitches + 2*out.LineStitches,
		"decrease rounds": out.Sleeve.DecreaseRounds, "rounds": out.DepthRounds, "left": out.NeckStitches}
	for what, want := range expected {
		if got[what] != want {
			t.Errorf("%s: %d, published %d", what, got[what], want)
		}
	}
	for _, p := range []RaglanPart{out.Back, out.Front, out.Sleeve} {
		if len(p.Intervals) != 1 || p.Intervals[0].EveryRows[0] != 2 || p.Intervals[0].Times != 24 || p.FirstDecreaseRoundNumber != 2 {
			t.Errorf("%+v, published every second round", p)
		}
	}
}

// figures reads "join 268; 25 decrease rounds": a number and what it is, either first.
func figures(t *testing.T, text string) map[string]int {
	t.Helper()
	all := map[string]int{}
	for _, part := range strings.Split(text, "; ") {
		first, rest, _ := strings.Cut(part, " ")
		if n, err := strconv.Atoi(first); err == nil {
			all[rest] = n
		} else if n, err := strconv.Atoi(rest); err == nil {
			all[first] = n
		}
	}
	return all
}
