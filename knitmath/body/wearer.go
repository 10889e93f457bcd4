package body

// A Wearer is who a body of so many centimetres round the garment's chest is knit for: the
// median head, and the least that is to be counted on.
type Wearer struct{ BodyCm, HeadCm, LeastHeadCm, HandCm float64 }

// wearers, from the smallest: a body 5 cm wider than the chest, the median head of that age
// (boys, whose heads are the larger; UK-WHO growth charts, as in ListBodySizes), that of the
// second centile of girls (UK-WHO and UK90), and the girth of the hand, for which children
// have no better source than a shop's list. What lies between is between; who is larger has
// the last one's, and who is smaller is a toy. The first two are a child born early and one
// just born: the head of the trade's chart and the median at 2 weeks, the second centile at
// 32 and at 40 weeks. Their least heads and their hands, in proportion to the head, are from
// memory.
var wearers = []Wearer{{30, 30.5, 26, 7.5}, {38, 35.9, 31.5, 9}, {45, 40.5, 37, 10.5}, {55, 48.3, 44.5, 13}, {68, 52.7, 49.5, 15},
	{80, 56.9, 52.5, 17.5}}

// WearerOf is who a body is knit for; ok is false for a toy.
func WearerOf(bodyCm float64) (w Wearer, ok bool) {
	if bodyCm < wearers[0].BodyCm {
		return Wearer{}, false
	}
	for i, above := range wearers[1:] {
		if below := wearers[i]; bodyCm < above.BodyCm {
			part := (bodyCm - below.BodyCm) / (above.BodyCm - below.BodyCm)
			between := func(low, high float64) float64 { return low + part*(high-low) }
			return Wearer{bodyCm, between(below.HeadCm, above.HeadCm), between(below.LeastHeadCm, above.LeastHeadCm),
				between(below.HandCm, above.HandCm)}, true
		}
	}
	return wearers[len(wearers)-1], true
}

// LargestHeadCm is as far above the median as the least head lies below it. Own derivation.
func (w Wearer) LargestHeadCm() float64 { return 2*w.HeadCm - w.LeastHeadCm }
