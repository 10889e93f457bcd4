package pattern

import (
	"fmt"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// declaredPlaces are rows in which a declared word, at the sign %, is worked so often, on so many
// other stitches. Counts follow from what it takes and leaves.
var declaredPlaces = []struct {
	row          string
	times, other []int
}{
	{"Row 1: %, k5.", []int{1}, []int{5}},
	{"Row 1: K5, %.", []int{1}, []int{5}},
	{"Row 1: K5, % twice, k3.", []int{2}, []int{8}},
	{"Row 1: K1, [%] 4 times, k1.", []int{4}, []int{2}},
	{"Row 1: K1, [k2, %] 4 times, k1.", []int{4}, []int{10}},
	{"Row 1: *K2, %; rep from * 2 more times, k1.", []int{3}, []int{7}},
	{"Row 1: K2, *%, k1; rep from * once more, k2.", []int{2}, []int{6}},
	{"Row 1: [K1, [%, p1] twice, k1] 3 times.", []int{6}, []int{12}},
	{"Row 1: K1, (%, k2) x 3.", []int{3}, []int{7}},
	{"Row 1: K5 (6, 7), %, k5.", []int{1, 1, 1}, []int{10, 11, 12}},
	{"Row 1: K1, [%, k1] 3 (4, 5) times.", []int{3, 4, 5}, []int{4, 5, 6}},
	{"Row 1: K4; %; k4.", []int{1}, []int{8}},
	{"Row 1: K4 and % and k4.", []int{1}, []int{8}},
}

// TestDeclaredWordsAreHonoured: in every place, in either case, one that means something else to some
// readers too, and whatever it takes and leaves: a count off by one disagrees.
func TestDeclaredWordsAreHonoured(t *testing.T) {
	texts := 0
	for _, name := range []string{"mb", "MB", "sh", "inc", "dec", "yf", "k1b", "m1", "qx", "Wrapst", "m", "bobble", "nupp", "lace"} {
		for _, takes := range []int{0, 1, 3} {
			for _, leaves := range []int{0, 1, 2, 5} {
				own := []Abbreviation{{Name: name, TakesStitches: takes, LeavesStitches: leaves}}
				for _, place := range declaredPlaces {
					for _, word := range []string{name, strings.ToLower(name), strings.ToUpper(name)} {
						texts++
						checkDeclared(t, own, strings.Replace(place.row, "%", word, 1), place.times, place.other)
					}
				}
			}
		}
	}
	t.Logf("%d texts", texts)
}

// checkDeclared reads a row as it is, and with a count that is off by one.
func checkDeclared(t *testing.T, own []Abbreviation, row string, times, other []int) {
	t.Helper()
	var start, end []int
	for i, n := range times {
		start = append(start, other[i]+n*own[0].TakesStitches)
		end = append(end, other[i]+n*own[0].LeavesStitches)
	}
	in := CheckInstructionsInput{Text: row, StartStitches: start, Construction: stitch.Flat, Abbreviations: own}
	out, err := CheckInstructions(t.Context(), in)
	if err != nil || !out.Agrees || fmt.Sprint(spread(out.EndStitches, len(end))) != fmt.Sprint(end) {
		t.Errorf("%q on %d, %+v: %v, %d, not %d: %s", row, start, own, err, out.EndStitches, end, judgedText(out.Findings))
		return
	}
	end[0]++
	in.Text += " (" + strings.Trim(strings.Join(strings.Fields(fmt.Sprint(end)), ", "), "[]") + " sts)"
	if out, err := CheckInstructions(t.Context(), in); err != nil || out.Agrees {
		t.Errorf("%q on %d, %+v: agrees, %v", in.Text, start, own, err)
	}
}
