package body

import "example.com/knitmath/knitmath/report"

var _ report.Answer = List{}

// Summary says how many rows there are and what to make of them.
func (o List) Summary() string {
	return report.CountOf(len(o.Rows), "rows") + " of body measures, without ease. Charts are for a start: measure the person where you can."
}

// Directions are empty: there is nothing to work.
func (List) Directions() []string { return nil }

// Sources are those of the rows, each once.
func (o List) Sources() []report.Source {
	sources := []report.Source{{Figure: "body sizes", Citation: "each row has its own", Status: report.SourceStatusCommonPractice}}
	type cited struct{ basis, citation string }
	seen := map[cited]bool{}
	var last cited // most rows have the source of the row before
	for i := range o.Rows {
		r := &o.Rows[i]
		if at := (cited{r.Basis, r.Citation}); at != last && !seen[at] {
			seen[at], last = true, at
			sources = append(sources, report.Source{Figure: r.Basis, Citation: r.Citation, Status: r.Status, Uncertain: r.Uncertain})
		}
	}
	return sources
}
