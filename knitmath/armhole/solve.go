package armhole

import (
	"math"

	"example.com/knitmath/knitmath/curve"
)

// solve finds edges that go together.
func (s settled) solve() (sewn, bool) {
	if s.style.straight() {
		return s.straightPieces(), true
	}
	var found sewn
	if s.capRows < 0 {
		return found, false
	}
	var ok bool
	if found.back, ok = s.armhole(s.back, s.backLost); !ok {
		return found, false
	}
	found.front = found.back
	if s.front != s.back || s.frontLost != s.backLost {
		if found.front, ok = s.armhole(s.front, s.frontLost); !ok {
			return found, false
		}
	}
	around := s.edgeCm(found.back) + s.edgeCm(found.front)
	best := &sought{nearest: math.Inf(1)}
	for s.way = s.firstWay(); s.way < capWays && best.nearest > nearEnough; s.way++ {
		if s.way.wider() && s.underarm >= s.inch() {
			continue
		}
		if other := s.cap(around); other.nearest < best.nearest-goodEnough || best.best.rows == 0 {
			best = other
		}
	}
	found.top = best.best
	return found, found.top.rows > 0
}

// firstWay is what is tried first: in search of what would do only whether there is a cap, not
// how well it bends.
func (s settled) firstWay() capWay {
	if s.asked {
		return narrowGroups
	}
	return abruptly
}

// armhole shapes a back or a front. Where it is not said over how many rows, it takes as
// many as it needs.
func (s *settled) armhole(start, lost int) (shaped, bool) {
	group := s.largestGroup
	if group == 0 {
		group = s.underarm
	}
	p, ok := s.follow(start, lost, s.depth, group, s.armholePath(lost, s.shapingRows), false)
	for rows := max(s.rowsNeeded(lost), s.shapingRows+2); !ok && !s.shapingGiven && rows <= s.depth; rows += 2 {
		p, ok = s.follow(start, lost, s.depth, group, s.armholePath(lost, rows), false)
	}
	return p, ok
}

// rowsNeeded are the rows in which an edge loses so many, one in every right-side row
// above the underarm. A curve wants some more, since it goes in faster below.
func (s *settled) rowsNeeded(lost int) int { return underarmRows + 2*(lost-s.underarm) }

// armholePath is the curve of a back or a front above its underarm.
func (s *settled) armholePath(lost, rows int) curve.Path {
	return curve.From(curve.At(s.underarm, underarmRows, s.st, s.rw)).Ellipse(curve.At(lost, rows, s.st, s.rw), curve.LeavingAcross)
}
