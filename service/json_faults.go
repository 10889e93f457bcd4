package service

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"unicode/utf8"

	"google.golang.org/protobuf/reflect/protoreflect"

	"example.com/knitmath/knitmath/fault"
)

// Reasons for which the JSON face refuses a field before the kernel sees it.
// They stand beside the kernel's own and are public for ever like them.
const (
	reasonMalformed fault.Reason = "MALFORMED"       // not JSON, or not a query string
	reasonUnknown   fault.Reason = "UNKNOWN_FIELD"   // no field of this name
	reasonDuplicate fault.Reason = "DUPLICATE_FIELD" // the field twice
	reasonType      fault.Reason = "WRONG_TYPE"      // not the kind of value the field holds
	reasonTooDeep   fault.Reason = "TOO_DEEP"        // nested beyond maxDepth
)

// maxDepth bounds the nesting of a body. The deepest question,
// {"pieces": [{"rowwise": {"stitch_counts": [1]}}]}, has 5 levels.
const maxDepth = 16

// notOfTheForm is said of a body in which no fault was found that has a name.
const notOfTheForm = "the body is not JSON of the documented form"

// explainJSON lists what is wrong with a body protojson has refused, in the order
// of the body, and counts what is more than a reply lists. It only explains: what
// is accepted is protojson's decision alone.
func explainJSON(body []byte, question protoreflect.MessageDescriptor) (found []fault.Violation, unlisted int) {
	x := &jsonFaults{}
	switch {
	case len(bytes.TrimSpace(body)) == 0:
		x.add("", reasonMalformed, "the body is empty; a question with no field set is {}")
	case !utf8.Valid(body):
		x.add("", reasonMalformed, "the body is not valid UTF-8")
	case depth(body) > maxDepth:
		x.add("", reasonTooDeep, "the body is nested more than %d levels deep", maxDepth)
	case jsonParts(body) > maxParts:
		x.found = append(x.found, manyPartsFault)
	case !x.syntax(body):
	default:
		x.dec = json.NewDecoder(bytes.NewReader(body))
		x.dec.UseNumber()
		x.value("", x.token(), question)
	}
	if len(x.found) == 0 {
		x.add("", reasonMalformed, notOfTheForm)
	}
	return x.found, x.unlisted
}

// jsonFaults walks a body that is well-formed JSON beside the message it should
// be.
type jsonFaults struct {
	dec      *json.Decoder
	ended    bool
	found    []fault.Violation
	unlisted int
}

func (x *jsonFaults) add(field string, reason fault.Reason, format string, args ...any) {
	if x.listed() {
		x.found = append(x.found, fault.Violation{Field: field, Reason: reason, Detail: fmt.Sprintf(format, args...)})
	}
}

// listed tells whether one fault more has a place in the reply. If not it is
// counted, and nobody has to find words for it.
func (x *jsonFaults) listed() bool {
	if len(x.found) < maxViolations {
		return true
	}
	x.unlisted++
	return false
}

// syntax reports whether body is exactly one JSON value.
func (x *jsonFaults) syntax(body []byte) bool {
	var whole json.RawMessage
	err := json.Unmarshal(body, &whole)
	if err == nil {
		return true
	}
	var where *json.SyntaxError
	if errors.As(err, &where) {
		x.add("", reasonMalformed, "the body is not JSON: %v, at byte %d", where, where.Offset)
	} else {
		x.add("", reasonMalformed, "the body is not JSON: %v", err)
	}
	return false
}

// token is the next token. The syntax has been checked, so none should be
// missing; were one, the walk ends.
func (x *jsonFaults) token() json.Token {
	t, err := x.dec.Token()
	x.ended = x.ended || err != nil
	return t
}

// value checks one message that begins with tok.
func (x *jsonFaults) value(path string, tok json.Token, md protoreflect.MessageDescriptor) {
	if tok != json.Delim('{') {
		x.add(path, reasonType, "must be an object")
		x.skip(tok)
		return
	}
	seen := map[protoreflect.Name]bool{}
	chosen := map[protoreflect.Name]string{} // the member given of each oneof
	for x.dec.More() {
		key, _ := x.token().(string)
		fd := fieldNamed(md, key)
		if fd == nil {
			x.add(joinPath(path, key), reasonUnknown, "there is no such field; there are %s", fieldsOf{md, key})
			x.skip(x.token())
			continue
		}
		at := joinPath(path, string(fd.Name()))
		if seen[fd.Name()] {
			x.add(at, reasonDuplicate, "is given more than once")
			x.skip(x.token())
			continue
		}
		seen[fd.Name()] = true
		tok := x.token()
		if of := fd.ContainingOneof(); of != nil && !of.IsSynthetic() && tok != nil {
			if first, taken := chosen[of.Name()]; taken {
				x.add(at, fault.ReasonContradictory, "excludes %s; give one of them", first)
			} else {
				chosen[of.Name()] = at
			}
		}
		x.field(at, tok, fd)
	}
	x.token() // the closing brace
}

// field checks the value of a field. null is the same as leaving it out.
func (x *jsonFaults) field(path string, tok json.Token, fd protoreflect.FieldDescriptor) {
	switch {
	case tok == nil:
	case !fd.IsList():
		x.single(path, tok, fd)
	case tok != json.Delim('['):
		x.add(path, reasonType, "must be an array")
		x.skip(tok)
	default:
		for i := 0; x.dec.More(); i++ {
			x.single(fmt.Sprintf("%s[%d]", path, i), x.token(), fd)
		}
		x.token() // the closing bracket
	}
}

// single checks one value that is not an array.
func (x *jsonFaults) single(path string, tok json.Token, fd protoreflect.FieldDescriptor) {
	if fd.Message() != nil {
		x.value(path, tok, fd.Message())
		return
	}
	if _, composite := tok.(json.Delim); composite {
		x.add(path, reasonType, "must be %s", kindWords(fd))
		x.skip(tok)
		return
	}
	if v, bad := scalarFault(tok, fd); bad && x.listed() {
		v.Field = path
		x.found = append(x.found, v)
	}
}

// skip passes over a value that begins with tok.
func (x *jsonFaults) skip(tok json.Token) {
	open := 0
	for {
		switch tok {
		case json.Delim('{'), json.Delim('['):
			open++
		case json.Delim('}'), json.Delim(']'):
			open--
		}
		if open == 0 || x.ended {
			return
		}
		tok = x.token()
	}
}

// depth is how deep brackets are nested in body, whether or not they match. It
// is measured before anything that might recurse.
func depth(body []byte) int {
	now, most, quoted := 0, 0, false
	for i := 0; i < len(body); i++ {
		switch c := body[i]; {
		case quoted && c == '\\':
			i++
		case c == '"':
			quoted = !quoted
		case quoted:
		case c == '{' || c == '[':
			now++
			most = max(most, now)
		case c == '}' || c == ']':
			now--
		}
	}
	return most
}
