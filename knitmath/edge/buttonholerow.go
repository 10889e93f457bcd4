package edge

import (
	"slices"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// plan writes the rows and the answer.
func (b band) plan(in ButtonholesInput) Buttonholes {
	out := Buttonholes{BandStitches: b.stitches, BandRows: b.rows, HoleStitches: b.width, BeforeFirstPlaces: b.first,
		GapPlaces: b.gaps, AfterLastPlaces: b.last, Notices: b.notices, b: b, unit: in.DisplayUnit}
	out.Holes = make([]Buttonhole, b.holes)
	at := b.first // places before the hole
	for i := range out.Holes {
		h := Buttonhole{FirstStitchNumber: at + 1, BindOffRowNumber: b.row}
		if b.alongRows {
			h.FirstStitchNumber, h.BindOffRowNumber = (b.stitches-b.width)/2+1, at+1
		}
		h.LastStitchNumber, h.CastOnRowNumber = h.FirstStitchNumber+b.width-1, h.BindOffRowNumber+1
		if b.measured() {
			// The middle of n places after at others lies at at + n/2.
			middle := b.along().SizeCm(2*at+b.places()) / 2
			h.MiddleCm = &middle
		}
		out.Holes[i] = h
		at += b.places()
		if i < len(b.gaps) {
			at += b.gaps[i]
		}
	}
	rows := out.Holes
	if !b.alongRows {
		rows = rows[:1] // all of them share the two rows
	}
	for _, h := range rows {
		out.Rows = append(out.Rows,
			b.bandRow(h.BindOffRowNumber, stitch.BindOff, b.stitches, b.stitches-b.inRow()*b.width),
			b.bandRow(h.CastOnRowNumber, stitch.CastOn, b.stitches-b.inRow()*b.width, b.stitches))
	}
	return out
}

// inRow is how many holes share a row.
func (b band) inRow() int {
	if b.alongRows {
		return 1
	}
	return b.holes
}

// bandRow writes a row that binds all its holes off, or casts them on. Stitches
// are counted from where right-side rows begin; a wrong-side row is worked from
// the other end.
func (b band) bandRow(row int, op stitch.Op, before, after int) BandRow {
	side, plain := b.side(row), stitch.Knit
	first, last, gaps := b.first, b.last, slices.Clone(b.gaps)
	if b.alongRows {
		first, gaps = (b.stitches-b.width)/2, nil
		last = b.stitches - b.width - first
	}
	if side == stitch.WrongSide {
		plain, first, last = stitch.Purl, last, first
		slices.Reverse(gaps)
	}
	var runs []spread.GapRun
	for _, n := range gaps {
		runs = spread.AppendGap(runs, n, 1)
	}
	hole := stitch.Do(op, b.width)
	steps := []stitch.Step{stitch.Do(plain, first)}
	for _, r := range runs {
		steps = appendTimes(steps, r.Times, []stitch.Step{hole, stitch.Do(plain, r.Stitches)})
	}
	steps = append(steps, hole, stitch.Do(plain, last))
	return BandRow{row, side, stitch.Instruction{Row: stitch.RowOf(steps...), StartStitches: before, EndStitches: after}}
}

// Directions write the band as a pattern would.
func (o Buttonholes) Directions() []string { return append(o.rowDirections(), buttonCare) }

// buttonCare is told with every plan of buttonholes: buttons can be swallowed. Common practice.
const buttonCare = "Sew the buttons on opposite the holes. They are small parts: on things for babies and small children sew them on " +
	"so that they hold a strong pull, or use another closing, and follow the rules of the place where they are worn or sold."

// rowDirections tell the rows of the band.
func (o Buttonholes) rowDirections() []string {
	hole := report.CountOf(o.HoleStitches, "stitches")
	d := []string{"k and p stand for the stitch pattern of the band. The stitch left on the right needle by binding off " +
		"is the first of those worked next."}
	rows := func(n int) string { return "Work " + report.CountOf(n, "rows") + " even." }
	if !o.b.alongRows {
		d = append(d, rows(o.Rows[0].RowNumber-1))
		d = append(d, o.Rows[0].direction()+" "+report.CountOf(len(o.Holes), "holes")+" of "+hole+" bound off.")
		d = append(d, o.Rows[1].direction()+" "+strconv.Itoa(o.BandStitches)+" stitches again.")
		if after := o.BandRows - o.Rows[1].RowNumber; after > 0 {
			d = append(d, rows(after))
		}
		return d
	}
	// One pair of rows for each side that binds off.
	said := map[stitch.Side]bool{}
	for i := 0; i < len(o.Rows); i += holeRows {
		if side := o.Rows[i].Side; !said[side] {
			said[side] = true
			d = append(d, "Hole ("+side.String()+"): "+o.Rows[i].Instruction.Row.Text()+"; next row "+
				o.Rows[i+1].Instruction.Row.Text()+".")
		}
	}
	numbers := make([]string, len(o.Holes))
	for i, h := range o.Holes {
		numbers[i] = strconv.Itoa(h.BindOffRowNumber)
		if len(said) > 1 {
			numbers[i] += " (" + o.Rows[holeRows*i].Side.String() + ")"
		}
	}
	begin := "Begin the hole on row " + numbers[0] + ", of two rows"
	if len(numbers) > 1 {
		begin = "Begin a hole on rows " + strings.Join(numbers, ", ") + ", of two rows each"
	}
	return append(d, begin+"; work all other rows even, to row "+strconv.Itoa(o.BandRows)+".")
}

// direction is "Row 4 (RS): k5, BO 3, k12.".
func (r BandRow) direction() string {
	return "Row " + strconv.Itoa(r.RowNumber) + " (" + r.Side.String() + "): " + r.Instruction.Row.Text() + "."
}

// Summary says the answer in words.
func (o Buttonholes) Summary() string {
	noun := o.b.noun()
	s := report.CountOf(len(o.Holes), "holes") + " of " + report.CountOf(o.HoleStitches, "stitches")
	if o.b.measured() {
		s += " (" + o.unit.Size(o.b.st.SizeCm(o.HoleStitches)) + ")"
	}
	first, last := "the first", "the last"
	if len(o.Holes) == 1 {
		first, last = "it", "it"
	}
	s += ": " + report.CountOf(o.BeforeFirstPlaces, noun) + " before " + first + ", " +
		report.CountOf(o.AfterLastPlaces, noun) + " after " + last
	low, high := stitch.MaxStitches, 0
	for _, g := range o.GapPlaces {
		low, high = min(low, g), max(high, g)
	}
	switch {
	case high == 0:
	case low == high:
		s += ", " + report.CountOf(low, noun) + " between"
	default:
		s += ", " + strconv.Itoa(low) + " or " + report.CountOf(high, noun) + " between"
	}
	return s + "."
}
