package service

import (
	"context"
	"testing"

	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/credentials/insecure"
	grpcgzip "google.golang.org/grpc/encoding/gzip"
	"google.golang.org/grpc/stats"
	"google.golang.org/grpc/status"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

// payloads remembers how the last message of a client's calls came in.
type payloads struct{ last *stats.InPayload }

func (*payloads) TagRPC(ctx context.Context, _ *stats.RPCTagInfo) context.Context { return ctx }

func (*payloads) TagConn(ctx context.Context, _ *stats.ConnTagInfo) context.Context { return ctx }

func (*payloads) HandleConn(context.Context, stats.ConnStats) {}

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
