// Package admit decides which calls are worked on now, which wait for a moment and
// which are refused, by what each of them costs. What a call costs is said by the
// kernel, in steps; what a connection still has to take is known by package conns;
// how a refusal looks on the wire is the service's business.
//
// There are two lanes. Almost every question is light: it takes less than half a
// millisecond. The others are dear. Dear ones are worked on by all cores but one,
// so that a light one never waits behind them. Light ones are few at a time too,
// since more of them than there are cores do not end sooner, and only hold memory.
package admit

import (
	"context"
	"time"

	"github.com/prometheus/client_golang/prometheus"
)

// mostCost is what a call is taken to cost at most: a question that is dearer is
// refused by the kernel, at once.
const mostCost = 100_000

// dearCost is the cost from which a call is dear, in steps of about a microsecond.
const dearCost = 1_000

// Limits are what a lane holds.
type Limits struct {
	// Running is how many calls are worked on at a time.
	Running int
	// Waiting is how many more may wait, and WaitingCost what they may cost
	// together: the number bounds the memory, the cost the time.
	Waiting, WaitingCost int
	// Patience is how long a call waits where calls come in bursts. Where there
	// were calls waiting all through that time, the next wait no longer than
	// Hurry: then there is more work than can be done, and a long queue would make
	// all calls late without a single one more being answered.
	Patience, Hurry time.Duration
}

// DefaultLimits are those of both lanes on a number of cores.
func DefaultLimits(cores int) (light, dear Limits) {
	light = Limits{Running: 4 * cores, Waiting: 512, WaitingCost: 100_000 * cores,
		Patience: 100 * time.Millisecond, Hurry: 10 * time.Millisecond}
	spare := max(1, cores-1)
	dear = Limits{Running: spare, Waiting: 32, WaitingCost: 400_000 * spare,
		Patience: 400 * time.Millisecond, Hurry: 200 * time.Millisecond}
	return light, dear
}

// Gate is what all calls of a process pass through.
type Gate struct {
	light, dear *lane
	refused     *prometheus.CounterVec
}

// NewGate makes a gate with a lane for light calls and one for dear ones.
func NewGate(light, dear Limits) *Gate {
	g := &Gate{light: newLane("light", light), dear: newLane("dear", dear), refused: newRefused()}
	for _, l := range []*lane{g.light, g.dear} {
		for _, why := range causes {
			g.refused.WithLabelValues(string(why), l.name) // 0 from the start, and not absent.
		}
	}
	return g
}

// Refusal is the error of a call that was turned away.
type Refusal struct {
	Cause Cause
	// Dear says that a light question would have had a better chance.
	Dear bool
	// After is when to try again.
	After time.Duration
}

// Cause is why a call was turned away.
type Cause string

// The causes, as the metrics name them.
const (
	// TooManyWait says that there were too many calls waiting already.
	TooManyWait Cause = "too_many_wait"
	// WaitedTooLong says that the call had its time of waiting.
	WaitedTooLong Cause = "waited_too_long"
	// AnswersNotTaken says that too much has been answered and not been read.
	AnswersNotTaken Cause = "answers_not_taken"
)

var causes = []Cause{TooManyWait, WaitedTooLong, AnswersNotTaken}

// Error is the refusal in words, with its cause.
func (r *Refusal) Error() string { return "refused for load: " + string(r.Cause) }

// Call is what one call holds of a gate. It belongs to the goroutine that works on
// the call.
type Call struct {
	gate  *Gate
	taker Taker
	lane  *lane
	cost  int
}

// Taker is who takes an answer. Room says whether there is room for one more, before a
// call is worked on.
type Taker interface{ Room(dear bool) bool }

// NewCall is a call that holds nothing yet. Where there is no taker there is always room.
func (g *Gate) NewCall(to Taker) Call { return Call{gate: g, taker: to} }

func (c *Call) room(dear bool) bool { return c.taker == nil || c.taker.Room(dear) }

// Enter returns when the call may be worked on, at a cost added to what it has
// cost so far: reading a question has its price too. The error is a *Refusal, or
// that of ctx: what its caller has given up is not worked on, however much room there
// is. After an error the call holds nothing.
func (c *Call) Enter(ctx context.Context, cost int) error {
	cost = min(c.cost+max(cost, 1), mostCost)
	to := c.gate.light
	if cost >= dearCost {
		to = c.gate.dear
	}
	dear := to == c.gate.dear
	if c.lane == to {
		to.add(cost - c.cost)
		c.cost = cost
		return nil
	}
	c.Leave()
	// Asked again after the wait: the answers that were under way then are
	// answered now.
	if !c.room(dear) {
		return c.gate.refuse(to, AnswersNotTaken, time.Second)
	}
	if cause, after, err := to.enter(ctx, cost); err != nil {
		return err
	} else if cause != "" {
		return c.gate.refuse(to, cause, after)
	}
	if err := ctx.Err(); err != nil {
		to.leave(cost)
		return err
	}
	if !c.room(dear) {
		to.leave(cost)
		return c.gate.refuse(to, AnswersNotTaken, time.Second)
	}
	c.lane, c.cost = to, cost
	return nil
}

// Leave gives back what the call holds, if anything: its work is done, and what is
// left is to send the answer.
func (c *Call) Leave() {
	if c.lane != nil {
		c.lane.leave(c.cost)
		c.lane, c.cost = nil, 0
	}
}

func (g *Gate) refuse(l *lane, cause Cause, after time.Duration) error {
	g.refused.WithLabelValues(string(cause), l.name).Inc()
	return &Refusal{Cause: cause, Dear: l == g.dear, After: after}
}

// CallKey is the place of a *Call in a context.
type CallKey struct{}

// With makes the call known to what is called with the context.
func With(ctx context.Context, c *Call) context.Context { return context.WithValue(ctx, CallKey{}, c) }

// From is the call that a context belongs to, or nil.
func From(ctx context.Context) *Call {
	c, _ := ctx.Value(CallKey{}).(*Call)
	return c
}

// Enter has the context's call enter its gate. Where there is none, everything is
// worked on at once.
func Enter(ctx context.Context, cost int) error {
	if c := From(ctx); c != nil {
		return c.Enter(ctx, cost)
	}
	return nil
}
