package service

import (
	"encoding/json"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// Where a round begins is said wherever it matters. Of all good wire cases that tell rounds by their
// numbers, or a round by its name, either the directions say it, or every round is the same all around,
// to two stitches at its end: then it may begin anywhere. So it is of shapes that grow from their centre, of closings and
// of crowns whose wedges are alike. A round of a solid shapes at most one wedge for itself, which shows nowhere on
// a body. A round that is spaced evenly is in the piece of whoever asks, no change further
// from its place than in the answer is said; mirrored, its beginning is the middle and is said.
func TestARoundsBeginningIsSaid(t *testing.T) {
	said, alike := map[string]int{}, map[string]int{}
	for path, f := range readWireFiles(t) {
		var answer struct {
			Directions []string
		}
		if len(f.Response) == 0 {
			continue
		}
		_ = json.Unmarshal(f.Response, &answer)
		rounds := roundsTold(answer.Directions)
		switch {
		case len(rounds) == 0:
		case beginsSaid.MatchString(strings.Join(answer.Directions, " ")):
			said[f.Method]++
		case f.Method == "ShapingService/PlanEvenSpacing":
			alike[f.Method]++
		default:
			alike[f.Method]++
			for _, r := range rounds {
				if !aroundAlike.MatchString(r) && (f.Method != "SolidService/PlanSolid" || !oneWedge.MatchString(r)) {
					t.Errorf("%s: it is not said where this round begins: %s", path, r)
				}
			}
		}
	}
	for _, method := range [...]string{"PlanTaper", "PlanGradedTaper", "PlanEvenSpacing"} {
		if said["ShapingService/"+method] == 0 {
			t.Errorf("no case of %s says where its round begins", method)
		}
	}
	for _, method := range [...]string{"YokeService/PlanCircularYoke", "YokeService/PlanRaglan",
		"SockService/PlanHeel", "SockService/PlanToe", "HandService/PlanThumb"} {
		if said[method] == 0 || alike[method] > 0 {
			t.Errorf("%s: %d cases say where the round begins, %d do not", method, said[method], alike[method])
		}
	}
	t.Log("said:", said, "alike all around:", alike)
}

var (
	beginsSaid = regexp.MustCompile(`[Bb]egin`)
	roundTold  = regexp.MustCompile(`^(?:Rounds? \d[^:]*|(?:In|De)crease round): (.*)$`)
	countTold  = regexp.MustCompile(`( \(\d+ stitch(es)?\))?\.$`)
	// One repeat, or one change, with at most two stitches left over at the end.
	aroundAlike = regexp.MustCompile(`^(work even.*|purl.*|(\[.*\] (twice|\d+ times)|k\d+, k2tog)(, k[12])?)$`)
	oneWedge    = regexp.MustCompile(`^k\d+, (M1L|k2tog)(, k\d+|, \[k\d+, M1L\] \d+ times)?$`)
)

// roundsTold are the rounds that directions work by their numbers or by name.
func roundsTold(directions []string) []string {
	var rounds []string
	for _, d := range directions {
		if m := roundTold.FindStringSubmatch(d); m != nil {
			rounds = append(rounds, countTold.ReplaceAllString(m[1], ""))
		}
	}
	return slices.Clip(rounds)
}
