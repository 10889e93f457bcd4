package tlsfile

import (
	"bytes"
	"crypto/tls"
	"io"
	"log/slog"
	"net"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/prometheus/client_golang/prometheus"

	"example.com/knitmath/service/tlsfile/tlstest"
	"example.com/knitmath/service/watched"
)

// files are a pair and roots on disk.
type files struct {
	tb testing.TB
	Config
}

func newFiles(tb testing.TB) files {
	dir := tb.TempDir()
	return files{tb, Config{Cert: filepath.Join(dir, "cert"), Key: filepath.Join(dir, "key"), ClientCA: filepath.Join(dir, "ca")}}
}

// write replaces a file at once.
func (f files) write(path string, data []byte) {
	f.tb.Helper()
	if err := os.WriteFile(path+".new", data, 0o600); err != nil {
		f.tb.Fatal(err)
	}
	if err := os.Rename(path+".new", path); err != nil {
		f.tb.Fatal(err)
	}
}

func (f files) pair(cert, key []byte) {
	f.write(f.Cert, cert)
	f.write(f.Key, key)
}

func (f files) open() (*Source, *prometheus.Registry, error) {
	f.tb.Helper()
	reg := prometheus.NewRegistry()
	told, err := watched.NewReports(slog.New(slog.DiscardHandler), reg)
	if err != nil {
		f.tb.Fatal(err)
	}
	s, err := Open(f.Config, told, reg)
	return s, reg, err
}

// serve greets everybody who shakes hands.
func serve(tb testing.TB, s *Source) string {
	tb.Helper()
	l, err := tls.Listen("tcp", "127.0.0.1:0", s.For("h2", "http/1.1"))
	if err != nil {
		tb.Fatal(err)
	}
	var all sync.WaitGroup
	all.Go(func() {
		for {
			conn, err := l.Accept()
			if err != nil {
				return
			}
			all.Go(func() {
				_, _ = io.WriteString(conn, "hello") // A handshake that fails is the other side's test.
				_ = conn.Close()
			})
		}
	})
	tb.Cleanup(func() {
		_ = l.Close()
		all.Wait()
	})
	return l.Addr().String()
}

// greet is the certificate that greeted and the protocol, or why nobody did.
func greet(addr string, with *tls.Config) (cert []byte, protocol string, resumed bool, err error) {
	dialer := net.Dialer{Timeout: 10 * time.Second}
	conn, err := tls.DialWithDialer(&dialer, "tcp", addr, with)
	if err != nil {
		return nil, "", false, err
	}
	defer func() { _ = conn.Close() }()
	// In TLS 1.3 a certificate that is missing is complained of after the handshake.
	if _, err := io.ReadAll(conn); err != nil {
		return nil, "", false, err
	}
	state := conn.ConnectionState()
	return state.PeerCertificates[0].Raw, state.NegotiatedProtocol, state.DidResume, nil
}

func lookTwice(s *Source) {
	s.Look()
	s.Look()
}

func TestNewPairIsTakenAndABrokenOneIsNot(t *testing.T) {
	authority, f := tlstest.NewAuthority(t), newFiles(t)
	f.ClientCA = ""
	f.pair(authority.Issue(time.Hour))
	s, _, err := f.open()
	if err != nil {
		t.Fatal(err)
	}
	addr, client := serve(t, s), authority.Client()
	client.NextProtos = []string{"h2"}
	first, protocol, _, err := greet(addr, client)
	if err != nil || protocol != "h2" {
		t.Fatalf("%v, protocol %q", err, protocol)
	}
	cert, key := authority.Issue(time.Hour)
	f.write(f.Cert, cert) // whose key is not there yet
	lookTwice(s)
	if now, _, _, err := greet(addr, client); err != nil || !bytes.Equal(now, first) {
		t.Errorf("half a pair was taken: %v", err)
	}
	f.write(f.Key, key)
	lookTwice(s)
	second, _, _, err := greet(addr, client)
	if err != nil || bytes.Equal(second, first) {
		t.Errorf("the new pair was not taken: %v", err)
	}
	f.pair(authority.Issue(-time.Hour)) // expired
	lookTwice(s)
	if now, _, _, err := greet(addr, client); err != nil || !bytes.Equal(now, second) {
		t.Errorf("an expired pair was taken: %v", err)
	}
}

func TestClientsShowCertificates(t *testing.T) {
	ours, theirs, f := tlstest.NewAuthority(t), tlstest.NewAuthority(t), newFiles(t)
	f.pair(ours.Issue(time.Hour))
	f.write(f.ClientCA, ours.PEM)
	s, _, err := f.open()
	if err != nil {
		t.Fatal(err)
	}
	addr := serve(t, s)
	mine, foreign := ours.Pair(), theirs.Pair()
	refused := func(what string, with *tls.Config) {
		t.Helper()
		if _, _, _, err := greet(addr, with); err == nil {
			t.Errorf("%s was let in", what)
		}
	}
	client := ours.Client(mine)
	client.ClientSessionCache = tls.NewLRUClientSessionCache(1)
	for range 2 {
		if _, _, resumed, err := greet(addr, client); err != nil || resumed {
			t.Errorf("%v, resumed: %v", err, resumed)
		}
	}
	refused("nobody", ours.Client())
	refused("a stranger", ours.Client(foreign))

	f.write(f.ClientCA, theirs.PEM)
	lookTwice(s)
	refused("whom another root vouched for", client)
	if _, _, _, err := greet(addr, ours.Client(foreign)); err != nil {
		t.Errorf("the new roots were not taken: %v", err)
	}
	f.write(f.ClientCA, nil)
	lookTwice(s)
	refused("anybody, once the roots were empty", ours.Client())
	if _, _, _, err := greet(addr, ours.Client(foreign)); err != nil {
		t.Errorf("the roots from before were not kept: %v", err)
	}
}

func TestOldVersionsAreRefused(t *testing.T) {
	authority, f := tlstest.NewAuthority(t), newFiles(t)
	f.ClientCA = ""
	f.pair(authority.Issue(time.Hour))
	s, _, err := f.open()
	if err != nil {
		t.Fatal(err)
	}
	client := authority.Client()
	client.MinVersion, client.MaxVersion = tls.VersionTLS10, tls.VersionTLS11
	if _, _, _, err := greet(serve(t, s), client); err == nil {
		t.Error("TLS 1.1 was let in")
	}
}

func TestExpiryIsAMetric(t *testing.T) {
	authority, f := tlstest.NewAuthority(t), newFiles(t)
	f.pair(authority.Issue(time.Hour))
	f.write(f.ClientCA, authority.PEM)
	_, reg, err := f.open()
	if err != nil {
		t.Fatal(err)
	}
	families, err := reg.Gather()
	if err != nil {
		t.Fatal(err)
	}
	within := map[string]time.Duration{}
	for _, family := range families {
		if family.GetName() == "knitmath_tls_certificate_expiry_timestamp_seconds" {
			for _, m := range family.GetMetric() {
				within[m.GetLabel()[0].GetValue()] = time.Until(time.Unix(int64(m.GetGauge().GetValue()), 0)).Round(time.Hour)
			}
		}
	}
	if len(within) != 2 || within["server"] != time.Hour || within["client_ca"] != 24*time.Hour {
		t.Errorf("%v", within)
	}
}

func TestOpenRefuses(t *testing.T) {
	authority := tlstest.NewAuthority(t)
	cert, key := authority.Issue(time.Hour)
	_, otherKey := authority.Issue(time.Hour)
	expired, expiredKey := authority.Issue(-time.Hour)
	for _, c := range []struct {
		what          string
		cert, key, ca []byte
		say           string
	}{
		{"a good set", cert, key, authority.PEM, ""},
		{"another's key", cert, otherKey, authority.PEM, "private key does not match"},
		{"no PEM", []byte("-----"), key, authority.PEM, "failed to find any PEM data"},
		{"an expired one", expired, expiredKey, authority.PEM, "expired at"},
		{"no roots", cert, key, []byte("\n"), "no certificate in PEM"},
		{"a key among roots", cert, key, key, "block 1 is a PRIVATE KEY"},
		{"half a root", cert, key, bytes.Replace(authority.PEM, []byte("MII"), []byte("MIA"), 1), "block 1"},
	} {
		f := newFiles(t)
		f.pair(c.cert, c.key)
		f.write(f.ClientCA, c.ca)
		_, _, err := f.open()
		if (err == nil) != (c.say == "") || err != nil && !strings.Contains(err.Error(), c.say) ||
			err != nil && strings.Count(err.Error(), "tls:") != 1 {
			t.Errorf("%s: %v, want %q", c.what, err, c.say)
		}
	}
}

func TestContradictions(t *testing.T) {
	for say, c := range map[string]Config{
		"-tls-cert needs -tls-key": {Cert: "c"}, "-tls-key needs -tls-cert": {Key: "k"}, "-tls-client-ca needs -tls-cert": {ClientCA: "ca"},
	} {
		if err := c.Check(); err == nil || !strings.Contains(err.Error(), say) {
			t.Errorf("%+v: %v, want %q", c, err, say)
		}
	}
	for _, c := range []Config{{}, {Cert: "c", Key: "k"}, {Cert: "c", Key: "k", ClientCA: "ca"}} {
		if err := c.Check(); err != nil || c.On() != (c.Cert != "") {
			t.Errorf("%+v: %v", c, err)
		}
	}
}
