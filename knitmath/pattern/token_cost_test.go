package pattern

import (
	"strings"
	"testing"
)

// What is looked at ahead of a star does not grow with the text: a long line of stars
// would take its length for each.
func TestStarsLookAheadSoFar(t *testing.T) {
	for _, part := range []string{"*k, ", "* K1. ", "**a", "\n* k1", "* ", "*k:", "∗k, ", "* rep from *\n"} {
		text := strings.Repeat(part, MaxTextBytes/len(part))
		stars := strings.Count(text, "*") + strings.Count(text, "∗")
		if got, most := scanned(text, nil, 0).ahead, len(text)+2*maxBullet*stars; got > most {
			t.Errorf("%q: %d bytes looked at ahead, more than %d", part, got, most)
		}
	}
}
