package service

import (
	"bytes"
	"encoding/json"
	"flag"
	"os"
	"os/exec"
	"regexp"
	"slices"
	"strings"
	"testing"

	"google.golang.org/protobuf/encoding/protojson"
	"google.golang.org/protobuf/proto"
)

// With -grpc-client the README's gRPC command is run as printed, by the client
// it names, which takes minutes to build the first time; .ci/run does that.
// Otherwise the same question is asked by this test's own connection.
var grpcClient = flag.Bool("grpc-client", false, "run the README's gRPC command as printed")

// readmeExample is a command of the README and the reply printed below it.
type readmeExample struct {
	command  string
	reply    string
	from, to int // of the reply, in the file
}

var fenced = regexp.MustCompile("(?s)```sh\n([^`]*?)\n```\n\n```json\n(.*?)```\n")

func readmeExamples(t *testing.T) ([]byte, []readmeExample) {
	t.Helper()
	text, err := os.ReadFile("../README.md")
	if err != nil {
		t.Fatal(err)
	}
	var examples []readmeExample
	for _, m := range fenced.FindAllSubmatchIndex(text, -1) {
		examples = append(examples, readmeExample{string(text[m[2]:m[3]]), string(text[m[4]:m[5]]), m[4], m[5]})
	}
	return text, examples
}

// The README's own commands, run against a server, print the README's replies.
// With -update the replies are written anew.
func TestReadmeExamples(t *testing.T) {
	server := start(t)
	text, examples := readmeExamples(t)
	if len(examples) < 3 {
		t.Fatalf("%d examples found", len(examples))
	}
	for i := len(examples) - 1; i >= 0; i-- { // from the end, so that places hold
		e := examples[i]
		got := server.runReadme(t, e.command)
		if *update {
			text = append(text[:e.from:e.from], append(append(indented(t, got), '\n'), text[e.to:]...)...)
			continue
		}
		if want := decode(t, []byte(e.reply)); !bytes.Equal(encode(t, want), encode(t, decode(t, got))) {
			t.Errorf("%s\nprints\n%s\nand the README says\n%s", e.command, got, e.reply)
		}
	}
	if *update {
		if err := os.WriteFile("../README.md", text, 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// runReadme runs a command with the ports of this server for the default ones.
func (r *running) runReadme(t *testing.T, command string) []byte {
	t.Helper()
	if strings.HasPrefix(command, "go tool") && !*grpcClient {
		return r.askReadme(t, command)
	}
	command = strings.ReplaceAll(command, "localhost:8080", r.HTTPAddr().String())
	command = strings.ReplaceAll(command, "localhost:50051", r.GRPCAddr().String())
	cmd := exec.CommandContext(t.Context(), "bash", "-c", command)
	cmd.Dir = ".."
	var errs bytes.Buffer
	cmd.Stderr = &errs
	out, err := cmd.Output()
	if err != nil {
		t.Fatalf("%s: %v\n%s", command, err, errs.String())
	}
	return out
}

var grpcCommand = regexp.MustCompile(`--data '([^']*)' http://localhost:50051/knitmath\.v1\.(\S+)$`)

// askReadme asks what a gRPC command asks.
func (r *running) askReadme(t *testing.T, command string) []byte {
	t.Helper()
	m := grpcCommand.FindStringSubmatch(command)
	if m == nil {
		t.Fatalf("cannot read %q", command)
	}
	method := findMethod(t, m[2])
	req, resp := newMessage(t, method.desc.Input()), newMessage(t, method.desc.Output())
	if err := protojson.Unmarshal([]byte(m[1]), req); err != nil {
		t.Fatal(err)
	}
	if err := r.conn.Invoke(t.Context(), method.full, req, resp); err != nil {
		t.Fatal(err)
	}
	return readmeJSON(t, resp)
}

// readmeJSON is how the README's gRPC client prints a reply: names in lower
// camel case, and nothing that is zero.
func readmeJSON(t *testing.T, m proto.Message) []byte {
	t.Helper()
	data, err := protojson.Marshal(m)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

func indented(t *testing.T, data []byte) []byte {
	t.Helper()
	var out bytes.Buffer
	if err := json.Indent(&out, bytes.TrimSpace(data), "", "  "); err != nil {
		t.Fatal(err)
	}
	// The JSON library puts in spaces of its own at random: take them out.
	return spaces.ReplaceAll(out.Bytes(), []byte(": "))
}

var spaces = regexp.MustCompile(`: {2,}`)

// The README names what can only be posted, as the document has it; those on written
// instructions it names together.
func TestReadmeNamesWhatIsPosted(t *testing.T) {
	readme, err := os.ReadFile("../README.md")
	if err != nil {
		t.Fatal(err)
	}
	sentence := regexp.MustCompile("(?s)by GET too: all but(.*?)and those on written instructions").FindSubmatch(readme)
	if sentence == nil {
		t.Fatal("the README does not say what is asked by GET")
	}
	var named []string
	for _, m := range regexp.MustCompile("`([a-zA-Z]+)`").FindAllSubmatch(sentence[1], -1) {
		named = append(named, string(m[1]))
	}
	data, err := os.ReadFile("../gen/openapi/knitmath.openapi.json")
	if err != nil {
		t.Fatal(err)
	}
	var document struct {
		Paths map[string]map[string]json.RawMessage
	}
	if err := json.Unmarshal(data, &document); err != nil {
		t.Fatal(err)
	}
	var posted []string
	for path, operations := range document.Paths {
		room, method, called := strings.Cut(path, ":")
		if called && room != "/v1/pattern" && operations["get"] == nil {
			posted = append(posted, method)
		}
	}
	slices.Sort(named)
	slices.Sort(posted)
	if !slices.Equal(named, posted) {
		t.Errorf("the README names %v, only posted are %v", named, posted)
	}
}
