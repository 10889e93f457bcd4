package pattern

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/report"
)

// planted are mistakes put into the right pattern, one change of text each, with
// the line they stand on and what must be found.
var planted = []struct {
	line     int
	old, new string
	reason   report.Reason
	sizes    string
}{
	{2, "last 2 sts, k2", "last 3 sts, k3", ReasonUneven, "[1 2 3 4]"},
	{4, "Rows 1 and 2", "Rows 1 and 3", ReasonNoRow, "[]"},
	{5, "[M1L, k6 (6, 7, 8)]", "[M1L, k6 (6, 7)]", ReasonSizes, "[]"},
	{6, "(WS)", "(RS)", ReasonSide, "[]"},
	{8, "(68, 72, 78, 84 sts)", "(68, 72, 78, 82 sts)", ReasonClaim, "[4]"},
	{9, "last 3 sts", "last 4 sts", ReasonUnworked, "[1 2 3 4]"},
	{11, "4 (5, 6, 7) more", "4 (5, 6, 8) more", ReasonClaim, "[4]"},
	{12, "k9 (10, 10, 13)", "k9 (11, 10, 13)", ReasonMissing, "[2]"},
	{14, "[yo, sk2p, yo, k2]", "[yo, sk2p, yo, k2", ReasonOpenBracket, "[]"},
	{15, "p to last 6", "q to last 6", ReasonUnknown, "[]"},
}

// TestPlantedMistakes: ten mistakes, ten findings; and none in the right pattern.
func TestPlantedMistakes(t *testing.T) {
	source, err := os.ReadFile("../../testdata/pattern/graded_right.txt")
	if err != nil {
		t.Fatal(err)
	}
	right := string(source)
	found := judged(Read(right, Options{}).Work(Start{}))
	if len(found) != 0 {
		t.Fatalf("found in the right pattern: %+v", found)
	}
	lines := strings.Split(right, "\n")
	for _, m := range planted {
		if !strings.Contains(lines[m.line-1], m.old) {
			t.Fatalf("line %d has no %q", m.line, m.old)
		}
		alone := strings.Split(right, "\n")
		alone[m.line-1] = strings.Replace(alone[m.line-1], m.old, m.new, 1)
		checkPlanted(t, "alone", strings.Join(alone, "\n"), m.line)
		lines[m.line-1] = strings.Replace(lines[m.line-1], m.old, m.new, 1)
	}
	checkPlanted(t, "together", strings.Join(lines, "\n"), 0)
}

// checkPlanted wants the mistake of one line, or all of them, and no other.
func checkPlanted(t *testing.T, name, text string, line int) {
	t.Helper()
	found := judged(Read(text, Options{}).Work(Start{}))
	i := 0
	for _, m := range planted {
		if line != 0 && m.line != line {
			continue
		}
		if i >= len(found) {
			t.Errorf("%s: line %d, %s: not found", name, m.line, m.reason)
			continue
		}
		f := found[i]
		if f.LineNumber != m.line || f.Reason != m.reason || fmt.Sprint(f.SizeNumbers) != m.sizes {
			t.Errorf("%s: found %+v; want line %d, %s, sizes %s", name, f, m.line, m.reason, m.sizes)
		}
		i++
	}
	for ; i < len(found); i++ {
		t.Errorf("%s: invented: %+v", name, found[i])
	}
}

// judged are the mistakes and questions among the findings.
func judged(w Worked) []Finding {
	var out []Finding
	for _, f := range w.Findings {
		if f.Kind != KindReading {
			out = append(out, f)
		}
	}
	return out
}
