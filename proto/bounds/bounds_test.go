package bounds_test

import (
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"example.com/knitmath/proto/bounds"
	"example.com/knitmath/proto/compile"
	"google.golang.org/protobuf/reflect/protodesc"
	"google.golang.org/protobuf/reflect/protoreflect"
)

func at(f float64) *float64 { return &f }

func upTo(n uint64) *uint64 { return &n }

// Every kind of option is read, each on a field of its own.
func TestField(t *testing.T) {
	for _, c := range []struct {
		field string
		want  bounds.Bounds
	}{
		{`int32 a = 1;`, bounds.Bounds{}},
		{`int32 a = 1 [(google.api.field_behavior) = REQUIRED, (buf.validate.field).int32 = {gte: 2, lte: 10000}];`,
			bounds.Bounds{Required: true, Minimum: at(2), Maximum: at(10000)}},
		{`optional double a = 1 [(buf.validate.field).double = {gt: 0, lt: 0.5, finite: true, example: 0.25}];`,
			bounds.Bounds{ExclusiveMinimum: at(0), ExclusiveMaximum: at(0.5), Examples: []any{0.25}}},
		{`double a = 1 [(buf.validate.field) = {double: {gte: 0.1}, ignore: IGNORE_IF_ZERO_VALUE}, (default_value).number = 10];`,
			bounds.Bounds{Minimum: at(0.1), ZeroIsAbsent: true, Default: 10.0}},
		{`string a = 1 [(buf.validate.field).string = {max_len: 100, max_bytes: 300, pattern: "^[a-z]*$", example: "sleeve"}];`,
			bounds.Bounds{MaxLength: upTo(100), MaxBytes: upTo(300), Pattern: "^[a-z]*$", Examples: []any{"sleeve"}}},
		{`optional string a = 1 [(buf.validate.field).string.min_len = 1, (default_value).text = "m"];`,
			bounds.Bounds{MinLength: upTo(1), Default: "m"}},
		{`bool a = 1 [(default_value).flag = false];`, bounds.Bounds{Default: false}},
		{`Way a = 1 [(buf.validate.field).enum = {defined_only: true, not_in: [2]}, (default_value).text = "WAY_UP"];`,
			bounds.Bounds{NotIn: []any{"WAY_DOWN"}, Default: "WAY_UP"}},
		{`Way a = 1 [(buf.validate.field).enum = {in: [0, 1]}];`, bounds.Bounds{In: []any{"WAY_UNSPECIFIED", "WAY_UP"}}},
		{`optional int32 a = 1 [(buf.validate.field).int32 = {in: [2, 4]}];`, bounds.Bounds{In: []any{2.0, 4.0}}},
		{`optional int32 a = 1 [(buf.validate.field).int32.const = 2];`, bounds.Bounds{In: []any{2.0}}},
		{`repeated double a = 1 [(google.api.field_behavior) = REQUIRED,
			(buf.validate.field).repeated = {min_items: 2, max_items: 500, unique: true, items: {double: {gte: 0}}}];`,
			bounds.Bounds{Required: true, MinItems: upTo(2), MaxItems: upTo(500), Unique: true, Items: &bounds.Bounds{Minimum: at(0)}}},
	} {
		reader, md := compiled(t, c.field)
		got, err := reader.Field(md.Fields().Get(0))
		if err != nil {
			t.Errorf("%s\n%v", c.field, err)
		} else if !reflect.DeepEqual(got, c.want) {
			t.Errorf("%s\ngives %+v, want %+v", c.field, got, c.want)
		}
	}
}

// Options that cannot be meant, or that the document cannot show, are refused.
func TestFieldRefuses(t *testing.T) {
	for _, c := range []struct{ field, say string }{
		{`optional int32 a = 1 [(buf.validate.field).int32 = {gte: 9, lte: 1}];`, "range from 9 to 1"},
		{`optional int32 a = 1 [(buf.validate.field).int32 = {gte: 1, example: 0}];`, "example 0 is too small"},
		{`optional int32 a = 1 [(buf.validate.field).int32.lte = 9, (default_value).number = 10];`, "default 10 is too large"},
		{`optional double a = 1 [(buf.validate.field).double.lt = 9, (default_value).number = 9];`, "default 9 is too large"},
		{`optional int32 a = 1 [(default_value).number = 1.5];`, "no whole number"},
		{`optional int32 a = 1 [(default_value).text = "1"];`, "given as text, want number"},
		{`Way a = 1 [(default_value).text = "UP"];`, "no value of its enum"},
		{`Way a = 1 [(default_value).number = 1];`, "given as number, want text"},
		{`repeated int32 a = 1 [(default_value).number = 1];`, "given as number, want none"},
		{`int32 a = 1 [(google.api.field_behavior) = REQUIRED, (default_value).number = 1];`, "default and is required"},
		{`int32 a = 1 [(buf.validate.field).int32.gte = 1];`, "may be left out"},
		{`string a = 1 [(buf.validate.field).string.min_len = 1];`, "may be left out"},
		{`repeated int32 a = 1 [(buf.validate.field).repeated.min_items = 1];`, "may be left out"},
		{`Way a = 1 [(buf.validate.field).enum = {not_in: [0]}];`, "may be left out"},
		{`optional int32 a = 1 [(buf.validate.field).required = true];`, "not by google.api.field_behavior"},
		{`optional int32 a = 1 [(buf.validate.field).ignore = IGNORE_ALWAYS];`, "ignores its rules always"},
		{`optional string a = 1 [(buf.validate.field).string.email = true];`, `"email"`},
		{`optional int32 a = 1 [(buf.validate.field).cel = {id: "a", message: "b", expression: "this > 1"}];`, `"cel"`},
		{`map<string, int32> a = 1 [(buf.validate.field).map.max_pairs = 1];`, `"map"`},
		{`optional string a = 1 [(buf.validate.field).string.max_bytes = 3, (default_value).text = "four"];`, "too long"},
		{`optional string a = 1 [(buf.validate.field).string = {in: ["a", "b"]}, (default_value).text = "c"];`, "is not one of"},
		{`optional string a = 1 [(buf.validate.field).string = {not_in: ["a", "b"]}, (default_value).text = "a"];`, "is one of"},
		{`repeated int32 a = 1 [(buf.validate.field).repeated = {items: {int32: {lte: 1, example: [2]}}}];`, "example 2 is too large"},
		{`optional string a = 1 [(buf.validate.field).string = {min_len: 2, example: ["é"]}];`, "too short"},
		{`optional int32 a = 1 [(buf.validate.field).int32 = {gt: 9, lt: 1}];`, "range from 9 to 1"},
		{`optional int32 a = 1 [(buf.validate.field).int32 = {gte: 1, in: [1, 2]}, (default_value).number = 3];`, "is not one of"},
		{`repeated string a = 1 [(buf.validate.field).repeated = {items: {string: {prefix: "a"}}}];`, `"prefix"`},
		{`optional double a = 1 [(buf.validate.field).double = {gte: 1, lte: 2}, (default_value) = {number: 0.999}];`, "too small"},
	} {
		reader, md := compiled(t, c.field)
		_, err := reader.Field(md.Fields().Get(0))
		if err == nil || !strings.Contains(err.Error(), c.say) || !strings.Contains(err.Error(), "A.a") {
			t.Errorf("%s\ngives %v, want %q", c.field, err, c.say)
		}
	}
}

// Choices are oneofs and rules alike, but not what proto3 makes of optional.
func TestChoices(t *testing.T) {
	reader, md := compiled(t, `option (buf.validate.message).oneof = {fields: ["a", "b"], required: true};
		optional int32 a = 1;
		optional int32 b = 2;
		oneof free { int32 c = 3; int32 d = 4; }
		oneof bound { option (buf.validate.oneof).required = true; int32 e = 5; int32 f = 6; }`)
	got, err := reader.Choices(md)
	want := []bounds.Choice{
		{Fields: []string{"c", "d"}},
		{Fields: []string{"e", "f"}, Required: true},
		{Fields: []string{"a", "b"}, Required: true, Rule: true},
	}
	if err != nil || !reflect.DeepEqual(got, want) {
		t.Errorf("%+v %v, want %+v", got, err, want)
	}
	for body, say := range map[string]string{
		`option (buf.validate.message).oneof = {fields: ["a", "z"]}; int32 a = 1;`:                                     `"z"`,
		`option (buf.validate.message).cel = {id: "a", message: "b", expression: "this.a > 1"}; optional int32 a = 1;`: `"cel"`,
	} {
		reader, md := compiled(t, body)
		if _, err := reader.Choices(md); err == nil || !strings.Contains(err.Error(), say) {
			t.Errorf("%s\ngives %v, want %q", body, err, say)
		}
	}
}

// compiled is message A with the given body.
func compiled(t *testing.T, body string) (bounds.Reader, protoreflect.MessageDescriptor) {
	t.Helper()
	files := map[string]string{
		"a.proto": `syntax = "proto3";
			package knitmath.v1;
			import public "buf/validate/validate.proto";
			import public "default_value.proto";
			import public "presence.proto";
			import public "google/api/field_behavior.proto";
			message Other {}
			enum Way { WAY_UNSPECIFIED = 0; WAY_UP = 1; WAY_DOWN = 2; }
			message A {` + body + `}`,
	}
	for _, options := range []string{"default_value.proto", "presence.proto"} {
		text, err := os.ReadFile("../knitmath/v1/" + options)
		if err != nil {
			t.Fatal(err)
		}
		files[options] = string(text)
	}
	dir := t.TempDir()
	for name, text := range files {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	set, err := compile.Dir(dir)
	if err != nil {
		t.Fatalf("%s\n%v", body, err)
	}
	read, err := protodesc.NewFiles(set)
	if err != nil {
		t.Fatal(err)
	}
	found, err := read.FindDescriptorByName("knitmath.v1.A")
	if err != nil {
		t.Fatal(err)
	}
	return bounds.NewReader(read), found.(protoreflect.MessageDescriptor)
}
