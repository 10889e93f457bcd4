package fault

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Checks gathers violations in the order in which they are found. Nothing is
// allocated while all is well.
type Checks struct {
	Violations []Violation
}

// Err is nil when nothing was wrong. At most MaxViolations faults are listed,
// the first ones; how many more there are is said.
func (c *Checks) Err() error {
	if len(c.Violations) == 0 {
		return nil
	}
	listed := min(len(c.Violations), MaxViolations)
	return &InputError{Violations: c.Violations[:listed], Unlisted: len(c.Violations) - listed}
}

// Add adds a violation of one field.
//
//go:noinline
func (c *Checks) Add(field string, reason Reason, format string, args ...any) {
	c.Violations = append(c.Violations, Violation{field, reason, fmt.Sprintf(format, args...)})
}

// Infeasible adds one violation for each of the fields involved.
//
//go:noinline
func (c *Checks) Infeasible(detail string, fields ...string) {
	for _, f := range fields {
		c.Violations = append(c.Violations, Violation{f, ReasonInfeasible, detail})
	}
}

// Passes reports whether a check finds nothing, whatever was found before it.
func (c *Checks) Passes(check func()) bool {
	before := len(c.Violations)
	check()
	return len(c.Violations) == before
}

// Join makes the path of a field inside prefix.
func Join(prefix, field string) string {
	if prefix == "" {
		return field
	}
	return prefix + "." + field
}

// Index makes the path of an element of a repeated field.
//
//go:noinline
func Index(field string, i int) string {
	return field + "[" + strconv.Itoa(i) + "]"
}

// Number checks a float in [lo, hi].
func (c *Checks) Number(prefix, field string, v, lo, hi float64) {
	switch {
	case math.IsNaN(v) || math.IsInf(v, 0):
		c.Add(Join(prefix, field), ReasonNotFinite, "must be a finite number from %v to %v", lo, hi)
	case v < lo || v > hi:
		c.Add(Join(prefix, field), ReasonOutOfRange, "is %v; must be from %v to %v", v+0, lo, hi) // -0 is 0
	}
}

// RequiredNumber checks a float that has no presence on the wire: 0 means that
// it is missing.
func (c *Checks) RequiredNumber(prefix, field string, v, lo, hi float64) {
	if v == 0 {
		c.Add(Join(prefix, field), ReasonRequired, "is missing or 0; must be from %v to %v", lo, hi)
		return
	}
	c.Number(prefix, field, v, lo, hi)
}

// OptionalNumber checks a float that may be absent.
//
//go:noinline
func (c *Checks) OptionalNumber(prefix, field string, v *float64, lo, hi float64) {
	if v != nil {
		c.Number(prefix, field, *v, lo, hi)
	}
}

// Count checks an integer in [lo, hi].
func (c *Checks) Count(prefix, field string, v, lo, hi int) {
	if v < lo || v > hi {
		c.Add(Join(prefix, field), ReasonOutOfRange, "is %d; must be from %d to %d", v, lo, hi)
	}
}

// RequiredCount checks an integer that has no presence on the wire.
func (c *Checks) RequiredCount(prefix, field string, v, lo, hi int) {
	if v == 0 {
		c.Add(Join(prefix, field), ReasonRequired, "is missing or 0; must be from %d to %d", lo, hi)
		return
	}
	c.Count(prefix, field, v, lo, hi)
}

// OptionalCount checks an integer that may be absent.
//
//go:noinline
func (c *Checks) OptionalCount(prefix, field string, v *int, lo, hi int) {
	if v != nil {
		c.Count(prefix, field, *v, lo, hi)
	}
}

// Enum checks a value of an enumeration whose known values run from 0 to last.
func Enum[E ~int32](c *Checks, prefix, field string, v, last E) {
	if v < 0 || v > last {
		c.Add(Join(prefix, field), ReasonUnknownValue, "is %d; the known values are 0 to %d", v, last)
	}
}

// RequiredEnum is Enum for a field that has no default.
func RequiredEnum[E ~int32](c *Checks, prefix, field string, v, last E) {
	if v == 0 {
		c.Add(Join(prefix, field), ReasonRequired, "is missing; there is no default")
		return
	}
	Enum(c, prefix, field, v, last)
}

// Text checks a caller's own words, which are repeated in sentences: their length, and that they are
// one line that can be seen.
func (c *Checks) Text(prefix, field, s string) {
	if n := utf8.RuneCountInString(s); n > MaxNameLength {
		c.Add(Join(prefix, field), ReasonTooMany, "has %d characters; at most %d are allowed", n, MaxNameLength)
		return
	}
	if i := strings.IndexFunc(s, unseen); i >= 0 {
		r, _ := utf8.DecodeRuneInString(s[i:])
		c.Add(Join(prefix, field), ReasonUnreadable, "has the character U+%04X, which cannot be seen; a name is one line", r)
	} else if s != "" && strings.TrimSpace(s) == "" {
		c.Add(Join(prefix, field), ReasonUnreadable, "is blank; leave it out")
	}
}

// unseen reports whether a character is no letter, mark, figure, sign or blank; the joiners that some
// scripts write their letters with are.
func unseen(r rune) bool {
	return !unicode.IsGraphic(r) && r != zeroWidthNonJoiner && r != zeroWidthJoiner
}

const (
	zeroWidthNonJoiner = '\u200c'
	zeroWidthJoiner    = '\u200d'
)

// Items checks how many elements a repeated field has.
func (c *Checks) Items(prefix, field string, n, limit int) {
	if n > limit {
		c.Add(Join(prefix, field), ReasonTooMany, "has %d items; at most %d are allowed", n, limit)
	}
}

// Or is the value of an optional field, or its default.
func Or[T any](v *T, fallback T) T {
	if v == nil {
		return fallback
	}
	return *v
}

// Sound reports whether nothing was found wrong at the fields or inside them.
func (c *Checks) Sound(fields ...string) bool {
	// What was found last is asked after most.
	for _, v := range slices.Backward(c.Violations) {
		for _, field := range fields {
			rest, ok := strings.CutPrefix(v.Field, field)
			if ok && (rest == "" || rest[0] == '.' || rest[0] == '[') {
				return false
			}
		}
	}
	return true
}

// OneOf checks that exactly one of two fields is given.
func (c *Checks) OneOf(first, second bool, firstField, secondField string) {
	if !first && !second {
		c.Add(firstField, ReasonRequired, "is missing, and so is %s; give one of them", secondField)
		c.Add(secondField, ReasonRequired, "is missing, and so is %s; give one of them", firstField)
	}
	c.AtMostOne(first, second, firstField, secondField)
}

// AtMostOne checks that two fields are not both given.
func (c *Checks) AtMostOne(first, second bool, firstField, secondField string) {
	if first && second {
		c.Add(firstField, ReasonContradictory, "excludes %s; give one of them", secondField)
		c.Add(secondField, ReasonContradictory, "excludes %s; give one of them", firstField)
	}
}

// Needs checks that a field which is given has the other that it means nothing
// without.
func (c *Checks) Needs(given bool, field string, other bool, otherField string) {
	if given && !other {
		c.Add(field, ReasonContradictory, "needs %s", otherField)
	}
}
