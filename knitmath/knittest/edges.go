package knittest

import (
	"errors"
	"math"
	"reflect"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
)

// CheckEdges turns each number of a question up and down until it is infeasible, goes back to the last that is not, and checks what
// the refusal right beyond it offers. It gives how many are refused, and how many of those are offered something.
func CheckEdges[Q any](t *testing.T, question Q, ask func(Q) error, fields ...string) (refused, offered int) {
	t.Helper()
	for _, field := range fields {
		for _, way := range [2]float64{2, 0.5} {
			beyond, err := edge(question, field, way, ask)
			if err == nil {
				continue
			}
			refused++
			if CheckOffers(t, beyond, err, ask) > 0 {
				offered++
			}
		}
	}
	return refused, offered
}

// edge is the question beside the last that is feasible, and its refusal; none where there is none.
func edge[Q any](question Q, field string, way float64, ask func(Q) error) (beyond Q, refusal error) {
	number := fieldOf(&question, field).Elem()
	at, apart := 0.0, 0.1
	if number.CanInt() {
		at, apart = float64(number.Int()), 1
	} else {
		at = number.Float()
	}
	try := func(to float64) error {
		beyond = question
		turn(&beyond, field, to)
		return ask(beyond)
	}
	far := at
	for range 12 {
		at, far = far, float64(measure.RoundHalfUp(far*way/apart))*apart
		if refusal = try(far); refusal != nil {
			break
		}
	}
	if !infeasible(refusal) {
		return question, nil
	}
	for math.Abs(far-at) > 1.5*apart {
		middle := float64(measure.RoundHalfUp((at+far)/2/apart)) * apart
		if try(middle) != nil {
			far = middle
		} else {
			at = middle
		}
	}
	refusal = try(far)
	return beyond, refusal
}

// infeasible reports whether a question is refused for its values together alone.
func infeasible(err error) bool {
	var refused *fault.InputError
	return errors.As(err, &refused) && !slices.ContainsFunc(refused.Violations, func(v fault.Violation) bool {
		return v.Reason != fault.ReasonInfeasible
	})
}

// Numbers are the fields of a question that are given and point to numbers, by their names on the wire.
func Numbers(question any) (fields []string) {
	value := reflect.ValueOf(question)
	for i := range value.NumField() {
		f := value.Field(i)
		if f.Kind() != reflect.Pointer || f.IsNil() || f.Elem().Kind() == reflect.Struct {
			continue
		}
		name := ""
		for j, letter := range value.Type().Field(i).Name {
			if letter < 'a' && j > 0 {
				name += "_"
			}
			name += string(letter | 32)
		}
		fields = append(fields, name)
	}
	return fields
}
