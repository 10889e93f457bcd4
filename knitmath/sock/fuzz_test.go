package sock

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/solid"
)

// given is a field that is left out where the number is 0.
func given(n int) *int {
	if n == 0 {
		return nil
	}
	return &n
}

func FuzzPlanHeel(f *testing.F) {
	f.Add(int32(1), int32(0), 64, 0, 0, 0, 0, 0, 0, int32(0), 0, 0.0)
	f.Add(int32(2), int32(0), 60, 30, 24, 10, 13, 3, 1, int32(0), 0, 30.0)
	f.Add(int32(4), int32(0), 60, 30, 0, 10, 0, 0, 0, int32(2), 0, 0.0)
	f.Add(int32(5), int32(0), 60, 30, 0, 0, 0, 0, 0, int32(0), 2, 22.0)
	f.Add(int32(1), int32(2), 66, 33, 30, 11, 0, 3, 0, int32(2), 0, 30.0)
	f.Add(int32(3), int32(2), 60, 0, 0, 4, 0, 0, 0, int32(0), 0, 0.0)
	f.Fuzz(func(t *testing.T, kind, direction int32, round, heel, flap, centre, pick, every, quick int, method int32, corner int,
		standard float64) {
		in := HeelInput{Kind: HeelKind(kind), Direction: Direction(direction), RoundStitches: &round, HeelStitches: given(heel),
			FlapRows:       given(flap),
			CentreStitches: given(centre),
			PickUpStitches: given(pick), GussetEveryRounds: given(every), SuccessiveRounds: given(quick), TurnMethod: shortrow.TurnMethod(method),
			CornerStitches: given(corner), WithOutline: true}
		if standard != 0 {
			in.Gauge = &gauge.Gauge{Stitches: standard, Rows: standard}
		}
		o, err := PlanHeel(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, o)
		knitHeel(t, "fuzz", o)
		checkWords(t, "fuzz", o, o.Notices)
	})
}

func FuzzPlanToe(f *testing.F) {
	f.Add(int32(1), 64, 0, 0, 0, 0, 0, 0, int32(0), 0.0, 0.0)
	f.Add(int32(2), 60, 10, 10, 1, 0, 0, 0, int32(0), 30.0, 24.0)
	f.Add(int32(3), 61, 5, 8, 0, 0, 2, 3, int32(0), 0.0, 0.0)
	f.Add(int32(4), 60, 0, 0, 0, 10, 0, 0, int32(2), 30.0, 24.0)
	f.Fuzz(func(t *testing.T, kind int32, round, wedges, end, more, centre, every, times int, method int32, standard, length float64) {
		in := ToeInput{Kind: ToeKind(kind), RoundStitches: &round, WedgeCount: given(wedges), TipStitches: given(end),
			MoreEvenRounds: given(more),
			CentreStitches: given(centre), TurnMethod: shortrow.TurnMethod(method), WithOutline: true}
		if every != 0 {
			in.Rates = []solid.Rate{rate(every, times)}
		}
		if standard != 0 {
			in.Gauge = &gauge.Gauge{Stitches: standard, Rows: standard}
		}
		if length != 0 {
			in.FootLengthCm = &length
		}
		o, err := PlanToe(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, o)
		knitToe(t, "fuzz", o)
		checkWords(t, "fuzz", o, o.Notices)
	})
}

func BenchmarkPlanHeel(b *testing.B) {
	in := HeelInput{RoundStitches: new(64)}
	for b.Loop() {
		if _, err := PlanHeel(in); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkPlanHeelToeUp(b *testing.B) {
	in := HeelInput{RoundStitches: new(64), Direction: DirectionToeUp}
	for b.Loop() {
		if _, err := PlanHeel(in); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkPlanHeelOfShortRows(b *testing.B) {
	in := HeelInput{RoundStitches: new(64), Kind: HeelKindShortRows}
	for b.Loop() {
		if _, err := PlanHeel(in); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkPlanToe(b *testing.B) {
	in := ToeInput{RoundStitches: new(64)}
	for b.Loop() {
		if _, err := PlanToe(in); err != nil {
			b.Fatal(err)
		}
	}
}
