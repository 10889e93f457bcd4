package form

import (
	"strings"
	"unicode"
)

// units are the last words of names that are a unit, with its sign. Stitches, rows
// and rounds are none of them: they stay in the label, where a knitter looks for them.
var units = map[string]string{"cm": "cm", "mm": "mm", "m": "m", "g": "g", "percent": "%", "degrees": "°", "cm2": "cm²"}

// labelled is the name of a field as a label, and the sign of its unit.
func labelled(name string) (label, unit string) {
	parts := strings.Split(name, "_")
	last := len(parts) - 1
	// What is counted to a length, "twist_per_cm", is no length itself.
	if sign, ok := units[parts[last]]; ok && last > 0 && parts[last-1] != "per" {
		parts, unit = parts[:last], sign
	}
	return sentence(strings.Join(parts, " ")), unit
}

// words parts a name that is written with capitals: "ComputeCastOn" is "compute cast on".
func words(name string) string {
	var b strings.Builder
	for i, r := range name {
		if unicode.IsUpper(r) && i > 0 {
			b.WriteByte(' ')
		}
		b.WriteRune(unicode.ToLower(r))
	}
	return b.String()
}

// sentence begins with a capital letter.
func sentence(text string) string {
	if text == "" {
		return ""
	}
	return strings.ToUpper(text[:1]) + text[1:]
}
