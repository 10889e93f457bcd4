package web

import (
	"bytes"
	"encoding/json"
	"fmt"
)

// Embed is the path of the script that puts a question on a page of somebody else.
const Embed = "/embed/v1.js"

// addEmbed makes the classic script: the element, within a function that knows where the
// descriptions lie and how it looks, so that the page around it sees nothing. It is asked
// for again soon, since its name stays when the release changes.
func (s *Site) addEmbed(base string, files map[string][]byte) error {
	css, err := json.Marshal(string(files["ask.css"]))
	if err != nil {
		return err
	}
	var b bytes.Buffer
	fmt.Fprintf(&b, "(() => {\n'use strict';\nconst files = %q;\nconst css = %s;\n%s})();\n", base, css, files["embed.js"])
	s.files[Embed] = File{Data: b.Bytes(), Header: map[string]string{
		"Content-Type": typeOf(Embed), "Cache-Control": "public, max-age=300", "Cross-Origin-Resource-Policy": "cross-origin",
	}}
	return nil
}
