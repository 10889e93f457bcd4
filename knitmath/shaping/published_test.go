package shaping

import (
	"encoding/csv"
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// Tapers as they were printed, each with its source in the last column: how many rows
// shape, and how many rows lie between. Where a pattern says so they begin in its row;
// where it does not, anywhere. One differs: of a gusset every 5th round an even interval,
// every 4th, departs by less than a quarter of a stitch more, and is liked better here.
func TestPublishedTapers(t *testing.T) {
	file, err := os.Open(filepath.Join("..", "..", "testdata", "shaping", "published_tapers.csv"))
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	rows, err := csv.NewReader(file).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	same := 0
	for _, r := range rows[1:] {
		number := func(column int) int {
			n, err := strconv.Atoi(r[column])
			if err != nil {
				t.Fatalf("%s: %v", r[0], err)
			}
			return n
		}
		height := number(3)
		in := TaperInput{StartStitches: number(1), EndStitches: number(2), HeightRows: &height,
			Construction: map[string]stitch.Construction{"flat": stitch.Flat, "round": stitch.InTheRound}[r[4]],
			Edges:        map[string]ShapedEdges{"both": ShapedEdgesBoth, "beginning": ShapedEdgesBeginning, "end": ShapedEdgesEnd}[r[5]],
			Spread:       map[string]IntervalSpread{"": IntervalSpreadUnspecified, "fast first": IntervalSpreadFastFirst}[r[7]]}
		if r[6] != "" {
			even := number(6)
			in.EvenAfterRows = &even
		}
		if r[8] != "" {
			even := number(8) - 1
			in.EvenBeforeRows = &even
		}
		out, err := PlanTaper(in)
		if err != nil {
			t.Errorf("%s: %v", r[0], err)
			continue
		}
		var intervals []string
		for _, run := range out.Intervals {
			intervals = append(intervals, fmt.Sprintf("%dx%d", run.EveryRows[0], run.Times))
		}
		if got := strings.Join(intervals, " "); got == r[9] {
			same++
		} else {
			t.Logf("%s: %s, printed %s", r[0], got, r[9])
		}
	}
	if len(rows)-1 != 11 || same < 10 {
		t.Errorf("%d of %d are as printed", same, len(rows)-1)
	}
}
