package main

import (
	"fmt"
	"strings"

	"example.com/knitmath/proto/document"
)

// shortenNames takes the packages away from the names of components: generated
// clients make their own names of them, and KnitmathV1Gauge reads worse than
// Gauge.
func shortenNames(d *document.Document, _ *wire) error {
	short := func(name string) string { return name[strings.LastIndex(name, ".")+1:] }
	schemas := map[string]*document.Schema{}
	for name, schema := range d.Components.Schemas {
		if schemas[short(name)] != nil {
			return fmt.Errorf("two components are called %s", short(name))
		}
		schemas[short(name)] = schema
	}
	d.Components.Schemas = schemas
	shorten := func(schema *document.Schema) {
		if schema.Target() != "" {
			schema.SetTarget(short(schema.Target()))
		}
		if schema.Discriminator != nil {
			for value, target := range schema.Discriminator.Mapping {
				to := &document.Schema{Ref: target}
				to.SetTarget(short(to.Target()))
				schema.Discriminator.Mapping[value] = to.Ref
			}
		}
	}
	d.Walk(shorten)
	return nil
}
