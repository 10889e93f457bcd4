package pattern

// edgeAgain works a row again at the beginning of which stitches are bound off or cast on.
func (r *runner) edgeAgain(i int) {
	edges := r.piece.Lines[i].info.edges
	r.edgeRow(i, int64(at(edges[len(edges)-1].stitches, r.size)))
}

// whichAgain asks which rows are repeated where the last so many of the history begin within a direction for several rows at
// whose beginnings stitches are bound off or cast on, "BO 2 sts at beg of next 2 rows. Next row: Dec. Rep these 2 rows", or
// where those rows differ. It reports whether it is asked.
func (r *runner) whichAgain(info *lineInfo, from int) bool {
	rows := r.history[from:]
	for k, line := range rows {
		if line < 0 || r.piece.Lines[line].info.kind != lineBeginning {
			continue
		}
		edges := r.piece.Lines[line].info.edges
		cut := k == 0 && from > 0 && r.history[from-1] == line && rows[len(rows)-1] != line
		if cut || len(edges) > 1 && len(rows)-k > at(edges[len(edges)-1].rows, r.size) {
			r.fault(KindQuestion, ReasonUnread, info.at, 0, "which rows are these? the first of them "+
				"is one of several at whose beginning stitches are bound off or cast on; is a row missing before this?")
			return true
		}
	}
	return false
}
