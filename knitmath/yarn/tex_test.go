package yarn

import (
	"math"
	"math/big"
	"os/exec"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// The systems against two independent tables: products as the trade prints them, and
// what GNU units 2.22 printed for the same definition.
func TestCountSystemsAgainstTables(t *testing.T) {
	rows := knittest.Table(t, "yarn/yarn_counts.csv")
	if len(rows) != int(lastSystem) {
		t.Fatalf("%d rows for %d systems", len(rows), lastSystem)
	}
	for i, row := range rows {
		s := CountSystem(i + 1)
		got := s.Tex(one).Float()
		// The tables have 12 and 13 figures; half a unit of the last is the tolerance.
		knittest.Near(t, row["system"], got/knittest.Cell(t, row["tex"]), 1, 5e-12)
		knittest.Near(t, row["system"]+" by units", got/knittest.Cell(t, row["units_tex"]), 1, 5e-13)
		if (row["kind"] == "direct") != countSystems[s].direct {
			t.Errorf("%s is %s", row["system"], row["kind"])
		}
	}
}

// The same again by the program itself where it is installed. Where it is not, the
// committed table above stands for it.
func TestCountSystemsAgainstUnits(t *testing.T) {
	program, err := exec.LookPath("units")
	if err != nil {
		t.Log("GNU units is not installed: its committed figures were compared above, and nothing here")
		return
	}
	for i, row := range knittest.Table(t, "yarn/yarn_counts.csv") {
		s := CountSystem(i + 1)
		for _, number := range []string{"1", "2.5", "28", "0.37"} {
			n, _ := new(big.Rat).SetString(number)
			expression := number + " * (" + row["units_expression"] + ")"
			if !countSystems[s].direct {
				expression = "(" + row["units_expression"] + ") / " + number
			}
			out, err := exec.Command(program, "-t", "-d", "13", expression, "tex").Output()
			if err != nil {
				t.Fatalf("units %s: %v", expression, err)
			}
			want, err := strconv.ParseFloat(strings.TrimSpace(string(out)), 64)
			if err != nil {
				t.Fatal(err)
			}
			knittest.Near(t, expression, s.Tex(n).Float()/want, 1, 1e-12)
		}
	}
}

// Relations and examples printed on the page of ASTM D2260-03 (2013), each to the
// figures it has there.
func TestStandardRelations(t *testing.T) {
	number := func(from CountSystem, n float64, to CountSystem) float64 {
		return nearest(from.Tex(DecimalOf(n)).In(to))
	}
	for _, c := range []struct {
		name                 string
		got, want, tolerance float64
	}{
		{"den = 5314.87 / Ne", number(CountSystemCotton, 1, CountSystemDenier), 5314.87, 0.005},
		{"Nw = 1.5 Ne", number(CountSystemCotton, 1, CountSystemWorsted), 1.5, 1e-15},
		{"run = 0.525 Ne", number(CountSystemCotton, 1, CountSystemWoollenRun), 0.525, 1e-15},
		{"run = 0.35 Nw", number(CountSystemWorsted, 1, CountSystemWoollenRun), 0.35, 1e-15},
		{"lea = 2.8 Ne", number(CountSystemCotton, 1, CountSystemLinenLea), 2.8, 1e-15},
		{"lea = 1.86667 Nw", number(CountSystemWorsted, 1, CountSystemLinenLea), 1.86667, 5e-6},
		{"run = 0.1875 lea", number(CountSystemLinenLea, 1, CountSystemWoollenRun), 0.1875, 1e-15},
		{"yd/lb = 496.055 Nm", number(CountSystemMetric, 1, CountSystemYardsPerPound), 496.055, 5e-4},
		{"Ne 10 = Nw 15", number(CountSystemCotton, 10, CountSystemWorsted), 15, 1e-15},
		{"30 tex = Ne 19.7", number(CountSystemTex, 30, CountSystemCotton), 19.7, 0.05},
		// Printed by GNU units.
		{"m/100 g", number(CountSystemMetresPer100G, 1, CountSystemYardsPerPound), 4.96054648, 5e-9},
		{"Nm = 1.69336 Ne", number(CountSystemCotton, 1, CountSystemMetric), 1.69336182, 5e-9},
		{"Nm = 1.12891 Nw", number(CountSystemWorsted, 1, CountSystemMetric), 1.12890788, 5e-9},
	} {
		knittest.Near(t, c.name, c.got, c.want, c.tolerance)
	}
}

// An examination question: the resultant count of a two-ply is Ne 16, and its singles
// are 10 % longer than it is. What are they? 16 = 35.2 / 2 / 1.10. Ten percent of the
// plied length are 100/11 % of the singles'.
//
// Source: GATE Textile Engineering 1992, question 3, as in the handbook of answers.
func TestExaminationOfPliedCotton(t *testing.T) {
	percent := big.NewRat(100, 11)
	single := CountSystemCotton.Tex(big.NewRat(16, 1)).Drawn(percent).Share(2)
	if got := single.In(CountSystemCotton); got.Cmp(big.NewRat(352, 10)) != 0 {
		t.Errorf("the single is Ne %v, want 35.2", got.FloatString(6))
	}
	if got := single.Strands(2).Contracted(percent).In(CountSystemCotton); got.Cmp(big.NewRat(16, 1)) != 0 {
		t.Errorf("and back: Ne %v, want 16", got.FloatString(6))
	}
}

// Questions of the kind that textbooks of the 1890s set, in the counts of their time: what
// count in another system is as thick, and what several threads twisted together make.
//
// Source: from memory, after the calculations in E. A. Posselt, Textile Calculations (1896),
// and T. R. Ashenhurst's tables; the values close by the lengths of the skeins (840, 560 and
// 300 yd a pound, 1,600 yd for a run, 300 for a cut).
func TestQuestionsOfThe1890s(t *testing.T) {
	number := func(n int64, from, to CountSystem) *big.Rat { return from.Tex(big.NewRat(n, 1)).In(to) }
	for _, c := range []struct {
		name      string
		got, want *big.Rat
	}{
		{"20s cotton in worsted", number(20, CountSystemCotton, CountSystemWorsted), big.NewRat(30, 1)},
		{"20s cotton in woollen runs", number(20, CountSystemCotton, CountSystemWoollenRun), big.NewRat(21, 2)},
		{"20s cotton in woollen cuts", number(20, CountSystemCotton, CountSystemWoollenCut), big.NewRat(56, 1)},
		{"20s cotton in linen leas", number(20, CountSystemCotton, CountSystemLinenLea), big.NewRat(56, 1)},
		{"60s worsted in cotton", number(60, CountSystemWorsted, CountSystemCotton), big.NewRat(40, 1)},
		{"6 run in worsted", number(6, CountSystemWoollenRun, CountSystemWorsted), big.NewRat(120, 7)},
	} {
		if c.got.Cmp(c.want) != 0 {
			t.Errorf("%s: %s, want %s", c.name, c.got.FloatString(4), c.want.FloatString(4))
		}
	}
	together := func(counts ...int64) *big.Rat {
		sum := CountSystemCotton.Tex(big.NewRat(counts[0], 1))
		for _, n := range counts[1:] {
			sum = sum.With(CountSystemCotton.Tex(big.NewRat(n, 1)))
		}
		return sum.In(CountSystemCotton)
	}
	if got := together(40, 60); got.Cmp(big.NewRat(24, 1)) != 0 {
		t.Errorf("40s and 60s: %s, want 24", got.FloatString(4))
	}
	if got := together(20, 30, 60); got.Cmp(big.NewRat(10, 1)) != 0 {
		t.Errorf("20s, 30s and 60s: %s, want 10", got.FloatString(4))
	}
}

// Strands of unlike counts lie together as 1/N = 1/A + 1/B: 30s and 20s make 12s.
func TestUnlikeStrands(t *testing.T) {
	both := CountSystemCotton.Tex(big.NewRat(30, 1)).With(CountSystemCotton.Tex(big.NewRat(20, 1)))
	if got := both.In(CountSystemCotton); got.Cmp(big.NewRat(12, 1)) != 0 {
		t.Errorf("got %v, want 12", got)
	}
}

// A count that goes through all systems, one into the next, is the count it was.
func TestCountsAreExact(t *testing.T) {
	for _, x := range []float64{0.1, 0.3, 1, 2.8, 19.7, 1.0 / 3, 115.2} {
		began := CountSystemCotton.Tex(DecimalOf(x))
		yarn := began
		for _, s := range AllSystems() {
			yarn = s.Tex(yarn.In(s))
		}
		if yarn.Grams().Cmp(began.Grams()) != 0 {
			t.Errorf("%v became %v of %v", x, yarn.Grams(), began.Grams())
		}
	}
	if DecimalOf(0.1).Cmp(big.NewRat(1, 10)) != 0 {
		t.Error("0.1 is not a tenth")
	}
}

func TestNoYarn(t *testing.T) {
	var none Tex
	if !none.IsZero() || none.Float() != 0 || none.MetresPerGram() != 0 || none.In(CountSystemCotton).Sign() != 0 ||
		!none.With(none).IsZero() || !none.Strands(3).IsZero() {
		t.Error("no yarn is some")
	}
	knittest.Near(t, "metres to the gram", CountSystemTex.Tex(big.NewRat(250, 1)).MetresPerGram(), 4, 0)
	knittest.Near(t, "of a ball", TexOf(big.NewRat(115, 50)).Float(), 50e3/115, 1e-10)
}

// What is worked wide is the float nearest to the exact fraction, in all systems, over
// counts that are tidy and that are not, and over yarns as fine and as thick as any.
func TestWideNumbersAreNearest(t *testing.T) {
	for _, s := range AllSystems() {
		for i := 1; i <= 400; i++ {
			for _, yarn := range []Tex{CountSystemCotton.Tex(big.NewRat(int64(i), int64(1+i%7))), CountSystemTex.Tex(DecimalOf(float64(i) / 1e4)),
				CountSystemTex.Tex(DecimalOf(1e6 / float64(i)))} {
				for _, into := range []CountSystem{s, CountSystemCotton} {
					want := nearest(yarn.In(into))
					if got, alone := yarn.numbers().in(into), yarn.number(into); got != want || alone != want {
						t.Fatalf("%v in system %d: %v and %v, nearest is %v", yarn.Grams(), into, got, alone, want)
					}
				}
			}
		}
	}
}

// A decimal is what it was written as, short or long; the two ways of reading it agree.
func TestDecimals(t *testing.T) {
	for _, x := range []float64{0, 1, -1, 0.1, -2.54, 115, 1234.5678, 1e-6, 1e17, 1e18, 1e20, 1e-20, 123456789012345680, 0.1234567890123456,
		math.MaxFloat64, math.SmallestNonzeroFloat64, 1.0 / 3} {
		want, ok := new(big.Rat).SetString(strconv.FormatFloat(x, 'g', -1, 64))
		if !ok {
			t.Fatal(x)
		}
		if got := DecimalOf(x); got.Cmp(want) != 0 {
			t.Errorf("%v: %v, want %v", x, got, want)
		}
	}
	for _, text := range []string{"", "-", ".", "1.2.3", "1e5", "1234567890123456789", "--1"} {
		if got := shortDecimal([]byte(text)); got != nil {
			t.Errorf("%q is %v", text, got)
		}
	}
}
