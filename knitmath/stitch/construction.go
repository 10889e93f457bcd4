package stitch

// Construction is how a piece is worked: whether the work is turned at the end
// of each row.
type Construction int32

// The constructions. Unspecified is flat.
const (
	ConstructionUnspecified Construction = iota
	Flat
	InTheRound
)
