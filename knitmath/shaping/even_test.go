package shaping

import (
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// Fewer rows kept even are offered where they would do: as many as can stay at the
// end, else as many as can stay at the start, else none at all. Every number is
// asked here.
func TestFewerEvenRowsAreOfferedWhereTheyWouldDo(t *testing.T) {
	offered := map[string]int{}
	for rows := 4; rows <= 24; rows += 2 {
		for before := range 5 {
			for after := range 7 {
				for variant := range 2 * 2 * 2 {
					in := TaperInput{StartStitches: 30, EndStitches: 14 + 32*(variant%2), HeightRows: &rows, EvenBeforeRows: &before,
						EvenAfterRows: &after, RowChoice: RowChoice(1 + variant/2%2), FirstSide: stitch.Side(1 + variant/4)}
					text := taperRefusal(in)
					if !strings.Contains(text, "may shape") {
						continue
					}
					want := lessEvenWanted(in)
					_, got, _ := strings.Cut(text, "rows")
					if want == "" && strings.Contains(got, "kept even") || !strings.HasSuffix(text, want) || strings.HasSuffix(text, ", or ") {
						t.Fatalf("%s: %q, want %q", describeTaper(in), text, want)
					}
					offered[strings.TrimLeft(want, "0123456789 ")]++
				}
			}
		}
	}
	if len(offered) < 5 {
		t.Errorf("offered %v", offered)
	}
}

// lessEvenWanted tries one number of even rows after the other.
func lessEvenWanted(in TaperInput) string {
	before, after := *in.EvenBeforeRows, *in.EvenAfterRows
	fits := func(before, after int) bool {
		in.EvenBeforeRows, in.EvenAfterRows = &before, &after
		return taperRefusal(in) == ""
	}
	kept := func(n int, where string) string {
		return report.CountOf(n, "rows") + " kept even at the " + where
	}
	for n := after - 1; n >= 0; n-- {
		if fits(before, n) {
			return kept(n, "end")
		}
	}
	for n := before - 1; n >= 0; n-- {
		if fits(n, after) {
			return kept(n, "start")
		}
	}
	if fits(0, 0) {
		return "no rows kept even"
	}
	return ""
}

// A piece begins and ends even where a row can be spared, and so does a side; the
// rows beside a point within it need not. Three shaping rows of five lie nearest to
// the line in rows 1, 3 and 5.
func TestAPieceBeginsAndEndsEven(t *testing.T) {
	numbers := func(rows []ShapingRow) (n []int) {
		for _, r := range rows {
			n = append(n, r.RowNumber)
		}
		return n
	}
	for _, c := range []struct {
		in   ShapedSideInput
		want []int
	}{
		{sideOf(20, [2]int{5, 14}), []int{2, 3, 4}},
		{sideOf(20, [2]int{3, 14}), []int{1, 2, 3}}, // none to spare
		{sideOf(20, [2]int{5, 14}, [2]int{8, 14}, [2]int{13, 20}), []int{2, 3, 5, 9, 11, 12}},
	} {
		c.in.RowChoice, c.in.Spread = RowChoiceAny, IntervalSpreadInterleaved
		out, err := PlanShapedSide(c.in)
		if got := numbers(out.Rows); err != nil || !slices.Equal(got, c.want) {
			t.Errorf("%s: rows %v, want %v; %v", describeSide(c.in), got, c.want, err)
		}
	}
	out, err := PlanTaper(TaperInput{StartStitches: 20, EndStitches: 14, HeightRows: new(5), RowChoice: RowChoiceAny,
		Spread: IntervalSpreadInterleaved})
	if got := numbers(out.Rows); err != nil || !slices.Equal(got, []int{2, 3, 4}) {
		t.Errorf("rows %v, %v", got, err)
	}
}

// Rows that no point parts by less than two are left where they are, and nothing is
// said of them: of 5 rows the line gives 2 and 4 to two, and to three of the next 5
// rows 6, 8 and 9, as row 10 is the last; and 4 rows that all shape are far from one
// in the middle of 16.
func TestRowsThatAreApartStay(t *testing.T) {
	for _, in := range []ShapedSideInput{
		sideOf(30, [2]int{5, 26}, [2]int{10, 20}),
		sideOf(20, [2]int{4, 12}, [2]int{20, 14}),
	} {
		in.RowChoice, in.Spread = RowChoiceAny, IntervalSpreadInterleaved
		out, err := PlanShapedSide(in)
		if err != nil || slices.ContainsFunc(out.Notices, isJoinKept) {
			t.Errorf("%s: %+v, %+v, %v", describeSide(in), out.Rows, out.Notices, err)
		}
	}
}

func isJoinKept(n report.Notice) bool { return n.Reason == JoinKeptEven }
