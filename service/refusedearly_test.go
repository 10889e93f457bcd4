package service

import (
	"context"
	"net/http"
	"os"
	"testing"
	"time"

	dto "github.com/prometheus/client_model/go"
	"google.golang.org/grpc/status"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/service/caller"
)

// Over gRPC nothing is decoded, and no method told, for callers without a key.
func TestRefusedBeforeTheMessageIsDecoded(t *testing.T) {
	server, _ := withCallers(t, keyLine("server", "secret"), caller.Config{})
	malformed := &knitmathv1.ComputeCastOnRequest{}
	malformed.ProtoReflect().SetUnknown([]byte{0xff})
	for _, method := range []string{"/knitmath.v1.GaugeService/ComputeCastOn", "/knitmath.v1.GaugeService/None", "/none/None"} {
		err := server.conn.Invoke(t.Context(), method, malformed, &knitmathv1.ComputeCastOnResponse{})
		if reasonIn(status.Convert(err)) != "KEY_REQUIRED" {
			t.Errorf("%s: %v", method, err)
		}
	}
	list, err := server.registry.Gather()
	if err != nil {
		t.Fatal(err)
	}
	families := map[string]*dto.MetricFamily{}
	for _, f := range list {
		families[f.GetName()] = f
	}
	if n := value(families, "knitmath_refusals_total", "face", "grpc", "reason", "KEY_REQUIRED"); n != 3 {
		t.Errorf("%v refusals are counted, want 3", n)
	}
}

// A caller without a key hears so before sending a body, however long.
func TestRefusedBeforeTheBody(t *testing.T) {
	server, _ := withCallers(t, keyLine("server", "secret"), caller.Config{})
	ctx, cancel := context.WithTimeout(t.Context(), 10*time.Second)
	defer cancel()
	never, finish := neverEnding()
	defer finish()
	req, err := http.NewRequestWithContext(ctx, "POST", "http://"+server.HTTPAddr().String()+castOnPath, never)
	if err != nil {
		t.Fatal(err)
	}
	req.Header.Set("Content-Type", jsonType)
	resp, err := server.http.Do(req)
	if err != nil {
		t.Fatal(err)
	}
	defer func() { _ = resp.Body.Close() }()
	if resp.StatusCode != http.StatusUnauthorized {
		t.Errorf("HTTP %d", resp.StatusCode)
	}
}

// A call is judged once, although JSON passes through the interceptors of gRPC.
func TestCallsAreCountedOnce(t *testing.T) {
	server, _ := withCallers(t, keyLine("ten", "secret calls=1"), caller.Config{})
	for i := range 10 {
		if got := server.send(t, "POST", castOnPath, castOnBody, "x-api-key", "ten"); got.code != 200 {
			t.Fatalf("call %d: HTTP %d", i, got.code)
		}
	}
}

// neverEnding is a body of which nothing comes until it is finished.
func neverEnding() (body *os.File, finish func()) {
	read, write, err := os.Pipe()
	if err != nil {
		panic(err)
	}
	return read, func() { _ = write.Close() }
}
