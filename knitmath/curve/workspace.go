package curve

import "sync"

// A workspace is the memory of a search, kept for the next one: to ask for it anew took
// longer than the search itself.
type workspace struct {
	rows   []bool
	near   near
	open   [3][]int64
	bands  []band
	all    []state
	levels [][]int32
}

// mostKept is how many states are kept for the next search: those of a long coat. What is
// larger is rare, and is given back.
const mostKept = 20_000

var workspaces = sync.Pool{New: func() any { return new(workspace) }}

// done gives the memory of a planner back.
func (p *planner) done() {
	if cap(p.space.all) <= mostKept {
		workspaces.Put(p.space)
	}
	p.space = nil
}

// ofLength is memory of so many values, the old one if that is enough. Of the old one the
// values stand as they were.
func ofLength[T any](old []T, n int) []T {
	if cap(old) < n {
		return make([]T, n)
	}
	return old[:n]
}
