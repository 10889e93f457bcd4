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

// The names are offered whole: all systems of a count, and where there are too many of them
// the list ends between two.
func TestRefusalsCutNoName(t *testing.T) {
	server := start(t)
	said := func(path, body string) string {
		return string(server.send(t, "POST", path, body).body)
	}
	got := said("/v1/yarn:convertYarnCount", `{"count": {"number": 5, "system": "COUNT_SYSTEM_FURLONG"}}`)
	for _, want := range []string{"COUNT_SYSTEM_YARDS_PER_POUND", "COUNT_SYSTEM_METRES_PER_50_G", "COUNT_SYSTEM_SILK_DRAM"} {
		if !strings.Contains(got, want) {
			t.Errorf("%s is not offered: %s", want, got)
		}
	}
	all := strings.Repeat("OPERATION_K2TOG, ", 100)
	for limit := 100; limit < 140; limit++ {
		cut := shortenWords(all, limit)
		names, ended := strings.CutSuffix(cut, " ...")
		if left := strings.ReplaceAll(names+" ", "OPERATION_K2TOG, ", ""); !ended || len(names) > limit || left != "" {
			t.Errorf("at %d: %q", limit, cut)
		}
	}
}
