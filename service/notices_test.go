package service

import (
	"encoding/json"
	"regexp"
	"strings"
	"testing"

	"google.golang.org/protobuf/reflect/protoreflect"

	"example.com/knitmath/proto/compile"
)

// Every notice in a good wire case has a reason that its answer's comment
// describes, and is about a field of the question that was asked or about none.
func TestNoticesAreAsDescribed(t *testing.T) {
	set, err := compile.Dir("../proto")
	if err != nil {
		t.Fatal(err)
	}
	reasons, err := compile.Reasons(set, "knitmath")
	if err != nil {
		t.Fatal(err)
	}
	described := map[string]bool{}
	for _, r := range reasons {
		described[r.Where+" "+r.Name] = true
	}
	seen := map[string]bool{}
	for path, file := range readWireFiles(t) {
		if file.Cases != nil {
			continue
		}
		m := findMethod(t, file.Method)
		var answer struct {
			Notices []struct{ Reason, Field string }
		}
		if err := json.Unmarshal(file.Response, &answer); err != nil {
			t.Fatal(err)
		}
		for _, n := range answer.Notices {
			where := string(m.desc.Output().Name()) + ".notices " + n.Reason
			seen[where] = true
			if !described[where] {
				t.Errorf("%s: %s is not described", path, where)
			}
			if n.Field != "" && !hasPath(m.desc.Input(), n.Field) {
				t.Errorf("%s: %s is about %s, which is no field of the question", path, n.Reason, n.Field)
			}
		}
	}
	for where := range described {
		// More than 200 findings would make three long files of one remark; the
		// pattern room's own tests show it.
		if strings.Contains(where, ".notices ") && !strings.HasSuffix(where, " TOO_MANY_FINDINGS") && !seen[where] {
			t.Errorf("no good wire case shows %s", where)
		}
	}
}

// indexes are the places in lists of a path.
var indexes = regexp.MustCompile(`\[\d+\]`)

// hasPath reports whether a path such as "items[2].rule" leads to a field.
func hasPath(md protoreflect.MessageDescriptor, path string) bool {
	words := strings.Split(indexes.ReplaceAllString(path, ""), ".")
	for i, word := range words {
		if md == nil {
			return false
		}
		fd := md.Fields().ByName(protoreflect.Name(word))
		if fd == nil {
			return false
		}
		if i == len(words)-1 {
			return true
		}
		md = fd.Message()
	}
	return false
}
