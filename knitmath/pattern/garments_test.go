package pattern

import (
	"path/filepath"
	"testing"
)

// garmentsDir holds pieces of garments, a file for each cycle: see its README.
const garmentsDir = "../../testdata/pattern/garments"

// garmentsStand says of each file how many pieces are read right, how many are called mistaken
// and are none, and how many are agreed with and wrong. Worse fails.
var garmentsStand = []struct {
	file                  string
	right, alarms, silent int
}{
	{"first.json", 35, 1, 0},
	{"second.json", 34, 1, 0},
	{"third.json", 36, 3, 0},  // unseen: 31 right, 6 asked, 3 alarms
	{"fourth.json", 18, 0, 0}, // unseen: 14 of 20 right, 2 asked, 3 alarms, 1 refused
	{"fifth.json", 13, 0, 0},  // unseen: 13 of 20 right, 6 asked, 1 refused
}

// TestGarments asks every piece of every cycle.
func TestGarments(t *testing.T) {
	for _, stood := range garmentsStand {
		counts, n := judgeFile(t, filepath.Join(garmentsDir, stood.file))
		t.Logf("%s: %d pieces: %v %v", stood.file, n, verdictNames, counts)
		if counts[verdictRight] < stood.right || counts[verdictAlarm] > stood.alarms || counts[verdictSilent] > stood.silent {
			t.Errorf("%s: worse than it stood: %v %v, stood %+v", stood.file, verdictNames, counts, stood)
		}
	}
}
