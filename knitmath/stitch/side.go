package stitch

// Side is the side of the fabric that faces the knitter.
type Side int32

// The sides. Unspecified is a side that nobody has named; where one is needed,
// its default is said there.
const (
	SideUnspecified Side = iota
	RightSide
	WrongSide
)

// Other returns the opposite side; there is none of an unspecified one.
func (s Side) Other() Side {
	switch s {
	case RightSide:
		return WrongSide
	case WrongSide:
		return RightSide
	}
	return SideUnspecified
}

// String returns the trade's abbreviation, "RS" or "WS"; an unspecified side is
// called RS, the side that patterns mean where they name none.
func (s Side) String() string {
	if s == WrongSide {
		return "WS"
	}
	return "RS"
}
