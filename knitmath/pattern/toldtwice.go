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
	place, count := r.heldPlace(l), at(l.info.counts, r.size)
	for n := i - 1; n >= max(i-far, 0); n-- {
		before := &r.piece.Lines[n]
		switch before.info.kind {
		case lineHold:
			if before.info.counts != nil && at(before.info.counts, r.size) == count && (place == r.heldPlace(before) || place == "" && n == i-1) {
				r.sameTwice(l)
			}
			return
		case lineRow:
			if within := r.heldWithin(before.Steps); within != 0 {
				if within == count && place == "cent" {
					r.sameTwice(l)
				}
				return
			}
			if place == "" {
				return
			}
		case lineEven, linePlain, lineRepeat:
			if place == "" {
				return
			}
		case linePassed:
			if before.info.heading {
				return
			}
		default:
			return
		}
	}
}

func (r *runner) sameTwice(l *Line) {
	r.fault(KindQuestion, ReasonUnread, l.info.at, 0, "the same is said twice: other stitches?")
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
