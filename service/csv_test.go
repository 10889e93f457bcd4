package service

import (
	"encoding/csv"
	"encoding/json"
	"strings"
	"testing"

	"google.golang.org/protobuf/reflect/protoreflect"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

const bodyPath = "/v1/body:listBodySizes"

// tables are the paths whose answers are tables.
func tables(t *testing.T) map[string]route {
	t.Helper()
	routes, err := readRoutes()
	if err != nil {
		t.Fatal(err)
	}
	found := map[string]route{}
	for path, at := range routes {
		if at.table {
			found[path] = at
		}
	}
	if len(found) < 4 {
		t.Fatalf("%d tables", len(found))
	}
	return found
}

// readCSV reads what was sent, which must be CSV.
func readCSV(t *testing.T, got reply) [][]string {
	t.Helper()
	if got.code != 200 || got.header.Get("Content-Type") != "text/csv; charset=utf-8; header=present" || !varies(got, "Accept") {
		t.Fatalf("HTTP %d, header %v: %s", got.code, got.header, got.body)
	}
	records, err := csv.NewReader(strings.NewReader(string(got.body))).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	return records
}

// varies reports whether an answer says that it depends on a header.
func varies(got reply, header string) bool {
	for _, line := range got.header.Values("Vary") {
		for name := range strings.SplitSeq(line, ",") {
			if strings.TrimSpace(name) == header {
				return true
			}
		}
	}
	return false
}

// Every table is the same as JSON and as CSV, by GET and by POST, cell by cell.
func TestTablesAsCSV(t *testing.T) {
	server := start(t)
	for path := range tables(t) {
		plain := server.send(t, "GET", path, "")
		if plain.header.Get("Content-Type") != jsonType || !varies(plain, "Accept") {
			t.Errorf("%s: header %v", path, plain.header)
		}
		for _, query := range []string{"?no_such_field=1", "?fields=no_such_field"} {
			if refused := server.send(t, "GET", path+query, ""); refused.code != 400 || !varies(refused, "Accept") {
				t.Errorf("%s%s: HTTP %d, header %v", path, query, refused.code, refused.header)
			}
		}
		var answer struct{ Rows []map[string]any }
		if err := json.Unmarshal(plain.body, &answer); err != nil {
			t.Fatal(err)
		}
		records := readCSV(t, server.send(t, "GET", path, "", "Accept", csvType))
		if posted := readCSV(t, server.send(t, "POST", path, "{}", "Accept", csvType)); len(posted) != len(records) {
			t.Errorf("%s: %d lines by POST, %d by GET", path, len(posted), len(records))
		}
		if len(records) != 1+len(answer.Rows) || len(records) < 8 {
			t.Fatalf("%s: %d lines for %d rows", path, len(records), len(answer.Rows))
		}
		if len(records[0]) != rowOf(t, path).Fields().Len() {
			t.Errorf("%s: columns %v", path, records[0])
		}
		for i, row := range answer.Rows {
			for k, name := range records[0] {
				want := ""
				if v, ok := row[name]; ok {
					text, _ := json.Marshal(v)
					want = strings.Trim(string(text), `"`)
				}
				if got, _ := json.Marshal(records[i+1][k]); strings.Trim(string(got), `"`) != want {
					t.Errorf("%s, line %d, %s: %s, want %s", path, i+1, name, got, want)
				}
			}
		}
	}
}

// rowOf is the message of a table's rows.
func rowOf(t *testing.T, path string) protoreflect.MessageDescriptor {
	t.Helper()
	for _, service := range wireServices() {
		for i := range service.Methods().Len() {
			m := service.Methods().Get(i)
			if at, err := readRoute(m); err == nil && at.path == path {
				return tableOf(m.Output()).Message()
			}
		}
	}
	t.Fatalf("no method at %s", path)
	return nil
}

// The rows of tables are made of values that a cell holds.
func TestTablesAreFlat(t *testing.T) {
	for path := range tables(t) {
		fields := rowOf(t, path).Fields()
		for i := range fields.Len() {
			if fd := fields.Get(i); fd.IsList() || fd.Message() != nil {
				t.Errorf("%s: a cell cannot hold %s", path, fd.FullName())
			}
		}
	}
}

// The form follows Accept as RFC 9110 weighs it, and JSON is what is sent where it leaves
// the choice.
func TestFormFollowsAccept(t *testing.T) {
	server := start(t)
	for accept, want := range map[string]string{
		"":                                  jsonType,
		"*/*":                               jsonType,
		"application/json":                  jsonType,
		"text/csv":                          csvType,
		"Text/CSV":                          csvType,
		"text/csv; header=present":          csvType,
		"text/*":                            csvType,
		"text/csv, */*":                     csvType,
		"text/csv, */*;q=0.1":               csvType,
		"text/csv;q=0.1, */*":               jsonType,
		"text/csv, application/json":        jsonType,
		"text/csv, application/json;q=0.9":  csvType,
		"application/json, text/plain, */*": jsonType,
		"text/csv;q=0":                      jsonType,
		"text/csv;q=nan":                    jsonType,
		"text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8": jsonType,
		"image/png": jsonType,
		",;,=/":     jsonType,
	} {
		got := server.send(t, "GET", bodyPath+"?group=BODY_GROUP_HEAD", "", "Accept", accept)
		if kind, _, _ := strings.Cut(got.header.Get("Content-Type"), ";"); got.code != 200 || kind != want {
			t.Errorf("%q gives HTTP %d, %s, want %s", accept, got.code, kind, want)
		}
	}
	// What is no table is JSON, and does not depend on Accept.
	got := server.send(t, "GET", castOnQuery, "", "Accept", csvType)
	if got.code != 200 || got.header.Get("Content-Type") != jsonType || varies(got, "Accept") {
		t.Errorf("HTTP %d, header %v", got.code, got.header)
	}
	// A refusal is JSON too.
	got = server.send(t, "GET", bodyPath+"?group=BODY_GROUP_BIRD", "", "Accept", csvType)
	if got.code != 400 || got.header.Get("Content-Type") != jsonType {
		t.Errorf("HTTP %d, header %v", got.code, got.header)
	}
	got = server.send(t, "POST", bodyPath, `{"measure": 99}`, "Accept", csvType)
	if got.code != 400 || got.header.Get("Content-Type") != jsonType {
		t.Errorf("HTTP %d, header %v", got.code, got.header)
	}
}

// Columns are asked for as fields are; what has none of the rows is no table, and JSON.
func TestColumns(t *testing.T) {
	server := start(t)
	ask := func(fields string) string {
		got := server.send(t, "GET", bodyPath+"?group=BODY_GROUP_HEAD"+fields, "", "Accept", csvType)
		if got.code != 200 {
			t.Fatalf("HTTP %d: %s", got.code, got.body)
		}
		return string(got.body)
	}
	if got := ask("&fields=rows.low_cm&fields=rows.size"); !strings.HasPrefix(got, "size,low_cm\r\npreemie,30.5\r\n") {
		t.Errorf("%q", got)
	}
	if whole, rows := ask(""), ask("&fields=rows"); whole != rows {
		t.Errorf("%q is not %q", rows, whole)
	}
	for _, fields := range []string{"?fields=summary", "?fields=summary&fields=notices"} {
		got := server.send(t, "GET", bodyPath+fields, "", "Accept", csvType)
		var answer map[string]any
		err := json.Unmarshal(got.body, &answer)
		if err != nil || answer["summary"] == "" || got.header.Get("Content-Type") != jsonType || !varies(got, "Accept") {
			t.Errorf("%s: %v, header %v: %s", fields, err, got.header, got.body)
		}
	}
}

// Notices stand in the header of a table, for CSV has no place for them; they are left out
// with what is not asked for.
func TestNoticesBesideTable(t *testing.T) {
	server := start(t)
	for _, c := range []struct{ query, want string }{
		{"?group=BODY_GROUP_HEAD&measure=BODY_MEASURE_WAIST", `NO_ROWS;field="measure"`},
		{"?group=BODY_GROUP_FOOT&measure=BODY_MEASURE_HAND_LENGTH", `NO_ROWS;field="measure", MEASURE_HANDS;field="measure"`},
		{"?group=BODY_GROUP_WOMAN&measure=BODY_MEASURE_WAIST", ""},
		{"?group=BODY_GROUP_HEAD&measure=BODY_MEASURE_WAIST&fields=rows", ""},
		{"?group=BODY_GROUP_HEAD&measure=BODY_MEASURE_WAIST&fields=rows.size&fields=notices", `NO_ROWS;field="measure"`},
	} {
		got := server.send(t, "GET", bodyPath+c.query, "", "Accept", csvType)
		if got.code != 200 || got.header.Get(noticesHeader) != c.want {
			t.Errorf("%s: HTTP %d, %q, want %q", c.query, got.code, got.header.Get(noticesHeader), c.want)
		}
		if lines := readCSV(t, got); len(lines) < 1 {
			t.Errorf("%s: no line of names", c.query)
		}
	}
	if got := server.send(t, "GET", bodyPath+"?group=BODY_GROUP_HEAD&measure=BODY_MEASURE_WAIST", ""); got.header.Get(noticesHeader) != "" {
		t.Errorf("JSON has its notices twice: %v", got.header)
	}
}

// The two forms of one table have tags of their own, and each is known by its own alone.
func TestTagsOfForms(t *testing.T) {
	server := start(t)
	path := bodyPath + "?group=BODY_GROUP_WOMAN"
	asJSON := server.send(t, "GET", path, "").header.Get("ETag")
	asCSV := server.send(t, "GET", path, "", "Accept", csvType).header.Get("ETag")
	if asJSON == "" || asCSV == "" || asJSON == asCSV {
		t.Fatalf("tags %s and %s", asJSON, asCSV)
	}
	for _, c := range []struct {
		accept, known string
		code          int
	}{{csvType, asCSV, 304}, {csvType, asJSON, 200}, {jsonType, asJSON, 304}, {"", asCSV, 200}} {
		for _, method := range []string{"GET", "HEAD"} {
			got := server.send(t, method, path, "", "Accept", c.accept, "If-None-Match", c.known)
			if got.code != c.code || !varies(got, "Accept") || got.header.Get("Cache-Control") != cacheControl {
				t.Errorf("%s as %q, known %s: HTTP %d, header %v", method, c.accept, c.known, got.code, got.header)
			}
		}
	}
}

// A text that a spreadsheet would run is none any more; numbers stay numbers.
func TestCellsAreInert(t *testing.T) {
	row := &knitmathv1.NeedleRow{Mm: -4.5, Us: "=1+2", Uk: "-8", Japanese: "@x", Disagreement: "\tcmd", Citation: "+1",
		Status: knitmathv1.SourceStatus_SOURCE_STATUS_FROM_MEMORY}
	data, err := writeTable((&knitmathv1.ListNeedleSizesResponse{Rows: []*knitmathv1.NeedleRow{row, {Us: "a,\"b\"\nc"}}}).ProtoReflect(), nil)
	if err != nil {
		t.Fatal(err)
	}
	want := "mm,us,uk,japanese,disagreement,citation,status,uncertain,remark\r\n" +
		"-4.5,'=1+2,'-8,'@x,'\tcmd,'+1,SOURCE_STATUS_FROM_MEMORY,false,\r\n" +
		"0,\"a,\"\"b\"\"\r\nc\",,,,,SOURCE_STATUS_UNSPECIFIED,false,\r\n"
	if string(data) != want {
		t.Errorf("got %q, want %q", data, want)
	}
	if _, err := writeTable((&knitmathv1.ComputeCastOnResponse{}).ProtoReflect(), nil); err == nil {
		t.Error("an answer that is no table is written")
	}
	unknown := &knitmathv1.ListBodySizesResponse{Rows: []*knitmathv1.BodySizeRow{{Group: 99}}}
	if data, err := writeTable(unknown.ProtoReflect(), nil); err != nil || !strings.Contains(string(data), "\r\n99,") {
		t.Errorf("%q, %v", data, err)
	}
}
