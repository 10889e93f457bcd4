package service

import (
	"net/http"
	"strings"

	"github.com/munnerz/goautoneg"
)

// wantsTable decides in which form an answer is sent. Tables come as CSV to callers who would
// rather have it than JSON; everything else is JSON, whatever is accepted.
//
// The header is read by a parser that was in the build already, for the metrics. What it
// makes of it is weighed here: its own order does not keep a quality apart from how exactly
// a type is named.
func wantsTable(h http.Header, at route) bool {
	if !at.table {
		return false
	}
	accept := strings.Join(h.Values("Accept"), ",")
	return accept != "" && prefersCSV(accept)
}

// prefersCSV reports whether CSV is wanted more than JSON, or as much and by name.
func prefersCSV(accept string) bool {
	clauses := goautoneg.ParseAccept(strings.ToLower(accept))
	csv, byName := qualityOf(clauses, csvType)
	json, asNamed := qualityOf(clauses, jsonType)
	return csv > 0 && (csv > json || csv == json && byName > asNamed)
}

// qualityOf is the quality of the clause that names a media type most exactly (RFC 9110,
// section 12.5.1), and how exactly that is: 0 where none does.
func qualityOf(clauses []goautoneg.Accept, mediaType string) (quality float64, exactly int) {
	kind, subtype, _ := strings.Cut(mediaType, "/")
	for _, c := range clauses {
		exact := 0
		switch {
		case c.Type == kind && c.SubType == subtype:
			exact = 3
		case c.Type == kind && c.SubType == "*":
			exact = 2
		case c.Type == "*" && c.SubType == "*":
			exact = 1
		}
		if exact > exactly {
			quality, exactly = c.Q, exact
		}
	}
	return quality, exactly
}
