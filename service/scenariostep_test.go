package service

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"strconv"
	"strings"
	"testing"

	"google.golang.org/protobuf/proto"
)

// A scenarioStep is one question of the demo in testdata/scenario, an invented
// pullover sized from swatch to yarn. takes says which fields of the request
// come from the answers of earlier steps: "body_stitches": "03_body stitches.count"
// copies a value, "09_yoke half join_stitches" half of one; numbers index lists. The request is stored
// with those values filled in, so that it reads as what a client would send.
//
//	go test ./service -run TestScenario -update
//
// fills them in anew and rewrites the responses.
type scenarioStep struct {
	Method   string            `json:"method"`
	About    string            `json:"about"`
	Takes    map[string]string `json:"takes"`
	Request  any               `json:"request"`
	Response any               `json:"response,omitempty"`
}

func readStep(t *testing.T, path string) scenarioStep {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	dec := json.NewDecoder(bytes.NewReader(data))
	dec.DisallowUnknownFields()
	dec.UseNumber()
	var s scenarioStep
	if err := dec.Decode(&s); err != nil {
		t.Fatalf("%s: %v", path, err)
	}
	return s
}

func encode(t *testing.T, v any) []byte {
	t.Helper()
	var out bytes.Buffer
	enc := json.NewEncoder(&out)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", "  ")
	if err := enc.Encode(v); err != nil {
		t.Fatal(err)
	}
	return bytes.TrimSpace(out.Bytes())
}

func decode(t *testing.T, data []byte) any {
	t.Helper()
	dec := json.NewDecoder(bytes.NewReader(data))
	dec.UseNumber()
	var v any
	if err := dec.Decode(&v); err != nil {
		t.Fatal(err)
	}
	return v
}

func asJSON(t *testing.T, m proto.Message) []byte {
	t.Helper()
	data, err := answerJSON.Marshal(m)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

// taken reads "STEP path" or "STEP half path" from the answers so far.
func taken(t *testing.T, answers map[string]proto.Message, from string) any {
	t.Helper()
	words := strings.Fields(from)
	answer, ok := answers[words[0]]
	if !ok {
		t.Fatalf("%q: no such step before", from)
	}
	v := decode(t, asJSON(t, answer))
	for _, key := range strings.Split(words[len(words)-1], ".") {
		if i, err := strconv.Atoi(key); err == nil {
			v = v.([]any)[i]
		} else {
			v = v.(map[string]any)[key]
		}
	}
	if v == nil {
		t.Fatalf("%q is not in the answer", from)
	}
	if words[1] == "half" {
		n, err := strconv.Atoi(fmt.Sprint(v))
		if err != nil || n%2 != 0 {
			t.Fatalf("%q: %v has no half", from, v)
		}
		return json.Number(strconv.Itoa(n / 2))
	}
	return v
}

// put sets a field of a request, by its path; numbers index lists.
func put(t *testing.T, request any, path string, v any) {
	t.Helper()
	keys := strings.Split(path, ".")
	for _, key := range keys[:len(keys)-1] {
		if i, err := strconv.Atoi(key); err == nil {
			request = request.([]any)[i]
		} else {
			request = request.(map[string]any)[key]
		}
	}
	request.(map[string]any)[keys[len(keys)-1]] = v
}
