package pattern

import "example.com/knitmath/knitmath/stitch"

// room is the memory that a text is read and worked in, and leaves to the next: a text is
// read and worked anew for every correction that is tried, and of that only the verdict is
// kept. A piece, and what it was worked to, last until the room is used again.
type room struct {
	tokens  []token // up to 40 times the length of a text
	lines   []Line
	inHand  [][]Step  // of a row, and of the brackets within
	steps   []Step    // of all
	said    []Finding // on reading
	found   []Finding // on reading and working
	counts  []LineCounts
	numbers []int   // of the counts
	engine  *engine // of the text that was worked before
	machine *stitch.Machine

	stepCount int // of the text that was read last
}

// forTrials is room for further texts like one that was read in this one and is still wanted.
func (in *room) forTrials() *room {
	return &room{tokens: in.tokens, inHand: in.inHand, stepCount: in.stepCount, engine: in.engine, machine: in.machine}
}

// zeroed is n zero values, in memory that is there already if it suffices.
func zeroed[T any](memory []T, n int) []T {
	if cap(memory) < n {
		return make([]T, n)
	}
	memory = memory[:n]
	clear(memory)
	return memory
}

// needles are of a machine with empty needles, which are those of the one before.
func (in *room) needles(style stitch.Construction) *stitch.Machine {
	if in.machine == nil {
		in.machine = stitch.NewMachine(style)
	} else {
		in.machine.Empty(style)
	}
	return in.machine
}
