package stitch

// A Recorded stitch is one that the fabric remembers.
type Recorded struct {
	Op     Op
	Row    int   // the row that made it, counted as RowsWorked counts
	Level  int   // rows from its cast-on up to it
	Under  []int // the stitches, or the part of an edge, that it was made of
	Beside int   // the stitch before it in its row, 0 if none
}

// Stitches returns how many stitches have been worked: the area of the fabric. Those
// cast on are its edge, those slipped and bound off were worked before.
func (f *Fabric) Stitches() int { return f.StitchesIn(0, MaxRecorded) }

// StitchesIn returns how many stitches the rows from first to last have made.
func (f *Fabric) StitchesIn(first, last int) int {
	n := 0
	for id := 1; id < f.known; id++ {
		if c := &f.cells[id]; f.isWorked(c) && int(c.row) >= first && int(c.row) <= last {
			n++
		}
	}
	return n
}

// isWorked reports whether a cell is a stitch that was worked, be it bound off since.
func (f *Fabric) isWorked(c *cell) bool { return c.level > 0 && c.op != CastOn && c.op != 0 }

// AreaSquareCm returns the area of all stitches of the given size, one that was slipped
// counted over all the rows that it spans.
func (f *Fabric) AreaSquareCm(stitchCm, rowCm float64) float64 {
	rows := 0
	for id := 1; id < f.known; id++ {
		if c := &f.cells[id]; f.isWorked(c) {
			under := c.level - 1
			for _, b := range f.below[c.under : c.under+c.count] {
				under = min(under, f.cells[b].level)
			}
			rows += int(c.level - under)
		}
	}
	return float64(rows) * stitchCm * rowCm
}

// Numbers returns the numbers of the stitches on the needles, in right-side order, by
// which Stitch knows them.
func (m *Machine) Numbers() []int {
	if m.fabric == nil {
		return nil
	}
	all := make([]int, 0, m.StitchCount())
	for _, l := range m.inOrder() {
		all = append(all, int(l.id))
	}
	return all
}

// Stitch returns what is remembered of a stitch; nothing of a number that is none.
func (f *Fabric) Stitch(number int) Recorded {
	if number < 1 || number >= f.known {
		return Recorded{}
	}
	c := &f.cells[number]
	r := Recorded{Op: c.op, Row: int(c.row), Level: int(c.level), Beside: int(c.beside)}
	for _, b := range f.below[c.under : c.under+c.count] {
		r.Under = append(r.Under, int(b))
	}
	return r
}
