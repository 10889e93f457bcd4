package solid

import (
	"slices"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// limbWords say how the stitches of the limbs are picked up.
func (o Solid) limbWords() []string {
	if len(o.Limbs) == 0 {
		return nil
	}
	from := "cast-on"
	if o.of.in.PickedUp {
		from = "pick-up"
	}
	d := []string{"For the limbs rounds are counted from the " + from + ", and stitches from the beginning of the round, along a thread " +
		"that marks it. Each ring begins where it is lowest and goes round clockwise as one looks at it, with the first rounds below."}
	for i, l := range o.Limbs {
		d = append(d, "Limb "+strconv.Itoa(i+1)+": "+l.middleWords()+" goes in turn through "+ringWords(l.Places)+
			". With the right side facing join the yarn, pick up and knit "+report.CountOf(l.Stitches, "stitches")+
			", one through each, and join in the round.")
	}
	return d
}

// middleWords say which stitch is the middle of a ring that has one.
func (l Limb) middleWords() string {
	middle := RingPlace{l.MiddleRoundNumber, l.MiddleStitchNumber}
	if slices.Contains(l.Places, middle) {
		return "its ring, too small to have a stitch in its middle,"
	}
	return "the middle of its ring is " + ringWords([]RingPlace{middle}) + ", and it"
}

// ringWords list the places: stitches that lie beside one another in a round together, and so
// rounds with one stitch each above one another.
func ringWords(places []RingPlace) string {
	var parts []string
	for i := 0; i < len(places); {
		stitches, rounds := []int{places[i].StitchNumber}, []int{places[i].RoundNumber}
		next := i + 1
		for ; next < len(places) && places[next].RoundNumber == rounds[0]; next++ {
			stitches = append(stitches, places[next].StitchNumber)
		}
		for ; len(stitches) == 1 && next < len(places) && places[next].StitchNumber == stitches[0]; next++ {
			rounds = append(rounds, places[next].RoundNumber)
		}
		parts, i = append(parts, numbered("stitch", "stitches", stitches)+" of "+numbered("round", "rounds", rounds)), next
	}
	return strings.Join(parts, "; ")
}

// numbered is "stitch 4", "stitches 4-7", "rounds 4, 6 and 7".
func numbered(noun, nouns string, list []int) string {
	words := make([]string, len(list))
	alone := false
	for i, n := range list {
		words[i] = strconv.Itoa(n)
		alone = alone || i > 0 && n-list[i-1] != list[1]-list[0]
	}
	last := len(list) - 1
	switch {
	case last == 0:
		return noun + " " + words[0]
	case !alone && measure.Abs(list[1]-list[0]) == 1:
		return nouns + " " + words[0] + "-" + words[last]
	}
	return nouns + " " + report.Listed(words)
}
