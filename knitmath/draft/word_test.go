package draft

import "testing"

// Words that each list is asked for, and neighbours that are none of it.
func TestWordsAreTold(t *testing.T) {
	for name, c := range map[string]struct {
		is      func(string) bool
		yes, no []string
	}{
		"harmless":   {Harmless, []string{"weave", "block", "don't"}, []string{"knit", "bind", "narrow", ""}},
		"changing":   {Changing, []string{"narrow", "together", "decreases"}, []string{"knit", "evenly", ""}},
		"english":    {English, []string{"the", "until", "loosely", "evenly"}, []string{"in", "a", "on", "or", "und", "cm", ""}},
		"manner":     {Manner, []string{"evenly", "knit-side", "left-front", "long-tail"}, []string{"knit", "k2tog", "left-k2tog", "left-", ""}},
		"fabric":     {Fabric, []string{"stockinette", "g-st", "fisherman's"}, []string{"lace", "knit", ""}},
		"front":      {Front, []string{"materials", "gauge"}, []string{"sleeve", "knit", ""}},
		"explaining": {Explaining, []string{"abbreviations", "tip"}, []string{"materials", "sleeve", ""}},
		"part":       {Part, []string{"body", "sleeve", "heel"}, []string{"materials", "knit", ""}},
	} {
		for _, word := range c.yes {
			if !c.is(word) {
				t.Errorf("%q is not %s", word, name)
			}
		}
		for _, word := range c.no {
			if c.is(word) {
				t.Errorf("%q is %s", word, name)
			}
		}
	}
}
