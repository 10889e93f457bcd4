package pattern

import (
	"fmt"
	"testing"
)

// TestFramedHeadings: signs around a heading are none of its words, and what is under it is worked as under the plain one. Common practice.
func TestFramedHeadings(t *testing.T) {
	var texts []worded
	for _, frame := range []string{"%s", "~ %s ~", "= %s =", "== %s ==", "~~ %s ~~"} {
		for _, name := range []string{"Gusset", "Heel & gusset", "Crown shaping", "Toe"} {
			for n := 20; n <= 60; n += 20 {
				texts = append(texts, worded{
					text:     fmt.Sprintf("CO %d sts and join. Knit 4 rnds.\n"+frame+"\nNext rnd: K2tog around. %d sts.", n, name, n/2),
					stitches: []int{n / 2}, rows: []int{5}})
			}
		}
	}
	askShort(t, texts)
}
