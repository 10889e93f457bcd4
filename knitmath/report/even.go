package report

import "strconv"

// Rows is "Rows 3-7" or "Row 3", of what the noun names one of: "row" or "round". The
// numbers count from 1, and the last is not below the first.
func Rows(noun string, first, last int) string {
	noun = Sentence(noun)
	if first == last {
		return noun + " " + strconv.Itoa(first)
	}
	return noun + "s " + strconv.Itoa(first) + "-" + strconv.Itoa(last)
}

// AppendEven adds "Rows 3-7: work even." to directions, or nothing where the last lies
// before the first.
func AppendEven(directions []string, noun string, first, last int) []string {
	if first > last {
		return directions
	}
	return append(directions, Rows(noun, first, last)+": work even.")
}
