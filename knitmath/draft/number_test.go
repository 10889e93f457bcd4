package draft

import "testing"

func TestNumber(t *testing.T) {
	for word, want := range map[string]int{"one": 1, "thirteen": 13, "twenty": 20, "twenty-one": 21, "ninety-nine": 99,
		"twenty-eleven": 0, "k": 0, "": 0, "five-ten": 0} {
		if n, ok := Number(word); ok != (want > 0) || ok && n != want {
			t.Errorf("%q is %d, %v, want %d", word, n, ok, want)
		}
	}
	for word, want := range map[string]int{"first": 1, "other": 2, "alternate": 2, "twelfth": 12, "last": 0} {
		if n, ok := Ordinal(word); ok != (want > 0) || ok && n != want {
			t.Errorf("%q is the %d., %v, want %d", word, n, ok, want)
		}
	}
}
