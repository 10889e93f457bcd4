package pattern

import (
	"strings"
)

// direction says that a direction about an edge has no mirror image of its own.
func (m *mirror) direction(l *Line) {
	switch l.info.kind {
	case lineBeginning:
		m.refuse(l.info.at, "this is for the edge where its rows begin: for the other one work it a row later")
	case lineShape:
		if l.info.lines == nil && !l.info.spread {
			m.refuse(l.info.at, "where the shaping lies is for a person to mirror")
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
	if over, under, ok := strings.Cut(name, "/"); ok { // 2/1 lpc: 2 over 1
		size, kind, _ := strings.Cut(under, " ")
		switch kind {
		case "lc", "lpc":
			return over + "/" + size + " r" + kind[1:], true
		case "rc", "rpc":
			return over + "/" + size + " l" + kind[1:], true
		}
	}
	if _, ok := family(name); ok && name[0] == 'c' {
		if strings.HasSuffix(name, "f") {
			return name[:len(name)-1] + "b", true
		}
		return name[:len(name)-1] + "f", true
	}
	return name, false
}
