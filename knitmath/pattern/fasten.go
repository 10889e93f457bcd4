package pattern

// fastened is a row that ends with "fasten off": the stitch that is left, on either needle,
// is drawn through.
func (r *runner) fastened(p *profile) *profile {
	if p.stretches {
		return p
	}
	o := p.work(r.now.left)
	r.last = *p
	switch {
	case o.reason == ReasonUnworked && o.unworked == 1 && o.leaves == 0:
		r.last.rest.takes++
	case o.reason == "" && r.now.after(p, o).total() == 1:
		r.last.rest.leaves--
	}
	return &r.last
}
