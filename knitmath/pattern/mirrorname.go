package pattern

import (
	"strings"
)

// direction says that a direction about an edge has no mirror image of its own.
func (m *mirror) direction(l *Line) {
	switch l.info.kind {
	case lineBeginning:
		m.refuse(l.info.at, "this is for the edge where its rows begin: for the other one work it a row later")
		m.kept++
	case lineShape:
		if l.info.lines == nil && !l.info.spread {
			m.refuse(l.info.at, "where the shaping lies is for a person to mirror")
			m.kept++
		}
	}
}

// mirrorName is the abbreviation that leans the other way. What does not lean is
// its own; false when that is not known.
func mirrorName(name string) (string, bool) {
	if other, ok := mirrorNames[name]; ok {
		return other, true
	}
	switch name {
	case "work", "k1b", "byo", "kyok", "rm", "yb", "wyif", "wyib":
		return name, true
	}
	if numbers, kind, ok := strings.Cut(name, " "); ok && crossingWords[kind] { // 2/1 lpc: 2 over 1
		return numbers + " " + string('l'+'r'-kind[0]) + kind[1:], true
	}
	if _, ok := cable(name); ok {
		tail := strings.LastIndexAny(name, "0123456789") + 1
		return name[:tail] + leanings[name[tail:]], true
	}
	return name, false
}

// leanings are the ends of the names of crossings and of those that lean the other way. Common practice: with the first
// stitches in front a crossing leans left, with them behind it leans right.
var leanings = map[string]string{"f": "b", "b": "f", "l": "r", "r": "l", "fp": "bp", "bp": "fp", "lp": "rp", "rp": "lp",
	"fw": "bw", "bw": "fw", "lt": "rt", "rt": "lt"}
