package pattern

// far is how many lines are looked through for stitches that have been put aside.
const far = 12

// heldPlaces are where stitches that are put aside lie, and heldOthers the words which say that they are other ones.
var (
	heldPlaces = []string{"first", "last", "centre", "center", "middle"}
	heldOthers = []string{"next", "following", "foll", "another", "second", "other", "separate", "rem", "remaining", "also", "more"}
)

// heldTwice asks about stitches that are put aside where as many were, at the same place: those just before, in whatever words, and with
// rows between those that are said to lie at the same place.
func (r *runner) heldTwice(l *Line) {
	i := r.directing
	if i < 1 || l != &r.piece.Lines[i] || r.quiet || l.info.counts == nil || len(l.ClaimedStitches) > 0 || r.says(l, heldOthers...) {
		return
	}
	r.heldAbove(l, i)
}

// heldAbove looks among the lines above one for the same stitches.
func (r *runner) heldAbove(l *Line, i int) {
	place, count := r.heldPlace(l), at(l.info.counts, r.size)
	for n := i - 1; n >= max(i-far, 0); n-- {
		before := &r.piece.Lines[n]
		same, goesOn := false, place != ""
		switch before.info.kind {
		case lineHold:
			same = before.info.counts != nil && at(before.info.counts, r.size) == count && (place == r.heldPlace(before) || place == "" && n == i-1)
			goesOn = false
		case lineRow:
			within := r.heldWithin(before.Steps)
			same, goesOn = within == count && place == "cent", within == 0 && goesOn
		case lineEven, linePlain, lineRepeat:
		case linePassed:
			goesOn = !before.info.heading
		default:
			goesOn = false
		}
		if same {
			r.fault(KindQuestion, ReasonUnread, l.info.at, 0, "the same is said twice: other stitches?")
		}
		if !goesOn {
			return
		}
	}
}

// heldWithin is how many stitches the steps of a row put aside, one after the other of them.
func (r *runner) heldWithin(steps []Step) int {
	for i := range steps {
		if s := &steps[i]; s.Name == "hold" && !s.stretch() {
			return s.workings(r.size)
		}
	}
	return 0
}

// heldPlace is where stitches lie that a line puts aside, "" if it does not say.
func (r *runner) heldPlace(l *Line) string {
	for _, place := range heldPlaces {
		if r.says(l, place) {
			return place[:min(len(place), 4)]
		}
	}
	return ""
}
