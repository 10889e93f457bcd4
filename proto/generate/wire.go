package main

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"example.com/knitmath/proto/bounds"
	"example.com/knitmath/proto/compile"
	"example.com/knitmath/proto/document"
	"google.golang.org/genproto/googleapis/api/annotations"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protodesc"
	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/reflect/protoregistry"
	"google.golang.org/protobuf/types/descriptorpb"
)

// wire is the project's own part of what was compiled. The passes over the
// document ask it what a schema or an operation stands for.
type wire struct {
	files  *protoregistry.Files
	bounds bounds.Reader
	// pkg is the proto package, and reasons those that its comments describe.
	pkg     protoreflect.FullName
	reasons []compile.Reason
	// services are sorted by name.
	services []protoreflect.ServiceDescriptor
	// methods are by verb and path, "POST /v1/gauge:computeCastOn".
	methods map[string]protoreflect.MethodDescriptor
	// asked and answered are the messages that lie in questions and in answers, at
	// whatever depth.
	asked, answered map[protoreflect.FullName]bool
	// examples are values of a whole question by their paths, by its form's name.
	examples map[string]map[string]string
}

func readWire(set *descriptorpb.FileDescriptorSet) (*wire, error) {
	files, err := protodesc.NewFiles(set)
	if err != nil {
		return nil, err
	}
	reasons, err := compile.Reasons(set, own)
	if err != nil {
		return nil, err
	}
	w := &wire{
		files:    files,
		reasons:  reasons,
		bounds:   bounds.NewReader(files),
		methods:  map[string]protoreflect.MethodDescriptor{},
		asked:    map[protoreflect.FullName]bool{},
		answered: map[protoreflect.FullName]bool{},
	}
	for _, file := range set.File {
		if !isOwn(file) {
			continue
		}
		found, err := files.FindFileByPath(file.GetName())
		if err != nil {
			return nil, err
		}
		w.pkg = found.Package()
		for i := range found.Services().Len() {
			if err := w.addService(found.Services().Get(i)); err != nil {
				return nil, err
			}
		}
	}
	slices.SortFunc(w.services, func(a, b protoreflect.ServiceDescriptor) int { return cmp.Compare(a.Name(), b.Name()) })
	return w, nil
}

func (w *wire) addService(service protoreflect.ServiceDescriptor) error {
	w.services = append(w.services, service)
	for i := range service.Methods().Len() {
		method := service.Methods().Get(i)
		mark(w.asked, method.Input())
		mark(w.answered, method.Output())
		rule, ok := proto.GetExtension(method.Options(), annotations.E_Http).(*annotations.HttpRule)
		if !ok {
			return fmt.Errorf("%s has no HTTP binding", method.FullName())
		}
		for _, binding := range append([]*annotations.HttpRule{rule}, rule.AdditionalBindings...) {
			switch {
			case binding.GetPost() != "":
				w.methods["POST "+binding.GetPost()] = method
			case binding.GetGet() != "":
				w.methods["GET "+binding.GetGet()] = method
			default:
				return fmt.Errorf("%s: a question is put by GET or POST", method.FullName())
			}
		}
	}
	return nil
}

// mark marks the message and all that lie in it.
func mark(marked map[protoreflect.FullName]bool, message protoreflect.MessageDescriptor) {
	if marked[message.FullName()] {
		return
	}
	marked[message.FullName()] = true
	for i := range message.Fields().Len() {
		if part := message.Fields().Get(i).Message(); part != nil {
			mark(marked, part)
		}
	}
}

// method is the method behind an operation.
func (w *wire) method(verb, path string) (protoreflect.MethodDescriptor, error) {
	method, ok := w.methods[verb+" "+path]
	if !ok {
		return nil, fmt.Errorf("%s %s belongs to no method", verb, path)
	}
	return method, nil
}

// object is a message with one of its schemas.
type object struct {
	name    string
	schema  *document.Schema
	message protoreflect.MessageDescriptor
	// answer: the schema is for answers and not for questions.
	answer bool
}

// objects are the messages among the components, by name. A name that ends in
// ofAnswers is that of a message which questions hold too, as answers hold it.
func (w *wire) objects(d *document.Document) []object {
	var found []object
	for name, schema := range d.Components.Schemas {
		message, ok := w.message(name)
		inAnswer := !w.asked[protoreflect.FullName(name)]
		if !ok {
			message, ok = w.message(strings.TrimSuffix(name, ofAnswers))
		}
		if ok {
			found = append(found, object{name, schema, message, inAnswer})
		}
	}
	slices.SortFunc(found, func(a, b object) int { return cmp.Compare(a.name, b.name) })
	return found
}

func (w *wire) message(name string) (protoreflect.MessageDescriptor, bool) {
	found, err := w.files.FindDescriptorByName(protoreflect.FullName(name))
	if err != nil {
		return nil, false
	}
	message, ok := found.(protoreflect.MessageDescriptor)
	return message, ok && (w.asked[message.FullName()] || w.answered[message.FullName()])
}

// comment is what the .proto file says of a thing, as running text.
func comment(thing protoreflect.Descriptor) string {
	return prose(thing.ParentFile().SourceLocations().ByDescriptor(thing).LeadingComments)
}

// isOwn reports whether a file is the project's own.
func isOwn(file *descriptorpb.FileDescriptorProto) bool {
	return strings.HasPrefix(file.GetName(), own+"/")
}
