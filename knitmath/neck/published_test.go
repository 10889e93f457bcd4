package neck

import (
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// Necks and shoulders as they were printed.
func TestPublishedNecks(t *testing.T) {
	for _, row := range knittest.Table(t, "neck/published.csv") {
		in := Input{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, WidthStitches: count(t, row["width"]), NeckStitches: count(t, row["neck"]),
			ShoulderSlopeRows: count(t, row["slope_rows"]), FrontDepthRows: count(t, row["depth_rows"])}
		if row["piece"] == "back" {
			in.BackDepthRows, in.FrontDepthRows = in.FrontDepthRows, nil
			in.BackCentreStitches = count(t, row["centre"])
		} else {
			in.FrontCentreStitches = count(t, row["centre"])
		}
		out, err := PlanNeckline(in)
		if err != nil {
			t.Errorf("%s: %v", row["id"], err)
			continue
		}
		piece := out.Front
		if row["piece"] == "back" {
			piece = out.Back
		}
		var steps []int
		for _, s := range piece.Steps {
			steps = append(steps, s.Stitches)
		}
		if got := strconv.Itoa(out.ShoulderStitches); got != row["want_shoulder"] {
			t.Errorf("%s: a shoulder of %s, printed %s", row["id"], got, row["want_shoulder"])
		}
		if got := numbers(steps); row["want_steps"] != "" && got != row["want_steps"] {
			t.Errorf("%s: steps %s, printed %s", row["id"], got, row["want_steps"])
		}
		if got := numbers(out.ShoulderStepStitches); row["want_shoulder_steps"] != "" && got != row["want_shoulder_steps"] {
			t.Errorf("%s: the shoulder in %s, printed %s", row["id"], got, row["want_shoulder_steps"])
		}
	}
}

// The centre of the printed 32-stitch neck, 12 in front, is what is planned if nobody says,
// and behind, 20, of a back as deep as 8 rows.
func TestPublishedCentres(t *testing.T) {
	for depth, want := range map[int]int{20: 12, 22: 12, 8: 20} {
		if got := roundCentre(32, depth); got != want {
			t.Errorf("the centre of 32 stitches is %d in a depth of %d rows, printed %d", got, depth, want)
		}
	}
}

// A printed neck that does not close: 27 stitches for each shoulder and 33 for the neck
// are not on the 69 that are worked, but on 87 (Knitting for Dummies excerpt).
func TestPrintedNeckThatDoesNotClose(t *testing.T) {
	in := Input{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, NeckStitches: new(33), ShoulderStitches: new(27), ShoulderSlopeRows: new(6)}
	out, err := PlanNeckline(in)
	if err != nil || out.WidthStitches != 87 || numbers(out.ShoulderStepStitches) != "9 9 9" {
		t.Errorf("a width of %d, %v", out.WidthStitches, err)
	}
	in.WidthStitches = new(69)
	_, err = PlanNeckline(in)
	knittest.WantViolations(t, err, "width_stitches CONTRADICTORY", "neck_stitches CONTRADICTORY", "shoulder_stitches CONTRADICTORY")
}

// The tunics of 1918 in inches: 11 stitches are 2 in, and 80 are 14.55.
func TestPublishedWidthInInches(t *testing.T) {
	out, err := PlanNeckline(Input{Gauge: &gauge.Gauge{Stitches: 11, Rows: 15, OverCm: new(5.08)},
		WidthStitches: new(80), NeckStitches: new(24)})
	if err != nil {
		t.Fatal(err)
	}
	knittest.Near(t, "width in inches", out.WidthCm/2.54, 14.55, 0.01)
	knittest.Near(t, "share of the neck", float64(out.NeckStitches)/float64(out.WidthStitches), 0.30, 1e-9)
}

func count(t *testing.T, cell string) *int {
	t.Helper()
	if cell == "" {
		return nil
	}
	n, err := strconv.Atoi(cell)
	if err != nil {
		t.Fatal(err)
	}
	return &n
}

func numbers(list []int) string {
	words := make([]string, len(list))
	for i, n := range list {
		words[i] = strconv.Itoa(n)
	}
	return strings.Join(words, " ")
}
