package document_test

import (
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/proto/document"
)

// A document is written as it was read: nothing is lost, and properties keep their
// order, which is not that of the alphabet.
func TestReadAndWrite(t *testing.T) {
	const text = `{
  "openapi": "3.1.0",
  "info": {
    "title": "wool",
    "description": "less < more & \"so\" on",
    "version": "1"
  },
  "paths": {
    "/wool": {
      "get": {
        "operationId": "wool",
        "parameters": [
          {
            "name": "ply",
            "in": "query",
            "schema": {
              "type": "integer",
              "minimum": 0,
              "default": false
            }
          }
        ],
        "responses": {
          "200": {
            "$ref": "#/components/responses/Wool"
          }
        }
      }
    }
  },
  "components": {
    "schemas": {
      "Wool": {
        "type": "object",
        "properties": {
          "zulu": {
            "$ref": "#/components/schemas/Wool",
            "description": "< &"
          },
          "alpha": {
            "type": "array",
            "items": {
              "type": "number",
              "exclusiveMinimum": 0.000001
            },
            "maxItems": 3
          }
        },
        "required": [
          "zulu"
        ],
        "additionalProperties": false,
        "not": {
          "anyOf": [
            {
              "required": [
                "zulu",
                "alpha"
              ]
            }
          ]
        }
      }
    }
  }
}
`
	read, err := document.Read([]byte(text))
	if err != nil {
		t.Fatal(err)
	}
	written, err := read.Write()
	if err != nil || strings.Replace(string(written), "1e-06", "0.000001", 1) != text {
		t.Errorf("%v\n%s", err, written)
	}
}

// What the types do not hold is refused, at any depth.
func TestReadIsStrict(t *testing.T) {
	for _, text := range []string{
		`{"openapi": "3.1.0", "webhooks": {}}`,
		`{"components": {"schemas": {"A": {"title": "a"}}}}`,
		`{"components": {"schemas": {"A": {"properties": {"a": {"readOnly": true}}}}}}`,
		`{"components": {"schemas": {"A": {"properties": {"a": {"properties": {"b": {"readOnly": true}}}}}}}}`,
		`{"components": {"schemas": {"A": {"properties": {"a": {"items": {"xml": {}}}}}}}}`,
		`{"components": {"schemas": {"A": {"properties": []}}}}`,
	} {
		if _, err := document.Read([]byte(text)); err == nil {
			t.Errorf("%s was read", text)
		}
	}
}

// A clone shares no schema with what it was made from, and Walk comes to all.
func TestCloneAndWalk(t *testing.T) {
	leaf := func() *document.Schema { return document.RefTo("Leaf") }
	whole := &document.Schema{
		Items: leaf(), Not: leaf(),
		OneOf: []*document.Schema{leaf()}, AnyOf: []*document.Schema{leaf()},
	}
	whole.Properties.Set("a", leaf())
	var seen []*document.Schema
	visit := func(s *document.Schema) { seen = append(seen, s) }
	whole.Walk(visit)
	whole.Clone().Walk(visit)
	slices.SortFunc(seen, func(a, b *document.Schema) int { return strings.Compare(a.Ref, b.Ref) })
	if len(seen) != 12 || seen[0].Ref != "" || seen[1].Ref != "" || seen[2].Target() != "Leaf" {
		t.Errorf("%d schemas seen", len(seen))
	}
	for i, s := range seen {
		if slices.Contains(seen[:i], s) {
			t.Errorf("seen twice: %+v", s)
		}
	}
}
