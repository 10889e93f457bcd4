package compile_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/proto/compile"
	"google.golang.org/genproto/googleapis/api/annotations"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protodesc"
	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/types/descriptorpb"
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
	seen := 0
	eachAskedField(files, func(field protoreflect.FieldDescriptor) {
		seen++
		behavior, ok := proto.GetExtension(field.Options(), annotations.E_FieldBehavior).([]annotations.FieldBehavior)
		if !ok || len(behavior) == 0 {
			t.Errorf("%s has no google.api.field_behavior", field.FullName())
		}
	})
	if seen == 0 {
		t.Error("no request was found")
	}
}

// Every answer begins with the same four fields under the same numbers, and an
// outline, where there is one, comes last; every question lets its caller choose
// parts of the answer; and fields are numbered from 1 without a gap.
func TestQuestionsAndAnswersHaveOneShape(t *testing.T) {
	head := []string{
		"summary = 1 string", "directions = 2 repeated string",
		"notices = 3 repeated Notice", "sources = 4 repeated Source",
	}
	methods := 0
	for _, file := range own(compiled(t)) {
		for _, message := range file.MessageType {
			fields := spellings(message)
			switch {
			case strings.HasSuffix(message.GetName(), "Response"):
				methods++
				if len(fields) < 4 || !slices.Equal(fields[:4], head) {
					t.Errorf("%s begins with %q, want %q", message.GetName(), fields, head)
				}
				last := len(fields) - 1
				if i := slices.IndexFunc(fields, func(f string) bool { return strings.HasSuffix(f, " Outline") }); i >= 0 && i != last {
					t.Errorf("%s does not end with its outline", message.GetName())
				}
			case strings.HasSuffix(message.GetName(), "Request"):
				last := len(fields) - 1
				if fields[last] != "fields = 100 repeated string" {
					t.Errorf("%s ends with %q", message.GetName(), fields[last])
				}
				fields = fields[:last]
			}
			for i, field := range fields {
				if !strings.Contains(field, fmt.Sprintf(" = %d ", i+1)) {
					t.Errorf("%s: %q is field %d of the message", message.GetName(), field, i+1)
				}
			}
		}
	}
	if methods == 0 {
		t.Error("no answer was found")
	}
}

// spellings writes the fields of a message as "name = number type".
func spellings(message *descriptorpb.DescriptorProto) []string {
	var list []string
	for _, field := range message.Field {
		kind := strings.ToLower(strings.TrimPrefix(field.GetType().String(), "TYPE_"))
		if field.TypeName != nil {
			kind = field.GetTypeName()[strings.LastIndex(field.GetTypeName(), ".")+1:]
		}
		if field.GetLabel() == descriptorpb.FieldDescriptorProto_LABEL_REPEATED {
			kind = "repeated " + kind
		}
		list = append(list, fmt.Sprintf("%s = %d %s", field.GetName(), field.GetNumber(), kind))
	}
	return list
}
