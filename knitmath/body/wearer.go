package body

// A Wearer is who a body of so many centimetres round the garment's chest is knit for.
type Wearer struct{ BodyCm, HeadCm, HandCm float64 }

// wearers, from the smallest: a body 5 cm wider than the chest, the median head of that age
// (boys, whose heads are the larger; UK-WHO growth charts, as in ListBodySizes), and the
// girth of the hand, for which children have no better source than a shop's list. What lies
// between is between; who is larger has the last one's, and who is smaller is a toy. The
// first two are a child born early and one just born: the head of the trade's chart and the
// median at 2 weeks. Hands of the first two are from memory, in proportion to the head.
var wearers = []Wearer{{30, 30.5, 7.5}, {38, 35.9, 9}, {45, 40.5, 10.5}, {55, 48.3, 13}, {68, 52.7, 15}, {80, 56.9, 17.5}}

// WearerOf is who a body is knit for; ok is false for a toy.
func WearerOf(bodyCm float64) (w Wearer, ok bool) {
	if bodyCm < wearers[0].BodyCm {
		return Wearer{}, false
	}
	for i, above := range wearers[1:] {
		if below := wearers[i]; bodyCm < above.BodyCm {
			part := (bodyCm - below.BodyCm) / (above.BodyCm - below.BodyCm)
			return Wearer{bodyCm, below.HeadCm + part*(above.HeadCm-below.HeadCm), below.HandCm + part*(above.HandCm-below.HandCm)}, true
		}
	}
	return wearers[len(wearers)-1], true
}
