package yoke

import (
	"slices"
	"strconv"
	"strings"
)

// Markers stand at the edges of back and front, so that a sleeve and the line on either side of
// it lie between two of them: there are four places, of which the beginning of the round is one,
// and none of them is in the way where the lines meet.

// marked writes a kind of decrease round from marker to marker, in words that hold for all its rounds.
func (r raglan) marked(kind raglanKind) string {
	var list []string
	for _, p := range inTheRound {
		list = append(list, strings.Join(r.section(p, kind, ""), ", "))
	}
	if list[0] == list[2] && list[1] == list[3] {
		if list[0] == list[1] {
			return "[" + list[0] + ", sm] 4 times"
		}
		return "[" + list[0] + ", sm, " + list[1] + ", sm] twice"
	}
	for len(list) > 1 && list[len(list)-1] == toMarker {
		if list = list[:len(list)-1]; list[len(list)-1] != toMarker {
			list[len(list)-1] += ", k to end"
		}
	}
	text := strings.Join(list, ", sm, ")
	if two := toMarker + ", sm, "; strings.HasPrefix(text, two+two) {
		text = "[" + toMarker + ", sm] twice, " + strings.TrimPrefix(text, two+two)
	}
	return text
}

// inTheRound is the parts as they are worked from the beginning of the round on.
var inTheRound = [...]int{backPart, sleevePart, frontPart, sleevePart}

const toMarker = "k to m"

// marking writes the round that joins, in which the markers are placed: on so many stitches, by kind.
func (r raglan) marking(now counts, kind raglanKind) string {
	var list []string
	for _, p := range inTheRound {
		between, knit := now[p], now[p]
		if p == sleevePart {
			knit += 2 * r.line
		}
		if kind.parts[p] {
			between -= 4
			list = append(list, r.section(p, kind, "k"+strconv.Itoa(between))...)
		} else {
			list = append(list, "k"+strconv.Itoa(knit))
		}
		list = append(list, "pm")
	}
	list = slices.DeleteFunc(list, func(step string) bool { return step == "k0" })
	return strings.Join(list[:len(list)-1], ", ") // the last marker is that of the beginning of the round
}

// section is what is worked up to the next marker. Between its two decreases is what is said, or as much
// as there is. A decrease after a line is ssk and before one k2tog, see row.
func (r raglan) section(part int, kind raglanKind, between string) []string {
	edge := 0
	if part == sleevePart {
		edge = r.line
	}
	if between == "" {
		between = "k to " + strconv.Itoa(edge+2) + " sts before m"
	}
	var steps []string
	switch {
	case !kind.parts[part]:
		return []string{toMarker}
	case part == sleevePart && kind.last == 2: // each decrease takes a stitch of the line
		edge--
		steps = []string{"ssk", "k2tog"}
	case part == sleevePart && kind.last == 3:
		steps = []string{"CDD"}
	default:
		steps = []string{"ssk", between, "k2tog"}
	}
	if edge > 0 {
		line := "k" + strconv.Itoa(edge)
		return append(append([]string{line}, steps...), line)
	}
	return steps
}
