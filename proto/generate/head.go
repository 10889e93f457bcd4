package main

import (
	"fmt"
	"strings"

	"example.com/knitmath/proto/document"
	"example.com/knitmath/release"
)

// aboutDocument opens the description; the rooms follow.
const aboutDocument = `The arithmetic of hand knitting, exactly: every rounding is named, and every figure says where it comes from.

Fields are named as in the .proto files; a question may have them in camelCase too. Lengths are in centimetres, masses
in grams, yarn in metres. What an answer is said to hold is the whole answer. A question is put by POST, or, if it is
short and has no list of objects, in a query string by GET: such operations end in ` + "`" + byGet + "`" + `.
HEAD is answered wherever GET is, without the body.
A number may be sent as text ("22"), as protobuf's JSON has it; answers have numbers.

What a value of an enum means stands in the description of the enum and, for programs, in x-enum-descriptions beside it.`

// A question may come with a key, in either of two headers, but need not.
const (
	apiKey = "apiKey"
	bearer = "bearer"
)

const aboutKeys = "Whoever runs the service may ask for keys; by default it asks for none. One key only, in one header."

// writeHead says what the document is about and where the service is.
func writeHead(d *document.Document, w *wire) error {
	d.Info = document.Info{
		Title:       own,
		Summary:     "The arithmetic of hand knitting.",
		Description: prose(aboutDocument) + "\n",
		Version:     strings.TrimPrefix(release.Version, "v"),
	}
	d.Servers = []document.Server{{URL: "/", Description: "Where this document was read."}}
	d.Security = []map[string][]string{{}, {apiKey: {}}, {bearer: {}}}
	d.Components.SecuritySchemes = map[string]document.SecurityScheme{
		apiKey: {Type: "apiKey", In: "header", Name: "x-api-key", Description: aboutKeys},
		bearer: {Type: "http", Scheme: "bearer", Description: aboutKeys},
	}
	d.Tags = nil
	for _, service := range w.services {
		if comment(service) == "" {
			return fmt.Errorf("%s has no comment", service.FullName())
		}
		d.Tags = append(d.Tags, document.Tag{Name: room(service), Description: comment(service)})
		d.Info.Description += fmt.Sprintf("\n- `%s`: %s", room(service), comment(service))
	}
	return nil
}
