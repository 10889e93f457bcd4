package bounds

import (
	"fmt"

	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/types/descriptorpb"
)

// The options of presence.proto.
const (
	alwaysSent protoreflect.FullName = "knitmath.v1.always_sent"
	needs      protoreflect.FullName = "knitmath.v1.needs"
	valueNeeds protoreflect.FullName = "knitmath.v1.value_needs"
)

// AlwaysSent reports whether every whole answer has the field: all but messages and
// fields that are called optional are there, and of messages those that say so.
func (r Reader) AlwaysSent(fd protoreflect.FieldDescriptor) (bool, error) {
	options, err := r.options(fd.Options(), &descriptorpb.FieldOptions{})
	if err != nil {
		return false, fmt.Errorf("%s: %w", fd.FullName(), err)
	}
	said := options[alwaysSent].IsValid() && options[alwaysSent].Bool()
	if said && (fd.Message() == nil || fd.IsList() || fd.ContainingOneof() != nil) {
		return false, fmt.Errorf("%s is no message that could be absent; always_sent says nothing of it", fd.FullName())
	}
	return said || !fd.HasPresence(), nil
}

// Needs is the field of the same message that a field is refused without, nil if there
// is none.
func (r Reader) Needs(fd protoreflect.FieldDescriptor) (protoreflect.FieldDescriptor, error) {
	options, err := r.options(fd.Options(), &descriptorpb.FieldOptions{})
	if err != nil {
		return nil, fmt.Errorf("%s: %w", fd.FullName(), err)
	}
	return neighbour(fd, options[needs])
}

// ValueNeeds is the field beside fd that a value of its enum is refused without, nil if
// there is none.
func (r Reader) ValueNeeds(fd protoreflect.FieldDescriptor, value protoreflect.EnumValueDescriptor) (protoreflect.FieldDescriptor, error) {
	options, err := r.options(value.Options(), &descriptorpb.EnumValueOptions{})
	if err != nil {
		return nil, fmt.Errorf("%s: %w", value.FullName(), err)
	}
	return neighbour(fd, options[valueNeeds])
}

// neighbour finds a field by its name in the message that fd is in.
func neighbour(fd protoreflect.FieldDescriptor, name protoreflect.Value) (protoreflect.FieldDescriptor, error) {
	if !name.IsValid() {
		return nil, nil
	}
	found := fd.ContainingMessage().Fields().ByName(protoreflect.Name(name.String()))
	if found == nil || found == fd {
		return nil, fmt.Errorf("%s needs %q, which is no field beside it", fd.FullName(), name.String())
	}
	return found, nil
}
