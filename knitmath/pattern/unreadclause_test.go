package pattern

import (
	"encoding/json"
	"flag"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/report"
)

// nobodyReads are sentences that cannot be read: words of no language, and such as knitters write and are asked about.
var nobodyReads = []string{
	"Flurb the wibble as you like",
	"work the thumb stitches onto the gribbles",
	"k3 wobbles and dec where the snork is",
}

// clauseEnds are where a sentence or a part of one ends.
var clauseEnds = regexp.MustCompile(`[.;,:]( |$)|\n`)

// clauses are the sentences of a text and their parts, each from one byte to another.
func clauses(text string) [][2]int {
	var out [][2]int
	from := 0
	for _, at := range append(clauseEnds.FindAllStringIndex(text, -1), []int{len(text), len(text)}) {
		to := at[0]
		if strings.TrimSpace(text[from:to]) != "" {
			out = append(out, [2]int{from, to})
		}
		from = at[1]
	}
	return out
}

// rightPieces are the pieces of all corpora with which the reader agrees, and those drafts that it calls right.
func rightPieces(t *testing.T) []corpusPiece {
	t.Helper()
	const all = "../../testdata/pattern/"
	var out []corpusPiece
	for _, pattern := range []string{"corpus/pieces/*.json", "*/pieces.json", "garments/*.json", "small/*.json", "sentences/*.json"} {
		files, err := filepath.Glob(all + pattern)
		if err != nil {
			t.Fatal(err)
		}
		for _, file := range files {
			data, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			var list []corpusPiece
			if json.Unmarshal(data, &list) != nil {
				continue
			}
			out = append(out, list...)
		}
	}
	drafts, err := filepath.Glob(all + "*/drafts/*.txt")
	if err != nil || len(drafts) == 0 {
		t.Fatal(err, drafts)
	}
	for _, file := range drafts {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		out = append(out, corpusPiece{ID: filepath.Base(file), Text: string(data)})
	}
	return slices.DeleteFunc(out, func(p corpusPiece) bool {
		got, err := CheckInstructions(t.Context(), p.input())
		return err != nil || !got.Agrees
	})
}

// everyClause is one of how many clauses is replaced: all of them take a minute.
var everyClause = flag.Int("clauses", 27, "one of how many clauses is replaced")

// unreadAccused is how many of those are called mistaken all the same. It was 60 before what stands on words that could not be read
// was asked about. More fails.
const unreadAccused = 7

// TestNoAlarmAfterUnread puts words that cannot be read in place of one clause of a right text, one at a time: no mistake may be told.
func TestNoAlarmAfterUnread(t *testing.T) {
	pieces := rightPieces(t)
	asked, accused := 0, 0
	reasons := map[report.Reason]int{}
	n := 0
	for i := range pieces {
		for _, at := range clauses(pieces[i].Text) {
			p := pieces[i]
			words := nobodyReads[n%len(nobodyReads)]
			if n++; n%*everyClause != 0 {
				continue
			}
			p.Text = p.Text[:at[0]] + words + p.Text[at[1]:]
			out, err := CheckInstructions(t.Context(), p.input())
			if err != nil {
				continue
			}
			asked++
			if k := slices.IndexFunc(out.Findings, func(f Finding) bool { return f.Kind == KindMistake }); k >= 0 {
				accused++
				reasons[out.Findings[k].Reason]++
				if testing.Verbose() {
					t.Logf("%s %s: %s\n%s", out.Findings[k].Reason, p.ID, judgedText(out.Findings), p.Text)
				}
			}
		}
	}
	t.Logf("%d right texts, %d asked with a clause that nobody can read, %d called mistaken: %v", len(pieces), asked, accused, reasons)
	if accused > unreadAccused {
		t.Errorf("%d called mistaken, %d stood", accused, unreadAccused)
	}
}
