package shaping

import (
	"errors"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

var (
	doubleTo    = regexp.MustCompile(`use a double decrease \(k3tog, sssk, CDD\)(?: to ([\d or]+) stitches)?`)
	overRows    = regexp.MustCompile(`work it over (\d+) rows, to ([\d, then]+)`)
	fitsAtMost  = regexp.MustCompile(`which gives (\d+) stitch`)
	endingWith  = regexp.MustCompile(`end with ([\d or]+) stitches`)
	edgesAtMost = regexp.MustCompile(`edge_stitches may be at most (\d+)`)
)

// Every remedy that a refused spacing names is asked, and planned.
func TestRemediesOfSpacingsWork(t *testing.T) {
	offered := map[string]int{}
	ops := []stitch.Op{0, stitch.K3tog, stitch.CDD, stitch.P2tog, stitch.M1L, stitch.KFB, stitch.YO}
	for start := 1; start <= 40; start += knittest.Sweep(2, 9) {
		for end := 1; end <= 130; end += knittest.Sweep(3, 11) {
			for variant := range len(ops) * 2 * 3 * 2 {
				in := EvenSpacingInput{StartStitches: start, EndStitches: end, Operation: ops[variant%len(ops)],
					Construction: stitch.Construction(1 + variant/len(ops)%2)}
				if in.Construction == stitch.Flat {
					in.EdgeStitches = knittest.Ptr([]int{0, 2, 15}[variant/len(ops)/2%3])
				}
				if variant/len(ops)/6 == 1 {
					in.Spread = GapSpreadMirrored
				}
				_, err := PlanEvenSpacing(in)
				var refusal *fault.InputError
				if !errors.As(err, &refusal) {
					continue
				}
				for _, other := range spacingsOffered(t, in, refusal.Violations[0].Detail, offered) {
					if _, again := PlanEvenSpacing(other); again != nil {
						t.Fatalf("%+v: %v; asked so: %v", in, err, again)
					}
				}
			}
		}
	}
	for _, kind := range []string{"double", "double to", "kfb", "another row", "rows", "end", "edges", "spread"} {
		if offered[kind] < knittest.Sweep(20, 2) {
			t.Errorf("%q was offered %d times", kind, offered[kind])
		}
	}
}

// spacingsOffered are the questions that a refusal advises.
func spacingsOffered(t *testing.T, in EvenSpacingInput, detail string, offered map[string]int) (asked []EvenSpacingInput) {
	t.Helper()
	ask := func(kind string, questions ...EvenSpacingInput) {
		offered[kind]++
		asked = append(asked, questions...)
	}
	if m := doubleTo.FindStringSubmatch(detail); m != nil {
		for _, op := range []stitch.Op{stitch.K3tog, stitch.SSSK, stitch.CDD} {
			double := in.with(op)
			if m[1] == "" {
				ask("double", double)
			}
			for _, end := range numbersIn(m[1]) {
				ask("double to", double.ending(end))
			}
		}
	}
	if strings.Contains(detail, "use kfb") {
		ask("kfb", in.with(stitch.KFB))
	}
	var counts []int
	if strings.Contains(detail, "work the rest in another row") {
		counts = append(numbersIn(fitsAtMost.FindStringSubmatch(detail)[1]), in.EndStitches)
		ask("another row")
	} else if m := overRows.FindStringSubmatch(detail); m != nil {
		counts = numbersIn(m[2])
		if len(numbersIn(m[1])) != 1 || numbersIn(m[1])[0] != len(counts) {
			t.Fatalf("%q", detail)
		}
		ask("rows")
	}
	from := in
	for _, count := range counts {
		from.EndStitches = count
		asked = append(asked, from)
		from.StartStitches = count
	}
	if len(counts) > 0 && from.EndStitches != in.EndStitches {
		t.Fatalf("%+v: %q", in, detail)
	}
	if m := endingWith.FindStringSubmatch(detail); m != nil {
		for _, end := range numbersIn(m[1]) {
			ask("end", in.ending(end))
		}
	}
	if m := edgesAtMost.FindStringSubmatch(detail); m != nil {
		narrow := in
		narrow.EdgeStitches = &numbersIn(m[1])[0]
		ask("edges", narrow)
	}
	if strings.Contains(detail, "use the grouped or interleaved spread") {
		grouped, interleaved := in, in
		grouped.Spread, interleaved.Spread = GapSpreadGrouped, GapSpreadInterleaved
		ask("spread", grouped, interleaved)
	}
	return asked
}

func numbersIn(text string) (numbers []int) {
	for _, word := range regexp.MustCompile(`\d+`).FindAllString(text, -1) {
		n, _ := strconv.Atoi(word) // digits
		numbers = append(numbers, n)
	}
	return numbers
}
