package pattern

import (
	"path/filepath"
	"testing"
)

// smallDir holds pieces of accessories, of baby things and of older booklets, in sets of 40: see its
// README.
const smallDir = "../../testdata/pattern/small"

// smallSets are the sets, how many of each are read right, and how many were when they were first asked.
var smallSets = []struct {
	file                 string
	right, alarms, first int
}{
	{"first.json", 34, 1, 19},
	{"second.json", 29, 3, 21},
	{"third.json", 28, 1, 19},
	{"fourth.json", 38, 1, 24},
	{"fifth.json", 34, 1, 26},
	{"sixth.json", 16, 1, 12},   // 20 pieces
	{"seventh.json", 12, 2, 11}, // 20 pieces; 1 was read with 96 rows for 90, said aloud
}

// TestSmallThings asks each set and prints how many were and are read right.
func TestSmallThings(t *testing.T) {
	for _, set := range smallSets {
		counts, n := judgeFile(t, filepath.Join(smallDir, set.file))
		t.Logf("%s: %d pieces, %d right when first asked; %v %v", set.file, n, set.first, verdictNames, counts)
		if counts[verdictRight] < set.right || counts[verdictSilent] > 0 || counts[verdictAlarm] > set.alarms {
			t.Errorf("%s: %v, %d right stood", set.file, counts, set.right)
		}
	}
}
