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
	var walk func(*accessibility.Node)
	walk = func(n *accessibility.Node) {
		if n == nil {
			return
		}
		if !n.Ignored {
			h := heard{role: told(n.Role), name: told(n.Name), description: told(n.Description), properties: map[string]string{}}
			for _, property := range n.Properties {
				h.properties[string(property.Name)] = told(property.Value)
			}
			list = append(list, h)
		}
		for _, child := range n.ChildIDs {
			walk(byID[child])
		}
	}
	walk(all.Nodes[0])
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

// What an aid is told of five pages: one heading of the first level and none that leaves
// a level out, landmarks in the order of reading, a name for whatever does something, the
// unit with its number, drawings in words, and answers and faults as they come. No screen
// reader has been listened to.
func TestTold(t *testing.T) {
	in, base := browser(t), serve(t, "")
	p := open(t, in)
	for _, path := range []string{"/", "/ask/gauge/computeCastOn", "/ask/shaping/planTaper", "/ask/yarn/estimateYarn",
		"/ask/pattern/checkInstructions"} {
		p.run(chromedp.EmulateViewport(1200, 900), chromedp.Navigate(base+path))
		p.until(answered)
		list := p.tree()
		order := []string{"banner", "main", "form", "region", "contentinfo"}
		at := -1
		for _, role := range order {
			next := slices.IndexFunc(list, func(h heard) bool {
				return h.role == role && (role != "region" || strings.HasPrefix(h.name, "Answer: "))
			})
			if next <= at {
				t.Errorf("%s: the %s is the %dth thing, after the %dth", path, role, next, at)
			}
			at = next
		}
		level, first := "1", 0
		for _, h := range of(list, "heading") {
			if h.properties["level"] == "1" {
				first++
			}
			if h.properties["level"] > level && h.properties["level"] != string(level[0]+1) {
				t.Errorf("%s: %q is of level %s after %s", path, h.name, h.properties["level"], level)
			}
			level = h.properties["level"]
		}
		if first != 1 {
			t.Errorf("%s has %d headings of the first level", path, first)
		}
		names := map[string]int{}
		for _, role := range []string{"textbox", "combobox", "checkbox", "radio", "button", "link", "form", "image", "region"} {
			for _, h := range of(list, role) {
				if h.name == "" {
					t.Errorf("%s: a %s without a name, %+v", path, role, h)
				}
				names[role+h.name]++
			}
		}
		for name, n := range names {
			// Those of a list's items lie in groups that are numbered.
			if n > 1 && strings.HasPrefix(name, "combobox") && path != "/ask/yarn/estimateYarn" {
				t.Errorf("%s: %d times %s", path, n, name)
			}
		}
		if strings.HasPrefix(path, "/ask/shaping") {
			if images := of(list, "image"); len(images) != 1 || !strings.HasPrefix(images[0].name, "Drawing. ") || len(images[0].name) < 40 {
				t.Errorf("%s: drawings %+v", path, images)
			}
		}
		if live := of(list, "status"); len(live) != 2 || live[0].properties["live"] != "polite" {
			t.Errorf("%s: %+v is said as it comes", path, live)
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
