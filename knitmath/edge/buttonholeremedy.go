package edge

import (
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// possible reports whether so many holes fit a band of some length.
func (b band) possible(holes, length int) bool {
	first, last, inner := b.placed(holes, length)
	return b.fits(first, last, inner, holes) && (holes > 1 || inner == 0)
}

// tooManyHoles says what the holes need and what would fit: every remedy has been tried.
func (b band) tooManyHoles() string {
	s := "these distances and " + report.CountOf(b.holes, "holes") + " "
	length := b.length() + max(0, b.shortage()-2) // outer holes that move by a row may take or give one each
	for length <= stitch.MaxStitches && !b.possible(b.holes, length) {
		length++
	}
	if length <= stitch.MaxStitches {
		s += "need a band of at least " + report.CountOf(length, b.noun()) + ", and it has " + strconv.Itoa(b.length())
	} else {
		s += "fit no band of at most " + report.CountOf(stitch.MaxStitches, b.noun())
	}
	if remedies := b.remedies(); len(remedies) > 0 {
		s += "; " + strings.Join(remedies, ", or ") + " would fit"
	}
	return s
}

// shortage is how many places more it takes at least, but for the rows by which outer holes move.
func (b band) shortage() int {
	first, last, inner := b.placed(b.holes, b.length())
	return max(1-first, 1-last, b.holes-1-inner)
}

// remedies are what would fit, the nearest of each kind.
func (b band) remedies() []string {
	var words []string
	for holes := b.holes - 1; holes > 1; holes-- {
		if b.possible(holes, b.length()) {
			words = append(words, report.CountOf(holes, "holes"))
			break
		}
	}
	for most := min(max(distanceOf(b.askedFirst), distanceOf(b.askedLast)), b.length()) - 1; most > 0; most-- {
		if b.within(most).possible(b.holes, b.length()) {
			words = append(words, "distances of at most "+report.CountOf(most, b.noun()))
			break
		}
	}
	for c := b; !c.alongRows && c.width > 1; {
		if c.width--; c.possible(c.holes, c.length()) {
			words = append(words, "holes of "+report.CountOf(c.width, "stitches"))
			break
		}
	}
	if c := b; c.rightSideOnly() {
		if c.step = 1; c.possible(c.holes, c.length()) {
			words = append(words, "binding off in any row")
		}
	}
	return words
}

// distanceOf is a distance that may not be asked.
func distanceOf(asked *int) int {
	if asked == nil {
		return 0
	}
	return *asked
}

// within is the band with no distance beyond the greatest.
func (b band) within(most int) band {
	for _, asked := range []**int{&b.askedFirst, &b.askedLast} {
		if *asked != nil && **asked > most {
			*asked = &most
		}
	}
	return b
}

// oneDistance says which of the two distances of a single hole would do alone.
func (b band) oneDistance() string {
	first, last := b, b
	first.askedLast, last.askedFirst = nil, nil
	switch byFirst, byLast := first.possible(1, b.length()), last.possible(1, b.length()); {
	case byFirst && byLast:
		return "; give one distance only"
	case byFirst:
		return "; give only that before the first"
	case byLast:
		return "; give only that after the last"
	}
	return ""
}
