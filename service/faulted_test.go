package service

import (
	"slices"
	"testing"

	"google.golang.org/genproto/googleapis/rpc/errdetails"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/proto"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/fault"
)

// TestFaultsAreOfWhatWasGiven asks every bad case, and every good and bad one with each
// field at its bounds, and wants a value that is blamed to be one that the question has: a
// page cannot mark a field that nobody filled in. What is missing may be named, and so may
// be what it excludes or needs.
func TestFaultsAreOfWhatWasGiven(t *testing.T) {
	server := start(t)
	ofValues := []fault.Reason{fault.ReasonInfeasible, fault.ReasonOutOfRange, fault.ReasonTooMany, fault.ReasonNotFinite,
		fault.ReasonUnreadable}
	for m, bases := range basesByMethod(t) {
		t.Run(string(m.desc.Name()), func(t *testing.T) {
			said := map[string]bool{}
			check := func(question proto.Message, asked string) {
				for _, v := range blamed(server.refusal(t, m, question)) {
					key := v.GetField() + " " + v.GetReason()
					if said[key] || !slices.Contains(ofValues, fault.Reason(v.GetReason())) || v.GetField() == "" ||
						holds(question.ProtoReflect(), v.GetField()) || advised[string(m.desc.Name())+" "+v.GetField()] {
						continue
					}
					said[key] = true
					t.Errorf("%s: %s is not given, and is blamed: %s (%s)\n%v", asked, v.GetField(), v.GetReason(), v.GetDescription(), question)
				}
			}
			for _, base := range bases {
				check(base, "as it is")
				for _, at := range places(m.desc.Input()) {
					for _, probe := range probes(at.last()) {
						question := proto.CloneOf(base)
						at.set(question.ProtoReflect(), probe)
						check(question, at.path()+" is "+probe.name)
					}
				}
			}
		})
	}
}

// advised are fields at which a refusal says, each by itself, what could be written in them:
// to how many stitches a part of the raglan comes in its rounds.
var advised = map[string]bool{
	"PlanRaglan front_neck_stitches": true, "PlanRaglan back_neck_stitches": true, "PlanRaglan sleeve_top_stitches": true,
}

// blamed are the violations of a refusal.
func blamed(st *status.Status) []*errdetails.BadRequest_FieldViolation {
	if st == nil {
		return nil
	}
	for _, d := range st.Details() {
		if bad, ok := d.(*errdetails.BadRequest); ok {
			return bad.FieldViolations
		}
	}
	return nil
}

func TestHolds(t *testing.T) {
	question := &knitmathv1.PlanCircularYokeRequest{Gauge: &knitmathv1.Gauge{Stitches: 20}, Bands: []*knitmathv1.YokeBand{{RepeatStitches: 6}}}
	for path, want := range map[string]bool{
		"gauge": true, "gauge.stitches": true, "gauge.rows": true, "gauge.over_cm": false, "schedule": true, "neck_cm": false,
		"bands": true, "bands[0]": true, "bands[0].repeat_stitches": true, "bands[1].repeat_stitches": false, "bands[x]": false,
		"bands.repeat_stitches": false, "back_raise.rise_rows": false, "nothing": false, "schedule.deeper": false, "": false,
	} {
		if got := holds(question.ProtoReflect(), path); got != want {
			t.Errorf("%q: %v, want %v", path, got, want)
		}
	}
}
