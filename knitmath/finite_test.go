package knitmath

import (
	"errors"
	"fmt"
	"math"
	"reflect"
	"testing"
)

// checkFinite fails when any float inside v, at any depth, is not finite.
func checkFinite(t *testing.T, v any) {
	t.Helper()
	if path := notFinite(reflect.ValueOf(v), ""); path != "" {
		t.Fatalf("%T%s is not finite: %+v", v, path, v)
	}
}

// notFinite is the path of the first float that is not finite.
func notFinite(v reflect.Value, path string) string {
	switch v.Kind() {
	case reflect.Float64:
		if math.IsNaN(v.Float()) || math.IsInf(v.Float(), 0) {
			return path + " "
		}
	case reflect.Pointer:
		if !v.IsNil() {
			return notFinite(v.Elem(), path)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			if bad := notFinite(v.Field(i), path+"."+v.Type().Field(i).Name); bad != "" {
				return bad
			}
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			if bad := notFinite(v.Index(i), fmt.Sprintf("%s[%d]", path, i)); bad != "" {
				return bad
			}
		}
	}
	return ""
}

// checkInputError fails when an error is not an *InputError with sound faults.
func checkInputError(t *testing.T, err error) {
	t.Helper()
	var in *InputError
	if !errors.As(err, &in) {
		t.Fatalf("error %v is not an *InputError", err)
	}
	if n := len(in.Violations); n == 0 || n > MaxViolations {
		t.Fatalf("%d violations", n)
	}
	for _, v := range in.Violations {
		if v.Field == "" || v.Reason == "" || v.Detail == "" {
			t.Fatalf("violation %+v lacks a part", v)
		}
	}
}

// near fails when got is not within a relative tolerance of want.
func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance*math.Max(1, math.Abs(want))) {
		t.Errorf("%s: got %.15g, want %.15g to within %g", what, got, want, tolerance)
	}
}

// The walk itself must find what it looks for.
func TestFiniteWalk(t *testing.T) {
	bad := math.NaN()
	for _, v := range []any{
		math.Inf(1),
		struct{ a *float64 }{&bad},
		[]GaugeStatistics{{Mean: 1}, {Mean: 2, HalfWidth95: &bad}},
	} {
		if notFinite(reflect.ValueOf(v), "") == "" {
			t.Errorf("%+v passes for finite", v)
		}
	}
	if notFinite(reflect.ValueOf(CastOn{}), "") != "" {
		t.Error("a zero answer passes for infinite")
	}
}
