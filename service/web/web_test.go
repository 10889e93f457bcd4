package web

import (
	"bytes"
	"compress/gzip"
	"encoding/json"
	"maps"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/reflect/protoregistry"

	_ "example.com/knitmath/gen/knitmath/v1" // the contract, to look paths up in
)

func site(t *testing.T) *Site {
	t.Helper()
	s, err := New(Config{})
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func packed(t *testing.T, data []byte) int {
	t.Helper()
	var b bytes.Buffer
	z := gzip.NewWriter(&b)
	if _, err := z.Write(data); err != nil {
		t.Fatal(err)
	}
	if err := z.Close(); err != nil {
		t.Fatal(err)
	}
	return b.Len()
}

// fetched are all paths that a page brings in, found in what it says.
var fetched = regexp.MustCompile(`(?:href|src)="(/web/[^"]+)"`)

// The start page comes whole in less than 60 kB, and what others put on their pages
// in less than 25 kB.
func TestWeight(t *testing.T) {
	s := site(t)
	start := s.files[Start]
	whole := packed(t, start.Data)
	seen := map[string]bool{}
	for _, found := range fetched.FindAllStringSubmatch(string(start.Data), -1) {
		file, ok := s.File(found[1])
		if !ok {
			t.Errorf("%s is not there", found[1])
		}
		if !seen[found[1]] {
			whole += packed(t, file.Data)
		}
		seen[found[1]] = true
	}
	if len(seen) < 4 {
		t.Errorf("the start page brings in %d files", len(seen))
	}
	script, described := s.files[Embed], 0
	for name, file := range s.unversioned {
		if strings.HasPrefix(name, "forms/") {
			described = max(described, packed(t, file.Data))
		}
	}
	embedded := packed(t, script.Data) + described
	t.Logf("start page %d bytes, embedded script with the longest description of a question %d, of which %d", whole, embedded, described)
	if whole > 60_000 || embedded > 25_000 {
		t.Error("too heavy")
	}
	if found := regexp.MustCompile(`(?m)^(import|export)\b`).Find(script.Data); found != nil {
		t.Errorf("%s is no classic script: %s", Embed, found)
	}
}

// What has the name of its content never changes; what another release asks for is
// answered, and not kept.
func TestNames(t *testing.T) {
	s := site(t)
	found := fetched.FindStringSubmatch(string(s.files[Start].Data))[1]
	file, ok := s.File(found)
	if !ok || file.Header["Cache-Control"] != forEver {
		t.Errorf("%s: %v %v", found, ok, file.Header)
	}
	_, rest, _ := strings.Cut(strings.TrimPrefix(found, under), "/")
	other, ok := s.File(under + "0123456789abcdef/" + rest)
	if !ok || other.Header["Cache-Control"] != askAgain || !bytes.Equal(other.Data, file.Data) {
		t.Errorf("another release: %v %v", ok, other.Header)
	}
	for _, none := range []string{"/web/", "/web/x", "/web/x/none.js", "/web/x/../page.js", "/ask/", "/ask/gauge",
		"/ask/gauge/computeCastOn/"} {
		if _, ok := s.File(none); ok {
			t.Errorf("there is something at %s", none)
		}
	}
	for at, file := range s.files {
		page := strings.HasPrefix(file.Header["Content-Type"], "text/html")
		isPage := at == Start || strings.HasPrefix(at, "/ask/") || strings.HasPrefix(at, Reference) && !strings.HasSuffix(at, ".md")
		if page != isPage || page && file.Header["Content-Security-Policy"] != (Config{}).policy() {
			t.Errorf("%s: %v", at, file.Header)
		}
		if page && regexp.MustCompile(`<script>|style=| on[a-z]+=|https?:`).Match(file.Data) {
			t.Errorf("%s has something inline, or of elsewhere", at)
		}
	}
}

// said is a file of questions/.
type said struct {
	Title, Intro string
	Groups       []struct {
		Title, Says string
		Fields      []string
	}
	Labels, Hints, Empty map[string]string
	Example              map[string]string
	Values               map[string]string
	Hide, Later          []string
	Always               map[string]any
	Figures              []struct{ Path, Label string }
	Texts                []struct {
		Path, Title string
		Set         bool
	}
	Tables []struct {
		Path, Title string
		Cited       bool // with a citation and its status in each row
		Columns     []struct{ Path, Label string }
	}
	When map[string]struct {
		Field  string
		Values []string
	}
	Counts  map[string]map[string]string // paths of the answer, by what is drawn and by the end of it
	Picture string
	Lengths bool // of the answer, where the question has none
}

// method is the method of a form.
func method(t *testing.T, name string) protoreflect.MethodDescriptor {
	t.Helper()
	var found protoreflect.MethodDescriptor
	_, called, _ := strings.Cut(name, ".")
	protoregistry.GlobalFiles.RangeFilesByPackage("knitmath.v1", func(file protoreflect.FileDescriptor) bool {
		for i := range file.Services().Len() {
			if m := file.Services().Get(i).Methods().ByName(protoreflect.Name(strings.ToUpper(called[:1]) + called[1:])); m != nil {
				found = m
			}
		}
		return true
	})
	if found == nil {
		t.Fatalf("no method is called %s", called)
	}
	return found
}

// lies tells whether a message has a path, with or without the marks of lists; one item
// of a list may be meant by its place.
func lies(message protoreflect.MessageDescriptor, path string) bool {
	list := false
	for _, name := range strings.Split(regexp.MustCompile(`\[\d*\]`).ReplaceAllString(path, ""), ".") {
		if message == nil {
			return false
		}
		if _, err := strconv.Atoi(name); err == nil && list {
			list = false
			continue
		}
		field := message.Fields().ByName(protoreflect.Name(name))
		if field == nil {
			return false
		}
		message, list = field.Message(), field.IsList()
	}
	return true
}

// What is said of a question speaks of fields that it and its answer have.
func TestQuestionsSpeakOfTheContract(t *testing.T) {
	entries, err := os.ReadDir("questions")
	if err != nil {
		t.Fatal(err)
	}
	for _, entry := range entries {
		name := strings.TrimSuffix(entry.Name(), ".json")
		data, err := os.ReadFile("questions/" + entry.Name())
		if err != nil {
			t.Fatal(err)
		}
		var q said
		d := json.NewDecoder(bytes.NewReader(data))
		d.DisallowUnknownFields()
		if err := d.Decode(&q); err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if q.Title == "" || q.Intro == "" || q.Example == nil {
			t.Errorf("%s has no title, no introduction or no example", name)
		}
		for _, path := range q.asked() {
			if !lies(method(t, name).Input(), path) {
				t.Errorf("%s: no field %s", name, path)
			}
		}
		for _, path := range q.answered() {
			if !lies(method(t, name).Output(), path) {
				t.Errorf("%s: nothing at %s of the answer", name, path)
			}
		}
		checkWords(t, name, q)
	}
}

// asked are the paths of the question that are spoken of.
func (q said) asked() []string {
	paths := slices.Concat(q.Later, slices.Collect(maps.Keys(q.Always)))
	for _, g := range q.Groups {
		paths = append(paths, g.Fields...)
	}
	for path, when := range q.When {
		paths = append(paths, path, when.Field)
	}
	return paths
}

// answered are those of the answer. A table that is cited has a source in each row.
func (q said) answered() []string {
	var paths []string
	for _, figure := range q.Figures {
		paths = append(paths, figure.Path)
	}
	for _, text := range q.Texts {
		paths = append(paths, text.Path)
	}
	for _, ends := range q.Counts {
		paths = slices.AppendSeq(paths, maps.Values(ends))
	}
	for _, table := range q.Tables {
		if table.Cited {
			paths = append(paths, table.Path+".citation", table.Path+".status")
		}
		for _, column := range table.Columns {
			paths = append(paths, table.Path+"."+column.Path)
		}
	}
	return paths
}

// checkWords looks for what is spoken of by its name alone, of a field at any place or
// of a value, and at the ends of what is drawn.
func checkWords(t *testing.T, name string, q said) {
	t.Helper()
	has := func(kind, what string) bool { return strings.Contains(string(form(t, name)), `"`+kind+`":"`+what+`"`) }
	for _, paths := range []map[string]string{q.Labels, q.Hints, q.Empty, q.Example} {
		for path := range paths {
			if !lies(method(t, name).Input(), path) && !has("name", path) {
				t.Errorf("%s: no field %s", name, path)
			}
		}
	}
	for _, when := range q.When {
		for _, value := range when.Values {
			if value != "" && !has("value", value) {
				t.Errorf("%s: no value %s", name, value)
			}
		}
	}
	for part, ends := range q.Counts {
		for end := range ends {
			if !slices.Contains([]string{"below", "above", "up", "turns"}, end) {
				t.Errorf("%s: no end %s of %q", name, end, part)
			}
		}
	}
}

// Every word that all questions share is about something, and a question's own word
// comes before it.
func TestSharedWords(t *testing.T) {
	data, err := os.ReadFile("words.json")
	if err != nil {
		t.Fatal(err)
	}
	var words map[string]map[string]string
	if err := json.Unmarshal(data, &words); err != nil {
		t.Fatal(err)
	}
	questions, err := site(t).own.questions()
	if err != nil {
		t.Fatal(err)
	}
	for kind, shared := range words {
		for name := range shared {
			if !slices.ContainsFunc(questions, func(q question) bool {
				return bytes.Contains(q.form, []byte(`"`+name[strings.LastIndex(name, ".")+1:]+`"`))
			}) {
				t.Errorf("%s: %s is in no form", kind, name)
			}
		}
	}
	made := map[string]any{"labels": map[string]any{"a": "own"}}
	addWords(made, words, []byte(`{"name":"a"},{"name":"over_cm"}`))
	if got := made["labels"].(map[string]any); got["a"] != "own" || got["over_cm"] == nil || got["wheel"] != nil {
		t.Errorf("labels %v", got)
	}
}

func form(t *testing.T, name string) []byte {
	t.Helper()
	all, err := readForms()
	if err != nil || all[name] == nil {
		t.Fatal("no form", name, err)
	}
	return all[name]
}
