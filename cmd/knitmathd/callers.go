package main

import (
	"flag"

	"example.com/knitmath/service"
)

// callerFlags say who may call. None of them is set by default.
func callerFlags(flags *flag.FlagSet, c *service.Config) {
	flags.StringVar(&c.TLS.Cert, "tls-cert", "",
		"PEM `file` of the certificate for gRPC and JSON, and those between it and its root; with it both speak TLS alone")
	flags.StringVar(&c.TLS.Key, "tls-key", "", "PEM `file` of the certificate's private key")
	flags.StringVar(&c.TLS.ClientCA, "tls-client-ca", "",
		"PEM `file` of roots; with it callers must show a certificate that one of them signed")
}
