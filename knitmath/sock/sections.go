package sock

import "math"

// The sections of a round toe, in stitches, and which part of the foot a toe is. Source of the part and of sections of 8, 10
// or 12: Th. de Dillmont, Encyclopedia of Needlework (c. 1886). Coarse wool wants fewer, for a section of s stitches takes
// s (s-1) / 2 rounds: 6 are published (Filz und Faden 2013), 4 and 5 own choice.
const (
	leastSection = 4
	mostSection  = 12
	toeParts     = 4
	// adjustingRounds is how much nearer to a quarter of the foot a toe must be that needs a round to adjust the
	// count, in rounds. Own choice.
	adjustingRounds = 2
)

// roundWedges is into how many sections a round toe divides by default: those that make a toe nearest to a quarter
// of the foot, of those alike the ones that leave the fewest stitches over, which a round of its own decreases.
func (t toe) roundWedges(in ToeInput) int {
	best, nearest := MinWedges, math.Inf(1)
	for wedges := MinWedges; wedges <= min(t.round/leastSection, MaxWedges); wedges++ {
		section, over := t.round/wedges, t.round%wedges
		if section > mostSection && wedges < MaxWedges {
			continue
		}
		off := math.Abs(float64(section*(section-1)/2) - t.footRows(in)/toeParts)
		if over > 0 {
			off += adjustingRounds
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

// mostToe is how much of the foot a toe may take without a word. Own choice.
const mostToe = 0.4

// stockinetteRows are the rows as high as stitches are wide, where no gauge tells. Common practice: 4 rows to 3 stitches.
const stockinetteRows = 4.0 / 3

// footRows is how many rows long the foot is.
func (t toe) footRows(in ToeInput) float64 {
	if t.rw.IsZero() {
		return float64(t.round) / (1 + defaultEase/100) * stockinetteRows
	}
	return t.footCm(in) * t.rw.PerCm()
}

// footSaid is the length of the foot in words.
func (t toe) footSaid(in ToeInput) string {
	if in.FootLengthCm != nil {
		return "given"
	}
	return "it is around"
}

// lengthens is the field that makes a toe long.
func (in ToeInput) lengthens() string {
	switch {
	case len(in.Rates) > 0:
		return "rates"
	case in.MoreEvenRounds != nil:
		return "more_even_rounds"
	case in.WedgeCount != nil:
		return "wedge_count"
	case in.CentreStitches != nil:
		return "centre_stitches"
	}
	return "kind"
}
