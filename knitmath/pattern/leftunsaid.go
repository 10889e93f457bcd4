package pattern

import "example.com/knitmath/knitmath/report"

// leftUnsaid asks what becomes of stitches that are on the needle when a part with a heading of its own is cast on, where all before
// it has been read, nothing stands between but the heading, and nothing later takes up stitches that wait.
func (r *runner) leftUnsaid(i int) {
	if i < 2 || !r.fresh || !r.known || r.quiet || r.now.total() < 2 || r.first || len(r.start.Counts) > 0 {
		return
	}
	before := i - 1
	for before >= 0 && r.piece.Lines[before].info.kind == linePassed {
		before--
	}
	if before < 0 || r.piece.Lines[before].info.at.end == 0 || r.takenLater(i) {
		return
	}
	if done, named := r.finishedBetween(before, i); !done || !named {
		return
	}
	r.fault(KindQuestion, ReasonUnread, r.piece.Lines[i].info.at, 0, r.becomes())
}

// seamedUnsaid asks it of stitches that are on the needle where a seam is sewn and others are picked up next: "knit 10 rows. Sew seam. Pick
// up 22 sts".
func (r *runner) seamedUnsaid(i int) {
	sewn := false
	for n := i - 1; n >= 0 && r.piece.Lines[n].info.kind == linePassed; n-- {
		l := &r.piece.Lines[n]
		if r.says(l, "needle", "needles", "live", "hold", "holder", "holders", "leave", "leaving") {
			return
		}
		sewn = sewn || r.says(l, "sew", "sewing", "seam", "seams")
	}
	if sewn && r.known && !r.quiet && r.now.total() > 0 && r.rows > 0 {
		r.fault(KindQuestion, ReasonUnread, r.piece.Lines[i].info.at, 0, r.becomes())
	}
}

// becomes asks what becomes of the stitches on the needle.
func (r *runner) becomes() string {
	n := int(r.now.total())
	return "what becomes of the " + stitches(n) + " that " + report.Are(n) + " on the needle?"
}

// takenLater reports whether a line after one may work stitches that were left on a needle: it takes some up, brings or joins some, or
// says so in words that are passed over.
func (r *runner) takenLater(i int) bool {
	lines := r.piece.Lines
	if r.lastTaking == 0 {
		for r.lastTaking = len(lines) - 1; r.lastTaking > 0 && !r.maySpeakOfOthers(&lines[r.lastTaking]); r.lastTaking-- {
		}
	}
	return r.lastTaking > i
}

// maySpeakOfOthers reports whether a line may work stitches of another piece.
func (r *runner) maySpeakOfOthers(l *Line) bool {
	info := &l.info
	return info.kind == lineTake || info.kind == lineUnread || info.joins || info.brings || info.bothNeedles || l.bringsFirst() ||
		info.waiting != nil || r.says(l, "rejoin", "rejoining", "held", "hold", "holder", "holders", "spare", "waiting", "live", "graft",
		"grafted", "kitchener", "three-needle", "3-needle")
}
