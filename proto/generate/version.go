package main

import "example.com/knitmath/proto/document"

const versionPath = "/version"

// addVersion adds the one path that is no question: which release answers.
func addVersion(d *document.Document, _ *wire) error {
	d.Paths[versionPath] = &document.Path{Get: &document.Operation{
		Tags:        []string{"version"},
		Summary:     "Says which release answers",
		Description: "Which release answers. It is not kept by caches: the next replica may be of another one.",
		OperationID: "version",
		Responses: map[string]*document.Response{
			"200": {Description: "The release.", Content: map[string]document.Media{jsonType: {Schema: wholeObject("",
				field{"release", text("The version, as every answer has it in the header Knitmath-Release.")},
				field{"commit", text("The commit it was built from; empty where that is not known.")},
				field{"go", text("The version of Go it was built with.")})}}},
			"405":     {Ref: "#/components/responses/WrongMethod"},
			"429":     {Ref: "#/components/responses/TooManyQuestions"},
			"503":     {Ref: "#/components/responses/Unavailable"},
			"default": {Ref: "#/components/responses/OtherError"},
		},
	}}
	d.Tags = append(d.Tags, document.Tag{Name: "version", Description: "The service itself."})
	return nil
}
