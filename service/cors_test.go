package service

import (
	"net/http"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/service/caller"
)

// A preflight is what a browser asks before it sends what a plain form could not:
// https://fetch.spec.whatwg.org/#cors-preflight-fetch. It shows no key.
func preflight(t *testing.T, server *running, path, origin, method, headers string) reply {
	t.Helper()
	said := []string{"Origin", origin, "Access-Control-Request-Method", method}
	if headers != "" {
		said = append(said, "Access-Control-Request-Headers", headers)
	}
	return server.send(t, "OPTIONS", path, "", said...)
}

// list is a header as the words between its commas.
func list(h http.Header, name string) []string {
	var all []string
	for _, line := range h.Values(name) {
		for _, word := range strings.Split(line, ",") {
			all = append(all, strings.ToLower(strings.TrimSpace(word)))
		}
	}
	return all
}

const shopOrigin = "https://shop.example"

func TestPreflights(t *testing.T) {
	server, _ := withCallers(t, keyLine("pages", "publishable calls=1 origins="+shopOrigin)+keyLine("server", "secret"),
		caller.Config{Origins: "https://*.knit.example"})
	for _, c := range []struct {
		origin, method, headers string
		allowed                 bool
	}{
		{shopOrigin, "POST", "content-type,x-api-key", true},
		{shopOrigin, "POST", "authorization,content-type", true},
		{shopOrigin, "POST", "content-encoding,content-type,if-none-match,traceparent,tracestate,x-api-key,x-request-id", true},
		{shopOrigin, "GET", "x-api-key", true},
		{shopOrigin, "HEAD", "", true},
		{"https://a.knit.example", "POST", "content-type", true},
		{shopOrigin, "POST", "cookie,x-api-key", false},
		{shopOrigin, "DELETE", "", false},
		{"https://knit.example", "POST", "content-type", false},
		{"https://other.example", "POST", "content-type", false},
		{"null", "POST", "content-type", false},
	} {
		// A browser asks for the path it means, also when that has no such method.
		for _, path := range []string{castOnPath, "/none"} {
			got := preflight(t, server, path, c.origin, c.method, c.headers)
			allowed := got.header.Get("Access-Control-Allow-Origin") == c.origin
			if c.headers != "" && allowed {
				allowed = got.header.Get("Access-Control-Allow-Headers") == c.headers
			}
			if got.code != 204 || allowed != c.allowed || len(got.body) > 0 {
				t.Errorf("%s %+v: HTTP %d, allowed %v, %v", path, c, got.code, allowed, got.header)
			}
			if c.allowed && (got.header.Get("Access-Control-Allow-Methods") != c.method || got.header.Get("Access-Control-Max-Age") != "7200") {
				t.Errorf("%+v: %v", c, got.header)
			}
			if got.header.Get("Access-Control-Allow-Credentials") != "" {
				t.Errorf("%+v: cookies and certificates are none of a page's business", c)
			}
			if vary := list(got.header, "Vary"); !slices.Contains(vary, "origin") {
				t.Errorf("%+v: Vary %q", c, vary)
			}
		}
	}
	// What is no preflight is a method like any other.
	if got := server.send(t, "OPTIONS", castOnPath, "", "Origin", shopOrigin, "x-api-key", "server"); got.code != 405 {
		t.Errorf("OPTIONS: HTTP %d", got.code)
	}
}

// Answers and errors of every kind may be read by the pages that are allowed, and
// by no others.
func TestPagesReadAnswersAndErrors(t *testing.T) {
	server, _ := withCallers(t, keyLine("pages", "publishable calls=1000 origins="+shopOrigin)+
		keyLine("once", "publishable calls=0.001 origins="+shopOrigin), caller.Config{Origins: "https://knit.example"})
	server.send(t, "GET", castOnQuery, "", "x-api-key", "once", "Origin", shopOrigin)
	for _, origin := range []string{shopOrigin, "https://knit.example", "https://other.example", ""} {
		for _, c := range []struct{ method, path, body, key string }{
			{"POST", castOnPath, castOnBody, "pages"},
			{"GET", castOnQuery, "", "pages"},
			{"GET", "/openapi.json", "", ""},
			{"POST", castOnPath, "{}", "pages"},
			{"POST", castOnPath, "{", "pages"},
			{"POST", castOnPath, strings.Repeat(" ", maxQuestionBytes+1), "pages"},
			{"GET", "/none", "", "pages"},
			{"POST", castOnPath, castOnBody, "nobody"},
			{"POST", castOnPath, castOnBody, ""},
			{"POST", castOnPath, castOnBody, "once"},
		} {
			var header []string
			if origin != "" {
				header = append(header, "Origin", origin)
			}
			if c.key != "" {
				header = append(header, "X-Api-Key", c.key)
			}
			got := server.send(t, c.method, c.path, c.body, header...)
			want := origin
			if origin == "https://other.example" {
				want = ""
			}
			if may := got.header.Get("Access-Control-Allow-Origin"); may != want {
				t.Errorf("%s %s by %q from %q: HTTP %d may be read by %q, want %q", c.method, c.path, c.key, origin, got.code, may, want)
			}
			if vary := list(got.header, "Vary"); !slices.Contains(vary, "origin") {
				t.Errorf("%s %s from %q: Vary %q", c.method, c.path, origin, vary)
			}
			exposed := list(got.header, "Access-Control-Expose-Headers")
			for _, name := range []string{"etag", "knitmath-notices", "knitmath-release", "retry-after", "x-request-id"} {
				if slices.Contains(exposed, name) != (want != "") {
					t.Errorf("%s %s from %q: %s is exposed: %q", c.method, c.path, origin, name, exposed)
				}
			}
		}
	}
}

// A cache may keep the answer to a GET, whoever asked, but gives a page only what
// names it.
func TestAnswersToPagesAreKept(t *testing.T) {
	server, _ := withCallers(t, keyLine("server", "secret"), caller.Config{Origins: shopOrigin})
	first := server.send(t, "GET", castOnQuery, "", "x-api-key", "server", "Origin", shopOrigin, "Accept-Encoding", "gzip")
	vary := list(first.header, "Vary")
	if first.code != 200 || first.header.Get("Cache-Control") != cacheControl || !slices.Contains(vary, "origin") ||
		!slices.Contains(vary, "accept-encoding") || slices.Contains(vary, "authorization") {
		t.Fatalf("HTTP %d, %v", first.code, first.header)
	}
	again := server.send(t, "GET", castOnQuery, "", "x-api-key", "server", "Origin", shopOrigin, "Accept-Encoding", "gzip",
		"If-None-Match", first.header.Get("ETag"))
	if again.code != 304 || again.header.Get("Access-Control-Allow-Origin") != shopOrigin {
		t.Errorf("HTTP %d, %v", again.code, again.header)
	}
	if refused := server.send(t, "GET", castOnQuery, "", "If-None-Match", first.header.Get("ETag")); refused.code != 401 {
		t.Errorf("without a key: HTTP %d", refused.code)
	}
}

func TestEveryPageMayAskWithoutKeys(t *testing.T) {
	server, _ := withCallers(t, "", caller.Config{Origins: "*", AddressRate: 1000})
	got := server.send(t, "POST", castOnPath, castOnBody, "Origin", "https://any.example")
	if got.code != 200 || got.header.Get("Access-Control-Allow-Origin") != "https://any.example" {
		t.Errorf("HTTP %d, %v", got.code, got.header)
	}
}

// Unless it is asked for, there is none of it.
func TestNoCORSByDefault(t *testing.T) {
	server := start(t)
	got := server.send(t, "GET", castOnQuery, "", "Origin", shopOrigin)
	if got.header.Get("Access-Control-Allow-Origin") != "" || slices.Contains(list(got.header, "Vary"), "origin") {
		t.Errorf("%v", got.header)
	}
	if got := preflight(t, server, castOnPath, shopOrigin, "POST", ""); got.code != 405 {
		t.Errorf("preflight: HTTP %d", got.code)
	}
}

// Of two origins none is allowed anything, whichever comes first.
func TestTwoOriginsAreNone(t *testing.T) {
	server, _ := withCallers(t, keyLine("server", "secret"), caller.Config{Origins: shopOrigin})
	for _, said := range [][]string{{shopOrigin, "https://other.example"}, {"https://other.example", shopOrigin}, {shopOrigin, shopOrigin}} {
		for _, method := range []string{"GET", "OPTIONS"} {
			req, err := http.NewRequest(method, "http://"+server.HTTPAddr().String()+"/v1/needle/sizes", nil)
			if err != nil {
				t.Fatal(err)
			}
			req.Header["Origin"] = said
			req.Header.Set("Access-Control-Request-Method", "GET")
			resp, err := server.http.Do(req)
			if err != nil {
				t.Fatal(err)
			}
			_ = resp.Body.Close()
			if got := resp.Header.Get("Access-Control-Allow-Origin"); got != "" || !slices.Contains(list(resp.Header, "Vary"), "origin") {
				t.Errorf("%s by %q: %q is allowed, Vary %q", method, said, got, resp.Header.Values("Vary"))
			}
		}
	}
}
