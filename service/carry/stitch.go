package carry

import (
	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/stitch"
)

// operations is the stitch operation of every wire number. The orders agree
// today; the table keeps a new line in one of them from moving the others.
var operations = map[knitmathv1.Operation]stitch.Op{
	knitmathv1.Operation_OPERATION_UNSPECIFIED:         0,
	knitmathv1.Operation_OPERATION_KNIT:                stitch.Knit,
	knitmathv1.Operation_OPERATION_PURL:                stitch.Purl,
	knitmathv1.Operation_OPERATION_SLIP:                stitch.Slip,
	knitmathv1.Operation_OPERATION_KNIT_TBL:            stitch.KnitTbl,
	knitmathv1.Operation_OPERATION_PURL_TBL:            stitch.PurlTbl,
	knitmathv1.Operation_OPERATION_K2TOG:               stitch.K2tog,
	knitmathv1.Operation_OPERATION_SSK:                 stitch.SSK,
	knitmathv1.Operation_OPERATION_P2TOG:               stitch.P2tog,
	knitmathv1.Operation_OPERATION_SSP:                 stitch.SSP,
	knitmathv1.Operation_OPERATION_SKP:                 stitch.SKP,
	knitmathv1.Operation_OPERATION_K3TOG:               stitch.K3tog,
	knitmathv1.Operation_OPERATION_SSSK:                stitch.SSSK,
	knitmathv1.Operation_OPERATION_P3TOG:               stitch.P3tog,
	knitmathv1.Operation_OPERATION_SSSP:                stitch.SSSP,
	knitmathv1.Operation_OPERATION_CDD:                 stitch.CDD,
	knitmathv1.Operation_OPERATION_SK2P:                stitch.SK2P,
	knitmathv1.Operation_OPERATION_M1L:                 stitch.M1L,
	knitmathv1.Operation_OPERATION_M1R:                 stitch.M1R,
	knitmathv1.Operation_OPERATION_M1LP:                stitch.M1LP,
	knitmathv1.Operation_OPERATION_M1RP:                stitch.M1RP,
	knitmathv1.Operation_OPERATION_M1:                  stitch.M1,
	knitmathv1.Operation_OPERATION_M1P:                 stitch.M1P,
	knitmathv1.Operation_OPERATION_KFB:                 stitch.KFB,
	knitmathv1.Operation_OPERATION_PFB:                 stitch.PFB,
	knitmathv1.Operation_OPERATION_YARN_OVER:           stitch.YO,
	knitmathv1.Operation_OPERATION_CAST_ON:             stitch.CastOn,
	knitmathv1.Operation_OPERATION_BIND_OFF:            stitch.BindOff,
	knitmathv1.Operation_OPERATION_PLACE_MARKER:        stitch.PlaceMarker,
	knitmathv1.Operation_OPERATION_SLIP_MARKER:         stitch.SlipMarker,
	knitmathv1.Operation_OPERATION_TURN:                stitch.Turn,
	knitmathv1.Operation_OPERATION_WRAP_AND_TURN:       stitch.WrapTurn,
	knitmathv1.Operation_OPERATION_MAKE_DOUBLE:         stitch.MakeDouble,
	knitmathv1.Operation_OPERATION_KNIT_DOUBLE:         stitch.KnitDouble,
	knitmathv1.Operation_OPERATION_PURL_DOUBLE:         stitch.PurlDouble,
	knitmathv1.Operation_OPERATION_KNIT_WRAPPED:        stitch.KnitWrapped,
	knitmathv1.Operation_OPERATION_PURL_WRAPPED:        stitch.PurlWrapped,
	knitmathv1.Operation_OPERATION_SHORT_ROW_YARN_OVER: stitch.ShortRowYO,
	knitmathv1.Operation_OPERATION_PICK_UP:             stitch.PickUp,
	knitmathv1.Operation_OPERATION_PICK_UP_TWO:         stitch.PickUpTwo,
	knitmathv1.Operation_OPERATION_SKIP_ROW:            stitch.SkipRow,
	knitmathv1.Operation_OPERATION_HOLD:                stitch.Hold,
}

// wireNumbers is operations read the other way.
var wireNumbers = func() (numbers [1 << 8]knitmathv1.Operation) {
	for number, op := range operations {
		numbers[op] = number
	}
	return numbers
}()

// unknownOp is no operation: the kernel refuses it as an unknown value.
const unknownOp = ^stitch.Op(0)

func operationIn(number knitmathv1.Operation) stitch.Op {
	if op, ok := operations[number]; ok {
		return op
	}
	return unknownOp
}

func operationOut(op stitch.Op) knitmathv1.Operation { return wireNumbers[op] }

func instructionOut(in stitch.Instruction) *knitmathv1.Instruction {
	out := new(knitmathv1.Instruction)
	fillInstruction(out, in)
	return out
}

// fillInstruction is instructionOut in memory that is there.
func fillInstruction(out *knitmathv1.Instruction, in stitch.Instruction) {
	out.Text, out.Steps = in.Row.Text(), stepsOut(in.Row.Steps)
	out.StartStitches, out.EndStitches = countOut(in.StartStitches), countOut(in.EndStitches)
}

// runOut and groupOut are steps with all that they point to, in one piece of memory: no answer has more
// messages of another kind.
type runOut struct {
	step knitmathv1.Step
	kind knitmathv1.Step_Run
	run  knitmathv1.OperationRun
}

type groupOut struct {
	step  knitmathv1.Step
	kind  knitmathv1.Step_Group
	group knitmathv1.StepGroup
}

// stepsOut has all runs of a list in one piece, too.
func stepsOut(from []stitch.Step) []*knitmathv1.Step {
	if len(from) == 0 {
		return nil
	}
	runs := 0
	for i := range from {
		if from[i].ToLast == nil && len(from[i].Group) == 0 {
			runs++
		}
	}
	to, rooms := make([]*knitmathv1.Step, len(from)), make([]runOut, runs)
	for i := range from {
		switch s := &from[i]; {
		case s.ToLast != nil:
			to[i] = &knitmathv1.Step{Kind: &knitmathv1.Step_Stretch{Stretch: &knitmathv1.StepStretch{
				Operation: operationOut(s.Op), RemainingStitches: countOut(*s.ToLast)}}}
		case len(s.Group) > 0:
			out := new(groupOut)
			out.group.Steps, out.group.Times = stepsOut(s.Group), countOut(s.Times)
			out.kind.Group, out.step.Kind = &out.group, &out.kind
			to[i] = &out.step
		default:
			out := &rooms[0]
			rooms = rooms[1:]
			out.run.Operation, out.run.Times = operationOut(s.Op), countOut(s.Count)
			out.kind.Run, out.step.Kind = &out.run, &out.kind
			to[i] = &out.step
		}
	}
	return to
}
