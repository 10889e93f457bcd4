package pattern

import "strconv"

func itoa(n int) string { return strconv.Itoa(n) }

// countOf is "1 stitch", "2 stitches".
func countOf(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return itoa(n) + " " + many
}

func stitches(n int) string    { return countOf(n, "stitch", "stitches") }
func numbersText(n int) string { return countOf(n, "number", "numbers") }
func sizesText(n int) string   { return countOf(n, "size", "sizes") }
