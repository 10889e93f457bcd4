package yoke

import "example.com/knitmath/knitmath/report"

// names tell the kinds of decrease round apart by what decreases in them. Where all
// parts do that ever do there is nothing to tell.
func (d decreaseRounds) names(kinds []raglanKind) []string {
	all := d.decreases(len(d.first))
	names := make([]string, len(kinds))
	for i, kind := range kinds {
		switch {
		case kind.last > 0:
			names[i] = lastWord(kind.parts)
		case kind.parts == all:
			names[i] = "decrease round"
		default:
			names[i] = partsWord(kind.parts) + " decrease round"
		}
	}
	return names
}

// lastWord names a round in which the sleeves decrease for the last time, and what decreases beside them.
func lastWord(parts decreasing) string {
	const sleeves = "last sleeve decrease round"
	if parts[sleevePart] = false; parts == (decreasing{}) {
		return sleeves
	}
	return partsWord(parts) + " and " + sleeves
}

// partsWord is whose decrease round it is. Back and front are the body.
func partsWord(parts decreasing) string {
	if parts[backPart] && parts[frontPart] {
		return "body" // the sleeves too would be all there are
	}
	var words []string
	for p, name := range [...]string{"back", "front", "sleeve"} {
		if parts[p] {
			words = append(words, name)
		}
	}
	return report.Listed(words)
}
