package service

import (
	"slices"
	"strings"
	"testing"

	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/proto"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

// usualLimit is what gRPC clients accept of a reply unless they are told
// otherwise: 4 MiB.
const usualLimit = 4 << 20

// TestLargestReplies asks the largest questions there are. Every reply must be
// one that a client with stock settings takes, over gRPC and over JSON.
func TestLargestReplies(t *testing.T) {
	server := start(t)
	gauge := &knitmathv1.Gauge{Stitches: 22, Rows: 30}
	items := make([]*knitmathv1.PatternCount, 350)
	for i := range items {
		items[i] = &knitmathv1.PatternCount{Name: strings.Repeat("n", 100), Kind: knitmathv1.CountKind_COUNT_KIND_ROWS, Count: int32(1 + i)}
	}
	pieces := make([]*knitmathv1.Piece, 100)
	for i := range pieces {
		pieces[i] = &knitmathv1.Piece{Name: strings.Repeat("n", 100), Shape: &knitmathv1.Piece_Counted{
			Counted: &knitmathv1.CountedPiece{Stitches: 10_000, Rows: 10_000}}}
	}
	steps := make([]*knitmathv1.YokeStep, 200)
	for i := range steps {
		steps[i] = &knitmathv1.YokeStep{DepthFraction: float64(i+1) / 200, RemovedFraction: 0.004}
	}
	bands := make([]*knitmathv1.YokeBand, 50)
	for i := range bands {
		bands[i] = &knitmathv1.YokeBand{HeightRounds: 5, RepeatStitches: int32(2 + i), EvenBeforeRounds: new(int32(30))}
	}
	for _, c := range []struct {
		method  string
		ask     proto.Message
		atLeast int // bytes that show that the question was a large one
	}{
		{"GaugeService/ConvertGauge", &knitmathv1.ConvertGaugeRequest{PatternGauge: gauge, OwnGauge: gauge, Items: items}, 60_000},
		{"ShapingService/PlanEvenSpacing", &knitmathv1.PlanEvenSpacingRequest{StartStitches: 10_000, EndStitches: 6_667,
			Spread: knitmathv1.GapSpread_GAP_SPREAD_INTERLEAVED, Construction: knitmathv1.Construction_CONSTRUCTION_ROUND}, 100},
		{"ShapingService/PlanEvenSpacing", &knitmathv1.PlanEvenSpacingRequest{StartStitches: 10_000, EndStitches: 5_101,
			Spread: knitmathv1.GapSpread_GAP_SPREAD_MIRRORED}, 100},
		{"ShapingService/PlanTaper", &knitmathv1.PlanTaperRequest{StartStitches: 10_000, EndStitches: 101, HeightRows: new(int32(10_000)),
			WithOutline: true, Edges: knitmathv1.ShapedEdges_SHAPED_EDGES_END, RowChoice: knitmathv1.RowChoice_ROW_CHOICE_ANY}, 50_000},
		{"ShapingService/PlanTaper", &knitmathv1.PlanTaperRequest{StartStitches: 10_000, EndStitches: 4, HeightRows: new(int32(10_000)),
			WithOutline: true, Gauge: gauge}, 200_000},
		{"ShapingService/PlanEvenSpacing", &knitmathv1.PlanEvenSpacingRequest{StartStitches: 5_000, EndStitches: 9_999, WithOutline: true},
			50_000},
		{"ShapingService/PlanShapedSide", &knitmathv1.PlanShapedSideRequest{StartStitches: 5_000, WithOutline: true,
			Edges:     knitmathv1.ShapedEdges_SHAPED_EDGES_END,
			RowChoice: knitmathv1.RowChoice_ROW_CHOICE_ANY, Points: []*knitmathv1.SidePoint{
				{HeightRows: new(int32(4_999)), Stitches: 9_998}, {HeightRows: new(int32(10_000)), Stitches: 5_000}}}, 50_000},
		{"ShortRowService/PlanWedge", &knitmathv1.PlanWedgeRequest{WidthStitches: 10_000, RiseRows: new(int32(2_000)), Gauge: gauge,
			TallEnd: knitmathv1.TallEnd_TALL_END_SIDES, TurnMethod: knitmathv1.TurnMethod_TURN_METHOD_GERMAN, WithOutline: true}, 100_000},
		{"ShortRowService/PlanWedge", &knitmathv1.PlanWedgeRequest{WidthStitches: 8_000, RiseRows: new(int32(2_000)),
			TallEnd: knitmathv1.TallEnd_TALL_END_LEFT, TurnMethod: knitmathv1.TurnMethod_TURN_METHOD_YARN_OVER,
			Order: knitmathv1.ShortRowOrder_SHORT_ROW_ORDER_SHORTEST_FIRST}, 100_000},
		{"YokeService/PlanCircularYoke", &knitmathv1.PlanCircularYokeRequest{Gauge: gauge, BodyStitches: 5_000, DepthRounds: new(int32(2_000)),
			Schedule: knitmathv1.YokeSchedule_YOKE_SCHEDULE_OWN, Steps: steps, WithOutline: true,
			Spread: knitmathv1.GapSpread_GAP_SPREAD_INTERLEAVED}, 20_000},
		{"YokeService/PlanRaglan", &knitmathv1.PlanRaglanRequest{Gauge: gauge, BodyStitches: 5_000, SleeveStitches: new(int32(2_500)),
			DepthRounds: new(int32(2_000)), FrontNeckStitches: new(int32(6)), WithOutline: true}, 30_000},
		{"YokeService/PlanCircularYoke", &knitmathv1.PlanCircularYokeRequest{Gauge: gauge, BodyStitches: 5_000, DepthRounds: new(int32(2_000)),
			Schedule: knitmathv1.YokeSchedule_YOKE_SCHEDULE_OWN, Steps: steps, Spread: knitmathv1.GapSpread_GAP_SPREAD_INTERLEAVED, Bands: bands,
			BackRaise:   &knitmathv1.BackRaise{Place: knitmathv1.RaisePlace_RAISE_PLACE_AFTER_BANDS, RiseRows: new(int32(200))},
			WithOutline: true}, 20_000},
		{"EdgeService/PlanPickUp", &knitmathv1.PlanPickUpRequest{LengthRows: new(int32(10_000)), Gauge: gauge,
			BandGauge: &knitmathv1.Gauge{Stitches: 30, Rows: 30}, WithOutline: true}, 200_000},
		{"EdgeService/PlanButtonholes", &knitmathv1.PlanButtonholesRequest{BandStitches: 10_000, BandRows: 10_000, HoleCount: 100,
			HoleStitches: new(int32(3)), BeforeFirstPlaces: new(int32(4)), Direction: knitmathv1.BandDirection_BAND_DIRECTION_ALONG_ROWS,
			WithOutline: true}, 18_000},
		{"ShortRowService/PlanCircleOfWedges", &knitmathv1.PlanCircleOfWedgesRequest{Gauge: gauge, WidthStitches: new(int32(10_000)),
			WedgeCount: new(int32(100)), TurnDegrees: new(720.0), WithOutline: true}, 100_000},
		{"YarnService/EstimateYarn", &knitmathv1.EstimateYarnRequest{Gauge: gauge, Pieces: pieces}, 10_000},
		{"PatternService/CheckInstructions", &knitmathv1.CheckInstructionsRequest{StartStitches: slices.Repeat([]int32{10_000}, 20),
			Text: strings.Repeat("Row 1: k1, [p9999, k1, p1, k1] 999 times, k to last 3 sts, p1, k1, p1 (9999 sts)\n", 500)}, 200_000},
		{"PatternService/FormatInstructions", &knitmathv1.FormatInstructionsRequest{Text: strings.Repeat("k1,p1;", 2_500)}, 10},
		{"PatternService/FormatInstructions",
			&knitmathv1.FormatInstructionsRequest{Text: strings.Repeat("k1, (yo) in next st, c4f, sl 1 wyif\n", 500)}, 30_000},
		{"PatternService/MirrorInstructions",
			&knitmathv1.MirrorInstructionsRequest{Text: strings.Repeat("skp (1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17,18,19,20) times, k5\n",
				500)}, 50_000},
	} {
		m := findMethod(t, c.method)
		body, err := answerJSON.Marshal(c.ask)
		if err != nil {
			t.Fatal(err)
		}
		answer := newMessage(t, m.desc.Output())
		if err := server.conn.Invoke(t.Context(), m.full, c.ask, answer); err != nil {
			t.Errorf("%s: %v %q", c.method, err, violations(status.Convert(err)))
			continue
		}
		size := proto.Size(answer)
		asJSON, err := answerJSON.Marshal(answer)
		if err != nil {
			t.Fatal(err)
		}
		t.Logf("%-32s %7d bytes asked, %8d answered, %8d as JSON", c.method, proto.Size(c.ask), size, len(asJSON))
		if size < c.atLeast || size > usualLimit || len(asJSON) > 2*usualLimit {
			t.Errorf("%s: a reply of %d bytes, want %d to %d", c.method, size, c.atLeast, usualLimit)
		}
		byJSON := newMessage(t, m.desc.Output())
		server.send(t, "POST", m.path, string(body)).message(t, byJSON)
		if !proto.Equal(answer, byJSON) {
			t.Errorf("%s: gRPC and JSON differ", c.method)
		}
	}
}

// A piece of ten thousand rows of five digits is answered.
func TestLongestPiece(t *testing.T) {
	server := start(t)
	rows := strings.TrimSuffix(strings.Repeat("10000,", 10_000), ",")
	body := `{"gauge":{"stitches":22,"rows":30},"pieces":[{"rowwise":{"row_stitches":[` + rows + `]}}]}`
	got := server.send(t, "POST", "/v1/yarn:estimateYarn", body)
	var answer knitmathv1.EstimateYarnResponse
	got.message(t, &answer)
	if answer.Stitches != 1e8 {
		t.Errorf("%v stitches", answer.Stitches)
	}
	// One row too many is refused with one fault, and a full list of bad rows
	// with as many faults as a reply lists.
	got = server.send(t, "POST", "/v1/yarn:estimateYarn", strings.Replace(body, "[10000,", "[10000,1,", 1))
	if list := violations(got.status(t)); len(list) != 1 || list[0] != "pieces[0].rowwise.row_stitches TOO_MANY" {
		t.Errorf("%q", list)
	}
	got = server.send(t, "POST", "/v1/yarn:estimateYarn", strings.ReplaceAll(body, "10000,", "0,"))
	if st := got.status(t); len(violations(st)) != maxViolations || len(got.body) > 20_000 {
		t.Errorf("%d bytes for %s", len(got.body), st.Message())
	}
}
