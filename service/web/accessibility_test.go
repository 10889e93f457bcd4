package web_test

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/accessibility"
	"github.com/chromedp/chromedp"
)

// A heard node is what an aid is told of a part of a page, in the order of reading.
type heard struct {
	role, name, description string
	within                  string // the names of the groups it lies in
	properties              map[string]string
}

func told(v *accessibility.Value) string {
	if v == nil || len(v.Value) == 0 {
		return ""
	}
	var text any
	if err := json.Unmarshal(v.Value, &text); err != nil {
		return ""
	}
	if s, ok := text.(string); ok {
		return s
	}
	return string(v.Value)
}

// tree is what an aid is told of the page, from its beginning to its end.
func (p *tab) tree() []heard {
	p.Helper()
	all, err := chromedp.Call(p.ctx, accessibility.GetFullAXTree, accessibility.GetFullAXTreeParams{})
	if err != nil {
		p.Fatal(err)
	}
	byID := map[accessibility.NodeID]*accessibility.Node{}
	for _, n := range all.Nodes {
		byID[n.NodeID] = n
	}
	var list []heard
	var walk func(*accessibility.Node, string)
	walk = func(n *accessibility.Node, within string) {
		if n == nil {
			return
		}
		if !n.Ignored {
			h := heard{role: told(n.Role), name: told(n.Name), description: told(n.Description), within: within,
				properties: map[string]string{}}
			for _, property := range n.Properties {
				h.properties[string(property.Name)] = told(property.Value)
			}
			list = append(list, h)
			if h.role == "group" {
				within += h.name + ", "
			}
		}
		for _, child := range n.ChildIDs {
			walk(byID[child], within)
		}
	}
	walk(all.Nodes[0], "")
	return list
}

func of(list []heard, role string) (found []heard) {
	for _, h := range list {
		if h.role == role {
			found = append(found, h)
		}
	}
	return found
}

// What an aid is told of every page: one heading of the first level and none that leaves
// a level out, landmarks in the order of reading, a name for whatever does something, the
// unit with its number, drawings in words, heads of columns and rows, and answers and faults
// as they come. No screen reader has been listened to.
func TestTold(t *testing.T) {
	t.Parallel() // it mostly waits for the browser
	in, base := browser(t), serve(t, "")
	p := open(t, in)
	for _, path := range append([]string{""}, questions(t)...) {
		if path != "" {
			path = "ask/" + path
		}
		p.run(chromedp.EmulateViewport(1200, 900), chromedp.Navigate(base+"/"+path))
		p.until(answered + ` || [...document.querySelectorAll('.fault')].some((f) => !f.hidden)`)
		list := p.tree()
		checkOrder(t, path, list)
		checkNames(t, path, list)
		if drawn := p.text(`document.querySelectorAll('.drawing').length`); drawn != "0" {
			if images := of(list, "image"); len(images) != 1 || !strings.HasPrefix(images[0].name, "Drawing. ") || len(images[0].name) < 30 {
				t.Errorf("/%s: drawings %+v", path, images)
			}
		}
		if live := of(list, "status"); len(live) != 2 || live[0].properties["live"] != "polite" {
			t.Errorf("/%s: %+v is said as it comes", path, live)
		}
		rows, columns, heads := len(of(list, "row")), len(of(list, "columnheader")), len(of(list, "rowheader"))
		if tables := len(of(list, "table")); tables > 0 && (columns < 2*tables || heads != rows-tables) {
			t.Errorf("/%s: %d tables have %d rows, with %d heads of columns and %d of rows", path, tables, rows, columns, heads)
		}
	}
	p.run(chromedp.Navigate(base + "/ask/gauge/computeCastOn"))
	p.until(answered)
	width := func() heard {
		t.Helper()
		for _, h := range of(p.tree(), "textbox") {
			if h.name == "Width" {
				return h
			}
		}
		t.Fatal("no field is called Width")
		return heard{}
	}
	if h := width(); !strings.HasPrefix(h.description, "cm") || h.properties["invalid"] != "false" {
		t.Errorf("%+v", h)
	}
	p.run(typed("width_cm", "0.01"))
	p.until(`document.querySelector('[data-path="width_cm"]').getAttribute('aria-invalid') === 'true'`)
	if h := width(); !strings.Contains(h.description, "Must be from 0.1 cm to 1000 cm") || h.properties["invalid"] != "true" {
		t.Errorf("%+v", h)
	}
	p.checked(true)
}

// checkOrder checks landmarks and headings.
func checkOrder(t *testing.T, path string, list []heard) {
	t.Helper()
	at := -1
	for _, role := range []string{"banner", "main", "form", "region", "contentinfo"} {
		next := slices.IndexFunc(list, func(h heard) bool {
			return h.role == role && (role != "region" || strings.HasPrefix(h.name, "Answer: "))
		})
		if next <= at {
			t.Errorf("/%s: the %s is the %dth thing, after the %dth", path, role, next, at)
		}
		at = next
	}
	level, first := "1", 0
	for _, h := range of(list, "heading") {
		if h.properties["level"] == "1" {
			first++
		}
		if h.properties["level"] > level && h.properties["level"] != string(level[0]+1) {
			t.Errorf("/%s: %q is of level %s after %s", path, h.name, h.properties["level"], level)
		}
		level = h.properties["level"]
	}
	if first != 1 {
		t.Errorf("/%s has %d headings of the first level", path, first)
	}
}

// checkNames checks that what does something has a name, and what is chosen from one of its own.
func checkNames(t *testing.T, path string, list []heard) {
	t.Helper()
	names := map[string]int{}
	for _, role := range []string{"textbox", "combobox", "checkbox", "radio", "button", "link", "form", "image", "region"} {
		for _, h := range of(list, role) {
			if h.name == "" {
				t.Errorf("/%s: a %s without a name, %+v", path, role, h)
			}
			names[role+" "+h.name+" in "+h.within]++
		}
	}
	for name, n := range names {
		if n > 1 && (strings.HasPrefix(name, "combobox") || strings.HasPrefix(name, "textbox")) {
			t.Errorf("/%s: %d times %s", path, n, name)
		}
	}
}

// An answer is said once, when it is another one, and what was wrong beside its field; nothing
// is said again because something was typed that changes nothing.
func TestSaidOnce(t *testing.T) {
	in, base := browser(t), serve(t, "")
	p := open(t, in)
	p.run(chromedp.EmulateViewport(1200, 900), chromedp.Navigate(base+"/ask/shaping/planTaper"+taper))
	p.until(answered)
	p.run(chromedp.Evaluate[chromedp.Void](`window.said = []; window.replies = 0; window.fetch = ((ask) => async (...what) => {
		const reply = await ask(...what); replies++; return reply; })(window.fetch);
		for (const live of document.querySelectorAll('[role=status], [role=alert], [aria-live]')) new MutationObserver((changes) => {
			if (changes.some((c) => c.addedNodes.length)) said.push(live.textContent); }).observe(live, { childList: true, subtree: true })`))
	p.run(typed("end_stitches", "80"))
	p.until(`replies === 1 && said.length > 0 && ` + answered)
	p.run(typed("end_stitches", "80.0"))
	p.until(`replies === 2`)
	p.run(typed("end_stitches", "82"))
	p.until(`replies === 3 && said.at(-1).startsWith('From 48 to 82')`)
	if got := p.text(`said.map((s) => s.slice(0, 13)).join('|')`); got != "From 48 to 80|From 48 to 82" {
		t.Errorf("said: %s", got)
	}
	p.checked(false)
}

// still tells what moves by itself, or would.
const still = `[...document.querySelectorAll('*')].filter((e) => { const s = getComputedStyle(e);
	return s.animationName !== 'none' || parseFloat(s.transitionDuration) > 0 || s.scrollBehavior !== 'auto'; })
	.map((e) => e.outerHTML.slice(0, 60)).concat(document.getAnimations().map(String)).join('; ')`

// Nothing moves where a visitor wants no motion, while an answer comes and when it has come;
// nor anywhere else.
func TestNoMotion(t *testing.T) {
	in, base := browser(t), serve(t, "")
	p := open(t, in)
	for _, wish := range []string{"reduce", "no-preference"} {
		p.seen("prefers-reduced-motion", wish)
		for _, path := range []string{"/", "/ask/yoke/planCircularYoke", "/ask/pattern/checkInstructions", "/reference/gauge/computeCastOn"} {
			p.run(chromedp.EmulateViewport(375, 800), chromedp.Navigate(base+path))
			for _, then := range []string{`document.querySelector('main')`, answered + ` || ` + tried} {
				p.until(then)
				if moves := p.text(still); moves != "" {
					t.Errorf("%s, %s: %s", path, wish, moves)
				}
			}
		}
	}
	p.run(chromedp.Navigate(base + "/ask/yoke/planCircularYoke"))
	p.until(answered)
	// The link to the answer is there at once, and does not glide.
	p.run(chromedp.Click(chromedp.CSS(`.to-answer`)))
	if got := p.text(`Math.abs(document.getElementById('answer').getBoundingClientRect().top) < 1`); got != "true" {
		t.Error("the link to the answer does not lead there at once")
	}
	p.checked(false)
}
