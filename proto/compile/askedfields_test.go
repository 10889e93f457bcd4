package compile_test

import (
	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/reflect/protoregistry"
)

// eachAskedField visits every field that a question can have, at whatever depth of it.
func eachAskedField(files *protoregistry.Files, visit func(protoreflect.FieldDescriptor)) {
	seen := map[protoreflect.FullName]bool{}
	var walk func(protoreflect.MessageDescriptor)
	walk = func(message protoreflect.MessageDescriptor) {
		if seen[message.FullName()] {
			return
		}
		seen[message.FullName()] = true
		for i := range message.Fields().Len() {
			field := message.Fields().Get(i)
			visit(field)
			if field.Message() != nil {
				walk(field.Message())
			}
		}
	}
	files.RangeFiles(func(file protoreflect.FileDescriptor) bool {
		for i := range file.Services().Len() {
			methods := file.Services().Get(i).Methods()
			for j := range methods.Len() {
				walk(methods.Get(j).Input())
			}
		}
		return true
	})
}
