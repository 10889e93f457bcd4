package pattern

import (
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// sizePhrase names some of n sizes, a bit for each.
type sizePhrase struct {
	said  string
	sizes int
}

// sizePhrases are the ways to name the first, the last, the middle ones of so many sizes; named says that the text calls them
// S, M, L, XL. All are common practice.
func sizePhrases(n int, named bool) []sizePhrase {
	all := 1<<n - 1
	rest := all &^ 1
	last := 1 << (n - 1)
	list := []sizePhrase{{"1st size", 1}, {"First size", 1}, {"first size", 1}, {"2nd size", 2}, {"Second size", 2}, {"1st SIZE", 1},
		{"Smallest size", 1}, {"smallest size", 1},
		{"Largest size", last}, {"largest size", last}, {"the smallest size", 1}, {"the first size", 1}, {"Last size", last}}
	if n == 2 {
		list = append(list, sizePhrase{"Larger size", 2}, sizePhrase{"Smaller size", 1}, sizePhrase{"larger size", 2},
			sizePhrase{"Large size", 2}, sizePhrase{"Small size", 1})
	}
	if n == 3 {
		list = append(list, []sizePhrase{{"2nd and 3rd sizes", 6}, {"1st and 2nd sizes", 3}, {"1st and 3rd sizes", 5},
			{"second and third sizes", 6}, {"Second and third sizes", 6},
			{"First and second sizes", 3}, {"3rd size", 4}, {"Third size", 4}, {"2nd & 3rd sizes", 6}, {"Largest 2 sizes", 6},
			{"Two largest sizes", 6}, {"Larger 2 sizes", 6}, {"two larger sizes", 6},
			{"Smallest 2 sizes", 3}, {"Two smallest sizes", 3}, {"2 smallest sizes", 3}, {"Last 2 sizes", 6}, {"First 2 sizes", 3},
			{"First two sizes", 3}, {"Middle size", 2}, {"2nd (3rd) sizes", 6},
			{"2nd, 3rd sizes", 6}, {"2nd and 3rd size", 6}, {"second & third sizes", 6}, {"2nd/3rd sizes", 6}}...)
	}
	if n == 4 {
		list = append(list, []sizePhrase{{"1st, 2nd and 3rd sizes", 7}, {"2nd, 3rd and 4th sizes", 14}, {"2nd and 4th sizes", 10},
			{"3rd and 4th sizes", 12}, {"Two largest sizes", 12}, {"3 largest sizes", 14},
			{"Largest 3 sizes", 14}, {"first, second and fourth sizes", 11}, {"2nd to 4th sizes", 14}, {"2nd-4th sizes", 14},
			{"Last 3 sizes", 14}, {"1st, 2nd, and 4th sizes", 11}, {"Middle two sizes", 6}}...)
	}
	if named {
		list = append(list, []sizePhrase{{"Size S", 1}, {"Size M", 2}, {"Sizes S and M", 3}, {"size S", 1}, {"Sizes S & M", 3}, {"S",
			1}, {"M", 2}, {"Sizes S, M", 3}, {"Sizes S/M", 3}, {"S and M", 3}, {"Sizes S (M)", 3},
			{"Size Small", 1}, {"Size Medium", 2}, {"Small", 1}, {"Medium", 2}, {"Small and Medium", 3}, {"Sizes Small and Medium", 3}}...)
		if n == 3 {
			list = append(list, []sizePhrase{{"Sizes M and L", 6}, {"Sizes M, L", 6}, {"Size L", 4}, {"Sizes M (L)", 6}, {"M and L", 6},
				{"M, L", 6}, {"Size Large", 4}, {"Large", 4}, {"Sizes M & L", 6}, {"Sizes M/L", 6}}...)
		}
		return list
	}
	list = append(list, []sizePhrase{{"Size 1", 1}, {"Size 2", 2}, {"size 1", 1}, {"Sizes 1", 1}}...)
	if n == 3 {
		list = append(list, []sizePhrase{{"Sizes 2 and 3", 6}, {"Sizes 1 and 2", 3}, {"Sizes 1 & 2", 3}, {"Sizes 2-3", 6},
			{"Sizes 2, 3", 6}, {"Sizes 2/3", 6}, {"Sizes 2 (3)", 6}, {"Size 2 (3)", 6}, {"Size 3", 4}, {"Sizes 2 & 3", rest}}...)
	}
	return list
}

// sizePlaces are how a text says what is worked for some sizes, P, and goes on with all, A.
var sizePlaces = []string{
	"P only: Knit 2 rows.\nA: Knit 1 row.", "P only. Knit 2 rows.\nA. Knit 1 row.", "P only:\nKnit 2 rows.\nA:\nKnit 1 row.",
	"P only\nKnit 2 rows.\nA\nKnit 1 row.", "P ONLY:\nKnit 2 rows.\nA:\nKnit 1 row.",
	"P only - Knit 2 rows.\nA - Knit 1 row.", "P only—Knit 2 rows.\nA—Knit 1 row.", "P only, knit 2 rows.\nA, knit 1 row.",
	"P: Knit 2 rows.\nA: Knit 1 row.", "For P only: Knit 2 rows.\nFor A: Knit 1 row.",
	"For P only, knit 2 rows.\nFor A, knit 1 row.", "For P only\nKnit 2 rows.\nFor A\nKnit 1 row.",
	"For P: Knit 2 rows.\nFor A: Knit 1 row.", "(P only): Knit 2 rows.\n(A): Knit 1 row.", "(P only) Knit 2 rows.\n(A) Knit 1 row.",
	"[P only] Knit 2 rows.\n[A] Knit 1 row.", "P only: Work 2 rows in St st.\nA: Work 1 row.",
	"P only: Work 2 rows even.\nNext row (A): Knit.", "Next row (P only): Knit.\nNext row (P only): Knit.\nNext row: Knit.",
	"P only: Work a further 2 rows in garter st.\nA: Knit 1 row.", "P only:\nRow 5: Knit.\nRow 6: Knit.\nA:\nNext row: Knit.",
	"P only: Rep last 2 rows once more.\nA: Knit 1 row.", "P only. Work 2 rows in st st.\nA. K 1 row.",
	"P only: Knit 2 rows.\n\nA: Knit 1 row.", "P only:\nKnit 2 rows.\n\nA:\nKnit 1 row.", "P only; knit 2 rows.\nA; knit 1 row.",
}

// sizePlaced is a place with words for some sizes and for all; nothing where they do not go together.
func sizePlaced(said, place, whole string, named bool) string {
	if !strings.HasPrefix(place, "P") && len(said) > 2 && said[0] >= 'A' && said[0] <= 'Z' && !named {
		said = strings.ToLower(said[:1]) + said[1:]
	}
	if strings.Contains(said, "(") && strings.Contains(place, "(P") || // brackets in brackets
		!strings.Contains(said, "ize") && !strings.Contains(place, "P only") && !strings.Contains(place, "P ONLY") {
		return ""
	}
	text := strings.ReplaceAll("\n"+place, "P ONLY", strings.ToUpper(said)+" ONLY")
	return strings.NewReplacer("(P", "("+said, "P only", said+" only", "For P", "For "+said, "P:", said+":", "For A", "For all sizes",
		"(A)", "("+whole+")", "[A]", "["+whole+"]", "\nA", "\n"+whole).Replace(text)[1:]
}

// sizeTexts are every phrase in every place.
func sizeTexts() []worded {
	var texts []worded
	for n := 2; n <= 4; n++ {
		for _, named := range []bool{false, true} {
			counts := []int{40, 44, 48, 52}[:n]
			head := "CO " + asPrinted(counts) + " sts.\nRow 1: Knit.\nRow 2: Purl.\nRep Rows 1 and 2 once more.\n"
			if named {
				head = "Sizes: S (" + strings.Join([]string{"M", "L", "XL"}[:n-1], ", ") + ")\n" + head
			}
			for k, phrase := range sizePhrases(n, named) {
				for i, place := range sizePlaces {
					whole := []string{"All sizes", "ALL SIZES", "All Sizes"}[(i+k)%3]
					text := sizePlaced(phrase.said, place, whole, named)
					if text == "" {
						continue
					}
					rows := make([]int, n)
					for size := range rows {
						if rows[size] = 5; phrase.sizes>>size&1 == 1 {
							rows[size] = 7
						}
					}
					texts = append(texts, worded{text: head + text, stitches: counts, rows: rows})
				}
			}
		}
	}
	return texts
}

// TestSizePhrases: for which sizes something is worked is known, however they are called.
func TestSizePhrases(t *testing.T) {
	askWorded(t, sizeTexts(), 100, 0)
}

// TestNoSizePassedOver: words of sizes that the text does not name, or that may be any of them, are asked about and never a heading
// that is passed over.
func TestNoSizePassedOver(t *testing.T) {
	for _, who := range []string{"Larger sizes", "Smaller sizes", "Women's sizes", "Misses' sizes", "Some sizes", "Size 9", "4th size",
		"Plus sizes", "Size XXL",
		"Middle sizes", "Tall size", "Three largest sizes", "Larger size", "Adult sizes"} {
		for _, place := range sizePlaces {
			if !strings.Contains(place, "P only") || strings.HasPrefix(place, "Next") {
				continue
			}
			text := strings.NewReplacer("P only", who+" only", "For A", "For all sizes", "(A)", "(All sizes)", "[A]", "[All sizes]",
				"\nA", "\nAll sizes").Replace(place)
			if out := asked(t, "CO 40 (44, 48) sts.\nRow 1: Knit.\nRow 2: Purl.\nRep Rows 1 and 2 once more.\n"+text, 0,
				stitch.Flat); out.Agrees {
				t.Errorf("agrees with %q", text)
			}
		}
	}
	for _, row := range []string{"Knit 2 rows for larger sizes only.", "Knit 2 rows (larger sizes only).",
		"Dec 1 st at each end of next row and, for the largest size only, on foll row.", "Row 2: K2tog, k to end (size 3 only).",
		"BO 2 sts at beg of next 2 rows, in women's sizes only.", "Work in St st for 2 rows, in plus sizes only."} {
		if out := asked(t, "CO 40 (44, 48) sts.\nRow 1: Knit.\n"+row, 0, stitch.Flat); out.Agrees {
			t.Errorf("agrees with %q", row)
		}
	}
	for row, want := range map[string][]int{"For the 3rd size work 2 rows.": {1, 1, 3}, "In the largest size work 2 more rows.": {1, 1, 3},
		"3rd Size Only: Work 2 rows. 1st and 2nd Sizes Only: Work 1 row. All Sizes: K 1 row.": {3, 3, 4},
		"Knit 2 rows (first size only).": {3, 1, 1}} {
		if out := asked(t, "CO 40 (44, 48) sts.\nRow 1: Knit.\n"+row, 0, stitch.Flat); !out.Agrees || !slices.Equal(out.WorkedRows, want) {
			t.Errorf("%q: %v rows, not %v: %s", row, out.WorkedRows, want, said(&out))
		}
	}
}

// TestSizesAreSaid: the words that say for which sizes something is worked are told as that, and not as passed over.
func TestSizesAreSaid(t *testing.T) {
	for words, want := range map[string]string{
		"First size only.": "what follows is for size 1", "2nd and 3rd sizes only:": "what follows is for sizes 2, 3",
		"All sizes:": "what follows is for all sizes",
	} {
		text := "CO 88 (96, 104) sts.\n" + words + "\nKnit 2 rows."
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil || len(out.Findings) != 1 || out.Findings[0].Kind != KindReading || out.Findings[0].Description != want {
			t.Errorf("%q: %v, %v", text, err, out.Findings)
		}
	}
}
