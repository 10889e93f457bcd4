package shaping

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/spread"
)

// In the round no arrangement has a smaller sum of squared gaps (tried over all
// of them), and in the interleaved order every stretch of neighbouring gaps is
// as long as every other with as many gaps, to within one stitch: the property
// that Euclidean words alone have.
func TestEvenSpacingIsMostEven(t *testing.T) {
	for k := 1; k <= 6; k++ {
		for plain := 0; plain <= 14; plain++ {
			best := fewestSquares(k, plain)
			var gaps []int
			got := 0
			for i := range k {
				g := spread.Share(i, k, plain)
				gaps = append(gaps, g)
				got += g * g
			}
			if got != best {
				t.Errorf("k=%d plain=%d: gaps %v have squares %d, the best have %d", k, plain, gaps, got, best)
			}
			for length := 1; length < k; length++ {
				low, high := 1<<30, 0
				for at := range k {
					sum := 0
					for i := range length {
						sum += gaps[(at+i)%k]
					}
					low, high = min(low, sum), max(high, sum)
				}
				if high-low > 1 {
					t.Errorf("k=%d plain=%d: stretches of %d gaps hold %d to %d stitches", k, plain, length, low, high)
				}
			}
		}
	}
}

func fewestSquares(k, plain int) int {
	if k == 1 {
		return plain * plain
	}
	best := 1 << 30
	for g := 0; g <= plain; g++ {
		best = min(best, g*g+fewestSquares(k-1, plain-g))
	}
	return best
}

// Toussaint, "The Euclidean algorithm generates traditional musical rhythms",
// BRIDGES 2005, section 4, writes E(k,n) with x for an onset. E(3,8) and E(5,8)
// are quoted from it; the others are from memory. A rhythm is compared up to
// rotation, as the paper does for necklaces.
func TestEuclideanRhythms(t *testing.T) {
	for _, word := range []string{
		"x..x..x.", "x.xx.xx.",
		"x.x..", "x.xx", "x.x.x", "x.x.x.x", "x.x.x.x..", "x.xxxx", "x.xx.xx", "x.x.x.x.x", "x.x.x.x.x..",
		"x..x.x..x.x.", "x..x..x..x..x...", "x.xxxxxx", "x.xx.x.xx.x.", "x..x.x.x..x.x.x.", "x.xx.x.x.xx.x.x.",
		"x..x.x.x.x.x..x.x.x.x.x.", "x.xx.x.x.x.x.xx.x.x.x.x.",
	} {
		k := strings.Count(word, "x")
		n := len(word)
		var bySharing strings.Builder
		for i := range k {
			bySharing.WriteString("x" + strings.Repeat(".", spread.Share(i, k, n-k)))
		}
		for _, p := range []spread.Phase{spread.AtStart, spread.Centred} {
			bySpread := []byte(strings.Repeat(".", n))
			for i := range k {
				bySpread[spread.Place(i, k, n, p)] = 'x'
			}
			if !rotation(string(bySpread), word) {
				t.Errorf("spread gives %s for E(%d,%d), want %s", bySpread, k, n, word)
			}
		}
		if !rotation(bySharing.String(), word) {
			t.Errorf("share gives %s for E(%d,%d), want %s", bySharing.String(), k, n, word)
		}
	}
}

func rotation(a, b string) bool { return len(a) == len(b) && strings.Contains(a+a, b) }
