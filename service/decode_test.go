package service

import (
	"bytes"
	"compress/gzip"
	"encoding/base64"
	"net/http"
	"strings"
	"testing"

	spb "google.golang.org/genproto/googleapis/rpc/status"
	"google.golang.org/grpc/codes"
	healthv1 "google.golang.org/grpc/health/grpc_health_v1"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/encoding/protowire"
	"google.golang.org/protobuf/proto"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

const castOnMethod = "/knitmath.v1.GaugeService/ComputeCastOn"

func zipped(t *testing.T, data []byte) []byte {
	t.Helper()
	var out bytes.Buffer
	z := gzip.NewWriter(&out)
	if _, err := z.Write(data); err != nil {
		t.Fatal(err)
	}
	if err := z.Close(); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

// What cannot be read over gRPC is the caller's fault, is said with the usual
// details where gRPC lets us, and is counted once, whatever it is.
func TestUnreadableCalls(t *testing.T) {
	server := start(t)
	good, err := proto.Marshal(&knitmathv1.ComputeCastOnRequest{Gauge: &knitmathv1.Gauge{Stitches: 22, Rows: 30}, WidthCm: new(50.0)})
	if err != nil {
		t.Fatal(err)
	}
	fieldsNumber := (&knitmathv1.ComputeCastOnRequest{}).ProtoReflect().Descriptor().Fields().ByName("fields").Number()
	notUTF8 := protowire.AppendBytes(protowire.AppendTag(bytes.Clone(good), fieldsNumber, protowire.BytesType), []byte("dear diary\xff"))
	large := bytes.Repeat([]byte{0}, maxQuestionBytes+1)
	half := zipped(t, bytes.Repeat(good, 100))
	half = half[:len(half)-9]
	byGzip := []string{"Grpc-Encoding", "gzip"}
	for _, c := range []struct {
		name, path string
		body       []byte
		header     []string
		want       codes.Code
		reason     string // "" for none
		detailed   bool
	}{
		{"good", castOnMethod, framed(0, good), nil, codes.OK, "", false},
		{"good, compressed", castOnMethod, framed(1, zipped(t, good)), byGzip, codes.OK, "", false},
		{"no protobuf", castOnMethod, framed(0, []byte("dear diary")), nil, codes.InvalidArgument, "MALFORMED", true},
		{"no UTF-8", castOnMethod, framed(0, notUTF8), nil, codes.InvalidArgument, "MALFORMED", true},
		{"JSON", castOnMethod, framed(0, []byte(castOnBody)), []string{"Content-Type", "application/grpc+json"},
			codes.InvalidArgument, "MALFORMED", true},
		{"a probe's, no protobuf", healthv1.Health_Check_FullMethodName, framed(0, []byte("dear diary")), nil,
			codes.InvalidArgument, "MALFORMED", true},
		{"a stream's, no protobuf", healthv1.Health_Watch_FullMethodName, framed(0, []byte("dear diary")), nil,
			codes.InvalidArgument, "MALFORMED", true},
		{"no gzip", castOnMethod, framed(1, good), byGzip, codes.InvalidArgument, "MALFORMED", true},
		{"half a gzip", castOnMethod, framed(1, half), byGzip, codes.InvalidArgument, "MALFORMED", true},
		{"too large", castOnMethod, framed(0, large), nil, codes.ResourceExhausted, "BODY_TOO_LARGE", false},
		{"inflates to too much", castOnMethod, framed(1, zipped(t, large)), byGzip, codes.ResourceExhausted, "BODY_TOO_LARGE", false},
		{"unknown method", "/knitmath.v1.GaugeService/DearDiary", framed(0, good), nil, codes.Unimplemented, "UNKNOWN_METHOD", true},
		{"unknown service", "/dear.Diary/ComputeCastOn", framed(0, good), nil, codes.Unimplemented, "UNKNOWN_METHOD", true},
		{"unknown encoding", castOnMethod, framed(1, good), []string{"Grpc-Encoding", "diary"}, codes.Unimplemented, reasonUnreadable, false},
		{"no method", "/diary", framed(0, good), nil, codes.Unimplemented, reasonUnreadable, false},
		// gRPC's own rules for frames say INTERNAL. It is no defect, and not counted as one.
		{"compressed by nothing", castOnMethod, framed(1, good), nil, codes.Internal, "MALFORMED", false},
		{"no message", castOnMethod, nil, nil, codes.Internal, "MALFORMED", false},
		{"half a message", castOnMethod, framed(0, good)[:9], nil, codes.Internal, "MALFORMED", false},
	} {
		before := map[string]float64{}
		for _, reason := range refusalReasons {
			before[reason] = server.refusedSoFar(t, faceGRPC, reason)
		}
		code, header := server.rawCall(t, c.path, c.body, c.header...)
		if code != c.want {
			t.Errorf("%s: %v, want %v: %s", c.name, code, c.want, header.Get("Grpc-Message"))
		}
		if c.detailed && detailsOf(t, header) == nil {
			t.Errorf("%s: no ErrorInfo, %v", c.name, header)
		}
		if c.reason != "" {
			await(t, c.name+" is counted as "+c.reason, func() bool { return server.refusedSoFar(t, faceGRPC, c.reason) > before[c.reason] })
			before[c.reason]++
		}
		for _, reason := range refusalReasons {
			if got := server.refusedSoFar(t, faceGRPC, reason); got != before[reason] {
				t.Errorf("%s: refused for %s %v times, want %v", c.name, reason, got, before[reason])
			}
		}
	}
	families := gathered(t, server.registry)
	if got := value(families, "grpc_server_handled_total", "grpc_code", "Internal"); got != 0 {
		t.Errorf("%v calls count as faults of ours", got)
	}
	for _, m := range families["grpc_server_handled_total"].GetMetric() {
		if strings.Contains(m.String(), "iary") {
			t.Errorf("a label has the caller's word: %v", m)
		}
	}
	if err := server.stop(); err != nil {
		t.Error(err)
	}
	log := server.log.String()
	if strings.Contains(log, "iary") || strings.Contains(log, "level=ERROR") || !strings.Contains(log, "reason=MALFORMED") {
		t.Errorf("log:\n%s", log)
	}
}

// detailsOf is the status of a trailer, if its reason is given as ours are.
func detailsOf(t *testing.T, header http.Header) *status.Status {
	t.Helper()
	data, err := base64.RawStdEncoding.DecodeString(strings.TrimRight(header.Get("Grpc-Status-Details-Bin"), "="))
	if err != nil {
		t.Fatal(err)
	}
	var st spb.Status
	if err := proto.Unmarshal(data, &st); err != nil {
		t.Fatal(err)
	}
	if errorInfo(status.FromProto(&st)) == "" {
		return nil
	}
	return status.FromProto(&st)
}

// A flood of nonsense is counted to the last call, and logged in a few lines.
func TestFloodIsLoggedInAFewLines(t *testing.T) {
	server := start(t)
	const flood = 500
	for range flood / 2 {
		_ = server.conn.Invoke(t.Context(), "/dear.Diary/Write", &knitmathv1.ComputeCastOnRequest{}, &knitmathv1.ComputeCastOnResponse{})
		server.send(t, "GET", "/dear/diary", "")
	}
	for face, reason := range map[string]string{faceGRPC: "UNKNOWN_METHOD", faceJSON: "UNKNOWN_PATH"} {
		if got := server.refusedSoFar(t, face, reason); got != flood/2 {
			t.Errorf("%s: %v counted, want %d", face, got, flood/2)
		}
		if lines := strings.Count(server.log.String(), "reason="+reason); lines < linesAtOnce || lines >= flood/2 {
			t.Errorf("%s: %d lines", face, lines)
		}
	}
}
