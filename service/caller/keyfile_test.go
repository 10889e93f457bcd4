package caller

import (
	"crypto/sha256"
	"encoding/hex"
	"strings"
	"testing"
)

// hash is the hash of a text as the file has it.
func hash(text string) string {
	sum := sha256.Sum256([]byte(text))
	return hex.EncodeToString(sum[:])
}

func TestKeyFile(t *testing.T) {
	found, err := readKeys([]byte("# who may call\r\n\n" +
		"shop-server\t" + strings.ToUpper(hash("a")) + "  secret calls=0.5 cost=2e5\r\n" +
		"shop-pages " + hash("b") + " publishable origins=https://shop.example,https://*.shop.example calls=20\n" +
		"app " + hash("c") + " secret"))
	if err != nil || len(found.all) != 3 {
		t.Fatalf("%d keys, %v", len(found.all), err)
	}
	for text, want := range map[string]key{
		"a": {name: "shop-server", rates: Rates{0.5, 2e5}},
		"b": {name: "shop-pages", publishable: true, rates: Rates{Calls: 20}},
		"c": {name: "app"},
	} {
		got := found.find(text)
		if got == nil || got.name != want.name || got.publishable != want.publishable || got.rates != want.rates {
			t.Errorf("%s: %+v, want %+v", text, got, want)
		}
	}
	if k := found.find("b"); !k.origins.Allow("https://en.shop.example") || k.origins.Allow("https://other.example") {
		t.Errorf("origins %+v", k.origins)
	}
	for _, text := range []string{"", "A", "d", hash("a"), "a\n"} {
		if k := found.find(text); k != nil {
			t.Errorf("%q is the key of %s", text, k.name)
		}
	}
}

// Whoever empties the file means that no key is good any more.
func TestEmptyKeyFile(t *testing.T) {
	for _, file := range []string{"", "\n", "# nobody"} {
		if found, err := readKeys([]byte(file)); err != nil || found.find("") != nil {
			t.Errorf("%q: %v, %v", file, found, err)
		}
	}
}

func TestKeyFileRefuses(t *testing.T) {
	good := hash("a")
	const pages = " publishable calls=1 origins="
	for _, c := range []struct{ line, say string }{
		{"Shop " + good + " secret", "line 2: a name has small letters"},
		{strings.Repeat("a", 41) + " " + good + " secret", "a name has small letters"},
		{good + " secret", "a name has small letters"},
		{"public " + good + " secret", "the name public means those without a key"},
		{"unknown " + good + " secret", "the name unknown means"},
		{"shop", "after the name shop come"},
		{"shop " + good, "after the name shop come"},
		{"shop " + good[:40] + " secret", "must be 64 hexadecimal digits"},
		{"shop " + good + "00 secret", "must be 64 hexadecimal digits"},
		{"shop " + good[:63] + " secret", "must be 64 hexadecimal digits"},
		{"shop " + good[:63] + "g secret", "must be 64 hexadecimal digits"},
		{"shop " + hash("") + " secret", "that of nothing"},
		{"shop " + good + " public", "the third word of shop"},
		{"shop " + good + " secret colour=red", "unknown word"},
		{"shop " + good + " secret calls", "calls= of shop: must be a number"},
		{"shop " + good + " secret calls=0", "must be a number above 0"},
		{"shop " + good + " secret calls=-1", "must be a number above 0"},
		{"shop " + good + " secret cost=NaN", "cost= of shop: must be a number"},
		{"shop " + good + " secret cost=Inf", "must be a number"},
		{"shop " + good + " secret calls=1e9", "up to 1e+08"},
		{"shop " + good + " secret calls=1 calls=2", "says calls= twice"},
		{"shop " + good + " secret origins=https://shop.example", "is secret and cannot have origins="},
		{"shop " + good + " publishable calls=1", "needs origins="},
		{"shop " + good + " publishable calls=1 origins=", "needs origins="},
		{"shop " + good + " publishable origins=https://shop.example", "needs calls="},
		{"shop " + good + pages + "*", "bound to no page"},
		{"shop " + good + pages + "shop.example", "no origin"},
		{"first " + good + " secret", "line 2: the name first stands in line 1 already"},
		{"second " + hash("first") + " secret", "line 2: the key of second stands in line 1 already"},
	} {
		_, err := readKeys([]byte("first " + hash("first") + " secret\n" + c.line + "\n"))
		if err == nil || !strings.Contains(err.Error(), c.say) || !strings.Contains(err.Error(), "line 2: ") {
			t.Errorf("%s: %v, want %q", c.line, err, c.say)
		}
	}
	// All faults at once, and none repeats what may be a key.
	_, err := readKeys([]byte("shop knitmath_KEY secret\nknitmath_KEY a b\nshop secret knitmath_KEY\nshop " + good + " secret knitmath_KEY"))
	if err == nil || strings.Count(err.Error(), "line ") != 4 || strings.Contains(err.Error(), "KEY") {
		t.Errorf("%v", err)
	}
	var many strings.Builder
	for i := range maxKeys + 1 {
		name := "k" + strings.Repeat("x", i%30) + "-" + hex.EncodeToString([]byte{byte(i >> 8), byte(i)})
		many.WriteString(name + " " + hash(name) + " secret\n")
	}
	if _, err := readKeys([]byte(many.String())); err == nil || err.Error() != "there are 1001 keys; at most 1000" {
		t.Errorf("%v", err)
	}
}

// Hashes that differ in a single bit are not the same.
func TestEveryBitOfAHashCounts(t *testing.T) {
	sum := sha256.Sum256([]byte("key"))
	w := wordsOf(sum)
	if w.same(wordsOf(sum)) != 1 {
		t.Error("a hash is not the same as itself")
	}
	for bit := range 8 * len(sum) {
		other := sum
		other[bit/8] ^= 1 << (bit % 8)
		if w.same(wordsOf(other)) != 0 {
			t.Errorf("bit %d does not count", bit)
		}
	}
}

func TestNewKey(t *testing.T) {
	text, line, err := NewKey("shop-server")
	if err != nil {
		t.Fatal(err)
	}
	other, _, err := NewKey("shop-server")
	if err != nil || other == text || len(text) != len(keyPrefix)+43 {
		t.Errorf("%q and %q: %v", text, other, err)
	}
	found, err := readKeys([]byte(line))
	if k := found.find(text); err != nil || k == nil || k.name != "shop-server" || k.publishable {
		t.Errorf("%s: %+v, %v", line, k, err)
	}
	_, line, err = NewKey(" shop-pages publishable calls=5 origins=https://shop.example ")
	if err != nil || !strings.HasSuffix(line, " publishable calls=5 origins=https://shop.example") {
		t.Errorf("%q, %v", line, err)
	}
	for _, words := range []string{"", "Shop", "shop publishable", "shop sec\nret", "a\nb"} {
		if _, line, err := NewKey(words); err == nil {
			t.Errorf("%q: %s", words, line)
		}
	}
}

func FuzzKeyFile(f *testing.F) {
	f.Add("shop " + hash("a") + " secret calls=1\n# x\nb " + hash("b") + " publishable origins=https://*.a.b:8080 calls=2")
	f.Fuzz(func(t *testing.T, file string) {
		found, err := readKeys([]byte(file))
		if err != nil {
			return
		}
		for _, k := range found.all {
			if !nameForm.MatchString(k.name) || k.publishable && (k.origins.Empty() || k.origins.All || k.rates.Calls <= 0) {
				t.Errorf("%+v", k)
			}
			newLimit(k.rates)
		}
	})
}
