package pattern

import (
	"fmt"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// timesPhrases are the ways to say how often: N is the number, W the number in words. more says that what was worked already is not
// among them, total that it is; neither where only the place tells. All are common practice.
var timesPhrases = []struct {
	said        string
	more, total bool
}{
	{said: "N times"}, {said: "W times"}, {"N more times", true, false}, {"W more times", true, false}, {"N times more", true, false},
	{"W times more", true, false}, {"another N times", true, false}, {"another W times", true, false}, {"a further N times", true, false},
	{"N further times", true, false}, {"N additional times", true, false}, {"an additional N times", true, false}, {"N times again",
		true, false},
	{"N times in all", false, true}, {"N times in total", false, true}, {"N times altogether", false, true}, {"a total of N times",
		false, true},
	{"for a total of N times", false, true}, {"a total of W times", false, true}, {"N times total", false, true}, {"W times in all",
		false, true},
	{"Nx more", true, false}, {"N x more", true, false}, {"Nx", false, false}, {"N more times only", true, false},
	{"exactly N times", false, false}, {"N times over", false, false}, {"N extra times", true, false}, {"for another N times", true, false},
	{"for N more times", true, false}, {"N times further", true, false}, {"N times overall", false, true}, {"in all N times", false, true},
	{"N (more) times", true, false},
}

// timesPlaces are what is worked so often, of rows that take a stitch each time: once is how often it was worked before.
var timesPlaces = []struct {
	said string
	once int
	rows int
}{
	{"Row 1: K1, k2tog, k to end.\nRow 2: Purl.\nRep Rows 1 and 2 T.", 1, 2},
	{"Row 1: K1, k2tog, k to end.\nRow 2: Purl.\nRep Rows 1-2 T.", 1, 2},
	{"Row 1: K1, k2tog, k to end.\nRow 2: Purl.\nRep last 2 rows T.", 1, 2},
	{"Row 1: K1, k2tog, k to end.\nRow 2: Purl.\nRepeat the last two rows T.", 1, 2},
	{"Row 1: K1, k2tog, k to end.\nRow 2: Purl.\nRep these 2 rows T.", 1, 2},
	{"Row 1: K1, k2tog, k to end.\nRow 2: Purl.\nWork these 2 rows T.", 1, 2},
	{"Row 1: K1, k2tog, k to end.\nRow 2: Purl.\nWork last 2 rows T.", 1, 2}, {"Dec row: K1, k2tog, k to end.\nRep dec row T.", 1, 1},
	{"Dec row: K1, k2tog, k to end.\nRep Dec row every row T.", 1, 1},
	{"Row 1: K1, k2tog, k to end.\nRow 2: Purl.\nWork Rows 1 and 2 T.", 1, 2},
	{"Row 1: K1, k2tog, k to end.\nRow 2: Purl.\nRep Rows 1 and 2, T.", 1, 2},
	{"1st row. K1, k2tog, k to end.\n2nd row. P to end.\nRep 1st and 2nd rows T.", 1, 2},
	{"1st row: K1, k2tog, k to end.\n2nd row: P.\nRep the 2 rows above T.", 1, 2},
	{"Row 1: K1, k2tog, k to end.\nRow 2: Purl.\nRep the previous 2 rows T.", 1, 2},
	{"Next row: K1, k2tog, k to end.\nNext row: Purl.\nRep last 2 rows T.", 1, 2},
	{"Row 1 (RS): K1, k2tog, k to end.\nRow 2: Purl.\nRepeat these two rows T, ending with a WS row.", 1, 2},
	{"Row 1: K1, k2tog, k to end.\nRow 2: Purl.\nRep from Row 1 T.", 1, 2}, {"Dec row: K1, k2tog, k to end.\nWork dec row T.", 1, 1},
	{"Row 1: K1, k2tog, k to end.\nRep this row T.", 1, 1}, {"Row 1: K1, k2tog, k to end.\nRep Row 1 T.", 1, 1},
	{"Row 1: K1, k2tog, k to end.\nRep last row T.", 1, 1},
}

// timesTexts are every phrase in every place, in one size and in three.
func timesTexts() []worded {
	words := map[int]string{2: "two", 3: "three", 6: "six"}
	var texts []worded
	for _, place := range timesPlaces {
		for _, phrase := range timesPhrases {
			for _, n := range [][]int{{3}, {6}, {2, 3, 4}, {0, 1, 2}} {
				if phrase.total && n[0] == 0 || len(n) > 1 && strings.ContainsAny(phrase.said, "Wx(") {
					continue
				}
				if !phrase.more && !phrase.total { // "times" alone: so many more, which is asked or told elsewhere
					continue
				}
				said := lettersFor.ReplaceAllStringFunc(strings.Replace(phrase.said, "Nx", "N\x00x", 1), func(letter string) string {
					return map[string]string{"N": asPrinted(n), "W": words[n[0]]}[letter]
				})
				said = strings.Replace(said, "\x00", "", 1)
				times := each(n, func(k int) int {
					if phrase.total {
						return k
					}
					return k + place.once
				})
				counts := []int{44, 52, 60}[:len(n)]
				end := make([]int, len(n))
				for i := range end {
					end[i] = counts[i] - times[i]
				}
				row := regexpT.ReplaceAllLiteralString(place.said, said)
				texts = append(texts, worded{text: fmt.Sprintf("CO %s sts.\n%s %s sts.", asPrinted(counts), row, asPrinted(end)),
					stitches: end,
					rows:     each(times, func(k int) int { return k * place.rows })})
			}
		}
	}
	return texts
}

// TestTimesPhrases: how often rows are worked is read wherever it stands, however it is printed; with a count that is one off it is
// not agreed with.
func TestTimesPhrases(t *testing.T) {
	texts := timesTexts()
	askWorded(t, texts, 100, 0)
	neverOneOff(t, texts, knittest.Sweep(3, 31))
}

// neverOneOff changes the last count of every so many texts by one, and wants none of them agreed with.
func neverOneOff(t *testing.T, texts []worded, step int) {
	t.Helper()
	off := 0
	for i := 0; i < len(texts); i += step {
		w := &texts[i]
		claim := asPrinted(w.stitches) + " sts."
		at := strings.LastIndex(w.text, claim)
		if at < len("CO "+claim) {
			continue
		}
		off++
		more := each(w.stitches, func(n int) int { return n })
		more[i%len(more)]++
		text := w.text[:at] + strings.Replace(w.text[at:], claim, asPrinted(more)+" sts.", 1)
		if out := asked(t, text, 0, stitch.Flat); out.Agrees {
			t.Errorf("agrees with %q", text)
		}
	}
	if off == 0 {
		t.Error("no count was changed")
	}
}
