package service

import (
	"bytes"
	"compress/gzip"
	"io"
	"maps"
	"net/http"
	"slices"
	"strings"
	"testing"
)

// A question with a long answer, beside castOnPath with its short one.
const (
	ringPath  = "/v1/short-row:planCircleOfWedges"
	ringQuery = ringPath + "?gauge.stitches=22&gauge.rows=30&outer_radius_cm=20&wedge_count=6"
	ringBody  = `{"gauge": {"stitches": 22, "rows": 30}, "outer_radius_cm": 20, "wedge_count": 6}`
)

func compressed(tb testing.TB, data string) string {
	tb.Helper()
	var out bytes.Buffer
	w := gzip.NewWriter(&out)
	if _, err := io.WriteString(w, data); err != nil {
		tb.Fatal(err)
	}
	if err := w.Close(); err != nil {
		tb.Fatal(err)
	}
	return out.String()
}

func inflated(tb testing.TB, data []byte) []byte {
	tb.Helper()
	r, err := gzip.NewReader(bytes.NewReader(data))
	if err != nil {
		tb.Fatal(err)
	}
	plain, err := io.ReadAll(r)
	if err != nil {
		tb.Fatal(err)
	}
	return plain
}

// Long answers are compressed for those who accept it, and every answer says that
// it depends on what they accept.
func TestAnswersAreCompressed(t *testing.T) {
	server := start(t)
	manyFaults := `{"pieces": [` + strings.TrimSuffix(strings.Repeat(`{},`, 60), ",") + `]}`
	for _, c := range []struct {
		name, method, path, body string
		code                     int
		long                     bool
	}{
		{"long", "POST", ringPath, ringBody, 200, true},
		{"long by GET", "GET", ringQuery, "", 200, true},
		{"short", "POST", castOnPath, castOnBody, 200, false},
		{"short by GET", "GET", castOnQuery, "", 200, false},
		{"many faults", "POST", "/v1/yarn:estimateYarn", manyFaults, 400, true},
		{"document", "GET", "/openapi.json", "", 200, true},
	} {
		plain := server.send(t, c.method, c.path, c.body)
		if plain.code != c.code || plain.header.Get("Content-Encoding") != "" || (len(plain.body) >= minCompressed) != c.long {
			t.Errorf("%s: HTTP %d, %d bytes, header %v", c.name, plain.code, len(plain.body), plain.header)
		}
		for accept, wanted := range map[string]bool{
			"gzip": true, "deflate, gzip;q=0.5": true, "GZIP": true, "zstd, gzip": true, "br": false, "identity": false, "gzip;q=0": false,
			"": false,
		} {
			got := server.send(t, c.method, c.path, c.body, "Accept-Encoding", accept)
			body := got.body
			want := wanted && c.long
			if (got.header.Get("Content-Encoding") == "gzip") != want {
				t.Errorf("%s, %q: header %v", c.name, accept, got.header)
			} else if want {
				body = inflated(t, got.body)
			}
			if got.code != c.code || !bytes.Equal(body, plain.body) {
				t.Errorf("%s, %q: HTTP %d, %d bytes that differ", c.name, accept, got.code, len(got.body))
			}
			if got.header.Get("Vary") != "Accept-Encoding" || want && 2*len(got.body) > len(plain.body) {
				t.Errorf("%s, %q: Vary %q, %d of %d bytes", c.name, accept, got.header.Get("Vary"), len(got.body), len(plain.body))
			}
		}
	}
}

// HEAD says what GET would, compressed or not.
func TestHeadIsGet(t *testing.T) {
	server := start(t)
	for _, path := range []string{ringQuery, castOnQuery, castOnPath, "/openapi.json", "/", "/nothing"} {
		for _, accept := range []string{"gzip", "identity"} {
			same := []string{"Accept-Encoding", accept, "X-Request-Id", "same"}
			get, head := server.send(t, "GET", path, "", same...), server.send(t, "HEAD", path, "", same...)
			for _, h := range []http.Header{get.header, head.header} {
				h.Del("Date")
				if accept == "gzip" { // The length may be left out where the sender would have to find it out.
					h.Del("Content-Length")
				}
			}
			if head.code != get.code || len(head.body) > 0 || !maps.EqualFunc(head.header, get.header, slices.Equal) {
				t.Errorf("%s, %s: HTTP %d and %d, header %v and %v", path, accept, head.code, get.code, head.header, get.header)
			}
		}
	}
}

// Questions are read compressed too.
func TestCompressedQuestions(t *testing.T) {
	server := start(t)
	want := server.send(t, "POST", castOnPath, castOnBody).body
	packed := compressed(t, castOnBody)
	half := len(castOnBody) / 2
	broken := packed[:len(packed)-8] + "\x00\x00\x00\x00" + packed[len(packed)-4:]
	for _, c := range []struct {
		name, body, coding string
		code               int
	}{
		{"gzip", packed, "gzip", 200},
		{"in capitals", packed, "GZIP", 200},
		{"by its older name", packed, "x-gzip", 200},
		{"in two parts", compressed(t, castOnBody[:half]) + compressed(t, castOnBody[half:]), "gzip", 200},
		{"not compressed, and so said", castOnBody, "identity", 200},
		{"not compressed", castOnBody, "gzip", 400},
		{"cut off", packed[:len(packed)-9], "gzip", 400},
		{"with a wrong checksum", broken, "gzip", 400},
		{"followed by something else", packed + "{}", "gzip", 400},
		{"compressed and not said", packed, "", 400},
		{"twice", compressed(t, packed), "gzip, gzip", 415},
		{"another method", packed, "br", 415},
		{"many methods", packed, "identity, gzip", 415},
	} {
		got := server.send(t, "POST", castOnPath, c.body, "Content-Encoding", c.coding)
		switch {
		case got.code != c.code:
			t.Errorf("%s: HTTP %d %s", c.name, got.code, got.body)
		case c.code == 200 && !bytes.Equal(got.body, want):
			t.Errorf("%s: another answer: %s", c.name, got.body)
		case c.code == 400 && !slices.Equal(violations(got.status(t)), []string{"MALFORMED"}):
			t.Errorf("%s: %s", c.name, got.body)
		case c.code == 415 && (errorInfo(got.status(t)) != "UNSUPPORTED_MEDIA_TYPE" || got.header.Get("Accept-Encoding") != "gzip"):
			t.Errorf("%s: %s, header %v", c.name, got.body, got.header)
		}
	}
}
