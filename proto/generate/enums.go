package main

import (
	"fmt"
	"strings"

	"example.com/knitmath/proto/document"
	"google.golang.org/protobuf/reflect/protoreflect"
)

// describeValues says of every value of an enum what it means, for people in the
// description and for programs beside the values.
func describeValues(d *document.Document, w *wire) error {
	for name, schema := range d.Components.Schemas {
		found, err := w.files.FindDescriptorByName(protoreflect.FullName(name))
		enum, ok := found.(protoreflect.EnumDescriptor)
		if err != nil || !ok {
			continue
		}
		if len(schema.Enum) != enum.Values().Len() {
			return fmt.Errorf("%s has %d values, want %d", name, len(schema.Enum), enum.Values().Len())
		}
		list := &strings.Builder{}
		for i := range enum.Values().Len() {
			value := enum.Values().Get(i)
			schema.Enum[i] = string(value.Name())
			schema.EnumDescriptions = append(schema.EnumDescriptions, comment(value))
			_, _ = fmt.Fprintf(list, "\n- `%s`: %s", value.Name(), comment(value))
		}
		schema.Description += "\n" + list.String()
	}
	return nil
}
