package carry

import (
	"fmt"
	"reflect"
	"strings"
	"testing"

	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/reflect/protoregistry"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// A field that nobody carries is a question half asked. The carriers are written
// by hand, so these tests fill every field with a value of its own, carry it, and
// look for it under the same name on the other side: width_cm and WidthCm.

// carriers are all methods: how a question is carried in and an answer out.
var carriers = []struct {
	question, answer proto.Message
	in               func(proto.Message) any
	out              func() (kernel any, wire proto.Message)
}{
	{&knitmathv1.ComputeGaugeRequest{}, &knitmathv1.ComputeGaugeResponse{}, inBy(swatchIn), outBy(swatchOut)},
	{&knitmathv1.ComputeCastOnRequest{}, &knitmathv1.ComputeCastOnResponse{}, inBy(castOnIn), outBy(castOnOut)},
	{&knitmathv1.ConvertGaugeRequest{}, &knitmathv1.ConvertGaugeResponse{}, inBy(conversionIn), outBy(conversionOut)},
	{&knitmathv1.PlanEvenSpacingRequest{}, &knitmathv1.PlanEvenSpacingResponse{}, inBy(spacingIn), outBy(spacingOut)},
	{&knitmathv1.PlanTaperRequest{}, &knitmathv1.PlanTaperResponse{}, inBy(taperIn), outBy(taperOut)},
	{&knitmathv1.PlanGradedTaperRequest{}, &knitmathv1.PlanGradedTaperResponse{}, inBy(gradedTaperIn), outBy(gradedTaperOut)},
	{&knitmathv1.PlanShapedSideRequest{}, &knitmathv1.PlanShapedSideResponse{}, inBy(shapedSideIn), outBy(shapedSideOut)},
	{&knitmathv1.PlanCurvedEdgeRequest{}, &knitmathv1.PlanCurvedEdgeResponse{}, inBy(curvedEdgeIn), outBy(curvedEdgeOut)},
	{&knitmathv1.PlanWedgeRequest{}, &knitmathv1.PlanWedgeResponse{}, inBy(wedgeIn), outBy(wedgeOut)},
	{&knitmathv1.PlanCircleOfWedgesRequest{}, &knitmathv1.PlanCircleOfWedgesResponse{}, inBy(circleIn), outBy(circleOut)},
	{&knitmathv1.PlanCircularYokeRequest{}, &knitmathv1.PlanCircularYokeResponse{}, inBy(yokeIn), outBy(yokeOut)},
	{&knitmathv1.PlanRaglanRequest{}, &knitmathv1.PlanRaglanResponse{}, inBy(raglanIn), outBy(raglanOut)},
	{&knitmathv1.PlanSolidRequest{}, &knitmathv1.PlanSolidResponse{}, inBy(solidIn), outBy(solidOut)},
	{&knitmathv1.PlanFlatShapeRequest{}, &knitmathv1.PlanFlatShapeResponse{}, inBy(flatIn), outBy(flatOut)},
	{&knitmathv1.PlanArmholeRequest{}, &knitmathv1.PlanArmholeResponse{}, inBy(armholeIn), outBy(armholeOut)},
	{&knitmathv1.PlanPickUpRequest{}, &knitmathv1.PlanPickUpResponse{}, inBy(pickUpIn), outBy(pickUpOut)},
	{&knitmathv1.PlanButtonholesRequest{}, &knitmathv1.PlanButtonholesResponse{}, inBy(buttonholesIn), outBy(buttonholesOut)},
	{&knitmathv1.PlanHeelRequest{}, &knitmathv1.PlanHeelResponse{}, inBy(heelIn), outBy(heelOut)},
	{&knitmathv1.PlanToeRequest{}, &knitmathv1.PlanToeResponse{}, inBy(toeIn), outBy(toeOut)},
	{&knitmathv1.PlanMittenTopRequest{}, &knitmathv1.PlanMittenTopResponse{}, inBy(mittenTopIn), outBy(mittenTopOut)},
	{&knitmathv1.PlanThumbRequest{}, &knitmathv1.PlanThumbResponse{}, inBy(thumbIn), outBy(thumbOut)},
	{&knitmathv1.PlanCrownRequest{}, &knitmathv1.PlanCrownResponse{}, inBy(crownIn), outBy(crownOut)},
	{&knitmathv1.PlanNecklineRequest{}, &knitmathv1.PlanNecklineResponse{}, inBy(necklineIn), outBy(necklineOut)},
	{&knitmathv1.EstimateYarnRequest{}, &knitmathv1.EstimateYarnResponse{}, inBy(estimateIn), outBy(estimateOut)},
	{&knitmathv1.ConvertYarnCountRequest{}, &knitmathv1.ConvertYarnCountResponse{}, inBy(countConversionIn), outBy(countConversionOut)},
	{&knitmathv1.DescribeYarnRequest{}, &knitmathv1.DescribeYarnResponse{}, inBy(descriptionIn), outBy(descriptionOut)},
	{&knitmathv1.CompareYarnsRequest{}, &knitmathv1.CompareYarnsResponse{}, inBy(comparisonIn), outBy(comparisonOut)},
	{&knitmathv1.ListNeedleSizesRequest{}, &knitmathv1.ListNeedleSizesResponse{}, inBy(needleListIn), outBy(needleListOut)},
	{&knitmathv1.ListYarnWeightsRequest{}, &knitmathv1.ListYarnWeightsResponse{}, inBy(weightListIn), outBy(weightListOut)},
	{&knitmathv1.ListBodySizesRequest{}, &knitmathv1.ListBodySizesResponse{}, inBy(bodyListIn), outBy(bodyListOut)},
	{&knitmathv1.ListAbbreviationsRequest{}, &knitmathv1.ListAbbreviationsResponse{}, inBy(abbreviationListIn), outBy(abbreviationListOut)},
	{&knitmathv1.PlanRemainingYarnRequest{}, &knitmathv1.PlanRemainingYarnResponse{}, inBy(remainingIn), outBy(remainingOut)},
	{&knitmathv1.PlanHandspunRequest{}, &knitmathv1.PlanHandspunResponse{}, inBy(handspunIn), outBy(handspunOut)},
	{&knitmathv1.CheckInstructionsRequest{}, &knitmathv1.CheckInstructionsResponse{},
		inBy(checkInstructionsIn), outBy(checkedInstructionsOut)},
	{&knitmathv1.FormatInstructionsRequest{}, &knitmathv1.FormatInstructionsResponse{},
		inBy(formatInstructionsIn), outBy(writtenInstructionsOut)},
	{&knitmathv1.MirrorInstructionsRequest{}, &knitmathv1.MirrorInstructionsResponse{},
		inBy(mirrorInstructionsIn), outBy(mirroredInstructionsOut)},
}

func inBy[Q proto.Message, In any](carry func(Q) In) func(proto.Message) any {
	return func(m proto.Message) any { return carry(m.(Q)) }
}

func outBy[Out any, A proto.Message](carry func(Out) A) func() (any, proto.Message) {
	return func() (any, proto.Message) {
		var out Out
		(&filler{}).goValue(reflect.ValueOf(&out).Elem())
		return out, carry(out)
	}
}

func TestEveryMethodIsCarried(t *testing.T) {
	carried := map[protoreflect.FullName]bool{}
	for _, c := range carriers {
		carried[c.question.ProtoReflect().Descriptor().FullName()] = true
	}
	protoregistry.GlobalFiles.RangeFilesByPackage("knitmath.v1", func(file protoreflect.FileDescriptor) bool {
		for i := range file.Services().Len() {
			methods := file.Services().Get(i).Methods()
			for k := range methods.Len() {
				if m := methods.Get(k); !carried[m.Input().FullName()] {
					t.Errorf("%s has no line in the table above", m.FullName())
				}
			}
		}
		return true
	})
}

func TestQuestionsAreCarriedWhole(t *testing.T) {
	for _, c := range carriers {
		t.Run(string(c.question.ProtoReflect().Descriptor().Name()), func(t *testing.T) {
			// A oneof holds one thing at a time: each of its members has a turn.
			for turn := range 3 {
				m := c.question.ProtoReflect().New()
				(&filler{turn: turn}).message(m)
				compare(t, "", m, reflect.ValueOf(c.in(m.Interface())))
			}
			compare(t, "", c.question.ProtoReflect().New(), reflect.ValueOf(c.in(c.question.ProtoReflect().New().Interface())))
		})
	}
}

func TestAnswersAreCarriedWhole(t *testing.T) {
	for _, c := range carriers {
		t.Run(string(c.answer.ProtoReflect().Descriptor().Name()), func(t *testing.T) {
			kernel, wire := c.out()
			compare(t, "", wire.ProtoReflect(), reflect.ValueOf(kernel))
		})
	}
}

// compare looks for every field of a message in the kernel's struct of the same
// meaning, and for fields of the struct that the message does not have.
func compare(t *testing.T, path string, m protoreflect.Message, kernel reflect.Value) {
	t.Helper()
	if in, ok := kernel.Interface().(stitch.Instruction); ok {
		compareInstruction(t, path, m.Interface().(*knitmathv1.Instruction), in)
		return
	}
	known := map[string]bool{}
	fields := m.Descriptor().Fields()
	for i := range fields.Len() {
		fd := fields.Get(i)
		at := fault.Join(path, string(fd.Name()))
		name := goName(fd)
		if fd.Name() == "fields" && path == "" {
			continue // What to send of the answer is the transport's business.
		}
		if name == "Summary" || name == "Directions" || name == "Sources" {
			compareMethod(t, at, m.Get(fd), kernel.MethodByName(name))
			continue
		}
		known[name] = true
		v := kernel.FieldByNameFunc(func(s string) bool { return strings.EqualFold(s, name) })
		if !v.IsValid() {
			t.Errorf("%s: %s has no field %s", at, kernel.Type(), name)
			continue
		}
		compareField(t, at, m, fd, v)
	}
	for i := range kernel.NumField() {
		f := kernel.Type().Field(i)
		if f.IsExported() && !known[f.Name] && !known[foldedName(known, f.Name)] {
			t.Errorf("%s: %s.%s is on no message", path, kernel.Type(), f.Name)
		}
	}
}

func foldedName(known map[string]bool, name string) string {
	for k := range known {
		if strings.EqualFold(k, name) {
			return k
		}
	}
	return ""
}

// goName is WidthCm for width_cm.
func goName(fd protoreflect.FieldDescriptor) string {
	name := ""
	for _, word := range strings.Split(string(fd.Name()), "_") {
		name += strings.ToUpper(word[:1]) + word[1:]
	}
	return name
}

func compareField(t *testing.T, at string, m protoreflect.Message, fd protoreflect.FieldDescriptor, v reflect.Value) {
	t.Helper()
	if fd.IsList() {
		list := m.Get(fd).List()
		if v.Len() != list.Len() {
			t.Errorf("%s: %d items on the wire, %d in the kernel", at, list.Len(), v.Len())
			return
		}
		for i := range list.Len() {
			compareValue(t, fmt.Sprintf("%s[%d]", at, i), fd, list.Get(i), v.Index(i))
		}
		return
	}
	if v.Kind() == reflect.Pointer {
		if m.Has(fd) == v.IsNil() {
			t.Errorf("%s: present on the wire %v, in the kernel %v", at, m.Has(fd), !v.IsNil())
			return
		}
		if v.IsNil() {
			return
		}
		v = v.Elem()
	}
	compareValue(t, at, fd, m.Get(fd), v)
}

func compareValue(t *testing.T, at string, fd protoreflect.FieldDescriptor, want protoreflect.Value, got reflect.Value) {
	t.Helper()
	if fd.Message() != nil {
		compare(t, at, want.Message(), got)
		return
	}
	same := false
	switch fd.Kind() {
	case protoreflect.EnumKind:
		if op, ok := got.Interface().(stitch.Op); ok {
			same = operationOut(op) == knitmathv1.Operation(want.Enum())
		} else {
			same = got.Int() == int64(want.Enum())
		}
	case protoreflect.Int32Kind:
		same = got.Int() == want.Int()
	case protoreflect.DoubleKind:
		same = got.Float() == want.Float()
	case protoreflect.StringKind:
		same = got.String() == want.String()
	case protoreflect.BoolKind:
		same = got.Bool() == want.Bool()
	}
	if !same {
		t.Errorf("%s: %v on the wire, %v in the kernel", at, want, got)
	}
}

// compareMethod compares a field with the method that makes it.
func compareMethod(t *testing.T, at string, wire protoreflect.Value, method reflect.Value) {
	t.Helper()
	if !method.IsValid() {
		t.Errorf("%s: no method of this name", at)
		return
	}
	switch made := method.Call(nil)[0].Interface().(type) {
	case string:
		if made != wire.String() {
			t.Errorf("%s: %q on the wire, %q in the kernel", at, wire, made)
		}
	case []string:
		if wire.List().Len() != len(made) {
			t.Errorf("%s: %d on the wire, %d in the kernel", at, wire.List().Len(), len(made))
		}
	case []report.Source:
		if wire.List().Len() != len(made) || len(made) == 0 {
			t.Errorf("%s: %d on the wire, %d in the kernel", at, wire.List().Len(), len(made))
			return
		}
		for i, s := range made {
			compare(t, fmt.Sprintf("%s[%d]", at, i), wire.List().Get(i).Message(), reflect.ValueOf(s))
		}
	}
}
