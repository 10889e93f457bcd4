package service

import (
	"errors"
	"net/url"
	"sort"
	"strconv"
	"strings"

	"google.golang.org/protobuf/reflect/protoreflect"

	"example.com/knitmath/knitmath/fault"
)

// explainQuery lists everything that is wrong with the query string of a GET, in
// the order of the parameters' names, and how many faults more there are than a
// reply lists; nothing when it can be read.
//
// It stands in front of the gateway's parser, which passes over a parameter that it
// does not know without a word.
func explainQuery(raw string, question protoreflect.MessageDescriptor) (found []fault.Violation, unlisted int) {
	values, err := url.ParseQuery(raw)
	if err != nil {
		return []fault.Violation{malformed("the query string cannot be read: " + err.Error())}, 0
	}
	keys := make([]string, 0, len(values))
	for key := range values {
		keys = append(keys, key)
	}
	sort.Strings(keys)
	x := &jsonFaults{}
	seen := map[string]bool{}
	for _, key := range keys {
		path, fd := resolve(question, key)
		switch {
		case fd == nil:
			x.add(path, reasonUnknown, "%s", unfit(question, key))
		case seen[path] || len(values[key]) > 1 && !fd.IsList():
			x.add(path, reasonDuplicate, "is given more than once")
		default:
			x.texts(path, values[key], fd)
		}
		seen[path] = true
	}
	return x.found, x.unlisted
}

// texts checks the values of a parameter. One item of a list stands in each.
func (x *jsonFaults) texts(path string, values []string, fd protoreflect.FieldDescriptor) {
	for i, text := range values {
		v, bad := textFault(text, fd)
		if !bad {
			continue
		}
		v.Field = path
		if fd.IsList() {
			v.Field = fault.Index(path, i)
		}
		if x.listed() {
			x.found = append(x.found, v)
		}
	}
}

// resolve follows a dotted path to a scalar field, or to a list of scalars, which
// is written by giving the parameter several times. Objects as a whole, and lists
// of them, do not fit in a query string.
func resolve(md protoreflect.MessageDescriptor, key string) (string, protoreflect.FieldDescriptor) {
	path := ""
	names := strings.Split(key, ".")
	for i, name := range names {
		fd := fieldNamed(md, name)
		if fd == nil || fd.Message() != nil && fd.IsList() || (fd.Message() != nil) != (i < len(names)-1) {
			return key, nil
		}
		path = joinPath(path, string(fd.Name()))
		if fd.Message() == nil {
			return path, fd
		}
		md = fd.Message()
	}
	return key, nil
}

// unfit says why a parameter names nothing that a query string can hold.
func unfit(md protoreflect.MessageDescriptor, key string) string {
	for name := range strings.SplitSeq(key, ".") {
		fd := fieldNamed(md, name)
		switch {
		case fd == nil:
			return "there is no such field; there are " + fieldsOf{md, name}.String()
		case fd.Message() == nil:
			return "is below a value, which has no fields"
		case fd.IsList():
			return "a list of objects does not fit in a query string; ask by POST"
		}
		md = fd.Message()
	}
	return "an object does not fit in a query string; it has the fields " + fieldsOf{of: md}.String() +
		", each a parameter of its own after a dot"
}

// textFault says what is wrong with a scalar written in a query string.
func textFault(text string, fd protoreflect.FieldDescriptor) (fault.Violation, bool) {
	switch fd.Kind() {
	case protoreflect.StringKind:
		return fault.Violation{}, false
	case protoreflect.BoolKind:
		_, err := strconv.ParseBool(text)
		return wrongType(fd), err != nil
	case protoreflect.EnumKind:
		number, err := strconv.ParseInt(text, 10, 32)
		known := fd.Enum().Values().ByName(protoreflect.Name(text)) != nil ||
			err == nil && fd.Enum().Values().ByNumber(protoreflect.EnumNumber(number)) != nil
		return fault.Violation{Reason: fault.ReasonUnknownValue, Detail: "must be " + kindWords(fd)}, !known
	case protoreflect.Int32Kind:
		_, err := strconv.ParseInt(text, 10, 32)
		if errors.Is(err, strconv.ErrRange) {
			return beyond(text), true
		}
		return wrongType(fd), err != nil
	}
	if strings.ContainsAny(text, "xX_") { // Go reads these, other languages do not.
		return wrongType(fd), true
	}
	number, err := strconv.ParseFloat(text, 64)
	if errors.Is(err, strconv.ErrRange) {
		return beyond(text), true
	}
	// Go reads more spellings of what is not finite than the JSON mapping has.
	if err == nil && number-number != 0 && text != "NaN" && text != "Infinity" && text != "-Infinity" {
		return fault.Violation{Reason: fault.ReasonNotFinite, Detail: "must be a finite number"}, true
	}
	return wrongType(fd), err != nil
}
