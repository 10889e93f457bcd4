package knittest

import (
	"os"
	"regexp"
	"slices"
	"strings"
	"sync"
	"testing"

	"example.com/knitmath/knitmath/report"
)

// listed are the rows of the table of reasons, by method and reason: the fields that the contract lists.
var listed = sync.OnceValues(func() (map[[2]string]string, error) {
	table, err := os.ReadFile("../../gen/reasons.md")
	if err != nil {
		return nil, err
	}
	fields, method := map[[2]string]string{}, ""
	for line := range strings.Lines(string(table)) {
		if name, ok := strings.CutPrefix(line, "## `"); ok {
			method, _, _ = strings.Cut(name, "Response.notices`")
		}
		if cells := strings.Split(line, " | "); len(cells) > 2 {
			fields[[2]string{method, strings.Trim(cells[0], "| `")}] = cells[1]
		}
	}
	return fields, nil
})

var index = regexp.MustCompile(`\[\d+\]`)

// CheckNotices wants every notice of an answer to be one that the contract lists for its method, at a field that it lists for it.
func CheckNotices(t *testing.T, method string, notices []report.Notice) {
	t.Helper()
	all, err := listed()
	if err != nil {
		t.Fatal(err)
	}
	for _, n := range notices {
		fields, ok := all[[2]string{method, string(n.Reason)}]
		field := index.ReplaceAllString(n.Field, "")
		at := strings.FieldsFunc(fields, func(r rune) bool { return r == ' ' || r == ',' })
		if !ok || field == "" && fields != "" && fields != "no field" || field != "" && !slices.Contains(at, field) {
			t.Fatalf("%s: %s at %q, listed at %q", method, n.Reason, n.Field, fields)
		}
	}
}
