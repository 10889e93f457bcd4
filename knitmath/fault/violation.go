package fault

import (
	"fmt"
	"strings"
)

// Reason says, for a machine, why a field was refused. Reasons are public for
// ever: clients branch on them.
type Reason string

// The reasons a field is refused.
const (
	// ReasonRequired: the field is missing, or 0 where 0 cannot be told from
	// missing.
	ReasonRequired Reason = "REQUIRED"
	// ReasonNotFinite: NaN or an infinity.
	ReasonNotFinite Reason = "NOT_FINITE"
	// ReasonOutOfRange: a number outside the stated range.
	ReasonOutOfRange Reason = "OUT_OF_RANGE"
	// ReasonUnknownValue: an enum value this version does not know, or one that
	// does not apply here.
	ReasonUnknownValue Reason = "UNKNOWN_VALUE"
	// ReasonTooMany: more items, or a longer text, than the stated limit.
	ReasonTooMany Reason = "TOO_MANY"
	// ReasonContradictory: fields that exclude one another were given together,
	// or one was given without the one it needs.
	ReasonContradictory Reason = "CONTRADICTORY"
	// ReasonInfeasible: each value is fine, but together they have no answer.
	// The detail says what would have one.
	ReasonInfeasible Reason = "INFEASIBLE"
	// ReasonUnreadable: the words of a text are none that can be read there.
	ReasonUnreadable Reason = "UNREADABLE_TEXT"
)

// A Violation is one fault of a question.
type Violation struct {
	// Field is the path of the field, in the spelling of the proto and of JSON,
	// for example "gauge.over_cm" or "items[2].count".
	Field string
	// Reason is machine-readable.
	Reason Reason
	// Detail says in words what is wrong and what would be right.
	Detail string
}

// An InputError lists the faults found in a question, in field order.
type InputError struct {
	// Violations are all faults, or the first MaxViolations of more.
	Violations []Violation
	// Unlisted is how many more were found.
	Unlisted int
	// Sought is the price of the questions that were asked to find what would do.
	Sought int
}

// Error joins the faults into one line.
func (e *InputError) Error() string {
	parts := make([]string, len(e.Violations))
	for i, v := range e.Violations {
		parts[i] = v.Field + ": " + v.Detail
	}
	if e.Unlisted > 0 {
		parts = append(parts, fmt.Sprintf("and %d faults more", e.Unlisted))
	}
	return strings.Join(parts, "; ")
}
