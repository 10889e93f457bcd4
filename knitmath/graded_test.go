package knitmath_test

import (
	"fmt"
	"math/rand/v2"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/pattern"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// gradedTapers are tapers in one to six sizes, flat and in the round, from either side,
// narrowing and widening.
func gradedTapers(t *testing.T, n int, do func(shaping.GradedTaperInput, shaping.GradedTaper)) {
	t.Helper()
	rng := rand.New(rand.NewPCG(17, 5))
	for range n {
		in := shaping.GradedTaperInput{Construction: stitch.Construction(1 + rng.IntN(2)), Edges: shaping.ShapedEdges(1 + rng.IntN(3)),
			EdgeChangeStitches: knittest.Ptr(1 + rng.IntN(2)), ToleranceStitches: knittest.Ptr([]float64{0, 0.5, 1, 2}[rng.IntN(4)])}
		if in.Construction == stitch.Flat && rng.IntN(3) == 0 {
			in.FirstSide = stitch.WrongSide
		}
		start, change, rows := 24+rng.IntN(40), 4*(1+rng.IntN(8)), 10+rng.IntN(100)
		narrows := rng.IntN(2) == 0
		for range 1 + rng.IntN(6) {
			size := shaping.TaperSize{StartStitches: start, EndStitches: start + change, HeightRows: knittest.Ptr(rows)}
			if narrows {
				size.StartStitches, size.EndStitches = size.EndStitches, size.StartStitches
			}
			in.Sizes = append(in.Sizes, size)
			start, change, rows = start+rng.IntN(4), change+4*rng.IntN(2), rows+rng.IntN(6)
		}
		out, err := shaping.PlanGradedTaper(in)
		if err == nil {
			do(in, out)
		}
	}
}

// gradedQuestion asks for the directions to be checked, in all sizes.
func gradedQuestion(in shaping.GradedTaperInput, directions []string) pattern.CheckInstructionsInput {
	q := pattern.CheckInstructionsInput{Text: strings.Join(directions, "\n"), Construction: in.Construction, FirstSide: in.FirstSide}
	for _, s := range in.Sizes {
		q.StartStitches = append(q.StartStitches, s.StartStitches)
	}
	return q
}

// What is planned for many sizes is written, read, and worked again: every count agrees
// in every size, and each has the rows it was to have. Where one number of the sentence
// is wrong it is found, in the sizes that it is wrong in.
func TestGradedTapersAreReadBack(t *testing.T) {
	planned, found, graded := 0, 0, 0
	gradedTapers(t, knittest.Sweep(1500, 300), func(in shaping.GradedTaperInput, out shaping.GradedTaper) {
		planned++
		directions := out.Directions()
		checked, err := pattern.CheckInstructions(t.Context(), gradedQuestion(in, directions))
		if err != nil || !checked.Agrees || checked.SizeCount != len(in.Sizes) {
			t.Fatalf("%s\n%v, %+v", strings.Join(directions, "\n"), err, checked.Findings)
		}
		for i, s := range out.Sizes {
			if checked.EndStitches[i] != s.EndStitches || checked.WorkedRows[i] != s.HeightRows {
				t.Fatalf("%s\nsize %d: %d stitches after %d rows; want %d, %d", strings.Join(directions, "\n"), i+1,
					checked.EndStitches[i], checked.WorkedRows[i], s.EndStitches, s.HeightRows)
			}
		}
		if len(out.Runs) == 0 {
			return
		}
		graded++
		if plantedInSizes(t, in, out, directions) {
			found++
		}
	})
	if planned < knittest.Sweep(600, 120) || graded != found || graded < planned*3/4 {
		t.Errorf("%d planned, %d with runs, %d mistakes found", planned, graded, found)
	}
}

// plantedInSizes makes one number of times wrong, and wants it to be found in that size.
func plantedInSizes(t *testing.T, in shaping.GradedTaperInput, out shaping.GradedTaper, directions []string) bool {
	t.Helper()
	wrong := slices.Clone(directions)
	at := slices.IndexFunc(wrong, func(d string) bool { return strings.HasPrefix(d, "Repeat") })
	head, claim, _ := strings.Cut(wrong[at], ": ")
	size := len(out.Sizes) - 1
	counts := make([]string, len(out.Sizes))
	for i, s := range out.Sizes {
		counts[i] = strconv.Itoa(s.EndStitches)
	}
	counts[size] = strconv.Itoa(out.Sizes[size].EndStitches + 1)
	wrong[at] = head + " (" + strings.Join(counts, ", ") + " sts)"
	checked, err := pattern.CheckInstructions(t.Context(), gradedQuestion(in, wrong))
	if err != nil || checked.Agrees {
		t.Fatalf("%s instead of %q: %v", wrong[at], claim, err)
	}
	for _, f := range checked.Findings {
		if f.Reason == pattern.ReasonClaim && fmt.Sprint(f.SizeNumbers) == fmt.Sprintf("[%d]", size+1) {
			return true
		}
	}
	t.Errorf("%s: %+v", wrong[at], checked.Findings)
	return false
}

// A number of times that is one too many is found in the size that has it.
func TestAWrongNumberOfTimesIsFound(t *testing.T) {
	out, err := shaping.PlanGradedTaper(shaping.GradedTaperInput{Construction: stitch.InTheRound, ToleranceStitches: knittest.Ptr(0.5),
		Sizes: []shaping.TaperSize{{StartStitches: 44, EndStitches: 66, HeightRows: knittest.Ptr(129)},
			{StartStitches: 48, EndStitches: 76, HeightRows: knittest.Ptr(135)},
			{StartStitches: 54, EndStitches: 92, HeightRows: knittest.Ptr(138)}}})
	if err != nil {
		t.Fatal(err)
	}
	text := strings.Join(out.Directions(), "\n")
	times := regexp.MustCompile(`round (\d+) \((\d+), (\d+)\)`)
	if !times.MatchString(text) {
		t.Fatal(text)
	}
	for size := 1; size <= 3; size++ {
		planted := times.ReplaceAllStringFunc(text, func(s string) string {
			m := times.FindStringSubmatch(s)
			n, _ := strconv.Atoi(m[size]) // digits
			m[size] = strconv.Itoa(n + 1)
			return fmt.Sprintf("round %s (%s, %s)", m[1], m[2], m[3])
		})
		checked, err := pattern.CheckInstructions(t.Context(), pattern.CheckInstructionsInput{Text: planted,
			StartStitches: []int{44, 48, 54}, Construction: stitch.InTheRound})
		// Where the round begins is no more than passed over.
		checked.Findings = slices.DeleteFunc(checked.Findings, func(f pattern.Finding) bool { return f.Kind == pattern.KindReading })
		if err != nil || checked.Agrees || len(checked.Findings) == 0 || checked.Findings[0].Reason != pattern.ReasonClaim ||
			fmt.Sprint(checked.Findings[0].SizeNumbers) != fmt.Sprintf("[%d]", size) {
			t.Errorf("size %d: %v, %+v\n%s", size, err, checked.Findings, planted)
		}
	}
}

// What no sentence of these may have, whatever the numbers.
var ungrammatical = regexp.MustCompile(`(^|[^.\d])1 (rows|rounds|stitches|times|sizes|more times)` +
	`|\b1 \w+ are\b|(^|[^,\d] )[2-9]\d* (row|round|stitch|size)\b|\b\d*1[123](st|nd|rd)\b|\b\d*[023456789]1th\b|\b0 rows even|  |\.\.`)

// All words of the sweep agree in number.
func TestWordsOfGradedTapersAgree(t *testing.T) {
	gradedTapers(t, knittest.Sweep(1500, 300), func(_ shaping.GradedTaperInput, out shaping.GradedTaper) {
		words := append(out.Directions(), out.Summary())
		for _, n := range out.Notices {
			words = append(words, n.Description)
		}
		for _, s := range words {
			if m := ungrammatical.FindString(s); m != "" {
				t.Errorf("%q in %q", m, s)
			}
		}
	})
}
