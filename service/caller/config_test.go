package caller

import (
	"math"
	"strings"
	"testing"
)

func TestContradictions(t *testing.T) {
	for _, c := range []struct {
		Config
		say string
	}{
		{Config{Keyless: true}, "-keyless allows what nothing forbids"},
		{Config{Keyless: true, Keys: "keys"}, "-keyless needs -address-rate"},
		{Config{PageKey: "pages"}, "-page-key goes with -api-keys"},
		{Config{AddressCost: 1}, "-address-cost needs -address-rate"},
		{Config{AddressRate: -1}, "-address-rate must be from 0"},
		{Config{AddressRate: math.NaN()}, "-address-rate must be from 0"},
		{Config{AddressRate: 1e9}, "-address-rate must be from 0 to 1e+08"},
		{Config{AddressRate: 1, AddressCost: math.Inf(1)}, "-address-cost must be from 0"},
		{Config{Proxies: "10.0.0.0/8"}, "-trusted-proxies needs -address-rate"},
		{Config{Proxies: "0.0.0.0/0", AddressRate: 1}, "-trusted-proxies: a proxy anywhere"},
		{Config{Proxies: "10.0.0.0/8", AddressRate: 1, ProxyHeader: "X-Real-IP"}, "-proxy-header must be"},
		{Config{AddressRate: 1, ProxyHeader: "Forwarded"}, "-proxy-header needs -trusted-proxies"},
		{Config{Origins: "shop.example"}, "-allowed-origins: "},
		{Config{Origins: "*", Keys: "keys"}, "-allowed-origins * goes with -api-keys only"},
	} {
		if err := c.Check(); err == nil || !strings.Contains(err.Error(), c.say) {
			t.Errorf("%+v: %v, want %q", c.Config, err, c.say)
		}
	}
	// All at once.
	err := Config{Keyless: true, Proxies: "here", Origins: "there"}.Check()
	if err == nil || strings.Count(err.Error(), "\n") != 3 {
		t.Errorf("%v", err)
	}
	for _, c := range []Config{
		{}, Default,
		{Keys: "keys"}, {Origins: "*"}, {Origins: "*", Keys: "keys", Keyless: true, AddressRate: 1},
		{AddressRate: 0.1, AddressCost: 5, Proxies: "10.0.0.0/8,fd00::1", ProxyHeader: "forwarded"},
	} {
		if err := c.Check(); err != nil {
			t.Errorf("%+v: %v", c, err)
		}
	}
}
