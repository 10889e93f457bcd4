package main

import (
	"strings"

	"example.com/knitmath/proto/document"
)

// prose makes running text of a comment: its lines are joined to paragraphs and
// points of lists, which readers of the document wrap at a width of their own.
func prose(comment string) string {
	var paragraphs []string
	for paragraph := range strings.SplitSeq(strings.TrimSpace(comment), "\n\n") {
		text := &strings.Builder{}
		for line := range strings.Lines(paragraph) {
			line = strings.Join(strings.Fields(line), " ")
			switch {
			case text.Len() == 0:
			case strings.HasPrefix(line, "- "):
				text.WriteByte('\n')
			default:
				text.WriteByte(' ')
			}
			text.WriteString(line)
		}
		paragraphs = append(paragraphs, text.String())
	}
	return strings.Join(paragraphs, "\n\n")
}

// firstSentence ends at the first full stop that a capital letter follows, or at
// the end of the paragraph.
func firstSentence(text string) string {
	text, _, _ = strings.Cut(text, "\n\n")
	for i := range text {
		if strings.HasPrefix(text[i:], ". ") && i+2 < len(text) && text[i+2] >= 'A' && text[i+2] <= 'Z' {
			return text[:i]
		}
	}
	return strings.TrimSuffix(text, ".")
}

// joinLines makes running text of the descriptions that the plugin has taken
// from comments, line by line.
func joinLines(d *document.Document, _ *wire) error {
	d.Walk(func(s *document.Schema) { s.Description = prose(s.Description) })
	for _, path := range d.Paths {
		for _, operation := range path.Operations() {
			for _, response := range operation.Responses {
				response.Description = prose(response.Description)
			}
		}
	}
	return nil
}
