package service

import (
	"context"
	"testing"

	"google.golang.org/grpc"
	"google.golang.org/protobuf/proto"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/service/carry"
)

// partQuestions are a short answer and a long one, each asked whole and in the
// part that a page would show.
var partQuestions = []struct {
	name, method string
	whole, part  proto.Message
	answer       func() proto.Message
}{
	{"ComputeCastOn", "/knitmath.v1.GaugeService/ComputeCastOn",
		&knitmathv1.ComputeCastOnRequest{Gauge: &knitmathv1.Gauge{Stitches: 22, Rows: 30}, WidthCm: new(50.0)},
		&knitmathv1.ComputeCastOnRequest{Gauge: &knitmathv1.Gauge{Stitches: 22, Rows: 30}, WidthCm: new(50.0), Fields: []string{"summary"}},
		func() proto.Message { return &knitmathv1.ComputeCastOnResponse{} }},
	{"PlanWedge", "/knitmath.v1.ShortRowService/PlanWedge", wedgeQuestion(), wedgeQuestion("summary", "rows.instruction.text"),
		func() proto.Message { return &knitmathv1.PlanWedgeResponse{} }},
}

func wedgeQuestion(fields ...string) proto.Message {
	return &knitmathv1.PlanWedgeRequest{WidthStitches: 200, RiseRows: new(int32(60)), TallEnd: knitmathv1.TallEnd_TALL_END_LEFT,
		TurnMethod: knitmathv1.TurnMethod_TURN_METHOD_GERMAN, Fields: fields}
}

// BenchmarkFields sets a call in which no fields are asked for beside one of which
// none could be, and a call for a part of an answer, written as JSON, beside one
// for the whole.
func BenchmarkFields(b *testing.B) {
	with, without := newInProcess(partUnary), newInProcess(pass)
	carry.Register(with)
	carry.Register(without)
	for _, q := range partQuestions {
		b.Run(q.name+"/none", func(b *testing.B) {
			ask := func(conn grpc.ClientConnInterface) func() error {
				return func() error { return conn.Invoke(b.Context(), q.method, q.whole, q.answer()) }
			}
			timed(b, "x-without", ask(with), ask(without))
		})
		b.Run(q.name+"/some", func(b *testing.B) {
			size := map[proto.Message]int{}
			ask := func(question proto.Message) func() error {
				return func() error {
					part, answer := new(mask), q.answer()
					if err := with.Invoke(context.WithValue(b.Context(), maskKey{}, part), q.method, question, answer); err != nil {
						return err
					}
					data, err := writeJSON(answer, *part)
					size[question] = len(data)
					return err
				}
			}
			timed(b, "x-whole", ask(q.part), ask(q.whole))
			b.ReportMetric(float64(size[q.part])/float64(size[q.whole]), "x-bytes")
		})
	}
}

// pass is the interceptor that does nothing.
func pass(ctx context.Context, req any, _ *grpc.UnaryServerInfo, handler grpc.UnaryHandler) (any, error) {
	return handler(ctx, req)
}
