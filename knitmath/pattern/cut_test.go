package pattern

import (
	"runtime/debug"
	"slices"
	"strings"
	"testing"
)

// Drafts are pasted from anywhere to anywhere and are edited under the reader's eyes: every
// text of the corpus is read and worked from each of its words on, up to each of them,
// without each of them, and with a full stop or the text once more in its place. Nothing may
// fall over for want of the words around it.
func TestReadFromAnyWordToAny(t *testing.T) {
	for _, text := range append(sentenceTexts(t), corpusTexts(t)...) {
		start := 0
		for i := 1; i < len(text); i++ {
			if !strings.ContainsRune(" \n(", rune(text[i-1])) {
				continue
			}
			readCut(t, text[i:])
			readCut(t, text[:i])
			if !testing.Short() {
				readCut(t, text[:start]+text[i:])
				readCut(t, text[:start]+". "+text[i:])
				readCut(t, text[:i]+text)
			}
			start = i
		}
	}
}

func readCut(t *testing.T, text string) {
	t.Helper()
	defer func() {
		if r := recover(); r != nil {
			t.Errorf("%q: %v\n%s", text, r, debug.Stack())
		}
	}()
	Read(text, Options{}).Work(Start{Counts: []int{40}})
}

// A text that begins with "sts", as one cut out of a line does, is read like any other: what
// stands at its beginning is nowhere taken for what stands after a number further on.
func TestReadFromStitchesOn(t *testing.T) {
	for _, text := range []string{
		"Row 1: k2, p2, k2.", "Graft 20 toe CO.", "Row 1: k next 3, p2.", "Knit 2 rows on these 20 only.", "CO 12. Row 1: k2 foo, p2.",
	} {
		at := func(first string) []string {
			var lines []string
			for _, l := range Read(first+"\n\n"+text, Options{}).Lines[1:] {
				lines = append(lines, Text([]Line{l}, RepeatStyleBrackets))
			}
			return lines
		}
		if got, want := at("sts."), at("cm."); !slices.Equal(got, want) {
			t.Errorf("%q after \"sts.\": %q, after \"cm.\": %q", text, got, want)
		}
	}
}
