package shaping

import (
	"cmp"
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/schedule"
	"example.com/knitmath/knitmath/stitch"
)

// A gradedPart is the sizes of several that go the same way, or that keep their width, and
// have sentences of their own.
type gradedPart struct {
	places []int // of its sizes among all
	taper  GradedTaper
}

// inParts plans the sizes: all together, or those that go as the first that is shaped, those that
// go the other way, and those that keep their width.
func (in GradedTaperInput) inParts(tapers []taper) GradedTaper {
	var ways [3][]int // by how they go, from the first that is shaped
	sign := 0
	for i, t := range tapers {
		goes := cmp.Compare(t.end, t.start)
		if sign == 0 {
			sign = goes
		}
		switch {
		case goes == 0:
			ways[2] = append(ways[2], i)
		case goes == sign:
			ways[0] = append(ways[0], i)
		default:
			ways[1] = append(ways[1], i)
		}
	}
	if len(ways[0]) == len(tapers) {
		out, beyond := planGraded(tapers, in.DisplayUnit)
		out.Notices = beyondNotices(beyond, out.Sizes)
		return out
	}
	var out GradedTaper
	var beyond []int
	sizes := make([]SizedTaper, len(tapers))
	for way, places := range ways {
		if len(places) == 0 {
			continue
		}
		var some []taper
		for _, i := range places {
			some = append(some, tapers[i])
		}
		part := gradedPart{places, keptGraded(some)}
		if way < 2 {
			var far []int
			part.taper, far = planGraded(some, in.DisplayUnit)
			for _, k := range far {
				beyond = append(beyond, places[k])
			}
		}
		for k, i := range places {
			sizes[i] = part.taper.Sizes[k]
		}
		switch way {
		case 0:
			out = part.taper
			out.Runs = among(out.Runs, places, len(tapers))
		case 1:
			out.OppositeRow = &part.taper.RightSideRow
			out.Effort += part.taper.Effort
		}
		out.parts = append(out.parts, part)
	}
	slices.Sort(beyond)
	out.Sizes, out.Notices = sizes, beyondNotices(beyond, sizes)
	return out
}

// planGraded finds one schedule for sizes that all go the same way, and says in which of them it lies
// farther from the line than was asked.
func planGraded(tapers []taper, unit measure.DisplayUnit) (out GradedTaper, beyond []int) {
	g, tapers, beyond := grade(tapers)
	out = GradedTaper{Runs: worked(g.Runs), Effort: g.Effort, t: tapers[0], unit: unit}
	for i, t := range tapers {
		out.Sizes = append(out.Sizes, t.sized(g.Firsts[i], g.Of(i)))
	}
	out.RowChangeStitches = tapers[0].rowChange()
	out.RightSideRow = stitch.Instruction{Row: tapers[0].shapingRow(stitch.RightSide),
		StartStitches: tapers[0].start, EndStitches: tapers[0].start + out.RowChangeStitches}
	return out, beyond
}

// keptGraded are sizes that keep their width.
func keptGraded(tapers []taper) GradedTaper {
	out := GradedTaper{t: tapers[0]}
	for _, t := range tapers {
		out.Sizes = append(out.Sizes, SizedTaper{StartStitches: t.start, EndStitches: t.end, HeightRows: t.rows, EvenAfterRows: t.rows})
	}
	return out
}

// among are runs of some sizes as runs of all: the others do without.
func among(runs []schedule.GradedRun, places []int, sizes int) []schedule.GradedRun {
	all := make([]schedule.GradedRun, len(runs))
	for i, r := range runs {
		all[i] = schedule.GradedRun{EveryRows: spreadOver(r.EveryRows, places, sizes), Times: spreadOver(r.Times, places, sizes)}
		if r.AlternateRows != nil {
			all[i].AlternateRows = spreadOver(r.AlternateRows, places, sizes)
		}
	}
	return all
}

func spreadOver(numbers, places []int, sizes int) []int {
	all := make([]int, sizes)
	for k, i := range places {
		all[i] = numbers[k]
	}
	return all
}

// partDirections tell every part for itself, with a dash for the sizes that are not of it.
func (o GradedTaper) partDirections() (d []string) {
	for _, p := range o.parts {
		part := p.taper
		part.among = func(words []string) []string {
			all := slices.Repeat([]string{none}, len(o.Sizes))
			for k, i := range p.places {
				all[i] = words[k]
			}
			return all
		}
		d = append(append(d, ordinalSizes(p.places)+" only:"), part.rowDirections()...)
	}
	return d
}

// ordinalSizes is "1st size", "1st, 2nd and 4th sizes" of sizes counted from 0.
func ordinalSizes(places []int) string {
	words := make([]string, len(places))
	for k, i := range places {
		words[k] = report.Ordinal(i + 1)
	}
	if len(words) == 1 {
		return words[0] + " size"
	}
	return report.Listed(words) + " sizes"
}

// countWords are numbers as words.
func countWords(numbers []int) []string {
	words := make([]string, len(numbers))
	for i, n := range numbers {
		words[i] = strconv.Itoa(n)
	}
	return words
}
