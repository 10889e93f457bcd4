package service

import (
	"strings"
	"testing"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

// A refusal offers only values that the field takes: of all operations an even
// spacing takes the increases and decreases.
func TestRefusalsOfferWhatTheFieldTakes(t *testing.T) {
	names := valueNames((&knitmathv1.PlanEvenSpacingRequest{}).ProtoReflect().Descriptor().Fields().ByName("operation"))
	for name, want := range map[string]bool{"OPERATION_K2TOG": true, "OPERATION_M1L": true,
		"OPERATION_KNIT": false, "OPERATION_UNSPECIFIED": false} {
		if got := strings.Contains(names+",", name+","); got != want {
			t.Errorf("%s offered: %v, in %s", name, got, names)
		}
	}
	names = valueNames((&knitmathv1.PlanTaperRequest{}).ProtoReflect().Descriptor().Fields().ByName("edges"))
	if names != "SHAPED_EDGES_BOTH, SHAPED_EDGES_BEGINNING, SHAPED_EDGES_END" {
		t.Errorf("edges: %s", names)
	}
}
