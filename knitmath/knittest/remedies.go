package knittest

import (
	"errors"
	"reflect"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
)

// What a refusal offers: "; 6 would do", "; 4.5 cm or 6 cm would do".
var offer = regexp.MustCompile(`; ([0-9.]+)(?: (?:cm|in))?(?: or ([0-9.]+)(?: (?:cm|in))?)? would do$`)

// An Offer is a value of a field that a refusal says would do.
type Offer struct {
	Field  string
	Values []float64
}

// Offers are those of a refusal.
func Offers(err error) (offers []Offer) {
	var refused *fault.InputError
	if !errors.As(err, &refused) {
		return nil
	}
	for _, v := range refused.Violations {
		if said := offer.FindStringSubmatch(v.Detail); said != nil {
			o := Offer{Field: v.Field}
			for _, number := range said[1:] {
				if n, err := strconv.ParseFloat(number, 64); err == nil {
					o.Values = append(o.Values, n)
				}
			}
			offers = append(offers, o)
		}
	}
	return offers
}

// CheckOffers asks a refused question again with each value that its refusal says would do: it does, or does
// together with those of all other fields. It gives how many were asked.
func CheckOffers[Q any](t *testing.T, question Q, err error, ask func(Q) error) int {
	t.Helper()
	asked := 0
	offers := Offers(err)
	together := question
	for _, o := range offers {
		turn(&together, o.Field, o.Values[len(o.Values)-1])
	}
	for _, o := range offers {
		for _, v := range o.Values {
			changed := question
			turn(&changed, o.Field, v)
			asked++
			if again := ask(changed); again != nil && (len(offers) < 2 || ask(together) != nil) {
				t.Errorf("%+v: %v\nbut with %s of %v: %v", question, err, o.Field, v, again)
			}
		}
	}
	return asked
}

// turn sets a field of a question, which is named as on the wire, and is a pointer to a number.
func turn(question any, field string, to float64) {
	name := ""
	for word := range strings.SplitSeq(field, "_") {
		name += strings.ToUpper(word[:1]) + word[1:]
	}
	number := reflect.New(reflect.ValueOf(question).Elem().FieldByName(name).Type().Elem())
	if number.Elem().CanInt() {
		number.Elem().SetInt(int64(to))
	} else {
		number.Elem().SetFloat(to)
	}
	reflect.ValueOf(question).Elem().FieldByName(name).Set(number)
}
