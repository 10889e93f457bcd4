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

// elsewhere are the figures that no plan answers, each with why, or with the table of another room that has them.
var elsewhere = map[string]string{
	"raglan_ten":     "how deep a raglan is follows from its stitches, and nobody plans it of a sleeve's cast-on",
	"hh86_vest":      "../testdata/shaping/published_tapers.csv",
	"hh86_sleeve":    "../testdata/shaping/published_tapers.csv",
	"hyper_radius":   "nobody plans a plane that ruffles all over",
	"infant_garment": "a limit of the law, and no knitting: the cautions defer to the rules of the place",
	"drawstring_us":  "a limit of the law, and no knitting: the cautions defer to the rules of the place",
}

// isElsewhere reports whether a figure that no plan answers is one of those, and stands in the table that is said to have it.
func isElsewhere(t *testing.T, id string) bool {
	at, ok := elsewhere[id]
	if !ok || !strings.HasSuffix(at, ".csv") {
		return ok
	}
	return slices.ContainsFunc(knittest.TableAt(t, at), func(row map[string]string) bool { return row["id"] == id })
}

// Every published figure of stockings, heels, toes, mittens, crowns, discs, balls, armholes, caps, necks, shoulders and other
// shapes comes out as it is printed, or as it is said to differ, and why; and each that does not add up is found not to.
func TestPublishedShapes(t *testing.T) {
	checks, rows := published(), knittest.TableAt(t, "../testdata/shapes/published.csv")
	worked := 0
	for _, row := range rows {
		check, ok := checks[row["id"]]
		delete(checks, row["id"])
		if !ok {
			if !isElsewhere(t, row["id"]) {
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
	if worked+len(elsewhere) != len(rows) {
		t.Errorf("%d of %d figures are checked, and %d elsewhere", worked, len(rows), len(elsewhere))
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
