package yardage

import (
	"math/big"
	"math/rand/v2"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/yarn"
)

// wholeByRates is how many stitches' yarn of stranded rows a stitch of the border's yarn alone
// takes: all yarns of a stitch are a loop and 0.3 of one for each yarn beyond the first, and a
// yarn that is only carried takes 0.3.
func wholeByRates(in RemainingInput, rates []*big.Rat) *big.Rat {
	whole := big.NewRat(1, 1)
	if len(in.Yarns) == 1 || len(in.Stripes) > 0 {
		return whole
	}
	all := new(big.Rat)
	for _, r := range rates {
		all.Add(all, r)
	}
	all.Quo(all, rates[fault.Or(in.Border.YarnNumber, 1)-1])
	all.Quo(all, new(big.Rat).Add(whole, big.NewRat(int64(3*(len(rates)-1)), 10)))
	if all.Cmp(whole) < 0 {
		return whole
	}
	if most := big.NewRat(10, 3); all.Cmp(most) > 0 {
		return most
	}
	return all
}

// simulated knits row by row in exact rationals: after how many rows at the latest can
// the border be worked still, of the likely figures, for any stripes and sections.
func simulated(in RemainingInput) int {
	budget, rates := make([]*big.Rat, len(in.Yarns)), make([]*big.Rat, len(in.Yarns))
	for i, y := range in.Yarns {
		u := y.Used
		stitches := big.NewRat(int64(*u.Rows)*int64(u.FirstRowStitches+*u.LastRowStitches), 2)
		budget[i] = new(big.Rat).Mul(yarn.DecimalOf(*y.LeftG), stitches)
		budget[i].Quo(budget[i], yarn.DecimalOf(*u.MassG))
		rates[i] = new(big.Rat).Quo(yarn.DecimalOf(*u.MassG), stitches)
	}
	whole := wholeByRates(in, rates)
	var order []int
	for _, s := range in.Stripes {
		for range s.Rows {
			order = append(order, s.YarnNumber-1)
		}
	}
	border := func(n int) *big.Rat {
		n = fault.Or(in.Border.Stitches, n)
		// What a bind-off and a border take is rounded to a millionth of a stitch in the answer.
		takes := new(big.Rat).Add(big.NewRat(int64(in.Border.Rows), 1), big.NewRat(952_380, 1_000_000))
		takes.Mul(takes, whole).Mul(takes, big.NewRat(1_000_000, 1)).Add(takes, big.NewRat(1, 2))
		takes.SetFrac(new(big.Int).Quo(takes.Num(), takes.Denom()), big.NewInt(1_000_000))
		return takes.Mul(takes, big.NewRat(int64(n), 1))
	}
	best, r, n := -1, 0, *in.Sections[0].Stitches
	spent := make([]*big.Rat, len(in.Yarns))
	for i := range spent {
		spent[i] = new(big.Rat)
	}
	try := func() {
		for i := range spent {
			all := new(big.Rat).Set(spent[i])
			if i == fault.Or(in.Border.YarnNumber, 1)-1 {
				all.Add(all, border(n))
			}
			if all.Cmp(budget[i]) > 0 {
				return
			}
		}
		best = r
	}
	try()
	for _, s := range in.Sections {
		n = *s.Stitches
		for i := range *s.Rows {
			if i > 0 && i%*s.ChangeEveryRows == 0 {
				n += s.ChangeStitches
			}
			row := new(big.Rat).Mul(big.NewRat(int64(n), 1), yarn.DecimalOf(*s.PatternFactor))
			for k := range spent {
				if len(order) == 0 || order[r%len(order)] == k {
					spent[k].Add(spent[k], row)
				}
			}
			r++
			try()
		}
	}
	return best
}

// Random work of one to three yarns against the simulation.
func TestRemainingAgainstASimulation(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 7))
	fitted := 0
	for range 3_000 {
		in := RemainingInput{Border: &BorderAhead{Rows: r.IntN(20)}}
		yarns := 1 + r.IntN(3)
		for i := range yarns {
			in.Yarns = append(in.Yarns, YarnLeft{LeftG: new(float64(20+r.IntN(800)) / 4), ScaleStepG: new(0.01), Used: &YarnUsed{
				MassG: new(
					float64(1+r.IntN(90)) / 8,
				), Rows: new(1 + r.IntN(12)), FirstRowStitches: 1 + r.IntN(200), LastRowStitches: new(1 + r.IntN(200))}})
			if yarns > 1 && r.IntN(4) > 0 || len(in.Stripes) > 0 {
				in.Stripes = append(in.Stripes, Stripe{YarnNumber: i + 1, Rows: 1 + r.IntN(5)})
			}
		}
		if len(in.Stripes) > 0 && len(in.Stripes) < yarns {
			in.Stripes = nil
		}
		if yarns > 1 {
			in.Border.YarnNumber = new(1 + r.IntN(yarns))
		}
		if r.IntN(3) == 0 {
			in.Border.Stitches = new(1 + r.IntN(300))
		}
		for range 1 + r.IntN(3) {
			s := RowsAhead{
				Rows:            new(1 + r.IntN(60)),
				Stitches:        new(130 + r.IntN(100)),
				ChangeStitches:  r.IntN(5) - 2,
				ChangeEveryRows: new(1 + r.IntN(4)),
			}
			s.PatternFactor = new(float64(50+r.IntN(150)) / 100)
			in.Sections = append(in.Sections, s)
		}
		want, out := simulated(in), remainingOf(t, in)
		got := -1
		if out.MainRows.Likely != nil {
			got = *out.MainRows.Likely
		}
		if got != want {
			t.Fatalf("%+v: %d rows, by simulation %d", in, got, want)
		}
		if want > 0 && want < *out.PlannedRows {
			fitted++
		}
	}
	if fitted < 500 {
		t.Errorf("only %d of the cases decide anything", fitted)
	}
}

// The rows that are open go to where the same rows are found enough for when they are
// given, and one more is not.
func TestOpenRowsAreTheGreatestThatLast(t *testing.T) {
	for change := -2; change <= 4; change++ {
		in := RemainingInput{
			Yarns: []YarnLeft{{LeftG: new(50.0), ScaleStepG: new(0.1), Used: &YarnUsed{MassG: new(5.0), Rows: new(10), FirstRowStitches: 90}}},
			Sections: []RowsAhead{
				{Rows: new(6), Stitches: new(150)},
				{Stitches: new(150), ChangeStitches: change, ChangeEveryRows: new(3)},
			},
			Border: &BorderAhead{Rows: 4},
		}
		open := remainingOf(t, in)
		if open.PlannedRows != nil || open.Lasts != LastsUnspecified {
			t.Errorf("open rows are planned: %+v", open)
		}
		for extra, lasts := range []bool{true, false} {
			in.Sections[1].Rows = new(*open.MainRows.Low - 6 + extra)
			if got := remainingOf(t, in).Lasts == LastsSurely; got != lasts {
				t.Errorf("%+d stitches, %d rows: lasts %v", change, *in.Sections[1].Rows+6, got)
			}
			in.Sections[1].Rows = nil
		}
	}
}

// Twice the yarn, used and left, is the same; so are rows in a list or in items.
func TestRemainingMetamorphic(t *testing.T) {
	in := RemainingInput{
		Yarns: []YarnLeft{{LeftG: new(40.0), ScaleStepG: new(0.5), Used: &YarnUsed{MassG: new(6.0), Rows: new(8), FirstRowStitches: 90}}},
		Sections: []RowsAhead{
			{Rows: new(40), Stitches: new(140), ChangeStitches: -1, ChangeEveryRows: new(2)},
		},
		Border:        &BorderAhead{Rows: 3},
		SharePercents: []float64{25, 75},
	}
	want := remainingOf(t, in)
	var list []int
	for i := range 40 {
		list = append(list, in.Sections[0].at(i))
	}
	again := in
	again.Sections = []RowsAhead{{RowStitches: list[:15]}, {RowStitches: list[15:]}}
	double := in
	double.Yarns = []YarnLeft{{LeftG: new(80.0), ScaleStepG: new(1.0), Used: &YarnUsed{MassG: new(12.0), Rows: new(16), FirstRowStitches: 90}}}
	double.Yarns[0].Used.Rows = new(8)
	for name, other := range map[string]RemainingInput{"list": again, "double": double} {
		got := remainingOf(t, other)
		if *got.MainRows.Low != *want.MainRows.Low || *got.MainRows.Likely != *want.MainRows.Likely ||
			*got.MainRows.High != *want.MainRows.High ||
			got.Lasts != want.Lasts ||
			!slices.Equal(got.Marks, want.Marks) {
			t.Errorf("%s: %q, want %q", name, got.Summary(), want.Summary())
		}
	}
}
