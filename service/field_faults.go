package service

import (
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"slices"
	"sort"
	"strconv"
	"strings"

	"google.golang.org/protobuf/reflect/protoreflect"

	"example.com/knitmath/knitmath/fault"
)

// What the explanations of a body and of a query string share.

// fieldNamed finds a field by its proto name or, as the JSON mapping of protobuf
// asks readers to accept, by its camel-case name.
func fieldNamed(md protoreflect.MessageDescriptor, key string) protoreflect.FieldDescriptor {
	if fd := md.Fields().ByTextName(key); fd != nil {
		return fd
	}
	return md.Fields().ByJSONName(key)
}

// fieldsOf lists the fields of a message, those first that are written most like the key
// that is none. It does so when it is printed: of most faults in a long body nobody reads
// the words.
type fieldsOf struct {
	of  protoreflect.MessageDescriptor
	key string
}

func (f fieldsOf) String() string {
	names := make([]string, f.of.Fields().Len())
	for i := range names {
		names[i] = string(f.of.Fields().Get(i).Name())
	}
	pairs := letterPairs(f.key)
	sort.SliceStable(names, func(i, j int) bool { return likeness(pairs, names[i]) > likeness(pairs, names[j]) })
	return strings.Join(names, ", ")
}

// likeness is what share of their pairs of letters a key and a name have in common, as
// Dice's coefficient (Ecology 26, 1945) counts it.
func likeness(of map[string]bool, name string) float64 {
	pairs, shared := letterPairs(name), 0
	for pair := range pairs {
		if of[pair] {
			shared++
		}
	}
	return 2 * float64(shared) / float64(max(len(of)+len(pairs), 1))
}

// letterPairs are the letters that stand side by side in a name, the first one's with
// what stands before it.
func letterPairs(name string) map[string]bool {
	name = " " + strings.ToLower(name[:min(len(name), maxFieldLength)])
	pairs := make(map[string]bool, len(name))
	for i := 1; i < len(name); i++ {
		pairs[name[i-1:i+1]] = true
	}
	return pairs
}

// joinPath is the path of a field inside prefix.
func joinPath(prefix, field string) string {
	if prefix == "" {
		return field
	}
	return prefix + "." + field
}

// kindWords says what a scalar field holds.
func kindWords(fd protoreflect.FieldDescriptor) string {
	switch fd.Kind() {
	case protoreflect.EnumKind:
		return "one of " + valueNames(fd)
	case protoreflect.StringKind:
		return "a string"
	case protoreflect.BoolKind:
		return "true or false"
	case protoreflect.Int32Kind:
		return "a whole number"
	}
	return "a number"
}

// valueNames lists the names of an enumeration that its field takes, as its rule
// says, but for the first, which means that nothing was said.
func valueNames(fd protoreflect.FieldDescriptor) string {
	only := onlyValues(fd)
	var names []string
	values := fd.Enum().Values()
	for i := 1; i < values.Len(); i++ {
		if v := values.Get(i); len(only) == 0 || slices.Contains(only, v.Number()) {
			names = append(names, string(v.Name()))
		}
	}
	return strings.Join(names, ", ")
}

// scalarFault says what is wrong with a scalar read from JSON, if anything is.
func scalarFault(tok json.Token, fd protoreflect.FieldDescriptor) (fault.Violation, bool) {
	text, isText := tok.(string)
	number, isNumber := tok.(json.Number)
	_, isBool := tok.(bool)
	switch fd.Kind() {
	case protoreflect.StringKind:
		return wrongType(fd), !isText
	case protoreflect.BoolKind:
		return wrongType(fd), !isBool
	case protoreflect.EnumKind:
		if isText {
			known := fd.Enum().Values().ByName(protoreflect.Name(text)) != nil
			return fault.Violation{Reason: fault.ReasonUnknownValue, Detail: "must be " + kindWords(fd)}, !known
		}
		return wholeFault(string(number), isNumber, fd)
	}
	if isText {
		// The JSON mapping of protobuf writes numbers that JSON has no way to
		// write as these strings; the kernel refuses them by their own reason.
		if fd.Kind() != protoreflect.Int32Kind && (text == "NaN" || text == "Infinity" || text == "-Infinity") {
			return fault.Violation{}, false
		}
		isNumber = json.Unmarshal([]byte(text), &number) == nil && text == string(number)
	}
	if fd.Kind() == protoreflect.Int32Kind {
		return wholeFault(string(number), isNumber, fd)
	}
	return floatFault(string(number), isNumber, fd)
}

func floatFault(text string, isNumber bool, fd protoreflect.FieldDescriptor) (fault.Violation, bool) {
	if !isNumber {
		return wrongType(fd), true
	}
	_, err := strconv.ParseFloat(text, 64)
	return beyond(text), errors.Is(err, strconv.ErrRange)
}

// wholeFault checks a whole number of 32 bits, which may be written as 2.0 or 2e1.
func wholeFault(text string, isNumber bool, fd protoreflect.FieldDescriptor) (fault.Violation, bool) {
	v, err := strconv.ParseFloat(text, 64)
	switch {
	case !isNumber:
		return wrongType(fd), true
	case err != nil || v < math.MinInt32 || v > math.MaxInt32:
		return beyond(text), true
	}
	return wrongType(fd), v != math.Trunc(v) //nolint:forbidigo // A test for a whole number; nothing is rounded.
}

func wrongType(fd protoreflect.FieldDescriptor) fault.Violation {
	return fault.Violation{Reason: reasonType, Detail: "must be " + kindWords(fd)}
}

func beyond(text string) fault.Violation {
	return fault.Violation{Reason: fault.ReasonOutOfRange,
		Detail: fmt.Sprintf("is %s, which is beyond any number that can be held", shorten(text, maxFieldLength/2))}
}
