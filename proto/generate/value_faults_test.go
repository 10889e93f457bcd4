package main

import (
	"encoding/json"
	"maps"
	"reflect"
	"strconv"
	"strings"

	"buf.build/gen/go/bufbuild/protovalidate/protocolbuffers/go/buf/validate"
	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/proto/document"
	"google.golang.org/protobuf/encoding/protojson"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"
)

// words are what JSON Schema calls the rules of buf.validate, as its JSON spells
// them.
var ruleWords = map[string]string{
	"gte": "minimum", "gt": "exclusiveMinimum", "lte": "maximum", "lt": "exclusiveMaximum",
	"minLen": "minLength", "maxLen": "maxLength", "maxBytes": "maxLength", "pattern": "pattern",
	"minItems": "minItems", "maxItems": "maxItems", "unique": "uniqueItems",
	"in": "enum", "notIn": "not", "example": "examples",
}

// value checks all that the schema of a field's values says, but for its words.
func (c *checker) value(what string, s *document.Schema, field protoreflect.FieldDescriptor, bounded bool) {
	want := kindOf(field)
	if field.IsList() {
		want = map[string]any{"type": "array", "items": want}
	}
	if rules, ok := proto.GetExtension(field.Options(), validate.E_Field).(*validate.FieldRules); ok && rules != nil && bounded {
		expect(want, asJSON(rules), field)
	}
	if value, ok := proto.GetExtension(field.Options(), knitmathv1.E_DefaultValue).(*knitmathv1.DefaultValue); ok && value != nil && bounded {
		for _, v := range asJSON(value) {
			want["default"] = v
		}
	}
	text, err := json.Marshal(s)
	if err != nil {
		c.add("%s: %v", what, err)
		return
	}
	got := map[string]any{}
	if err := json.Unmarshal(text, &got); err != nil {
		c.add("%s: %v", what, err)
	}
	delete(got, "description")
	delete(got, "x-extensible-enum") // of reasons, which are looked at with the errors
	plainNames(got)
	if !reflect.DeepEqual(got, want) {
		c.add("%s is %v, want %v", what, got, want)
	}
}

// expect adds to want what rules say in words of JSON Schema.
func expect(want, rules map[string]any, field protoreflect.FieldDescriptor) {
	for name, rule := range rules {
		switch name {
		case "ignore", "required", "definedOnly", "finite":
		case "items":
			expect(want["items"].(map[string]any), rule.(map[string]any), field)
		default:
			if below, ok := rule.(map[string]any); ok {
				expect(want, below, field)
				continue
			}
			if text, ok := rule.(string); ok && name != "pattern" { // 64 bits, as JSON has them
				rule, _ = strconv.ParseFloat(text, 64)
			}
			if list, ok := rule.([]any); ok && field.Enum() != nil {
				for i, number := range list {
					list[i] = string(field.Enum().Values().ByNumber(protoreflect.EnumNumber(number.(float64))).Name())
				}
			}
			if name == "notIn" {
				rule = map[string]any{"enum": rule}
			}
			want[ruleWords[name]] = rule
		}
	}
	// An empty list that is as good as none is legal, however many items others have.
	if least, _ := want["minItems"].(float64); rules["ignore"] == "IGNORE_IF_ZERO_VALUE" && least > 1 {
		delete(want, "minItems")
		want["not"] = map[string]any{"minItems": 1.0, "maxItems": least - 1}
	}
}

// kindOf is the type of a field's values.
func kindOf(field protoreflect.FieldDescriptor) map[string]any {
	switch field.Kind() {
	case protoreflect.DoubleKind:
		return map[string]any{"type": "number", "format": "double"}
	case protoreflect.Int32Kind:
		return map[string]any{"type": "integer", "format": "int32"}
	case protoreflect.BoolKind:
		return map[string]any{"type": "boolean"}
	case protoreflect.StringKind:
		return map[string]any{"type": "string"}
	case protoreflect.EnumKind:
		return map[string]any{"$ref": "#/components/schemas/" + string(field.Enum().Name())}
	case protoreflect.MessageKind:
		return map[string]any{"$ref": "#/components/schemas/" + string(field.Message().Name())}
	}
	return map[string]any{"type": field.Kind().String() + ", which the wire does not use"}
}

// plainNames makes no difference between a message and its form in answers, which
// the check of answers looks at.
func plainNames(schema map[string]any) {
	for _, at := range []any{schema, schema["items"]} {
		if at, ok := at.(map[string]any); ok && at["$ref"] != nil {
			at["$ref"] = strings.TrimSuffix(at["$ref"].(string), "Answer")
		}
	}
}

func asJSON(m proto.Message) map[string]any {
	text, err := protojson.Marshal(m)
	if err != nil {
		return map[string]any{"cannot be written": err.Error()}
	}
	fields := map[string]any{}
	if err := json.Unmarshal(text, &fields); err != nil {
		return map[string]any{"cannot be read": err.Error()}
	}
	return maps.Clone(fields)
}
