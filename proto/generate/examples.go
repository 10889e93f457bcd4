package main

import (
	"encoding/json"
	"fmt"
	"io/fs"
	"strconv"
	"strings"

	"google.golang.org/protobuf/encoding/protojson"
	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/types/dynamicpb"

	"example.com/knitmath/proto/document"
	"example.com/knitmath/proto/form"
)

// questionsDir holds what the pages say of every question, and with which values they begin.
const questionsDir = "service/web/questions"

// readExamples reads the values that the pages begin with: texts by the path of their field,
// "pieces[0].times", by the name of the question's file, "gauge.computeCastOn".
func readExamples(questions fs.FS) (map[string]map[string]string, error) {
	names, err := fs.Glob(questions, "*.json")
	if err != nil {
		return nil, err
	}
	examples := map[string]map[string]string{}
	for _, name := range names {
		text, err := fs.ReadFile(questions, name)
		if err != nil {
			return nil, err
		}
		var question struct{ Example map[string]string }
		if err := json.Unmarshal(text, &question); err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		examples[strings.TrimSuffix(name, ".json")] = question.Example
	}
	return examples, nil
}

// exampleQuestions gives every body a whole question that is answered: the one that its page
// begins with. An example of a field alone says little where a question needs one of several.
func exampleQuestions(d *document.Document, w *wire) error {
	for path, item := range d.Paths {
		if item.Post == nil {
			continue
		}
		method, err := w.method("POST", path)
		if err != nil {
			return err
		}
		name, err := form.Name(path)
		if err != nil {
			return err
		}
		values, ok := w.examples[name]
		if !ok {
			return fmt.Errorf("%s has no example in %s", name, questionsDir)
		}
		example, err := exampleOf(method.Input(), values)
		if err != nil {
			return fmt.Errorf("the example of %s: %w", name, err)
		}
		media := item.Post.RequestBody.Content[jsonType]
		media.Example = example
		item.Post.RequestBody.Content[jsonType] = media
	}
	return nil
}

// exampleOf is the question that holds the values, with numbers as numbers.
func exampleOf(question protoreflect.MessageDescriptor, values map[string]string) (any, error) {
	texts := map[string]any{}
	for path, value := range values {
		if err := put(texts, question, path, value); err != nil {
			return nil, fmt.Errorf("%s: %w", path, err)
		}
	}
	text, err := json.Marshal(texts)
	if err != nil {
		return nil, err
	}
	message := dynamicpb.NewMessage(question)
	if err := protojson.Unmarshal(text, message); err != nil { // which takes numbers written as texts
		return nil, err
	}
	if text, err = (protojson.MarshalOptions{UseProtoNames: true}).Marshal(message); err != nil {
		return nil, err
	}
	var example any
	return example, json.Unmarshal(text, &example)
}

// put lays a value where its path says, in the groups of a message; a list of single values
// has spaces between them.
func put(group map[string]any, message protoreflect.MessageDescriptor, path, value string) error {
	name, below, deeper := strings.Cut(path, ".")
	name, item, listed := strings.Cut(name, "[")
	field := message.Fields().ByName(protoreflect.Name(name))
	switch {
	case field == nil || deeper != (field.Message() != nil) || listed != (deeper && field.IsList()):
		return fmt.Errorf("%s has no field that is written so", message.Name())
	case !deeper && field.IsList():
		group[name] = strings.Fields(value)
		return nil
	case !deeper:
		group[name] = value
		return nil
	case !listed:
		inner, _ := group[name].(map[string]any)
		if inner == nil {
			inner = map[string]any{}
			group[name] = inner
		}
		return put(inner, field.Message(), below, value)
	}
	at, err := strconv.Atoi(strings.TrimSuffix(item, "]"))
	if err != nil {
		return err
	}
	items, _ := group[name].([]map[string]any)
	for len(items) <= at {
		items = append(items, map[string]any{})
	}
	group[name] = items
	return put(items[at], field.Message(), below, value)
}
