package web_test

import (
	"context"
	"encoding/json"
	"net/http"
	"strconv"
	"strings"
	"testing"

	permission "github.com/chromedp/cdproto/browser"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
)

// A taper, as its page's address and the service's own have it.
const taper = "?start_stitches=48&end_stitches=76&height_rows=120"

// press presses the button below the answer that is called so.
func press(name string) chromedp.Action[chromedp.Void] {
	return chromedp.Evaluate[chromedp.Void](
		`[...document.querySelectorAll('.tools button')].find((b) => b.textContent === '` + name + `').click()`)
}

// permit lets pages use the clipboard, or does not.
func permit(t *testing.T, in context.Context, setting permission.PermissionSetting) {
	t.Helper()
	for _, name := range []string{"clipboard-read", "clipboard-write"} {
		_, err := chromedp.CallBrowser(in, permission.SetPermission, permission.SetPermissionParams{
			Permission: &permission.PermissionDescriptor{Name: name}, Setting: setting})
		if err != nil {
			t.Fatal(err)
		}
	}
}

func copied(p *tab) string {
	p.Helper()
	return get(p, chromedp.Evaluate[string](`navigator.clipboard.readText()`, chromedp.EvalAwaitPromise))
}

// What is copied is the answer as the service gave it, its directions numbered; what is
// shared is an address that shows the same, with the rows that are done.
func TestCopyingAndSharing(t *testing.T) {
	in, base := browser(t), serve(t, "")
	permit(t, in, permission.PermissionSettingGranted)
	p := open(t, in)
	p.run(chromedp.EmulateViewport(1200, 900), chromedp.Navigate(base+"/ask/shaping/planTaper"+taper))
	p.until(answered)
	p.run(press("Copy"))
	p.until(`document.querySelector('.says').textContent === 'The answer is copied.'`)
	reply, err := http.Get(base + "/v1/shaping:planTaper" + taper)
	if err != nil {
		t.Fatal(err)
	}
	defer reply.Body.Close()
	var answer struct {
		Summary    string
		Directions []string
	}
	if err := json.NewDecoder(reply.Body).Decode(&answer); err != nil || len(answer.Directions) < 3 {
		t.Fatal(answer, err)
	}
	want := answer.Summary
	for i, row := range answer.Directions {
		want += "\n" + strconv.Itoa(i+1) + ". " + row
	}
	if got := copied(p); !strings.HasPrefix(got, want) {
		t.Errorf("copied\n%s\nwant\n%s", got, want)
	}

	p.run(chromedp.Click(chromedp.CSS(`.directions li:nth-child(2) input`)), press("Share a link"))
	p.until(`document.querySelector('.says').textContent.startsWith('The link is copied')`)
	link := copied(p)
	if link != base+"/ask/shaping/planTaper"+taper+"#done=2" {
		t.Errorf("the link is %s", link)
	}
	other := open(t, in)
	other.run(chromedp.Navigate(link))
	other.until(answered)
	if got := other.text(`document.querySelector('.summary').textContent +
		[...document.querySelectorAll('.directions input')].findIndex((i) => i.checked)`); got != answer.Summary+"1" {
		t.Errorf("whoever opens the link sees %s", got)
	}
	other.checked(false)

	permit(t, in, permission.PermissionSettingDenied)
	p.run(press("Copy"))
	p.until(`document.querySelector('.says').textContent.includes('does not allow copying')`)
	p.checked(false)
}

// Where the machine has a way to share, it is taken, and whoever thinks better of it is told
// nothing. The other buttons print, and clear the page and its address.
func TestSharingPrintingClearing(t *testing.T) {
	in, base := browser(t), serve(t, "")
	p := open(t, in)
	call(p, page.AddScriptToEvaluateOnNewDocument, page.AddScriptToEvaluateOnNewDocumentParams{Source: `window.shared = []; window.printed = 0;
		navigator.share = async (what) => { shared.push(what); if (shared.length > 1) throw new DOMException('', 'AbortError'); };
		window.print = () => { printed++; };`})
	p.run(chromedp.EmulateViewport(1200, 900), chromedp.Navigate(base+"/ask/shaping/planTaper"+taper))
	p.until(answered)
	p.run(press("Share a link"), press("Share a link"))
	p.until(`shared.length === 2`)
	if got := p.text(`[shared[0].url, shared[0].title, document.querySelector('.says').textContent].join('|')`); got !=
		base+"/ask/shaping/planTaper"+taper+"|"+p.text(`document.title`)+"|" {
		t.Errorf("shared: %s", got)
	}
	p.run(press("Print"))
	if got := p.text(`printed`); got != "1" {
		t.Errorf("printed %s times", got)
	}
	p.run(press("Clear"))
	p.until(`document.querySelector('.answer.stale') && location.search === '' &&
		document.querySelector('.summary').textContent.startsWith('Fill in what needs a value')`)
	if got := p.text(`[...document.querySelectorAll('.asks input[inputmode]')].map((i) => i.value).join('')`); got != "" {
		t.Errorf("cleared: %s", got)
	}
	p.checked(true)
}
