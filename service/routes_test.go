package service

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/status"
)

func TestOpenAPIDocument(t *testing.T) {
	server := start(t)
	got := server.send(t, "GET", "/openapi.json", "")
	committed, err := os.ReadFile(filepath.Join("..", "gen", "openapi", "knitmath.openapi.json"))
	if err != nil {
		t.Fatal(err)
	}
	if got.code != 200 || string(got.body) != string(committed) || got.header.Get("Content-Type") != jsonType {
		t.Errorf("HTTP %d, %d bytes of %d", got.code, len(got.body), len(committed))
	}
	var document struct {
		OpenAPI string                                `json:"openapi"`
		Paths   map[string]map[string]json.RawMessage `json:"paths"`
	}
	if err := json.Unmarshal(got.body, &document); err != nil {
		t.Fatal(err)
	}
	routes, err := readRoutes()
	if err != nil {
		t.Fatal(err)
	}
	delete(document.Paths, "/version") // no question
	if len(document.Paths) != len(routes) || !strings.HasPrefix(document.OpenAPI, "3.1") {
		t.Errorf("OpenAPI %s, %d paths, %d routes", document.OpenAPI, len(document.Paths), len(routes))
	}
	root := server.send(t, "GET", "/", "")
	for path, r := range routes {
		at := document.Paths[path]
		if _, get := at["get"]; at["post"] == nil || get != r.get {
			t.Errorf("%s: the document has %v", path, at)
		}
		if !strings.Contains(string(root.body), path) {
			t.Errorf("%s is not in the index", path)
		}
	}
}

// Services are registered by hand, on the gRPC server and with the gateway;
// methods are written by hand too. None may be forgotten: an empty question
// reaches every one of them on both faces and comes back refused by the kernel, but
// where it asks for a whole table.
func TestEveryMethodAnswersOnBothFaces(t *testing.T) {
	server := start(t)
	for _, service := range wireServices() {
		for i := range service.Methods().Len() {
			name := string(service.Name()) + "/" + string(service.Methods().Get(i).Name())
			m := findMethod(t, name)
			err := server.conn.Invoke(t.Context(), m.full, newMessage(t, m.desc.Input()), newMessage(t, m.desc.Output()))
			code, httpCode := codes.InvalidArgument, 400
			if tableOf(m.desc.Output()) != nil {
				code, httpCode = codes.OK, 200
			}
			if status.Code(err) != code {
				t.Errorf("%s over gRPC: %v", name, err)
			}
			if got := server.send(t, "POST", m.path, "{}"); got.code != httpCode {
				t.Errorf("%s over JSON: HTTP %d %s", name, got.code, got.body)
			}
			if got := server.send(t, "GET", m.path, ""); m.get && got.code != httpCode {
				t.Errorf("%s by GET: HTTP %d %s", name, got.code, got.body)
			}
		}
	}
}
