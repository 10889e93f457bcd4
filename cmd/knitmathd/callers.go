package main

import (
	"flag"
	"fmt"
	"io"

	"example.com/knitmath/service"
	"example.com/knitmath/service/caller"
)

// callerFlags say who may call. None of them is set by default.
func callerFlags(flags *flag.FlagSet, c *service.Config) {
	flags.StringVar(&c.TLS.Cert, "tls-cert", "",
		"PEM `file` of the certificate for gRPC and JSON, and those between it and its root; with it both speak TLS alone")
	flags.StringVar(&c.TLS.Key, "tls-key", "", "PEM `file` of the certificate's private key")
	flags.StringVar(&c.TLS.ClientCA, "tls-client-ca", "",
		"PEM `file` of roots; with it callers must show a certificate that one of them signed")
	who := &c.Callers
	*who = caller.Default
	flags.StringVar(&who.Keys, "api-keys", "",
		"`file` of the SHA-256 of keys, a line each (README says how); with it callers must show a key")
	flags.BoolVar(&who.Keyless, "keyless", false, "with -api-keys: callers without a key may call too")
	flags.StringVar(&who.PageKey, "page-key", "", "with -api-keys: the publishable `key` that the service's own pages ask with")
	flags.StringVar(&c.FramedBy, "framed-by", "",
		"`origins` whose pages may show the service's own pages in a frame, such as https://shop.example; * for all")
	flags.StringVar(&who.Origins, "allowed-origins", "",
		"`origins` whose pages may read answers, such as https://shop.example,https://*.shop.example; * for all")
	flags.Float64Var(&who.AddressRate, "address-rate", 0,
		"`calls` a second for each address without a secret key, ten seconds' worth at once; 0 for no limit")
	flags.Float64Var(&who.AddressCost, "address-cost", 0, "`steps` of work a second, likewise")
	flags.StringVar(&who.Proxies, "trusted-proxies", "",
		"`networks` of the proxies in front, such as 10.0.0.0/8, whose word is taken for the address of a call")
	flags.StringVar(&who.ProxyHeader, "proxy-header", who.ProxyHeader, "`header` in which they say it: X-Forwarded-For or Forwarded")
}

// makeKey prints a new key and its line for the file. They go different ways, so
// that the line can be appended to the file and the key stays out of it.
func makeKey(words string, stdout, stderr io.Writer) int {
	key, line, err := caller.NewKey(words)
	if err != nil {
		_, _ = fmt.Fprintf(stderr, "knitmathd: -new-key: %v\n", err)
		return exitUsage
	}
	_, _ = fmt.Fprintln(stderr, "the key, which is shown this once:", key)
	_, _ = fmt.Fprintln(stdout, line)
	return 0
}
