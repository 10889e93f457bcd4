package service

import (
	"bytes"
	"compress/gzip"
	"context"
	"encoding/binary"
	"io"
	"maps"
	"math/rand/v2"
	"net/http"
	"runtime"
	"slices"
	"strings"
	"testing"

	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/credentials/insecure"
	grpcgzip "google.golang.org/grpc/encoding/gzip"
	"google.golang.org/grpc/stats"
	"google.golang.org/grpc/status"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

// A question with a long answer, beside castOnPath with its short one.
const (
	ringPath  = "/v1/short-row:planCircleOfWedges"
	ringQuery = ringPath + "?gauge.stitches=22&gauge.rows=30&outer_radius_cm=20&wedge_count=6"
	ringBody  = `{"gauge": {"stitches": 22, "rows": 30}, "outer_radius_cm": 20, "wedge_count": 6}`
)

func compressed(tb testing.TB, data string) string {
	tb.Helper()
	var out bytes.Buffer
	w := gzip.NewWriter(&out)
	if _, err := io.WriteString(w, data); err != nil {
		tb.Fatal(err)
	}
	if err := w.Close(); err != nil {
		tb.Fatal(err)
	}
	return out.String()
}

func inflated(tb testing.TB, data []byte) []byte {
	tb.Helper()
	r, err := gzip.NewReader(bytes.NewReader(data))
	if err != nil {
		tb.Fatal(err)
	}
	plain, err := io.ReadAll(r)
	if err != nil {
		tb.Fatal(err)
	}
	return plain
}

// Long answers are compressed for those who accept it, and every answer says that
// it depends on what they accept.
func TestAnswersAreCompressed(t *testing.T) {
	server := start(t)
	manyFaults := `{"pieces": [` + strings.TrimSuffix(strings.Repeat(`{},`, 60), ",") + `]}`
	for _, c := range []struct {
		name, method, path, body string
		code                     int
		long                     bool
	}{
		{"long", "POST", ringPath, ringBody, 200, true},
		{"long by GET", "GET", ringQuery, "", 200, true},
		{"short", "POST", castOnPath, castOnBody, 200, false},
		{"short by GET", "GET", castOnQuery, "", 200, false},
		{"many faults", "POST", "/v1/yarn:estimateYarn", manyFaults, 400, true},
		{"document", "GET", "/openapi.json", "", 200, true},
	} {
		plain := server.send(t, c.method, c.path, c.body)
		if plain.code != c.code || plain.header.Get("Content-Encoding") != "" || (len(plain.body) >= minCompressed) != c.long {
			t.Errorf("%s: HTTP %d, %d bytes, header %v", c.name, plain.code, len(plain.body), plain.header)
		}
		for accept, wanted := range map[string]bool{
			"gzip": true, "deflate, gzip;q=0.5": true, "GZIP": true, "zstd, gzip": true, "br": false, "identity": false, "gzip;q=0": false,
			"": false,
		} {
			got := server.send(t, c.method, c.path, c.body, "Accept-Encoding", accept)
			body := got.body
			want := wanted && c.long
			if (got.header.Get("Content-Encoding") == "gzip") != want {
				t.Errorf("%s, %q: header %v", c.name, accept, got.header)
			} else if want {
				body = inflated(t, got.body)
			}
			if got.code != c.code || !bytes.Equal(body, plain.body) {
				t.Errorf("%s, %q: HTTP %d, %d bytes that differ", c.name, accept, got.code, len(got.body))
			}
			if got.header.Get("Vary") != "Accept-Encoding" || want && 2*len(got.body) > len(plain.body) {
				t.Errorf("%s, %q: Vary %q, %d of %d bytes", c.name, accept, got.header.Get("Vary"), len(got.body), len(plain.body))
			}
		}
	}
}

// HEAD says what GET would, compressed or not.
func TestHeadIsGet(t *testing.T) {
	server := start(t)
	for _, path := range []string{ringQuery, castOnQuery, castOnPath, "/openapi.json", "/", "/nothing"} {
		for _, accept := range []string{"gzip", "identity"} {
			same := []string{"Accept-Encoding", accept, "X-Request-Id", "same"}
			get, head := server.send(t, "GET", path, "", same...), server.send(t, "HEAD", path, "", same...)
			for _, h := range []http.Header{get.header, head.header} {
				h.Del("Date")
				if accept == "gzip" { // The length may be left out where the sender would have to find it out.
					h.Del("Content-Length")
				}
			}
			if head.code != get.code || len(head.body) > 0 || !maps.EqualFunc(head.header, get.header, slices.Equal) {
				t.Errorf("%s, %s: HTTP %d and %d, header %v and %v", path, accept, head.code, get.code, head.header, get.header)
			}
		}
	}
}

// Questions are read compressed too.
func TestCompressedQuestions(t *testing.T) {
	server := start(t)
	want := server.send(t, "POST", castOnPath, castOnBody).body
	packed := compressed(t, castOnBody)
	half := len(castOnBody) / 2
	broken := packed[:len(packed)-8] + "\x00\x00\x00\x00" + packed[len(packed)-4:]
	for _, c := range []struct {
		name, body, coding string
		code               int
	}{
		{"gzip", packed, "gzip", 200},
		{"in capitals", packed, "GZIP", 200},
		{"by its older name", packed, "x-gzip", 200},
		{"in two parts", compressed(t, castOnBody[:half]) + compressed(t, castOnBody[half:]), "gzip", 200},
		{"not compressed, and so said", castOnBody, "identity", 200},
		{"not compressed", castOnBody, "gzip", 400},
		{"cut off", packed[:len(packed)-9], "gzip", 400},
		{"with a wrong checksum", broken, "gzip", 400},
		{"followed by something else", packed + "{}", "gzip", 400},
		{"compressed and not said", packed, "", 400},
		{"twice", compressed(t, packed), "gzip, gzip", 415},
		{"another method", packed, "br", 415},
		{"many methods", packed, "identity, gzip", 415},
	} {
		got := server.send(t, "POST", castOnPath, c.body, "Content-Encoding", c.coding)
		switch {
		case got.code != c.code:
			t.Errorf("%s: HTTP %d %s", c.name, got.code, got.body)
		case c.code == 200 && !bytes.Equal(got.body, want):
			t.Errorf("%s: another answer: %s", c.name, got.body)
		case c.code == 400 && !slices.Equal(violations(got.status(t)), []string{"MALFORMED"}):
			t.Errorf("%s: %s", c.name, got.body)
		case c.code == 415 && (errorInfo(got.status(t)) != "UNSUPPORTED_MEDIA_TYPE" || got.header.Get("Accept-Encoding") != "gzip"):
			t.Errorf("%s: %s, header %v", c.name, got.body, got.header)
		}
	}
}

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

// payloads remembers how the last message of a client's calls came in.
type payloads struct{ last *stats.InPayload }

func (*payloads) TagRPC(ctx context.Context, _ *stats.RPCTagInfo) context.Context   { return ctx }
func (*payloads) TagConn(ctx context.Context, _ *stats.ConnTagInfo) context.Context { return ctx }
func (*payloads) HandleConn(context.Context, stats.ConnStats)                       {}
func (p *payloads) HandleRPC(_ context.Context, s stats.RPCStats) {
	if in, ok := s.(*stats.InPayload); ok {
		p.last = in
	}
}

// Over gRPC the client chooses: whoever compresses the question gets long answers
// compressed, and short ones as they are.
func TestCompressionOverGRPC(t *testing.T) {
	server := start(t)
	seen := &payloads{}
	conn, err := grpc.NewClient(
		server.GRPCAddr().String(),
		grpc.WithTransportCredentials(insecure.NewCredentials()),
		grpc.WithStatsHandler(seen),
	)
	if err != nil {
		t.Fatal(err)
	}
	defer conn.Close()
	gauge := &knitmathv1.Gauge{Stitches: 22, Rows: 30}
	for _, c := range []struct {
		name    string
		options []grpc.CallOption
		long    bool
		want    bool
	}{
		{"long, not chosen", nil, true, false},
		{"long", []grpc.CallOption{grpc.UseCompressor(grpcgzip.Name)}, true, true},
		{"short", []grpc.CallOption{grpc.UseCompressor(grpcgzip.Name)}, false, false},
	} {
		if c.long {
			_, err = knitmathv1.NewYokeServiceClient(conn).PlanCircularYoke(t.Context(),
				&knitmathv1.PlanCircularYokeRequest{Gauge: gauge, BodyStitches: 200}, c.options...)
		} else {
			_, err = knitmathv1.NewGaugeServiceClient(conn).ComputeCastOn(t.Context(),
				&knitmathv1.ComputeCastOnRequest{Gauge: gauge, WidthCm: new(50.0)}, c.options...)
		}
		if err != nil {
			t.Fatalf("%s: %v", c.name, err)
		}
		in := seen.last
		if (in.CompressedLength < in.Length) != c.want || (in.Length >= minCompressed) != c.long {
			t.Errorf("%s: %d bytes sent for %d", c.name, in.CompressedLength, in.Length)
		}
	}
	// Faults come whole to a client who compresses.
	_, err = knitmathv1.NewGaugeServiceClient(conn).
		ComputeCastOn(t.Context(), &knitmathv1.ComputeCastOnRequest{}, grpc.UseCompressor(grpcgzip.Name))
	if status.Code(err) != codes.InvalidArgument {
		t.Errorf("%v", err)
	}
}
