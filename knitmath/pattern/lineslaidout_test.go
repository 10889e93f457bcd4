package pattern

import (
	"slices"
	"testing"
)

// TestLinesAreLaidOut: a program that prints the count before and after each line finds that a line
// begins with what the one before it left, in every draft and size, unless a question or a mistake is
// found there.
func TestLinesAreLaidOut(t *testing.T) {
	lines, apart := 0, 0
	for _, text := range wholeDrafts(t) {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil {
			t.Error(err)
			continue
		}
		for size := range out.SizeCount {
			n, places := countsApart(&out, size)
			lines += n
			for _, at := range places {
				apart++
				if !slices.ContainsFunc(out.Findings, func(f Finding) bool { return f.LineNumber == at && f.Kind != KindReading }) {
					t.Errorf("%.30q line %d begins in size %d with another count than was left, and nothing says why", text, at, size+1)
				}
			}
		}
	}
	t.Logf("%d lines, %d apart where it is asked why", lines, apart)
	if lines < 7000 {
		t.Error("too few lines")
	}
}

// countsApart counts the lines of a size, and lists those that begin with another count than was left.
func countsApart(out *CheckedInstructions, size int) (n int, places []int) {
	left := -1
	for i := range out.Lines {
		l := &out.Lines[i]
		if size >= len(l.StartStitches) || size >= len(l.EndStitches) {
			continue
		}
		n++
		if before := l.StartStitches[size]; left >= 0 && before >= 0 && before != left {
			places = append(places, l.LineNumber)
		}
		left = l.EndStitches[size]
	}
	return n, places
}
