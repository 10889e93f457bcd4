package service

import (
	"net/http"
	"strings"
	"testing"

	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/credentials/insecure"
	"google.golang.org/grpc/status"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

// Usual clients refuse trailers beyond 8 KiB, and would lose every fault with
// them: the longest list of faults arrives at one.
func TestFaultsFitInATrailer(t *testing.T) {
	server := start(t)
	conn, err := grpc.NewClient(server.GRPCAddr().String(), grpc.WithTransportCredentials(insecure.NewCredentials()),
		grpc.WithMaxHeaderListSize(8<<10))
	if err != nil {
		t.Fatal(err)
	}
	defer conn.Close()
	question := &knitmathv1.PlanWedgeRequest{WidthStitches: 20, RiseRows: new(int32(8)), TallEnd: knitmathv1.TallEnd_TALL_END_RIGHT}
	for range 50 {
		question.Fields = append(question.Fields, strings.Repeat("z", maxPathLength-3))
	}
	_, err = knitmathv1.NewShortRowServiceClient(conn).PlanWedge(t.Context(), question)
	if st := status.Convert(err); st.Code() != codes.InvalidArgument || len(violations(st)) < 10 {
		t.Errorf("%v", err)
	}
}

// What a GET may be asked for besides its question changes nothing of the answer.
func TestHeadersOfAGet(t *testing.T) {
	server := start(t)
	whole := server.send(t, "GET", castOnQuery, "")
	for _, header := range [][2]string{
		{"Range", "bytes=0-9"}, {"Range", "bytes=9999999-"}, {"Range", "rows=1"}, {"If-Match", `"a"`},
		{"If-Unmodified-Since", "Sun, 06 Nov 1994 08:49:37 GMT"}, {"Te", "trailers"}, {"Grpc-Timeout", "1n"}, {"Grpc-Timeout", "soon"},
	} {
		got := server.send(t, "GET", castOnQuery, "", header[0], header[1])
		if got.code != http.StatusOK || len(got.body) != len(whole.body) || got.header.Get("Accept-Ranges") != "" {
			t.Errorf("%v: HTTP %d, %d bytes instead of %d", header, got.code, len(got.body), len(whole.body))
		}
	}
}

// The log says which fields were at fault and nothing in the words of the caller,
// of which names of fields that do not exist are some.
func TestLogHoldsNoNamesOfTheCaller(t *testing.T) {
	server := start(t)
	server.send(t, "POST", castOnPath, `{"my secret": 1, "gauge": {"Dear diary": 2}}`)
	server.send(t, "GET", castOnQuery+"&my+secret=1", "")
	server.send(t, "POST", castOnPath, `{"fields": ["Dear diary"]}`)
	log := server.log.String()
	if strings.Contains(log, "secret") || strings.Contains(log, "diary") || strings.Count(log, "? UNKNOWN_FIELD") != 3 ||
		!strings.Contains(log, "fields[0] UNKNOWN_FIELD") {
		t.Errorf("%s", log)
	}
}

// The faults of a link are counted to the end, as those of a body are.
func TestFaultsOfALinkAreCounted(t *testing.T) {
	server := start(t)
	query := castOnQuery
	for i := range 60 {
		query += "&u" + strings.Repeat("x", i) + "=1"
	}
	checkCut(t, server.send(t, "GET", query, "").status(t), 60)
}
