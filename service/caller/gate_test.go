package caller

import (
	"fmt"
	"log/slog"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/synctest"

	"github.com/prometheus/client_golang/prometheus"

	"example.com/knitmath/service/watched"
)

// theKeys are the file of most tests; the key of each is its name.
var theKeys = strings.Join([]string{
	"server " + hash("server") + " secret",
	"small " + hash("small") + " secret calls=1 cost=100",
	"rich " + hash("rich") + " secret cost=100000",
	"pages " + hash("pages") + " publishable calls=2 origins=https://shop.example,https://*.shop.example",
}, "\n")

type testGate struct {
	*Gate
	tb   testing.TB
	reg  *prometheus.Registry
	file string
}

// open makes a gate with a file of keys, or without one for "".
func open(tb testing.TB, file string, c Config) *testGate {
	tb.Helper()
	g := &testGate{tb: tb, reg: prometheus.NewRegistry()}
	if file != "" {
		g.file = filepath.Join(tb.TempDir(), "keys")
		c.Keys = g.file
		g.write(file)
	}
	told, err := watched.NewReports(slog.New(slog.DiscardHandler), g.reg)
	if err != nil {
		tb.Fatal(err)
	}
	if g.Gate, err = Open(c, told, g.reg); err != nil {
		tb.Fatal(err)
	}
	return g
}

// write replaces the file of keys.
func (g *testGate) write(file string) {
	g.tb.Helper()
	if err := os.WriteFile(g.file, []byte(file), 0o600); err != nil {
		g.tb.Fatal(err)
	}
}

// call is a call from a peer with headers, by name and value.
func call(peer string, header ...string) Presented {
	values := map[string][]string{}
	for i := 0; i < len(header); i += 2 {
		values[header[i]] = append(values[header[i]], header[i+1])
	}
	return Presented{Peer: peer, Header: func(name string) []string { return values[name] }}
}

// verdict is the name of who calls, or the reason of the refusal.
func verdict(c *Caller, r *Refusal) string {
	if r != nil {
		return r.Reason
	}
	return c.Name
}

const peer = "198.51.100.1:4711"

func TestJudge(t *testing.T) {
	needed := open(t, theKeys, Config{})
	mixed := open(t, theKeys, Config{Keyless: true, AddressRate: 1000})
	for _, c := range []struct {
		header         []string
		needed, public string // the verdicts where a key is needed, and where not
	}{
		{nil, KeyRequired, Public},
		{[]string{"authorization", "Bearer server"}, "server", "server"},
		{[]string{"authorization", "bEARER   server"}, "server", "server"},
		{[]string{"x-api-key", "server"}, "server", "server"},
		{[]string{"x-api-key", "nobody"}, KeyUnknown, KeyUnknown},
		{[]string{"x-api-key", ""}, KeyUnknown, KeyUnknown},
		{[]string{"x-api-key", hash("server")}, KeyUnknown, KeyUnknown},
		{[]string{"x-api-key", " server"}, KeyUnknown, KeyUnknown},
		{[]string{"x-api-key", "server,server"}, KeyUnknown, KeyUnknown},
		{[]string{"x-api-key", strings.Repeat("s", 16<<10)}, KeyUnknown, KeyUnknown},
		{[]string{"authorization", ""}, KeyMalformed, KeyMalformed},
		{[]string{"authorization", "Bearer"}, KeyUnknown, KeyUnknown},
		{[]string{"authorization", "Bearer "}, KeyUnknown, KeyUnknown},
		{[]string{"authorization", "Bearer\tserver"}, KeyMalformed, KeyMalformed},
		{[]string{"authorization", "server"}, KeyMalformed, KeyMalformed},
		{[]string{"authorization", "Basic server"}, KeyMalformed, KeyMalformed},
		// Two keys are no key, whatever they are.
		{[]string{"x-api-key", "server", "x-api-key", "server"}, KeyMalformed, KeyMalformed},
		{[]string{"x-api-key", "server", "authorization", "Bearer server"}, KeyMalformed, KeyMalformed},
		{[]string{"x-api-key", "", "authorization", "Bearer server"}, KeyMalformed, KeyMalformed},
		{[]string{"authorization", "Bearer nobody", "authorization", "Bearer server"}, KeyMalformed, KeyMalformed},
		// A page's key is good for its pages, a secret one wherever it is kept.
		{[]string{"x-api-key", "pages", "origin", "https://shop.example"}, "pages", "pages"},
		{[]string{"x-api-key", "pages", "origin", "https://en.shop.example"}, "pages", "pages"},
		{[]string{"x-api-key", "pages", "origin", "https://other.example"}, OriginNotAllowed, OriginNotAllowed},
		{[]string{"x-api-key", "pages", "origin", "null"}, OriginNotAllowed, OriginNotAllowed},
		{[]string{"x-api-key", "pages"}, OriginNotAllowed, OriginNotAllowed},
		{[]string{"x-api-key", "pages", "origin", "https://shop.example", "origin", "https://other.example"}, OriginNotAllowed, OriginNotAllowed},
		{[]string{"x-api-key", "server", "origin", "https://other.example"}, "server", "server"},
	} {
		if got := verdict(needed.Judge(call(peer, c.header...))); got != c.needed {
			t.Errorf("%.80q where a key is needed: %s, want %s", c.header, got, c.needed)
		}
		if got := verdict(mixed.Judge(call(peer, c.header...))); got != c.public {
			t.Errorf("%.80q where not: %s, want %s", c.header, got, c.public)
		}
	}
	document := call(peer, "x-api-key", "nobody")
	document.Document = true
	if got := verdict(needed.Judge(document)); got != Public {
		t.Errorf("a document: %s", got)
	}
}

func TestNoGate(t *testing.T) {
	if g := open(t, "", Config{}); g.Gate != nil {
		t.Error("there is a gate where nothing is asked for")
	}
	if r := Of(t.Context()).Spend(1 << 40); r != nil {
		t.Errorf("%v", r)
	}
}

func TestKeysAreReadAgain(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		g := open(t, theKeys, Config{})
		ask := func(key string) string { return verdict(g.Judge(call(peer, "x-api-key", key))) }
		again := func(file string) {
			g.write(file)
			for range 2 {
				g.Files()[0].Look()
			}
		}
		for range 10 {
			ask("small")
		}
		again(theKeys + "\nnew " + hash("new") + " secret")
		if got := ask("new"); got != "new" {
			t.Errorf("a new key: %s", got)
		}
		if got := ask("small"); got != RateLimited {
			t.Errorf("a key that did not change has a fresh start: %s", got)
		}
		again(strings.Replace(theKeys, "calls=1 ", "calls=3 ", 1))
		if got := ask("new"); got != KeyUnknown {
			t.Errorf("a key that was taken away: %s", got)
		}
		if got := ask("small"); got != "small" {
			t.Errorf("a key with a new bound: %s", got)
		}
		again("small " + hash("small") + " secret\nserver")
		if got := ask("server"); got != "server" {
			t.Errorf("after a broken file: %s", got)
		}
		again("")
		if got := ask("server"); got != KeyUnknown {
			t.Errorf("after the file was emptied: %s", got)
		}
	})
}

func TestAllowOrigin(t *testing.T) {
	g := open(t, theKeys, Config{Origins: "https://knit.example"})
	for origin, want := range map[string]bool{
		"https://knit.example": true, "https://shop.example": true, "https://a.shop.example": true, "https://other.example": false, "null": false,
	} {
		if got := g.AllowOrigin(origin); got != want {
			t.Errorf("%s: %v", origin, got)
		}
	}
}

// BenchmarkFind looks up the first and the last key of a full file, and none. The
// three must take as long as one another.
func BenchmarkFind(b *testing.B) {
	var file strings.Builder
	for i := range maxKeys {
		fmt.Fprintf(&file, "k%d %s secret\n", i, hash(fmt.Sprint("k", i)))
	}
	found, err := readKeys([]byte(file.String()))
	if err != nil {
		b.Fatal(err)
	}
	for _, text := range []string{"k0", "k999", "none"} {
		b.Run(text, func(b *testing.B) {
			for b.Loop() {
				found.find(text)
			}
		})
	}
}

// The key of the service's own pages is one of the file, and publishable: also in a
// file that is read again.
func TestPageKey(t *testing.T) {
	for key, say := range map[string]string{"pages": "", "none": "not in the file", "server": "secret key server"} {
		file := filepath.Join(t.TempDir(), "keys")
		if err := os.WriteFile(file, []byte(theKeys), 0o600); err != nil {
			t.Fatal(err)
		}
		told, err := watched.NewReports(slog.New(slog.DiscardHandler), prometheus.NewRegistry())
		if err != nil {
			t.Fatal(err)
		}
		_, err = Open(Config{Keys: file, PageKey: key}, told, prometheus.NewRegistry())
		if (err == nil) != (say == "") || err != nil && !strings.Contains(err.Error(), say) {
			t.Errorf("%s: %v, want %q", key, err, say)
		}
	}
}
