package service

import (
	"encoding/json"
	"math"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"testing"
)

// unlikePlans are the reasons of notices that say of a plan that it counts right and is
// not what hands like, cloth bears or bodies are. Ordinary plans raise none of them.
var unlikePlans = []string{
	"DECREASED_EVERY_ROW", "SHAPED_AT_AN_END", "TURNS_AT_EVERY_STITCH", "UNUSUAL_RATIO",
	"STEEPER_THAN_ONE_STITCH_A_TURN", "DOUBLES_STAND_OUT",
	"RUFFLES", "DEPTH_UNLIKE_BODIES", "FRONT_AS_HIGH_AS_BACK", "NECK_BELOW_HEAD", "NECK_SLIDES_OFF", "SLEEVE_BELOW_HAND", "BIND_OFF_TIGHTENS",
}

// hardPlans are the reasons of notices that say that no easy plan was found.
var hardPlans = []string{"MANY_RUNS", "MANY_ITEMS", "BEYOND_TOLERANCE"}

// mostHard is how many of a thousand plans may be hard.
const mostHard = 5

// A thousand questions such as are asked every day, drawn from the ranges in
// testdata/ordinary, are answered, and no plan is unlike those that are knit.
func TestAThousandOrdinaryPlans(t *testing.T) {
	server := start(t)
	o := readOrdinary(t)
	raised, asked := map[string]int{}, 0
	for _, kind := range o.Questions {
		for range kind.Count {
			question := o.draw(kind)
			body, err := json.Marshal(question)
			if err != nil {
				t.Fatal(err)
			}
			asked++
			got := server.send(t, "POST", "/v1/"+kind.Method, string(body))
			if got.code != 200 {
				t.Errorf("%s: %s: HTTP %d, %s", kind.ID, body, got.code, got.body)
				continue
			}
			var answer struct {
				Notices []struct{ Reason, Description string }
			}
			if err := json.Unmarshal(got.body, &answer); err != nil {
				t.Fatal(err)
			}
			for _, n := range answer.Notices {
				raised[n.Reason]++
				if slices.Contains(unlikePlans, n.Reason) || slices.Contains(hardPlans, n.Reason) {
					t.Logf("%s: %s: %s", kind.ID, body, n.Description)
				}
			}
		}
	}
	unlike, hard := 0, 0
	for reason, n := range raised {
		if slices.Contains(unlikePlans, reason) {
			unlike += n
		}
		if slices.Contains(hardPlans, reason) {
			hard += n
		}
	}
	t.Logf("notices of %d plans: %v", asked, raised)
	if asked != 1000 || unlike > 0 || hard > mostHard {
		t.Errorf("%d of %d ordinary plans are unlike those that are knit, and %d are hard", unlike, asked, hard)
	}
}

// ordinary is testdata/ordinary/ordinary.json; thousand.md says how to draw from it.
type ordinary struct {
	Gauges []struct {
		ID            string
		Stitches      [2]float64
		RowsPerStitch [2]float64 `json:"rows_per_stitch"`
	}
	People    []map[string]any
	Questions []ordinaryKind

	*rand.Rand
}

type ordinaryKind struct {
	ID, Method string
	Count      int
	ranges     map[string]any
}

func (k *ordinaryKind) UnmarshalJSON(data []byte) error {
	type plain ordinaryKind
	if err := json.Unmarshal(data, (*plain)(k)); err != nil {
		return err
	}
	return json.Unmarshal(data, &k.ranges)
}

func readOrdinary(t *testing.T) ordinary {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("..", "testdata", "ordinary", "ordinary.json"))
	if err != nil {
		t.Fatal(err)
	}
	o := ordinary{Rand: rand.New(rand.NewPCG(1, 1000))}
	if err := json.Unmarshal(data, &o); err != nil {
		t.Fatal(err)
	}
	return o
}

// draw is one question of a kind.
func (o ordinary) draw(kind ordinaryKind) map[string]any {
	d := o.somebody(kind)
	switch kind.Method {
	case "gauge:computeCastOn":
		return d.castOn()
	case "shaping:planEvenSpacing":
		return d.spacing()
	case "shaping:planTaper":
		return d.taper()
	case "shaping:planShapedSide":
		return d.waist()
	case "yoke:planCircularYoke":
		return d.yoke()
	case "yoke:planRaglan":
		return d.raglan()
	case "edge:planPickUp":
		return d.pickUp()
	case "edge:planButtonholes":
		return d.buttonholes()
	case "short-row:planWedge":
		return d.shoulder()
	}
	panic("nothing draws " + kind.Method)
}

// drawing is one question while it is drawn: a body, a gauge, and the ranges of its
// kind.
type drawing struct {
	*rand.Rand
	kind           ordinaryKind
	body           map[string]float64
	stitches, rows float64 // to 10 cm
}

func (o ordinary) somebody(kind ordinaryKind) drawing {
	d := drawing{Rand: o.Rand, kind: kind, body: map[string]float64{}}
	groups := kind.ranges["people"].([]any)
	for d.body["chest_cm"] == 0 || d.body["chest_cm"] > number(kind.ranges["chest_at_most_cm"], math.Inf(1)) {
		group := o.group(groups[o.IntN(len(groups))].(string))
		at := o.Float64()
		for measure, v := range group {
			if list, ok := v.([]any); ok && measure != "gauges" {
				d.body[measure] = between(list, at)
			}
		}
		var fits []int
		for i, g := range o.Gauges {
			if slices.Contains(group["gauges"].([]any), any(g.ID)) &&
				(kind.ranges["gauges"] == nil || slices.Contains(kind.ranges["gauges"].([]any), any(g.ID))) {
				fits = append(fits, i)
			}
		}
		if len(fits) == 0 {
			clear(d.body)
			continue
		}
		g := o.Gauges[fits[o.IntN(len(fits))]]
		d.stitches = math.Round(2*(g.Stitches[0]+(g.Stitches[1]-g.Stitches[0])*o.Float64())) / 2
		ratio := g.RowsPerStitch[0] + (g.RowsPerStitch[1]-g.RowsPerStitch[0])*o.Float64()
		d.rows = math.Round(2*d.stitches*ratio) / 2
	}
	return d
}

func (o ordinary) group(id string) map[string]any {
	for _, g := range o.People {
		if g["id"] == id {
			return g
		}
	}
	panic("no group " + id)
}

// between is a measure of the body at a place between the smallest, the middle and
// the largest.
func between(list []any, at float64) float64 {
	low, middle, high := list[0].(float64), list[1].(float64), list[2].(float64)
	if at < 0.5 {
		return low + (middle-low)*2*at
	}
	return middle + (high-middle)*(2*at-1)
}

func number(v any, otherwise float64) float64 {
	if n, ok := v.(float64); ok {
		return n
	}
	return otherwise
}
