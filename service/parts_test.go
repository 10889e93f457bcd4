package service

import (
	"bytes"
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/encoding/protojson"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

// A question of as many values as are read is answered or refused for what it asks;
// one of more is not read, on either face, and is told so.
func TestQuestionsOfManyValues(t *testing.T) {
	server := start(t)
	const path, method = "/v1/yarn:estimateYarn", "/knitmath.v1.YarnService/EstimateYarn"
	pieces := func(n int) *knitmathv1.EstimateYarnRequest {
		q := &knitmathv1.EstimateYarnRequest{}
		for range n {
			q.Pieces = append(q.Pieces, &knitmathv1.Piece{})
		}
		return q
	}
	asJSON := func(n int) string { return `{"pieces":[` + strings.Repeat("{},", n-1) + "{}]}" }
	const whole = "has more than 32768 values"

	// In JSON two brackets and, of every piece, a bracket and a comma but for the last.
	if got := server.send(t, "POST", path, asJSON((maxParts-1)/2)); got.code != 400 || strings.Contains(string(got.body), whole) {
		t.Errorf("as many values as are read: HTTP %d, %.300s", got.code, got.body)
	}
	got := server.send(t, "POST", path, asJSON(maxParts/2+1))
	if got.code != 400 || !strings.Contains(string(got.body), whole) || !strings.Contains(string(got.body), `"TOO_MANY"`) {
		t.Errorf("more in JSON: HTTP %d, %.300s", got.code, got.body)
	}
	for n, want := range map[int]bool{maxParts: false, maxParts + 1: true} {
		err := server.conn.Invoke(t.Context(), method, pieces(n), &knitmathv1.EstimateYarnResponse{})
		told := slices.Contains(violations(status.Convert(err)), "TOO_MANY")
		if status.Code(err) != codes.InvalidArgument || told != want {
			t.Errorf("%d pieces over gRPC: %.300v", n, err)
		}
	}
}

// What is counted is what there is: in JSON as encoding/json finds it, over gRPC as
// reflection does.
func TestPartsAreCounted(t *testing.T) {
	for _, service := range wireServices() {
		for i := range service.Methods().Len() {
			m := findMethod(t, string(service.Name())+"/"+string(service.Methods().Get(i).Name()))
			question := newMessage(t, m.desc.Input())
			fillLongest(t, question.ProtoReflect())
			wire, err := proto.Marshal(question)
			if err != nil {
				t.Fatal(err)
			}
			if got, want := wireParts(wire, m.desc.Input(), 0), fieldsSet(question.ProtoReflect()); got != want {
				t.Errorf("%s: %d fields counted of %d", m.full, got, want)
			}
			text, err := protojson.Marshal(question)
			if err != nil {
				t.Fatal(err)
			}
			if got, want := jsonParts(text), valuesIn(t, text)-1; got != want {
				t.Errorf("%s: %d values counted of %d", m.full, got, want)
			}
		}
	}
	// What is inside of a text is no value, whatever it looks like.
	if got := jsonParts([]byte(`{"a":",,[{\\\",,","b":[1,2]}`)); got != 4 {
		t.Errorf("%d counted", got)
	}
}

// fieldsSet counts what is encoded with a tag of its own: a packed list is one.
func fieldsSet(m protoreflect.Message) int {
	n := 0
	m.Range(func(fd protoreflect.FieldDescriptor, v protoreflect.Value) bool {
		switch {
		case fd.IsList() && fd.IsPacked():
			n++
		case fd.IsList():
			n += v.List().Len()
			for i := 0; fd.Message() != nil && i < v.List().Len(); i++ {
				n += fieldsSet(v.List().Get(i).Message())
			}
		default:
			n++
			if fd.Message() != nil {
				n += fieldsSet(v.Message())
			}
		}
		return true
	})
	return n
}

// valuesIn counts the values of a JSON text, the whole as one and keys apart.
func valuesIn(t *testing.T, text []byte) int {
	t.Helper()
	dec := json.NewDecoder(bytes.NewReader(text))
	dec.UseNumber()
	var count func(v any) int
	count = func(v any) int {
		n := 1
		switch v := v.(type) {
		case []any:
			for _, x := range v {
				n += count(x)
			}
		case map[string]any:
			for _, x := range v {
				n += count(x)
			}
		}
		return n
	}
	var v any
	if err := dec.Decode(&v); err != nil {
		t.Fatal(err)
	}
	return count(v)
}
