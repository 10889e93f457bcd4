package gauge

import (
	"strconv"

	"example.com/knitmath/knitmath/report"
)

// The reasons of the notices.
const (
	// Halfway: a length or a printed count falls exactly half-way between two
	// legal counts, and the larger was taken. Sent with every answer of such a
	// count. Field is the path of what was asked: width_cm, height_cm or
	// items[i].count; of a pick-up, length_rows or length_cm.
	Halfway report.Reason = "HALFWAY"
	// EquallyNear: a printed size comes out exactly as near to the wanted width as
	// the one to follow. Sent for each such size. Field is its path, sizes[i].
	EquallyNear report.Reason = "EQUALLY_NEAR"
)

// HalfwayNotice says which of two equally near counts was taken for a field.
func HalfwayNotice(field string, count int) report.Notice {
	return report.Notice{Reason: Halfway, Field: field,
		Description: "falls exactly half-way between two counts that fit the repeat; " + strconv.Itoa(count) + " was taken"}
}
