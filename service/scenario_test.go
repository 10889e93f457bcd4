package service

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"google.golang.org/protobuf/encoding/protojson"
	"google.golang.org/protobuf/proto"

	pb "example.com/knitmath/gen/knitmath/v1"
)

// The whole chain runs over gRPC and over JSON, each step on the answers of the
// steps before; then the pieces must agree with one another.
func TestScenario(t *testing.T) {
	server := start(t)
	paths, err := filepath.Glob(filepath.Join("..", "testdata", "scenario", "*.json"))
	if err != nil || len(paths) < 14 {
		t.Fatalf("%d steps, %v", len(paths), err)
	}
	answers := map[string]proto.Message{}
	for _, path := range paths {
		name := strings.TrimSuffix(filepath.Base(path), ".json")
		step := readStep(t, path)
		stored := encode(t, step.Request)
		for field, from := range step.Takes {
			put(t, step.Request, field, taken(t, answers, from))
		}
		request := encode(t, step.Request)
		if !*update && !bytes.Equal(stored, request) {
			t.Errorf("%s: the request stored is not the one the steps before lead to:\n%s\n%s", name, stored, request)
		}
		m := findMethod(t, step.Method)
		req, byGRPC, byJSON := newMessage(t, m.desc.Input()), newMessage(t, m.desc.Output()), newMessage(t, m.desc.Output())
		if err := protojson.Unmarshal(request, req); err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		if err := server.conn.Invoke(t.Context(), m.full, req, byGRPC); err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		server.send(t, "POST", m.path, string(request)).message(t, byJSON)
		if !proto.Equal(byGRPC, byJSON) {
			t.Errorf("%s: gRPC and JSON differ", name)
		}
		answers[name] = byGRPC
		if *update {
			step.Response = decode(t, asJSON(t, byGRPC))
			if err := os.WriteFile(path, append(encode(t, step), '\n'), 0o644); err != nil {
				t.Fatal(err)
			}
			continue
		}
		want := newMessage(t, m.desc.Output())
		if err := protojson.Unmarshal(encode(t, step.Response), want); err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		if where := difference("", want.ProtoReflect(), byGRPC.ProtoReflect()); where != "" {
			t.Errorf("%s: answer differs at %s", name, where)
		}
	}
	scenarioAgrees(t, answers)
	sleevesAreReadBack(t, server, answers)
}

// sleevesAreReadBack has the sleeve's directions checked as a text, in all five sizes.
func sleevesAreReadBack(t *testing.T, server *running, answers map[string]proto.Message) {
	t.Helper()
	sleeves := answers["12_sleeve_sizes"].(*pb.PlanGradedTaperResponse)
	one := answers["07_sleeve"].(*pb.PlanTaperResponse)
	req := &pb.CheckInstructionsRequest{Text: strings.Join(sleeves.Directions, "\n"), Construction: pb.Construction_CONSTRUCTION_ROUND}
	for _, s := range sleeves.Sizes {
		req.StartStitches = append(req.StartStitches, s.StartStitches)
	}
	checked, err := pb.NewPatternServiceClient(server.conn).CheckInstructions(t.Context(), req)
	if err != nil || !checked.Agrees || len(checked.EndStitches) != 5 {
		t.Fatalf("%v: %v", err, checked)
	}
	for i, s := range sleeves.Sizes {
		if checked.EndStitches[i] != s.EndStitches || checked.WorkedRows[i] != s.HeightRows {
			t.Errorf("size %s: %d stitches after %d rounds", s.Name, checked.EndStitches[i], checked.WorkedRows[i])
		}
	}
	if m := sleeves.Sizes[2]; m.EndStitches != 76 || m.HeightRows != one.HeightRows || m.ShapingRows != one.ShapingRows {
		t.Errorf("the middle size is not the sleeve asked for alone: %v", m)
	}
}

// scenarioAgrees checks that the pieces fit together, count by count.
func scenarioAgrees(t *testing.T, answers map[string]proto.Message) {
	t.Helper()
	rib := answers["02_body_rib"].(*pb.ComputeCastOnResponse).Stitches.Count
	body := answers["03_body"].(*pb.ComputeCastOnResponse).Stitches.Count
	increase := answers["04_increase_round"].(*pb.PlanEvenSpacingResponse).Instruction
	cuff := answers["05_cuff"].(*pb.ComputeCastOnResponse).Stitches.Count
	sleeve := answers["07_sleeve"].(*pb.PlanTaperResponse)
	neck := answers["08_neck"].(*pb.ComputeCastOnResponse).Stitches.Count
	yoke := answers["09_yoke"].(*pb.PlanCircularYokeResponse)
	wedge := answers["10_shoulder_wedge"].(*pb.PlanWedgeResponse)
	yarn := answers["11_yarn"].(*pb.EstimateYarnResponse)
	own := answers["12_handspun"].(*pb.PlanHandspunResponse)

	last := sleeve.Rows[len(sleeve.Rows)-1]
	round := yoke.Rounds[len(yoke.Rounds)-1]
	top := wedge.Rows[len(wedge.Rows)-1]
	for what, pair := range map[string][2]int32{
		"the rib is a multiple of 4":               {rib % 4, 0},
		"the cuff is a multiple of 4":              {cuff % 4, 0},
		"the neck is a multiple of 4":              {neck % 4, 0},
		"the increase round begins on the rib":     {increase.StartStitches, rib},
		"the increase round ends on the body":      {increase.EndStitches, body},
		"the yoke joins that body":                 {yoke.BodyStitches, body},
		"the sleeve begins on the cuff":            {sleeve.RightSideRow.StartStitches, cuff},
		"the sleeve ends at the count joined":      {last.EndStitches, yoke.SleeveStitches},
		"the join is body and sleeves less arms":   {yoke.JoinStitches, yoke.BodyStitches + 2*yoke.SleeveStitches - 4*yoke.UnderarmStitches},
		"the first decrease round starts there":    {yoke.Rounds[0].StartStitches, yoke.JoinStitches},
		"the last decrease round ends at the neck": {round.EndStitches, neck},
		"the neck is the one asked for":            {yoke.NeckStitches, neck},
		"the wedge lies on half the join":          {2 * wedge.Rows[0].Instruction.StartStitches, yoke.JoinStitches},
		"the wedge keeps its stitches":             {top.Instruction.EndStitches, wedge.Rows[0].Instruction.StartStitches},
	} {
		if pair[0] != pair[1] {
			t.Errorf("%s: %d and %d", what, pair[0], pair[1])
		}
	}
	area := 0.0
	for _, p := range yarn.Pieces {
		area += p.AreaCm2
	}
	if d := area - yarn.AreaCm2; d > 1e-6 || d < -1e-6 {
		t.Errorf("the pieces have %v square cm, the whole %v", area, yarn.AreaCm2)
	}
	toy, limb, head := answers["33_toy_body"].(*pb.PlanSolidResponse), answers["31_toy_limb"].(*pb.PlanSolidResponse),
		answers["32_toy_head"].(*pb.PlanSolidResponse)
	for i, ring := range toy.Limbs {
		if ring.Stitches != limb.StartStitches || len(ring.Places) != int(limb.StartStitches) {
			t.Errorf("limb %d of the toy is picked up in %d places, and begins with %d stitches", i+1, len(ring.Places), limb.StartStitches)
		}
	}
	if len(toy.Limbs) != 4 || toy.EndStitches != head.StartStitches {
		t.Errorf("the toy's body ends with %d stitches, its head begins with %d", toy.EndStitches, head.StartStitches)
	}
	for _, part := range []*pb.PlanSolidResponse{limb, head} {
		if len(part.Notices) == 0 || part.Notices[0].Reason != "TOY_CARE" {
			t.Errorf("no care of toys: %v", part.Notices)
		}
	}
	heel, toe := answers["20_heel"].(*pb.PlanHeelResponse), answers["21_toe"].(*pb.PlanToeResponse)
	if last := heel.Rows[len(heel.Rows)-1].Instruction; last.EndStitches != toe.Rows[0].Instruction.StartStitches {
		t.Errorf("the heel leaves %d stitches, the toe begins with %d", last.EndStitches, toe.Rows[0].Instruction.StartStitches)
	}
	setInAgrees(t, answers)
	// The yoke is four pieces from the fifth on, and has every stitch of its rounds; a tenth
	// more is spun.
	metres, stitches, round1 := 0.0, 0.0, int32(1)
	for _, p := range yarn.Pieces[4:8] {
		metres += p.LengthM
		stitches += p.Stitches
	}
	worked, needle := 0.0, yoke.JoinStitches
	for _, r := range yoke.Rounds {
		worked += float64(needle)*float64(r.RoundNumber-round1) + float64(r.EndStitches)
		needle, round1 = r.EndStitches, r.RoundNumber+1
	}
	if stitches != worked {
		t.Errorf("the yoke takes yarn for %v stitches and has %v", stitches, worked)
	}
	if need := 1.1 * metres; own.Fits != pb.GaugeFit_GAUGE_FIT_FITS || *own.YarnM < need {
		t.Errorf("the handspun %v, and %v m of it are spun for %v", own.Fits, *own.YarnM, need)
	}
	left := answers["13_remaining_yarn"].(*pb.PlanRemainingYarnResponse)
	if *left.PlannedRows+35 != yoke.DepthRounds || left.Lasts != pb.YarnLasts_YARN_LASTS_LIKELY {
		t.Errorf("%d rounds are left after 35 of %d; it lasts: %v", *left.PlannedRows, yoke.DepthRounds, left.Lasts)
	}
	if float64(*yarn.BallCount)*115 < yarn.LengthM.High {
		t.Errorf("%d balls do not hold %v m", *yarn.BallCount, yarn.LengthM.High)
	}
}

// setInAgrees checks that the set-in sleeve goes into its armholes, foot to foot, edge along
// edge and shoulder to neck.
func setInAgrees(t *testing.T, answers map[string]proto.Message) {
	t.Helper()
	body := answers["03_body"].(*pb.ComputeCastOnResponse).Stitches.Count
	sleeve := answers["30_flat_sleeve"].(*pb.PlanTaperResponse)
	set := answers["31_set_in_sleeve"].(*pb.PlanArmholeResponse)
	neck := answers["32_set_in_neck"].(*pb.PlanNecklineResponse)
	top := sleeve.Rows[len(sleeve.Rows)-1].EndStitches
	lost := func(p *pb.ArmholePiece, row int) int32 {
		return p.Rows[row].Instruction.StartStitches - p.Rows[row].Instruction.EndStitches
	}
	for what, pair := range map[string][2]int32{
		"back and front are the body":           {set.Back.StartStitches + set.Front.StartStitches, body},
		"the cap begins where the sleeve ends":  {set.Cap.StartStitches, top},
		"the feet are bound off alike":          {lost(set.Cap, 0), lost(set.Back, 0)},
		"on the left too":                       {lost(set.Cap, 1), lost(set.Front, 1)},
		"the cap is bound off to the last":      {set.Cap.Rows[len(set.Cap.Rows)-1].Instruction.EndStitches, 0},
		"neck and shoulders are what is across": {neck.NeckStitches + 2*neck.ShoulderStitches, set.Back.EndStitches},
	} {
		if pair[0] != pair[1] {
			t.Errorf("%s: %d and %d", what, pair[0], pair[1])
		}
	}
	around := set.Back.EdgeCm + set.Front.EdgeCm
	if more := 2*set.Cap.EdgeCm/around - 1; more < 0 || more > 0.05 {
		t.Errorf("the cap's edge is %v of the armhole's longer", more)
	}
}
