package neck

import "example.com/knitmath/knitmath/report"

// A saddle's strap goes on from the cap of a sleeve, along the shoulders of back and front to
// the neck (see package armhole). Its stitches are held there for the band. The shoulders
// are sewn to its edges, straight as they are, and half of its width lies before the line
// on which other shoulders are joined, half behind.

// strap is the stitches of one strap, 0 if there is none.
func (in Input) strap() int {
	if in.StrapStitches == nil {
		return 0
	}
	return *in.StrapStitches
}

// strapCm is how wide a strap is.
func (p setting) strapCm() float64 { return p.st.SizeCm(p.in.strap()) }

// strapSection is the end of a strap at the neck.
func (p setting) strapSection(place SectionPlace) Section {
	n := p.in.strap()
	return Section{Place: place, Stitches: n, WantedStitches: float64(n), LiveStitches: n, LengthCm: p.strapCm()}
}

// strapWords say between which shoulders straps lie.
func (o Neckline) strapWords() string {
	return "Sew a strap between the shoulders of back and front at either side, an edge of it to each; its " +
		report.CountOf(o.in.strap(), "stitches") + " stay on hold for the band."
}
