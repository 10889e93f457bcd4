package report

import "strings"

// OfSizes writes what differs from size to size, the first size and in parentheses
// the others, "5 (6, 7)", or once what is the same in all.
func OfSizes(words []string) string {
	for _, w := range words {
		if w != words[0] {
			return words[0] + " (" + strings.Join(words[1:], ", ") + ")"
		}
	}
	return words[0]
}
