package pattern

import (
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// The list against its transcription, row by row.
func TestAbbreviationsAgainstTranscription(t *testing.T) {
	rows := knittest.Table(t, "stitch/abbreviations.csv")
	if len(rows) != len(listed) {
		t.Fatalf("%d abbreviations, the transcription has %d", len(listed), len(rows))
	}
	for i, row := range rows {
		out := listed[i].row()
		takes, leaves := "", ""
		if out.TakesStitches != nil {
			takes, leaves = strconv.Itoa(*out.TakesStitches), strconv.Itoa(*out.LeavesStitches)
		}
		if out.Abbreviation != row["abbr"] || takes != row["sts_consumed"] || leaves != row["sts_produced"] || out.Meaning == "" {
			t.Errorf("%+v takes %q and leaves %q, transcribed %v", out, takes, leaves, row)
		}
	}
}

// What the list says is taken and left is what the reader of patterns counts with, whose
// vocabulary is another table; where the reader has to ask, the list names a disagreement.
func TestAbbreviationsAgreeWithTheReader(t *testing.T) {
	compared := 0
	for _, l := range listed {
		m, known := lookUp(strings.ToLower(l.abbreviation), nil)
		switch {
		case l.takes == notCounted && known && m.ask != "" && l.category != CategoryCable:
			if l.disagreement == "" {
				t.Errorf("%s: the reader asks, and the list has nothing to say", l.abbreviation)
			}
		case l.takes != notCounted && known && m.ask == "":
			compared++
			times := max(m.times, 1)
			if int(m.takes)*times != l.takes || int(m.leaves)*times != l.leaves {
				t.Errorf("%s: %d to %d, and the reader counts %d to %d", l.abbreviation, l.takes, l.leaves, m.takes, m.leaves)
			}
		}
	}
	if compared < 40 {
		t.Errorf("%d compared: one of the tables has shrunk", compared)
	}
}

func TestListAbbreviations(t *testing.T) {
	for category, want := range map[Category]int{CategoryUnspecified: 97, CategoryTool: 2, CategoryShortRow: 1} {
		if out, err := ListAbbreviations(AbbreviationListInput{category}); err != nil || len(out.Rows) != want {
			t.Errorf("%d: %d rows, %v, want %d", category, len(out.Rows), err, want)
		}
	}
	_, err := ListAbbreviations(AbbreviationListInput{13})
	knittest.WantViolations(t, err, "category UNKNOWN_VALUE")
}

func BenchmarkListAbbreviations(b *testing.B) {
	for b.Loop() {
		if out, err := ListAbbreviations(AbbreviationListInput{}); err != nil || out.Summary() == "" {
			b.Fatal(err)
		}
	}
}
