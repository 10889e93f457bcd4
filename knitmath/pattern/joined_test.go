package pattern

import (
	"math/rand/v2"
	"strings"
	"testing"
)

// A text is joined as its fields would be, whatever it has of spaces and of invalid bytes.
func TestJoined(t *testing.T) {
	parts := []string{" ", "  ", "\n", "\r\n", "\t", "\u00a0", "\u2003", "\u0085", "k2", "é", "\xff", "\xe2\x80", "\ufffd", ","}
	r := rand.New(rand.NewPCG(8, 4))
	for range 20_000 {
		var b strings.Builder
		for range r.IntN(9) {
			b.WriteString(parts[r.IntN(len(parts))])
		}
		text := b.String()
		want := strings.Join(strings.Fields(strings.ToValidUTF8(text, "\ufffd")), " ")
		if got := joined(text); got != want {
			t.Fatalf("%q: %q, not %q", text, got, want)
		}
	}
}
