package draft

import "testing"

func TestPlain(t *testing.T) {
	for c, want := range map[rune]rune{'＊': '*', '✻': '*', '—': '-', '−': '-', '×': 'x', '’': '\'', '；': ';', '８': '8', 'k': 'k', 'é': 'é'} {
		if got := Plain(c); got != want {
			t.Errorf("%q is %q, want %q", c, got, want)
		}
	}
	for s, want := range map[string]string{"K2tog": "k2tog", "pat\u00ADtern": "pattern", "ＫＦＢ": "kfb", "st\u200Bs": "sts", "inc’d": "inc'd"} {
		if got := Word(s); got != want {
			t.Errorf("%q is %q, want %q", s, got, want)
		}
	}
	for _, c := range "½¾⅓⅞" {
		if !Fraction(c) {
			t.Errorf("%q is a fraction", c)
		}
	}
	if Fraction('5') || Invisible(' ') || !Invisible('\uFEFF') {
		t.Error("a digit is no fraction, a space is seen, a byte order mark is not")
	}
}
