package service

import (
	"encoding/json"
	"net/url"
	"testing"

	"github.com/grpc-ecosystem/grpc-gateway/v2/runtime"
	"github.com/grpc-ecosystem/grpc-gateway/v2/utilities"
	"google.golang.org/protobuf/encoding/protojson"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

// FuzzExplainJSON wants an explanation of every body that protojson refuses, of
// bounded size, and none made up: a body that protojson accepts has no fault
// that the walk could find.
func FuzzExplainJSON(f *testing.F) {
	for _, s := range []string{
		castOnBody, ``, `[]`, `{"gauge": null, "width_cm": "NaN"}`, `{"width_cm": 1e400}`, `{"display_unit": 2.5}`,
		`{"stitch_rule": {"multiple": "4", "rounding": "ROUNDING_UP"}}`, `{"width_cm": " 1"}`, `{"widthCm": -0}`,
		`{"stitch_rule": {"multiple": 1e1}, "row_rule": {"remainder": 2147483648}}`, `{"a": [{"b": "]"}]}`,
		`{"stitch_rule":{"multiple":0e}}`,
	} {
		f.Add([]byte(s))
	}
	md := (&knitmathv1.ComputeCastOnRequest{}).ProtoReflect().Descriptor()
	f.Fuzz(func(t *testing.T, body []byte) {
		err := protojson.Unmarshal(body, &knitmathv1.ComputeCastOnRequest{})
		faults, unlisted := explainJSON(body, md)
		// protojson reads "0e" as 0, which is no number of JSON: what is said of such a body is not asked about.
		if err == nil && json.Valid(body) && (len(faults) != 1 || faults[0].Detail != notOfTheForm) {
			t.Errorf("%q is accepted and explained: %v", body, faults)
		}
		if unlisted > 0 && len(faults) != maxViolations {
			t.Errorf("%q: %d faults listed, and %d not", body, len(faults), unlisted)
		}
		for _, v := range faults {
			if v.Reason == "" || v.Detail == "" {
				t.Errorf("%q: %+v says nothing", body, v)
			}
		}
	})
}

// FuzzExplainQuery wants the gateway's parser to read what was let through.
func FuzzExplainQuery(f *testing.F) {
	for _, s := range []string{
		"", "gauge.stitches=22&gauge.rows=30&width_cm=50", "width_cm=0x1p4", "display_unit=1", "display_unit=01",
		"stitch_rule.rounding=ROUNDING_UP&stitch_rule.multiple=%2B4", "a;b", "=1", "gauge[a]=1", "width_cm=1_0",
	} {
		f.Add(s)
	}
	md := (&knitmathv1.ComputeCastOnRequest{}).ProtoReflect().Descriptor()
	nothing := utilities.NewDoubleArray(nil)
	f.Fuzz(func(t *testing.T, raw string) {
		if found, _ := explainQuery(raw, md); len(found) > 0 {
			return
		}
		values, err := url.ParseQuery(raw)
		if err != nil {
			t.Fatalf("%q: %v", raw, err)
		}
		if err := runtime.PopulateQueryParameters(&knitmathv1.ComputeCastOnRequest{}, values, nothing); err != nil {
			t.Errorf("%q was let through: %v", raw, err)
		}
	})
}
