package schedule

// A Nest is several things that are done again and again over the same rows, the
// commonest first, each only in rows in which the one before it is done too: where
// two edges meet, the rarer of two decreases is so worked in the rounds of the other.
//
// Each thing is to follow a straight line of its own, from nothing at the end of
// row 0 to Times[i] at the end of row Rows. The rows that may be used are First,
// First + Every and so on to Rows.
type Nest struct {
	Rows, First, Every int
	Times              []int
	// Apart is the thing whose last time is done in a way of its own, counted from 1;
	// 0 if there is none.
	Apart int
	// Late is set where, among choices of equal effort, being ahead of a line counts
	// aheadCounts times: what is spared then lies at the first rows rather than the last.
	Late bool
}

// aheadCounts is how many times as much being ahead counts. Own choice.
const aheadCounts = 3

// A Nested is one choice of rows: those of the commonest thing, and how many of the
// things are done in each.
type Nested struct {
	Rows   []int
	Levels []int
	// Apart is the thing of the nest whose last time is done in a way of its own.
	Apart int
	// Departure is the greatest distance of a thing from its line, in parts of which
	// a time is as many as the nest has rows.
	Departure int
}

// slots is how many rows may be used.
func (n Nest) slots() int { return (n.Rows-n.First)/n.Every + 1 }

// off is how far a thing done so many times before, and again in a row, lies from
// its line, after that row and before it.
func (n Nest) off(thing, before, row int) int { return max(n.offs(thing, before, row)) }

// offs is the same ahead of the line, after the row, and behind it, before the row.
func (n Nest) offs(thing, before, row int) (ahead, behind int) {
	k := n.Times[thing]
	return (before+1)*n.Rows - k*row, k*(row-1) - before*n.Rows
}

// RowsOf are the rows in which a thing is done.
func (p Nested) RowsOf(thing int) []int {
	var rows []int
	for i, row := range p.Rows {
		if p.Levels[i] > thing {
			rows = append(rows, row)
		}
	}
	return rows
}
