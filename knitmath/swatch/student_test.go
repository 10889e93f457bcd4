package swatch

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"

	"example.com/knitmath/knitmath/knittest"
)

// The quantile against gonum, which goes by the incomplete beta function: every
// number of degrees of freedom that the limits allow, and the probabilities that
// intervals and Grubbs' test use.
func TestStudentBesideGonum(t *testing.T) {
	for df := 1; df < MaxReadings; df++ {
		dist := distuv.StudentsT{Mu: 0, Sigma: 1, Nu: float64(df)}
		probabilities := []float64{0.5, 0.9, confidence, 0.99, 0.999, 1 - outlierLevel/float64(df+2)}
		for _, p := range probabilities {
			knittest.Near(t, "quantile", studentT(p, df), dist.Quantile((1+p)/2), 1e-9)
		}
		// And the distribution itself, without the inversion.
		for _, theta := range []float64{0.01, 0.3, 0.8, 1.2, 1.5, 1.57} {
			x := math.Sqrt(float64(df)) * math.Tan(theta)
			knittest.Near(t, "probability", studentWithin(theta, df), 1-2*dist.Survival(x), 1e-11)
		}
	}
}

// Closed forms: one degree of freedom is Cauchy's distribution, t = tan(pi p/2);
// with two, t = p*sqrt(2/(1-p^2)); the far end is the normal distribution.
func TestStudentClosedForms(t *testing.T) {
	for _, p := range []float64{0.1, 0.5, 0.9, 0.95, 0.99} {
		knittest.Near(t, "1 degree", studentT(p, 1), math.Tan(math.Pi*p/2), 1e-12)
		knittest.Near(t, "2 degrees", studentT(p, 2), p*math.Sqrt(2/(1-p*p)), 1e-12)
		knittest.Near(t, "many degrees", studentT(p, 2_000_000), math.Sqrt2*math.Erfinv(p), 1e-5)
	}
}

// The printed table of t at 95 %, two-sided, to three places. From memory: any
// textbook of statistics.
func TestStudentPrintedTable(t *testing.T) {
	for df, want := range map[int]float64{
		1: 12.706, 2: 4.303, 3: 3.182, 4: 2.776, 5: 2.571, 6: 2.447, 7: 2.365, 8: 2.306, 9: 2.262,
		10: 2.228, 15: 2.131, 20: 2.086, 30: 2.042, 60: 2.000,
	} {
		if got := studentT(0.95, df); math.Abs(got-want) > 0.0005 {
			t.Errorf("%d degrees: got %.4f, want %.3f", df, got, want)
		}
	}
}

// Grubbs' critical values at 5 %, two-sided. From memory: the table of his paper,
// reprinted in ISO 5725-2.
func TestGrubbsPrintedTable(t *testing.T) {
	for n, want := range map[int]float64{3: 1.155, 4: 1.481, 5: 1.715, 6: 1.887, 7: 2.020, 8: 2.126, 9: 2.215, 10: 2.290, 20: 2.709} {
		if got := grubbsLimit(0.05, n); math.Abs(got-want) > 0.002 {
			t.Errorf("n = %d: got %.4f, want %.3f", n, got, want)
		}
	}
	// And from its definition, with gonum's quantile.
	for n := 3; n <= MaxReadings; n++ {
		q := distuv.StudentsT{Mu: 0, Sigma: 1, Nu: float64(n - 2)}.Quantile(1 - 0.05/(2*float64(n)))
		want := float64(n-1) / math.Sqrt(float64(n)) * math.Sqrt(q*q/(float64(n-2)+q*q))
		knittest.Near(t, "limit", grubbsLimit(0.05, n), want, 1e-9)
	}
}

func BenchmarkStudentT(b *testing.B) {
	for b.Loop() {
		_ = studentT(confidence, 4)
	}
}
