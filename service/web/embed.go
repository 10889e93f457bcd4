package web

import (
	"bytes"
	"encoding/json"
	"fmt"
	"regexp"
	"strings"
)

// Embed is the path of the script that puts a question on a page of somebody else.
const Embed = "/embed/v1.js"

// embedded are the modules of the script, each after those it needs.
var embedded = []string{
	"element.js", "units.js", "words.js", "store.js", "control.js", "plain.js", "form.js",
	"canvas.js", "bars.js", "plan.js", "picture.js", "answer.js", "asking.js", "embed.js",
}

// ofPages are the modules that only the service's own pages need.
var ofPages = []string{"page.js", "try.js", "recipes.js"}

// imported is a line that brings in another module, exported the mark of what others use,
// remarked a line that is a remark alone, and indented what stands before a line: whoever
// wants to read finds them in the modules.
var (
	imported = regexp.MustCompile(`(?m)^import .*\n`)
	exported = regexp.MustCompile(`(?m)^export `)
	remarked = regexp.MustCompile(`(?m)^ *//.*\n|(?s)/\*.*?\*/\n?`)
	indented = regexp.MustCompile(`(?m)^ +`)
)

// addEmbed makes one classic script of the modules: within a function of its own,
// they see one another without imports, and the page around them sees nothing. It is
// asked for again soon, since its name stays when the release changes.
func (s *Site) addEmbed(base string, static map[string][]byte) error {
	var b bytes.Buffer
	css, err := json.Marshal(string(bare(static["ask.css"])))
	if err != nil {
		return err
	}
	fmt.Fprintf(&b, "(() => {\n'use strict';\nconst files = %q;\nconst css = %s;\n", base, css)
	for _, name := range embedded {
		text, ok := static[name]
		if !ok {
			return fmt.Errorf("the module %s is missing", name)
		}
		text = bare(imported.ReplaceAll(text, nil))
		b.Write(exported.ReplaceAll(text, nil))
	}
	b.WriteString("})();\n")
	s.files[Embed] = File{Data: []byte(strings.TrimSpace(b.String()) + "\n"), Header: map[string]string{
		"Content-Type": typeOf(Embed), "Cache-Control": "public, max-age=300", "Cross-Origin-Resource-Policy": "cross-origin",
	}}
	return nil
}

// bare is a file without what is only for reading it.
func bare(text []byte) []byte {
	return indented.ReplaceAll(remarked.ReplaceAll(text, nil), nil)
}
