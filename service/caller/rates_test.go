package caller

import (
	"fmt"
	"strings"
	"testing"
	"testing/synctest"
	"time"

	dto "github.com/prometheus/client_model/go"
)

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

// What a refusal has sought is owed, though nothing is left.
func TestOwed(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		g := open(t, theKeys, Config{})
		small, _ := g.Judge(call(peer, "x-api-key", "small")) // 100 a second, 1,000 at first
		small.Owe(900)
		if r := small.Spend(100); r != nil {
			t.Error(r)
		}
		small.Owe(500)
		if r := small.Spend(100); r == nil || (r.After-6*time.Second).Abs() > time.Microsecond {
			t.Errorf("500 owed: %+v", r)
		}
		small.Owe(0)
		var nobody *Caller
		nobody.Owe(5)
	})
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
