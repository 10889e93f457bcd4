package knittest

import (
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// ShapingOps are the operations that change the count of stitches by increases or decreases.
var ShapingOps = []stitch.Op{stitch.K2tog, stitch.SSK, stitch.P2tog, stitch.SSP, stitch.K3tog, stitch.SSSK, stitch.P3tog,
	stitch.SSSP, stitch.CDD, stitch.SKP, stitch.SK2P, stitch.M1L, stitch.M1R, stitch.M1LP, stitch.M1RP, stitch.M1, stitch.M1P,
	stitch.KFB, stitch.PFB, stitch.YO}

// OpWord is the row written out, one letter an operation.
func OpWord(t *testing.T, row stitch.Row, n int) []stitch.Op {
	t.Helper()
	runs, err := stitch.Expand(row, n)
	if err != nil {
		t.Fatal(err)
	}
	var word []stitch.Op
	for _, r := range runs {
		for range r.Count {
			word = append(word, r.Op)
		}
	}
	return word
}
