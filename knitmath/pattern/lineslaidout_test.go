package pattern

import (
	"path/filepath"
	"testing"
)

// linesApart is after how many lines of all drafts the next one begins, in the first size, with another
// count than was left: rows that put what is behind their turn aside (their count is of both needles,
// the next of what is worked), and a piece that is read anew after a word that is asked.
const linesApart = 7

// TestLinesAreLaidOut: a program that prints the count before and after each line finds that a line
// begins with what the one before it left, in every draft, but for those known.
func TestLinesAreLaidOut(t *testing.T) {
	lines, apart := 0, 0
	for _, dir := range draftDirs {
		files, err := filepath.Glob(filepath.Join(dir, "*.json"))
		if err != nil || len(files) == 0 {
			t.Fatalf("no drafts in %s, %v", dir, err)
		}
		for _, file := range files {
			var d corpusDraft
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: readDraft(t, file, &d)})
			if err != nil {
				t.Errorf("%s: %v", file, err)
				continue
			}
			for size := range out.SizeCount {
				n, places := countsApart(&out, size)
				lines += n
				if size == 0 {
					apart += len(places)
				}
				for _, at := range places {
					t.Logf("%s:%d, size %d", filepath.Base(file), at, size+1)
				}
			}
		}
	}
	t.Logf("%d lines, %d apart", lines, apart)
	if apart > linesApart {
		t.Errorf("%d lines of the first size begin with another count than was left, %d are known", apart, linesApart)
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
