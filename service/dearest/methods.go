package main

import (
	"context"
	"slices"
	"strings"

	"google.golang.org/grpc"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/reflect/protoregistry"

	"example.com/knitmath/service/carry"
)

// method is a method of the wire with its handler, without the service around it.
type method struct {
	name    string
	input   protoreflect.MessageType
	handler grpc.MethodHandler
	impl    any
}

// ask asks a question that is a message already, which is handed over and not
// copied. A refusal is an error.
func (m method) ask(question proto.Message) (proto.Message, error) {
	read := func(into any) error {
		to := into.(proto.Message).ProtoReflect()
		question.ProtoReflect().Range(func(fd protoreflect.FieldDescriptor, v protoreflect.Value) bool {
			to.Set(fd, v)
			return true
		})
		return nil
	}
	answer, err := m.handler(m.impl, context.Background(), read, nil)
	if err != nil {
		return nil, err
	}
	return answer.(proto.Message), nil
}

// registrar gathers the methods that carry registers.
type registrar struct{ methods []method }

// RegisterService gathers the methods of one service.
func (r *registrar) RegisterService(desc *grpc.ServiceDesc, impl any) {
	service, err := protoregistry.GlobalFiles.FindDescriptorByName(protoreflect.FullName(desc.ServiceName))
	if err != nil {
		panic(err) // generated code and its descriptors are linked together
	}
	for _, m := range desc.Methods {
		input := service.(protoreflect.ServiceDescriptor).Methods().ByName(protoreflect.Name(m.MethodName)).Input()
		message, err := protoregistry.GlobalTypes.FindMessageByName(input.FullName())
		if err != nil {
			panic(err)
		}
		r.methods = append(r.methods, method{m.MethodName, message, m.Handler, impl})
	}
}

// methods are all whose questions are made of values rather than of text, by name.
func methods() []method {
	var r registrar
	carry.Register(&r)
	return slices.DeleteFunc(r.methods, func(m method) bool { return strings.HasSuffix(m.name, "Instructions") })
}
