package body

// A Wearer is who a body of so many centimetres round the garment's chest is knit for.
type Wearer struct{ BodyCm, HeadCm, HandCm float64 }

// wearers, from the smallest: a body 5 cm wider than the chest, the head of
// the second centile of that age, since none smaller is to be counted on (UK-WHO and UK90
// growth charts, girls), and the girth of the hand, for which children have no better
// source than a shop's list. What lies between is between; who is larger
// has the last one's, and who is smaller is a toy. The first two are a child born early
// and one just born: the second centile at 32 weeks and at 40 (UK90, girls), and the girth of
// the hand in proportion to the head; all of these are from memory.
var wearers = []Wearer{{30, 26, 7.5}, {38, 31.5, 9}, {45, 37, 10.5}, {55, 44.5, 13}, {68, 49.5, 15}, {80, 52.5, 17.5}}

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
