package service

import (
	"fmt"
	"net/url"
	"slices"
	"testing"

	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/fault"
)

// The parameters of every GET are the fields that the service takes in a query
// string: it knows each of them, and none of the others.
func TestParametersAreReadFromQueries(t *testing.T) {
	server, document := start(t), readDocument(t)
	for path, r := range mustReadRoutes(t) {
		if !r.get {
			continue
		}
		offered := map[string]bool{}
		for _, p := range document.Paths[path]["get"].Parameters {
			if p.In == "query" {
				offered[p.Name] = true
			}
		}
		for name, value := range queryPaths("", r.question, nil) {
			got := server.send(t, "GET", path+"?"+url.QueryEscape(name)+"="+value, "")
			refused := false
			if got.code != 200 {
				faults := violations(got.status(t))
				refused = slices.Contains(faults, name+" "+string(reasonUnknown)) ||
					needsList(r.question, name) && slices.Contains(faults, name+" "+string(fault.ReasonContradictory))
			}
			if refused == offered[name] {
				t.Errorf("GET %s?%s=%s: in the document: %v, and the service says HTTP %d %s", path, name, value, offered[name], got.code, got.body)
			}
			delete(offered, name)
		}
		if len(offered) > 0 {
			t.Errorf("GET %s: no such fields: %v", path, offered)
		}
	}
}

// needsList reports whether a field of a question means nothing without a list of
// objects, which no query string holds.
func needsList(question protoreflect.MessageDescriptor, name string) bool {
	fd := question.Fields().ByName(protoreflect.Name(name))
	return fd != nil && proto.GetExtension(fd.Options(), knitmathv1.E_Needs).(string) != ""
}

// No value of an enum is offered in a query string that cannot be asked for there: each
// of the others is one that the service knows, and what is left out wants a list.
func TestValuesOfQueriesCanBeAsked(t *testing.T) {
	server, document := start(t), readDocument(t)
	left := 0
	for path, r := range mustReadRoutes(t) {
		for _, p := range document.Paths[path]["get"].Parameters {
			fd := r.question.Fields().ByName(protoreflect.Name(p.Name))
			if fd == nil || fd.Enum() == nil || p.Schema.Enum == nil {
				continue
			}
			for i := range fd.Enum().Values().Len() {
				value := fd.Enum().Values().Get(i)
				needs, _ := proto.GetExtension(value.Options(), knitmathv1.E_ValueNeeds).(string)
				got := server.send(t, "GET", path+"?"+p.Name+"="+string(value.Name()), "")
				faults := violations(got.status(t))
				wants := needs != "" && slices.Contains(faults, needs+" "+string(fault.ReasonRequired))
				refused := wants || slices.Contains(faults, p.Name+" "+string(fault.ReasonUnknownValue))
				if offered := slices.Contains(p.Schema.Enum, string(value.Name())); offered == refused {
					t.Errorf("GET %s?%s=%s: in the document: %v, and the service says %s", path, p.Name, value.Name(), offered, got.body)
				}
				if wants {
					left++
				}
			}
		}
	}
	if left != 2 {
		t.Errorf("%d values are left out of the document; of today's only a yoke's own schedule and a solid's own profile have to be", left)
	}
}

func mustReadRoutes(t *testing.T) map[string]route {
	t.Helper()
	routes, err := readRoutes()
	if err != nil {
		t.Fatal(err)
	}
	return routes
}

// queryPaths are all fields of a question, lists and objects too, each with a
// value of its kind.
func queryPaths(prefix string, md protoreflect.MessageDescriptor, above []protoreflect.FullName) map[string]string {
	paths := map[string]string{}
	for i := range md.Fields().Len() {
		fd := md.Fields().Get(i)
		name := prefix + string(fd.Name())
		switch {
		case fd.Message() != nil && slices.Contains(above, fd.Message().FullName()): // a tree
		case fd.Message() != nil:
			paths[name] = "1"
			for below, value := range queryPaths(name+".", fd.Message(), append(above, md.FullName())) {
				paths[below] = value
			}
		case fd.Kind() == protoreflect.EnumKind:
			paths[name] = fmt.Sprint(fd.Enum().Values().Get(0).Name())
		case fd.Kind() == protoreflect.BoolKind:
			paths[name] = "true"
		case fd.Kind() == protoreflect.StringKind:
			paths[name] = "summary" // also a part of every answer
		default:
			paths[name] = "1"
		}
	}
	return paths
}
