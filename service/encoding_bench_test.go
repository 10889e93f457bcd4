package service

import (
	"errors"
	"io"
	"net/http"
	"strings"
	"testing"

	"google.golang.org/grpc"
	grpcgzip "google.golang.org/grpc/encoding/gzip"
	"google.golang.org/protobuf/encoding/protojson"
)

// BenchmarkCompression sets an answer that is compressed beside the same answer
// that is not. On the loopback device bytes cost nothing: what it shows is the
// price of saving them.
func BenchmarkCompression(b *testing.B) {
	server := benchServer(b)
	client := testHTTPClient(b)
	conn := benchDial(b, server.GRPCAddr())
	for _, q := range benchQuestions {
		b.Run("JSON/"+q.name, func(b *testing.B) {
			body, err := protojson.Marshal(q.ask)
			if err != nil {
				b.Fatal(err)
			}
			size := map[string]int{}
			ask := func(accept string) func() error {
				return func() error {
					req, err := http.NewRequest("POST", "http://"+server.HTTPAddr().String()+q.path, strings.NewReader(string(body)))
					if err != nil {
						return err
					}
					req.Header.Set("Accept-Encoding", accept)
					resp, err := client.Do(req)
					if err != nil {
						return err
					}
					data, err := io.ReadAll(resp.Body)
					size[accept] = len(data)
					return errors.Join(err, resp.Body.Close())
				}
			}
			timed(b, "x-plain", ask("gzip"), ask("identity"))
			b.ReportMetric(float64(size["gzip"])/float64(size["identity"]), "x-bytes")
		})
		b.Run("gRPC/"+q.name, func(b *testing.B) {
			ask := func(options ...grpc.CallOption) func() error {
				return func() error { return conn.Invoke(b.Context(), q.method, q.ask, q.answer(), options...) }
			}
			timed(b, "x-plain", ask(grpc.UseCompressor(grpcgzip.Name)), ask())
		})
	}
}
