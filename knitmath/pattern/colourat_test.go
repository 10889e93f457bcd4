package pattern

import "testing"

// TestColoursChangedAtACount: where a colour is changed is no count of the end of the rows.
func TestColoursChangedAtACount(t *testing.T) {
	const rows = "Using MC cast on 7 sts.\nRow 1: Kfb, k to last st, kfb. 9 sts\nRow 2: Knit.\n"
	repeats := []string{"Rep these 2 rows until there are 61 sts", "Rep Rows 1 and 2 until there are 61 sts", "Rep last 2 rows 26 more times",
		"Repeat these two rows to 61 sts"}
	changes := []string{", changing to CC after 31 sts", ", changing to CC when there are 31 sts", ", joining CC when there are 31 sts",
		"; change to CC at 31 sts", ", changing colour at 31 sts", " (change to CC when you have 31 sts)",
		", changing to contrast colour at 31 sts",
		". Change to CC when there are 31 sts"}
	var texts []worded
	for _, r := range repeats {
		for _, c := range changes {
			for _, end := range []string{".", ". 61 sts."} {
				texts = append(texts, worded{rows + r + c + end, nil, false, []int{61}, nil})
			}
		}
	}
	askWorded(t, texts, 100, 0)
}
