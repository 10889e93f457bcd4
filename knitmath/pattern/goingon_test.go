package pattern

import (
	"math/rand"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// Until when, how often and on which rows: wordings of the trade (common practice, from memory), put together with places and
// sizes. The counts are worked out by who writes the sentence. Numbers between « and » are those of which a change by one
// shows in a count that the text claims.

// toldCase is a text, with what it begins with, and its counts and rows; no rows where a length says how many.
type toldCase struct {
	text       string
	start      []int
	ends, rows []int
	round      bool
}

// teller writes numbers as they are printed, for one size or for three.
type teller struct {
	*rand.Rand
	sizes int
	list  string // what stands around and between the numbers of the further sizes
}

func newTeller(r *rand.Rand) *teller {
	return &teller{r, []int{1, 1, 3}[r.Intn(3)], pick(r, "(, )", "[: ]", "(: )", "[:]")}
}

func (w *teller) one(list ...string) string { return pick(w.Rand, list...) }

// each is f of each size.
func (w *teller) each(f func(size int) int) []int {
	all := make([]int, w.sizes)
	for i := range all {
		all[i] = f(i)
	}
	return all
}

// n is numbers as the text prints them.
func (w *teller) n(numbers []int) string {
	text := strconv.Itoa(numbers[0])
	if len(numbers) == 1 {
		return text
	}
	var further []string
	for _, n := range numbers[1:] {
		further = append(further, strconv.Itoa(n))
	}
	return text + " " + w.list[:1] + strings.Join(further, w.list[1:len(w.list)-1]) + w.list[len(w.list)-1:]
}

// shown is numbers of which each shows where it is changed.
func (w *teller) shown(numbers []int) string { return "«" + w.n(numbers) + "»" }

func less(a, b []int) []int {
	all := slices.Clone(a)
	for i := range all {
		all[i] -= b[i]
	}
	return all
}

func plus(lists ...[]int) []int {
	all := slices.Clone(lists[0])
	for _, l := range lists[1:] {
		for i := range all {
			all[i] += l[i]
		}
	}
	return all
}

func fold(n int, list []int) []int {
	all := slices.Clone(list)
	for i := range all {
		all[i] *= n
	}
	return all
}

func (w *teller) constant(n int) []int { return w.each(func(int) int { return n }) }

// count is how a count is claimed.
func (w *teller) count(n []int) string {
	s := w.shown(n)
	return w.one(". "+s+" sts.", " - "+s+" sts.", ": "+s+" sts.", " ("+s+" sts).", ". "+s+" sts rem.", ". ["+s+" sts]",
		". "+s+" stitches.")
}

// judged is the verdict on a text: right, silently wrong, or not agreed with.
func (c *toldCase) judged(t *testing.T, text string) (right, agrees bool, out CheckedInstructions) {
	in := CheckInstructionsInput{Text: strings.NewReplacer("«", "", "»", "").Replace(text), StartStitches: c.start}
	if c.round {
		in.Construction = stitch.InTheRound
	}
	out, err := CheckInstructions(t.Context(), in)
	if err != nil {
		return false, false, out
	}
	same := equalIn(out.EndStitches, c.ends) && (c.rows == nil || equalIn(out.WorkedRows, c.rows))
	return out.Agrees && same, out.Agrees, out
}

// equalIn reports whether the counts are so many, where one may stand for all sizes.
func equalIn(got, want []int) bool {
	if len(got) == 1 && len(want) > 1 {
		return !slices.ContainsFunc(want, func(n int) bool { return n != got[0] })
	}
	return slices.Equal(got, want)
}

// sweepTold tries the texts of one kind, and each marked number of them one higher: none of those may be agreed with.
func sweepTold(t *testing.T, name string, floor int, seed int64, write func(*teller) toldCase) {
	r := rand.New(rand.NewSource(seed))
	n, right, planted := knittest.Sweep(300, 60), 0, 0
	for range n {
		c := write(newTeller(r))
		ok, agrees, out := c.judged(t, c.text)
		switch {
		case ok:
			right++
		case agrees:
			t.Errorf("%s: agreed with, and is not %v stitches in %v rows: %v in %v\n%s", name, c.ends, c.rows, out.EndStitches, out.WorkedRows,
				c.text)
		case testing.Verbose():
			t.Logf("%s: not read: %v in %v, wants %v in %v: %s\n%s", name, out.EndStitches, out.WorkedRows, c.ends, c.rows,
				judgedText(out.Findings), c.text)
		}
		if !ok {
			continue
		}
		for _, wrong := range plantedIn(c.text) {
			planted++
			if _, agrees, out := c.judged(t, wrong); agrees {
				t.Errorf("%s: a mistake is agreed with: %v in %v\n%s\n%s", name, out.EndStitches, out.WorkedRows, c.text, wrong)
			}
		}
	}
	t.Logf("%s: %d of %d, %d planted", name, right, n, planted)
	if 100*right < floor*n {
		t.Errorf("%s: %d of %d, %d %% stood", name, right, n, floor)
	}
}

// plantedIn is the text with each of its marked numbers one higher, one after the other.
func plantedIn(text string) []string {
	var all []string
	inside := false
	for i := 0; i < len(text); i++ {
		switch {
		case strings.HasPrefix(text[i:], "«"):
			inside = true
		case strings.HasPrefix(text[i:], "»"):
			inside = false
		case inside && isDigit(rune(text[i])):
			j := i
			for isDigit(rune(text[j])) {
				j++
			}
			n, _ := strconv.Atoi(text[i:j])
			all = append(all, text[:i]+strconv.Itoa(n+1)+text[j:])
			i = j - 1
		}
	}
	return all
}
