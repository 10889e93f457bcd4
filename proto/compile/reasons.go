package compile

import (
	"regexp"
	"strings"

	"google.golang.org/protobuf/reflect/protodesc"
	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/types/descriptorpb"
)

// A Reason is a word for machines that answers and refusals carry, as its comment
// in a .proto file describes it. Clients branch on reasons: they are as much of
// the wire as fields are, though no descriptor has them.
type Reason struct {
	// Name is the word, UPPER_SNAKE_CASE.
	Name string
	// Where is the element whose comment describes it: a field of notices or
	// findings, or the package for the reasons of violations.
	Where string
	// At says which fields of the request it is about: a path, several, or "no
	// field"; empty where the comment has none to say.
	At string
	// Meaning is the rest of its description, in one line.
	Meaning string
}

// described is the first line of a reason in a comment:
//
//   - HALFWAY, at width_cm or height_cm: the size lies exactly half-way
//     between two counts.
var described = regexp.MustCompile(`^\s*- ([A-Z][A-Z0-9_]+)(?:, at ([^:]+))?: (.+)$`)

// Reasons finds all reasons that the comments of the project's own files
// describe, in the order of the files.
func Reasons(set *descriptorpb.FileDescriptorSet, own string) ([]Reason, error) {
	files, err := protodesc.NewFiles(set)
	if err != nil {
		return nil, err
	}
	var found []Reason
	for _, f := range set.File {
		if !strings.HasPrefix(f.GetName(), own+"/") {
			continue
		}
		file, err := files.FindFileByPath(f.GetName())
		if err != nil {
			return nil, err
		}
		locations := file.SourceLocations()
		// The comment above the package statement, which is field 2 of a file.
		found = appendReasons(found, string(file.Package()), locations.ByPath(protoreflect.SourcePath{2}).LeadingComments)
		messages := file.Messages()
		for i := range messages.Len() {
			fields := messages.Get(i).Fields()
			for k := range fields.Len() {
				fd := fields.Get(k)
				found = appendReasons(found, string(messages.Get(i).Name())+"."+string(fd.Name()), locations.ByDescriptor(fd).LeadingComments)
			}
		}
	}
	return found, nil
}

// appendReasons reads the reasons out of one comment. A description goes on over
// the lines that are indented further than its dash.
func appendReasons(found []Reason, where, comment string) []Reason {
	inside := false
	for _, line := range strings.Split(comment, "\n") {
		if m := described.FindStringSubmatch(line); m != nil {
			found = append(found, Reason{Name: m[1], Where: where, At: m[2], Meaning: m[3]})
			inside = true
			continue
		}
		inside = inside && strings.HasPrefix(line, "   ")
		if inside {
			found[len(found)-1].Meaning += " " + strings.TrimSpace(line)
		}
	}
	return found
}
