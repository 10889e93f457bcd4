package caller

import (
	"cmp"
	"strings"

	"github.com/prometheus/client_golang/prometheus"

	"example.com/knitmath/service/watched"
)

// Gate judges calls.
type Gate struct {
	keys      *watched.Value[keys] // nil: none are asked for
	keyless   bool                 // those without a key may call too
	pageKey   string               // what the service's own pages show, if anything
	origins   Origins
	cors      bool
	addresses *addresses // nil: calls are counted by no address
	figures   *figures
}

// Open reads the file of keys, if there is one. Without anything to judge by there
// is no gate, nil.
func Open(c Config, told *watched.Reports, reg prometheus.Registerer) (*Gate, error) {
	r, err := c.read()
	if err != nil || !c.On() {
		return nil, err
	}
	g := &Gate{keyless: c.Keyless, pageKey: c.PageKey, origins: r.origins, cors: c.CORS()}
	if g.figures, err = newFigures(reg); err != nil {
		return nil, err
	}
	if c.AddressRate > 0 {
		from := proxies{strings.ToLower(cmp.Or(c.ProxyHeader, Default.ProxyHeader)), r.proxies}
		if g.addresses, err = newAddresses(from, Rates{c.AddressRate, c.AddressCost}, maxAddresses); err != nil {
			return nil, err
		}
		if err := reg.Register(g.addresses.metric()); err != nil {
			return nil, err
		}
	}
	if c.Keys != "" {
		if g.keys, err = watched.Open("api_keys", told, g.keyReader(), c.Keys); err != nil {
			return nil, err
		}
	}
	return g, nil
}

// Files are what is read again when it changes.
func (g *Gate) Files() []watched.Looker {
	if g.keys == nil {
		return nil
	}
	return []watched.Looker{g.keys}
}

// keyReader reads the file of keys. A key that is bounded as it was before keeps
// what it has used up: a change of one line must not give all the others a fresh
// start.
func (g *Gate) keyReader() func([][]byte) (keys, error) {
	limits := map[string]*limit{}
	rates := map[string]Rates{}
	return func(contents [][]byte) (keys, error) {
		found, err := readKeys(contents[0])
		if err == nil {
			err = found.checkPageKey(g.pageKey)
		}
		if err != nil {
			return found, err
		}
		before, ratesBefore := limits, rates
		limits, rates = map[string]*limit{}, map[string]Rates{}
		for i := range found.all {
			k := &found.all[i]
			if k.limit = before[k.name]; k.limit == nil || ratesBefore[k.name] != k.rates {
				k.limit = newLimit(k.rates)
			}
			limits[k.name], rates[k.name] = k.limit, k.rates
			k.tally = g.figures.of(k.name)
		}
		return found, nil
	}
}

// Presented is what a call shows of its caller.
type Presented struct {
	// Header are the values of a header, or of metadata, by its name in small letters.
	Header func(name string) []string
	// Peer is the other end of the connection, as the network package writes it.
	Peer string
	// Document says that no question is asked but something that is for everybody.
	Document bool
}

// Judge says whose call it is and, if it goes no further, why.
func (g *Gate) Judge(p Presented) (*Caller, *Refusal) {
	c := &Caller{Name: Public, tally: g.figures.public}
	if g.keys != nil && !p.Document {
		k, refused := g.keyOf(p)
		if refused != nil {
			if address := g.address(p); address != nil {
				// Whoever guesses keys asks no less than others do.
				if after := take(address.calls, 1); after > 0 {
					refused = rateLimited(after)
				}
			}
			g.figures.calls.WithLabelValues(Unknown, refused.Reason).Inc()
			c.Name = Unknown
			return c, refused
		}
		if k != nil {
			c.Name, c.tally = k.name, k.tally
			c.limits = append(c.limits, k.limit)
		}
		if k != nil && !k.publishable {
			return c.admit()
		}
		if k != nil && !allows(k.origins, p.Header("origin")) {
			return c, c.tally.refuse(&refusedOrigin)
		}
	}
	// A page's key is no secret: whoever took it is one of many with that key.
	if address := g.address(p); address != nil {
		c.limits = append(c.limits, address)
	}
	return c.admit()
}

// address bounds the caller's address, nil where calls are counted by none.
func (g *Gate) address(p Presented) *limit {
	if g.addresses == nil {
		return nil
	}
	peer, _ := readAddress(p.Peer)
	return g.addresses.of(g.addresses.client(peer, p.Header(g.addresses.header)))
}

// keyOf is the key that a call shows, nil when it shows none and need not.
func (g *Gate) keyOf(p Presented) (*key, *Refusal) {
	authorization, plain := p.Header("authorization"), p.Header("x-api-key")
	switch len(authorization) + len(plain) {
	case 0:
		if g.keyless {
			return nil, nil
		}
		return nil, &refusedKeyless
	case 1:
	default:
		return nil, &refusedTwoKeys
	}
	text := strings.Join(plain, "")
	if len(authorization) == 1 {
		scheme, token, _ := strings.Cut(authorization[0], " ")
		if !strings.EqualFold(scheme, "bearer") {
			return nil, &refusedScheme
		}
		text = strings.TrimLeft(token, " ")
	}
	if text == "" || len(text) > maxKeyLength {
		return nil, &refusedUnknown
	}
	if k := g.keys.Get().find(text); k != nil {
		return k, nil
	}
	return nil, &refusedUnknown
}

// allows says whether a call comes from a page that may make it. Whoever is no
// browser can say what it likes; that a key is not secret is why it is bounded.
func allows(o Origins, said []string) bool { return len(said) == 1 && o.Allow(said[0]) }

// CORS says whether pages of other origins may read answers at all.
func (g *Gate) CORS() bool { return g.cors }

// AllowOrigin says whether a page of this origin may read answers: one of those
// that are allowed, or one that a publishable key is bound to.
func (g *Gate) AllowOrigin(origin string) bool {
	if g.origins.Allow(origin) {
		return true
	}
	if g.keys != nil {
		for _, k := range g.keys.Get().all { // Secret ones have no origins.
			if k.origins.Allow(origin) {
				return true
			}
		}
	}
	return false
}
