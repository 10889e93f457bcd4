package pattern

// mostBrought is how many stretches of a row are looked through for those that are on the needle.
const mostBrought = 8

// broughtToMakeUp is a joining row with those of its parts brought whose absence leaves just the stitches that are on the needle:
// "k44 sleeve sts, pm, k86 front sts, pm, k44 sleeve sts, pm, k86 back sts" with the body's 172. Nil if no choice of parts does.
func (r *runner) broughtToMakeUp(l *Line) []Step {
	var parts []int
	var sizes []int64
	rest := r.now.left
	for k := range l.Steps {
		s := &l.Steps[k]
		if s.stretch() {
			return nil
		}
		takes := times(s.pass(r.size).takes, int64(s.workings(r.size)))
		if s.brought && s.Name != takenUp {
			parts, sizes = append(parts, k), append(sizes, takes)
			continue
		}
		rest -= takes
	}
	if len(parts) < 2 || len(parts) > mostBrought || rest <= 0 {
		return nil
	}
	for there := range 1 << len(parts) {
		sum := int64(0)
		for n, size := range sizes {
			if there>>n&1 == 1 {
				sum += size
			}
		}
		if sum != rest {
			continue
		}
		steps := append([]Step(nil), l.Steps...)
		for n, k := range parts {
			if there>>n&1 == 0 {
				steps[k] = l.info.either[k]
			}
		}
		return steps
	}
	return nil
}
