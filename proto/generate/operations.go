package main

import (
	"fmt"
	"strings"
	"unicode"

	"example.com/knitmath/proto/document"
	"google.golang.org/protobuf/reflect/protoreflect"
)

// byGet ends the name of an operation that is asked by GET; the same by POST has
// the plain name of the method.
const byGet = "ByGet"

// partsOfAnswer is the field of a question that asks for parts of the answer.
const partsOfAnswer = "fields"

// nameOperations names every operation after its method, groups it by room, and
// gives it a title and a text.
func nameOperations(d *document.Document, w *wire) error {
	taken := map[string]bool{}
	for path, item := range d.Paths {
		for verb, operation := range item.Operations() {
			method, err := w.method(verb, path)
			if err != nil {
				return err
			}
			operation.OperationID = lowerFirst(string(method.Name()))
			if verb == "GET" {
				operation.OperationID += byGet
			}
			if taken[operation.OperationID] {
				return fmt.Errorf("two operations are called %s", operation.OperationID)
			}
			taken[operation.OperationID] = true
			operation.Tags = []string{room(method.Parent())}
			operation.Description = comment(method)
			title, _ := strings.CutPrefix(firstSentence(operation.Description), string(method.Name())+" ")
			operation.Summary = upperFirst(title)
			answer := operation.Responses["200"]
			if answer == nil {
				return fmt.Errorf("%s %s has no answer", verb, path)
			}
			if method.Input().Fields().ByName(partsOfAnswer) != nil {
				answer.Description += " Whole, unless `" + partsOfAnswer + "` asks for parts of it."
			}
		}
	}
	return nil
}

// room is the noun of a service as paths spell it: ShortRowService is short-row.
func room(service protoreflect.Descriptor) string {
	noun := &strings.Builder{}
	for i, letter := range strings.TrimSuffix(string(service.Name()), "Service") {
		if unicode.IsUpper(letter) && i > 0 {
			noun.WriteByte('-')
		}
		noun.WriteRune(unicode.ToLower(letter))
	}
	return noun.String()
}

func lowerFirst(word string) string { return strings.ToLower(word[:1]) + word[1:] }

func upperFirst(words string) string { return strings.ToUpper(words[:1]) + words[1:] }
