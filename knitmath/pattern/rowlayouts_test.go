package pattern

import (
	"fmt"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// rowLayouts are ways in which four rows on so many stitches, the first of which is worked on the right side, are printed: A is worked in
// the first row, B in the second, C in the third and the fourth is as the second. Common practice.
var rowLayouts = []string{
	"Row 1 (RS): <A>.\nRow 2: <B>.\nRow 3: <C>.\nRow 4: <B>.",
	"1st row: <A>.\n2nd row: <B>.\n3rd row: <C>.\n4th row: As 2nd row.",
	"1st row. <A>.\n2nd row. <B>.\n3rd row. <C>.\n4th row. As 2nd row.",
	"1st row.—<A>.\n2nd row.—<B>.\n3rd row.—<C>.\n4th row.—Like 2nd row.",
	"1st Row.—<A>. 2nd Row.—<B>. 3rd Row.—<C>. 4th Row.—<B>.",
	"1st row: (RS). <A>.\n2nd row: <B>.\n3rd row: <C>.\n4th row: As 2nd row.",
	"Row 1 (RS) <A>\nRow 2 <B>\nRow 3 <C>\nRow 4 <B>",
	"Row 1: RS: <A>.\nRow 2: <B>.\nRow 3: <C>.\nRow 4: <B>.",
	"Row 1 (right side) - <A>.\nRow 2 - <B>.\nRow 3 - <C>.\nRow 4 - <B>.",
	"Row 1 [RS]: <A>\nRow 2 [WS]: <B>\nRow 3: <C>\nRow 4: as row 2",
	"R1: <A>.\nR2: <B>.\nR3: <C>.\nR4: <B>.",
	"R 1: <A>.\nR 2: <B>.\nR 3: <C>.\nR 4: <B>.",
	"R1 (RS) – <A>\nR2 (WS) – <B>\nR3 – <C>\nR4 – <B>",
	"Row 1 – <A>.\nRows 2 and 4 – <B>.\nRow 3 – <C>.",
	"Row 1 (RS): <A>.\nRow 2 and all WS rows: <B>.\nRow 3: <C>.\nRow 4: <B>.",
	"Rows 2 & 4: <B>.\nRow 1: <A>.\nRow 3: <C>.",
	"Row 1 and 2: <A>.\nRow 3: <C>.\nRow 4: <A>.",
	"Rows 1 (RS) and 3: <A>.\nRows 2 and 4: <B>.",
	"Rows 1 & 3: <A>.\nRows 2 & 4: <B>.",
	"1st and 3rd rows: <A>.\n2nd and 4th rows: <B>.",
	"1st and 3rd rows (RS). <A>.\n2nd and 4th rows. <B>.",
	"Row 1: <A>. Row 2: <B>. Row 3: <C>. Row 4: <B>.",
	"Row 1: <A>; row 2: <B>; row 3: <C>; row 4: <B>.",
	"Row 1 (RS): <A>. Row 2 (WS): <B>. Row 3: As Row 1. Row 4: As Row 2.",
	"• Row 1: <A>\n• Row 2: <B>\n• Row 3: <C>\n• Row 4: <B>",
	"1. <A>.\n2. <B>.\n3. <C>.\n4. <B>.",
	"1) <A>\n2) <B>\n3) <C>\n4) <B>",
	"1: <A>\n2: <B>\n3: <C>\n4: <B>",
	"| Row | Instructions |\n| 1 | <A> |\n| 2 | <B> |\n| 3 | <C> |\n| 4 | <B> |",
	"Row 1 | <A>\nRow 2 | <B>\nRow 3 | <C>\nRow 4 | <B>",
	"Row 1\t<A>\nRow 2\t<B>\nRow 3\t<C>\nRow 4\t<B>",
	"ROW 1: <A>.\nROW 2: <B>.\nROW 3: <C>.\nROW 4: <B>.",
	"Row one: <A>.\nRow two: <B>.\nRow three: <C>.\nRow four: <B>.",
	"First row: <A>.\nSecond row: <B>.\nThird row: <C>.\nFourth row: <B>.",
	"First row (right side): <A>.\nSecond row: <B>.\nThird row: <C>.\nFourth row: As second row.",
	"SR 1 (RS): <A>.\nSR 2: <B>.\nSR 3: <C>.\nSR 4: <B>.",
	"1st patt row: <A>.\n2nd patt row: <B>.\n3rd patt row: <C>.\n4th patt row: <B>.",
	"Pattern row 1: <A>.\nPattern row 2: <B>.\nPattern row 3: <C>.\nPattern row 4: <B>.",
	"Row 1 -- <A>.\nRow 2 -- <B>.\nRow 3 -- <C>.\nRow 4 -- <B>.",
	"Row 1 (and all odd rows): <A>.\nRow 2: <B>.\nRow 3: <A>.\nRow 4: <B>.",
	"Row 1 and every odd-numbered row: <A>.\nRow 2: <B>.\nRow 3: <A>.\nRow 4: <B>.",
	"Odd rows: <A>.\nEven rows: <B>.\nWork 4 rows as set.",
	"RS rows: <A>.\nWS rows: <B>.\nWork 4 rows.",
	"Next row (RS): <A>.\nNext row: <B>.\nNext row: <C>.\nNext row: <B>.",
	"Next row RS: <A>.\nNext row WS: <B>.\nNext row RS: <C>.\nNext row WS: <B>.",
	"Next row. <A>.\nFollowing row. <B>.\nNext row. <C>.\nNext row. <B>.",
	"Next row (right side facing): <A>.\nNext row: <B>.\nNext RS row: <C>.\nNext WS row: <B>.",
	"**Row 1:** <A>.\n**Row 2:** <B>.\n**Row 3:** <C>.\n**Row 4:** <B>.",
	"*Row 1* <A>.\n*Row 2* <B>.\n*Row 3* <C>.\n*Row 4* <B>.",
	"Row 1: <A>\n\nRow 2: <B>\n\nRow 3: <C>\n\nRow 4: <B>",
	"Row 1 (RS):\n<A>.\nRow 2:\n<B>.\nRow 3:\n<C>.\nRow 4:\n<B>.",
	"Row 1 (RS; <S> sts): <A>.\nRow 2: <B>.\nRow 3: <C>.\nRow 4: <B>.",
	"Row 1: <A> (<S> sts).\nRow 2: <B> (<S> sts).\nRow 3: <C> (<S> sts).\nRow 4: <B> (<S> sts).",
	"Row 1 = <A>\nRow 2 = <B>\nRow 3 = <C>\nRow 4 = <B>",
	"row 1. <A>\nrow 2. <B>\nrow 3. <C>\nrow 4. <B>",
	"Row No. 1: <A>.\nRow No. 2: <B>.\nRow No. 3: <C>.\nRow No. 4: <B>.",
	"Row #1: <A>.\nRow #2: <B>.\nRow #3: <C>.\nRow #4: <B>.",
	"Foundation row: <A>.\n1st row: <B>.\n2nd row: <C>.\n3rd row: <B>.",
	"Row 1/RS: <A>.\nRow 2/WS: <B>.\nRow 3/RS: <C>.\nRow 4/WS: <B>.",
	"RS Row 1: <A>.\nWS Row 2: <B>.\nRS Row 3: <C>.\nWS Row 4: <B>.",
	"Row 1 (RS, lace row): <A>.\nRow 2 (WS, rest row): <B>.\nRow 3: <C>.\nRow 4: <B>.",
}

// rowContents are what four rows that keep their count are, A, B and C, on a multiple of so many stitches and so many more.
var rowContents = []struct {
	a, b, c        string
	multiple, more int
}{
	{"Knit", "Purl", "Knit", 1, 0},
	{"K2, *p2, k2; rep from * to end", "P2, *k2, p2; rep from * to end", "K2, *p2, k2; rep from * to end", 4, 2},
	{"*K2. P2. Rep from * to last 2 sts. K2", "*P2. K2. Rep from * to last 2 sts. P2", "*K2. P2. Rep from * to last 2 sts. K2", 4, 2},
	{"K1, * yf, k2 tog, rep from * to end", "Purl", "K1, * p1, k1, rep from * to end", 2, 1},
	{"Sl 1, *k2tog, yo; rep from * to last st, k1", "Sl 1, p to end", "Sl 1, k to end", 2, 2},
}

// TestRowLayouts reads rows in every layout, with a count at their end and with one that is wrong.
func TestRowLayouts(t *testing.T) {
	failed := map[string]string{}
	for l, layout := range rowLayouts {
		for c, content := range rowContents {
			if (l+c)%knittest.Sweep(1, 3) != 0 {
				continue
			}
			stitches := content.multiple*(7+l%5) + content.more
			rows := strings.NewReplacer("<A>", content.a, "<B>", content.b, "<C>", content.c, "<S>", strconv.Itoa(stitches)).Replace(layout)
			text := fmt.Sprintf("Cast on %d sts.\n%s\nRep these 4 rows 3 times more. %d sts.", stitches, rows, stitches)
			wrong := fmt.Sprintf("Cast on %d sts.\n%s\nRep these 4 rows 3 times more. %d sts.", stitches, rows, stitches+1)
			p := corpusPiece{Text: text}
			p.Expect.Stitches, p.Expect.Rows = []int{stitches}, []int{16}
			v, out := p.judge(t)
			if v != verdictRight {
				failed[layout] += fmt.Sprintf("\n   %d %s %v %s", c, verdictNames[v], out.WorkedRows, judgedText(out.Findings))
			}
			if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: wrong}); err == nil && out.Agrees {
				t.Errorf("agreed with: %s", wrong)
			}
		}
	}
	for layout, how := range failed {
		t.Errorf("%q: %s", layout, how)
	}
}
