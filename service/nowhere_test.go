package service

import (
	"net/http"
	"strings"
	"testing"
)

// A person at an address where nothing is gets a page with a way on, and is sent on where a
// slash is too many; a program is told in JSON, as of every refusal.
func TestNowhere(t *testing.T) {
	server := start(t)
	const people = "text/html,application/xhtml+xml,*/*;q=0.8"
	for _, path := range []string{"/ask/gauge/nosuch", "/ask", "/ask/", "/reference/gauge", "//elsewhere.example/", "/v1/gauge:no"} {
		page := server.send(t, "GET", path, "", "Accept", people)
		if page.code != 404 || !strings.HasPrefix(page.header.Get("Content-Type"), "text/html") ||
			!strings.Contains(string(page.body), `<a href="/">`) || page.header.Get("Content-Security-Policy") == "" ||
			page.header.Get("Cache-Control") != "no-store" {
			t.Errorf("%s: HTTP %d %v", path, page.code, page.header)
		}
		for _, told := range []reply{server.send(t, "GET", path, ""), server.send(t, "POST", path, "{}", "Accept", people)} {
			if told.code != 404 || told.header.Get("Content-Type") != jsonType || !strings.Contains(string(told.body), "UNKNOWN_PATH") {
				t.Errorf("%s: HTTP %d %s", path, told.code, told.body)
			}
		}
	}
	client := &http.Client{CheckRedirect: func(*http.Request, []*http.Request) error { return http.ErrUseLastResponse }}
	for path, want := range map[string]string{
		"/reference/":                            "/reference",
		"/ask/gauge/computeCastOn/?width_cm=50":  "/ask/gauge/computeCastOn?width_cm=50",
		"/reference/gauge/computeCastOn/?a=%2F/": "/reference/gauge/computeCastOn?a=%2F/",
	} {
		got, err := client.Get("http://" + server.HTTPAddr().String() + path)
		if err != nil {
			t.Fatal(err)
		}
		got.Body.Close()
		if got.StatusCode != http.StatusPermanentRedirect || got.Header.Get("Location") != want {
			t.Errorf("%s: HTTP %d to %s", path, got.StatusCode, got.Header.Get("Location"))
		}
	}
}
