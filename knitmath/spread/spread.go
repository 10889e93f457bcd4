package spread

// Phase says where the first of k spread things falls.
type Phase int

const (
	// AtStart puts the first thing at place 0: gaps follow the things.
	AtStart Phase = 0
	// Centred leaves half a gap before the first and after the last.
	Centred Phase = 1
)

// Place is the place of thing i of k things laid over n places as evenly as
// integers allow,
//
//	place(i) = floor((2i + phase) * n / 2k),  i = 0 .. k-1
//
// so that neighbours lie floor(n/k) or ceil(n/k) apart, and the two distances
// are themselves mixed as evenly as can be. k must be at least 1; n and k at
// most 10,000, the most stitches of a row, so that nothing overflows.
//
// Source: the digital straight line, Bresenham, IBM Systems Journal 4 (1965)
// 25-30; the same word as Euclid's algorithm gives, Toussaint, "The Euclidean
// algorithm generates traditional musical rhythms" (2005), where the phase is a
// rotation.
func Place(i, k, n int, p Phase) int { return (2*i + int(p)) * n / (2 * k) }

// Share is how many of n units go to part i of k, the running totals rounded to
// the nearest integer, half-way up:
//
//	share(i) = round((i+1) * n / k) - round(i * n / k)
//
// The shares sum to n and differ by at most one.
func Share(i, k, n int) int { return total(i+1, k, n) - total(i, k, n) }

// total is round(i*n/k), half-way up.
func total(i, k, n int) int { return (2*i*n + k) / (2 * k) }

// A GapRun is a number of equal gaps in succession.
type GapRun struct {
	Stitches int
	Times    int
}

// AppendGap adds times gaps of n to a list of runs, joining equal neighbours.
func AppendGap(runs []GapRun, n, times int) []GapRun {
	switch last := len(runs) - 1; {
	case times == 0:
		return runs
	case last >= 0 && runs[last].Stitches == n:
		runs[last].Times += times
		return runs
	}
	return append(runs, GapRun{n, times})
}
