package pattern

import _ "embed" // the text

// Grammar says what is read, for callers who do not read Go: Markdown, the file that lies
// beside this one.
//
//go:embed grammar.md
var Grammar string
