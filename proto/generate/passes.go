package main

import (
	"fmt"

	"example.com/knitmath/proto/document"
)

// A pass does one thing to the document.
type pass struct {
	name string
	run  func(*document.Document, *wire) error
}

// passes make the project's document out of the plugin's, one thing at a time and
// in this order: each finds what those before it have left.
var passes = []pass{
	{"joinLines", joinLines},
	{"nameQuestions", nameQuestions},
	{"orderProperties", orderProperties},
	{"splitShared", splitShared},
	{"requireWhatIsSent", requireWhatIsSent},
	{"writeChoices", writeChoices},
	{"writeBounds", writeBounds},
	{"describeValues", describeValues},
	{"listReasons", listReasons},
	{"writeParameters", writeParameters}, // from the finished questions
	{"nameOperations", nameOperations},
	{"writeErrors", writeErrors},
	{"exampleQuestions", exampleQuestions},
	{"writeMedia", writeMedia},     // after the errors, which leave nothing else beside the answer
	{"shortenNames", shortenNames}, // after all that look components up by their full names
	{"writeHead", writeHead},
	{"addVersion", addVersion}, // a path of no method, which the passes before would not know
}

// finish runs passes over the plugin's document.
func finish(d *document.Document, w *wire, passes []pass) error {
	for _, pass := range passes {
		if err := pass.run(d, w); err != nil {
			return fmt.Errorf("%s: %w", pass.name, err)
		}
	}
	return nil
}
