package pattern

import (
	"slices"
	"sort"
	"strings"
)

// numbers are other numbers in a direction, by the stitches that it is off by: so many
// more or fewer, half as many at each of two edges, or so many passes of a repeat.
func (c *corrector) numbers(f *Finding, i int) []candidate {
	l := &c.piece.Lines[i]
	spots := c.spotsIn(c.before(i))
	lists := c.lists(spots)
	if times := c.timesOf(l, spots); times != nil {
		lists = append([][]spot{times}, lists...)
	}
	var out []candidate
	if len(f.DifferenceStitches) != len(f.SizeNumbers) || len(f.SizeNumbers) == 0 {
		for _, list := range lists {
			out = append(out, c.shiftedBy(list, 1)...)
			out = append(out, c.shiftedBy(list, -1)...)
		}
		return out
	}
	for _, each := range [...]func(size, difference int) (int, bool){c.passesOff(i), half(-1), half(1), entire(-1), entire(1)} {
		for _, list := range lists {
			if q := c.offBy(f, list, each); q != nil {
				out = append(out, q...)
			}
		}
	}
	return out
}

// timesOf are the numbers that say how often something is repeated, where they stand in the text.
func (c *corrector) timesOf(l *Line, spots []spot) []spot {
	if len(l.info.counts) < 2 {
		return nil
	}
	for more := range 2 { // "3 times in all" are 2 more
		numbers := slices.Clone(l.info.counts)
		for i := range numbers {
			numbers[i] += more
		}
		if found := run(spots, numbers, true); found != nil {
			return found
		}
	}
	return nil
}

// nearNumbers are numbers one more or fewer, or up to so many, in the sizes of a finding, those of
// repeats first.
func (c *corrector) nearNumbers(f *Finding, i, most int) []candidate {
	var out []candidate
	lists := c.lists(c.spotsIn(c.before(i)))
	sort.SliceStable(lists, func(a, b int) bool { return c.ofTimes(lists[a]) && !c.ofTimes(lists[b]) })
	for n := 1; n <= most; n++ {
		for _, list := range lists {
			out = append(append(out, c.offBy(c.told(f), list, by(-n))...), c.offBy(c.told(f), list, by(n))...)
		}
	}
	return out
}

// ofTimes reports whether numbers say how often something is worked.
func (c *corrector) ofTimes(list []spot) bool {
	last := &list[len(list)-1]
	line, _, _ := strings.Cut(c.piece.source[last.at.end:min(len(c.piece.source), int(last.at.end)+20)], "\n")
	return last.often || strings.Contains(line, "time")
}

func half(sign int) func(size, difference int) (int, bool) {
	return func(_, d int) (int, bool) { return sign * d / 2, d%2 == 0 }
}

func entire(sign int) func(size, difference int) (int, bool) {
	return func(_, d int) (int, bool) { return sign * d, true }
}

// passesOff is by how many passes a repeat is off.
func (c *corrector) passesOff(i int) func(size, difference int) (int, bool) {
	info, w := &c.piece.Lines[i].info, &c.worked.Lines[i]
	return func(size, difference int) (int, bool) {
		if len(info.counts) == 0 || w.StartStitches[size] < 0 || w.EndStitches[size] < 0 {
			return 0, false
		}
		passes, change := at(info.counts, size), w.EndStitches[size]-w.StartStitches[size]
		if passes < 1 || change == 0 || change%passes != 0 || difference%(change/passes) != 0 {
			return 0, false
		}
		return difference / (change / passes), true
	}
}

// offBy is a list of numbers changed in the sizes of a finding.
func (c *corrector) offBy(f *Finding, list []spot, each func(size, difference int) (int, bool)) []candidate {
	// One number for all sizes may be wrong in some that fail and in others of which nothing is
	// known: whether another is right is tried.
	e := renumbering{list: list}
	for k, number := range f.SizeNumbers {
		s := &list[0]
		if len(list) > 1 {
			s = &list[number-1]
		}
		more, ok := each(number-1, f.DifferenceStitches[k])
		if !ok || s.value < 0 || s.value+more < 1 || !e.set(s, s.value+more) {
			return nil
		}
	}
	return e.candidate(c.piece.source, -1, "")
}

func (c *corrector) shiftedBy(list []spot, by int) []candidate {
	var e renumbering
	for i := range list {
		if list[i].value+by < 1 || !e.set(&list[i], list[i].value+by) {
			return nil
		}
	}
	return e.candidate(c.piece.source, -1, "")
}

// lists are numbers that stand together for all sizes, and those that stand alone.
func (c *corrector) lists(spots []spot) [][]spot {
	var out [][]spot
	for i := 0; i < len(spots); i++ {
		n := 1
		for i+n < len(spots) && n < c.piece.SizeCount && spots[i+n].word == spots[i].word &&
			strings.Trim(c.piece.source[spots[i+n-1].at.end:spots[i+n].at.start], " ,:;/-–()[]\n") == "" {
			n++
		}
		if n > 1 && n < c.piece.SizeCount {
			i += n - 1
			continue
		}
		out = append(out, spots[i:i+n])
		i += n - 1
	}
	return out
}
