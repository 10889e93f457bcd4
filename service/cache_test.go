package service

import (
	"testing"
)

// tagOf asks for the ETag of an answer that may be kept.
func (r *running) tagOf(t *testing.T, path, accept string) string {
	t.Helper()
	got := r.send(t, "GET", path, "", "Accept-Encoding", accept)
	if got.code != 200 || got.header.Get("Cache-Control") != cacheControl || got.header.Get("Vary") != "Accept-Encoding" {
		t.Errorf("%s: HTTP %d, header %v", path, got.code, got.header)
	}
	return got.header.Get("ETag")
}

// The tag is made of the commit, the question with its fields, and the encoding.
func TestTags(t *testing.T) {
	one, other := Release{Commit: "1111111111111111111111111111111111111111"}, Release{Commit: "2222222222222222222222222222222222222222"}
	server := startAs(t, one)
	seen := map[string]string{}
	for _, q := range []struct{ name, path, accept string }{
		{"whole", ringQuery, "identity"},
		{"compressed", ringQuery, "gzip"},
		{"in part", ringQuery + "&fields=summary", "identity"},
		{"in another part", ringQuery + "&fields=sources", "identity"},
		{"another question", ringQuery + "&with_outline=true", "identity"},
		{"another method", castOnQuery, "identity"},
	} {
		tag := server.tagOf(t, q.path, q.accept)
		if first, known := seen[tag]; known || len(tag) < 10 {
			t.Errorf("%s: tag %q, as %s", q.name, tag, first)
		}
		seen[tag] = q.name
	}
	// Two methods may be asked the same words.
	words := "?gauge.stitches=22&gauge.rows=30&body_stitches=200"
	if a, b := server.tagOf(t, "/v1/yoke:planCircularYoke"+words, "gzip"), server.tagOf(t, "/v1/yoke:planRaglan"+words, "gzip"); a == b {
		t.Errorf("%s for two methods", a)
	}
	// A short answer is the same whether or not compression is accepted.
	if a, b := server.tagOf(t, castOnQuery, "gzip"), server.tagOf(t, castOnQuery, "identity"); a != b {
		t.Errorf("%s and %s for the same bytes", a, b)
	}
	// Another process of the same commit says the same, also of another version;
	// another commit says something else.
	again, next := startAs(t, Release{Version: "v2", Commit: one.Commit}), startAs(t, other)
	for _, path := range []string{ringQuery, castOnQuery} {
		tag := server.tagOf(t, path, "gzip")
		if same := again.tagOf(t, path, "gzip"); same != tag {
			t.Errorf("%s: %s and %s for one commit", path, tag, same)
		}
		if different := next.tagOf(t, path, "gzip"); different == tag {
			t.Errorf("%s: %s for two commits", path, tag)
		}
	}
}

// Without a commit, or with files that differ from it, nothing is known of what
// the answer depends on.
func TestNoCommitNoTag(t *testing.T) {
	for _, release := range []Release{{}, {Version: "v1.2.3"}, {Commit: testRelease.Commit + "+dirty"}} {
		server := startAs(t, release)
		if tag := server.tagOf(t, castOnQuery, "gzip"); tag != "" {
			t.Errorf("%+v: tag %s", release, tag)
		}
		if head := server.send(t, "HEAD", castOnQuery, ""); head.header.Get("ETag") != "" || head.code != 200 {
			t.Errorf("%+v: HTTP %d, header %v", release, head.code, head.header)
		}
		// What is in the program does not depend on where it came from.
		if tag := server.tagOf(t, "/openapi.json", "gzip"); tag == "" {
			t.Error("the document has no tag")
		}
	}
}

// A caller who has the answer is told so, and no more.
func TestNotModified(t *testing.T) {
	server := start(t)
	for _, path := range []string{ringQuery, castOnQuery + "&fields=summary", "/openapi.json"} {
		for _, accept := range []string{"gzip", "identity"} {
			tag := server.tagOf(t, path, accept)
			for _, known := range []string{tag, `"other", ` + tag, "*"} {
				for _, method := range []string{"GET", "HEAD"} {
					got := server.send(t, method, path, "", "Accept-Encoding", accept, "If-None-Match", known)
					h := got.header
					if got.code != 304 || len(got.body) > 0 || h.Get("ETag") != tag || h.Get("Vary") != "Accept-Encoding" ||
						h.Get("Cache-Control") != cacheControl || h.Get("Content-Encoding") != "" {
						t.Errorf("%s %s, %s: HTTP %d, header %v", method, path, known, got.code, h)
					}
				}
			}
		}
	}
}

// The tag of another answer is not known, and a refusal is never known already, and
// never kept.
func TestModified(t *testing.T) {
	server := start(t)
	for _, c := range []struct{ path, accept, known string }{
		{ringQuery, "gzip", server.tagOf(t, ringQuery, "identity")},
		{ringQuery, "identity", server.tagOf(t, ringQuery, "gzip")},
		{ringQuery + "&fields=summary", "identity", server.tagOf(t, ringQuery, "identity")},
	} {
		if got := server.send(t, "GET", c.path, "", "Accept-Encoding", c.accept, "If-None-Match", c.known); got.code != 200 {
			t.Errorf("%s in %s: HTTP %d for the tag of another answer", c.path, c.accept, got.code)
		}
	}
	got := server.send(t, "GET", castOnPath+"?width_cm=-1", "", "If-None-Match", "*")
	if got.code != 400 || got.header.Get("ETag") != "" || got.header.Get("Cache-Control") != "no-store" {
		t.Errorf("HTTP %d, header %v", got.code, got.header)
	}
}
