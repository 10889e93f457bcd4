package stitch

// Items is how much there is to remember of the written row: every run and every
// stretch is one item, and so is how often a bracket is worked. "k4, [k2tog, k8] 9
// times, k2tog, k4" has six.
func (r Row) Items() int { return items(r.Steps) }

func items(steps []Step) int {
	n := 0
	for _, s := range steps {
		n++
		if s.Group != nil {
			n += items(s.Group)
		}
	}
	return n
}
