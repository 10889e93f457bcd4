package service

import (
	"bytes"
	"encoding/json"
	"net/http"
	"strings"
	"testing"
)

// Numbers may be sent as text, as the JSON form of protobuf has it, and as the document
// says: the example of every question has the same answer with all of its numbers in quotes.
func TestNumbersAsText(t *testing.T) {
	d := readDocument(t)
	if !strings.Contains(d.Info.Description, "A number may be sent as text") {
		t.Error("the document does not say so")
	}
	server, asked := start(t), 0
	for path, operations := range d.Paths {
		var example any
		if body := operations["post"].RequestBody.Content[jsonType].Example; body == nil {
			continue
		} else if err := json.Unmarshal(body, &example); err != nil {
			t.Fatal(err)
		}
		ask := func(question any) reply {
			body, err := json.Marshal(question)
			if err != nil {
				t.Fatal(err)
			}
			return server.send(t, http.MethodPost, path, string(body))
		}
		if plain, quoted := ask(example), ask(inQuotes(example)); plain.code != http.StatusOK || !bytes.Equal(plain.body, quoted.body) {
			t.Errorf("%s: %d %s\nin quotes: %s", path, plain.code, plain.body, quoted.body)
		}
		asked++
	}
	if asked < 30 {
		t.Errorf("only %d questions were asked", asked)
	}
}

// inQuotes is a value with its numbers as text.
func inQuotes(value any) any {
	switch v := value.(type) {
	case float64:
		text, _ := json.Marshal(v) // A number of the document can be written.
		return string(text)
	case []any:
		list := make([]any, len(v))
		for i := range v {
			list[i] = inQuotes(v[i])
		}
		return list
	case map[string]any:
		object := map[string]any{}
		for name := range v {
			object[name] = inQuotes(v[name])
		}
		return object
	}
	return value
}
