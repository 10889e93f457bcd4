package carry

import (
	"strings"
	"testing"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/stitch"
)

// The comment of every Operation begins with the abbreviation and "takes to
// leaves"; the names of both sides are compared instead, which the generated
// code does carry.
func TestOperationsAgree(t *testing.T) {
	if want, got := len(stitch.Ops())+1, len(operations); got != want {
		t.Errorf("%d lines in the table for %d operations", got, want)
	}
	for number, name := range knitmathv1.Operation_name {
		op, ok := operations[knitmathv1.Operation(number)]
		switch {
		case !ok:
			t.Errorf("%s has no line", name)
		case number != int32(op):
			t.Errorf("%s is %d on the wire and %d in the kernel", name, number, op)
		case operationOut(op) != knitmathv1.Operation(number):
			t.Errorf("%s comes back as %s", name, operationOut(op))
		}
		// k2tog is OPERATION_K2TOG; operations whose abbreviation is not their
		// name are told apart by the count below.
		if strings.EqualFold("OPERATION_"+op.Abbr(), name) {
			continue
		}
		if _, clash := knitmathv1.Operation_value["OPERATION_"+strings.ToUpper(op.Abbr())]; clash {
			t.Errorf("%s is mapped to %s", name, op.Abbr())
		}
	}
	if operationIn(9999).Valid() || operationIn(-1).Valid() {
		t.Error("an unknown number became an operation")
	}
}

// compareInstruction compares a row with its text and its tree.
func compareInstruction(t *testing.T, at string, wire *knitmathv1.Instruction, in stitch.Instruction) {
	t.Helper()
	if wire.Text != in.Row.Text() || wire.Text == "" ||
		int(wire.StartStitches) != in.StartStitches || int(wire.EndStitches) != in.EndStitches {
		t.Errorf("%s: %v on the wire, %+v in the kernel", at, wire, in)
	}
	compareSteps(t, at, wire.Steps, in.Row.Steps)
}

func compareSteps(t *testing.T, at string, wire []*knitmathv1.Step, steps []stitch.Step) {
	t.Helper()
	if len(wire) != len(steps) {
		t.Errorf("%s: %d steps on the wire, %d in the kernel", at, len(wire), len(steps))
		return
	}
	for i, s := range steps {
		same := false
		switch kind := wire[i].Kind.(type) {
		case *knitmathv1.Step_Run:
			same = s.ToLast == nil && s.Group == nil && s.Count == int(kind.Run.Times) && operationOut(s.Op) == kind.Run.Operation
		case *knitmathv1.Step_Stretch:
			same = s.ToLast != nil && *s.ToLast == int(kind.Stretch.RemainingStitches) && operationOut(s.Op) == kind.Stretch.Operation
		case *knitmathv1.Step_Group:
			same = s.Times == int(kind.Group.Times)
			compareSteps(t, at+".group", kind.Group.Steps, s.Group)
		}
		if !same {
			t.Errorf("%s: step %d is %v on the wire, %+v in the kernel", at, i, wire[i], s)
		}
	}
}
