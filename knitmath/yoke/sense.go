package yoke

import (
	"strconv"

	"example.com/knitmath/knitmath/body"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
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
	bodyCm, sleeveCm, neckCm, depthCm float64
	depthField                        string
	unit                              measure.DisplayUnit
}

// notices are the remarks on a yoke that counts right and that bodies are not like.
func (w worn) notices() []report.Notice {
	var list []report.Notice
	flat := w.bodyCm / 2
	if part := w.depthCm / flat; part < shallowest || part > deepest {
		than, bound := "shallower", shallowest
		if part > deepest {
			than, bound = "deeper", deepest
		}
		list = append(list, report.Notice{Reason: DepthUnlikeBodies, Field: w.depthField,
			Description: "the yoke is " + w.unit.Size(w.depthCm) + " deep, which is " + than + " than bodies are: of a body of " +
				w.unit.Size(flat) + " across, " + w.unit.Size(bound*flat)})
	}
	who, ok := body.WearerOf(w.bodyCm)
	if !ok {
		return list
	}
	// The least head that is to be counted on, not the median: a notice on every second
	// ordinary yoke would be read by nobody.
	if w.neckCm*neckStretch < who.LeastHeadCm {
		list = append(list, tightNotice(NeckBelowHead, "the neck of "+w.unit.Size(w.neckCm), neckStretch,
			"a head of "+w.unit.Size(who.LeastHeadCm), "it needs more stitches, an opening, or a bind-off that gives more"))
	}
	// As far above the median as the least head lies below it. Own derivation.
	if largest := 2*who.HeadCm - who.LeastHeadCm; w.neckCm > largest {
		list = append(list, report.Notice{Reason: NeckSlidesOff, Description: "the neck of " + w.unit.Size(w.neckCm) +
			" is wider as it lies than the largest heads, " + w.unit.Size(largest) +
			", of those who wear such a body; it slides off the shoulders unless a band draws it in"})
	}
	if w.sleeveCm*sleeveStretch < who.HandCm {
		list = append(list, tightNotice(SleeveBelowHand, "the sleeve of "+w.unit.Size(w.sleeveCm), sleeveStretch,
			"a hand of "+w.unit.Size(who.HandCm), "it needs more stitches"))
	}
	return list
}

func tightNotice(reason report.Reason, edge string, stretch float64, what, remedy string) report.Notice {
	return report.Notice{Reason: reason, Description: edge + ", stretched to " + strconv.FormatFloat(stretch, 'f', -1, 64) +
		" times that, does not go over " + what + ", as wearers of this body have; " + remedy}
}
