package caller

import (
	"errors"
	"fmt"
	"net/netip"
	"strings"

	lru "github.com/hashicorp/golang-lru/v2"
)

// The headers in which proxies say whose call they pass on. Only one of them is
// believed, the one that the proxies in front are known to write: the other one
// comes through them as the caller has made it up.
const (
	headerXForwardedFor = "x-forwarded-for"
	headerForwarded     = "forwarded"
)

// maxHops is how many entries of that header are looked at.
const maxHops = 20

// proxies are whose word is taken for an address.
type proxies struct {
	header  string
	trusted []netip.Prefix
}

// readProxies reads addresses and networks with commas between them.
func readProxies(list string) (trusted []netip.Prefix, err error) {
	for _, text := range strings.Split(list, ",") {
		text = strings.TrimSpace(text)
		if text == "" && list == "" {
			return nil, nil
		}
		network, err := netip.ParsePrefix(text)
		if err != nil {
			var one netip.Addr
			if one, err = netip.ParseAddr(text); err != nil {
				return nil, fmt.Errorf("%q is neither an address nor a network such as 10.0.0.0/8", text)
			}
			network = netip.PrefixFrom(one, one.BitLen())
		}
		if network.Addr().Is4In6() {
			return nil, fmt.Errorf("%q must be written as IPv4", text)
		}
		if network.Bits() == 0 {
			return nil, errors.New("a proxy anywhere would let every caller choose an address; name the networks of your own")
		}
		trusted = append(trusted, network.Masked())
	}
	return trusted, nil
}

func (p proxies) trust(addr netip.Addr) bool {
	for _, network := range p.trusted {
		if network.Contains(addr) {
			return true
		}
	}
	return false
}

// client is whose call it is that came from peer: going back from there, the first
// address that is not a proxy's. What stands before it in the header was written by
// whoever calls, and is not read. Where an entry is no address the last one that
// was known has to do.
//
// The entries are taken from the right without regard to quotes, since a quote that
// a caller has left open would swallow what the proxy wrote after it.
func (p proxies) client(peer netip.Addr, header []string) netip.Addr {
	client := peer
	entries := strings.Join(header, ",")
	for hops := 0; hops < maxHops && entries != "" && p.trust(client); hops++ {
		var last string
		if i := strings.LastIndexByte(entries, ','); i >= 0 {
			entries, last = entries[:i], entries[i+1:]
		} else {
			entries, last = "", entries
		}
		if p.header == headerForwarded {
			last = forwardedFor(last)
		}
		addr, ok := readAddress(last)
		if !ok {
			break
		}
		client = addr
	}
	return client
}

// forwardedFor is the "for" of an element of the Forwarded header (RFC 7239), ""
// when there is none, or more than one.
func forwardedFor(element string) (node string) {
	for _, pair := range strings.Split(element, ";") {
		name, value, _ := strings.Cut(pair, "=")
		if !strings.EqualFold(strings.TrimSpace(name), "for") {
			continue
		}
		if node != "" {
			return ""
		}
		node = strings.Trim(strings.TrimSpace(value), `"`)
	}
	return node
}

// readAddress reads an address, with or without a port.
func readAddress(text string) (netip.Addr, bool) {
	text = strings.TrimSpace(text)
	if with, err := netip.ParseAddrPort(text); err == nil {
		return plain(with.Addr()), true
	}
	if bare, ok := strings.CutPrefix(text, "["); ok {
		text = strings.TrimSuffix(bare, "]")
	}
	addr, err := netip.ParseAddr(text)
	return plain(addr), err == nil
}

func plain(addr netip.Addr) netip.Addr { return addr.Unmap().WithZone("") }

// household is what one subscriber has: an address of IPv4, or the 2^64 of IPv6
// that share its first half.
func household(addr netip.Addr) netip.Addr {
	if !addr.Is6() {
		return addr
	}
	network, err := addr.Prefix(64)
	if err != nil {
		return addr
	}
	return network.Addr()
}

// maxAddresses is how many addresses are remembered. Of more, those that have not
// called for longest are forgotten: after a million of them 28 MiB were held.
const maxAddresses = 1 << 16

// addresses are the limits of callers who are known by nothing else.
type addresses struct {
	proxies
	rates Rates
	known *lru.Cache[netip.Addr, *limit]
}

func newAddresses(from proxies, rates Rates, size int) (*addresses, error) {
	known, err := lru.New[netip.Addr, *limit](size)
	return &addresses{from, rates, known}, err
}

// of is the limit of an address. Two calls at once get the same one.
func (a *addresses) of(client netip.Addr) *limit {
	at := household(client)
	if l, ok := a.known.Get(at); ok {
		return l
	}
	l := newLimit(a.rates)
	if earlier, ok, _ := a.known.PeekOrAdd(at, l); ok {
		return earlier
	}
	return l
}
