package sock

import "math"

// The sections of a round toe, in stitches. Source of the usual 8 and of the most, and of which part of the foot a
// toe is: Th. de Dillmont, Encyclopedia of Needlework (c. 1886), who divides by 8, 10 or 12. Coarse wool wants fewer,
// for a section of s stitches takes s (s-1) / 2 rounds: 6 are published (Filz und Faden 2013), 4 and 5 own choice.
const (
	leastSection = 4
	usualSection = 8
	mostSection  = 12
	toeParts     = 4
	// adjustingRounds is how much nearer to a quarter of the foot a toe must be that needs a round to adjust the
	// count, in rounds. Own choice.
	adjustingRounds = 2
)

// roundWedges is into how many sections a round toe divides by default: those that make a toe nearest to a quarter
// of the foot, without gauge those nearest to 8 stitches; of those alike the ones that leave the fewest stitches over,
// which a round of its own decreases.
func (t toe) roundWedges(in ToeInput) int {
	best, nearest := MinWedges, math.Inf(1)
	for wedges := MinWedges; wedges <= min(t.round/leastSection, MaxWedges); wedges++ {
		section, over := t.round/wedges, t.round%wedges
		if section > mostSection && wedges < MaxWedges {
			continue
		}
		off := math.Abs(float64(section - usualSection))
		if !t.rw.IsZero() {
			off = math.Abs(t.rw.SizeCm(section*(section-1)/2) - t.footCm(in)/toeParts)
			if over > 0 {
				off += t.rw.SizeCm(adjustingRounds)
			}
		}
		// How much is over decides only between sections of one size.
		if off += float64(over) / MaxRound / MaxRound; off < nearest {
			best, nearest = wedges, off
		}
	}
	return best
}

// footCm is how long the foot is; where that is not given, as long as it is around, which a sock is a tenth less than.
// Source: feet of women are 22.2 to 27.2 cm long and 23.0 to 26.6 around, of men 25.5 to 30.5 and 25.4 to 29.0 (Friendly Shoes
// 2021, read; which of its columns is which inferred).
func (t toe) footCm(in ToeInput) float64 {
	switch {
	case in.FootLengthCm != nil:
		return *in.FootLengthCm
	case in.FootCircumferenceCm != nil:
		return *in.FootCircumferenceCm
	}
	return t.st.SizeCm(t.round) / (1 + defaultEase/100)
}
