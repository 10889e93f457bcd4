package pattern

import "example.com/knitmath/knitmath/stitch"

// adapts reports whether a row that the text calls by its name, "rep dec rnd every 8th rnd",
// is meant with fewer or more plain stitches between its changes than it is written with:
// it is off only by what its own earlier workings changed.
func (r *runner) adapts(l *Line, p *profile, o outcome) bool {
	change := o.leaves - o.takes
	off := o.unworked - o.missing
	if p.stretches || p.turn != 0 || change == 0 || off%change != 0 || off/change < 0 {
		return false
	}
	plain := plainRuns(l.Steps, r.size)
	if plain == 0 || off < 0 && -off >= plain {
		return false
	}
	r.fault(KindReading, ReasonReading, l.info.at, 0, "worked again with as many plain stitches between its changes as there are then")
	return true
}

// plainRuns is how many stitches steps knit or purl in runs of more than one.
func plainRuns(steps []Step, size int) int64 {
	n := int64(0)
	for i := range steps {
		s := &steps[i]
		switch {
		case s.Steps != nil && !s.IntoOneStitch:
			n += times(plainRuns(s.Steps, size), int64(s.workings(size)))
		case (s.Operation == stitch.Knit || s.Operation == stitch.Purl) && s.workings(size) > 1:
			n += int64(s.workings(size))
		}
	}
	return n
}
