package service

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"
	"testing"

	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/status"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/service/carry"
)

func TestPathsOfAnAnswer(t *testing.T) {
	server := start(t)
	ask := func(paths ...string) error {
		_, err := knitmathv1.NewGaugeServiceClient(server.conn).ComputeCastOn(t.Context(), &knitmathv1.ComputeCastOnRequest{
			Gauge: &knitmathv1.Gauge{Stitches: 22, Rows: 30}, WidthCm: new(50.0), Fields: paths})
		return err
	}
	for _, c := range []struct {
		name   string
		paths  []string
		faults []string
	}{
		{"as many as there may be", slices.Repeat([]string{"summary"}, maxPaths), nil},
		{"one more", slices.Repeat([]string{"summary"}, maxPaths+1), []string{"fields TOO_MANY"}},
		{"too long", []string{strings.Repeat("é", maxPathLength+1)}, []string{"fields[0] TOO_MANY"}},
		{"long and unknown", []string{strings.Repeat("é", maxPathLength)}, []string{"fields[0] UNKNOWN_FIELD"}},
		{"nothing, and no names", []string{"", "stitches.", ".summary", "stitches..halfway", "."},
			[]string{"fields[0] UNKNOWN_FIELD", "fields[1] UNKNOWN_FIELD", "fields[2] UNKNOWN_FIELD", "fields[3] UNKNOWN_FIELD",
				"fields[4] UNKNOWN_FIELD"}},
		{"other ways of writing", []string{"Summary", "stitches.differenceCm", "sources[0]", "sources.0.figure", "*", " summary",
			"stitches/halfway"},
			[]string{"fields[0] UNKNOWN_FIELD", "fields[1] UNKNOWN_FIELD", "fields[2] UNKNOWN_FIELD", "fields[3] UNKNOWN_FIELD",
				"fields[4] UNKNOWN_FIELD", "fields[5] UNKNOWN_FIELD", "fields[6] UNKNOWN_FIELD"}},
		{"a field of the question", []string{"width_cm"}, []string{"fields[0] UNKNOWN_FIELD"}},
	} {
		if got := violations(status.Convert(ask(c.paths...))); !slices.Equal(got, c.faults) {
			t.Errorf("%s: %q, want %q", c.name, got, c.faults)
		}
	}
	// The description says where the path ends and what there is.
	for path, want := range map[string]string{
		"stitches.widht": `is no path of the answer: there is no field "widht"; there are`,
		"summary.text":   "is no path of the answer: summary has no fields of its own",
	} {
		if got := fmt.Sprint(status.Convert(ask(path)).Proto()); !strings.Contains(strings.ReplaceAll(got, `\"`, `"`), want) {
			t.Errorf("%s: %s", path, got)
		}
	}
}

// A method with fields whose answer is not known fails as any fault of ours does.
func TestFieldsOfAnUnknownAnswer(t *testing.T) {
	local := newInProcess(refuseUnary)
	registerOdd(local)
	err := local.Invoke(t.Context(), "/knitmath.test.OddService/Metadata",
		&knitmathv1.ComputeCastOnRequest{Fields: []string{"summary"}}, &knitmathv1.ComputeCastOnResponse{})
	if st := status.Convert(err); st.Code() != codes.Internal || st.Message() != internalText {
		t.Errorf("%v", err)
	}
}

// FuzzFollowPath wants a path to be either refused with words or followed to its
// end, and the mask of it to leave JSON that can be read.
func FuzzFollowPath(f *testing.F) {
	for _, s := range []string{"summary", "rows.instruction.steps.group.steps.run.operation", "rows.", ".", "", "rows.instruction.text.x",
		"\xff"} {
		f.Add(s)
	}
	local := newInProcess(pass)
	carry.Register(local)
	answer := &knitmathv1.PlanWedgeResponse{}
	if err := local.Invoke(f.Context(), "/knitmath.v1.ShortRowService/PlanWedge", wedgeQuestion(), answer); err != nil {
		f.Fatal(err)
	}
	f.Fuzz(func(t *testing.T, path string) {
		along, wrong := followPath(answer.ProtoReflect().Descriptor(), path)
		names := make([]string, len(along))
		for i, fd := range along {
			names[i] = string(fd.Name())
		}
		if wrong != "" {
			if len(along) > 0 {
				t.Errorf("%q: %q and %q", path, names, wrong)
			}
			return
		}
		if strings.Join(names, ".") != path {
			t.Errorf("%q was taken for %q", path, names)
		}
		part := mask{}
		part.add(along)
		data, err := partialAnswer{answer, part}.MarshalJSON()
		if err != nil || !json.Valid(data) || len(data) < len(path) {
			t.Errorf("%q: %v %s", path, err, data)
		}
	})
}
