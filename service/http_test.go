package service

import (
	"encoding/json"
	"net/http"
	"slices"
	"strings"
	"testing"

	"google.golang.org/protobuf/proto"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

const castOnQuery = castOnPath + "?gauge.stitches=22&gauge.rows=30&width_cm=50"

// TestRefusedRequests wants, for everything that never becomes a call, the right
// HTTP code and a body that says why.
func TestRefusedRequests(t *testing.T) {
	server := start(t)
	deep := `{"gauge": ` + strings.Repeat(`[`, 30) + strings.Repeat(`]`, 30) + `}`
	for _, c := range []struct {
		name, method, path, body string
		header                   []string
		code                     int
		reason                   string
		violations               []string
	}{
		{name: "unknown path", method: "GET", path: "/v1/gauge:computeCastOff", code: 404, reason: "UNKNOWN_PATH"},
		{name: "method for another path", method: "GET", path: "/v1/gauge:convertGauge", code: 405, reason: "METHOD_NOT_ALLOWED"},
		{name: "delete", method: "DELETE", path: castOnPath, code: 405, reason: "METHOD_NOT_ALLOWED"},
		{name: "a method nobody knows", method: "KNIT", path: castOnPath, code: 405, reason: "METHOD_NOT_ALLOWED"},
		{name: "post to the document", method: "POST", path: "/openapi.json", body: "{}", code: 405, reason: "METHOD_NOT_ALLOWED"},
		{name: "a header does not make a POST a GET", method: "POST", path: "/v1/gauge:convertGauge", body: "{}",
			header: []string{"X-HTTP-Method-Override", "GET"}, code: 400, reason: reasonInvalidInput,
			violations: []string{"pattern_gauge REQUIRED", "own_gauge REQUIRED"}},
		{name: "form", method: "POST", path: castOnPath, body: "width_cm=50",
			header: []string{"Content-Type", "application/x-www-form-urlencoded"}, code: 415, reason: "UNSUPPORTED_MEDIA_TYPE"},
		{name: "other charset", method: "POST", path: castOnPath, body: castOnBody,
			header: []string{"Content-Type", "application/json; charset=latin1"}, code: 415, reason: "UNSUPPORTED_MEDIA_TYPE"},
		{name: "compressed by another method", method: "POST", path: castOnPath, body: castOnBody,
			header: []string{"Content-Encoding", "br"}, code: 415, reason: "UNSUPPORTED_MEDIA_TYPE"},
		{name: "too large", method: "POST", path: castOnPath, body: `{"` + strings.Repeat("x", maxQuestionBytes) + `": 1}`,
			code: 413, reason: "BODY_TOO_LARGE"},
		{name: "empty body", method: "POST", path: castOnPath, body: " ", code: 400, violations: []string{"MALFORMED"}},
		{name: "cut off", method: "POST", path: castOnPath, body: `{"gauge": {"stitches": 22`, code: 400, violations: []string{"MALFORMED"}},
		{name: "trailing data", method: "POST", path: castOnPath, body: castOnBody + "{}", code: 400, violations: []string{"MALFORMED"}},
		{name: "not an object", method: "POST", path: castOnPath, body: "[]", code: 400, violations: []string{"WRONG_TYPE"}},
		{name: "not UTF-8", method: "POST", path: castOnPath, body: "{\"\xff\": 1}", code: 400, violations: []string{"MALFORMED"}},
		{name: "half a character", method: "POST", path: "/v1/yarn:estimateYarn", body: `{"pieces": [{"name": "\ud800"}]}`, code: 400,
			violations: []string{"MALFORMED"}},
		{name: "deep", method: "POST", path: castOnPath, body: deep, code: 400, violations: []string{"TOO_DEEP"}},
		{name: "deeper than any stack", method: "POST", path: castOnPath, body: strings.Repeat("[", 60_000), code: 400,
			violations: []string{"TOO_DEEP"}},
		{name: "key twice", method: "POST", path: castOnPath, body: `{"width_cm": 50, "width_cm": 51}`, code: 400,
			violations: []string{"width_cm DUPLICATE_FIELD"}},
		{name: "key in both spellings", method: "POST", path: castOnPath, body: `{"width_cm": 50, "widthCm": 50}`, code: 400,
			violations: []string{"width_cm DUPLICATE_FIELD"}},
		{name: "a POST with a query", method: "POST", path: castOnQuery, body: castOnBody, code: 400, violations: []string{"MALFORMED"}},
		{name: "a GET with a body", method: "GET", path: castOnQuery, body: castOnBody, code: 400, violations: []string{"MALFORMED"}},
		{name: "unknown parameters", method: "GET", path: castOnQuery + "&widht=3&gauge.over=1", code: 400,
			violations: []string{"gauge.over UNKNOWN_FIELD", "widht UNKNOWN_FIELD"}},
		{name: "repeated parameter", method: "GET", path: castOnQuery + "&width_cm=51", code: 400,
			violations: []string{"width_cm DUPLICATE_FIELD"}},
		{name: "parameter in both spellings", method: "GET", path: castOnQuery + "&widthCm=51", code: 400,
			violations: []string{"width_cm DUPLICATE_FIELD"}},
		{name: "parameters of the wrong type", method: "GET",
			path: castOnQuery + "&height_cm=tall&stitch_rule.multiple=2.5&row_rule.remainder=9999999999" +
				"&row_rule.rounding=ROUNDING_OFF&display_unit=9&ease_cm=",
			code: 400, violations: []string{"display_unit UNKNOWN_VALUE", "ease_cm WRONG_TYPE", "height_cm WRONG_TYPE",
				"row_rule.remainder OUT_OF_RANGE", "row_rule.rounding UNKNOWN_VALUE", "stitch_rule.multiple WRONG_TYPE"}},
		{name: "object as parameter", method: "GET", path: castOnQuery + "&stitch_rule=4", code: 400,
			violations: []string{"stitch_rule UNKNOWN_FIELD"}},
		{name: "list as parameter", method: "GET", path: "/v1/yoke:planCircularYoke?steps.depth_fraction=1", code: 400,
			violations: []string{"steps.depth_fraction UNKNOWN_FIELD"}},
		{name: "map syntax", method: "GET", path: castOnQuery + "&ease_cm[3]=4", code: 400, violations: []string{"ease_cm[3] UNKNOWN_FIELD"}},
		{name: "broken query", method: "GET", path: castOnQuery + "&ease_cm=%zz", code: 400, violations: []string{"MALFORMED"}},
		{name: "faults the kernel finds in a query", method: "GET", path: castOnPath + "?width_cm=NaN", code: 400,
			violations: []string{"gauge REQUIRED", "width_cm NOT_FINITE"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := server.send(t, c.method, c.path, c.body, c.header...)
			if got.code != c.code {
				t.Fatalf("HTTP %d, want %d: %s", got.code, c.code, got.body)
			}
			if c.violations != nil {
				c.reason = reasonInvalidInput
			}
			st := got.status(t)
			if errorInfo(st) != c.reason || !slices.Equal(violations(st), c.violations) {
				t.Errorf("%s %q, want %s %q", errorInfo(st), violations(st), c.reason, c.violations)
			}
			if got.header.Get("Content-Type") != jsonType || got.header.Get("Cache-Control") != "no-store" {
				t.Errorf("header %v", got.header)
			}
			if len(got.body) > 20_000 {
				t.Errorf("%d bytes of reply", len(got.body))
			}
		})
	}
}

func TestAllowHeader(t *testing.T) {
	server := start(t)
	for path, want := range map[string]string{
		castOnPath:               "GET, HEAD, POST",
		"/v1/gauge:computeGauge": "POST",
		"/openapi.json":          "GET, HEAD",
		"/":                      "GET, HEAD",
	} {
		if got := server.send(t, "PUT", path, ""); got.code != 405 || got.header.Get("Allow") != want {
			t.Errorf("%s: HTTP %d, Allow %q, want %q", path, got.code, got.header.Get("Allow"), want)
		}
	}
}

// The largest body that is read is read; the next byte is refused (413 above).
func TestLargestBody(t *testing.T) {
	server := start(t)
	body := castOnBody + strings.Repeat(" ", maxQuestionBytes-len(castOnBody))
	if got := server.send(t, "POST", castOnPath, body); got.code != 200 {
		t.Errorf("HTTP %d for %d bytes", got.code, len(body))
	}
	if got := server.send(t, "POST", castOnPath, body+" "); got.code != 413 {
		t.Errorf("HTTP %d for %d bytes", got.code, len(body)+1)
	}
}

// A reply repeats what the caller wrote only to a limit, and lists only so many
// faults.
func TestManyFaults(t *testing.T) {
	server := start(t)
	fields := make([]string, 5000)
	for i := range fields {
		fields[i] = `"` + strings.Repeat("y", i%8) + `": 1`
	}
	got := server.send(t, "POST", castOnPath, `{"`+strings.Repeat("é", 5000)+`": 2, `+strings.Join(fields, ",")+"}")
	st := got.status(t)
	if first := violations(st)[0]; len(first) > maxFieldLength+len("... UNKNOWN_FIELD") {
		t.Errorf("the reply repeats %d bytes of a name", len(first))
	}
	if len(got.body) > 20_000 {
		t.Errorf("%d bytes, %d faults", len(got.body), len(violations(st)))
	}
	checkCut(t, st, 5001)
}

// Messages that may hold themselves are read to a limit too.
func TestNestingIsBounded(t *testing.T) {
	nest := func(n int) error {
		body := strings.Repeat(`{"group": {"steps": [`, n) + strings.Repeat(`]}}`, n)
		return readJSON([]byte(body), &knitmathv1.Step{})
	}
	if err := nest(3); err != nil {
		t.Errorf("three groups: %v", err)
	}
	if err := nest(maxDepth); err == nil {
		t.Errorf("%d groups are read", maxDepth)
	}
}

func TestGetIsCached(t *testing.T) {
	server := start(t)
	got := server.send(t, "GET", castOnQuery, "")
	tag := got.header.Get("ETag")
	if got.code != 200 || got.header.Get("Cache-Control") != "public, max-age=86400" || len(tag) < 10 {
		t.Fatalf("HTTP %d, header %v", got.code, got.header)
	}
	if again := server.send(t, "GET", castOnQuery, "", "If-None-Match", tag); again.code != 304 || len(again.body) > 0 {
		t.Errorf("HTTP %d for an answer known already", again.code)
	}
	if head := server.send(t, "HEAD", castOnQuery, ""); head.code != 200 || head.header.Get("ETag") != tag || len(head.body) > 0 {
		t.Errorf("HEAD: HTTP %d, header %v", head.code, head.header)
	}
	var byGet, byPost knitmathv1.ComputeCastOnResponse
	got.message(t, &byGet)
	post := server.send(t, "POST", castOnPath, castOnBody)
	post.message(t, &byPost)
	if !proto.Equal(&byGet, &byPost) {
		t.Errorf("GET and POST differ:\n%v\n%v", &byGet, &byPost)
	}
	if post.header.Get("Cache-Control") != "no-store" || post.header.Get("ETag") != "" {
		t.Errorf("POST may be cached: %v", post.header)
	}
}

// JSON without a content type is read; so is a charset that says the obvious.
func TestContentTypes(t *testing.T) {
	server := start(t)
	for _, kind := range []string{"", "application/json", "Application/JSON; charset=UTF-8"} {
		if got := server.send(t, "POST", castOnPath, castOnBody, "Content-Type", kind); got.code != 200 {
			t.Errorf("HTTP %d for %q", got.code, kind)
		}
	}
}

// Zero counts are written out, and absent messages are not.
func TestAnswersShowZeros(t *testing.T) {
	server := start(t)
	var got map[string]json.RawMessage
	body := server.send(t, "POST", "/v1/shaping:planEvenSpacing",
		`{"start_stitches": 100, "end_stitches": 90, "construction": "CONSTRUCTION_ROUND"}`).body
	if err := json.Unmarshal(body, &got); err != nil {
		t.Fatal(err)
	}
	if string(got["first_gap_stitches"]) != "0" || string(got["notices"]) != "[]" {
		t.Errorf("zeros are hidden: %s", body)
	}
	if body := server.send(t, "POST", castOnPath, castOnBody).body; strings.Contains(string(body), `"rows"`) {
		t.Errorf("an absent message is written: %s", body)
	}
}

func TestHeadersAreBounded(t *testing.T) {
	server := start(t)
	got := server.send(t, "GET", castOnQuery, "", "X-Long", strings.Repeat("x", 2*maxHeaderBytes))
	if got.code != http.StatusRequestHeaderFieldsTooLarge {
		t.Errorf("HTTP %d", got.code)
	}
}
