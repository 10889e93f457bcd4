// Package compile turns the .proto files into descriptors, without a protoc
// binary and without a network: the imports under google/ and buf/validate/ are
// not copied into the project but taken from the Go modules that carry them.
package compile

import (
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path"
	"slices"
	"strings"

	"github.com/bufbuild/protocompile"
	"github.com/bufbuild/protocompile/protoutil"
	"github.com/bufbuild/protocompile/reporter"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/reflect/protoregistry"
	"google.golang.org/protobuf/types/descriptorpb"

	// Links buf/validate/validate.proto, and google/api/annotations.proto,
	// http.proto and field_behavior.proto, into protoregistry.GlobalFiles, from
	// where imports of them are resolved.
	_ "buf.build/gen/go/bufbuild/protovalidate/protocolbuffers/go/buf/validate"
	_ "google.golang.org/genproto/googleapis/api/annotations"
	// Links google/rpc/error_details.proto and status.proto.
	_ "google.golang.org/genproto/googleapis/rpc/errdetails"
	_ "google.golang.org/genproto/googleapis/rpc/status"
)

// refusals are the files with the messages that a refusal over gRPC consists of. No message of
// ours has a field of them, but whoever makes a client of the set alone has to read them.
var refusals = []string{"google/rpc/status.proto", "google/rpc/error_details.proto"}

// borrowed is the only part of the import tree that may come from linked
// modules. Were everything looked up there, a deleted file of the project's own
// would still be found in the generated code and the compilation would pass.
var borrowed = []string{"buf/validate/", "google/"}

// Dir compiles every .proto file below root and returns one descriptor set that
// stands on its own: imports included, each file after those it imports, the
// project's own files in the order of their names and with their comments, and last
// those of refusals.
//
// The same sources give the same set, and the set is as a reader of its
// serialised form sees it: the options are decoded, so that proto.Equal compares
// it to a set read back from a file. All faults are reported at once; a warning,
// such as an unused import, counts as a fault.
func Dir(root string) (*descriptorpb.FileDescriptorSet, error) {
	tree := os.DirFS(root)
	names, err := sources(tree)
	if err != nil {
		return nil, err
	}
	var faults []error
	compiler := protocompile.Compiler{
		Resolver: protocompile.CompositeResolver{
			&protocompile.SourceResolver{
				Accessor: func(name string) (io.ReadCloser, error) { return tree.Open(name) },
			},
			protocompile.ResolverFunc(findBorrowed),
		},
		SourceInfoMode: protocompile.SourceInfoStandard,
		// Returning nil from the first function lets the compiler go on to the
		// next fault.
		Reporter: reporter.NewReporter(
			func(err reporter.ErrorWithPos) error { faults = append(faults, err); return nil },
			func(err reporter.ErrorWithPos) { faults = append(faults, err) },
		),
	}
	files, err := compiler.Compile(context.Background(), names...)
	if len(faults) > 0 {
		return nil, errors.Join(faults...)
	}
	if err != nil {
		return nil, err
	}
	set := &descriptorpb.FileDescriptorSet{}
	seen := map[string]bool{}
	for _, file := range files {
		appendFile(set, seen, file)
	}
	for _, name := range refusals {
		file, err := protoregistry.GlobalFiles.FindFileByPath(name)
		if err != nil {
			return nil, err
		}
		appendFile(set, seen, file)
	}
	return decoded(set)
}

// sources lists the .proto files of the tree, sorted by path.
func sources(tree fs.FS) ([]string, error) {
	var names []string
	err := fs.WalkDir(tree, ".", func(name string, _ fs.DirEntry, err error) error {
		if err == nil && path.Ext(name) == ".proto" {
			names = append(names, name)
		}
		return err
	})
	if err == nil && len(names) == 0 {
		err = errors.New("no .proto files")
	}
	return names, err
}

// findBorrowed resolves an import from the linked modules.
func findBorrowed(name string) (protocompile.SearchResult, error) {
	if !slices.ContainsFunc(borrowed, func(folder string) bool { return strings.HasPrefix(name, folder) }) {
		return protocompile.SearchResult{}, fmt.Errorf("%w: %s", fs.ErrNotExist, name)
	}
	file, err := protoregistry.GlobalFiles.FindFileByPath(name)
	return protocompile.SearchResult{Desc: file}, err
}

// appendFile adds the file to the set, after everything that it imports.
func appendFile(set *descriptorpb.FileDescriptorSet, seen map[string]bool, file protoreflect.FileDescriptor) {
	if seen[file.Path()] {
		return
	}
	seen[file.Path()] = true
	imports := file.Imports()
	for i := range imports.Len() {
		appendFile(set, seen, imports.Get(i).FileDescriptor)
	}
	set.File = append(set.File, protoutil.ProtoFromFileDescriptor(file))
}

// decoded writes the set and reads it back, so that options which the compiler
// keeps as dynamic messages become the linked types.
func decoded(set *descriptorpb.FileDescriptorSet) (*descriptorpb.FileDescriptorSet, error) {
	image, err := proto.Marshal(set)
	if err != nil {
		return nil, err
	}
	out := &descriptorpb.FileDescriptorSet{}
	return out, proto.Unmarshal(image, out)
}
