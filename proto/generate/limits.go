package main

import (
	"errors"

	"example.com/knitmath/proto/bounds"
	"example.com/knitmath/proto/document"
)

// writeBounds carries ranges, sizes, defaults and examples from the options of
// the fields into the properties. Bounds that a question sets are no promise of
// answers, so a message of both has them in its first schema only.
func writeBounds(d *document.Document, w *wire) error {
	var faults []error
	for _, object := range w.objects(d) {
		if object.answer && w.asked[object.message.FullName()] {
			continue
		}
		for _, field := range fields(object.message) {
			of, err := w.bounds.Field(field)
			if err != nil {
				faults = append(faults, err)
				continue
			}
			write(of, object.schema.Properties.Get(string(field.Name())))
		}
	}
	return errors.Join(faults...)
}

func write(of bounds.Bounds, to *document.Schema) {
	to.Minimum, to.ExclusiveMinimum = of.Minimum, of.ExclusiveMinimum
	to.Maximum, to.ExclusiveMaximum = of.Maximum, of.ExclusiveMaximum
	to.MinLength, to.MaxLength, to.Pattern = of.MinLength, of.MaxLength, of.Pattern
	if to.MaxLength == nil {
		// No character has less than one byte. This lets too much pass; the
		// description says what is meant.
		to.MaxLength = of.MaxBytes
	}
	to.MinItems, to.MaxItems, to.UniqueItems = of.MinItems, of.MaxItems, of.Unique
	if of.ZeroIsAbsent && of.MinItems != nil && *of.MinItems > 1 {
		// An empty list is one that is left out: too few are one and more.
		one, tooFew := uint64(1), *of.MinItems-1
		to.MinItems, to.Not = nil, &document.Schema{MinItems: &one, MaxItems: &tooFew}
	}
	if of.Items != nil {
		write(*of.Items, to.Items)
	}
	if len(of.In) > 0 {
		to.Enum = of.In
	}
	if len(of.NotIn) > 0 {
		to.Not = &document.Schema{Enum: of.NotIn}
	}
	to.Default, to.Examples = of.Default, of.Examples
}
