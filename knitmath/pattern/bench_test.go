package pattern

import (
	"fmt"
	"strings"
	"testing"
)

// gradedPiece is rows of about 400 stitches in ten sizes: a decrease row, a lace
// row and plain rows, each with a number for every size, 4 to a repeat.
func gradedPiece(rows int) (string, []int) {
	var b strings.Builder
	counts := make([]int, 10)
	count := func(row int) string {
		parts := make([]string, len(counts))
		for i, n := range counts {
			parts[i] = fmt.Sprint(n - 2*row)
		}
		return strings.Join(parts, ", ")
	}
	for i := range counts {
		counts[i] = 400 + 12*i
	}
	for row := 1; row <= rows; row++ {
		fmt.Fprintf(&b, "Row %d: ", row)
		switch done := (row + 3) / 4; row % 4 {
		case 1:
			fmt.Fprintf(&b, "k1, ssk, k to last 3 sts, k2tog, k1 (%s sts)\n", count(done))
		case 3:
			// 2*done stitches are gone: the middle takes 6 a repeat, the edges the rest.
			fmt.Fprintf(&b, "k2, *k2tog, yo, k1, yo, ssk, k1; rep from * to last %d (%d, %d, %d, %d, %d, %d, %d, %d, %d) sts, k to end\n",
				rest(counts[0]-2*done), rest(counts[1]-2*done), rest(counts[2]-2*done), rest(counts[3]-2*done), rest(counts[4]-2*done),
				rest(counts[5]-2*done), rest(counts[6]-2*done), rest(counts[7]-2*done), rest(counts[8]-2*done), rest(counts[9]-2*done))
		default:
			b.WriteString("p to end\n")
		}
	}
	return b.String(), counts
}

// rest is what lies beside repeats of six after two edge stitches.
func rest(n int) int { return (n-2)%6 + 6 }

// BenchmarkCheck reads and works 100 rows of 400 to 508 stitches in ten sizes.
func BenchmarkCheck(b *testing.B) {
	text, counts := gradedPiece(100)
	w := Read(text, Options{}).Work(Start{Counts: counts})
	if len(w.Findings) != 0 || w.WorkedRows[9] != 100 {
		b.Fatalf("%+v", w.Findings)
	}
	b.SetBytes(int64(len(text)))
	b.ReportAllocs()
	for b.Loop() {
		Read(text, Options{}).Work(Start{Counts: counts})
	}
}

// BenchmarkLongest is the worst that a text may ask: as many rows as are worked
// in every size, in the longest text.
func BenchmarkLongest(b *testing.B) {
	const sizes = "k1 (2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20), k to end\n"
	for _, c := range []struct{ name, text string }{
		{"rows", sizes + "Row 1: [k1, M1L, k1] to end\nRow 2: [k1, k2tog] to end\nRep Rows 1 and 2 5000 more times"},
		{"misfits", sizes + "Row 1: k1, [k2tog, yo] 4 times\nRep Row 1 9998 more times"},
		{"nests", strings.Repeat("((((k1, p1) 9 times, k1) 9 times, p1) 9 times)\n", 1100)[:MaxTextBytes]},
		{"brackets", strings.Repeat("(", MaxTextBytes)},
		{"numbers", "k1 (" + strings.Repeat("1,", MaxTextBytes/2-4)},
		{"commas", strings.Repeat("k,", MaxTextBytes/2)},
		{"stars", strings.Repeat("*k1;", MaxTextBytes/4)},
		{"words", strings.Repeat("x\n", MaxTextBytes/2)},
	} {
		b.Run(c.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				p := Read(c.text, Options{})
				p.Work(Start{Counts: []int{120}})
				Text(Compress(p.Lines), RepeatStyleStars)
				p.Mirror()
			}
		})
	}
}
