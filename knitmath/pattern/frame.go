package pattern

import (
	"strings"
	"unicode"
)

// frame reports whether a sign is one of those that frame the heading which is all of its line, "~ Toe ~", "== Hat ==".
func (s *scanner) frame(c rune) bool {
	if c != '~' && c != '=' {
		return false
	}
	from := strings.LastIndexAny(s.source[:s.at], "\n\r") + 1
	line := s.source[from:]
	if end := strings.IndexAny(line, "\n\r"); end >= 0 {
		line = line[:end]
	}
	line = strings.TrimSpace(line)
	name := strings.Trim(line, string(c))
	open := len(line) - len(strings.TrimLeft(line, string(c)))
	return open > 0 && strings.HasSuffix(line, line[:open]) && len(name) > 2 && name[0] == ' ' && strings.HasSuffix(name, " ") &&
		strings.IndexFunc(name, notInTitle) < 0
}

// notInTitle reports whether a sign is none of those of a title in words alone.
func notInTitle(c rune) bool { return !unicode.IsLetter(c) && !strings.ContainsRune(" -'&", c) }
