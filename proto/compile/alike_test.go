package compile_test

import (
	"slices"
	"testing"

	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/types/descriptorpb"
)

// How wide the thing is that is worked on is asked by two methods of a room in the same
// fields, flat in each question so that a GET can ask in one word. They say the same in both:
// number, type, bounds and comment.
func TestWhatTwoQuestionsShareIsAskedAlike(t *testing.T) {
	for _, c := range []struct {
		file, one, other string
		fields           []string
	}{
		{"knitmath/v1/sock.proto", "PlanHeelRequest", "PlanToeRequest",
			[]string{"round_stitches", "foot_circumference_cm", "ease_percent", "gauge", "stitch_rule"}},
		{"knitmath/v1/hand.proto", "PlanMittenTopRequest", "PlanThumbRequest",
			[]string{"gauge", "hand_stitches", "hand_cm", "ease_percent", "stitch_rule"}},
	} {
		files := own(compiled(t))
		i := slices.IndexFunc(files, func(f *descriptorpb.FileDescriptorProto) bool { return f.GetName() == c.file })
		if i < 0 {
			t.Fatalf("no %s", c.file)
		}
		for _, name := range c.fields {
			one, other := asked(files[i], c.one, name), asked(files[i], c.other, name)
			if one.field == nil || !proto.Equal(one.field, other.field) {
				t.Errorf("%s: %s asks %v, %s %v", name, c.one, one.field, c.other, other.field)
			}
			if one.comment == "" || one.comment != other.comment {
				t.Errorf("%s: %s says %q, %s %q", name, c.one, one.comment, c.other, other.comment)
			}
		}
	}
}

// askedField is a field with what is said of it.
type askedField struct {
	field   *descriptorpb.FieldDescriptorProto
	comment string
}

func asked(file *descriptorpb.FileDescriptorProto, message, field string) askedField {
	m := slices.IndexFunc(file.MessageType, func(d *descriptorpb.DescriptorProto) bool { return d.GetName() == message })
	if m < 0 {
		return askedField{}
	}
	fields := file.MessageType[m].Field
	f := slices.IndexFunc(fields, func(d *descriptorpb.FieldDescriptorProto) bool { return d.GetName() == field })
	if f < 0 {
		return askedField{}
	}
	// A message of the file is its number 4, a field of a message that one's number 2.
	path := []int32{4, int32(m), 2, int32(f)}
	for _, l := range file.GetSourceCodeInfo().GetLocation() {
		if slices.Equal(l.Path, path) {
			return askedField{fields[f], l.GetLeadingComments()}
		}
	}
	return askedField{field: fields[f]}
}
