package service

import (
	"fmt"
	"maps"
	"net/http"
	"net/http/httptest"
	"strconv"
	"testing"
	"time"

	"google.golang.org/genproto/googleapis/rpc/errdetails"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/proto"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

// checkCut wants a list of faults that was cut to say, in words and for machines,
// how many there are.
func checkCut(t *testing.T, st *status.Status, faults int) {
	t.Helper()
	listed := len(violations(st))
	if listed < 20 || listed > maxViolations {
		t.Errorf("%d faults listed", listed)
	}
	if want := fmt.Sprintf("the question has %d faults; the first %d are listed", faults, listed); st.Message() != want {
		t.Errorf("%q, want %q", st.Message(), want)
	}
	info, ok := st.Details()[0].(*errdetails.ErrorInfo)
	want := map[string]string{"faults": strconv.Itoa(faults), "listed": strconv.Itoa(listed)}
	if !ok || !maps.Equal(info.GetMetadata(), want) {
		t.Errorf("%v, want metadata %v", st.Details()[0], want)
	}
}

// A question with three hundred faults is told so, on both faces, although fewer
// are listed by the kernel and fewer still by the transport.
func TestFaultsAreCountedToTheEnd(t *testing.T) {
	server := start(t)
	gauge := &knitmathv1.Gauge{Stitches: 22, Rows: 30}
	items := make([]*knitmathv1.PatternCount, 300)
	for i := range items {
		items[i] = &knitmathv1.PatternCount{Kind: knitmathv1.CountKind_COUNT_KIND_ROWS} // and no count
	}
	steps := make([]*knitmathv1.PatternStep, 100)
	for i := range steps {
		steps[i] = &knitmathv1.PatternStep{} // neither an operation nor a name nor steps
	}
	row := &knitmathv1.PatternRow{Steps: steps}
	for _, c := range []struct {
		method string
		ask    proto.Message
	}{
		{"GaugeService/ConvertGauge", &knitmathv1.ConvertGaugeRequest{PatternGauge: gauge, OwnGauge: gauge, Items: items}},
		{"PatternService/FormatInstructions", &knitmathv1.FormatInstructionsRequest{Rows: []*knitmathv1.PatternRow{row, row, row}}},
	} {
		m := findMethod(t, c.method)
		err := server.conn.Invoke(t.Context(), m.full, c.ask, newMessage(t, m.desc.Output()))
		checkCut(t, status.Convert(err), 300)
		body, err := answerJSON.Marshal(c.ask)
		if err != nil {
			t.Fatal(err)
		}
		st := server.send(t, "POST", m.path, string(body)).status(t)
		checkCut(t, st, 300)
		if len(violations(st)) != maxViolations {
			t.Errorf("%s: %d listed", c.method, len(violations(st)))
		}
	}
}

// A refusal for load says how long to wait, as gRPC does and, in whole seconds
// rounded up, as HTTP does; other refusals do not.
func TestOverloadedSaysWhenToTryAgain(t *testing.T) {
	for _, c := range []struct {
		st   *status.Status
		want string
	}{
		{overloaded("OVERLOADED", "later", 1200*time.Millisecond), "2"},
		{overloaded("OVERLOADED", "later", time.Second), "1"},
		{overloaded("OVERLOADED", "later", time.Millisecond), "1"},
		{refusal(codes.NotFound, "UNKNOWN_PATH", "no"), ""},
	} {
		w := httptest.NewRecorder()
		writeStatus(w, http.StatusTooManyRequests, c.st)
		if got := w.Header().Get("Retry-After"); got != c.want {
			t.Errorf("Retry-After %q for %v, want %q", got, c.st, c.want)
		}
	}
	st := overloaded("OVERLOADED", "later", time.Second)
	info, ok := st.Details()[1].(*errdetails.RetryInfo)
	if !ok || info.GetRetryDelay().AsDuration() != time.Second || errorInfo(st) != "OVERLOADED" {
		t.Errorf("details %v", st.Details())
	}
}
