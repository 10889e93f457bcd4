package service

import (
	"bytes"
	"encoding/binary"
	"io"
	"net/http"
	"runtime"
	"strconv"
	"testing"
	"time"

	"google.golang.org/grpc/codes"
)

// rawCall makes a gRPC call of any bytes, as no client library would, and returns
// the status it ended with, of which it wants there to be one.
func (r *running) rawCall(t *testing.T, path string, body []byte, header ...string) (codes.Code, http.Header) {
	t.Helper()
	h2 := new(http.Protocols)
	h2.SetUnencryptedHTTP2(true)
	client := &http.Client{Transport: &http.Transport{Protocols: h2}}
	defer client.CloseIdleConnections()
	req, err := http.NewRequestWithContext(t.Context(), http.MethodPost, "http://"+r.GRPCAddr().String()+path, bytes.NewReader(body))
	if err != nil {
		t.Fatal(err)
	}
	req.Header.Set("Content-Type", "application/grpc")
	req.Header.Set("Te", "trailers")
	for i := 0; i < len(header); i += 2 {
		req.Header.Set(header[i], header[i+1])
	}
	resp, err := client.Do(req)
	if err != nil {
		t.Fatalf("%s: %v", path, err)
	}
	defer resp.Body.Close()
	if _, err := io.Copy(io.Discard, resp.Body); err != nil {
		t.Fatalf("%s: %v", path, err)
	}
	said := resp.Trailer.Get("Grpc-Status")
	if said == "" { // Of an answer without a message it is a header.
		said = resp.Header.Get("Grpc-Status")
	}
	code, err := strconv.Atoi(said)
	if err != nil {
		t.Fatalf("%s: status %q", path, said)
	}
	for name, values := range resp.Trailer {
		resp.Header[name] = values
	}
	return codes.Code(code), resp.Header
}

// framed is a message as gRPC sends it.
func framed(compressed byte, message []byte) []byte {
	return append(binary.BigEndian.AppendUint32([]byte{compressed}, uint32(len(message))), message...)
}

// await waits for what happens beside the test, and fails if it does not.
func await(t *testing.T, what string, happened func() bool) {
	t.Helper()
	for end := time.Now().Add(20 * time.Second); !happened(); runtime.Gosched() {
		if time.Now().After(end) {
			t.Fatalf("never: %s", what)
		}
	}
}

// refusedSoFar is what the metrics say was refused.
func (r *running) refusedSoFar(t *testing.T, face, reason string) float64 {
	t.Helper()
	return value(gathered(t, r.registry), "knitmath_refusals_total", "face", face, "reason", reason)
}
