package compile_test

import (
	"testing"

	"example.com/knitmath/proto/compile"
	"google.golang.org/genproto/googleapis/api/annotations"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protodesc"
	"google.golang.org/protobuf/reflect/protoreflect"
)

// Every field that a caller can send says whether it must be sent, at whatever
// depth of a request it lies; the lint rules of buf do not ask for that.
func TestRequestFieldsSayWhetherTheyAreRequired(t *testing.T) {
	set, err := compile.Dir(sources)
	if err != nil {
		t.Fatal(err)
	}
	files, err := protodesc.NewFiles(set)
	if err != nil {
		t.Fatal(err)
	}
	seen := map[protoreflect.FullName]bool{}
	var check func(protoreflect.MessageDescriptor)
	check = func(message protoreflect.MessageDescriptor) {
		if seen[message.FullName()] {
			return
		}
		seen[message.FullName()] = true
		for i := range message.Fields().Len() {
			field := message.Fields().Get(i)
			behavior, ok := proto.GetExtension(field.Options(), annotations.E_FieldBehavior).([]annotations.FieldBehavior)
			if !ok || len(behavior) == 0 {
				t.Errorf("%s has no google.api.field_behavior", field.FullName())
			}
			if field.Message() != nil {
				check(field.Message())
			}
		}
	}
	files.RangeFiles(func(file protoreflect.FileDescriptor) bool {
		for i := range file.Services().Len() {
			methods := file.Services().Get(i).Methods()
			for j := range methods.Len() {
				check(methods.Get(j).Input())
			}
		}
		return true
	})
	if len(seen) == 0 {
		t.Error("no request was found")
	}
}
