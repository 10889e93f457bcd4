package yarn

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/report"
)

// The reasons of the notices on counts.
const (
	// OtherReading: the notation is read the other way round by some. Field is the
	// notation.
	OtherReading report.Reason = "OTHER_READING"
	// FinishedCount: the number of plied spun silk is the finished yarn's. Field is the
	// count's system.
	FinishedCount report.Reason = "FINISHED_COUNT"
	// NotAWeight: worsted count has nothing to do with the weight called worsted. Field is
	// the count's system.
	NotAWeight report.Reason = "NOT_A_WEIGHT"
	// OtherCuts: the count is in cuts, of which there are three. Field is the count's
	// system.
	OtherCuts report.Reason = "OTHER_CUTS"
	// Filaments: the number behind the stroke was taken for filaments, not plies. Field is
	// the notation.
	Filaments report.Reason = "FILAMENTS"
	// NoContraction: the plies are counted without what their twist takes up. Field is the
	// count's contraction_percent.
	NoContraction report.Reason = "NO_CONTRACTION"
	// Asbestos: an old yarn of this count may be asbestos. Field is the count's system.
	Asbestos report.Reason = "ASBESTOS"
)

// remarks are what to know of a count that was read at a field.
func (t Thickness) remarks(field string) []report.Notice {
	var found []report.Notice
	add := func(reason report.Reason, at, text string) {
		found = append(found, report.Notice{Reason: reason, Field: fault.Join(field, at), Description: text})
	}
	w := t.read
	if w.other != nil {
		add(OtherReading, "notation", w.otherWords())
	}
	if w.filaments {
		add(Filaments, "notation", "a number behind the stroke is of the filaments in this system, so the yarn is taken as one; "+
			"write x and the number of plies if it is plied")
	}
	if t.System == CountSystemSpunSilk && t.Plies > 1 {
		add(FinishedCount, "system", "of plied spun silk the number is the finished yarn's; cotton and worsted write that of one ply")
	}
	if t.Plies > 1 && !w.ofWhole() && !t.Contracted {
		add(NoContraction, "contraction_percent", "is not given; the twist of the ply makes the yarn a few percent shorter, "+
			"and so thicker, than is counted here")
	}
	if t.System == CountSystemWorsted {
		add(NotAWeight, "system", "worsted count says how fine a yarn is; the medium weight that is called worsted is another thing")
	}
	if slices.Contains(cuts, t.System) {
		add(OtherCuts, "system", "a cut is 300 yards to the pound in the US (Philadelphia), 200 in Galashiels and 100 of glass or asbestos "+
			"yarn; this one is the "+countSystems[t.System].name)
	}
	if t.System == CountSystemGlassCut {
		add(Asbestos, "system", "old yarn that was counted so may be asbestos, and glass fibre hurts skin and lungs: do not wind, cut or burn "+
			"what is not known, and follow your local rules for having it looked at")
	}
	return found
}

// otherWords say what was taken, and what some would mean.
func (w written) otherWords() string {
	other := w.other
	tex := significant(other.thickness(contraction(nil)).Tex.Float())
	if other.ranged {
		return "is taken for " + significant(nearest(w.number)) + " denier in so many filaments; reeled silk is sold by such a range, of which " +
			"the middle counts, " + significant(nearest(other.number)) + " denier, " + tex + " tex: write that where it is silk"
	}
	if other.plies == w.plies {
		return "is taken for the tex of a single; some leave out the R of a yarn that has " + tex + " tex in all: ask whoever wrote it, " +
			"or weigh a length"
	}
	return "is taken for " + strconv.Itoa(w.plies) + " plies and a count of " + significant(nearest(w.number)) + "; some would mean " +
		strconv.Itoa(other.plies) + " plies and a count of " + significant(nearest(other.number)) + ", which is " + tex +
		" tex in all: ask whoever wrote it, or count the plies"
}

// cuts are the systems whose unit is called a cut.
var cuts = []CountSystem{CountSystemWoollenCut, CountSystemGalashielsCut, CountSystemGlassCut}
