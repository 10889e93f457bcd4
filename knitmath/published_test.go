package knitmath_test

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// A printed is how a published figure is checked: what is answered to its question, in the words of its row.
type printed struct {
	work func(t *testing.T) string
	// ours is what is answered where that is not what is printed, and why it differs.
	ours, why string
}

// published are the checks of the published figures of shapes, by the row of shapes/published.csv.
func published() map[string]printed {
	all := map[string]printed{}
	for _, list := range []map[string]printed{publishedStockings, publishedHeels, publishedTops, publishedFlat, publishedBodies,
		publishedGarments, misprints} {
		maps.Copy(all, list)
	}
	return all
}

// elsewhere are the kinds of figures that other rooms check in tables of their own, and those that are no knitting, and the
// radius of a plane that ruffles all over, which nobody plans.
var elsewhere = []string{"raglan depth", "rates", "safety limit", "hyperbolic plane"}

// Every published figure of stockings, heels, toes, mittens, crowns, discs, balls, armholes, caps, necks, shoulders and other
// shapes comes out as it is printed, or as it is said to differ, and why; and each that does not add up is found not to.
func TestPublishedShapes(t *testing.T) {
	checks, rows := published(), knittest.TableAt(t, "../testdata/shapes/published.csv")
	worked := 0
	for _, row := range rows {
		check, ok := checks[row["id"]]
		delete(checks, row["id"])
		if !ok {
			if !slices.Contains(elsewhere, row["topic"]) {
				t.Errorf("%s: no check of %q", row["id"], row["topic"])
			}
			continue
		}
		worked++
		want := row["expected"]
		if check.ours != "" {
			if want = check.ours; check.why == "" || want == row["expected"] {
				t.Errorf("%s differs, and nobody says why", row["id"])
			}
		}
		tolerance := 0.0
		if row["tolerance"] != "" {
			tolerance = knittest.Cell(t, row["tolerance"])
		}
		if got := check.work(t); !alike(got, want, tolerance) {
			t.Errorf("%s: %q, wanted %q, printed %q", row["id"], got, want, row["expected"])
		}
	}
	for id := range checks {
		t.Errorf("%s: no such row", id)
	}
	if worked < 40 {
		t.Errorf("%d figures", worked)
	}
}

// alike reports whether two texts differ in no more than their numbers, each by so much at most.
func alike(a, b string, tolerance float64) bool {
	split := func(r rune) bool { return strings.ContainsRune(" ;,()", r) }
	return slices.EqualFunc(strings.FieldsFunc(a, split), strings.FieldsFunc(b, split), func(a, b string) bool {
		x, errX := strconv.ParseFloat(a, 64)
		y, errY := strconv.ParseFloat(b, 64)
		return a == b || errX == nil && errY == nil && math.Abs(x-y) <= tolerance
	})
}

// joined are whole numbers with something between them.
func joined(numbers []int, between string) string {
	return strings.ReplaceAll(strings.Trim(fmt.Sprint(numbers), "[]"), " ", between)
}

// must is an answer that is not refused.
func must[A any](t *testing.T, out A, err error) A {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
	return out
}
