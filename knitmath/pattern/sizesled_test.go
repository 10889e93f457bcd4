package pattern

import (
	"fmt"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// TestSizesLedIn: rows that are worked in some sizes only, said in many words before them, in two, three and five
// sizes. Which sizes these are is known, or asked; never are the rows those of all.
func TestSizesLedIn(t *testing.T) {
	type some struct {
		said  string
		sizes func(i, n int) bool // of size i of n
	}
	first := func(i, _ int) bool { return i == 0 }
	last := func(i, n int) bool { return i == n-1 }
	first2, last2 := func(i, _ int) bool { return i < 2 }, func(i, n int) bool { return i >= n-2 }
	whose := []some{{"the smallest size", first}, {"smallest size", first}, {"the first size", first}, {"the largest size", last},
		{"largest size", last}, {"the last size", last}, {"the 1st size", first}, {"the two smallest sizes", first2}, {"first two sizes", first2},
		{"two largest sizes", last2}, {"the last 2 sizes", last2}, {"the 2 larger sizes", last2}, {"1st and 2nd sizes", first2},
		{"the larger sizes", nil}, {"the smaller sizes", nil}, {"women's sizes", nil}, {"some sizes", nil}}
	leads := []string{"For W only, knit 2 more rows.", "For W, knit 2 more rows.", "In W only, knit 2 more rows.",
		"For W only: knit 2 more rows.", "On W only, work 2 more rows.", "In W, work 2 more rows."}
	asks := 0
	for _, n := range []int{2, 3, 5} {
		counts := []int{40, 48, 56, 64, 72}[:n]
		for _, w := range whose {
			if n == 2 && strings.Contains(w.said, "2") || n == 2 && strings.Contains(w.said, "two") {
				continue // of both it would be "both sizes"
			}
			for _, lead := range leads {
				text := "CO " + asPrinted(counts) + " sts.\nKnit 4 rows.\n" + strings.ReplaceAll(lead, "W", w.said) + "\nKnit 1 row."
				out := asked(t, text, 0, stitch.Flat)
				if w.sizes == nil {
					if asks++; out.Agrees {
						t.Errorf("agreed with %q", text)
					}
					continue
				}
				for i, rows := range out.WorkedRows {
					want := 5
					if w.sizes(i, n) {
						want = 7
					}
					if rows != want || !out.Agrees {
						t.Errorf("%q: %d rows in size %d, not %d; %s", text, rows, i+1, want, said(&out))
					}
				}
			}
		}
	}
	if asks == 0 {
		t.Error("nothing was asked")
	}
	for _, text := range []string{"CO 40 (48) sts.\nKnit 4 rows.\nLarger size only: Knit 2 rows.\nBO.",
		"CO 40 (48) sts.\nKnit 4 rows.\nSmaller size: Row 5: K2tog, k to end. 39 sts.\nLarger size: Row 5: K2tog, k to end. 47 sts."} {
		if out := asked(t, text, 0, stitch.Flat); !out.Agrees {
			t.Errorf("%q: %s", text, said(&out))
		}
	}
}

// TestNamedEdges: at which edge stitches are cast on or bound off is said before it is said of which rows the
// beginning or the end is meant. The rows are worked, as where no edge is named.
func TestNamedEdges(t *testing.T) {
	var texts []worded
	for _, edge := range []string{"", " at neck edge", " at the neck edge", " for the front neck", " for left sleeve", " at the armhole edge",
		" for the underarm", " at side edge", " for shoulder"} {
		for _, n := range []int{5, 14} {
			for _, end := range []string{"at end of next row", "at the end of next row"} {
				texts = append(texts, worded{text: fmt.Sprintf("CO 46 sts.\nKnit 5 rows.\nCO %d sts%s %s.\nKnit 24 rows.", n, edge, end),
					stitches: []int{46 + n}, rows: []int{30}})
			}
			for _, beg := range []string{"at beg of next row", "at the beginning of next row", "at beg of next 2 rows"} {
				k := 1
				if strings.Contains(beg, "2") {
					k = 2
				}
				texts = append(texts,
					worded{text: fmt.Sprintf("CO 46 sts.\nKnit 5 rows.\nBO %d sts%s %s.\nKnit 24 rows.", n, edge, beg),
						stitches: []int{46 - k*n}, rows: []int{29 + k}},
					worded{text: fmt.Sprintf("CO 46 sts.\nKnit 5 rows.\nCO %d sts%s %s.\nKnit 24 rows.", n, edge, beg),
						stitches: []int{46 + k*n}, rows: []int{29 + k}})
			}
		}
	}
	askWorded(t, texts, 100, 0)
}

// TestTwoStars: steps between two stars of which nothing more is said are worked until what follows them just remains,
// and must come out.
func TestTwoStars(t *testing.T) {
	for _, claim := range []string{" - N", " (N sts)", ". N sts.", " [N]", " = N"} {
		for plain := 1; plain < 8; plain++ {
			for _, after := range []int{0, 2} {
				row := fmt.Sprintf("*K%d, k2tog*", plain)
				if after > 0 {
					row += fmt.Sprintf(", k%d", after)
				}
				if after > 0 && strings.Contains(claim, "-") {
					continue // "k2 - 30" is read another way
				}
				for off := range 3 {
					text := fmt.Sprintf("CO %d sts, join.\nRnd 1: %s%s\n", 6*(plain+2)+after, row, strings.ReplaceAll(claim, "N",
						fmt.Sprint(6*(plain+1)+after+off)))
					if out := asked(t, text, 0, stitch.Flat); out.Agrees != (off == 0) {
						t.Errorf("%q: agrees %v; %s", text, out.Agrees, said(&out))
					}
				}
				text := fmt.Sprintf("CO %d sts, join.\nRnd 1: %s\n", 6*(plain+2)+after+1, row)
				if out := asked(t, text, 0, stitch.Flat); out.Agrees {
					t.Errorf("%q agrees", text)
				}
			}
		}
	}
}
