package web_test

import (
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"

	"example.com/knitmath/service"
)

const tried = `document.querySelector('.trying [role=status]')?.textContent.startsWith('200 OK')`

// Every page for developers opens on a question that is answered, fits a narrow
// screen and keeps nobody out.
func TestEveryReferencePage(t *testing.T) {
	t.Parallel() // it mostly waits for the browser
	in, base, axe := browser(t), serve(t, ""), readAxe(t)
	p := open(t, in)
	for _, question := range append([]string{""}, questions(t)...) {
		name := strings.TrimSuffix("reference."+strings.ReplaceAll(question, "/", "."), ".")
		p.run(chromedp.EmulateViewport(1200, 900), chromedp.Navigate(strings.TrimSuffix(base+"/reference/"+question, "/")))
		// Without an example of its own a question may be refused.
		if _, err := os.Stat("questions/" + strings.ReplaceAll(question, "/", ".") + ".json"); question != "" && err == nil {
			p.until(tried)
		}
		checkAxe(p, axe, name)
		checkReflow(p, name)
	}
}

// What is tried shows request and reply, and each language's recipe asks the same.
func TestTrying(t *testing.T) {
	in, grpc := browser(t), freeAddress(t)
	base := serveWith(t, func(c *service.Config) { c.GRPCAddr = grpc })
	const asks = "gauge.stitches=22&gauge.rows=30&width_cm=50"
	p := open(t, in)
	p.run(chromedp.EmulateViewport(1200, 900), chromedp.Navigate(base+"/ask/gauge/computeCastOn?"+asks))
	p.until(answered)
	p.run(chromedp.Navigate(p.text(`document.querySelector('.developers').href`)))
	p.until(tried + ` && location.pathname.startsWith('/reference/')`)
	want := asked(t, base, "/v1/gauge:computeCastOn?"+asks)
	replied := `JSON.parse(document.querySelector('.trying [aria-label="The reply"]').textContent).summary`
	if got := p.text(replied); got != want {
		t.Errorf("the reply says %s, want %s", got, want)
	}
	write := func(text string) chromedp.Action[chromedp.Void] {
		return chromedp.Evaluate[chromedp.Void](`(() => { const f = document.getElementById('asked'); f.value = ` + quote(t, text) +
			`; f.dispatchEvent(new Event('input')); })()`)
	}
	p.run(write(`{"gauge": {`))
	p.until(`document.getElementById('asked-fault').textContent.startsWith('This is not JSON yet')`)
	p.picture("trying-fault")
	p.run(write(`{"gauge": {"stitches": 22, "rows": 30, "over_cm": 10}, "height_cm": 40}`),
		chromedp.Click(chromedp.CSS(`.trying .does button`)))
	want = asked(t, base, "/v1/gauge:computeCastOn?gauge.stitches=22&gauge.rows=30&height_cm=40")
	p.until(replied + ` === ` + quote(t, want))

	recipe := func(language string) string {
		p.run(chromedp.Click(chromedp.CSS(`.trying [value=` + language + `]`)))
		return p.text(`document.querySelector('.trying [aria-label="The program"]').textContent`)
	}
	for _, language := range []string{"TypeScript", "Kotlin", "Swift"} { // README's TypeScript is compiled; these say the same.
		if text := recipe(language); !strings.Contains(text, "height_cm") || !strings.Contains(strings.ToLower(text), "computecaston") {
			t.Errorf("%s: %s", language, text)
		}
	}
	checkRecipe(t, "sh", "curl.sh", recipe("curl"), want)
	checkRecipe(t, "python3", "ask.py", recipe("Python"), want)
	checkRecipe(t, "go", "main.go", strings.Replace(recipe("Go"), "localhost:50051", grpc, 1), want)
	p.checked(false)
}

func quote(t *testing.T, text string) string {
	t.Helper()
	data, err := json.Marshal(text)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// checkRecipe runs a program as it was shown.
func checkRecipe(t *testing.T, with, name, program, want string) {
	t.Helper()
	if _, err := exec.LookPath(with); err != nil {
		t.Logf("*** NOT CHECKED: the recipe for %s, which is not installed ***", with)
		return
	}
	file := filepath.Join(t.TempDir(), name)
	if err := os.WriteFile(file, []byte(program), 0o600); err != nil {
		t.Fatal(err)
	}
	args := []string{file}
	if with == "go" {
		args = []string{"run", file}
	}
	out, err := exec.Command(with, args...).CombinedOutput()
	if err != nil || !strings.Contains(string(out), want) {
		t.Errorf("%s says %v:\n%s\nwant %s of\n%s", with, err, out, want, program)
	}
}
