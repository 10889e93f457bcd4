package pattern

import (
	"runtime"
	"strings"
	"testing"
)

// perByte and once are what FormatInstructions may allocate: for each byte of its text,
// and whatever that is.
const (
	perByte = 1_800
	once    = 1 << 20
)

// TestFormatAllocatesByItsText: memory grows no faster than the text, also where a few
// words stand for thousands of stitches.
func TestFormatAllocatesByItsText(t *testing.T) {
	for _, row := range []string{
		"k5, [k2tog, k8] 4 times, yo, k to end.\n",
		"[[k1, p1] 9 times, k1] 9 times\n",
		"[[[k1, p1] 90 times, k1] 9 times, yo] 9 times\n",
		"Row 1: k1, p1, k1, p2, k1, p1, yo, k2tog, ssk, k1, p3 (20, 24 sts)\n",
		"Work even for 5 cm, then rep last row twice. foo bar\n",
		"(", ",", "*k1", "k1 to end, ", "\n", "1 (",
	} {
		for _, size := range []int{500, 2_000, 8_000, 32_000} {
			text := strings.Repeat(row, size/len(row)+1)[:size]
			if _, err := FormatInstructions(FormatInstructionsInput{Text: text}); err != nil {
				t.Fatal(err)
			}
			var before, after runtime.MemStats
			runtime.ReadMemStats(&before)
			if _, err := FormatInstructions(FormatInstructionsInput{Text: text}); err != nil {
				t.Fatal(err)
			}
			runtime.ReadMemStats(&after)
			took := int(after.TotalAlloc - before.TotalAlloc)
			t.Logf("%-20.20q %6d bytes: %9d, %d a byte", row, size, took, took/size)
			if took > once+perByte*size {
				t.Errorf("%q, %d bytes, takes %d", row, size, took)
			}
		}
	}
}
