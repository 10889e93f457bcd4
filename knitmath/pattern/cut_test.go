package pattern

import (
	"runtime/debug"
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
