package pattern

import "testing"

// Headings are passed over with a remark, and the counts go on; whatever might
// be a row is not taken for one.
func TestHeadings(t *testing.T) {
	for text, heading := range map[string]bool{
		"Feather and fan":           true,
		"Sleeves:":                  true,
		"Left front, lower edge":    true,
		"Back":                      false, // one word may be an abbreviation nobody declared
		"foo":                       false,
		"foo, k3":                   false,
		"knit across":               false,
		"work in pattern":           false,
		"foo bar k2tog":             false,
		"foo 3 times":               false,
		"*foo bar; rep from *":      false,
		"inc evenly":                false,
		"Sleeves: k3":               false,
		"pick up along the armhole": false,
	} {
		p := parser{tokens: padded(text, nil), next: leading, sizes: 1, found: findings{source: text}}
		if got := p.headingAhead(); got != heading {
			t.Errorf("%q: heading %v, want %v", text, got, heading)
		}
	}
	piece := Read("Feather and fan\nRow 1: k2tog, k to end\n", Options{})
	if len(piece.Lines) != 2 || piece.Lines[0].info.kind != linePassed || piece.Lines[1].info.kind != lineRow {
		t.Errorf("lines %+v", piece.Lines)
	}
}
