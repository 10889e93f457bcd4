package curve

// A state is an edge of which so many stitches are lost after a row, and the best way
// to it.
type state struct {
	row     int32
	lost    int32
	effort  int32 // noState if there is no way
	before  int32 // the state that the way comes from, or noState
	first   int32 // where its last run begins; 0 of rows worked even
	every   int32
	other   int32 // takes turns with it, 0 if none does
	times   int32
	size    int32
	pace    int32 // rows to a stitch of its last run, in parts of a row
	squares int64
}

// paceParts is in how many parts of a row a pace is told.
const paceParts = 840

const noState = -1

// A mood is what came last: a single, a group, or rows worked even.
type mood int

const (
	afterSingle mood = iota
	afterGroup
	afterEven
	moods
)

// Of a steady plan, whether the edge has begun to lean more again: then it may not grow
// steeper any more.
const (
	leaningSingle mood = iota + moods
	leaningGroup
	steadyMoods
)

// leaning is what came last without that.
func (m mood) leaning() (mood, bool) {
	if m >= moods {
		return m - moods, true
	}
	return m, false
}

// A band is which numbers of stitches may be lost after a row.
type band struct{ from, to, at int }

// A place is a state by what it is.
type place struct {
	row, lost int
	mood      mood
}

// index is where a state is kept, or noState if it lies too far off.
func (s *search) index(at place) int {
	b := s.bands[at.row]
	if at.lost < b.from || at.lost > b.to {
		return noState
	}
	return b.at + s.moods*(at.lost-b.from) + int(at.mood)
}

// tooLate reports whether nothing may follow a state: ends alone are looked for, or one is known
// that is easier than with one more run. Only an end itself is of use then.
func (s *search) tooLate(x *state) bool { return s.ending || int(x.effort)+effortOfRun > s.found }

// paced takes the pace of a run's first step, and of those after it if they come so many rows
// apart. It tells what an edge that leans more from there on adds to the mood; false if a steady
// edge would lean more and then grow steeper again.
func (s *search) paced(x *state, every int) (lean mood, ok bool) {
	if !s.steady {
		return 0, true
	}
	_, leans := s.at.mood.leaning()
	if !x.goes(int(x.first)-s.at.row, &leans, s.bend) || every > 0 && !x.goes(every, &leans, s.bend) {
		return 0, false
	}
	if leans {
		return moods, true
	}
	return 0, true
}

// keepRun keeps a run as far as a place, unless it is too late for it.
func (s *search) keepRun(x *state, at place) {
	if at.lost == s.Stitches || !s.tooLate(x) {
		s.keep(x, at)
	}
}

// goes takes the pace of a step that comes so many rows after the last, and tells whether
// the edge leans more from there on; false if it did and now grows steeper, or bends more than
// so many times at once.
func (x *state) goes(rows int, leans *bool, bend int32) bool {
	pace := int32(rows * paceParts)
	if x.size > 1 {
		pace /= x.size
	}
	if *leans && pace > x.pace {
		return false
	}
	if bend > 0 && x.pace > 0 && max(pace, x.pace) > bend*min(pace, x.pace) {
		return false
	}
	*leans = *leans || pace < x.pace
	x.pace = pace
	return true
}

// keep keeps the easier way to a state, or of equal ones the nearer.
func (s *search) keep(x *state, at place) {
	i := s.index(at)
	if i == noState {
		return
	}
	to := &s.all[i]
	if to.effort != noState && (to.effort < x.effort || to.effort == x.effort && to.squares <= x.squares) {
		return
	}
	if to.effort != x.effort {
		s.reach(int(x.effort), i)
	}
	if at.lost == s.Stitches {
		s.found = min(s.found, int(x.effort))
	}
	x.row, x.lost = int32(at.row), int32(at.lost)
	*to = *x
}

// reach lists a state among those of its effort.
func (s *search) reach(effort, i int) {
	for len(s.levels) <= effort {
		s.levels = append(s.levels, nil)
	}
	s.levels[effort] = append(s.levels[effort], int32(i))
}
