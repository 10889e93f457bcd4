package web_test

import (
	"crypto/sha256"
	"fmt"
	"net"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"

	"example.com/knitmath/service"
)

// freeAddress is one that nobody listened at a moment ago. A key is bound to an
// origin, which has to be known before the service starts.
func freeAddress(t *testing.T) string {
	t.Helper()
	l, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	defer l.Close()
	return l.Addr().String()
}

// keyFile is a file with a publishable key, whose text is its name, for an origin.
func keyFile(t *testing.T, name, origin string) string {
	t.Helper()
	file := filepath.Join(t.TempDir(), "keys")
	line := fmt.Sprintf("%s %x publishable calls=20 origins=%s\n", name, sha256.Sum256([]byte(name)), origin)
	if err := os.WriteFile(file, []byte(line), 0o600); err != nil {
		t.Fatal(err)
	}
	return file
}

// Where questions need a key, a visitor of the service's own pages needs none: the
// pages show one.
func TestPagesShowTheirKey(t *testing.T) {
	in, at := browser(t), freeAddress(t)
	base := serveWith(t, func(c *service.Config) {
		c.HTTPAddr, c.Callers.Keys, c.Callers.PageKey = at, keyFile(t, "own-pages", "http://"+at), "own-pages"
	})
	if reply, err := http.Get(base + "/v1/gauge:listNeedleSizes"); err != nil || reply.StatusCode != http.StatusUnauthorized {
		t.Fatalf("without a key: %v %v", reply, err)
	}
	p := open(t, in)
	for _, path := range []string{"/", "/ask/gauge/computeCastOn", "/ask/yarn/estimateYarn"} {
		p.run(chromedp.Navigate(base + path))
		p.until(answered)
	}
	p.checked(false)
}

// An element on a shop's page shows the key of its attribute.
func TestEmbedShowsItsKey(t *testing.T) {
	in := browser(t)
	var base string
	shop := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		fmt.Fprintf(w, `<!doctype html><html lang="en"><title>A shop</title><link rel="icon" href="data:,">
<script src="%s/embed/v1.js" async></script><knitmath-question question="gauge/computeCastOn" key="shop-pages"></knitmath-question>`, base)
	}))
	defer shop.Close()
	base = serveWith(t, func(c *service.Config) { c.Callers.Keys = keyFile(t, "shop-pages", shop.URL) })
	p := open(t, in)
	p.run(chromedp.Navigate(shop.URL))
	p.until(`document.querySelector('knitmath-question').shadowRoot?.querySelector('.key')`)
	p.checked(false)
}

// A page of another origin may show a page of the service in a frame where the
// service was told so, and else may not.
func TestFramed(t *testing.T) {
	in := browser(t)
	var base string
	shop := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		fmt.Fprintf(w, `<!doctype html><html lang="en"><title>A shop</title><link rel="icon" href="data:,">
<iframe title="How many stitches" src="%s/ask/gauge/computeCastOn" onload="window.framed = true"></iframe>`, base)
	}))
	defer shop.Close()
	for by, shown := range map[string]bool{
		shop.URL: true, "https://a.example," + shop.URL: true, "*": true, "https://other.example,https://*.shop.example": false, "": false,
	} {
		base = serveWith(t, func(c *service.Config) { c.FramedBy = by })
		p := open(t, in)
		p.run(chromedp.Navigate(shop.URL))
		p.until(`window.framed`)
		p.mu.Lock()
		if refused := strings.Contains(fmt.Sprint(p.wrong), "frame-ancestors"); refused == shown || shown && len(p.wrong) > 0 {
			t.Errorf("framed by %q: %v", by, p.wrong)
		}
		p.mu.Unlock()
	}
}
