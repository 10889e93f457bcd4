package caller

import (
	"errors"
	"fmt"
	"net/netip"
	"strings"
)

// Config says who may call. The zero value lets everybody.
type Config struct {
	// Keys names the file of keys. With it a key is needed.
	Keys string
	// Keyless lets those call too who have none.
	Keyless bool
	// PageKey is the publishable key that the service's own pages ask with. Its line
	// must allow the origin at which the service is reached.
	PageKey string
	// Origins are the pages whose browsers may read answers, with commas between
	// them. Pages that publishable keys are bound to are allowed by that alone.
	Origins string
	// AddressRate is how many calls a second an address may make that shows no
	// secret key, and AddressCost how many steps of work. 0 bounds nothing.
	AddressRate, AddressCost float64
	// Proxies are the addresses and networks of those whose ProxyHeader is believed.
	Proxies     string
	ProxyHeader string
}

// Default is what everybody begins with.
var Default = Config{ProxyHeader: "X-Forwarded-For"}

// On says whether there is anything to judge.
func (c Config) On() bool { return c.Keys != "" || c.Origins != "" || c.AddressRate > 0 }

// CORS says whether pages of other origins may read answers at all.
func (c Config) CORS() bool { return c.Keys != "" || c.Origins != "" }

// Check finds what cannot be read and what contradicts itself.
func (c Config) Check() error {
	_, err := c.read()
	return err
}

// reading is a configuration that has been read.
type reading struct {
	origins Origins
	proxies []netip.Prefix
}

func (c Config) read() (reading, error) {
	var r reading
	var faults []error
	wrong := func(is bool, text string) {
		if is {
			faults = append(faults, errors.New(text))
		}
	}
	var err error
	if r.origins, err = ReadOrigins(c.Origins); err != nil {
		faults = append(faults, fmt.Errorf("-allowed-origins: %w", err))
	}
	if r.proxies, err = readProxies(c.Proxies); err != nil {
		faults = append(faults, fmt.Errorf("-trusted-proxies: %w", err))
	}
	header := strings.ToLower(c.ProxyHeader)
	bounded := c.AddressRate > 0
	wrong(!inRange(c.AddressRate), fmt.Sprintf("-address-rate must be from 0 to %g", float64(maxRate)))
	wrong(!inRange(c.AddressCost), fmt.Sprintf("-address-cost must be from 0 to %g", float64(maxRate)))
	wrong(header != "" && header != headerXForwardedFor && header != headerForwarded, "-proxy-header must be X-Forwarded-For or Forwarded")
	wrong(c.PageKey != "" && c.Keys == "", "-page-key goes with -api-keys: without keys the pages need none")
	wrong(c.Keyless && c.Keys == "", "-keyless allows what nothing forbids; it goes with -api-keys")
	wrong(c.Keyless && c.Keys != "" && !bounded, "-keyless needs -address-rate: nothing else bounds those without a key")
	wrong(c.AddressCost > 0 && !bounded, "-address-cost needs -address-rate")
	wrong(c.Proxies != "" && !bounded, "-trusted-proxies needs -address-rate: for nothing else does it matter whose address a call has")
	wrong(header == headerForwarded && c.Proxies == "", "-proxy-header needs -trusted-proxies: nobody else's header is read")
	wrong(r.origins.All && c.Keys != "" && !c.Keyless,
		"-allowed-origins * goes with -api-keys only where -keyless does: "+
			"a publishable key is bound to the pages in its own line, and no page may hold a secret one")
	return r, errors.Join(faults...)
}

func inRange(rate float64) bool { return rate >= 0 && rate <= maxRate }
