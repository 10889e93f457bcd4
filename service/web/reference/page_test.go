package reference

import (
	"os"
	"strings"
	"testing"
)

// Every question has a page with each of its fields and those of what they are made
// of, every value of every enum, and a target for every link.
func TestEverythingIsSaid(t *testing.T) {
	data, err := os.ReadFile("../../../gen/openapi/knitmath.openapi.json")
	if err != nil {
		t.Fatal(err)
	}
	d, err := Read(data)
	if err != nil {
		t.Fatal(err)
	}
	if len(d.Paths) < 20 {
		t.Fatalf("%d paths", len(d.Paths))
	}
	for path, methods := range d.Paths {
		if methods["post"] == nil { // what is no question
			continue
		}
		body, err := d.Question(path)
		if err != nil {
			t.Error(err)
			continue
		}
		question, answer := methods["post"].RequestBody.Content.of().Ref, methods["post"].Responses["200"].Content.of().Ref
		for _, name := range append(d.parts([]string{question, answer}), named(question), named(answer)) {
			of := d.Components.Schemas[name]
			for _, p := range of.Properties {
				if !strings.Contains(body, "<dt><code>"+p.name+"</code>") {
					t.Errorf("%s: no field %s of %s", path, p.name, name)
				}
			}
			for _, value := range of.Enum {
				if !strings.Contains(body, "<code>"+value+"</code>") {
					t.Errorf("%s: no value %s of %s", path, value, name)
				}
			}
			if linked, there := strings.Contains(body, "#"+name+"\""), strings.Contains(body, "id=\""+name+"\""); linked && !there {
				t.Errorf("%s: a link to %s leads nowhere", path, name)
			}
		}
		if d.About(path) == "" {
			t.Errorf("%s: nothing is said of it", path)
		}
	}
	refusals := d.Refusals()
	for _, say := range []string{"<code>400</code>", "<code>429</code>", "<code>INFEASIBLE</code>",
		"<code>ORIGIN_NOT_ALLOWED</code>", "field_violations"} {
		if !strings.Contains(refusals, say) {
			t.Errorf("the refusals do not say %s", say)
		}
	}
}

const small = `{"paths": {"/v1/a:b": {"post": {"description": "About.",
	"requestBody": {"content": {"application/json": {"schema": {"$ref": "#/components/schemas/Q"}}}},
	"responses": {"200": {"content": {"application/json": {"schema": {"$ref": "#/components/schemas/A"}}}}}}}},
	"components": {"schemas": {
		"Q": {"type": "object", "required": ["z"], "properties": {
			"z": {"type": "number", "minimum": 1e-06, "maximum": 10000, "default": 10, "examples": [0.000002], "description": "Over z_cm <b>."},
			"a": {"type": "array", "minItems": 2, "items": {"type": "string", "maxLength": 5}}}},
		"A": {"type": "object", "properties": {"n": {"$ref": "#/components/schemas/E"}, "d": {"type": "string",
			"description": "Why:\n- ONE, at z: first.\n- TWO_THREE: second.\nMore."}}},
		"E": {"type": "string", "description": "An enum.\n\n- E_ONE: one.", "enum": ["E_ONE"], "x-enum-descriptions": ["The one."]}}}}`

// A field says what binds it, in the order of the document.
func TestFields(t *testing.T) {
	d, err := Read([]byte(small))
	if err != nil {
		t.Fatal(err)
	}
	body, err := d.Question("/v1/a:b")
	if err != nil {
		t.Fatal(err)
	}
	at := 0
	for _, say := range []string{
		`<code>z</code> <span class="kind">number, 0.000001 to 10000, required, default <code>10</code>, ` +
			`for example <code>0.000002</code></span>`,
		`Over <code>z_cm</code> &lt;b&gt;.`,
		`<code>a</code> <span class="kind">list of text, at least 2 of them, each at most 5 characters</span>`,
		`<a href="#E">E</a>`,
		"<p>Why:</p>\n<ul>\n<li><code>ONE</code>, at z: first.</li>\n<li><code>TWO_THREE</code>: second.</li>\n</ul>\n<p>More.</p>",
		"<h3 id=\"E\"><code>E</code></h3>\n<p>An enum.</p>\n",
		`<dt><code>E_ONE</code></dt><dd><p>The one.</p>`,
	} {
		next := strings.Index(body[at:], say)
		if next < 0 {
			t.Fatalf("%s is missing in\n%s", say, body[at:])
		}
		at += next
	}
	for _, bad := range []string{`{`, `{"components": {"schemas": {"Q": {"properties": []}}}}`, `{"paths": "none"}`} {
		if _, err := Read([]byte(bad)); err == nil {
			t.Errorf("%s is read", bad)
		}
	}
	if _, err := d.Question("/v1/none"); err == nil {
		t.Error("there is a page for what is not asked")
	}
}
