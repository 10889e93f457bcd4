package handspun_test

import (
	"fmt"
	"strings"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/handspun"
	"example.com/knitmath/knitmath/yarn"
)

// Two singles, of which 10 m weigh 2 g, for a pattern of 22 stitches to 10 cm.
func ExamplePlanHandspun() {
	plan, err := handspun.PlanHandspun(handspun.Input{
		Plies:   []handspun.Ply{{Count: &yarn.Count{Notation: "10 m/2 g"}, Times: new(2)}},
		Gauge:   &gauge.Gauge{Stitches: 22, Rows: 30},
		WantedM: new(1250.0),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, sentence := range strings.SplitAfter(plan.Summary(), ". ") {
		fmt.Println(strings.TrimSpace(sentence))
	}
	// Output:
	// A 2-ply of 243 m to 100 g (R 412 tex), plied S with 1.3 turns to the cm.
	// It fits the pattern's gauge: it is usually knit at 20 to 23 stitches to 10 cm.
	// For 1250 m, 515 g, begin with 602 g of fibre (555 g to 654 g).
}
