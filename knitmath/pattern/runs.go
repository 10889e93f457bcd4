package pattern

import "slices"

// RowRun is rows of the piece in one size that follow one another: lines worked in their
// turn, once or several times, each with the same change of the count every time. It
// mirrors the message of the same name.
type RowRun struct {
	SizeNumber, FirstRowNumber int
	// LinePlaces are the lines, as places in Lines, from 1.
	LinePlaces []int
	Times      int
	// StartStitches are the stitches before the first row, -1 where they are not known.
	StartStitches int
	// ChangeStitches are by how many stitches each line changes them; empty where that is
	// not known.
	ChangeStitches []int
}

// maxListedRuns is the most runs of a text: as many as its lines come to in ten sizes.
const maxListedRuns = 5_000

// tracing is where a runner is, for the runs of its rows.
type tracing struct {
	directing int   // the line that is at hand, or the direction by which it is worked
	began     int64 // stitches before the row at hand, -1 if they are not known
}

// journal is the rows that were worked, as runs.
type journal struct {
	runs   []RowRun
	opened int  // the first run of the pass at hand, which is not joined to those before it
	full   bool // there was no room for a row

	places, changes [maxPass]int // of the run at hand
}

// note adds rows that were worked, and joins them to the run before them, if they do the
// same again.
func (j *journal) note(r RowRun) {
	if n := len(j.runs); n > j.opened && j.runs[n-1].again(&r) {
		j.runs[n-1].Times += r.Times
		return
	}
	if len(j.runs) >= maxListedRuns || j.full {
		j.full = true // what follows a gap would be taken for what stands in it
		return
	}
	// Most rows are joined to a run: these alone have lists of their own.
	r.LinePlaces, r.ChangeStitches = slices.Clone(r.LinePlaces), slices.Clone(r.ChangeStitches)
	j.runs = append(j.runs, r)
}

// again reports whether a run does what this one does, at once after it.
func (r *RowRun) again(next *RowRun) bool {
	known := r.StartStitches >= 0
	if r.SizeNumber != next.SizeNumber || r.FirstRowNumber+r.Times*len(r.LinePlaces) != next.FirstRowNumber ||
		known != (next.StartStitches >= 0) || !slices.Equal(r.LinePlaces, next.LinePlaces) ||
		!slices.Equal(r.ChangeStitches, next.ChangeStitches) {
		return false
	}
	return !known || r.StartStitches+r.Times*sum(r.ChangeStitches) == next.StartStitches
}

func sum(numbers []int) int {
	total := 0
	for _, n := range numbers {
		total += n
	}
	return total
}

// open begins a pass of rows, and returns where it begins; -1 where nothing is noted.
func (j *journal) open(quiet bool) int {
	if j == nil || quiet {
		return -1
	}
	j.opened = len(j.runs)
	return j.opened
}

// close makes one run of the rows of a pass that begins at a run, and joins it to the
// one before it.
func (j *journal) close(from int) {
	if from < 0 {
		return
	}
	j.opened = 0
	if j.full || from >= len(j.runs) {
		return
	}
	whole := RowRun{SizeNumber: j.runs[from].SizeNumber, FirstRowNumber: j.runs[from].FirstRowNumber, Times: 1,
		StartStitches: j.runs[from].StartStitches, LinePlaces: j.places[:0], ChangeStitches: j.changes[:0]}
	at := whole.StartStitches
	for i := range j.runs[from:] {
		r := &j.runs[from+i]
		if r.StartStitches != at || len(whole.LinePlaces)+r.Times*len(r.LinePlaces) > maxPass {
			return // something other than rows changes the count between them
		}
		for range r.Times {
			whole.LinePlaces = append(whole.LinePlaces, r.LinePlaces...)
			whole.ChangeStitches = append(whole.ChangeStitches, r.ChangeStitches...)
		}
		if at >= 0 {
			at += r.Times * sum(r.ChangeStitches)
		}
	}
	j.runs = j.runs[:from]
	j.note(whole)
}

// maxPass is the most rows that a pass is told by: more stay runs of their own.
const maxPass = 100

// noteRow notes a row of a line, -1 for one without a line of its own, that was worked.
func (r *runner) noteRow(line int) {
	if r.journal == nil || r.quiet {
		return
	}
	run := r.runOf(line, 1)
	run.FirstRowNumber = r.rows // the row just counted
	if r.began >= 0 && r.known {
		run.StartStitches, run.ChangeStitches = int(r.began), append(r.journal.changes[:0], int(r.now.total()-r.began))
	}
	r.journal.note(run)
}

// noteSkipped notes rows that change nothing and were only counted, before they are.
func (r *runner) noteSkipped(lines []int16, times int) {
	if r.journal == nil || r.quiet || times < 1 || len(lines) > maxPass {
		return
	}
	run := r.runOf(int(lines[0]), times)
	for _, line := range lines[1:] {
		run.LinePlaces = append(run.LinePlaces, r.placeOf(int(line)))
	}
	if r.known {
		run.StartStitches, run.ChangeStitches = int(r.now.total()), make([]int, len(lines))
	}
	run.FirstRowNumber = r.rows + 1
	r.journal.note(run)
}

func (r *runner) runOf(line, times int) RowRun {
	return RowRun{SizeNumber: r.size + 1, LinePlaces: append(r.journal.places[:0], r.placeOf(line)), Times: times, StartStitches: -1}
}

// placeOf is the place of a line, or of the direction at hand, from 1.
func (r *runner) placeOf(line int) int {
	if line < 0 {
		line = r.directing
	}
	return line + 1
}
