package service

import (
	"slices"
	"testing"

	"buf.build/gen/go/bufbuild/protovalidate/protocolbuffers/go/buf/validate"
	"google.golang.org/genproto/googleapis/api/annotations"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/reflect/protoregistry"
)

// What is read from the bytes of the options is what the types made of their own files read.
func TestOptionsAreReadAsTheirTypesDo(t *testing.T) {
	methods, gets, bounded := 0, 0, 0
	for _, service := range wireServices() {
		for i := range service.Methods().Len() {
			method := service.Methods().Get(i)
			rule, _ := proto.GetExtension(method.Options(), annotations.E_Http).(*annotations.HttpRule)
			got := bindingOf(method)
			if got.post == "" || got.post != rule.GetPost() || got.body != rule.GetBody() || got.get != rule.GetGet() {
				t.Errorf("%s: %+v, want %v", method.FullName(), got, rule)
			}
			if len(got.more) != len(rule.GetAdditionalBindings()) {
				t.Errorf("%s: %d more bindings, want %d", method.FullName(), len(got.more), len(rule.GetAdditionalBindings()))
				continue
			}
			for j, more := range rule.GetAdditionalBindings() {
				gets++
				if got.more[j].get != more.GetGet() || got.more[j].post != more.GetPost() {
					t.Errorf("%s: %+v, want %v", method.FullName(), got.more[j], more)
				}
			}
			methods++
		}
	}
	protoregistry.GlobalFiles.RangeFilesByPackage(wirePackage, func(file protoreflect.FileDescriptor) bool {
		eachField(file.Messages(), func(fd protoreflect.FieldDescriptor) {
			rules, _ := proto.GetExtension(fd.Options(), validate.E_Field).(*validate.FieldRules)
			want := rules.GetEnum().GetIn()
			if len(want) > 0 {
				bounded++
			}
			if !slices.EqualFunc(onlyValues(fd), want, func(a protoreflect.EnumNumber, b int32) bool { return int32(a) == b }) {
				t.Errorf("%s: %v, want %v", fd.FullName(), onlyValues(fd), want)
			}
		})
		return true
	})
	if methods == 0 || gets == 0 || bounded == 0 {
		t.Errorf("%d methods, %d bindings to GET and %d fields with chosen values: that shows nothing", methods, gets, bounded)
	}
}

func eachField(messages protoreflect.MessageDescriptors, do func(protoreflect.FieldDescriptor)) {
	for i := range messages.Len() {
		for j := range messages.Get(i).Fields().Len() {
			do(messages.Get(i).Fields().Get(j))
		}
		eachField(messages.Get(i).Messages(), do)
	}
}

// Bytes that are no options say nothing, and are no reason to stop.
func TestOptionsOfNoSense(t *testing.T) {
	for _, data := range []string{"\xff", "\x0a\x05ab", "\x12\x03/v1\x0b", "\x08"} {
		if got := readBinding([]byte(data)); got.post != "" || got.more != nil {
			t.Errorf("%q: %+v", data, got)
		}
	}
}
