package pattern

// beyondHere walks a row again that comes out too short, in which "k6, p to m, k6" begins a stretch at a marker: nobody says "to m"
// for no stitch at all, and a slipped marker often goes without saying. If the row then takes all stitches it is read so, which is
// said; otherwise the walker is as it was.
func (w *walker) beyondHere(steps []Step, turns bool) {
	if turns || w.here == nil || w.pos >= w.left {
		return
	}
	again := walker{runner: w.runner, left: w.left, began: -1, beyond: true}
	if !again.steps(steps) || again.pos != again.left || again.reason != "" || again.none != nil {
		return
	}
	w.fault(KindReading, ReasonReading, w.here.at, 0, "a marker is here already: read as up to the next one")
	*w = again
}
