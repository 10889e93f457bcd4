package sock

import (
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// whole reads a cell that may be empty.
func whole(t *testing.T, cell string) *int {
	t.Helper()
	if cell == "" {
		return nil
	}
	n, err := strconv.Atoi(cell)
	if err != nil {
		t.Fatal(err)
	}
	return &n
}

// Published heels come out as printed: the first rows of the turn, how many rows it has
// and what it leaves, what is picked up, and the rounds of the gusset.
func TestPublishedHeels(t *testing.T) {
	kinds := map[string]HeelKind{"round": HeelKindRound, "square": HeelKindSquare}
	for _, row := range knittest.Table(t, "sock/heels.csv") {
		in := HeelInput{Kind: kinds[row["kind"]], RoundStitches: whole(t, row["round"]), HeelStitches: whole(t, row["heel"]),
			FlapRows: whole(t, row["flap_rows"]), CentreStitches: whole(t, row["centre"]), PickUpStitches: whole(t, row["pick_up"]),
			GussetEveryRounds: whole(t, row["every"]), SuccessiveRounds: whole(t, row["successive"])}
		out, err := PlanHeel(in)
		if err != nil {
			t.Errorf("%s: %v", row["id"], err)
			continue
		}
		for i, want := range strings.Split(row["first_rows"], "; ") {
			if got := out.part(HeelPartTurn)[i].Instruction.Row.Text(); want != "" && got != want {
				t.Errorf("%s: row %d of the turn is %q, printed %q", row["id"], i+1, got, want)
			}
		}
		for name, got := range map[string]int{"heel_is": out.HeelStitches, "turn_rows": len(out.part(HeelPartTurn)),
			"turned":    *out.TurnedStitches,
			"picked_up": *out.PickUpStitches, "gusset": *out.GreatestRoundStitches, "decrease_rounds": *out.GussetDecreaseRounds,
			"gusset_rounds": *out.GussetRounds} {
			if want := whole(t, row[name]); want != nil && got != *want {
				t.Errorf("%s: %s is %d, printed %d", row["id"], name, got, *want)
			}
		}
	}
}

// Published toes come out as printed: the counts after the decrease rounds, and the rounds
// between them; those after the last only where they are printed.
func TestPublishedToes(t *testing.T) {
	kinds := map[string]ToeKind{"wedge": ToeKindWedge, "round": ToeKindRound, "star": ToeKindStar}
	for _, row := range knittest.Table(t, "sock/toes.csv") {
		in := ToeInput{Kind: kinds[row["kind"]], RoundStitches: whole(t, row["round"]), WedgeCount: whole(t, row["wedges"]),
			MoreEvenRounds: whole(t, row["more_even"]), TipStitches: whole(t, row["end"])}
		for _, pair := range strings.Fields(row["rates"]) {
			every, times, _ := strings.Cut(pair, "x")
			in.Rates = append(in.Rates, rate(*whole(t, every), *whole(t, times)))
		}
		out, err := PlanToe(in)
		if err != nil {
			t.Errorf("%s: %v", row["id"], err)
			continue
		}
		var counts, even []string
		since := 0
		for _, r := range out.Rows {
			if r.Instruction.EndStitches == r.Instruction.StartStitches {
				since++
				continue
			}
			if len(counts) > 0 {
				even = append(even, strconv.Itoa(since))
			}
			counts, since = append(counts, strconv.Itoa(r.Instruction.EndStitches)), 0
		}
		even = append(even, strconv.Itoa(since))
		if got := strings.Join(counts, " "); got != row["counts"] {
			t.Errorf("%s: counts %s, printed %s", row["id"], got, row["counts"])
		}
		if got := strings.Join(even, " "); !strings.HasPrefix(got, row["even"]) {
			t.Errorf("%s: even rounds %s, printed %s", row["id"], got, row["even"])
		}
	}
}
