package pattern

import (
	"fmt"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// lengthsPrinted are lengths as patterns print them, in one unit and in two, about so long and from so much to so much. All are
// common practice.
var lengthsPrinted = []string{
	"5 cm", "5cm", "5 cms", "5 centimetres", "5 centimeters", "50 mm", "6.5 cm", "6,5 cm", "2\"", "2″", "2”", "2''", "2 in", "2in",
	"2 ins", "2 inches", "two inches",
	"1 inch", "one inch", "2 in.", "2½\"", "2½ in", "2 ½ inches", "2 1/2\"", "2-1/2\"", "2.5\"", "2 ½\"", "½ inch", "1/2\"",
	"2\"/5 cm", "2\"/5cm", "2 in/5 cm", "2in/5cm", "2 inches/5 cm", "2in./5cm", "5 cm/2 in", "5 cm/2\"", "5cm/2in", "5 cm / 2 in",
	"2\" / 5 cm",
	"2\" (5 cm)", "2\" [5 cm]", "2\"[5cm]", "2\"(5cm)", "2 in (5 cm)", "2 in [5 cm]", "2 in. (5 cm)", "2 in. [5 cm]", "2 inches (5 cm)",
	"2 inches [5 cm]", "2 ins (5 cm)",
	"2½\" [6.5 cm]", "2½ in (6.5 cm)", "2½\"/6.5 cm", "2 1/2 in. (6.5 cm)", "2-1/2\" (6.5 cm)", "2½ inches/6.5 cm", "2¼ in. [5.5 cm]",
	"2.5 in / 6.5 cm",
	"5 cm (2 in)", "5 cm (2\")", "5 cm [2\"]", "5 cm [2 in]", "5cm (2in)", "5cm [2in]", "5 cm (2 in.)", "5 cm (2 inches)",
	"6 cm [2¼ in]", "6.5 cm (2½ in)", "6.5cm (2½\")", "5 cms (2 ins)",
	"2\" or 5 cm", "5 cm or 2 in", "5 cm = 2\"",
	"5-6 cm", "5–6 cm", "5 - 6 cm", "5 to 6 cm", "2-2½\"", "2 to 2½ inches", "2–2½ in (5–6 cm)",
	"about 5cm", "about 5 cm", "about 2\"", "approx 5 cm", "approx. 5 cm", "approximately 2 in (5 cm)", "around 5 cm", "at least 5 cm",
	"roughly 2\"", "about 2\" [5 cm]", "a scant 2\"",
}

// lengthsGradedPrinted are lengths of three sizes.
var lengthsGradedPrinted = []string{
	"5 (6, 7) cm", "5 [6, 7] cm", "5 [6:7] cm", "5 (6:7) cm", "5 (6;7) cm", "5(6,7)cm", "5 (6-7) cm", "5{6-7} cm", "5{6–7} cm",
	"5-6-7 cm", "5/6/7 cm", "5, 6, 7 cm", "5 (6) 7 cm", "(5, 6, 7) cm",
	"7.5 (8, 8.5) cm", "7.5 [8:8.5] cm", "7.5{8–8.5} cm", "2 (2, 3)\"", "2 (2½, 3)\"", "2 (2½, 3) in", "2 (2½, 3) inches",
	"2½ (3, 3½)\"", "2 [2½: 3] ins", "2 1/2 (3, 3 1/2)\"",
	"2½{3–3½}\"", "2 (2½, 3) in.", "2 (2½, 3)\" [5 (6.5, 7.5) cm]", "2 (2½, 3)\" (5 (6.5, 7.5) cm)", "2 (2½, 3)\"/5 (6.5, 7.5) cm",
	"2 (2½, 3) in [5 (6.5, 7.5) cm]",
	"5 (6.5, 7.5) cm [2 (2½, 3) in]", "5 (6.5, 7.5) cm (2 [2½, 3] in)", "5 (6.5, 7.5) cm / 2 (2½, 3) in",
	"5 [6.5:7.5] cm (2 [2½:3] in)", "2{2½–3}\" [5{6.5–7.5} cm]", "2 (2½-3)\" [5 (6.5-7.5) cm]",
	"2 (2½, 3) in. (5 [6.5, 7.5] cm)", "2\" (2½\", 3\")", "5 cm (6 cm, 7 cm)", "5cm (6cm, 7cm)", "about 5 (6, 7) cm",
	"2\" (2½\", 3\") [5 (6.5, 7.5) cm]", "2 (2½, 3) in / 5 (6.5, 7.5) cm",
	"5 (6, 6) cm", "2 (2, 2½) in. [5 (5, 6.5) cm]", "5 cm", "2\" [5 cm]", "2\"/5 cm", "2 in (5 cm)",
}

// lengthPlaces are what is worked as far as a length L, of pieces of C stitches, with what changes. D is C less 2, E is C less 8,
// I is C and 6.
var lengthPlaces = []struct {
	said   string
	change int
	round  bool
}{
	{said: "Work in K2, P2 rib for L."}, {said: "Work in k2, p2 rib for L, ending with a WS row."},
	{said: "Work in k2/p2 rib for L, ending with a wrong side row."},
	{said: "Work K1, P1 rib for L."}, {said: "Work in K1, P1 rib until piece measures L."}, {said: "Work L in k1, p1 rib."},
	{said: "Work L of k2, p2 rib."}, {said: "Rib for L."},
	{said: "Work L in St st."}, {said: "Knit every row for L."}, {said: "Work in garter st for L."},
	{said: "Work in garter st (knit every row) for L."}, {said: "Work in stockinette stitch for L."},
	{said: "Work even until piece measures L."}, {said: "Work even until piece measures L from cast-on edge."},
	{said: "Work even until piece measures L from beg, ending with a WS row."},
	{said: "Work in St st until piece measures L from CO edge, ending after a WS row."}, {said: "Cont in St st until work measures L."},
	{said: "Continue straight until work measures L from beginning."},
	{said: "Cont without shaping until work measures L, ending with RS facing for next row."}, {said: "Work even for L."},
	{said: "Work straight for L."}, {said: "Work in patt for L more."},
	{said: "Continue in St st for another L."}, {said: "Work even for a further L."}, {said: "Work a further L in St st."},
	{said: "Work L more in St st."}, {said: "Continue in St st for L, or desired length."},
	{said: "Work in St st until piece measures L or desired length."},
	{said: "Work even until piece measures L, or desired length to underarm."},
	{said: "Work even until piece measures L [or desired length]."},
	{said: "Row 1: Knit.\nRow 2: Purl.\nRep Rows 1 and 2 until piece measures L."},
	{said: "Row 1: Knit.\nRow 2: Purl.\nRep last 2 rows for L."},
	{said: "Row 1: Knit.\nRow 2: Purl.\nRep last 2 rows until work from beg measures L, ending with a 2nd row."},
	{said: "Row 1: Knit.\nRow 2: Purl.\nRep these 2 rows until work measures L from beg, ending on a 2nd row and inc 6 sts " +
		"evenly across last row. I sts.", change: 6},
	{said: "1st row: *K1, p1; rep from * to end.\nRep this row for L, inc 6 sts evenly across last row. I sts.", change: 6},
	{said: "When piece measures L, dec 1 st each end of next row. D sts.", change: -2},
	{said: "When work measures L from cast-on edge, cast off 4 sts at beg of next 2 rows. E sts.", change: -8},
	{said: "Cont in St st until work measures L, then dec 1 st at each end of next row. D sts.", change: -2},
	{said: "At L, dec 1 st each end of next row. D sts.", change: -2},
	{said: "Work in St st for L. Next row: K2tog, k to last 2 sts, ssk. D sts.", change: -2},
	{said: "Work in rib as set until cuff measures L.\nChange to larger needles."},
	{said: "Knit 4 rows (about L)."}, {said: "Knit 4 rows, or until piece measures L."},
	{said: "Work even in St st until sleeve measures L from underarm."},
	{said: "Cont until armhole measures L, ending with a WS row.\nBO 4 sts at beg of next 2 rows. E sts.", change: -8},
	{said: "Join in the rnd.\nWork in k2, p2 rib for L.", round: true},
	{said: "Join.\nWork in rnds of St st until piece measures L from CO edge.", round: true},
	{said: "Join in the rnd.\nKnit every rnd until piece measures L.", round: true},
	{said: "Join in the rnd.\nKnit in the round for L.", round: true},
	{said: "Join in the rnd.\nWork K1, P1 rib for L. Change to larger needle.\nKnit L.", round: true},
	{said: "Join in the rnd.\nCont in St st until hat measures L from brim.", round: true},
	{said: "Knit L.\nKnit 2 rows."},
	{said: "Change to larger needles and work in St st until piece measures L from beg, ending with a WS row."},
	{said: "Work in garter stitch until the piece is L long."}, {said: "Work even until L from cast-on edge."},
	{said: "Work even to L."}, {said: "Work in St st until the work measures L in length."},
	{said: "Knit 4 rows. The piece should now measure about L."}, {said: "Knit 4 rows.\nCut yarn, leaving a L tail."},
	{said: "Knit 4 rows. Work should measure L from beg."}, {said: "Work in St st to a depth of L."},
	{said: "Work even in St st until piece measures L from last dec."},
	{said: "Work even until piece measures L less than desired length."},
	{said: "Work even until back measures L from beg, ending with a purl row."},
}

// lengthTexts are every place with every length that reads well in it.
func lengthTexts() []worded {
	var texts []worded
	for _, place := range lengthPlaces {
		for graded, lengths := range [][]string{lengthsPrinted, lengthsGradedPrinted} {
			sizes := 1 + 2*graded
			counts := []int{44, 52, 60}[:sizes]
			for _, l := range lengths {
				about := l[0] == 'a' || l[0] == 'r'
				if about && strings.Contains(place.said, "about L") || strings.Contains(place.said, "a L tail") && (about || sizes > 1) ||
					about && strings.Contains(place.said, "L more") {
					continue
				}
				if strings.HasSuffix(l, ".") && (strings.Contains(place.said, "L.")) {
					l = strings.TrimSuffix(l, ".")
				}
				by := func(k int) []int { return each(counts, func(n int) int { return n + k }) }
				text := strings.NewReplacer("L", l, "D", asPrinted(by(-2)), "E sts", asPrinted(by(-8))+" sts", "I sts",
					asPrinted(by(6))+" sts").Replace(
					strings.ReplaceAll(place.said, "CO edge", "cast-on edge"))
				texts = append(texts, worded{text: fmt.Sprintf("CO %s sts.\n%s", asPrinted(counts), text), stitches: by(place.change)})
			}
		}
	}
	return texts
}

// TestLengthsAsPrinted: a length is read wherever one stands, however it is printed, and changes no count; a count beside it that
// is one off is not agreed with.
func TestLengthsAsPrinted(t *testing.T) {
	texts := lengthTexts()
	askWorded(t, texts, 100, 0)
	neverOneOff(t, texts, knittest.Sweep(7, 61))
}

// TestNoLengths: a number before "in", or before a quotation mark that closes, is a number of stitches or of times.
func TestNoLengths(t *testing.T) {
	for text, want := range map[string]int{
		"Row 1: K2, inc 1 in next st, k to end.":                                41,
		"Row 1: Inc 1 in each of first 2 sts, k to end.":                        42,
		"Row 1: K2, p2 in rib to end.":                                          0,
		"Row 1: \"K2, p2\" 10 times.":                                           0,
		"Row 1: K2, k2tog, k to end.\nRow 2: Knit.\nRep \"Rows 1 and 2\" once.": 0,
		"Rows 1-4: Knit. Rep Rows 1 and 2 3 times in all. 40 sts.":              40,
		"Using US 8 (5 mm) needles, knit 4 rows.":                               40,
		"Change to 5 mm (US 8) needles. Knit 4 rows.":                           40,
		"Row 1: K2, *yo, k2tog; rep from * 3 in total, k to end.":               0,
	} {
		if out := asked(t, "CO 40 sts.\n"+text, 0, stitch.Flat); want > 0 && out.EndStitches[0] != want || out.Agrees != (want > 0) {
			t.Errorf("%q: %d, wanted %d: %s", text, out.EndStitches, want, said(&out))
		}
	}
	for _, text := range []string{"Work in St st for 5 (6) cm.", "Work even until piece measures 2 (2½, 3, 3½)\".",
		"Work 5 (6, 7, 8) cm in St st.", "Cont until work measures 5 [6] cm from beg."} {
		if out := asked(t, "Sizes: S (M, L)\nCO 40 (44, 48) sts.\n"+text, 0, stitch.Flat); out.Agrees {
			t.Errorf("agrees with %q for three sizes", text)
		}
	}
}
