package curve

import "example.com/knitmath/knitmath/stitch"

// Edges says which edges of a piece follow a curve, seen from the right side.
type Edges int32

// The choices.
const (
	EdgesUnspecified Edges = iota // both
	EdgesBoth
	EdgesRight
	EdgesLeft
)

// DefaultTolerance is half a stitch: so much beside the nearest plan is not seen, and
// with it the plans of quarter ellipses come in the order of the trade. Own choice.
const DefaultTolerance = 0.5

// StraightTolerance is that of a straight edge where nobody says: as much as a taper may
// depart, since it is told in two runs, and a curve's half is not enough for them.
const StraightTolerance = 1

// MaxDeparture is how many stitches from the curve a plan may lie before it is none: an
// edge as far off is another edge.
const MaxDeparture = 4

// Settings are how an edge may be worked.
type Settings struct {
	Edges Edges
	// FirstSide is the side that faces in row 1 of the piece, the right side if it is not
	// said. Right-side rows begin at the right edge.
	FirstSide stitch.Side
	// AnyRow lets decreases and increases lie on every row, not on right-side rows only.
	AnyRow bool
	// LargestChange is the most stitches decreased or increased at an edge in one row, 1
	// if it is 0. Below 0 there are none, and stitches are bound off and cast on alone.
	LargestChange int
	// LargestGroup is the most stitches bound off or cast on at once, without limit if it
	// is 0. Below 0 none are.
	LargestGroup int
	// Steady works no rows even but those that lie between the steps of a run, so that the
	// slope has no kink. Where no such plan lies within the tolerance it is looked for up to
	// two stitches farther off.
	Steady bool
	// LargestBend is how many times as quick, or as slow, a steady plan's steps are as those
	// before them at the most: with 4, bind-offs of 4 stitches after decreases on every 2nd row.
	// Without limit if it is 0.
	LargestBend int
	// Falling is how much farther than the tolerance a plan is looked for, by quarters of a stitch,
	// as long as a later step of the nearer one takes more stitches than the step before it.
	Falling float64
	// Tolerance is how much farther than the nearest plan a plan with less to remember may
	// depart from the curve, in stitches.
	Tolerance float64
}

// A Kind is how stitches are lost or gained.
type Kind int32

// The kinds.
const (
	KindUnspecified Kind = iota
	KindBindOff
	KindDecrease
	KindCastOn
	KindIncrease
)

// Groups reports whether the stitches are lost or gained together where a row begins.
func (k Kind) Groups() bool { return k == KindBindOff || k == KindCastOn }

// Gains reports whether there are more stitches afterwards.
func (k Kind) Gains() bool { return k == KindCastOn || k == KindIncrease }

// A Step is what one row does to one edge. Bind-offs and cast-ons stand where the row
// begins at that edge.
type Step struct {
	// RowNumber counts from the first row of the piece.
	RowNumber int
	Kind      Kind
	Stitches  int
}

// A Run is a step that is worked again and again at the edge that is worked first.
type Run struct {
	Kind     Kind
	Stitches int
	// FirstRowNumber is where it is worked first.
	FirstRowNumber int
	// EveryRows is how many rows lie from one step to the next, 0 where there is one.
	EveryRows int
	// AlternateRows takes turns with EveryRows, which comes first; 0 where there is one
	// interval.
	AlternateRows int
	Times         int
}

// A Plan is how an edge follows a course.
type Plan struct {
	// Right and Left are the steps at each edge, none at one that does not follow.
	Right, Left []Step
	// Runs are the steps of the edge that the first row begins at, or of the only one.
	Runs []Run
	// Departure is how far the edge as knit lies from the curve at its farthest corner,
	// and Least that of the nearest plan there is, in stitches.
	Departure, Least float64
	// Effort is how much there is to remember.
	Effort int
	// Looked is how many steps of runs were looked at in search of it.
	Looked int
	// Kinked tells that the plan should have been steady, and none that is lies near enough.
	Kinked bool
}
