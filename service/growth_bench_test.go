package service

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/proto"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/service/carry"
)

// What each planner takes as its question grows, tenfold each time as far as the question
// allows, and how that grows: the exponent is the slope of a straight line through the
// logarithms (least squares), 1 where ten times as much takes ten times as long. Times are
// the least of many, with the carrying in and out, without gRPC or JSON:
//
//	go test ./service -run '^$' -bench Growth -benchtime 1s

var usualGauge = &knitmathv1.Gauge{Stitches: 22, Rows: 30}

// gaugeFor makes so many stitches the width of an ordinary body.
func gaugeFor(n int32) *knitmathv1.Gauge {
	return &knitmathv1.Gauge{Stitches: 22 * float64(n) / 200, Rows: 30 * float64(n) / 200}
}

// growing are questions by their size, which is of what the comment says.
var growing = []struct {
	name, method string
	of           func(n int32) proto.Message
}{
	{"ComputeCastOn of stitches", "GaugeService/ComputeCastOn", func(n int32) proto.Message {
		return &knitmathv1.ComputeCastOnRequest{Gauge: &knitmathv1.Gauge{Stitches: 100, Rows: 100}, WidthCm: new(float64(n) / 10)}
	}},
	{"PlanEvenSpacing of stitches", "ShapingService/PlanEvenSpacing", func(n int32) proto.Message {
		return &knitmathv1.PlanEvenSpacingRequest{StartStitches: n, EndStitches: n - n*3/13}
	}},
	{"PlanEvenSpacing, interleaved, of stitches", "ShapingService/PlanEvenSpacing", func(n int32) proto.Message {
		return &knitmathv1.PlanEvenSpacingRequest{StartStitches: n, EndStitches: n - n*3/13, Spread: knitmathv1.GapSpread_GAP_SPREAD_INTERLEAVED}
	}},
	{"PlanTaper of rows", "ShapingService/PlanTaper", func(n int32) proto.Message {
		return &knitmathv1.PlanTaperRequest{StartStitches: 10 + 2*(n/6), EndStitches: 10, HeightRows: new(n)}
	}},
	{"PlanGradedTaper of rows, 5 sizes", "ShapingService/PlanGradedTaper", func(n int32) proto.Message {
		q := &knitmathv1.PlanGradedTaperRequest{}
		for i := range int32(5) {
			q.Sizes = append(q.Sizes, &knitmathv1.TaperSize{StartStitches: 10 + 2*(n/6) + 2*i, EndStitches: 10, HeightRows: new(n - 5 + i)})
		}
		return q
	}},
	{"PlanShapedSide of rows", "ShapingService/PlanShapedSide", func(n int32) proto.Message {
		return &knitmathv1.PlanShapedSideRequest{StartStitches: 10 + 2*(n/6), Points: []*knitmathv1.SidePoint{
			{HeightRows: new(n / 2), Stitches: 10 + 2*(n/12)}, {HeightRows: new(n), Stitches: 10 + 2*(n/6)}}}
	}},
	{"PlanPickUp of rows", "EdgeService/PlanPickUp", func(n int32) proto.Message {
		return &knitmathv1.PlanPickUpRequest{LengthRows: new(n), Gauge: usualGauge,
			BandGauge: &knitmathv1.Gauge{Stitches: 21, Rows: 29}}
	}},
	{"PlanButtonholes of holes", "EdgeService/PlanButtonholes", func(n int32) proto.Message {
		return &knitmathv1.PlanButtonholesRequest{Direction: knitmathv1.BandDirection_BAND_DIRECTION_ALONG_STITCHES,
			BandStitches: 12 * n, BandRows: 8, HoleRowNumber: new(int32(4)),
			HoleCount: n, HoleStitches: new(int32(2)), BeforeFirstPlaces: new(int32(3))}
	}},
	{"PlanWedge of stitches", "ShortRowService/PlanWedge", func(n int32) proto.Message {
		return &knitmathv1.PlanWedgeRequest{WidthStitches: n, RiseRows: new(n / 5), TallEnd: knitmathv1.TallEnd_TALL_END_LEFT}
	}},
	{"PlanCircleOfWedges of stitches", "ShortRowService/PlanCircleOfWedges", func(n int32) proto.Message {
		return &knitmathv1.PlanCircleOfWedgesRequest{Gauge: usualGauge, WidthStitches: new(n), WedgeCount: new(int32(12))}
	}},
	{"PlanCircularYoke of stitches", "YokeService/PlanCircularYoke", func(n int32) proto.Message {
		return &knitmathv1.PlanCircularYokeRequest{Gauge: gaugeFor(n), BodyStitches: n}
	}},
	{"PlanRaglan of stitches", "YokeService/PlanRaglan", func(n int32) proto.Message {
		return &knitmathv1.PlanRaglanRequest{Gauge: gaugeFor(n), BodyStitches: n}
	}},
	{"PlanCurvedEdge of rows", "CurveService/PlanCurvedEdge", func(n int32) proto.Message {
		return &knitmathv1.PlanCurvedEdgeRequest{Gauge: usualGauge, StartStitches: 20 + 2*n, Points: []*knitmathv1.CurvePoint{
			{HeightRows: new(n), InwardStitches: new(n / 2), Shape: knitmathv1.CurveShape_CURVE_SHAPE_QUARTER_ELLIPSE}}}
	}},
	{"PlanNeckline of stitches", "NeckService/PlanNeckline", func(n int32) proto.Message {
		return &knitmathv1.PlanNecklineRequest{Gauge: gaugeFor(2 * n), WidthStitches: new(n)}
	}},
	{"PlanArmhole of stitches", "ArmholeService/PlanArmhole", func(n int32) proto.Message {
		return &knitmathv1.PlanArmholeRequest{Gauge: gaugeFor(2 * n), BackStitches: new(n), AcrossBackStitches: new(n - 2*(n/8)),
			ArmholeDepthCm: new(21.0), UpperArmCm: new(32.0)}
	}},
	{"PlanFlatShape of rounds", "FlatService/PlanFlatShape", func(n int32) proto.Message {
		return &knitmathv1.PlanFlatShapeRequest{Gauge: usualGauge, Form: knitmathv1.FlatForm_FLAT_FORM_DISC, AcrossCm: new(float64(n) / 1.5)}
	}},
	{"PlanSolid of rounds, a ball", "SolidService/PlanSolid", func(n int32) proto.Message {
		return &knitmathv1.PlanSolidRequest{Gauge: usualGauge, Form: knitmathv1.SolidForm_SOLID_FORM_SPHERE,
			AcrossCm: new(float64(n) / 3 / (math.Pi / 2))}
	}},
	{"PlanCrown of stitches", "SolidService/PlanCrown", func(n int32) proto.Message {
		return &knitmathv1.PlanCrownRequest{Gauge: gaugeFor(2 * n), HatStitches: new(n)}
	}},
	{"PlanHeel of stitches", "SockService/PlanHeel", func(n int32) proto.Message {
		return &knitmathv1.PlanHeelRequest{RoundStitches: new(n)}
	}},
	{"PlanToe of stitches", "SockService/PlanToe", func(n int32) proto.Message {
		return &knitmathv1.PlanToeRequest{RoundStitches: new(n)}
	}},
	{"PlanMittenTop of stitches", "HandService/PlanMittenTop", func(n int32) proto.Message {
		return &knitmathv1.PlanMittenTopRequest{Gauge: gaugeFor(4 * n), HandStitches: new(n)}
	}},
	{"PlanThumb of stitches", "HandService/PlanThumb", func(n int32) proto.Message {
		return &knitmathv1.PlanThumbRequest{Gauge: gaugeFor(4 * n), HandStitches: new(n)}
	}},
	{"ConvertGauge of counts", "GaugeService/ConvertGauge", func(n int32) proto.Message {
		q := &knitmathv1.ConvertGaugeRequest{PatternGauge: usualGauge, OwnGauge: &knitmathv1.Gauge{Stitches: 20, Rows: 28}}
		for i := range n {
			q.Items = append(q.Items, &knitmathv1.PatternCount{Kind: knitmathv1.CountKind_COUNT_KIND_STITCHES, Count: 50 + i})
		}
		return q
	}},
	{"EstimateYarn of rows", "YarnService/EstimateYarn", func(n int32) proto.Message {
		rows := make([]int32, n)
		for i := range rows {
			rows[i] = 100
		}
		return &knitmathv1.EstimateYarnRequest{Gauge: usualGauge, Pieces: []*knitmathv1.Piece{
			{Shape: &knitmathv1.Piece_Rowwise{Rowwise: &knitmathv1.RowwisePiece{RowStitches: rows}}}}}
	}},
	{"CheckInstructions of rows", "PatternService/CheckInstructions", func(n int32) proto.Message {
		return &knitmathv1.CheckInstructionsRequest{StartStitches: []int32{20},
			Text: strings.Repeat("Row: k2, *p2, k2; rep from * to last 2 sts, p2.\n", int(n))}
	}},
	{"FormatInstructions of rows", "PatternService/FormatInstructions", func(n int32) proto.Message {
		return &knitmathv1.FormatInstructionsRequest{Text: strings.Repeat("k2, [p2, k2] 4 times, p2\n", int(n))}
	}},
	{"MirrorInstructions of rows", "PatternService/MirrorInstructions", func(n int32) proto.Message {
		return &knitmathv1.MirrorInstructionsRequest{Text: strings.Repeat("k2, [p2, k2] 4 times, p2\n", int(n))}
	}},
}

func BenchmarkGrowth(b *testing.B) {
	local := newInProcess(pass)
	carry.Register(local)
	for _, g := range growing {
		b.Run(strings.ReplaceAll(g.name, " ", "_"), func(b *testing.B) {
			method := findBenchMethod(b, "knitmath.v1."+g.method)
			var points []point
			var refused error
			for n := int32(10); n <= 10_000; n *= 10 {
				question, answer := g.of(n), method()
				ask := func() error { return local.Invoke(b.Context(), "/knitmath.v1."+g.method, question, answer) }
				if err := ask(); err != nil {
					if code := status.Code(asFailure(err)); code != codes.InvalidArgument {
						b.Fatal(err)
					}
					refused = err // The question does not allow this size.
					continue
				}
				points = append(points, point{float64(n), ask, time.Hour})
			}
			if len(points) == 0 {
				b.Fatal(refused)
			}
			for b.Loop() {
				for i := range points {
					points[i].time(b)
				}
			}
			for _, p := range points {
				b.ReportMetric(float64(p.least.Nanoseconds())/1000, fmt.Sprintf("us@%g", p.size))
			}
			if growth, err := slope(points); err == nil {
				b.ReportMetric(growth, "exponent")
			}
			b.ReportMetric(0, "ns/op")
		})
	}
}

// findBenchMethod makes empty answers of a method.
func findBenchMethod(b *testing.B, name string) func() proto.Message {
	b.Helper()
	md, err := answerDescriptor("/" + name)
	if err != nil {
		b.Fatal(err)
	}
	return func() proto.Message { return newMessage(b, md) }
}

// A point is a size with the least time that its question took.
type point struct {
	size  float64
	ask   func() error
	least time.Duration
}

func (p *point) time(b *testing.B) {
	begin := time.Now()
	if err := p.ask(); err != nil {
		b.Fatal(err)
	}
	p.least = min(p.least, time.Since(begin))
}

var errFewPoints = errors.New("a line needs two points")

// slope is that of the straight line nearest to the logarithms (least squares).
func slope(points []point) (float64, error) {
	if len(points) < 2 {
		return 0, errFewPoints
	}
	var x, y, xx, xy float64
	for _, p := range points {
		u, v := math.Log(p.size), math.Log(float64(p.least))
		x, y, xx, xy = x+u, y+v, xx+u*u, xy+u*v
	}
	n := float64(len(points))
	return (n*xy - x*y) / (n*xx - x*x), nil
}

// A time that grows as the square of the size has the exponent 2.
func TestSlope(t *testing.T) {
	var points []point
	for _, n := range []float64{10, 100, 1000} {
		points = append(points, point{size: n, least: time.Duration(7 * n * n)})
	}
	if got, err := slope(points); err != nil || math.Abs(got-2) > 1e-9 {
		t.Errorf("%v, %v", got, err)
	}
	if _, err := slope(points[:1]); err == nil {
		t.Error("a line through one point")
	}
}
