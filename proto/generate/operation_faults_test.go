package main

import (
	"encoding/json"
	"errors"
	"maps"
	"reflect"
	"regexp"
	"slices"
	"strings"

	"google.golang.org/genproto/googleapis/api/annotations"
	"google.golang.org/protobuf/encoding/protojson"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/types/dynamicpb"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/proto/document"
	"example.com/knitmath/release"
)

// room is a service's noun, and the first part of its paths.
func (c *checker) room(service protoreflect.ServiceDescriptor) string {
	noun := strings.TrimSuffix(string(service.Name()), "Service")
	name := strings.ToLower(regexp.MustCompile(`(.)([A-Z])`).ReplaceAllString(noun, "$1-$2"))
	for _, tag := range c.d.Tags {
		if tag.Name == name {
			c.described("tag "+name, tag.Description, service)
			c.described("the document on "+name, c.d.Info.Description, service)
			return name
		}
	}
	c.add("no tag for %s", name)
	return name
}

// method checks the operations of a method, and lists them in known.
func (c *checker) method(method protoreflect.MethodDescriptor, known map[string]bool) {
	rule := proto.GetExtension(method.Options(), annotations.E_Http).(*annotations.HttpRule)
	for _, binding := range append([]*annotations.HttpRule{rule}, rule.AdditionalBindings...) {
		verb, path, suffix := "POST", binding.GetPost(), ""
		if binding.GetGet() != "" {
			verb, path, suffix = "GET", binding.GetGet(), "ByGet"
		}
		what := verb + " " + path
		known[what] = true
		item := c.d.Paths[path]
		if item == nil || item.Operations()[verb] == nil {
			c.add("no operation %s", what)
			continue
		}
		operation := item.Operations()[verb]
		name := string(method.Name())
		c.same(what+" operationId", operation.OperationID, strings.ToLower(name[:1])+name[1:]+suffix)
		service := string(method.Parent().Name())
		if room := strings.TrimPrefix(strings.Split(path, ":")[0], "/v1/"); len(operation.Tags) != 1 || operation.Tags[0] != room {
			c.add("%s of %s has the tags %q", what, service, operation.Tags)
		}
		c.described(what, operation.Description, method)
		if s := operation.Summary; s == "" || strings.Contains(s, name) || strings.HasSuffix(s, ".") || strings.Contains(s, "\n") {
			c.add("%s has the title %q", what, s)
		}
		if verb == "POST" {
			media := operation.RequestBody.Content["application/json"]
			want := &document.RequestBody{Required: true, Content: map[string]document.Media{
				"application/json": {Schema: reference(string(method.Input().Name())), Example: media.Example}}}
			c.same(what+" body", operation.RequestBody, want)
			c.example(what, media.Example, method.Input())
			c.same(what+" parameters", operation.Parameters, []document.Parameter(nil))
		} else {
			c.same(what+" body", operation.RequestBody, (*document.RequestBody)(nil))
			c.parameters(what, operation, method.Input())
		}
		c.responses(what, verb, operation, method)
	}
}

// example wants a whole question, with numbers as numbers.
func (c *checker) example(what string, example any, question protoreflect.MessageDescriptor) {
	given, err := json.Marshal(example)
	if err != nil || example == nil {
		c.add("%s has the example %v, %v", what, example, err)
		return
	}
	message := dynamicpb.NewMessage(question)
	if err := protojson.Unmarshal(given, message); err != nil {
		c.add("the example of %s: %v", what, err)
	}
	again, err := protojson.MarshalOptions{UseProtoNames: true}.Marshal(message)
	var read any
	if err := errors.Join(err, json.Unmarshal(again, &read)); err != nil || !reflect.DeepEqual(read, example) {
		c.add("the example of %s is %s, and its question %s, %v", what, given, again, err)
	}
}

// responses wants the answer and every error that there is.
func (c *checker) responses(what, verb string, operation *document.Operation, method protoreflect.MethodDescriptor) {
	want := []string{"200", "400", "401", "403", "404", "405", "413", "415", "429", "503", "default"}
	if verb == "GET" {
		want = []string{"200", "304", "400", "401", "403", "404", "405", "429", "503", "default"}
	}
	c.same(what+" responses", slices.Sorted(maps.Keys(operation.Responses)), want)
	answer := operation.Responses["200"]
	table, isTable := answer.Content["text/csv"]
	delete(answer.Content, "text/csv")
	c.same(what+" answer", answer.Content, map[string]document.Media{"application/json": {Schema: reference(string(method.Output().Name()))}})
	if want := strings.HasPrefix(string(method.Name()), "List"); isTable != want || want && table.Schema.Type != "string" {
		c.add("%s comes as CSV: %v", what, isTable)
	}
	if _, tagged := answer.Headers["ETag"]; tagged != (verb == "GET") {
		c.add("%s has an ETag: %v", what, tagged)
	}
	c.described(what+" answer", answer.Description, method.Output())
	if parts := method.Input().Fields().ByName("fields") != nil; parts != strings.Contains(answer.Description, "`fields`") {
		c.add("%s: its answer says %q", what, answer.Description)
	}
}

// parameters wants the fields that the service reads from a query string, and
// those of them required that lie in nothing that can be left out.
func (c *checker) parameters(what string, operation *document.Operation, question protoreflect.MessageDescriptor) {
	got, asked := map[string]document.Parameter{}, false
	for _, p := range operation.Parameters {
		if p.Name == "If-None-Match" && p.In == "header" && !p.Required {
			asked = true
			continue
		}
		got[p.Name] = p
		if p.In != "query" {
			c.add("%s: %s is in %s", what, p.Name, p.In)
		}
	}
	want := map[string]bool{}
	var walk func(prefix string, message protoreflect.MessageDescriptor, given bool)
	walk = func(prefix string, message protoreflect.MessageDescriptor, given bool) {
		for i := range message.Fields().Len() {
			field := message.Fields().Get(i)
			name := prefix + string(field.Name())
			switch {
			case field.IsList() && field.Message() != nil:
			case needsList(field, proto.GetExtension(field.Options(), knitmathv1.E_Needs).(string)):
			case field.Message() != nil:
				walk(name+".", field.Message(), given && isRequired(field))
			default:
				want[name] = true
				p, ok := got[name]
				if !ok {
					c.add("%s has no parameter %s", what, name)
					continue
				}
				if p.Required != (given && isRequired(field)) {
					c.add("%s: %s is required: %v", what, name, p.Required)
				}
				if p.Explode != field.IsList() {
					c.add("%s: %s is given several times: %v", what, name, p.Explode)
				}
				c.described(what+" "+name, p.Description, field)
				c.same(what+" "+name+" says twice", p.Schema.Description, "")
				if values := valuesByGet(field); values != nil {
					c.same(what+" "+name+" may be", p.Schema.Enum, values)
					c.same(what+" "+name+" says of each", len(p.Schema.EnumDescriptions), len(values))
					continue
				}
				c.value(what+" "+name, p.Schema, field, true)
			}
		}
	}
	walk("", question, true)
	c.same(what+" parameters", slices.Sorted(maps.Keys(got)), slices.Sorted(maps.Keys(want)))
	if !asked {
		c.add("%s cannot be asked with If-None-Match", what)
	}
}

// needsList reports whether a field is refused without a list of objects called name,
// which no query string holds.
func needsList(field protoreflect.FieldDescriptor, name string) bool {
	other := field.ContainingMessage().Fields().ByName(protoreflect.Name(name))
	return other != nil && other.IsList() && other.Message() != nil
}

// valuesByGet are the values of an enum that a query string can ask for, nil where they
// are all.
func valuesByGet(field protoreflect.FieldDescriptor) []any {
	if field.Enum() == nil {
		return nil
	}
	var values []any
	all := field.Enum().Values()
	for i := range all.Len() {
		if !needsList(field, proto.GetExtension(all.Get(i).Options(), knitmathv1.E_ValueNeeds).(string)) {
			values = append(values, string(all.Get(i).Name()))
		}
	}
	if len(values) == all.Len() {
		return nil
	}
	return values
}

func isRequired(field protoreflect.FieldDescriptor) bool {
	behavior, _ := proto.GetExtension(field.Options(), annotations.E_FieldBehavior).([]annotations.FieldBehavior)
	return slices.Contains(behavior, annotations.FieldBehavior_REQUIRED)
}

func reference(name string) *document.Schema {
	return &document.Schema{Ref: "#/components/schemas/" + name}
}

// operations wants no operation but those of methods, under names of their own.
func (c *checker) operations(known map[string]bool) {
	taken := map[string]bool{}
	if known["GET /version"] = true; c.d.Paths["/version"] == nil {
		c.add("no path /version")
	}
	for path, item := range c.d.Paths {
		for verb, operation := range item.Operations() {
			if !known[verb+" "+path] {
				c.add("%s %s belongs to no method", verb, path)
			}
			if taken[operation.OperationID] {
				c.add("%s is the name of two operations", operation.OperationID)
			}
			taken[operation.OperationID] = true
		}
	}
}

// head wants what stands before and beside the paths.
func (c *checker) head(rooms map[string]bool) {
	c.same("version", c.d.Info.Version, strings.TrimPrefix(release.Version, "v"))
	if len(c.d.Servers) == 0 || len(c.d.Tags) != len(rooms)+1 {
		c.add("%d servers, %d tags for %d rooms", len(c.d.Servers), len(c.d.Tags), len(rooms))
	}
	c.same("security", c.d.Security, []map[string][]string{{}, {"apiKey": {}}, {"bearer": {}}})
	if s := c.d.Components.SecuritySchemes["apiKey"]; s.Type != "apiKey" || s.In != "header" || s.Name != "x-api-key" {
		c.add("security scheme %+v", s)
	}
	if s := c.d.Components.SecuritySchemes["bearer"]; s.Type != "http" || s.Scheme != "bearer" || s.Name != "" {
		c.add("security scheme %+v", s)
	}
}
