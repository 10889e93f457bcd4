package knitmath

import (
	"fmt"
	"math"
	"strconv"
	"unicode/utf8"
)

// checks gathers violations in field order. Its methods report whether the
// value can be used, so that later checks may depend on earlier ones. Nothing
// is allocated while all is well.
type checks struct {
	violations []Violation
}

// err is nil when nothing was wrong. At most MaxViolations faults are listed,
// the first ones.
func (c *checks) err() error {
	if len(c.violations) == 0 {
		return nil
	}
	return &InputError{Violations: c.violations[:min(len(c.violations), MaxViolations)]}
}

func (c *checks) add(field string, reason Reason, format string, args ...any) {
	c.violations = append(c.violations, Violation{field, reason, fmt.Sprintf(format, args...)})
}

// infeasible adds one violation for each of the fields involved.
func (c *checks) infeasible(detail string, fields ...string) {
	for _, f := range fields {
		c.violations = append(c.violations, Violation{f, ReasonInfeasible, detail})
	}
}

// join makes the path of a field inside prefix.
func join(prefix, field string) string {
	if prefix == "" {
		return field
	}
	return prefix + "." + field
}

// index makes the path of an element of a repeated field.
func index(field string, i int) string {
	return field + "[" + strconv.Itoa(i) + "]"
}

// number checks a float in [lo, hi].
func (c *checks) number(prefix, field string, v, lo, hi float64) bool {
	switch {
	case math.IsNaN(v) || math.IsInf(v, 0):
		c.add(join(prefix, field), ReasonNotFinite, "must be a finite number from %v to %v", lo, hi)
	case v < lo || v > hi:
		c.add(join(prefix, field), ReasonOutOfRange, "is %v; must be from %v to %v", v, lo, hi)
	default:
		return true
	}
	return false
}

// requiredNumber checks a float that has no presence on the wire: 0 means that
// it is missing.
func (c *checks) requiredNumber(prefix, field string, v, lo, hi float64) bool {
	if v == 0 {
		c.add(join(prefix, field), ReasonRequired, "is missing or 0; must be from %v to %v", lo, hi)
		return false
	}
	return c.number(prefix, field, v, lo, hi)
}

// optionalNumber checks a float that may be absent.
func (c *checks) optionalNumber(prefix, field string, v *float64, lo, hi float64) bool {
	return v == nil || c.number(prefix, field, *v, lo, hi)
}

// count checks an integer in [lo, hi].
func (c *checks) count(prefix, field string, v, lo, hi int) bool {
	if v < lo || v > hi {
		c.add(join(prefix, field), ReasonOutOfRange, "is %d; must be from %d to %d", v, lo, hi)
		return false
	}
	return true
}

// requiredCount checks an integer that has no presence on the wire.
func (c *checks) requiredCount(prefix, field string, v, lo, hi int) bool {
	if v == 0 {
		c.add(join(prefix, field), ReasonRequired, "is missing or 0; must be from %d to %d", lo, hi)
		return false
	}
	return c.count(prefix, field, v, lo, hi)
}

// optionalCount checks an integer that may be absent.
func (c *checks) optionalCount(prefix, field string, v *int, lo, hi int) bool {
	return v == nil || c.count(prefix, field, *v, lo, hi)
}

// enum checks a value of an enumeration whose known values run from 0 to last.
func enum[E ~int32](c *checks, prefix, field string, v, last E) bool {
	if v < 0 || v > last {
		c.add(join(prefix, field), ReasonUnknownValue, "is %d; the known values are 0 to %d", v, last)
		return false
	}
	return true
}

// requiredEnum is enum for a field that has no default.
func requiredEnum[E ~int32](c *checks, prefix, field string, v, last E) bool {
	if v == 0 {
		c.add(join(prefix, field), ReasonRequired, "is missing; there is no default")
		return false
	}
	return enum(c, prefix, field, v, last)
}

// text checks the length of a caller's own words.
func (c *checks) text(prefix, field, s string) bool {
	if n := utf8.RuneCountInString(s); n > MaxNameLength {
		c.add(join(prefix, field), ReasonTooMany, "has %d characters; at most %d are allowed", n, MaxNameLength)
		return false
	}
	return true
}

// items checks how many elements a repeated field has.
func (c *checks) items(prefix, field string, n, limit int) bool {
	if n > limit {
		c.add(join(prefix, field), ReasonTooMany, "has %d items; at most %d are allowed", n, limit)
		return false
	}
	return true
}

// or is the value of an optional field, or its default.
func or[T any](v *T, fallback T) T {
	if v == nil {
		return fallback
	}
	return *v
}
