package service

import (
	"net/http"
	"net/http/httptest"
	"strconv"
	"strings"
	"testing"
)

// Who accepts gzip is read as RFC 9110 says: by quality, by name before by *.
func TestAcceptsGzip(t *testing.T) {
	for accept, want := range map[string]bool{
		"gzip": true, "x-gzip": true, "GZip ; Q=0.001": true, "br, gzip;q=1.0": true, "*": true, "identity;q=0, *;q=0.1": true,
		"gzip;q=0": false, "gzip;q=0.000, *": false, "*, gzip;q=0": false, "*;q=0": false, "gzipped": false, "br;q=1.0, zstd": false,
		"gzip;q=many": false, "": false, ",;,=": false,
	} {
		if got := acceptsGzip(http.Header{"Accept-Encoding": {accept}}); got != want {
			t.Errorf("%q: %v", accept, got)
		}
	}
	if !acceptsGzip(http.Header{"Accept-Encoding": {"br", "gzip"}}) {
		t.Error("the second line is passed over")
	}
}

// An answer in parts is compressed in parts, and its length is not that of the first.
func TestCompressingParts(t *testing.T) {
	part := strings.Repeat("knit ", minCompressed)
	for length, want := range map[string]bool{"": false, strconv.Itoa(len(part)): true, strconv.Itoa(2 * len(part)): false} {
		parts := 2
		if want {
			parts = 1
		}
		w, r := httptest.NewRecorder(), httptest.NewRequest("GET", "/", nil)
		r.Header.Set("Accept-Encoding", "gzip")
		compressing(http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
			if length != "" {
				w.Header().Set("Content-Length", length)
			}
			w.WriteHeader(http.StatusAccepted)
			for range parts {
				if n, err := w.Write([]byte(part)); n != len(part) || err != nil {
					t.Errorf("%d, %v", n, err)
				}
			}
		})).ServeHTTP(w, r)
		if got := string(inflated(t, w.Body.Bytes())); w.Code != http.StatusAccepted || got != strings.Repeat(part, parts) {
			t.Errorf("HTTP %d, %d bytes", w.Code, len(got))
		}
		said := w.Header().Get("Content-Length")
		if want != (said == strconv.Itoa(w.Body.Len())) || !want && said != "" {
			t.Errorf("length %q, said to be %q of %d", length, said, w.Body.Len())
		}
	}
}

// What is answered without a body keeps its code.
func TestCompressingNothing(t *testing.T) {
	w := httptest.NewRecorder()
	compressing(http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) { w.WriteHeader(http.StatusNotFound) })).
		ServeHTTP(w, httptest.NewRequest("GET", "/", nil))
	if w.Code != http.StatusNotFound || w.Header().Get("Vary") != "Accept-Encoding" {
		t.Errorf("HTTP %d, header %v", w.Code, w.Header())
	}
}
