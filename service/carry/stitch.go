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
	return &knitmathv1.Instruction{
		Text:          in.Row.Text(),
		Steps:         each(in.Row.Steps, stepOut),
		StartStitches: countOut(in.StartStitches),
		EndStitches:   countOut(in.EndStitches),
	}
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

func stepOut(s stitch.Step) *knitmathv1.Step {
	switch {
	case s.ToLast != nil:
		return &knitmathv1.Step{Kind: &knitmathv1.Step_Stretch{Stretch: &knitmathv1.StepStretch{
			Operation: operationOut(s.Op), RemainingStitches: countOut(*s.ToLast)}}}
	case len(s.Group) > 0:
		var out groupOut
		out.group.Steps, out.group.Times = each(s.Group, stepOut), countOut(s.Times)
		out.kind.Group, out.step.Kind = &out.group, &out.kind
		return &out.step
	}
	var out runOut
	out.run.Operation, out.run.Times = operationOut(s.Op), countOut(s.Count)
	out.kind.Run, out.step.Kind = &out.run, &out.kind
	return &out.step
}
