// Package tlsfile makes the TLS of both public faces from files in PEM, which are
// read again when they change: the certificate with its key, and whose clients'
// certificates are asked for. Who a caller is within that is not known here.
package tlsfile

import (
	"crypto/tls"
	"crypto/x509"
	"encoding/pem"
	"errors"
	"fmt"
	"strings"
	"time"

	"github.com/prometheus/client_golang/prometheus"

	"example.com/knitmath/service/watched"
)

// Config names the files. Without a certificate there is no TLS.
type Config struct {
	// Cert and Key are the certificate, with those between it and its root after
	// it, and its private key.
	Cert, Key string
	// ClientCA holds the roots one of which must have signed a caller's certificate.
	// When it is empty, callers need none.
	ClientCA string
}

// On says whether there is TLS.
func (c Config) On() bool { return c.Cert != "" }

// Check finds what contradicts itself.
func (c Config) Check() error {
	switch {
	case c.Cert != "" && c.Key == "":
		return errors.New("-tls-cert needs -tls-key, the certificate's private key")
	case c.Cert == "" && c.Key != "":
		return errors.New("-tls-key needs -tls-cert, the key's certificate")
	case c.Cert == "" && c.ClientCA != "":
		return errors.New("-tls-client-ca needs -tls-cert and -tls-key: callers show certificates in TLS alone")
	}
	return nil
}

// Source is the TLS of the files as they were last found in order.
type Source struct {
	*watched.Value[material]
}

// material is what is made of the files.
type material struct {
	config *tls.Config
	// ends is when the first certificate of a kind expires.
	ends map[string]time.Time
}

// The kinds of certificates, as the metrics name them.
const (
	ofServer  = "server"
	ofClients = "client_ca"
)

// Open reads the files. There must be TLS.
func Open(c Config, told *watched.Reports, reg prometheus.Registerer) (*Source, error) {
	paths := []string{c.Cert, c.Key}
	if c.ClientCA != "" {
		paths = append(paths, c.ClientCA)
	}
	v, err := watched.Open("tls", told, read, paths...)
	if err != nil {
		return nil, err
	}
	s := &Source{v}
	return s, reg.Register(expiry{s})
}

// read makes a configuration of a certificate, its key, and roots if there are any.
func read(contents [][]byte) (material, error) {
	pair, err := tls.X509KeyPair(contents[0], contents[1])
	if err != nil {
		return material{}, errors.New(strings.TrimPrefix(err.Error(), "tls: ")) // Who reads it is told so before.
	}
	// One that nobody accepts any more must not replace one that somebody does.
	if ends := pair.Leaf.NotAfter; time.Now().After(ends) {
		return material{}, fmt.Errorf("the certificate expired at %s", ends.UTC().Format(time.RFC3339))
	}
	m := material{
		config: &tls.Config{MinVersion: tls.VersionTLS12, Certificates: []tls.Certificate{pair}},
		ends:   map[string]time.Time{ofServer: pair.Leaf.NotAfter},
	}
	if len(contents) == 2 {
		return m, nil
	}
	roots, ends, err := readRoots(contents[2])
	if err != nil {
		return material{}, err
	}
	m.config.ClientCAs = roots
	m.config.ClientAuth = tls.RequireAndVerifyClientCert
	// A session that is taken up again shows no certificate: it would outlive the
	// root that vouched for it.
	m.config.SessionTicketsDisabled = true
	m.ends[ofClients] = ends
	return m, nil
}

// readRoots reads certificates and refuses anything else: what is passed over in
// silence is missed when it is needed.
func readRoots(data []byte) (roots *x509.CertPool, ends time.Time, err error) {
	roots = x509.NewCertPool()
	for n := 1; ; n++ {
		var block *pem.Block
		if block, data = pem.Decode(data); block == nil {
			break
		}
		if block.Type != "CERTIFICATE" {
			return nil, ends, fmt.Errorf("the roots for clients: block %d is a %s; only certificates belong here", n, block.Type)
		}
		cert, err := x509.ParseCertificate(block.Bytes)
		if err != nil {
			return nil, ends, fmt.Errorf("the roots for clients: block %d: %w", n, err)
		}
		roots.AddCert(cert)
		if ends.IsZero() || cert.NotAfter.Before(ends) {
			ends = cert.NotAfter
		}
	}
	if ends.IsZero() {
		return nil, ends, errors.New("the roots for clients: no certificate in PEM")
	}
	return roots, ends, nil
}

// For is the configuration of a face that speaks these protocols. Every handshake
// takes the files as they are by then; connections keep what they began with.
func (s *Source) For(protocols ...string) *tls.Config {
	return &tls.Config{
		MinVersion: tls.VersionTLS12,
		NextProtos: protocols,
		GetConfigForClient: func(*tls.ClientHelloInfo) (*tls.Config, error) {
			config := s.Get().config.Clone()
			config.NextProtos = protocols
			return config, nil
		},
	}
}

// expiry is a metric: when certificates expire.
type expiry struct{ of *Source }

var expiryDesc = prometheus.NewDesc("knitmath_tls_certificate_expiry_timestamp_seconds",
	"When the certificate in use expires, or the first of the roots for clients.", []string{"what"}, nil)

func (e expiry) Describe(to chan<- *prometheus.Desc) { to <- expiryDesc }

func (e expiry) Collect(to chan<- prometheus.Metric) {
	for what, ends := range e.of.Get().ends {
		to <- prometheus.MustNewConstMetric(expiryDesc, prometheus.GaugeValue, float64(ends.Unix()), what)
	}
}
