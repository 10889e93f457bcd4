package service

import (
	"strconv"
	"testing"

	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/credentials/insecure"
	"google.golang.org/grpc/metadata"
	"google.golang.org/grpc/status"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

// Whoever asks too much is told when to come again, in a way that clients which retry by
// themselves heed: with a back-off of a millisecond, a second attempt succeeds only
// because it waits as long as it is told to.
func TestRetriesWaitAsTold(t *testing.T) {
	server := startWith(t, func(c *Config) { c.Callers.AddressRate = 2 })
	ask := func(config string, md *metadata.MD) error {
		t.Helper()
		conn, err := grpc.NewClient(server.GRPCAddr().String(),
			grpc.WithTransportCredentials(insecure.NewCredentials()), grpc.WithDefaultServiceConfig(config))
		if err != nil {
			t.Fatal(err)
		}
		defer func() { _ = conn.Close() }()
		_, err = knitmathv1.NewGaugeServiceClient(conn).ComputeCastOn(t.Context(), &knitmathv1.ComputeCastOnRequest{
			Gauge: &knitmathv1.Gauge{Stitches: 22, Rows: 30}, WidthCm: new(50.0)}, grpc.Trailer(md))
		return err
	}
	var trailer metadata.MD
	var err error
	for n := 0; err == nil && n < 1000; n++ { // until what may be asked at once has been
		trailer = nil
		err = ask(`{}`, &trailer)
	}
	if status.Code(err) != codes.ResourceExhausted {
		t.Fatalf("%v", err)
	}
	after, told := retryDelay(status.Convert(err))
	if got := trailer.Get("grpc-retry-pushback-ms"); !told || after <= 0 || len(got) != 1 ||
		got[0] != strconv.FormatInt((after.Nanoseconds()+999_999)/1_000_000, 10) {
		t.Errorf("pushback %v ms, RetryInfo %v", got, after)
	}
	const impatient = `{"methodConfig": [{"name": [{}], "retryPolicy": {"maxAttempts": 2, "initialBackoff": "0.001s",
		"maxBackoff": "0.001s", "backoffMultiplier": 1, "retryableStatusCodes": ["RESOURCE_EXHAUSTED"]}}]}`
	before := server.refusedSoFar(t, faceGRPC, "RATE_LIMITED")
	for n := 0; n < 100 && server.refusedSoFar(t, faceGRPC, "RATE_LIMITED") == before; n++ {
		if err := ask(impatient, &trailer); err != nil {
			t.Errorf("asked again too early: %v", err)
		}
	}
	// A question that is wrong is not asked again.
	if md := pushback(invalid(nil).Err()); md != nil {
		t.Errorf("%v", md)
	}
}
