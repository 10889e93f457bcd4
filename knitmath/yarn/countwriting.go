package yarn

import (
	"math"
	"strconv"

	"example.com/knitmath/knitmath/measure"
)

// significant writes a number to four figures, halves up, and all those before the
// point: two decimal places of a thick count would be none of a fine one.
func significant(x float64) string {
	if x == 0 {
		return "0"
	}
	places, size := 3, math.Abs(x)
	for ; size >= 10; size /= 10 {
		places--
	}
	for ; size < 1; size *= 10 {
		places++
	}
	return measure.Decimal(x, max(places, 0))
}

// In writes a yarn as the trade of a system does, to four figures, so that it is read
// back as the same.
func (t Thickness) In(s CountSystem) string {
	return t.notation(s, t.Tex.number(s), t.Single.number(s))
}

// notation writes the numbers of the yarn and of a single in a system.
func (t Thickness) notation(s CountSystem, whole, single float64) string {
	row := &countSystems[s]
	plies := strconv.Itoa(t.Plies)
	if t.Plies == 1 || row.style == plyNone {
		return spelled(s, significant(whole)) + t.read.twistWords(s)
	}
	number := significant(single)
	if row.style == plyWhole {
		number = significant(whole)
	}
	if n, err := strconv.Atoi(number); err == nil && row.style != plyTimes && n <= MaxPlies && n < t.Plies {
		return plies + "-ply " + spelled(s, number) // "2/4" would be two plies of 4
	}
	switch {
	case s == CountSystemTex:
		return "R " + significant(whole) + " tex/" + plies + t.read.twistWords(s)
	case row.style == plyTimes:
		return spelled(s, number) + " x " + plies
	case row.style == plyFirst:
		return spelled(s, plies+"/"+number)
	}
	return spelled(s, number+"/"+plies)
}

// spelled puts the system beside a number.
func spelled(s CountSystem, number string) string {
	switch s {
	case CountSystemMetric, CountSystemCotton:
		return countSystems[s].unit + " " + number
	case CountSystemWorsted:
		return number + "s worsted"
	}
	return number + " " + countSystems[s].unit
}
