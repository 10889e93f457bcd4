package report

import (
	"strconv"
	"strings"
	"testing"
)

// Every noun that answers count with, alone and in numbers.
func TestCountOf(t *testing.T) {
	for singular, plural := range map[string]string{
		"stitch": "stitches", "row": "rows", "round": "rounds", "ball": "balls", "band": "bands", "change": "changes",
		"count": "counts", "gap": "gaps", "hole": "holes", "inch": "inches", "line": "lines", "mistake": "mistakes",
		"open question": "open questions", "pair": "pairs", "repeat": "repeats", "shaping round": "shaping rounds",
		"turn": "turns", "wedge": "wedges", "decrease round": "decrease rounds", "piece": "pieces", "size": "sizes",
		"needle size": "needle sizes", "yarn weight": "yarn weights", "abbreviation": "abbreviations", "ply": "plies",
	} {
		if got, want := CountOf(1, plural), "1 "+singular; got != want {
			t.Errorf("got %q, want %q", got, want)
		}
		for _, n := range []int{0, 2, 11, 21, 101, 10_000} {
			if got, want := CountOf(n, plural), strconv.Itoa(n)+" "+plural; got != want {
				t.Errorf("got %q, want %q", got, want)
			}
		}
	}
}

// An ordinal ends as it is spoken, and is spoken as its last word: the words from
// "first" to "nineteenth", and the tens, which all end in "th".
func TestOrdinal(t *testing.T) {
	spoken := strings.Fields(`zeroth first second third fourth fifth sixth seventh eighth ninth tenth
		eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth`)
	for n := range 1_200 {
		last := n % 100
		if last >= len(spoken) {
			last %= 10
		}
		word := spoken[last]
		if got, want := Ordinal(n), strconv.Itoa(n)+word[len(word)-2:]; got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}

func TestOrdinalByHand(t *testing.T) {
	for n, want := range map[int]string{
		1: "1st", 2: "2nd", 3: "3rd", 4: "4th", 10: "10th", 11: "11th", 12: "12th", 13: "13th", 14: "14th",
		20: "20th", 21: "21st", 22: "22nd", 23: "23rd", 24: "24th", 102: "102nd", 110: "110th", 111: "111th",
		112: "112th", 113: "113th", 114: "114th", 121: "121st", 1_011: "1011th", 10_000: "10000th",
	} {
		if got := Ordinal(n); got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}

func TestTimes(t *testing.T) {
	for n, want := range map[int]string{0: "0 times", 1: "once", 2: "twice", 3: "3 times", 12: "12 times", 21: "21 times"} {
		if got := Times(n); got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}

func TestAmountOf(t *testing.T) {
	for number, want := range map[string]string{"1": "1 row", "0.5": "0.5 rows", "0": "0 rows", "11": "11 rows", "1.01": "1.01 rows"} {
		if got := AmountOf(number, "rows"); got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}

func TestAre(t *testing.T) {
	for n, want := range map[int]string{0: "are", 1: "is", 2: "are", 11: "are"} {
		if got := Are(n); got != want {
			t.Errorf("%d %s, want %s", n, got, want)
		}
	}
}

func TestSentence(t *testing.T) {
	for text, want := range map[string]string{"": "", "red": "Red", "Red": "Red", "écru": "Écru", "2-ply": "2-ply", "\xff": "\xff",
		"the 1st yarn": "The 1st yarn"} {
		if got := Sentence(text); got != want {
			t.Errorf("%q begins a sentence as %q", text, got)
		}
	}
}

func TestListed(t *testing.T) {
	for want, words := range map[string][]string{
		"": nil, "back": {"back"}, "back and front": {"back", "front"}, "back, front and sleeve": {"back", "front", "sleeve"},
	} {
		if got := Listed(words); got != want {
			t.Errorf("%q of %q", got, words)
		}
	}
}
