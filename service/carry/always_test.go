package carry

import (
	"reflect"
	"strings"
	"testing"

	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/stitch"
)

// What the contract says is always sent is what the kernel's answers hold by value;
// what they point to may be absent. Both ways, for every message in every answer.
func TestMessagesAreAlwaysSentAsTheContractSays(t *testing.T) {
	asked := 0
	for _, c := range carriers {
		kernel, _ := c.out()
		asked += checkAlwaysSent(t, c.answer.ProtoReflect().Descriptor(), reflect.TypeOf(kernel))
	}
	if asked < 80 {
		t.Errorf("%d messages in answers: the walk has shrunk", asked)
	}
}

// checkAlwaysSent goes through a message and the struct that it is carried from, and
// counts the messages in it.
func checkAlwaysSent(t *testing.T, md protoreflect.MessageDescriptor, kernel reflect.Type) int {
	t.Helper()
	asked := 0
	for i := range md.Fields().Len() {
		fd := md.Fields().Get(i)
		name := goName(fd)
		field, ok := kernel.FieldByNameFunc(func(s string) bool { return strings.EqualFold(s, name) })
		if !ok || fd.Message() == nil || fd.ContainingOneof() != nil {
			continue
		}
		of := field.Type
		if fd.IsList() {
			of = of.Elem()
		} else {
			asked++
			sent, _ := proto.GetExtension(fd.Options(), knitmathv1.E_AlwaysSent).(bool)
			if byValue := of.Kind() != reflect.Pointer; sent != byValue {
				t.Errorf("%s is always sent: %v; %s holds it by value: %v", fd.FullName(), sent, kernel, byValue)
			}
		}
		for of.Kind() == reflect.Pointer {
			of = of.Elem()
		}
		if of.Kind() == reflect.Struct && of != reflect.TypeFor[stitch.Instruction]() && fd.Message() != md {
			asked += checkAlwaysSent(t, fd.Message(), of)
		}
	}
	return asked
}
