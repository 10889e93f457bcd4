package service

import (
	"bytes"
	"crypto/tls"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/credentials"
	"google.golang.org/grpc/credentials/insecure"
	"google.golang.org/grpc/status"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/service/tlsfile"
	"example.com/knitmath/service/tlsfile/tlstest"
)

// withTLS starts a server with a pair of the authority's, and asks for callers'
// certificates when it is to.
func withTLS(t *testing.T, authority *tlstest.Authority, mutual bool) (*running, tlsfile.Config) {
	t.Helper()
	dir := t.TempDir()
	files := tlsfile.Config{Cert: filepath.Join(dir, "cert"), Key: filepath.Join(dir, "key")}
	putPair(t, files, authority)
	if mutual {
		files.ClientCA = filepath.Join(dir, "ca")
		if err := os.WriteFile(files.ClientCA, authority.PEM, 0o600); err != nil {
			t.Fatal(err)
		}
	}
	return startWith(t, func(c *Config) { c.TLS = files }), files
}

func putPair(t *testing.T, files tlsfile.Config, authority *tlstest.Authority) {
	t.Helper()
	cert, key := authority.Issue(time.Hour)
	for path, data := range map[string][]byte{files.Cert: cert, files.Key: key} {
		if err := os.WriteFile(path, data, 0o600); err != nil {
			t.Fatal(err)
		}
	}
}

// askGRPC asks for a cast-on over a connection of its own.
func askGRPC(t *testing.T, server *running, creds credentials.TransportCredentials) error {
	t.Helper()
	conn, err := grpc.NewClient(server.GRPCAddr().String(), grpc.WithTransportCredentials(creds))
	if err != nil {
		t.Fatal(err)
	}
	defer func() { _ = conn.Close() }()
	_, err = knitmathv1.NewGaugeServiceClient(conn).ComputeCastOn(t.Context(), &knitmathv1.ComputeCastOnRequest{
		Gauge: &knitmathv1.Gauge{Stitches: 22, Rows: 30}, WidthCm: new(50.0)})
	return err
}

// askJSON does the same over JSON, by HTTP/2 where the other side offers it.
func askJSON(t *testing.T, server *running, scheme string, config *tls.Config) (*http.Response, error) {
	t.Helper()
	client := &http.Client{Transport: &http.Transport{TLSClientConfig: config.Clone(), ForceAttemptHTTP2: true}, Timeout: 10 * time.Second}
	defer client.CloseIdleConnections()
	resp, err := client.Post(scheme+"://"+server.HTTPAddr().String()+castOnPath, jsonType, strings.NewReader(castOnBody))
	if err == nil {
		_ = resp.Body.Close()
	}
	return resp, err
}

func TestBothFacesSpeakTLSAlone(t *testing.T) {
	authority := tlstest.NewAuthority(t)
	server, _ := withTLS(t, authority, false)
	client := authority.Client()
	if err := askGRPC(t, server, credentials.NewTLS(client)); err != nil {
		t.Errorf("gRPC: %v", err)
	}
	resp, err := askJSON(t, server, "https", client)
	if err != nil || resp.StatusCode != http.StatusOK || resp.ProtoMajor != 2 {
		t.Errorf("JSON: %v %v", resp, err)
	}
	client.NextProtos = []string{"http/1.1"}
	if resp, err := askJSON(t, server, "https", client); err != nil || resp.StatusCode != http.StatusOK {
		t.Errorf("JSON over HTTP/1.1: %v %v", resp, err)
	}
	if err := askGRPC(t, server, insecure.NewCredentials()); status.Code(err) != codes.Unavailable {
		t.Errorf("gRPC without TLS: %v", err)
	}
	if resp, err := askJSON(t, server, "http", client); err == nil && resp.StatusCode != http.StatusBadRequest {
		t.Errorf("JSON without TLS: %v", resp)
	}
	if got := server.sendTo(t, server.AdminAddr().String(), "GET", "/readyz", ""); got.code != http.StatusOK {
		t.Errorf("admin: HTTP %d", got.code)
	}
}

func TestBothFacesAskForCertificates(t *testing.T) {
	authority := tlstest.NewAuthority(t)
	server, _ := withTLS(t, authority, true)
	for _, c := range []struct {
		who  string
		with *tls.Config
		in   bool
	}{
		{"nobody", authority.Client(), false},
		{"a stranger", authority.Client(tlstest.NewAuthority(t).Pair()), false},
		{"a friend", authority.Client(authority.Pair()), true},
	} {
		if err := askGRPC(t, server, credentials.NewTLS(c.with)); (err == nil) != c.in {
			t.Errorf("%s over gRPC: %v", c.who, err)
		}
		if _, err := askJSON(t, server, "https", c.with); (err == nil) != c.in {
			t.Errorf("%s over JSON: %v", c.who, err)
		}
	}
}

// While pairs are replaced, new connections on both faces get one or the other.
func TestNewPairUnderCalls(t *testing.T) {
	authority := tlstest.NewAuthority(t)
	server, files := withTLS(t, authority, false)
	before := shownBy(t, server, authority)
	replaced := make(chan struct{})
	go func() {
		defer close(replaced)
		for range 5 {
			putPair(t, files, authority)
			for _, f := range server.files {
				f.Look()
				f.Look()
			}
		}
	}()
	for done := false; !done; {
		select {
		case <-replaced:
			done = true
		default:
		}
		if err := askGRPC(t, server, credentials.NewTLS(authority.Client())); err != nil {
			t.Fatalf("gRPC: %v", err)
		}
		if _, err := askJSON(t, server, "https", authority.Client()); err != nil {
			t.Fatalf("JSON: %v", err)
		}
	}
	if bytes.Equal(before, shownBy(t, server, authority)) {
		t.Error("the pair was not replaced")
	}
}

// shownBy is the certificate that the JSON face shows.
func shownBy(t *testing.T, server *running, authority *tlstest.Authority) []byte {
	t.Helper()
	resp, err := askJSON(t, server, "https", authority.Client())
	if err != nil {
		t.Fatal(err)
	}
	return resp.TLS.PeerCertificates[0].Raw
}
