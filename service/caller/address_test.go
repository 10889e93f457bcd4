package caller

import (
	"fmt"
	"net/netip"
	"strings"
	"sync"
	"testing"
)

// What a call from peer with this header counts for, when 10/8 and fd00::/8 are
// trusted.
func TestClientBehindProxies(t *testing.T) {
	trusted, err := readProxies("10.0.0.0/8, fd00::/8,192.0.2.7")
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		header, peer string
		values       []string
		want         string
	}{
		{"x-forwarded-for", "198.51.100.1", nil, "198.51.100.1"},
		// Nobody else is believed.
		{"x-forwarded-for", "198.51.100.1", []string{"203.0.113.9"}, "198.51.100.1"},
		{"x-forwarded-for", "192.0.2.8", []string{"203.0.113.9"}, "192.0.2.8"},
		{"x-forwarded-for", "10.0.0.1", nil, "10.0.0.1"},
		{"x-forwarded-for", "10.0.0.1", []string{""}, "10.0.0.1"},
		{"x-forwarded-for", "10.0.0.1", []string{"203.0.113.9"}, "203.0.113.9"},
		{"x-forwarded-for", "192.0.2.7", []string{"203.0.113.9"}, "203.0.113.9"},
		{"x-forwarded-for", "::ffff:10.0.0.1", []string{"203.0.113.9"}, "203.0.113.9"},
		{"x-forwarded-for", "fd00::1%eth0", []string{"203.0.113.9"}, "203.0.113.9"},
		// What the caller has written stands to the left.
		{"x-forwarded-for", "10.0.0.1", []string{"1.1.1.1, 203.0.113.9"}, "203.0.113.9"},
		{"x-forwarded-for", "10.0.0.1", []string{"1.1.1.1", "203.0.113.9"}, "203.0.113.9"},
		{"x-forwarded-for", "10.0.0.1", []string{"1.1.1.1, 203.0.113.9, 10.0.0.2 ,10.0.0.3"}, "203.0.113.9"},
		{"x-forwarded-for", "10.0.0.1", []string{"10.9.9.9, 203.0.113.9"}, "203.0.113.9"},
		// Everybody on the way is trusted.
		{"x-forwarded-for", "10.0.0.1", []string{"10.0.0.3, 10.0.0.2"}, "10.0.0.3"},
		// Ports and other forms.
		{"x-forwarded-for", "10.0.0.1", []string{"203.0.113.9:4711"}, "203.0.113.9"},
		{"x-forwarded-for", "10.0.0.1", []string{"[2001:db8::1]:4711"}, "2001:db8::1"},
		{"x-forwarded-for", "10.0.0.1", []string{"[2001:db8::1]"}, "2001:db8::1"},
		{"x-forwarded-for", "10.0.0.1", []string{"2001:db8::1"}, "2001:db8::1"},
		{"x-forwarded-for", "10.0.0.1", []string{"::ffff:203.0.113.9"}, "203.0.113.9"},
		// No address: the last that is known.
		{"x-forwarded-for", "10.0.0.1", []string{"203.0.113.9, unknown"}, "10.0.0.1"},
		{"x-forwarded-for", "10.0.0.1", []string{"203.0.113.9, , 10.0.0.2"}, "10.0.0.2"},
		{"x-forwarded-for", "10.0.0.1", []string{"203.0.113.9, 10.0.0.999"}, "10.0.0.1"},
		{"x-forwarded-for", "10.0.0.1", []string{strings.Repeat(",", 9000)}, "10.0.0.1"},
		{"x-forwarded-for", "10.0.0.1", []string{"203.0.113.9" + strings.Repeat(",10.0.0.5", 9000)}, "10.0.0.5"},

		{"forwarded", "10.0.0.1", []string{"for=203.0.113.9"}, "203.0.113.9"},
		{"forwarded", "10.0.0.1", []string{`for=1.1.1.1, proto=https;For="203.0.113.9:80";by=10.0.0.1`}, "203.0.113.9"},
		{"forwarded", "10.0.0.1", []string{`for="[2001:db8::1]:4711"`}, "2001:db8::1"},
		{"forwarded", "10.0.0.1", []string{"for=203.0.113.9, for=_hidden"}, "10.0.0.1"},
		{"forwarded", "10.0.0.1", []string{"for=203.0.113.9, proto=https"}, "10.0.0.1"},
		{"forwarded", "10.0.0.1", []string{"for=1.1.1.1;for=203.0.113.9"}, "10.0.0.1"},
		{"forwarded", "198.51.100.1", []string{"for=203.0.113.9"}, "198.51.100.1"},
		// A quote that the caller has left open.
		{"forwarded", "10.0.0.1", []string{`for="1.1.1.1, for=203.0.113.9`}, "203.0.113.9"},
	} {
		peer, _ := readAddress(c.peer)
		if got := (proxies{c.header, trusted}).client(peer, c.values); got.String() != c.want {
			t.Errorf("%s from %s with %.60q: %s, want %s", c.header, c.peer, c.values, got, c.want)
		}
	}
}

func TestProxiesRefuse(t *testing.T) {
	for list, say := range map[string]string{
		"10.0.0.0/33": "neither", "proxy.example": "neither", "10.0.0.0/8,": "neither", " ": "neither",
		"0.0.0.0/0": "choose an address", "::/0": "choose an address", "::ffff:10.0.0.0/104": "written as IPv4",
	} {
		if _, err := readProxies(list); err == nil || !strings.Contains(err.Error(), say) {
			t.Errorf("%q: %v, want %q", list, err, say)
		}
	}
	if none, err := readProxies(""); err != nil || none != nil {
		t.Errorf("%v, %v", none, err)
	}
}

func TestHouseholds(t *testing.T) {
	for _, c := range []struct {
		a, b string
		same bool
	}{
		{"2001:db8::1", "2001:db8:0:0:ffff::2", true},
		{"2001:db8::1", "2001:db8:0:1::1", false},
		{"198.51.100.1", "198.51.100.1", true},
		{"198.51.100.1", "198.51.100.2", false},
		{"::ffff:198.51.100.1", "198.51.100.1", true},
		{"fe80::1%a", "fe80::2%b", true},
		{"", "garbage", true},
	} {
		a, _ := readAddress(c.a)
		b, _ := readAddress(c.b)
		if same := household(a) == household(b); same != c.same {
			t.Errorf("%q and %q: %v", c.a, c.b, same)
		}
	}
}

// number is the n-th address there is.
func number(n int) netip.Addr {
	return netip.AddrFrom4([4]byte{byte(n >> 24), byte(n >> 16), byte(n >> 8), byte(n)})
}

func TestAddressesAreForgotten(t *testing.T) {
	a, err := newAddresses(proxies{}, Rates{Calls: 1}, 3)
	if err != nil {
		t.Fatal(err)
	}
	first := a.of(number(0))
	a.of(number(1))
	a.of(number(2))
	if a.of(number(0)) != first {
		t.Error("the first was forgotten while there was room")
	}
	a.of(number(3)) // number 1 has not called for longest
	if a.of(number(0)) != first || a.known.Len() != 3 || a.known.Contains(number(1)) {
		t.Error("not the one was forgotten that has not called for longest")
	}
}

// Calls of one address at once are counted together.
func TestOneLimitAnAddress(t *testing.T) {
	for range 2000 {
		a, err := newAddresses(proxies{}, Rates{Calls: 1}, 8)
		if err != nil {
			t.Fatal(err)
		}
		var got [4]*limit
		var all sync.WaitGroup
		begin := make(chan struct{})
		for i := range got {
			all.Go(func() {
				<-begin
				got[i] = a.of(number(7))
			})
		}
		close(begin)
		all.Wait()
		if got != [4]*limit{got[0], got[0], got[0], got[0]} {
			t.Fatal("two limits for one address")
		}
	}
}

// BenchmarkAddresses asks for addresses of which most have been forgotten.
func BenchmarkAddresses(b *testing.B) {
	for _, different := range []int{1, maxAddresses, 1_000_000} {
		b.Run(fmt.Sprint(different), func(b *testing.B) {
			a, err := newAddresses(proxies{}, Rates{1, 1}, maxAddresses)
			if err != nil {
				b.Fatal(err)
			}
			b.ReportAllocs()
			n := 0
			for b.Loop() {
				a.of(number(n))
				n = (n + 1) % different
			}
		})
	}
}

func FuzzClient(f *testing.F) {
	f.Add("forwarded", `for="1.1.1.1, for=203.0.113.9`)
	f.Add("x-forwarded-for", "1.1.1.1, 203.0.113.9:80,[::1]:2")
	trusted, err := readProxies("10.0.0.0/8")
	if err != nil {
		f.Fatal(err)
	}
	// Whatever a caller writes, behind what the proxy adds it changes nothing.
	f.Fuzz(func(t *testing.T, header, said string) {
		last := "203.0.113.9"
		if header == headerForwarded {
			last = "for=203.0.113.9"
		}
		got := (proxies{header, trusted}).client(netip.MustParseAddr("10.0.0.1"), []string{said, last})
		if got.String() != "203.0.113.9" {
			t.Errorf("%q: %s", said, got)
		}
	})
}
