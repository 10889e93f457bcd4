package web_test

import (
	"io"
	"net/http"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// What a link spells otherwise than the question does is said, where it would be
// another question that is answered; a link without fault says nothing.
func TestLinksSayWhatIsLeftOut(t *testing.T) {
	in, base := browser(t), serve(t, "")
	p := open(t, in)
	const said = `[...document.querySelectorAll('header [role=alert]')].map((p) => p.textContent).join()`
	for _, c := range []struct{ link, want string }{
		{taper, ""},
		{taper + "&hieght_rows=3&gauge.stiches=20", "No field of this question, and left out: hieght_rows, gauge.stiches"},
	} {
		p.run(chromedp.Navigate(base + "/ask/shaping/planTaper" + c.link))
		p.until(answered)
		if got := get(p, chromedp.Evaluate[string](said)); got != c.want {
			t.Errorf("%s: %q, want %q", c.link, got, c.want)
		}
	}
}

// Where no page is, a person is shown one in the house's dress that leads on.
func TestLostPage(t *testing.T) {
	base := serve(t, "")
	ask, err := http.NewRequest(http.MethodGet, base+"/ask/shaping/planTapre", nil)
	if err != nil {
		t.Fatal(err)
	}
	ask.Header.Set("Accept", "text/html")
	reply, err := http.DefaultClient.Do(ask)
	if err != nil {
		t.Fatal(err)
	}
	defer reply.Body.Close()
	body, err := io.ReadAll(reply.Body)
	if err != nil {
		t.Fatal(err)
	}
	if reply.StatusCode != http.StatusNotFound || reply.Header.Get("Cache-Control") != "no-store" {
		t.Errorf("%s, %q", reply.Status, reply.Header.Get("Cache-Control"))
	}
	if !strings.Contains(string(body), `href="/"`) || strings.Contains(string(body), "{{") {
		t.Errorf("%s", body)
	}
	in := browser(t)
	p := open(t, in)
	p.run(chromedp.Navigate(base + "/ask/shaping/planTapre"))
	p.until(`getComputedStyle(document.querySelector('h1')).margin.startsWith('12')`)
}
