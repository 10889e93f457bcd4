package service

import (
	"errors"
	"fmt"

	"google.golang.org/protobuf/encoding/protowire"
	"google.golang.org/protobuf/reflect/protoreflect"

	"example.com/knitmath/knitmath/fault"
)

// maxParts bounds the values of a question, all its lists and messages together: of
// two or three bytes each a body within maxQuestionBytes has 170,000, which take more
// memory and time to read than any question to answer. The longest question that
// the stated limits allow has some 21,000 (longest_test.go).
const maxParts = 1 << 15

// errManyParts is why a question of more is not read.
var errManyParts = errors.New(manyParts)

var manyParts = fmt.Sprintf("the question has more than %d values", maxParts)

// manyPartsFault is what its caller is told.
var manyPartsFault = fault.Violation{Reason: fault.ReasonTooMany, Detail: manyParts}

// jsonParts counts the values within a body in JSON, an empty list or object as two: before
// every one stands a bracket or a comma.
func jsonParts(body []byte) int {
	n, quoted := 0, false
	for i := 0; i < len(body); i++ {
		switch c := body[i]; {
		case quoted && c == '\\':
			i++
		case c == '"':
			quoted = !quoted
		case quoted:
		case c == '{' || c == '[' || c == ',':
			n++
		}
	}
	return n
}

// wireParts counts the fields of a message in protobuf, those of messages within it
// too, until there are too many. What is no protobuf counts as far as it is.
func wireParts(data []byte, md protoreflect.MessageDescriptor, depth int) int {
	n := 0
	for len(data) > 0 && n <= maxParts {
		number, kind, tag := protowire.ConsumeTag(data)
		if tag < 0 {
			break
		}
		size := protowire.ConsumeFieldValue(number, kind, data[tag:])
		if size < 0 {
			break
		}
		n++
		fd := md.Fields().ByNumber(number)
		if kind == protowire.BytesType && fd != nil && fd.Message() != nil && depth < maxDepth {
			inner, _ := protowire.ConsumeBytes(data[tag:])
			n += wireParts(inner, fd.Message(), depth+1)
		}
		data = data[tag+size:]
	}
	return n
}
