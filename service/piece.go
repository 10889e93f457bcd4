package service

import (
	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/yarn"
)

// pieceIn carries a piece. Its shape is one of three on the wire and three
// pointers, at most one of them set, in the kernel.
func pieceIn(p *knitmathv1.Piece) yarn.Piece {
	piece := yarn.Piece{
		Name:          p.GetName(),
		Quantity:      optional(p.Quantity, countIn),
		Pattern:       yarn.StitchPattern(p.GetPattern()),
		PatternFactor: p.PatternFactor,
	}
	if c := p.GetCounted(); c != nil {
		piece.Counted = &yarn.CountedPiece{StitchCount: countIn(c.StitchCount), RowCount: countIn(c.RowCount)}
	}
	if t := p.GetTrapezoid(); t != nil {
		piece.Trapezoid = &yarn.TrapezoidPiece{
			StartWidthCm: t.StartWidthCm, EndWidthCm: t.EndWidthCm, HeightCm: t.HeightCm}
	}
	if r := p.GetRowwise(); r != nil {
		piece.Rowwise = &yarn.RowwisePiece{StitchCounts: each(r.StitchCounts, countIn)}
	}
	return piece
}

func pieceOut(p yarn.PieceYarn) *knitmathv1.PieceYarn {
	return &knitmathv1.PieceYarn{Name: p.Name, StitchCount: p.StitchCount, AreaCm2: p.AreaCm2, LengthM: p.LengthM}
}
