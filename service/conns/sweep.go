package conns

import (
	"sort"
	"time"
)

// cause is why a connection was cut off, as the metrics name it.
type cause string

const (
	// causeIdle made room for a new connection.
	causeIdle cause = "idle"
	// causeAnswers did not take its answers.
	causeAnswers cause = "answers_not_taken"
	// causeQuestion did not send its question to the end.
	causeQuestion cause = "question_not_sent"
	// causeResets began calls and gave them up.
	causeResets cause = "calls_given_up"
)

var causes = []cause{causeIdle, causeAnswers, causeQuestion, causeResets}

// suspect is a connection that may have to go.
type suspect struct {
	conn   *Conn
	why    cause
	weight int64 // what would be given back
}

// manyResets is how many calls may be given up between two sweeps where there is no
// room for more.
const manyResets = 8

// tooManyResets is how many are too many in any case: all that a connection can have
// open, as when their time was over for all of them, and one more.
const tooManyResets = 100

// callWeight is about what a call holds beside its question and its answer.
const callWeight = 8 << 10

// Sweep cuts off the connections whose oldest call has been on the wire for too long.
// Where a limit is reached it is less patient, and cuts those first that hold most,
// until there is room.
func (k *Keeper) Sweep(now time.Time) {
	for _, f := range k.faces {
		pressed := f.crowded() || k.full() || k.relief.awaited()
		var suspects []suspect
		for _, c := range f.all() {
			s, overdue, suspicious := c.look(now, k.limits)
			c.forgetGivenUp()
			switch {
			case overdue:
				c.end(s.why)
			case suspicious && pressed:
				suspects = append(suspects, s)
			}
		}
		sort.Slice(suspects, func(i, j int) bool { return suspects[i].weight > suspects[j].weight })
		for _, s := range suspects {
			if !f.crowded() && k.relieved() {
				break
			}
			s.conn.end(s.why)
		}
	}
}

// look says how a connection stands.
func (c *Conn) look(now time.Time, limits Limits) (s suspect, overdue, suspicious bool) {
	c.mu.Lock()
	defer c.mu.Unlock()
	s = suspect{conn: c, weight: c.answers}
	for i := range c.calls {
		s.weight += c.calls[i].bytes + callWeight
	}
	var age time.Duration
	// Which of the calls are meant to last is not known, only how many.
	if len(c.calls) > c.watches {
		oldest := c.calls[c.watches]
		age = now.Sub(oldest.begun)
	}
	s.why = causeQuestion
	if c.answers > 0 || !c.writing.IsZero() {
		s.why = causeAnswers
	}
	if !c.writing.IsZero() {
		age = max(age, now.Sub(c.writing))
	}
	if c.resets > manyResets {
		s.why = causeResets
		return s, false, true
	}
	return s, age > limits.Patience, age > limits.Hurry
}

// forgetGivenUp gives the places of calls back that the caller does not want any more.
func (c *Conn) forgetGivenUp() {
	c.mu.Lock()
	defer c.mu.Unlock()
	c.resets = 0
	for i := len(c.calls) - 1; i >= 0; i-- {
		if c.calls[i].reset {
			c.remove(i)
		}
	}
}
