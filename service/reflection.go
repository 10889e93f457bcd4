package service

import (
	"bytes"
	"compress/gzip"
	"io"
	"sync"

	"google.golang.org/grpc"
	"google.golang.org/grpc/reflection"
	reflectionv1 "google.golang.org/grpc/reflection/grpc_reflection_v1"
	reflectionv1alpha "google.golang.org/grpc/reflection/grpc_reflection_v1alpha"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protodesc"
	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/reflect/protoregistry"
	"google.golang.org/protobuf/runtime/protoimpl"
	"google.golang.org/protobuf/types/descriptorpb"
	"google.golang.org/protobuf/types/dynamicpb"

	"example.com/knitmath/gen/borrowed"
)

// registerReflection lets clients ask for the contract. They are given the whole of
// it, with the files of the options, whose Go types the program leaves out.
func registerReflection(s *grpc.Server) {
	all := &described{read: sync.OnceValues(readContract)}
	options := reflection.ServerOptions{Services: s, DescriptorResolver: all, ExtensionResolver: all}
	reflectionv1.RegisterServerReflectionServer(s, reflection.NewServerV1(options))
	reflectionv1alpha.RegisterServerReflectionServer(s, reflection.NewServer(options))
}

// described is the contract with all that it imports. It is made when somebody first
// asks, since most services are never asked.
type described struct {
	read func() (*contract, error)
}

type contract struct {
	files      *protoregistry.Files
	extensions *protoregistry.Types
}

func (d *described) FindFileByPath(path string) (protoreflect.FileDescriptor, error) {
	c, err := d.read()
	if err != nil {
		return nil, err
	}
	return c.files.FindFileByPath(path)
}

func (d *described) FindDescriptorByName(name protoreflect.FullName) (protoreflect.Descriptor, error) {
	c, err := d.read()
	if err != nil {
		return nil, err
	}
	return c.files.FindDescriptorByName(name)
}

func (d *described) FindExtensionByName(name protoreflect.FullName) (protoreflect.ExtensionType, error) {
	c, err := d.read()
	if err != nil {
		return nil, err
	}
	return c.extensions.FindExtensionByName(name)
}

func (d *described) FindExtensionByNumber(message protoreflect.FullName, n protoreflect.FieldNumber) (protoreflect.ExtensionType, error) {
	c, err := d.read()
	if err != nil {
		return nil, err
	}
	return c.extensions.FindExtensionByNumber(message, n)
}

func (d *described) RangeExtensionsByMessage(message protoreflect.FullName, f func(protoreflect.ExtensionType) bool) {
	if c, err := d.read(); err == nil {
		c.extensions.RangeExtensionsByMessage(message, f)
	}
}

// readContract puts together what is linked and what is carried compressed. Both are
// built anew, as generated code builds its own: a linked file whose import is not linked
// stays without it. The public way (protodesc.NewFiles) also judges what it builds, with
// 0.1 MB of code, and there is nothing to judge here: proto/compile has done so.
func readContract() (*contract, error) {
	set, err := readBorrowed()
	if err != nil {
		return nil, err
	}
	known := map[string]bool{}
	for _, file := range set.GetFile() {
		known[file.GetName()] = true
	}
	protoregistry.GlobalFiles.RangeFiles(func(file protoreflect.FileDescriptor) bool {
		if !known[file.Path()] {
			set.File = append(set.File, protodesc.ToFileDescriptorProto(file))
		}
		return true
	})
	c := &contract{new(protoregistry.Files), new(protoregistry.Types)}
	for _, file := range set.GetFile() {
		raw, err := proto.Marshal(file)
		if err != nil {
			return nil, err
		}
		protoimpl.DescBuilder{RawDescriptor: raw, FileRegistry: c.files}.Build()
	}
	c.files.RangeFiles(func(file protoreflect.FileDescriptor) bool {
		for i := 0; i < file.Extensions().Len() && err == nil; i++ { // None stands within a message.
			err = c.extensions.RegisterExtension(dynamicpb.NewExtensionType(file.Extensions().Get(i)))
		}
		return err == nil
	})
	return c, err
}

func readBorrowed() (*descriptorpb.FileDescriptorSet, error) {
	r, err := gzip.NewReader(bytes.NewReader(borrowed.Gzip))
	if err != nil {
		return nil, err
	}
	data, err := io.ReadAll(r)
	if err != nil {
		return nil, err
	}
	set := &descriptorpb.FileDescriptorSet{}
	return set, proto.Unmarshal(data, set)
}
