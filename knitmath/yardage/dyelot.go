package yardage

// DyeLot says whether more of the same dye lot can be had later.
type DyeLot int32

// The dye lots.
const (
	DyeLotUnspecified DyeLot = iota // as DyeLotOnePurchase
	DyeLotOnePurchase
	DyeLotMoreLater
)

// figure is the one of a range to buy for: the high one unless more of the lot
// can be had later.
func (d DyeLot) figure(r Range) float64 {
	if d == DyeLotMoreLater {
		return r.Likely
	}
	return r.High
}
