package service

import (
	"regexp"
	"strings"
	"testing"

	"google.golang.org/protobuf/reflect/protoreflect"
)

// TestWireCasesNameEveryField wants, for every method, a good case, and for every
// field of its question a bad case in which that field is at fault.
func TestWireCasesNameEveryField(t *testing.T) {
	indices := regexp.MustCompile(`\[\d+\]`)
	good, bad := map[string]bool{}, map[string]bool{}
	for _, f := range readWireFiles(t) {
		if f.Cases == nil {
			good[f.Method] = true
		}
		for _, c := range f.Cases {
			for _, v := range c.Violations {
				field, _, _ := strings.Cut(v, " ")
				bad[f.Method+" "+indices.ReplaceAllString(field, "")] = true
			}
		}
	}
	for _, service := range wireServices() {
		for i := range service.Methods().Len() {
			method := string(service.Name()) + "/" + string(service.Methods().Get(i).Name())
			if !good[method] {
				t.Errorf("%s has no good case", method)
			}
			for _, path := range leaves("", service.Methods().Get(i).Input()) {
				if !bad[method+" "+path] {
					t.Errorf("%s: no bad case for %s", method, path)
				}
			}
		}
	}
}

// leaves lists the paths of all fields that hold no message.
func leaves(prefix string, md protoreflect.MessageDescriptor) []string {
	var out []string
	for i := range md.Fields().Len() {
		fd := md.Fields().Get(i)
		path := joinPath(prefix, string(fd.Name()))
		if fd.Message() == md || prefix == "" && fd.Name() == "fields" {
			// A tree has the leaves of its root; what to send of the answer is read
			// alike for all methods, and tested once.
			continue
		}
		if fd.Message() != nil {
			out = append(out, leaves(path, fd.Message())...)
			continue
		}
		out = append(out, path)
	}
	return out
}
