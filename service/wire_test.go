package service

import (
	"bytes"
	"encoding/json"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/encoding/protojson"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/reflect/protoregistry"
)

// Wire cases are questions with their answers, in testdata/<noun>/<case>.json.
// Each is asked over gRPC and over JSON, and the two replies must be the same
// message. A file is one of two kinds:
//
//	{"method": "GaugeService/ComputeCastOn", "request": {...}, "response": {...}}
//
// is a good question. Its response is rewritten by
//
//	go test ./service -run TestWireCases -update
//
// after which the difference has to be read before it is committed.
//
//	{"method": ..., "base": {...}, "cases": [{"name", "change", "violations"}, ...]}
//
// is a table of bad ones, written by hand. The question of a case is base with
// change merged into it (RFC 7396: null takes a field away). violations are
// "field REASON", in order; {"repeat": 1001, "of": ...} stands for a list of so
// many equal items; json_only marks what cannot be said over gRPC.
var update = flag.Bool("update", false, "rewrite the responses of good wire cases")

// wireFolders are the folders of testdata that hold wire cases.
var wireFolders = []string{"gauge", "shaping", "short_row", "curve", "yoke", "edge", "neck", "flat", "armhole",
	"yarn", "body", "yardage", "handspun", "pattern", "sock", "solid", "hand"}

type wireFile struct {
	Method   string          `json:"method"`
	About    string          `json:"about,omitempty"`
	Request  json.RawMessage `json:"request,omitempty"`
	Response json.RawMessage `json:"response,omitempty"`
	Base     map[string]any  `json:"base,omitempty"`
	Cases    []wireCase      `json:"cases,omitempty"`
}

type wireCase struct {
	Name       string         `json:"name"`
	Change     map[string]any `json:"change"`
	Violations []string       `json:"violations"`
	JSONOnly   bool           `json:"json_only"`
}

// readWireFiles reads all wire cases by path.
func readWireFiles(t *testing.T) map[string]wireFile {
	t.Helper()
	files := map[string]wireFile{}
	for _, folder := range wireFolders {
		paths, err := filepath.Glob(filepath.Join("..", "testdata", folder, "*.json"))
		if err != nil {
			t.Fatal(err)
		}
		for _, path := range paths {
			data, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			dec := json.NewDecoder(bytes.NewReader(data))
			dec.DisallowUnknownFields()
			dec.UseNumber()
			var f wireFile
			if err := dec.Decode(&f); err != nil {
				t.Fatalf("%s: %v", path, err)
			}
			files[path] = f
		}
	}
	if len(files) == 0 {
		t.Fatal("no wire cases found")
	}
	return files
}

func TestWireCases(t *testing.T) {
	server := start(t)
	for path, file := range readWireFiles(t) {
		t.Run(strings.TrimPrefix(path, "../testdata/"), func(t *testing.T) {
			m := findMethod(t, file.Method)
			if file.Cases == nil {
				runGood(t, server, m, path, file)
				return
			}
			for _, c := range file.Cases {
				t.Run(c.Name, func(t *testing.T) {
					runBad(t, server, m, file.Base, c)
				})
			}
		})
	}
}

// wireMethod is a method with its path and its messages.
type wireMethod struct {
	full, path string
	get        bool
	desc       protoreflect.MethodDescriptor
}

func findMethod(t *testing.T, name string) wireMethod {
	t.Helper()
	dotted := "knitmath.v1." + strings.ReplaceAll(name, "/", ".")
	d, err := protoregistry.GlobalFiles.FindDescriptorByName(protoreflect.FullName(dotted))
	if err != nil {
		t.Fatal(err)
	}
	desc := d.(protoreflect.MethodDescriptor)
	routes, err := readRoutes()
	if err != nil {
		t.Fatal(err)
	}
	for path, r := range routes {
		if r.question == desc.Input() {
			return wireMethod{"/knitmath.v1." + name, path, r.get, desc}
		}
	}
	t.Fatalf("no path for %s", name)
	return wireMethod{}
}

func newMessage(t testing.TB, md protoreflect.MessageDescriptor) proto.Message {
	t.Helper()
	mt, err := protoregistry.GlobalTypes.FindMessageByName(md.FullName())
	if err != nil {
		t.Fatal(err)
	}
	return mt.New().Interface()
}

// runGood asks a question on every face it can be asked on.
func runGood(t *testing.T, server *running, m wireMethod, path string, file wireFile) {
	req, byGRPC, byJSON := newMessage(t, m.desc.Input()), newMessage(t, m.desc.Output()), newMessage(t, m.desc.Output())
	if err := protojson.Unmarshal(file.Request, req); err != nil {
		t.Fatalf("request: %v", err)
	}
	if err := server.conn.Invoke(t.Context(), m.full, req, byGRPC); err != nil {
		t.Fatalf("gRPC: %v %v", err, status.Convert(err).Details())
	}
	server.send(t, "POST", m.path, string(file.Request)).message(t, byJSON)
	if !proto.Equal(byGRPC, byJSON) {
		t.Errorf("gRPC and JSON differ:\n%v\n%v", byGRPC, byJSON)
	}
	if query, ok := asQuery(req); m.get && ok {
		byGet := newMessage(t, m.desc.Output())
		server.send(t, "GET", m.path+"?"+query, "").message(t, byGet)
		if !proto.Equal(byGRPC, byGet) {
			t.Errorf("gRPC and GET differ:\n%v\n%v", byGRPC, byGet)
		}
	}
	if *update {
		writeResponse(t, path, file, byGRPC)
		return
	}
	want := newMessage(t, m.desc.Output())
	if err := protojson.Unmarshal(file.Response, want); err != nil {
		t.Fatalf("response: %v", err)
	}
	if where := difference("", want.ProtoReflect(), byGRPC.ProtoReflect()); where != "" {
		t.Errorf("answer differs at %s", where)
	}
}

func writeResponse(t *testing.T, path string, file wireFile, resp proto.Message) {
	t.Helper()
	raw, err := answerJSON.Marshal(resp)
	if err != nil {
		t.Fatal(err)
	}
	file.Response = raw
	var out bytes.Buffer
	enc := json.NewEncoder(&out)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", "  ")
	if err := enc.Encode(file); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, out.Bytes(), 0o644); err != nil {
		t.Fatal(err)
	}
}

// runBad asks a question with faults on both faces.
func runBad(t *testing.T, server *running, m wireMethod, base map[string]any, c wireCase) {
	body, err := json.Marshal(merge(base, spellOut(c.Change).(map[string]any)))
	if err != nil {
		t.Fatal(err)
	}
	got := server.send(t, "POST", m.path, string(body))
	if got.code != 400 {
		t.Fatalf("HTTP %d: %s", got.code, got.body)
	}
	st := got.status(t)
	if st.Code() != codes.InvalidArgument || errorInfo(st) != reasonInvalidInput {
		t.Errorf("status %v %q", st.Code(), errorInfo(st))
	}
	if list := strings.Join(violations(st), "\n"); list != strings.Join(c.Violations, "\n") {
		t.Errorf("got\n%s\nwant\n%s", list, strings.Join(c.Violations, "\n"))
	}
	req := newMessage(t, m.desc.Input())
	err = protojson.Unmarshal(body, req)
	if c.JSONOnly != (err != nil) {
		t.Fatalf("json_only is %v, but reading as a message gave %v", c.JSONOnly, err)
	}
	if c.JSONOnly {
		return
	}
	err = server.conn.Invoke(t.Context(), m.full, req, newMessage(t, m.desc.Output()))
	if !proto.Equal(status.Convert(err).Proto(), st.Proto()) {
		t.Errorf("gRPC and JSON differ:\n%v\n%v", status.Convert(err).Proto(), st.Proto())
	}
}
