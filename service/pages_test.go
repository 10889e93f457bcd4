package service

import (
	"bytes"
	"compress/gzip"
	"io"
	"os"
	"regexp"
	"strings"
	"testing"

	"example.com/knitmath/service/caller"
	"example.com/knitmath/service/web"
)

// A browser is shown pages, and a program that asks for the root the list of paths.
func TestPages(t *testing.T) {
	server := start(t)
	page := server.send(t, "GET", "/", "", "Accept", "text/html,application/xhtml+xml,*/*;q=0.8")
	if page.code != 200 || !strings.HasPrefix(page.header.Get("Content-Type"), "text/html") ||
		page.header.Get("Content-Security-Policy") == "" || page.header.Get("X-Content-Type-Options") != "nosniff" ||
		page.header.Get("Set-Cookie") != "" {
		t.Errorf("HTTP %d %v", page.code, page.header)
	}
	list := server.send(t, "GET", "/", "")
	for _, got := range []reply{page, list} {
		if !strings.Contains(strings.Join(got.header.Values("Vary"), ","), "Accept,") {
			t.Errorf("Vary %q", got.header.Values("Vary"))
		}
	}
	if !strings.HasPrefix(list.header.Get("Content-Type"), "text/plain") {
		t.Errorf("%v", list.header)
	}
	file := regexp.MustCompile(`/web/[0-9a-f]+/page\.js`).Find(page.body)
	for _, c := range []struct {
		method, path, etag string
		code               int
		kept               string
	}{
		{"GET", string(file), "", 200, "public, max-age=31536000, immutable"},
		{"HEAD", string(file), "", 200, "public, max-age=31536000, immutable"},
		{"GET", "/ask/gauge/computeCastOn", "", 200, "no-cache"},
		{"GET", "/ask/gauge/computeCastOn?width_cm=50", "", 200, "no-cache"},
		{"GET", "/embed/v1.js", "", 200, "public, max-age=300"},
		{"POST", "/ask/gauge/computeCastOn", "", 405, "no-store"},
		{"GET", "/ask/gauge/none", "", 404, "no-store"},
	} {
		got := server.send(t, c.method, c.path, "")
		if got.code != c.code || got.header.Get("Cache-Control") != c.kept {
			t.Errorf("%s %s: HTTP %d %v", c.method, c.path, got.code, got.header)
		}
		if c.code == 200 {
			if again := server.send(t, c.method, c.path, "", "If-None-Match", got.header.Get("ETag")); again.code != 304 {
				t.Errorf("%s again: HTTP %d", c.path, again.code)
			}
		}
	}
	grammar, err := os.ReadFile("../testdata/instruction/grammar.md")
	if err != nil {
		t.Fatal(err)
	}
	for path, says := range map[string]string{"/reference/reasons.md": "`UNKNOWN_PATH`", "/reference/grammar.md": string(grammar)} {
		got := server.send(t, "GET", path, "")
		if got.code != 200 || got.header.Get("Content-Type") != "text/plain; charset=utf-8" || !strings.Contains(string(got.body), says) {
			t.Errorf("%s: HTTP %d %v", path, got.code, got.header)
		}
	}
	if lost := server.send(t, "GET", "/v1/gauge", ""); lost.code != 404 || !strings.Contains(string(lost.body), "/reference shows them") {
		t.Errorf("HTTP %d %s", lost.code, lost.body)
	}
	if got := server.send(t, "GET", "/embed/v1.js", ""); got.header.Get("Cross-Origin-Resource-Policy") != "cross-origin" {
		t.Errorf("%v", got.header)
	}
}

// Pages are for everybody, also where questions need a key.
func TestPagesNeedNoKey(t *testing.T) {
	server, _ := withCallers(t, keyLine("server", "secret"), caller.Config{Origins: shopOrigin})
	for _, path := range []string{"/ask/gauge/computeCastOn", "/embed/v1.js", "/web/0/forms/gauge.computeCastOn.json"} {
		got := server.send(t, "GET", path, "", "Origin", shopOrigin)
		if got.code != 200 || got.header.Get("Access-Control-Allow-Origin") != shopOrigin {
			t.Errorf("%s: HTTP %d %v", path, got.code, got.header)
		}
	}
}

// A file is compressed once, however often and under whichever path it is asked for.
func TestFilesArePackedOnce(t *testing.T) {
	site, err := web.New(web.Config{})
	if err != nil {
		t.Fatal(err)
	}
	face := &jsonFace{site: site}
	for _, paths := range [][2]string{{"/embed/v1.js", "/embed/v1.js"}, {"/web/0/page.js", "/web/1/page.js"}} {
		var packed [2]*packedDocument
		for i, path := range paths {
			file, ok := site.File(path)
			if !ok {
				t.Fatalf("%s is missing", path)
			}
			packed[i] = face.packed(file)
			r, err := gzip.NewReader(bytes.NewReader(packed[i].gzip))
			if err != nil {
				t.Fatal(path, err)
			}
			if data, err := io.ReadAll(r); err != nil || !bytes.Equal(data, file.Data) {
				t.Errorf("%s: what is compressed is not the file: %v", path, err)
			}
		}
		if packed[0] != packed[1] {
			t.Errorf("%v: compressed twice", paths)
		}
	}
}
