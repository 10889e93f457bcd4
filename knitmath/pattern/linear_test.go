package pattern

import (
	"strings"
	"testing"
)

// What is looked at for a text twice as long is twice as much: of these a line of many
// sentences, or many dashes, was looked at from each of them on once, and took 17 s.
func TestReadingGrowsWithTheText(t *testing.T) {
	for _, part := range []string{"A. ", "xq. ", "cm. ", "rs. ", "end. ", "st st. ", "turn. ", "1-", "5-6-7-", "5 - ", "a-", "a—", "k1-",
		"sts-", "-k1", "w&t, ", "pm, ", "Place 1 st on holder, ", "k1. ", "Knit ", "42 sts; ", "(k1) ", "K to m, sm. ", "work chart "} {
		for _, given := range []bool{true, false} {
			looked := func(bytes int) int { return read(strings.Repeat(part, bytes/len(part)), 0, nil, given).looked }
			half, whole := looked(MaxTextBytes/4), looked(MaxTextBytes/2)
			if whole > 5*half/2+1000 {
				t.Errorf("%q, stitches given %v: %d tokens looked at, and %d of twice the text", part, given, half, whole)
			}
		}
	}
}
