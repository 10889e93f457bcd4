package service

import (
	"google.golang.org/protobuf/encoding/protojson"
	"google.golang.org/protobuf/proto"

	"example.com/knitmath/service/answerjson"
)

// questionJSON reads questions. Fields that are not known are refused, as they are
// unless one asks for something else, and so is what is nested too deep.
var questionJSON = protojson.UnmarshalOptions{RecursionLimit: maxDepth}

// readJSON reads a question as the form says. What is wrong with one is found out when
// that has failed (refuseUnread), not before and not on the way.
func readJSON(data []byte, into proto.Message) error {
	if jsonParts(data) > maxParts {
		return errManyParts
	}
	return questionJSON.Unmarshal(data, into)
}

// jsonPerByte is how many bytes of JSON most answers have for each of the message.
const jsonPerByte = 2

// writeJSON writes an answer, or the part of it that is asked for. Answers have the field
// names of the proto files, which are also the paths of violations. Zero counts and empty
// lists are written out: a web client must be able to tell "0 plain stitches" from a field
// it misspelt. Only what the proto calls absent stays absent.
func writeJSON(answer proto.Message, part mask) ([]byte, error) {
	if part != nil {
		return partialAnswer{answer, part}.MarshalJSON()
	}
	// About as long as most become: a buffer that grows is copied each time.
	return answerjson.Append(make([]byte, 0, max(minCompressed, jsonPerByte*proto.Size(answer))), answer)
}
