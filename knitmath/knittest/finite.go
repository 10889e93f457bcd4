package knittest

import (
	"errors"
	"fmt"
	"math"
	"reflect"
	"testing"

	"example.com/knitmath/knitmath/fault"
)

// CheckFinite fails when any float inside v, at any depth, is not finite.
func CheckFinite(t *testing.T, v any) {
	t.Helper()
	if path := NotFinite(reflect.ValueOf(v), ""); path != "" {
		t.Fatalf("%T%s is not finite: %+v", v, path, v)
	}
}

// NotFinite is the path of the first float that is not finite.
func NotFinite(v reflect.Value, path string) string {
	switch v.Kind() {
	case reflect.Float64:
		if math.IsNaN(v.Float()) || math.IsInf(v.Float(), 0) {
			return path + " "
		}
	case reflect.Pointer:
		if !v.IsNil() {
			return NotFinite(v.Elem(), path)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			if bad := NotFinite(v.Field(i), path+"."+v.Type().Field(i).Name); bad != "" {
				return bad
			}
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			if bad := NotFinite(v.Index(i), fmt.Sprintf("%s[%d]", path, i)); bad != "" {
				return bad
			}
		}
	}
	return ""
}

// CheckInputError fails when an error is not an *InputError with sound faults.
func CheckInputError(t *testing.T, err error) {
	t.Helper()
	var in *fault.InputError
	if !errors.As(err, &in) {
		t.Fatalf("error %v is not an *InputError", err)
	}
	if n := len(in.Violations); n == 0 || n > fault.MaxViolations {
		t.Fatalf("%d violations", n)
	}
	for _, v := range in.Violations {
		if v.Field == "" || v.Reason == "" || v.Detail == "" {
			t.Fatalf("violation %+v lacks a part", v)
		}
	}
}

// Near fails when got is not within a relative tolerance of want.
func Near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance*math.Max(1, math.Abs(want))) {
		t.Errorf("%s: got %.15g, want %.15g to within %g", what, got, want, tolerance)
	}
}
