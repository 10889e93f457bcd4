// Package tlstest makes certificates for tests, which nobody else trusts.
package tlstest

import (
	"crypto/ecdsa"
	"crypto/elliptic"
	"crypto/rand"
	"crypto/tls"
	"crypto/x509"
	"crypto/x509/pkix"
	"encoding/pem"
	"math/big"
	"net"
	"testing"
	"time"
)

// Authority signs certificates.
type Authority struct {
	tb   testing.TB
	cert *x509.Certificate
	key  *ecdsa.PrivateKey
	// PEM is its own certificate.
	PEM []byte
}

// NewAuthority makes one that lives for a day.
func NewAuthority(tb testing.TB) *Authority {
	tb.Helper()
	a := &Authority{tb: tb, key: newKey(tb)}
	a.cert = &x509.Certificate{
		SerialNumber: serial(tb), Subject: pkix.Name{CommonName: "knitmath tests"},
		NotBefore: time.Now().Add(-48 * time.Hour), NotAfter: time.Now().Add(24 * time.Hour),
		IsCA: true, BasicConstraintsValid: true, KeyUsage: x509.KeyUsageCertSign,
	}
	a.PEM = a.sign(a.cert, a.key)
	return a
}

// Issue makes a certificate for 127.0.0.1 and localhost, for servers and clients
// alike, that expires after so long.
func (a *Authority) Issue(lives time.Duration) (certPEM, keyPEM []byte) {
	a.tb.Helper()
	key := newKey(a.tb)
	certPEM = a.sign(&x509.Certificate{
		SerialNumber: serial(a.tb), Subject: pkix.Name{CommonName: "a test"},
		NotBefore: time.Now().Add(-24 * time.Hour), NotAfter: time.Now().Add(lives),
		KeyUsage:    x509.KeyUsageDigitalSignature,
		ExtKeyUsage: []x509.ExtKeyUsage{x509.ExtKeyUsageServerAuth, x509.ExtKeyUsageClientAuth},
		DNSNames:    []string{"localhost"}, IPAddresses: []net.IP{net.IPv4(127, 0, 0, 1)},
	}, key)
	data, err := x509.MarshalPKCS8PrivateKey(key)
	if err != nil {
		a.tb.Fatal(err)
	}
	return certPEM, pem.EncodeToMemory(&pem.Block{Type: "PRIVATE KEY", Bytes: data})
}

// Client trusts the authority, and shows these certificates.
func (a *Authority) Client(shown ...tls.Certificate) *tls.Config {
	roots := x509.NewCertPool()
	roots.AppendCertsFromPEM(a.PEM)
	return &tls.Config{MinVersion: tls.VersionTLS12, RootCAs: roots, Certificates: shown}
}

// Pair is an issued certificate as a client shows it.
func (a *Authority) Pair() tls.Certificate {
	a.tb.Helper()
	pair, err := tls.X509KeyPair(a.Issue(time.Hour))
	if err != nil {
		a.tb.Fatal(err)
	}
	return pair
}

func (a *Authority) sign(what *x509.Certificate, of *ecdsa.PrivateKey) []byte {
	a.tb.Helper()
	data, err := x509.CreateCertificate(rand.Reader, what, a.cert, &of.PublicKey, a.key)
	if err != nil {
		a.tb.Fatal(err)
	}
	return pem.EncodeToMemory(&pem.Block{Type: "CERTIFICATE", Bytes: data})
}

func newKey(tb testing.TB) *ecdsa.PrivateKey {
	tb.Helper()
	key, err := ecdsa.GenerateKey(elliptic.P256(), rand.Reader)
	if err != nil {
		tb.Fatal(err)
	}
	return key
}

func serial(tb testing.TB) *big.Int {
	tb.Helper()
	n, err := rand.Int(rand.Reader, new(big.Int).Lsh(big.NewInt(1), 120))
	if err != nil {
		tb.Fatal(err)
	}
	return n
}
