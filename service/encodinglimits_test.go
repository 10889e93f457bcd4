package service

import (
	"bytes"
	"encoding/binary"
	"io"
	"math/rand/v2"
	"net/http"
	"runtime"
	"strings"
	"testing"
)

// What a body inflates to is bounded like a body.
func TestLargestCompressedBody(t *testing.T) {
	server := start(t)
	for extra, code := range map[int]int{0: 200, 1: 413} {
		body := castOnBody + strings.Repeat(" ", maxQuestionBytes-len(castOnBody)+extra)
		if got := server.send(t, "POST", castOnPath, compressed(t, body), "Content-Encoding", "gzip"); got.code != code {
			t.Errorf("HTTP %d for %d bytes", got.code, len(body))
		}
	}
	noise := make([]byte, 2*maxQuestionBytes)
	chance := rand.NewChaCha8([32]byte{})
	_, _ = chance.Read(noise)
	if got := server.send(t, "POST", castOnPath, compressed(t, string(noise)), "Content-Encoding", "gzip"); got.code != 413 {
		t.Errorf("HTTP %d for a body that is too long before it is inflated", got.code)
	}
}

// A bomb is a body that is short, and endless when it is inflated. It is refused
// by either face after no more of it than a question may have.
func TestBombs(t *testing.T) {
	server := start(t)
	bomb := []byte(compressed(t, strings.Repeat(" ", 60<<20)))
	if len(bomb) > maxQuestionBytes {
		t.Fatalf("%d bytes are no bomb", len(bomb))
	}
	const most = 8 << 20 // of memory, for what is read, its buffers and the reply
	var got reply
	used := allocated(func() { got = server.send(t, "POST", castOnPath, string(bomb), "Content-Encoding", "gzip") })
	if got.code != 413 || errorInfo(got.status(t)) != "BODY_TOO_LARGE" || used > most {
		t.Errorf("JSON: HTTP %d %s, %d bytes of memory", got.code, got.body, used)
	}
	// A gRPC client would have to hold the whole of it first, so this is the
	// protocol itself: one frame, flagged as compressed, with its length.
	frame := append(binary.BigEndian.AppendUint32([]byte{1}, uint32(len(bomb))), bomb...)
	transport := &http.Transport{Protocols: new(http.Protocols)}
	transport.Protocols.SetUnencryptedHTTP2(true)
	defer transport.CloseIdleConnections()
	req, err := http.NewRequestWithContext(t.Context(), "POST",
		"http://"+server.GRPCAddr().String()+"/knitmath.v1.GaugeService/ComputeCastOn", bytes.NewReader(frame))
	if err != nil {
		t.Fatal(err)
	}
	req.Header = http.Header{"Content-Type": {"application/grpc"}, "Te": {"trailers"}, "Grpc-Encoding": {"gzip"}}
	var code string
	used = allocated(func() {
		resp, err := transport.RoundTrip(req)
		if err != nil {
			t.Error(err)
			return
		}
		defer resp.Body.Close()
		if _, err := io.Copy(io.Discard, resp.Body); err != nil {
			t.Error(err)
		}
		code = resp.Header.Get("Grpc-Status") + resp.Trailer.Get("Grpc-Status")
	})
	if code != "8" || used > most { // RESOURCE_EXHAUSTED
		t.Errorf("gRPC: status %q, %d bytes of memory", code, used)
	}
}

// allocated is how much memory the whole process asks for while f runs.
func allocated(f func()) uint64 {
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	f()
	runtime.ReadMemStats(&after)
	return after.TotalAlloc - before.TotalAlloc
}
