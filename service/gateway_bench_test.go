package service

import (
	"testing"

	"google.golang.org/protobuf/encoding/protojson"
	"google.golang.org/protobuf/proto"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/service/answerjson"
	"example.com/knitmath/service/carry"
)

// BenchmarkAnswerJSON sets a short answer, a yoke and a wedge at its limits, written as
// JSON, beside the same by protojson.
func BenchmarkAnswerJSON(b *testing.B) {
	local := newInProcess(pass)
	carry.Register(local)
	usual := protojson.MarshalOptions{UseProtoNames: true, EmitDefaultValues: true}
	longest := &knitmathv1.PlanWedgeRequest{WidthStitches: 2000, RiseRows: new(int32(700)), WithOutline: true,
		Gauge: &knitmathv1.Gauge{Stitches: 22, Rows: 30}, TallEnd: knitmathv1.TallEnd_TALL_END_LEFT}
	for _, q := range []struct {
		name, method string
		ask, answer  proto.Message
	}{
		{"ComputeCastOn", benchQuestions[0].method, benchQuestions[0].ask, benchQuestions[0].answer()},
		{"PlanCircularYoke", benchQuestions[1].method, benchQuestions[1].ask, benchQuestions[1].answer()},
		{"PlanWedge", "/knitmath.v1.ShortRowService/PlanWedge", longest, &knitmathv1.PlanWedgeResponse{}},
	} {
		b.Run(q.name, func(b *testing.B) {
			if err := local.Invoke(b.Context(), q.method, q.ask, q.answer); err != nil {
				b.Fatal(err)
			}
			timed(b, "x-protojson",
				func() error { _, err := answerjson.Append(nil, q.answer); return err },
				func() error { _, err := usual.Marshal(q.answer); return err })
		})
	}
}
