package service

import (
	"strings"
	"testing"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

// A parameter that cannot be read is refused with what would do: the names there are, those
// below an object, or the other way of asking.
func TestUnfitParametersLeadOn(t *testing.T) {
	question := (&knitmathv1.PlanToeRequest{}).ProtoReflect().Descriptor()
	for raw, want := range map[string]string{
		"rounds=60":             "there is no such field; there are round_stitches, ", // what is most like it stands first
		"gauge.stiches=22":      "there are stitches, rows",
		"gauge=22":              "an object does not fit in a query string; it has the fields stitches, rows",
		"rates.times=4":         "a list of objects does not fit in a query string; ask by POST",
		"round_stitches.more=1": "is below a value, which has no fields",
	} {
		found, _ := explainQuery(raw, question)
		if len(found) != 1 || found[0].Reason != reasonUnknown || !strings.Contains(found[0].Detail, want) {
			t.Errorf("%s: %+v, want %q", raw, found, want)
		}
	}
	if found, _ := explainQuery("round_stitches=60&gauge.stitches=22", question); len(found) != 0 {
		t.Errorf("a question that can be read: %+v", found)
	}
}
