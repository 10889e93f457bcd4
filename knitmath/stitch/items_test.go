package stitch

import "testing"

func TestItems(t *testing.T) {
	for want, row := range map[int]Row{
		0: RowOf(),
		1: RowOf(ToEnd(Knit)),
		3: RowOf(Repeat(10, Do(Knit, 8), Do(K2tog, 1))),
		6: RowOf(Do(Knit, 4), Repeat(9, Do(K2tog, 1), Do(Knit, 8)), Do(K2tog, 1), Do(Knit, 4)),
		7: RowOf(Repeat(2, Repeat(3, Do(K2tog, 1), Do(Knit, 8)), Do(K2tog, 1)), Do(Knit, 4), ToLast(Purl, 2)),
	} {
		if got := row.Items(); got != want {
			t.Errorf("%q has %d items, want %d", row.Text(), got, want)
		}
	}
}
