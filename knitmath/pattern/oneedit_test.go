package pattern

import (
	"math/rand/v2"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// countedRow is a row whose steps all have their number, and which claims its count: nothing in it
// is worked "to" somewhere, repeated, or told in words. Of such a row any other number of stitches
// shows: it takes more or fewer than there are.
var countedRow = regexp.MustCompile(`^((Row|Rnd|Round) [0-9]+[^:]*|(Next|Set-up|Inc|Dec|Setup) (row|rnd|round)[^:]*): ` +
	`((\[|\()?([kp][0-9]+( tbl)?|ssk|k2tog|p2tog|sk2p|s2kp|M1[LR]?|yo|kfb|pfb|[0-9() ,]+|twice|[0-9]+ times|\]|\)|, |,| )+)\.? ?` +
	`[\[(]?([0-9]+( \([0-9, ]+\))?) sts[\])]?\.?$`)

// oneStep is the number of plain stitches within such a row, of the first size or of all.
var oneStep = regexp.MustCompile(`\b[KkPp]([0-9]+)`)

// TestOneNumberOfACountedRow changes one number of stitches in rows of whole drafts that are agreed
// with, wherever by this test's own reading, which knows no more of notation than the two patterns
// above, the change must show: by one, two, twice, with its digits exchanged. None is agreed with.
func TestOneNumberOfACountedRow(t *testing.T) {
	tried := 0
	for _, text := range agreeingDrafts(t) {
		lines := strings.Split(text, "\n")
		for i, line := range lines {
			if !countedRow.MatchString(line) {
				continue
			}
			colon := strings.Index(line, ":")
			for _, at := range oneStep.FindAllStringSubmatchIndex(line, -1) {
				if at[2] < colon || !strings.Contains(line[at[2]:], "sts") {
					continue
				}
				n, _ := strconv.Atoi(line[at[2]:at[3]])
				for _, put := range editsOf(n) {
					tried++
					lines[i] = line[:at[2]] + strconv.Itoa(put) + line[at[3]:]
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: strings.Join(lines, "\n")})
					if err == nil && out.Agrees {
						t.Errorf("agreed with %q for %q", lines[i], line)
					}
				}
			}
			lines[i] = line
		}
	}
	t.Logf("%d edits", tried)
	if tried < 40 {
		t.Errorf("only %d edits", tried)
	}
}

// editsOf are other numbers that are written for one by mistake.
func editsOf(n int) []int {
	var out []int
	for _, put := range []int{n + 1, n - 1, n + 2, n - 2, 2 * n, n%10*10 + n/10} {
		if put > 0 && put != n && put < 1000 {
			out = append(out, put)
		}
	}
	return out
}

// TestCountedRowsOfOurOwn: rounds and rows of known steps, with one number another, before whatever
// may follow them. By hand: m plain stitches twice between decreases take 2m + 12 and leave 2m + 8.
func TestCountedRowsOfOurOwn(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 3))
	after := []string{"", "Rnd 3: Knit.", "BO.", "Graft the stitches.", "Knit 4 rnds.",
		"Cut yarn, draw it through the stitches and fasten off."}
	for range 120 {
		m := 4 + r.IntN(30)
		for _, put := range append(editsOf(m), m) {
			text := "CO " + strconv.Itoa(2*m+12) + " sts. Join in the round.\nRnd 1: Knit.\nRnd 2: [K1, ssk, k" + strconv.Itoa(put) +
				", k2tog, k1] twice. " + strconv.Itoa(2*m+8) + " sts.\n" + after[r.IntN(len(after))]
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if err != nil || (put == m) != (out.mistakes == 0) {
				t.Errorf("%q: %v, %s", text, err, said(&out))
			}
		}
	}
}

// TestMarkersWithinAStitch: two stitches worked together across a marker leave none to be slipped
// after them. By hand: k to n sts before the marker and k2tog end at it for n = 2 alone.
func TestMarkersWithinAStitch(t *testing.T) {
	for n := 1; n < 5; n++ {
		text := "CO 60 sts. Join in the round.\nSet-up rnd: K20, pm, k20, pm, k to end.\nDec rnd: K to m, sm, ssk, k to " + stitches(n) +
			" before m, k2tog, sm, k to end. 58 sts."
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil || (n == 2) != out.Agrees {
			t.Errorf("%d before: %v, %s", n, err, said(&out))
		}
	}
}
