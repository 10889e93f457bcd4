package pattern

import "testing"

// TestThenEveryRow: a crown that decreases every other round to a count, and then every round.
func TestThenEveryRow(t *testing.T) {
	const rows = "Rnd 1: [K8 (10), k2tog] 8 times. 72 (88) sts.\nRnd 2: Knit.\n"
	first := []string{"Continue in this manner until 40 (48) sts rem", "Cont to dec in this way every other rnd until 40 (48) sts remain",
		"Continue decreasing every other rnd until 40 (48) sts remain", "Cont in this manner, decreasing 8 sts every 2nd rnd, to 40 (48) sts",
		"Rep Rnds 1 and 2, working 1 st less between decreases each time, until 40 (48) sts rem",
		"Rep last 2 rnds, working one fewer st before each decrease, until 40 (48) sts rem",
		"Repeat these 2 rnds with 1 less st between decs until there are 40 (48) sts"}
	then := []string{", then every rnd until 8 sts rem", ", then decrease every rnd until 8 sts remain", ", then dec on every rnd to 8 sts",
		", then work dec rnd every rnd until 8 sts rem", " and then every round until there are 8 sts",
		"; then decrease on each round until 8 sts remain"}
	var texts []worded
	for _, f := range first {
		for _, e := range then {
			texts = append(texts, worded{rows + f + e + ".", []int{80, 96}, true, []int{8, 8}, []int{14, 17}})
		}
	}
	askWorded(t, texts, 95, 0)
}
