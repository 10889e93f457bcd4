package service

import (
	"encoding/json"
	"math/rand/v2"
	"reflect"
	"slices"
	"strings"
	"testing"

	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/encoding/protojson"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"
)

// Every question has the field, alike.
func TestEveryQuestionHasFields(t *testing.T) {
	for _, service := range wireServices() {
		for i := range service.Methods().Len() {
			question := service.Methods().Get(i).Input()
			fd := question.Fields().ByName(fieldsField)
			if fd == nil || fd.Number() != 100 || !fd.IsList() || fd.Kind() != protoreflect.StringKind {
				t.Errorf("%s: %v", question.Name(), fd)
			}
		}
	}
}

// TestAnswersInPart asks every good wire case for every path of its answer, a few
// at a time, and compares with what a walk over the JSON of the whole answer,
// which knows nothing of messages, leaves of it.
func TestAnswersInPart(t *testing.T) {
	server := start(t)
	asked := 0
	for path, file := range readWireFiles(t) {
		if file.Cases != nil {
			continue
		}
		t.Run(strings.TrimPrefix(path, "../testdata/"), func(t *testing.T) {
			m := findMethod(t, file.Method)
			whole := decode(t, server.send(t, "POST", m.path, string(file.Request)).body)
			paths := answerPaths("", m.desc.Output(), 0)
			asked += len(paths)
			chance := rand.New(rand.NewPCG(7, uint64(len(path))))
			chance.Shuffle(len(paths), func(i, j int) { paths[i], paths[j] = paths[j], paths[i] })
			server.askPart(t, m, file.Request, whole, []string{"summary", "summary"})
			for len(paths) > 0 { // many of them overlap
				n := min(1+chance.IntN(9), len(paths))
				server.askPart(t, m, file.Request, whole, paths[:n])
				paths = paths[n:]
			}
			if everything := decode(t, server.send(t, "POST", m.path, withFields(t, file.Request, []string{})).body); !reflect.DeepEqual(
				everything,
				whole,
			) {
				t.Error("no paths are not everything")
			}
		})
	}
	t.Logf("%d paths asked for", asked)
}

// askPart asks for parts of an answer on both faces.
func (r *running) askPart(t *testing.T, m wireMethod, request json.RawMessage, whole any, paths []string) {
	t.Helper()
	want := keepPaths(whole, paths)
	body := withFields(t, request, paths)
	reply := r.send(t, "POST", m.path, body)
	if reply.code != 200 {
		t.Fatalf("%q: HTTP %d %s", paths, reply.code, reply.body)
	}
	if got := decode(t, reply.body); !reflect.DeepEqual(got, want) {
		t.Errorf("%q over JSON: %s, want %v", paths, reply.body, want)
	}
	question, byGRPC, wanted := newMessage(t, m.desc.Input()), newMessage(t, m.desc.Output()), newMessage(t, m.desc.Output())
	if err := protojson.Unmarshal([]byte(body), question); err != nil {
		t.Fatal(err)
	}
	if err := protojson.Unmarshal(encode(t, want), wanted); err != nil {
		t.Fatal(err)
	}
	if err := r.conn.Invoke(t.Context(), m.full, question, byGRPC); err != nil || !proto.Equal(byGRPC, wanted) {
		t.Errorf("%q over gRPC: %v %v, want %v", paths, err, byGRPC, wanted)
	}
}

// answerPaths lists every path of an answer, of trees the first three floors.
func answerPaths(prefix string, md protoreflect.MessageDescriptor, depth int) []string {
	var out []string
	for i := range md.Fields().Len() {
		fd := md.Fields().Get(i)
		path := joinPath(prefix, string(fd.Name()))
		out = append(out, path)
		if fd.Message() != nil && depth < 6 {
			out = append(out, answerPaths(path, fd.Message(), depth+1)...)
		}
	}
	return out
}

// keepPaths is what paths leave of a decoded answer.
func keepPaths(v any, paths []string) any {
	if slices.Contains(paths, "") {
		return v
	}
	switch v := v.(type) {
	case []any:
		out := make([]any, len(v))
		for i := range v {
			out[i] = keepPaths(v[i], paths)
		}
		return out
	case map[string]any:
		out := map[string]any{}
		for key, below := range v {
			var rest []string
			for _, path := range paths {
				first, more, _ := strings.Cut(path, ".")
				if first == key {
					rest = append(rest, more)
				}
			}
			if len(rest) > 0 {
				out[key] = keepPaths(below, rest)
			}
		}
		return out
	}
	return v
}

func withFields(t *testing.T, request json.RawMessage, paths []string) string {
	t.Helper()
	var question map[string]any
	if err := json.Unmarshal(request, &question); err != nil {
		t.Fatal(err)
	}
	question[fieldsField] = paths
	return string(encode(t, question))
}

// A GET asks the same in its query; the parameter is given once for each path.
func TestFieldsInAQuery(t *testing.T) {
	server := start(t)
	for query, want := range map[string]string{
		"&fields=summary":                `{"summary": "Work on 110 stitches: 50 cm wide, exactly as asked."}`,
		"&fields=notices":                `{"notices": []}`,
		"&fields=rows":                   `{}`,
		"&fields=notices&fields=notices": `{"notices": []}`,
		"&fields=stitches.halfway&fields=notices.field" +
			"&fields=stitches.difference_cm": `{"stitches": {"difference_cm": 0, "halfway": false}, "notices": []}`,
	} {
		got := server.send(t, "GET", castOnQuery+query, "")
		if got.code != 200 || !reflect.DeepEqual(decode(t, got.body), decode(t, []byte(want))) {
			t.Errorf("%s: HTTP %d %s", query, got.code, got.body)
		}
	}
	got := server.send(t, "GET", castOnQuery+"&fields=summary,notices&fields=gauge&fields=sources", "")
	if list := violations(got.status(t)); !slices.Equal(list, []string{"fields[0] UNKNOWN_FIELD", "fields[1] UNKNOWN_FIELD"}) {
		t.Errorf("%q", list)
	}
}

// TestWrongFieldsAreRefused wants of every method, on both faces, a fault for
// every wrong path, listed after whatever else is wrong with the question.
func TestWrongFieldsAreRefused(t *testing.T) {
	server := start(t)
	paths := []string{"summary", "no.such", "summary.text", "sources.status"}
	for _, service := range wireServices() {
		for i := range service.Methods().Len() {
			m := findMethod(t, string(service.Name())+"/"+string(service.Methods().Get(i).Name()))
			var others []string
			if asked := server.send(t, "POST", m.path, "{}"); asked.code != 200 { // a table is asked for with nothing
				others = violations(asked.status(t))
			}
			want := append(others, "fields[1] UNKNOWN_FIELD", "fields[2] UNKNOWN_FIELD")
			body := withFields(t, json.RawMessage("{}"), paths)
			st := server.send(t, "POST", m.path, body).status(t)
			if got := violations(st); !slices.Equal(got, want) {
				t.Errorf("%s: %q, want %q", m.full, got, want)
			}
			question := newMessage(t, m.desc.Input())
			if err := protojson.Unmarshal([]byte(body), question); err != nil {
				t.Fatal(err)
			}
			err := server.conn.Invoke(t.Context(), m.full, question, newMessage(t, m.desc.Output()))
			if !proto.Equal(status.Convert(err).Proto(), st.Proto()) {
				t.Errorf("gRPC and JSON differ:\n%v\n%v", status.Convert(err).Proto(), st.Proto())
			}
		}
	}
}
