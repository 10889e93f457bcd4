package stitch

// edgeOps are the operations that shape one edge of a row.
type edgeOps struct{ increase, decrease, double Op }

// As seen from the right side a decrease leans away from its edge and an increase away
// from the middle: ssk and M1L where right-side rows begin, k2tog and M1R where they
// end; on the wrong side the purled stitch of the same lean.
//
// Source: common practice; the leans are those of the trade's published list.
var leaning = map[Side][2]edgeOps{
	RightSide: {{M1L, SSK, SSSK}, {M1R, K2tog, K3tog}},
	WrongSide: {{M1RP, P2tog, P3tog}, {M1LP, SSP, SSSP}},
}

// Shaped is what shapes an edge: by so many stitches, from -2 to 2, in a row of that
// side, where it begins or where it ends. It is one increase or decrease; or a double
// decrease; or two increases with a stitch between them.
func Shaped(side Side, ends bool, change int) []Step { return AppendShaped(nil, side, ends, change) }

// AppendShaped adds what [Shaped] is to the steps of a row.
func AppendShaped(row []Step, side Side, ends bool, change int) []Step {
	if side == SideUnspecified {
		side = RightSide
	}
	ops := leaning[side][0]
	if ends {
		ops = leaning[side][1]
	}
	switch change {
	case -2:
		return append(row, Do(ops.double, 1))
	case -1:
		return append(row, Do(ops.decrease, 1))
	case 1:
		return append(row, Do(ops.increase, 1))
	case 2:
		return append(row, Do(ops.increase, 1), Do(side.Plain(), 1), Do(ops.increase, 1))
	}
	return row
}

// Plain is how stockinette is worked on the side: knit or, on the wrong side, purl.
func (s Side) Plain() Op {
	if s == WrongSide {
		return Purl
	}
	return Knit
}
