package sock

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// Every published figure of stockings, heels, toes, crowns and thumbs that is known here stands
// in a table that a test works through, or has its reason why not; what differs says why.
func TestOutsideFiguresAreChecked(t *testing.T) {
	rows := knittest.Table(t, "sock/outside.csv")
	if len(rows) < 21 {
		t.Errorf("%d figures", len(rows))
	}
	for _, row := range rows {
		table, id, ok := strings.Cut(row["shown_in"], " ")
		switch row["verdict"] {
		case "agrees", "differs":
			found := false
			if ok {
				for _, shown := range knittest.Table(t, table) {
					found = found || shown["id"] == id
				}
			}
			if !found {
				t.Errorf("%s: no row %q of %q", row["id"], id, table)
			}
		case "other":
		default:
			t.Errorf("%s: verdict %q", row["id"], row["verdict"])
		}
		if row["verdict"] != "agrees" && row["why"] == "" {
			t.Errorf("%s: without a reason", row["id"])
		}
	}
}
