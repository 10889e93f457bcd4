package knittest

import (
	"errors"
	"reflect"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
)

// What a refusal offers: "; 6 would do", "; 4.5 cm or 6 cm would do", "; a remainder of 3 would do", and what does only with
// what it offers for others.
var offer = regexp.MustCompile(`; (?:a remainder of )?([0-9.]+)(?: (cm|in|degrees))?(?: or ([0-9.]+)(?: (?:cm|in|degrees))?)? would do` +
	`( together with the others)?$`)

// twice is one number that a refusal has said already: "can only have 2; 2 would do".
var twice = regexp.MustCompile(` (?:only have|take) ([0-9.]+); ([0-9.]+) would do$`)

// mends is what a refusal says would mend one of its faults.
var mends = regexp.MustCompile(`; (?:a remainder of )?([0-9.]+)(?: (cm|in|degrees))?(?: or ([0-9.]+)(?: (?:cm|in|degrees))?)?` +
	` would mend this$`)

// faultOf is what a refusal says but for its numbers and what would do.
func faultOf(v fault.Violation) string {
	said, _, _ := strings.Cut(v.Detail, ";")
	return v.Field + strings.Map(func(r rune) rune {
		if r >= '0' && r <= '9' {
			return -1
		}
		return r
	}, said)
}

// checkMends asks a refused question again with what is said to mend one of its faults, which is gone, though the field may be
// part of another; and gives how many were asked.
func checkMends[Q any](t *testing.T, question Q, err error, ask func(Q) error) (asked int) {
	t.Helper()
	var refused *fault.InputError
	errors.As(err, &refused)
	for _, v := range refused.Violations {
		said := mends.FindStringSubmatch(v.Detail)
		if said == nil {
			continue
		}
		for _, n := range numbers(said) {
			changed := question
			turn(&changed, v.Field, n)
			var then *fault.InputError
			if asked++; errors.As(ask(changed), &then) &&
				slices.ContainsFunc(then.Violations, func(w fault.Violation) bool { return faultOf(w) == faultOf(v) }) {
				t.Errorf("%+v: %v\nbut with %v %v", question, err, n, then)
			}
		}
	}
	return asked
}

// without ends a refusal of a field that the question does without.
const without = "; leave it out, and what does is taken"

// withOthers ends what does only with what is offered for other fields.
const withOthers = " together with the others"

// An Offer is a value of a field that a refusal says would do, a length in cm; without a value the field is to be left out.
type Offer struct {
	Field    string
	Values   []float64
	Together bool // with those of all other fields, and not alone
}

// Offers are those of a refusal.
func Offers(err error) (offers []Offer) {
	var refused *fault.InputError
	if !errors.As(err, &refused) {
		return nil
	}
	for _, v := range refused.Violations {
		if alone := strings.TrimSuffix(v.Detail, withOthers); strings.HasSuffix(alone, without) {
			offers = append(offers, Offer{Field: v.Field, Together: alone != v.Detail})
		}
		if said := offer.FindStringSubmatch(v.Detail); said != nil {
			offers = append(offers, Offer{Field: v.Field, Together: said[4] != "", Values: numbers(said)})
		}
	}
	return offers
}

// numbers are the one or two values of an offer, lengths in cm.
func numbers(said []string) (values []float64) {
	for _, number := range [2]string{said[1], said[3]} {
		n, err := strconv.ParseFloat(number, 64)
		if err != nil {
			continue
		}
		if said[2] == "in" {
			n *= measure.CmPerInch
		}
		values = append(values, n)
	}
	return values
}

// CheckOffers asks a refused question again with each value that its refusal says would do: it does, or, where
// that is said, does together with those of all other fields, and it is not what was asked before. It gives how
// many were asked.
func CheckOffers[Q any](t *testing.T, question Q, err error, ask func(Q) error) int {
	t.Helper()
	asked := checkMends(t, question, err, ask)
	offers := Offers(err)
	for line := range strings.SplitSeq(err.Error(), "; gauge") {
		if said := twice.FindStringSubmatch(line); said != nil && said[1] == said[2] && len(offers) == 1 {
			t.Errorf("%+v: %v", question, err)
		}
	}
	together := question
	for _, o := range offers {
		o.take(&together, max(len(o.Values), 1)-1)
	}
	for _, o := range offers {
		for i := range max(len(o.Values), 1) {
			changed := question
			o.take(&changed, i)
			if reflect.DeepEqual(fieldOf(&changed, o.Field).Interface(), fieldOf(&question, o.Field).Interface()) {
				t.Errorf("%+v: %v\nbut that is asked at %s", question, err, o.Field)
			}
			if o.Together {
				changed = together
			}
			asked++
			if again := ask(changed); again != nil || o.Together && len(offers) < 2 {
				t.Errorf("%+v: %v\nbut with that, %v, at %s: %v", question, err, o.Values, o.Field, again)
			}
		}
	}
	return asked
}

// take changes a question as an offer says, by one of its values.
func (o Offer) take(question any, i int) {
	if len(o.Values) > 0 {
		turn(question, o.Field, o.Values[i])
	} else {
		leave(question, o.Field)
	}
}

// turn sets a field of a question, which is named as on the wire, and is a pointer to a number, or to a rule of
// counts, of which it sets the remainder.
func turn(question any, field string, to float64) {
	pointer := fieldOf(question, field)
	if pointer.Type().Elem().Kind() == reflect.Struct {
		rule := reflect.New(pointer.Type().Elem())
		rule.Elem().Set(pointer.Elem())
		pointer.Set(rule)
		pointer = rule.Elem().FieldByName("Remainder")
	}
	number := reflect.New(pointer.Type().Elem())
	if number.Elem().CanInt() {
		number.Elem().SetInt(int64(to))
	} else {
		number.Elem().SetFloat(to)
	}
	pointer.Set(number)
}

// leave leaves a field of a question out.
func leave(question any, field string) { fieldOf(question, field).SetZero() }

// fieldOf is a field of a question by its name on the wire.
func fieldOf(question any, field string) reflect.Value {
	name := ""
	for word := range strings.SplitSeq(field, "_") {
		name += strings.ToUpper(word[:1]) + word[1:]
	}
	return reflect.ValueOf(question).Elem().FieldByName(name)
}
