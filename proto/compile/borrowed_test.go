package compile_test

import (
	"os"
	"path/filepath"
	"slices"
	"testing"

	"buf.build/gen/go/bufbuild/protovalidate/protocolbuffers/go/buf/validate"
	"example.com/knitmath/proto/compile"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/types/descriptorpb"
)

// The rules of buf.validate are read, carried into the set as the linked type,
// and their file comes with them, so that the set stands on its own.
func TestRulesAreBorrowed(t *testing.T) {
	dir := t.TempDir()
	text := `syntax = "proto3";
import "buf/validate/validate.proto";
message A { int32 a = 1 [(buf.validate.field).int32 = {gte: 1, lte: 9}]; }
`
	if err := os.WriteFile(filepath.Join(dir, "a.proto"), []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	set, err := compile.Dir(dir)
	if err != nil {
		t.Fatal(err)
	}
	names := map[string]*descriptorpb.FileDescriptorProto{}
	for _, file := range set.File {
		names[file.GetName()] = file
	}
	if names["buf/validate/validate.proto"] == nil {
		t.Fatal("the file of the rules is missing")
	}
	rules, _ := proto.GetExtension(names["a.proto"].MessageType[0].Field[0].Options, validate.E_Field).(*validate.FieldRules)
	if rules.GetInt32().GetGte() != 1 || rules.GetInt32().GetLte() != 9 {
		t.Errorf("rules are %v", rules)
	}
	// The same sources give the same bytes.
	var images [2][]byte
	for i := range images {
		again, err := compile.Dir(dir)
		if err != nil {
			t.Fatal(err)
		}
		if images[i], err = (proto.MarshalOptions{Deterministic: true}).Marshal(again); err != nil {
			t.Fatal(err)
		}
	}
	if !slices.Equal(images[0], images[1]) {
		t.Error("the same sources gave two images")
	}
}
