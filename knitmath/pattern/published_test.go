package pattern

import (
	"encoding/csv"
	"os"
	"strconv"
	"strings"
	"testing"
)

// TestPublishedPatterns: a stitch pattern can be worked on exactly the widths that
// its "multiple of m plus r" says. The file names the source of each.
func TestPublishedPatterns(t *testing.T) {
	file, err := os.Open("../../testdata/pattern/stitch_patterns.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	records, err := csv.NewReader(file).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	patterns, rows := 0, 0
	for _, record := range records[1:] {
		name := record[0]
		multiple, err := strconv.Atoi(record[1])
		if err != nil {
			t.Fatal(err)
		}
		plus, err := strconv.Atoi(record[2])
		if err != nil {
			t.Fatal(err)
		}
		var text strings.Builder
		for i, row := range strings.Split(record[3], " | ") {
			text.WriteString("Row " + strconv.Itoa(i+1) + ": " + row + "\n")
			rows++
		}
		text.WriteString("Rep Rows 1-" + strconv.Itoa(strings.Count(record[3], " | ")+1) + " twice more")
		piece := Read(text.String(), Options{})
		for _, f := range piece.found.list {
			t.Errorf("%s: %d:%d %q: %s", name, f.LineNumber, f.ColumnNumber, f.Text, f.Description)
		}
		patterns++
		for n := plus + 1; n <= 12*multiple+plus+3; n++ {
			w := piece.Work(Start{Counts: []int{n}})
			fits := true
			for _, f := range w.Findings {
				fits = fits && f.Kind != KindMistake
			}
			if want := n >= plus+multiple && n%multiple == plus%multiple; fits != want {
				t.Errorf("%s, multiple of %d plus %d, on %d stitches: fits %v (%v)", name, multiple, plus, n, fits, w.Findings)
			} else if fits && w.EndStitches[0] != n {
				t.Errorf("%s on %d stitches ends with %d", name, n, w.EndStitches[0])
			}
		}
	}
	if patterns < 30 || rows < 60 {
		t.Errorf("%d patterns, %d rows: the file has shrunk", patterns, rows)
	}
}
