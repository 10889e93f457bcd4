package service

import (
	"google.golang.org/protobuf/encoding/protowire"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"
)

// Of the options in the contract the running service needs two: where a question is
// asked over JSON, and which values of an enumeration a field takes. They are read from
// the bytes of the options: the Go types that are made of google/api/annotations.proto
// and buf/validate/validate.proto would be a sixtieth of the program. The tests link
// those types and hold what is read here to what they read.
const (
	httpOption    protowire.Number = 72295728 // google.api.http, of a method
	httpGet       protowire.Number = 2
	httpPost      protowire.Number = 4
	httpBody      protowire.Number = 7
	httpMore      protowire.Number = 11
	rulesOption   protowire.Number = 1159 // buf.validate.field, of a field
	rulesOfEnum   protowire.Number = 16
	enumRulesOnly protowire.Number = 3
)

// binding is how a method is asked over JSON, as google.api.http says it.
type binding struct {
	get, post, body string
	more            []binding
}

// bindingOf is the zero binding where the method has none.
func bindingOf(method protoreflect.MethodDescriptor) binding {
	return readBinding(joined(optionBytes(method), httpOption))
}

func readBinding(rule []byte) binding {
	b := binding{
		get:  string(joined(rule, httpGet)),
		post: string(joined(rule, httpPost)),
		body: string(joined(rule, httpBody)),
	}
	for number, value := range protoFields(rule) {
		if number == httpMore {
			b.more = append(b.more, readBinding(value))
		}
	}
	return b
}

// onlyValues are the numbers of its enumeration that a field takes; none for all.
func onlyValues(fd protoreflect.FieldDescriptor) []protoreflect.EnumNumber {
	rules := joined(joined(optionBytes(fd), rulesOption), rulesOfEnum)
	var only []protoreflect.EnumNumber
	for number, value := range protoFields(rules) {
		for number == enumRulesOnly && len(value) > 0 {
			v, n := protowire.ConsumeVarint(value) // One, or several packed.
			if n < 0 {
				break
			}
			only, value = append(only, protoreflect.EnumNumber(v)), value[n:] //nolint:gosec // Numbers of an enumeration fit.
		}
	}
	return only
}

// optionBytes are the options of d as they are written.
func optionBytes(d protoreflect.Descriptor) []byte {
	data, err := proto.Marshal(d.Options())
	if err != nil {
		return nil // They were read from bytes.
	}
	return data
}

// joined is the text or message in a field; of a message that is written in parts,
// their bytes one after the other are the whole.
func joined(message []byte, field protowire.Number) []byte {
	var all []byte
	for number, value := range protoFields(message) {
		if number == field {
			all = append(all, value...)
		}
	}
	return all
}

// protoFields yields the fields of a message in their order: what is in those that have
// a length, and the bytes of the others. It ends where the bytes are no message.
func protoFields(message []byte) func(yield func(protowire.Number, []byte) bool) {
	return func(yield func(protowire.Number, []byte) bool) {
		for len(message) > 0 {
			number, kind, n := protowire.ConsumeTag(message)
			if n < 0 {
				return
			}
			message = message[n:]
			size := protowire.ConsumeFieldValue(number, kind, message)
			if size < 0 {
				return
			}
			value := message[:size]
			if kind == protowire.BytesType {
				value, _ = protowire.ConsumeBytes(value)
			}
			if !yield(number, value) {
				return
			}
			message = message[size:]
		}
	}
}
