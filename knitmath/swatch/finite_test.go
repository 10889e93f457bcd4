package swatch

import (
	"math"
	"reflect"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// The walk itself must find what it looks for.
func TestFiniteWalk(t *testing.T) {
	bad := math.NaN()
	for _, v := range []any{
		math.Inf(1),
		struct{ a *float64 }{&bad},
		[]Statistics{{Mean: 1}, {Mean: 2, HalfWidth95: &bad}},
	} {
		if knittest.NotFinite(reflect.ValueOf(v), "") == "" {
			t.Errorf("%+v passes for finite", v)
		}
	}
	if knittest.NotFinite(reflect.ValueOf(gauge.CastOn{}), "") != "" {
		t.Error("a zero answer passes for infinite")
	}
}
