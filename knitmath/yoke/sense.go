package yoke

import (
	"strconv"

	"example.com/knitmath/knitmath/body"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// Bounds of a yoke's depth, in parts of the body's flat width, beyond which it is
// remarked on. An armhole is 0.34 to 0.50 of half the chest deep (Craft Yarn Council,
// babies to women 5X, from memory, in part read in a reprint). A body is knit with some
// centimetres of ease, and a yoke goes on above the armhole for some: 0.38 to 0.53 over
// a thousand ordinary questions. The bounds leave room on both sides. Own choice.
const (
	shallowest = 0.30
	deepest    = 0.65
)

// deepestLevel is the same bound for a yoke of which the front is as high as the back: the front
// of one that goes on further above the armholes than the percentage system's, of 0.50, comes up
// at the throat. Own choice.
const deepestLevel = 0.57

// Stretch of edges. The neck's is the most of what a ribbed edge commonly gives, 1.3 to
// 1.6 times (from memory); a sleeve in stockinette gives less. Common practice.
const (
	neckStretch   = 1.6
	sleeveStretch = 1.3
)

// widestNeckCm is the widest neck where nobody says: through it the largest heads
// go as it lies, and a wider one slides off the shoulders, since necks grow less than bodies.
// The 98th centile of boys of 17 (UK-WHO growth charts, as in ListBodySizes).
const widestNeckCm = 60.3

// worn is what of a yoke has to go round somebody.
type worn struct {
	st, rw             gauge.Density
	body, sleeve, neck int // stitches
	depthCm            float64
	depthField         string
	raised             bool // the back, by short rows
	unit               measure.DisplayUnit
}

// notices are the remarks on a yoke that counts right and that bodies are not like.
func (w worn) notices() []report.Notice {
	list := w.depthNotices()
	who, ok := body.WearerOf(w.st.SizeCm(w.body))
	if !ok {
		return list
	}
	// The least head that is to be counted on, not the median: a notice on every second
	// ordinary yoke would be read by nobody.
	neckCm, sleeveCm := w.st.SizeCm(w.neck), w.st.SizeCm(w.sleeve)
	if neckCm*neckStretch < who.LeastHeadCm {
		list = append(list, report.Notice{Reason: NeckBelowHead, Description: w.tight("the neck", neckCm, neckStretch, "head", who.LeastHeadCm) +
			", an opening, or a bind-off that gives more"})
	}
	if largest := who.LargestHeadCm(); neckCm > largest {
		list = append(list, report.Notice{Reason: NeckSlidesOff, Description: "the neck of " + w.unit.Size(neckCm) +
			" is wider as it lies than the largest heads, " + w.unit.Size(largest) +
			", of those who wear such a body; it slides off the shoulders unless a band draws it in"})
	}
	if sleeveCm*sleeveStretch < who.HandCm {
		list = append(list, report.Notice{Reason: SleeveBelowHand,
			Description: w.tight("the sleeve", sleeveCm, sleeveStretch, "hand", who.HandCm)})
	}
	return list
}

// depthNotices are those on the depth.
func (w worn) depthNotices() []report.Notice {
	flat := w.st.SizeCm(w.body) / 2
	part := w.depthCm / flat
	deep := "the yoke is " + w.unit.Size(w.depthCm) + " deep, "
	unlike := func(than string, bound float64) []report.Notice {
		return []report.Notice{{Reason: DepthUnlikeBodies, Field: w.depthField, Description: deep + "which is " + than +
			" than bodies are: of a body of " + w.unit.Size(flat) + " across, " + w.unit.Size(bound*flat)}}
	}
	switch {
	case part < shallowest:
		return unlike("shallower", shallowest)
	case part > deepest:
		return unlike("deeper", deepest)
	case part > deepestLevel && !w.raised:
		return []report.Notice{{Reason: FrontAsHighAsBack, Field: w.depthField, Description: deep +
			"and its front as high as its back, so that it comes up at the throat; make it at most " + w.levelDepth(flat) +
			" deep, and raise the back by short rows if that is to be higher"}}
	}
	return nil
}

// levelDepth is the deepest yoke, in whole rounds, that does not come up at the throat with its front as high as its back:
// asked for in the length that is printed, it has no more rounds.
func (w worn) levelDepth(flatCm float64) string {
	most := w.rw.Nearest(measure.Micrometres(deepestLevel * flatCm))
	for most > 0 && w.rw.SizeCm(most) > deepestLevel*flatCm {
		most--
	}
	n := most
	for n > 0 && w.rw.Nearest(measure.Micrometres(w.unit.Printed(w.rw.SizeCm(n)))) > most {
		n--
	}
	return w.unit.Size(w.rw.SizeCm(n)) + " (" + report.CountOf(n, "rounds") + ")"
}

// tight says how far an edge would have to stretch, and what it needs.
func (w worn) tight(edge string, cm, stretch float64, what string, whatCm float64) string {
	times := strconv.FormatFloat(stretch, 'f', -1, 64)
	return edge + " of " + w.unit.Size(cm) + ", stretched to " + times + " times that, does not go over a " +
		what + " of " + w.unit.Size(whatCm) + ", as wearers of this body have; it needs " +
		report.CountOf(goesOver(w.st, whatCm, stretch), "stitches")
}

// goesOver is the fewest stitches of an edge that stretches over something.
func goesOver(st gauge.Density, cm, stretch float64) int {
	n := st.Nearest(measure.Micrometres(cm / stretch))
	if st.SizeCm(n)*stretch < cm {
		n++
	}
	return n
}

// neckRange is the fewest stitches of a neck that goes over the head of who wears such a body,
// and the most of one that does not slide off; of a toy, any.
func neckRange(st gauge.Density, bodyStitches int) (least, most int) {
	who, ok := body.WearerOf(st.SizeCm(bodyStitches))
	if !ok {
		return 0, stitch.MaxStitches
	}
	largest := who.LargestHeadCm()
	most = st.Nearest(measure.Micrometres(largest))
	if st.SizeCm(most) > largest {
		most--
	}
	return goesOver(st, who.LeastHeadCm, neckStretch), most
}
