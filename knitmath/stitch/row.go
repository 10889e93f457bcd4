package stitch

// Step is one part of a row. It is exactly one of three kinds:
//
//   - an operation worked Count times: Op and Count are set;
//   - a group worked Times times: Group and Times are set;
//   - an operation worked until a number of stitches remain on the left needle:
//     Op and ToLast are set.
//
// The constructors Do, Repeat, ToLast and ToEnd make well-formed steps.
type Step struct {
	Op    Op
	Count int

	Group []Step
	Times int

	ToLast *int // 0 is "to end"
}

// kind tells the three kinds of step apart.
type kind uint8

const (
	kindNone kind = iota // not a step
	kindCount
	kindGroup
	kindToLast
)

// kind returns which kind the step is, kindNone if it is none or several.
func (s Step) kind() kind {
	switch {
	case s.Group != nil || s.Times != 0:
		if s.Op == 0 && s.Count == 0 && s.ToLast == nil && len(s.Group) > 0 && s.Times > 0 {
			return kindGroup
		}
	case s.ToLast != nil:
		if s.Op.Valid() && s.Count == 0 && *s.ToLast >= 0 {
			return kindToLast
		}
	case s.Op.Valid() && s.Count > 0:
		return kindCount
	}
	return kindNone
}

// Row is what is worked in one row or round, from its first stitch to its last
// or to the turn.
//
// A turn (Turn, WrapTurn) stands only at the very end of a row, once, outside
// all groups. ToLast stands outside all groups too: met a second time it would
// find its stitches gone.
type Row struct {
	Steps []Step
}

// Run is an operation worked a number of times in succession.
type Run struct {
	Op    Op
	Count int
}

// Do returns the step that works op n times.
func Do(op Op, n int) Step { return Step{Op: op, Count: n} }

// Repeat returns the step that works steps, in order, the given number of times.
func Repeat(times int, steps ...Step) Step { return Step{Group: steps, Times: times} }

// ToLast returns the step that works op until n stitches remain on the left
// needle. An op that takes more than one stitch must come out exactly.
func ToLast(op Op, n int) Step { return Step{Op: op, ToLast: &n} }

// ToEnd returns the step that works op until no stitch remains on the left needle.
func ToEnd(op Op) Step { return ToLast(op, 0) }

// RowOf returns the row of the given steps.
func RowOf(steps ...Step) Row { return Row{Steps: steps} }

// EndsRow reports whether the row ends with a turn before its end: a short row.
func (r Row) EndsRow() bool {
	n := len(r.Steps)
	return n > 0 && r.Steps[n-1].Op.EndsRow()
}

// Limits. Anything larger is refused with the reason TOO_LARGE or TOO_DEEP.
const (
	// MaxStitches is the most stitches a row may find or leave on the needles.
	// The largest hand-knit pieces, lace shawls and blankets, reach about two
	// thousand; five times that still fits a reply and a second's work.
	MaxStitches = 10_000

	// MaxRows is the most rows in a piece, by the same measure.
	MaxRows = 10_000

	// MaxOperations is the most single operations in a row. A row that takes
	// MaxStitches and leaves as many needs at most the sum of both; markers
	// share the same allowance.
	MaxOperations = 2 * MaxStitches

	// MaxDepth is how deep groups may lie in one another. The trade's list has
	// four marks for repeats: [ ], ( ), { } and stars.
	MaxDepth = 4
)
