package bounds

import (
	"fmt"

	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/types/descriptorpb"
)

// A Choice is a group of fields of which at most one is given, or exactly one.
type Choice struct {
	Fields   []string
	Required bool
	// Rule: buf.validate makes it, and not a oneof of the message. The wire itself
	// does not keep it.
	Rule bool
}

// Choices lists the choices of a message: its oneofs, and those that its rules
// make of other fields.
func (r Reader) Choices(md protoreflect.MessageDescriptor) ([]Choice, error) {
	var choices []Choice
	for i := range md.Oneofs().Len() {
		oneof := md.Oneofs().Get(i)
		if oneof.IsSynthetic() {
			continue
		}
		options, err := r.options(oneof.Options(), &descriptorpb.OneofOptions{})
		if err != nil {
			return nil, fmt.Errorf("%s: %w", oneof.FullName(), err)
		}
		choice := Choice{Required: options[oneofRules].IsValid() && flag(options[oneofRules].Message(), "required")}
		for j := range oneof.Fields().Len() {
			choice.Fields = append(choice.Fields, string(oneof.Fields().Get(j).Name()))
		}
		choices = append(choices, choice)
	}
	options, err := r.options(md.Options(), &descriptorpb.MessageOptions{})
	if err != nil {
		return nil, fmt.Errorf("%s: %w", md.FullName(), err)
	}
	rules, ok := options[messageRules]
	if !ok {
		return choices, nil
	}
	err = each(rules.Message(), func(name protoreflect.Name, v protoreflect.Value) error {
		if name != "oneof" {
			return unknown(name)
		}
		for i := range v.List().Len() {
			choice, err := readChoice(v.List().Get(i).Message(), md)
			if err != nil {
				return err
			}
			choices = append(choices, choice)
		}
		return nil
	})
	if err != nil {
		return nil, fmt.Errorf("%s: %w", md.FullName(), err)
	}
	return choices, nil
}

// readChoice reads a buf.validate.MessageOneofRule.
func readChoice(rule protoreflect.Message, md protoreflect.MessageDescriptor) (Choice, error) {
	choice := Choice{Required: flag(rule, "required"), Rule: true}
	names := rule.Get(rule.Descriptor().Fields().ByName("fields")).List()
	for i := range names.Len() {
		name := names.Get(i).String()
		if md.Fields().ByName(protoreflect.Name(name)) == nil {
			return Choice{}, fmt.Errorf("a choice names %q, which is no field", name)
		}
		choice.Fields = append(choice.Fields, name)
	}
	return choice, nil
}

func flag(m protoreflect.Message, name protoreflect.Name) bool {
	return m.Get(m.Descriptor().Fields().ByName(name)).Bool()
}
