package bounds

import (
	"errors"
	"fmt"

	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/reflect/protoregistry"
	"google.golang.org/protobuf/types/descriptorpb"
	"google.golang.org/protobuf/types/dynamicpb"
)

// The options that are read, and the value of field_behavior that matters.
const (
	fieldRules    protoreflect.FullName = "buf.validate.field"
	oneofRules    protoreflect.FullName = "buf.validate.oneof"
	messageRules  protoreflect.FullName = "buf.validate.message"
	defaultValue  protoreflect.FullName = "knitmath.v1.default_value"
	fieldBehavior protoreflect.FullName = "google.api.field_behavior"

	behaviorRequired protoreflect.EnumNumber = 2
)

// Reader reads the options of the fields of some files.
type Reader struct {
	// types has the options as those files define them. The generated code is not
	// used: the generator must run when that is missing or stale.
	types *dynamicpb.Types
}

// NewReader is a reader for files, which must hold the options' own files too.
func NewReader(files *protoregistry.Files) Reader {
	return Reader{dynamicpb.NewTypes(files)}
}

// Field reads the bounds of a field. Rules that contradict one another or the
// field, and rules that the OpenAPI document has no word for, are errors.
func (r Reader) Field(fd protoreflect.FieldDescriptor) (Bounds, error) {
	options, err := r.options(fd.Options(), &descriptorpb.FieldOptions{})
	if err != nil {
		return Bounds{}, fmt.Errorf("%s: %w", fd.FullName(), err)
	}
	b := &Bounds{Required: required(options[fieldBehavior])}
	var faults []error
	if rules, ok := options[fieldRules]; ok {
		faults = append(faults, b.readField(rules.Message(), fd))
	}
	if value, ok := options[defaultValue]; ok {
		faults = append(faults, b.readDefault(value.Message(), fd))
	}
	faults = append(faults, b.check(fd))
	if err := errors.Join(faults...); err != nil {
		return Bounds{}, fmt.Errorf("%s: %w", fd.FullName(), err)
	}
	return *b, nil
}

// options decodes options into empty anew, so that those which this program does
// not link are known too, and lists them by name.
func (r Reader) options(options, empty proto.Message) (map[protoreflect.FullName]protoreflect.Value, error) {
	data, err := proto.Marshal(options)
	if err != nil {
		return nil, err
	}
	if err := (proto.UnmarshalOptions{Resolver: r.types}).Unmarshal(data, empty); err != nil {
		return nil, err
	}
	found := map[protoreflect.FullName]protoreflect.Value{}
	empty.ProtoReflect().Range(func(option protoreflect.FieldDescriptor, v protoreflect.Value) bool {
		found[option.FullName()] = v
		return true
	})
	return found, nil
}

func required(behavior protoreflect.Value) bool {
	if !behavior.IsValid() {
		return false
	}
	list := behavior.List()
	for i := range list.Len() {
		if list.Get(i).Enum() == behaviorRequired {
			return true
		}
	}
	return false
}
