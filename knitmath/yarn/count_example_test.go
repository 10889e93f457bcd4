package yarn_test

import (
	"fmt"

	"example.com/knitmath/knitmath/yarn"
)

// A cone of lace yarn that says 2/28 Nm.
func ExampleConvertYarnCount() {
	out, err := yarn.ConvertYarnCount(yarn.ConvertInput{
		Count:   &yarn.Count{Notation: "2/28 Nm"},
		Systems: []yarn.CountSystem{yarn.CountSystemTex, yarn.CountSystemCotton, yarn.CountSystemWorsted, yarn.CountSystemYardsPerPound},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(out.Summary())
	for _, c := range out.Counts {
		fmt.Println(c.Notation)
	}
	// Output:
	// 2 plies of Nm 28 are R 71.43 tex/2, 1400 m/100 g.
	// R 71.43 tex/2
	// Ne 16.54/2
	// 2/24.8s worsted
	// 6945 yd/lb
}
