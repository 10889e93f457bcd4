package abuse

import (
	"google.golang.org/protobuf/proto"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

// question is one that is asked on both faces.
type question struct {
	method, path, json string
	message            proto.Message
}

// castOn is a light question.
var castOn = question{
	"/knitmath.v1.GaugeService/ComputeCastOn", "/v1/gauge:computeCastOn",
	`{"gauge": {"stitches": 22, "rows": 30}, "width_cm": 50}`,
	&knitmathv1.ComputeCastOnRequest{Gauge: &knitmathv1.Gauge{Stitches: 22, Rows: 30}, WidthCm: new(50.0)},
}

// longWedge is among the dearest and has one of the longest answers, for the fewest
// bytes asked.
var longWedge = question{
	"/knitmath.v1.ShortRowService/PlanWedge", "/v1/short-row:planWedge",
	`{"width_stitches": 10000, "rise_rows": 2000, "tall_end": "TALL_END_SIDES", "turn_method": "TURN_METHOD_GERMAN",
		"with_outline": true, "gauge": {"stitches": 22, "rows": 30}}`,
	&knitmathv1.PlanWedgeRequest{WidthStitches: 10_000, RiseRows: new(int32(2000)), TallEnd: knitmathv1.TallEnd_TALL_END_SIDES,
		TurnMethod: knitmathv1.TurnMethod_TURN_METHOD_GERMAN, WithOutline: true, Gauge: &knitmathv1.Gauge{Stitches: 22, Rows: 30}},
}

// framed is the question as gRPC sends it, without compression.
func (q question) framed() []byte {
	data, err := proto.Marshal(q.message)
	if err != nil {
		panic(err) // The questions stand above.
	}
	n := len(data)
	return append([]byte{0, byte(n >> 24), byte(n >> 16), byte(n >> 8), byte(n)}, data...)
}
