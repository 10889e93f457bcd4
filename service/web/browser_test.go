package web_test

import (
	"context"
	"flag"
	"fmt"
	"io"
	"log/slog"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
	"github.com/prometheus/client_golang/prometheus"

	"example.com/knitmath/service"
	"example.com/knitmath/service/caller"
)

var (
	browserPath = flag.String("browser", "", "the Chromium to look at the pages with; without it the one that is installed")
	screenshots = flag.String("screenshots", "", "a folder for pictures of the pages, to be looked at")
	axePath     = flag.String("axe", "", "axe.min.js of axe-core, to look for what keeps people out")
)

// patience is how long anything may take. What is waited for comes within a second
// where nothing else runs.
const patience = 60 * time.Second

// shared is the browser of all tests: to start one takes longer than most of them.
var shared struct {
	once  sync.Once
	ctx   context.Context
	close func()
	err   error
}

func TestMain(m *testing.M) {
	code := m.Run()
	if shared.close != nil {
		shared.close()
	}
	os.Exit(code)
}

// browser is a browser, or skips the test where there is none. Its tabs know nothing of one
// another: every service has an origin of its own.
func browser(t testing.TB) context.Context {
	t.Helper()
	path := *browserPath
	for _, name := range []string{"chromium", "chromium-browser", "google-chrome"} {
		if found, err := exec.LookPath(name); path == "" && err == nil {
			path = found
		}
	}
	if path == "" {
		t.Skip("*** NOT CHECKED: no page was opened, for want of a browser: apt-get install chromium ***")
	}
	shared.once.Do(func() { shared.ctx, shared.close, shared.err = startAnyhow(path) })
	if shared.err != nil {
		t.Fatal(shared.err)
	}
	return shared.ctx
}

// startAnyhow starts a browser, anew if it ends as it starts: once in some hundred times
// one does, and no test would tell anything.
func startAnyhow(path string) (ctx context.Context, leave func(), err error) {
	for range 3 {
		if ctx, leave, err = start(path); err == nil {
			return ctx, leave, nil
		}
		leave()
	}
	return nil, nil, err
}

// start starts a browser, and gives what closes it.
func start(path string) (context.Context, func(), error) {
	options := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(path), chromedp.NoSandbox,
		chromedp.WSURLReadTimeout(patience), chromedp.Flag("lang", "en-GB"))
	ctx, stop := chromedp.NewExecAllocator(context.Background(), options...)
	ctx, leave := chromedp.NewContext(ctx)
	return ctx, func() { leave(); stop() }, chromedp.Do(ctx)
}

// serve is a service on a free port, whose answers pages of an origin may read.
func serve(t testing.TB, origins string) string {
	t.Helper()
	return serveWith(t, func(c *service.Config) { c.Callers.Origins = origins })
}

// serveWith is a service with a configuration of its own.
func serveWith(t testing.TB, configure func(*service.Config)) string {
	t.Helper()
	config := service.Config{
		GRPCAddr: "127.0.0.1:0", HTTPAddr: "127.0.0.1:0", AdminAddr: "127.0.0.1:0", ShutdownTimeout: 5 * time.Second,
		Callers: caller.Default,
		Logger:  slog.New(slog.NewTextHandler(io.Discard, nil)), Registry: prometheus.NewRegistry(),
	}
	configure(&config)
	server, err := service.Listen(config)
	if err != nil {
		t.Fatal(err)
	}
	ctx, cancel := context.WithCancel(context.Background())
	ended := make(chan error, 1)
	go func() { ended <- server.Serve(ctx) }()
	t.Cleanup(func() {
		cancel()
		if err := <-ended; err != nil {
			t.Error(err)
		}
	})
	return "http://" + server.HTTPAddr().String()
}

// tab is a page in a browser, with what went wrong on it.
type tab struct {
	testing.TB
	ctx context.Context

	mu      sync.Mutex
	wrong   []string
	refused int // questions that were answered with faults, which a test may mean
}

func open(t testing.TB, in context.Context) *tab {
	t.Helper()
	ctx, cancel := chromedp.NewContext(in)
	t.Cleanup(cancel)
	p := &tab{TB: t, ctx: ctx}
	if err := chromedp.Listen(ctx, p.hear); err != nil {
		t.Fatal(err)
	}
	call(p, network.Enable, network.EnableParams{})
	call(p, log.Enable, cdp.Empty{})
	return p
}

// hear notes errors in the console, failed requests, and refusals apart.
func (p *tab) hear(event any) {
	p.mu.Lock()
	defer p.mu.Unlock()
	switch e := event.(type) {
	case *runtime.EventExceptionThrown:
		p.wrong = append(p.wrong, fmt.Sprintf("exception: %+v", e.ExceptionDetails.Exception))
	case *runtime.EventConsoleAPICalled:
		if e.Type == "error" || e.Type == "warning" {
			p.wrong = append(p.wrong, fmt.Sprintf("console: %+v", e.Args[0]))
		}
	case *log.EventEntryAdded:
		if e.Entry.Level == "error" && e.Entry.Source != "network" {
			p.wrong = append(p.wrong, "log: "+e.Entry.Text)
		}
	case *network.EventLoadingFailed:
		if !e.Canceled {
			p.wrong = append(p.wrong, "request failed: "+e.ErrorText)
		}
	case *network.EventResponseReceived:
		switch {
		case e.Response.Status == http.StatusBadRequest && strings.Contains(e.Response.URL, "/v1/"):
			p.refused++
		case e.Response.Status >= 400:
			p.wrong = append(p.wrong, fmt.Sprintf("HTTP %d for %s", e.Response.Status, e.Response.URL))
		}
	}
}

// run does things on the page.
func (p *tab) run(actions ...chromedp.Action[chromedp.Void]) {
	p.Helper()
	get(p, chromedp.Steps(actions...))
}

// get does a thing on the page that has a result.
func get[T any](p *tab, action chromedp.Action[T]) T {
	p.Helper()
	ctx, cancel := context.WithTimeout(p.ctx, patience)
	defer cancel()
	got, err := chromedp.Run(ctx, action)
	if err != nil {
		p.Fatal(err)
	}
	return got
}

// call gives the browser a command of its protocol.
func call[P, R any](p *tab, command cdp.Command[P, R], params P) {
	p.Helper()
	if _, err := chromedp.Call(p.ctx, command, params); err != nil {
		p.Fatal(err)
	}
}

// until waits for a condition in the page's own words.
func (p *tab) until(condition string) {
	p.Helper()
	ctx, cancel := context.WithTimeout(p.ctx, patience)
	defer cancel()
	poll := chromedp.Poll[chromedp.Void](condition, chromedp.WithPollingInterval(50*time.Millisecond), chromedp.WithPollingTimeout(patience))
	_, err := chromedp.Run(ctx, poll)
	for err != nil && ctx.Err() == nil && strings.Contains(err.Error(), "Cannot find context") {
		_, err = chromedp.Run(ctx, poll) // the page before went while it was asked, where the browser is busy
	}
	if err != nil {
		p.Fatalf("%s: %v\nthe page says: %s", condition, err, p.text("document.body.innerText"))
	}
}

// text is a value of the page.
func (p *tab) text(expression string) string {
	p.Helper()
	return get(p, chromedp.Evaluate[string]("String("+expression+")"))
}

// checked ends a test of a page: nothing went wrong but what was meant to be refused.
func (p *tab) checked(refused bool) {
	p.Helper()
	p.mu.Lock()
	defer p.mu.Unlock()
	for _, wrong := range p.wrong {
		p.Error(wrong)
	}
	if p.refused > 0 != refused {
		p.Errorf("%d questions were refused", p.refused)
	}
}

// picture saves how the page looks.
func (p *tab) picture(name string) {
	p.Helper()
	if *screenshots == "" {
		return
	}
	// The browser measures how high the page is when it has drawn it.
	get(p, chromedp.Evaluate[chromedp.Void](`new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn, 50)))`,
		chromedp.EvalAwaitPromise))
	png := get(p, chromedp.FullScreenshot(100))
	if err := os.WriteFile(filepath.Join(*screenshots, name+".png"), png, 0o600); err != nil {
		p.Fatal(err)
	}
}

// pictures saves how the page looks on a desk by day and on a telephone by night.
func (p *tab) pictures(name string) {
	p.Helper()
	if *screenshots == "" {
		return
	}
	for _, look := range []struct {
		name, scheme string
		wide         int
	}{{"", "light", 1200}, {"-telephone", "dark", 375}} {
		p.seen("prefers-color-scheme", look.scheme)
		p.run(chromedp.EmulateViewport(int64(look.wide), 900))
		p.picture(name + look.name)
	}
	p.seen("prefers-color-scheme", "light")
}

// seen is a wish of the visitor's, as a machine tells it to pages.
func (p *tab) seen(feature, value string) {
	p.Helper()
	call(p, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: []*emulation.MediaFeature{{Name: feature, Value: value}}})
}

// answered is true once there is an answer to what was asked last.
const answered = `document.querySelector('.answer .summary')?.textContent && !document.querySelector('.answer.stale') &&
	document.querySelector('.answer').ariaBusy === 'false' &&
	document.querySelector('.answer .fold') && !document.querySelector('.answer .fold').hidden`
