package edge

import (
	"math/rand/v2"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// unitsOf are the units of an edge whose exceptions are fewer than what they part.
func unitsOf(rows, n int) (u units, long, short int) {
	e := alongEdge{rows: rows, n: n}
	op, k := stitch.SkipRow, rows-n
	if n > rows {
		op, k = stitch.PickUpTwo, n-rows
	}
	size, long := (rows-k)/(k+1), (rows-k)%(k+1)
	u.long, u.short = unit{e.strays(stitch.PickUp, size+1), e.strays(op, 1)}, unit{e.strays(stitch.PickUp, size), e.strays(op, 1)}
	return u, long, k - long
}

// walked is how far units in an order stray, unit by unit.
func (u units) walked(order []bool) int {
	worst, at := measure.Abs(u.from), u.from
	for _, long := range order {
		x := u.short
		if long {
			x = u.long
		}
		worst = max(worst, measure.Abs(at+x.run), measure.Abs(at+x.run+x.rare))
		at += x.run + x.rare
	}
	return worst
}

// written is a word, unit by unit.
func written(word []stretch) (order []bool) {
	for _, s := range word {
		for range s.times {
			kinds := []bool{true, false}
			if s.shortFirst {
				kinds = []bool{false, true}
			}
			for _, long := range kinds {
				n := s.short
				if long {
					n = s.long
				}
				for range n {
					order = append(order, long)
				}
			}
		}
	}
	return order
}

// Of every order of the units along short edges: where any keeps to a bound, what is
// found keeps to one little greater, has all units, and strays as far as is said; and
// it strays less than the least nowhere.
func TestNoOrderOfUnitsIsMissed(t *testing.T) {
	compared, same := 0, 0
	for rows := 4; rows <= 45; rows++ {
		for n := rows/2 + 1; n <= rows*3/2; n++ {
			if n == rows {
				continue
			}
			u, long, short := unitsOf(rows, n)
			if long+short > 13 || long == 0 || short == 0 {
				continue
			}
			least := 1 << 40
			for set := range 1 << (long + short) {
				order, longs := make([]bool, long+short), 0
				for i := range order {
					if order[i] = set>>i&1 == 1; order[i] {
						longs++
					}
				}
				if longs == long {
					least = min(least, u.walked(order))
				}
			}
			word := u.evenly(long, short, least)
			order, longs := written(word), 0
			for _, l := range order {
				if l {
					longs++
				}
			}
			strays := u.walked(order)
			if len(order) != long+short || longs != long || strays != u.strays(word) {
				t.Fatalf("%d along %d: %v has %d of %d and %d, strays by %d, %d said", n, rows, word, len(order), long, short, strays, u.strays(word))
			}
			if strays < least || strays > least+rows/8 {
				t.Errorf("%d along %d: %v strays by %d of %d, and %d is possible", n, rows, word, strays, rows, least)
			}
			compared++
			if strays == least {
				same++
			}
		}
	}
	t.Logf("%d compared, %d of them as even as can be", compared, same)
	if compared < 300 || same < compared*4/5 {
		t.Errorf("%d compared, %d as even as can be", compared, same)
	}
}

// 854 stitches along 1457 rows: 603 are skipped, and 604 runs are 250 of 2 and 354 of 1.
// One of 1 stands at the end. By a step of Euclid's algorithm the 353 others take turns
// with the 250: 103 of the groups have two, and after these the row is 10.8 stitches
// behind an even share. Shared out over 50 blocks, 47 with 7 and 5 and 3 with 8 and 5,
// nothing strays by more than two.
func TestALongEdgeByHand(t *testing.T) {
	u, long, short := unitsOf(1457, 854)
	knittest.Near(t, "mixed", float64(u.strays(u.asked(long, short, false)))/1457, 10.8, 0.05)
	row, evened := pickUpRow(1457, 854, false)
	const want = "[[pick up and knit 1, skip 1] 7 times, [pick up and knit 2, skip 1] 5 times] 47 times, " +
		"[[pick up and knit 1, skip 1] 8 times, [pick up and knit 2, skip 1] 5 times] 3 times, pick up and knit 1"
	if row.Text() != want || !evened || long != 250 || short != 353 {
		t.Errorf("%d and %d, %v: %s", long, short, evened, row.Text())
	}
	// Whoever asked for an order is told.
	for spread, told := range map[PickUpSpread]int{PickUpSpreadUnspecified: 0, PickUpSpreadInterleaved: 1,
		PickUpSpreadGrouped: 1, PickUpSpreadLeastEffort: 0} {
		out, err := PlanPickUp(PickUpInput{LengthRows: new(1457), Gauge: &gauge.Gauge{Stitches: 85.4, Rows: 145.7}, Spread: spread})
		if err != nil || len(out.Notices) != told || told == 1 && out.Notices[0].Reason != SpreadEvened ||
			out.GreatestDepartureStitches > MaxPickUpDeparture {
			t.Errorf("spread %d: %v, %+v", spread, err, out.Notices)
		}
	}
}

// However long the edge: the row is worked, and strays from an even share by no more
// than two stitches after any row of the edge.
func TestLongEdgesDoNotDrift(t *testing.T) {
	rng := rand.New(rand.NewPCG(14, 57))
	long := 0
	for i := range knittest.Sweep(1500, 250) {
		rows := 1 + rng.IntN(1500)
		if i%20 == 0 {
			rows = 1 + rng.IntN(stitch.MaxRows)
		}
		n := 1 + rng.IntN(min(2*rows, stitch.MaxStitches))
		row, _ := pickUpRow(rows, n, i%2 == 0)
		if i%4 == 1 {
			row = leastEffort(rows, n)
		}
		at, so := 0, 0
		for _, took := range pickUpWorked(t, row, rows, n) {
			at, so = at+1, so+took
			if off := measure.Abs(so*rows - n*at); off > MaxPickUpDeparture*rows {
				t.Fatalf("%d along %d: after row %d of the edge %v stitches from even; %s", n, rows, at, float64(off)/float64(rows), row.Text())
			}
		}
		if row.Items() > 20 {
			long++
		}
	}
	if long > knittest.Sweep(1500, 250)/12 {
		t.Errorf("%d rows have more than 20 items", long)
	}
}
