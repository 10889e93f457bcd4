package shortrow

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

// What a designer prints: where to begin, every row in order, what is on the
// needle after them. A wedge tall at the left begins on the wrong side and has an
// odd number of rows, so that a right-side row is next.
func TestWedgeDirections(t *testing.T) {
	six := 6
	out, err := PlanWedge(WedgeInput{WidthStitches: 24, RiseRows: &six, TallEnd: TallEndLeft, Spread: TurnSpreadInterleaved})
	if err != nil {
		t.Fatal(err)
	}
	d := out.Directions()
	want := []string{"Row 1 (WS): p20, w&t.", "Row 2 (RS): k20.", "Row 3 (WS): p12, w&t.", "Row 4 (RS): k12.", "Row 5 (WS): p4, w&t.",
		"Row 6 (RS): k4.", "Row 7 (WS): [p4, p1 tog with its wrap, p3] 3 times.",
		"All gaps are closed: 24 stitches, and a right-side row is next."}
	if d[0] != "Begin with 24 stitches on the needle and a wrong-side row to work." || !slices.Equal(d[2:], want) {
		t.Errorf("%q", d)
	}
	for method, word := range map[TurnMethod]string{TurnMethodUnspecified: "Note: w&t: ", TurnMethodGerman: "Note: make DS: ",
		TurnMethodYarnOver: "Note: the yo "} {
		out, err := PlanWedge(WedgeInput{WidthStitches: 24, RiseRows: &six, TallEnd: TallEndLeft, TurnMethod: method})
		if err != nil || !strings.HasPrefix(out.Directions()[1], word) {
			t.Errorf("method %d: %q, %v", method, out.Directions()[1], err)
		}
	}
}

// A disc is gathered at its centre, a ring is not; less than a full turn lies flat
// or makes a cone, more ruffles. All have their rows, kind by kind.
func TestCircleDirections(t *testing.T) {
	width, wedges := 20, 8
	for _, c := range []struct {
		inner, turn float64
		join, last  string
	}{
		{0, 360, "To close the circle, bind off and sew", "Close the centre: "},
		{5, 360, "To close the circle, bind off and sew", "To close the circle, "},
		{0, 270, "Bind off. The piece lies flat, as part of a circle. For a cone, bind off", "Close the centre: "},
		{5, 400, "The piece is more than a full turn and ruffles. To close it, bind off", "The piece is"},
	} {
		out, err := PlanCircleOfWedges(CircleInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, WidthStitches: &width, WedgeCount: &wedges,
			InnerRadiusCm: &c.inner, TurnDegrees: &c.turn})
		if err != nil {
			t.Fatal(err)
		}
		d := out.Directions()
		rows := 0
		for _, w := range out.Wedges {
			rows += len(w.Rows)
		}
		named := 0
		for _, line := range d {
			if strings.HasPrefix(line, "Row ") {
				named++
			}
		}
		joined := slices.ContainsFunc(d, func(line string) bool { return strings.HasPrefix(line, c.join) })
		if named != rows || !joined || !strings.HasPrefix(d[len(d)-1], c.last) {
			t.Errorf("inner %v, turn %v: %d of %d rows, %q", c.inner, c.turn, named, rows, d[len(d)-3:])
		}
	}
}

// The order stands before the rows, so that nobody who works down the lines works
// a wedge too many; and what is repeated in it is said once. Read back, it is the
// sequence.
func TestCircleOrderComesFirst(t *testing.T) {
	for width := 8; width <= 60; width += 4 {
		for wedges := 5; wedges <= 40; wedges += 3 {
			for _, inner := range []float64{0, 4} {
				out, err := PlanCircleOfWedges(CircleInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, WidthStitches: &width,
					WedgeCount: &wedges, InnerRadiusCm: &inner})
				if err != nil {
					continue
				}
				d := out.Directions()
				order := slices.IndexFunc(d, func(line string) bool { return strings.HasPrefix(line, "Work ") })
				if order < 0 || order > slices.Index(d, "Wedge 1:") {
					t.Fatalf("%d wedges of %d stitches: the order is line %d of %q", wedges, width, order, d)
				}
				words, _, _ := strings.Cut(d[order], ". ")
				_, words, _ = strings.Cut(words, ": ")
				var want []int
				for _, run := range out.Sequence {
					want = append(want, slices.Repeat([]int{run.WedgeNumber}, run.Times)...)
				}
				if got := readOrder(t, words); !slices.Equal(got, want) {
					t.Fatalf("%q reads %v, want %v", words, got, want)
				}
			}
		}
	}
}

// readOrder reads the order of wedges as its words say it.
func readOrder(t *testing.T, words string) []int {
	t.Helper()
	count := func(s string) int {
		if s == "twice" {
			return 2
		}
		n, err := strconv.Atoi(strings.TrimSuffix(s, " times"))
		if err != nil {
			t.Fatalf("%q: %v", words, err)
		}
		return n
	}
	var all []int
	group := -1
	for _, part := range strings.Split(words, ", then ") {
		if rest, ok := strings.CutPrefix(part, "["); ok {
			group, part = len(all), rest
		}
		part, after, closed := strings.Cut(part, "] ")
		name, often, several := strings.Cut(part, " (")
		n := 1
		if several {
			n = count(strings.TrimSuffix(often, ")"))
		}
		all = append(all, slices.Repeat([]int{count(strings.TrimPrefix(name, "wedge "))}, n)...)
		if closed {
			all = append(all[:group], slices.Repeat(all[group:], count(after))...)
		}
	}
	return all
}

func TestOrderWords(t *testing.T) {
	for want, runs := range map[string][]CircleWedgeRun{
		"wedge 1 (8 times)":                     {{1, 8}},
		"[wedge 1, then wedge 2] 8 times":       slices.Repeat([]CircleWedgeRun{{1, 1}, {2, 1}}, 8),
		"[wedge 1, then wedge 2] 7 times":       slices.Repeat([]CircleWedgeRun{{1, 1}, {2, 1}}, 7),
		"wedge 1 (twice), then wedge 2":         {{1, 2}, {2, 1}},
		"[wedge 1 (twice), then wedge 2] twice": {{1, 2}, {2, 1}, {1, 2}, {2, 1}},
		"[wedge 1, then wedge 2] 3 times, then wedge 1 (3 times)": append(slices.Repeat([]CircleWedgeRun{{1, 1}, {2, 1}}, 3),
			CircleWedgeRun{1, 3}),
	} {
		if got := OrderWords(runs); got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}

// What comes after all wedges is told as that where there are several.
func TestOnceAllWedgesAreWorked(t *testing.T) {
	for wedges, want := range map[int]bool{1: false, 8: true} {
		out, err := PlanCircleOfWedges(CircleInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, WidthStitches: new(20 + 200/wedges),
			WedgeCount: &wedges, TurnDegrees: new(45.0)})
		if err != nil {
			t.Fatal(err)
		}
		if got := slices.Contains(out.Directions(), "Once all "+strconv.Itoa(wedges)+" wedges are worked:"); got != want ||
			!want && strings.Contains(strings.Join(out.Directions(), " "), "Once all") {
			t.Errorf("%d wedges: %v", wedges, got)
		}
	}
}
