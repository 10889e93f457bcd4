package service

import (
	"context"
	"crypto/sha256"
	"encoding/hex"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"google.golang.org/genproto/googleapis/rpc/errdetails"
	"google.golang.org/grpc/codes"
	healthv1 "google.golang.org/grpc/health/grpc_health_v1"
	"google.golang.org/grpc/metadata"
	reflectionv1 "google.golang.org/grpc/reflection/grpc_reflection_v1"
	"google.golang.org/grpc/status"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/service/caller"
)

// keyLine is a line of the file of keys; the key is the name.
func keyLine(name, rest string) string {
	sum := sha256.Sum256([]byte(name))
	return name + " " + hex.EncodeToString(sum[:]) + " " + rest + "\n"
}

// withCallers starts a server with these keys, none for "".
func withCallers(t *testing.T, keys string, c caller.Config) (server *running, file string) {
	t.Helper()
	if keys != "" {
		file = filepath.Join(t.TempDir(), "keys")
		putFile(t, file, keys)
		c.Keys = file
	}
	return startWith(t, func(config *Config) { config.Callers = c }), file
}

func putFile(t *testing.T, path, data string) {
	t.Helper()
	if err := os.WriteFile(path, []byte(data), 0o600); err != nil {
		t.Fatal(err)
	}
}

// askWith asks for a cast-on over gRPC with metadata, by name and value.
func askWith(t *testing.T, server *running, md ...string) error {
	t.Helper()
	ctx := metadata.AppendToOutgoingContext(t.Context(), md...)
	_, err := knitmathv1.NewGaugeServiceClient(server.conn).ComputeCastOn(ctx, &knitmathv1.ComputeCastOnRequest{
		Gauge: &knitmathv1.Gauge{Stitches: 22, Rows: 30}, WidthCm: new(50.0)})
	return err
}

// reasonIn is the reason of a status, "" of what is answered.
func reasonIn(st *status.Status) string {
	for _, d := range st.Details() {
		if info, ok := d.(*errdetails.ErrorInfo); ok {
			return info.GetReason()
		}
	}
	return ""
}

// Both faces judge alike.
func TestCallersAreJudgedOnBothFaces(t *testing.T) {
	document := readDocument(t)
	server, _ := withCallers(t, keyLine("server", "secret")+
		keyLine("pages", "publishable calls=5 origins=https://shop.example")+
		keyLine("once", "secret calls=0.001")+keyLine("poor", "secret cost=0.0001"), caller.Config{})
	if err := askWith(t, server, "x-api-key", "once"); err != nil {
		t.Fatal(err)
	}
	if err := askWith(t, server, "x-api-key", "poor"); err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		header []string
		code   codes.Code
		http   int
		reason string
	}{
		{nil, codes.Unauthenticated, 401, "KEY_REQUIRED"},
		{[]string{"authorization", "Bearer server"}, codes.OK, 200, ""},
		{[]string{"x-api-key", "server"}, codes.OK, 200, ""},
		{[]string{"x-api-key", "nobody"}, codes.Unauthenticated, 401, "KEY_UNKNOWN"},
		{[]string{"x-api-key", ""}, codes.Unauthenticated, 401, "KEY_UNKNOWN"},
		{[]string{"x-api-key", "server", "authorization", "Bearer server"}, codes.Unauthenticated, 401, "KEY_MALFORMED"},
		{[]string{"authorization", "Basic server"}, codes.Unauthenticated, 401, "KEY_MALFORMED"},
		{[]string{"x-api-key", "pages", "origin", "https://shop.example"}, codes.OK, 200, ""},
		{[]string{"x-api-key", "pages", "origin", "https://other.example"}, codes.PermissionDenied, 403, "ORIGIN_NOT_ALLOWED"},
		{[]string{"x-api-key", "once"}, codes.ResourceExhausted, 429, "RATE_LIMITED"},
		{[]string{"x-api-key", "poor"}, codes.ResourceExhausted, 429, "BUDGET_SPENT"},
	} {
		st := status.Convert(askWith(t, server, c.header...))
		if st.Code() != c.code || reasonIn(st) != c.reason {
			t.Errorf("%q over gRPC: %v %s, want %v %s", c.header, st.Code(), reasonIn(st), c.code, c.reason)
		}
		got := server.send(t, "POST", castOnPath, castOnBody, c.header...)
		if got.code != c.http {
			t.Errorf("%q over JSON: HTTP %d, want %d: %s", c.header, got.code, c.http, got.body)
		} else if c.http != 200 && (reasonIn(got.status(t)) != c.reason || got.header.Get("Cache-Control") != "no-store") {
			t.Errorf("%q over JSON: %s, want %s; %v", c.header, got.body, c.reason, got.header)
		}
		if c.http != 200 {
			known := document.Components.Schemas["ErrorInfo"].Properties["reason"].Known
			if misfit := document.misfit(t, "Status", got.body); misfit != "" || !slices.Contains(known, fault.Reason(c.reason)) {
				t.Errorf("%q: the document does not know %s: %s", c.header, got.body, misfit)
			}
		}
		if got.header.Get("Www-Authenticate") != map[int]string{401: challenge}[got.code] {
			t.Errorf("%q: WWW-Authenticate %q", c.header, got.header.Get("Www-Authenticate"))
		}
		if has := got.header.Get("Retry-After") != ""; has != (got.code == 429) {
			t.Errorf("%q: Retry-After %q", c.header, got.header.Get("Retry-After"))
		}
	}
	// A key in the question is no key.
	if got := server.send(t, "GET", castOnQuery+"&key=server&x-api-key=server", ""); got.code != 401 {
		t.Errorf("a key in the query string: HTTP %d", got.code)
	}
	log := server.log.String()
	if strings.Contains(log, "nobody") {
		t.Errorf("the log has a key:\n%s", log)
	}
	for _, line := range []string{
		"reason=KEY_UNKNOWN caller=unknown", "reason=ORIGIN_NOT_ALLOWED caller=pages", "reason=RATE_LIMITED caller=once",
	} {
		if strings.Count(log, line) != 2 && strings.Count(log, line) != 4 {
			t.Errorf("the log has not %q of both faces:\n%s", line, log)
		}
	}
}

// What is for everybody and what is not, where a key is needed.
func TestWhatNeedsNoKey(t *testing.T) {
	server, _ := withCallers(t, keyLine("server", "secret"), caller.Config{})
	for path, want := range map[string]int{"/": 200, "/openapi.json": 200, "/version": 200, "/none": 404, castOnQuery: 401, castOnPath: 401} {
		if got := server.send(t, "GET", path, ""); got.code != want {
			t.Errorf("%s: HTTP %d, want %d", path, got.code, want)
		}
	}
	if _, err := healthv1.NewHealthClient(server.conn).Check(t.Context(), &healthv1.HealthCheckRequest{}); err != nil {
		t.Errorf("health: %v", err)
	}
	list := func(ctx context.Context) error {
		stream, err := reflectionv1.NewServerReflectionClient(server.conn).ServerReflectionInfo(ctx)
		if err != nil {
			return err
		}
		_ = stream.Send(&reflectionv1.ServerReflectionRequest{ // What went wrong is what is received.
			MessageRequest: &reflectionv1.ServerReflectionRequest_ListServices{}})
		_, err = stream.Recv()
		return err
	}
	if err := list(t.Context()); status.Code(err) != codes.Unauthenticated {
		t.Errorf("reflection without a key: %v", err)
	}
	if err := list(metadata.AppendToOutgoingContext(t.Context(), "x-api-key", "server")); err != nil {
		t.Errorf("reflection: %v", err)
	}
}

func TestAddressesAreLimited(t *testing.T) {
	server, _ := withCallers(t, "", caller.Config{AddressRate: 0.001, Proxies: "127.0.0.0/8"})
	ask := func(forwarded string) int {
		return server.send(t, "POST", castOnPath, castOnBody, "x-forwarded-for", forwarded).code
	}
	for _, c := range []struct {
		forwarded string
		want      int
	}{
		{"203.0.113.1", 200}, {"203.0.113.1", 429}, {"9.9.9.9, 203.0.113.1", 429}, {"203.0.113.2", 200},
		{"2001:db8::1", 200}, {"2001:db8::2", 429}, {"2001:db8:0:1::2", 200},
	} {
		if got := ask(c.forwarded); got != c.want {
			t.Errorf("%s: HTTP %d, want %d", c.forwarded, got, c.want)
		}
	}
	// Over gRPC the same address is the same caller.
	if st := status.Convert(askWith(t, server, "x-forwarded-for", "203.0.113.2")); reasonIn(st) != "RATE_LIMITED" {
		t.Errorf("gRPC: %v", st)
	}
	if err := askWith(t, server, "x-forwarded-for", "203.0.113.3"); err != nil {
		t.Errorf("gRPC: %v", err)
	}
	for range 5 { // Probes are not bounded.
		if _, err := healthv1.NewHealthClient(server.conn).Check(t.Context(), &healthv1.HealthCheckRequest{}); err != nil {
			t.Errorf("health: %v", err)
		}
	}
}

// Keys change under calls: each is good for as long as it stands in the file.
func TestKeysChangeUnderCalls(t *testing.T) {
	keep := keyLine("keep", "secret")
	server, file := withCallers(t, keep, caller.Config{})
	changed := make(chan struct{})
	go func() {
		defer close(changed)
		for i := range 20 {
			text := keep
			if i%2 == 0 {
				text += keyLine("new", "secret")
			}
			putFile(t, file, text)
			for range 2 {
				server.files[0].Look()
			}
		}
	}()
	for done := false; !done; {
		select {
		case <-changed:
			done = true
		default:
		}
		if err := askWith(t, server, "x-api-key", "keep"); err != nil {
			t.Fatal(err)
		}
		if got := server.send(t, "POST", castOnPath, castOnBody, "x-api-key", "new"); got.code != 200 && got.code != 401 {
			t.Fatalf("HTTP %d", got.code)
		}
	}
	if got := server.send(t, "POST", castOnPath, castOnBody, "x-api-key", "new"); got.code != 401 {
		t.Errorf("after it was taken away: HTTP %d", got.code)
	}
}
