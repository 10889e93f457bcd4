package pattern

import (
	"example.com/knitmath/knitmath/cost"
)

// MaxCheckCost is the dearest text that is checked: what it takes to read the
// longest text, to work as many rows as may be in as many sizes, and to tell of them.
const MaxCheckCost = 100_000

// Cost is the price of checking a text, and also what it may take: how many rows
// are worked is known only when they are, so that the working stops when it has
// cost what the price allows for it, which is several times what a pattern takes
// that is meant to be knit. With L lines, S sizes and R rows, as seen at a glance,
//
//	price = 20 + bytes/3 + 20*abbreviations + 10*L + S*(2*L + bytes/40 + (2*L+R)/5), at most 60,000 of it for the sizes
//
// and twice as much again and 500, at most maxTrying, for trying what would make right
// what is wrong.
func (in CheckInstructionsInput) Cost() int {
	g := glanceAt(in.Text[:min(len(in.Text), MaxTextBytes)])
	price := in.once(g)
	return cost.Sum(price, trying(price))
}

// once is the price of checking a text once.
func (in CheckInstructionsInput) once(g glance) int {
	return cost.Sum(20, min(len(in.Text), MaxTextBytes)/3, declaring(in.Abbreviations), 10*g.lines,
		priced(in.charge(g)))
}

// maxTrying is the most that trying corrections is priced at.
const maxTrying = 10_000

// trying is the price of trying corrections of a text that is checked at a price.
func trying(price int) int { return min(2*price+500, maxTrying) }

// charge is what the working of all sizes may be charged.
func (in CheckInstructionsInput) charge(g glance) int {
	rows := min(2*g.lines+g.rows, 3*MaxRows)
	each := chargesPerStep*2*g.lines + min(len(in.Text), MaxTextBytes)/2 + rows*(chargeRow+chargeMisfit)
	return min(in.sizes(g)*each, maxCharge)
}

// sizes is how many there are, as far as can be seen at a glance.
func (in CheckInstructionsInput) sizes(g glance) int {
	if len(in.StartStitches) > 1 {
		return min(len(in.StartStitches), MaxSizes)
	}
	return g.sizes
}

// declaring is the price of abbreviations.
func declaring(own []Abbreviation) int { return 20 * min(len(own), MaxAbbreviations) }

// Cost is the price of writing rows: of a text, which is read again when it is written,
// a step for every third byte of it, and of rows that are given ten steps for each of their steps and one for each number;
// and of compressing them, three steps for every run.
func (in FormatInstructionsInput) Cost() int {
	return cost.Sum(rewriting(in.Text, in.Rows, in.Abbreviations), compressing(in.Text, in.Rows))
}

// Cost is the price of mirroring rows: that of writing them, but for compressing, and of reading a text
// again until each of its rows stands where it is read as it was written.
func (in MirrorInstructionsInput) Cost() int {
	return cost.Sum(rewriting(in.Text, in.Rows, in.Abbreviations), rereads*min(len(in.Text), MaxTextBytes)/6)
}

func rewriting(text string, rows []Row, own []Abbreviation) int {
	price := cost.Sum(20, min(len(text), MaxTextBytes)/3, declaring(own))
	if len(rows) > MaxRowsGiven {
		return price
	}
	left := MaxStepsGiven
	for i := range rows {
		price = cost.Sum(price, 20, (len(rows[i].Label)+len(rows[i].Direction))/10, stepsCost(rows[i].Steps, &left))
	}
	return price
}

// stepsCost looks at no more steps than are read.
func stepsCost(steps []Step, left *int) int {
	price := 0
	for i := range steps {
		if *left--; *left < 0 {
			break
		}
		s := &steps[i]
		price = cost.Sum(price, 10, min(len(s.Times), MaxSizes), min(len(s.RemainingStitches), MaxSizes), stepsCost(s.Steps, left))
	}
	return price
}

// compressing is the price of what is compressed: three steps for each run, as far
// as there are any to be seen, and at most as many as are compressed.
func compressing(text string, rows []Row) int {
	runs, most := 0, maxRuns
	if len(rows) == 0 {
		most = runsFor(min(len(text), MaxTextBytes))
		runs = runsAt(text[:min(len(text), MaxTextBytes)])
	}
	left := MaxStepsGiven
	for i := range rows[:min(len(rows), MaxRowsGiven)] {
		runs = cost.Sum(runs, runsIn(rows[i].Steps, &left))
	}
	return 3 * min(runs, most)
}

// runsIn is about how many runs steps have; it looks at no more than are read.
func runsIn(steps []Step, left *int) int {
	runs := 0
	for i := range steps {
		if *left--; *left < 0 {
			break
		}
		s := &steps[i]
		n := 1
		if len(s.Steps) > 0 && len(s.Times) == 1 {
			n = s.Times[0]
		}
		runs = cost.Sum(runs, 1, cost.Product(n, runsIn(s.Steps, left)))
	}
	return runs
}
