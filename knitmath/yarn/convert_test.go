package yarn

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// A plied count by its notation and by its number is the same.
func TestCountsByNumber(t *testing.T) {
	for _, c := range []struct {
		in   Count
		want string
	}{
		{Count{Number: new(28.0), System: CountSystemMetric, Plies: new(2)}, "28/2 Nm"},
		{Count{Number: new(14.0), System: CountSystemMetric, Plies: new(2), NumberOf: NumberOfWhole}, "28/2 Nm"},
		{Count{Number: new(60.0), System: CountSystemSpunSilk, Plies: new(2)}, "60/2 spun silk"},
		{Count{Number: new(60.0), System: CountSystemSpunSilk, Plies: new(2), NumberOf: NumberOfSingle}, "30/2 spun silk"},
		{Count{Number: new(37.0), System: CountSystemTex, Plies: new(2)}, "R 74 tex/2"},
		{Count{Number: new(400.0), System: CountSystemMetresPer100G}, "400 m/100 g"},
	} {
		by, err := ConvertYarnCount(ConvertInput{Count: &c.in})
		as, err2 := ConvertYarnCount(ConvertInput{Count: &Count{Notation: c.want}})
		if err != nil || err2 != nil {
			t.Fatal(err, err2)
		}
		if by.Tex != as.Tex || by.SingleTex != as.SingleTex || by.Plies != as.Plies {
			t.Errorf("%+v is %v tex of %v, and %s %v of %v", c.in, by.Tex, by.SingleTex, c.want, as.Tex, as.SingleTex)
		}
	}
}

// The contraction is of the singles' length: 10 % leave 0.9 m of a metre, so that a
// kilometre of the yarn weighs 1/0.9 of what its singles do.
func TestContractionMakesThicker(t *testing.T) {
	out, err := ConvertYarnCount(ConvertInput{Count: &Count{Notation: "45 tex x 2", ContractionPercent: new(10.0)}})
	if err != nil {
		t.Fatal(err)
	}
	knittest.Near(t, "tex", out.Tex, 100, 0)
	knittest.Near(t, "single", out.SingleTex, 45, 0)
	out, err = ConvertYarnCount(ConvertInput{Count: &Count{Notation: "R 100 tex/2", ContractionPercent: new(10.0)}})
	if err != nil {
		t.Fatal(err)
	}
	knittest.Near(t, "single of a resultant", out.SingleTex, 45, 0)
}

func TestCountRemarks(t *testing.T) {
	for notation, want := range map[string][]report.Reason{
		"28 Nm":          nil,
		"28/2 Nm":        {NoContraction},
		"R 74 tex/2":     nil,
		"8/4 Ne":         {OtherReading, NoContraction},
		"150/48 den":     {Filaments},
		"60/2 spun silk": {FinishedCount},
		"24 worsted":     {NotAWeight},
		"5 US cut":       {OtherCuts},
		"5 glass cut":    {OtherCuts, Asbestos},
	} {
		out, err := ConvertYarnCount(ConvertInput{Count: &Count{Notation: notation}})
		if err != nil {
			t.Fatal(err)
		}
		var got []report.Reason
		for _, n := range out.Notices {
			got = append(got, n.Reason)
		}
		if len(got) != len(want) {
			t.Errorf("%s: %v, want %v", notation, got, want)
			continue
		}
		for i := range got {
			if got[i] != want[i] {
				t.Errorf("%s: %v, want %v", notation, got, want)
			}
		}
	}
}

func TestConvertFaults(t *testing.T) {
	long := make([]CountSystem, MaxSystems+1)
	for i := range long {
		long[i] = CountSystemTex
	}
	for _, c := range []struct {
		in   ConvertInput
		want []string
	}{
		{ConvertInput{}, []string{"count REQUIRED"}},
		{ConvertInput{Count: &Count{}}, []string{"count.notation REQUIRED", "count.number REQUIRED"}},
		{ConvertInput{Count: &Count{Notation: "28/2 Nm", Number: new(3.0), System: CountSystemMetric}},
			[]string{"count.notation CONTRADICTORY", "count.number CONTRADICTORY"}},
		{ConvertInput{Count: &Count{Number: new(3.0)}}, []string{"count.system REQUIRED"}},
		{ConvertInput{Count: &Count{Notation: "400 m/100 g", ContractionPercent: new(5.0)}}, []string{"count.contraction_percent CONTRADICTORY"}},
		{ConvertInput{Count: &Count{Number: new(math.NaN()), System: 99}}, []string{"count.number NOT_FINITE", "count.system UNKNOWN_VALUE"}},
		{ConvertInput{Count: &Count{Number: new(math.Inf(1)), System: CountSystemTex}}, []string{"count.number NOT_FINITE"}},
		{ConvertInput{Count: &Count{Number: new(-1.0), System: CountSystemTex, Plies: new(101)}},
			[]string{"count.number OUT_OF_RANGE", "count.plies OUT_OF_RANGE"}},
		{ConvertInput{Count: &Count{Number: new(2e6), System: CountSystemTex}}, []string{"count.number INFEASIBLE"}},
		{ConvertInput{Count: &Count{Notation: "90000 tex x 100"}}, []string{"count.notation INFEASIBLE"}},
		{ConvertInput{Count: &Count{Notation: "12 cut"}}, []string{"count.notation UNREADABLE_TEXT"}},
		{ConvertInput{Count: &Count{Notation: "28/2 Nm", System: CountSystemCotton}}, []string{"count.system CONTRADICTORY"}},
		{ConvertInput{Count: &Count{Notation: "28/2 Nm", Plies: new(2), NumberOf: NumberOfSingle}},
			[]string{"count.plies CONTRADICTORY", "count.number_of CONTRADICTORY"}},
		{ConvertInput{Count: &Count{Notation: string(make([]rune, 61))}}, []string{"count.notation TOO_MANY"}},
		{ConvertInput{Count: &Count{Notation: "28 Nm", ContractionPercent: new(51.0)}, Systems: []CountSystem{0, 99}, DisplayUnit: 7},
			[]string{"count.contraction_percent OUT_OF_RANGE", "systems[0] REQUIRED", "systems[1] UNKNOWN_VALUE", "display_unit UNKNOWN_VALUE"}},
		{ConvertInput{Count: &Count{Notation: "28 Nm"}, Systems: long}, []string{"systems TOO_MANY"}},
	} {
		_, err := ConvertYarnCount(c.in)
		knittest.WantViolations(t, err, c.want...)
	}
}

func TestConversionWords(t *testing.T) {
	for notation, want := range map[string]string{
		"28/2 Nm":     "2 plies of Nm 28 are R 71.43 tex/2, 1400 m/100 g.",
		"30 Ne":       "Ne 30 is 19.68 tex, 5080 m/100 g.",
		"400 m/100 g": "400 m/100 g is 250 tex.",
		"2/24s Nw":    "2 plies of 24s worsted are R 73.82 tex/2, 1355 m/100 g.",
	} {
		out, err := ConvertYarnCount(ConvertInput{Count: &Count{Notation: notation}})
		if err != nil {
			t.Fatal(err)
		}
		if got := out.Summary(); got != want {
			t.Errorf("%s: %q, want %q", notation, got, want)
		}
	}
}

func BenchmarkConvertYarnCount(b *testing.B) {
	in := ConvertInput{Count: &Count{Notation: "28/2 Nm"}}
	for b.Loop() {
		out, err := ConvertYarnCount(in)
		if err != nil || out.Summary() == "" || len(out.Sources()) == 0 {
			b.Fatal(err)
		}
	}
}

// What was asked is not said again: tex in tex, metres to 100 g in those.
func TestSummaryDoesNotRepeat(t *testing.T) {
	for text, want := range map[string]string{
		"250 tex":     "250 tex is 400 m/100 g.",
		"400 m/100 g": "400 m/100 g is 250 tex.",
		"5 run":       "5 run is 62.01 tex, 1613 m/100 g.",
	} {
		out, err := ConvertYarnCount(ConvertInput{Count: &Count{Notation: text}})
		if err != nil || out.Summary() != want {
			t.Errorf("%q: %q, %v; want %q", text, out.Summary(), err, want)
		}
	}
	out, err := ConvertYarnCount(ConvertInput{Count: &Count{Notation: "1600 yd/lb"}, DisplayUnit: measure.DisplayUnitIn})
	if err != nil || out.Summary() != "1600 yd/lb is 310 tex." {
		t.Errorf("%q, %v", out.Summary(), err)
	}
}
