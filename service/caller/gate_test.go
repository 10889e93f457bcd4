package caller

import (
	"fmt"
	"log/slog"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/synctest"
	"time"

	"github.com/prometheus/client_golang/prometheus"
	dto "github.com/prometheus/client_model/go"

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

// What each may ask, by the clock of the test.
func TestRates(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		g := open(t, theKeys, Config{Keyless: true, AddressRate: 0.5})
		many := func(n int, p Presented) (in int, last *Refusal) {
			for range n {
				if _, r := g.Judge(p); r != nil {
					last = r
				} else {
					in++
				}
			}
			return in, last
		}
		small := call(peer, "x-api-key", "small")
		if in, r := many(15, small); in != 10 || r == nil || r.Reason != RateLimited || r.Kind != Limited ||
			(r.After-time.Second).Abs() > time.Microsecond {
			t.Errorf("calls=1: %d let in, %+v", in, r)
		}
		if in, _ := many(1000, call(peer, "x-api-key", "server")); in != 1000 {
			t.Errorf("without calls=: %d let in", in)
		}
		<-time.After(3 * time.Second)
		if in, _ := many(15, small); in != 3 {
			t.Errorf("after 3 s %d let in", in)
		}
		if in, r := many(10, call(peer)); in != 5 || (r.After-2*time.Second).Abs() > time.Microsecond {
			t.Errorf("an address: %d let in, %+v", in, r)
		}
		if in, _ := many(10, call("198.51.100.1:4712", "x-forwarded-for", "203.0.113.1")); in != 0 {
			t.Errorf("the same address by another port and with a header of its own: %d let in", in)
		}
		if in, _ := many(10, call("198.51.100.2:1")); in != 5 {
			t.Errorf("another address: %d let in", in)
		}
		guess := func() Presented { return call("198.51.100.3:1", "x-api-key", "a guess") }
		for i, want := range []string{KeyUnknown, KeyUnknown, KeyUnknown, KeyUnknown, KeyUnknown, RateLimited} {
			if _, r := g.Judge(guess()); r == nil || r.Reason != want {
				t.Errorf("guess %d: %+v, want %s", i, r, want)
			}
		}
		if in, _ := many(1, call("198.51.100.3:1", "x-api-key", "server")); in != 1 {
			t.Error("a right key waits for the wrong ones of its address")
		}
		// A page's key is bounded by address within what the key may: 20 at first.
		page := func(address string) Presented {
			return call(address, "x-api-key", "pages", "origin", "https://shop.example")
		}
		for i, want := range []int{5, 5, 5, 5, 0} {
			if in, _ := many(100, page(fmt.Sprintf("[2001:db8:0:%d::1]:1", i))); in != want {
				t.Errorf("visitor %d: %d let in, want %d", i, in, want)
			}
		}
	})
}

func TestCost(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		g := open(t, theKeys, Config{})
		small, _ := g.Judge(call(peer, "x-api-key", "small")) // 100 a second, 1,000 at first
		if r := small.Spend(900); r != nil {
			t.Error(r)
		}
		if r := small.Spend(200); r == nil || r.Reason != BudgetSpent || (r.After-time.Second).Abs() > time.Microsecond {
			t.Errorf("%+v", r)
		}
		if r := small.Spend(100); r != nil {
			t.Errorf("what was refused was taken: %v", r)
		}
		<-time.After(9 * time.Second)
		// Dearer than can ever be saved up: all of it.
		if r := small.Spend(1 << 40); r == nil {
			t.Error("a budget that is not full was enough for everything")
		}
		<-time.After(time.Second)
		if r := small.Spend(1 << 40); r != nil {
			t.Error(r)
		}
		if r := small.Spend(0); r != nil {
			t.Errorf("for nothing: %v", r)
		}
		// A slip that is dearer than any question that is worked costs no more than one.
		rich, _ := g.Judge(call(peer, "x-api-key", "rich")) // 1,000,000 at first
		for i := range 11 {
			if r := rich.Spend(1 << 40); (r == nil) != (i < 10) {
				t.Errorf("slip %d: %v", i, r)
			}
		}
		server, _ := g.Judge(call(peer, "x-api-key", "server"))
		if r := server.Spend(1 << 40); r != nil {
			t.Error(r)
		}
	})
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

// The series of every caller are there from the start, and no other ever is.
func TestFigures(t *testing.T) {
	g := open(t, theKeys, Config{})
	read := func() map[string]float64 {
		families, err := g.reg.Gather()
		if err != nil {
			t.Fatal(err)
		}
		all := map[string]float64{}
		for _, f := range families {
			if strings.HasPrefix(f.GetName(), "knitmath_caller_") {
				for _, m := range f.GetMetric() {
					all[labels(m)] = m.GetCounter().GetValue()
				}
			}
		}
		return all
	}
	before := read()
	if n := len(before); n != 5*5+4 { // 5 callers with 4 verdicts and a cost, and 4 verdicts on unknown ones
		t.Errorf("%d series: %v", n, before)
	}
	for _, key := range []string{"small", "a", "b", "pages"} {
		if c, r := g.Judge(call(peer, "x-api-key", key)); r == nil {
			if r := c.Spend(7); r != nil {
				t.Error(r)
			}
		}
	}
	after := read()
	if len(after) != len(before) {
		t.Errorf("%d series became %d", len(before), len(after))
	}
	for series, want := range map[string]float64{
		"small ADMITTED": 1, "small": 7, "unknown KEY_UNKNOWN": 2, "pages ORIGIN_NOT_ALLOWED": 1, "server ADMITTED": 0,
	} {
		if got := after[series]; got != want {
			t.Errorf("%s: %v, want %v", series, got, want)
		}
	}
}

func labels(m *dto.Metric) string {
	var values []string
	for _, l := range m.GetLabel() {
		values = append(values, l.GetValue())
	}
	return strings.Join(values, " ")
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
