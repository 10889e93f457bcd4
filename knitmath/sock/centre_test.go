package sock

import (
	"regexp"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// How many stitches a centre can have is told as a span where there is one, and as the one number where there is not: never "2 to 2".
func TestCentreOfOneNumber(t *testing.T) {
	span := regexp.MustCompile(`\b(\d+) to (\d+)\b`)
	only, spans := 0, 0
	look := func(err error) {
		if err == nil {
			return
		}
		only += strings.Count(err.Error(), "can only have ")
		for _, said := range span.FindAllStringSubmatch(err.Error(), -1) {
			spans++
			if said[1] == said[2] {
				t.Error(err)
			}
		}
	}
	for heel := 4; heel <= 24; heel++ {
		for centre := 1; centre <= heel+2; centre++ {
			for kind := range HeelKind(6) {
				_, err := PlanHeel(HeelInput{RoundStitches: new(2 * heel), HeelStitches: &heel, Kind: kind, CentreStitches: &centre})
				look(err)
			}
			_, err := PlanToe(ToeInput{Kind: ToeKindShortRows, RoundStitches: new(2 * heel), CentreStitches: &centre})
			look(err)
		}
	}
	if only < knittest.Sweep(4, 4) || spans < 100 {
		t.Errorf("%d centres of one number, %d spans: the sweep has shrunk", only, spans)
	}
}
