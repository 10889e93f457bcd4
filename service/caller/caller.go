package caller

import (
	"context"
	"time"
)

// Caller is who calls.
type Caller struct {
	// Name is that of the key, or Public. It is one of a fixed set.
	Name string
	// limits are from the widest to the narrowest. The narrowest is asked first, so
	// that who is beyond it takes nothing from the others who have the same key.
	limits []*limit
	tally  *tally
}

// admit counts a call.
func (c *Caller) admit() (*Caller, *Refusal) {
	for i := len(c.limits) - 1; i >= 0; i-- {
		if after := take(c.limits[i].calls, 1); after > 0 {
			return c, c.tally.refuse(rateLimited(after))
		}
	}
	c.tally.admitted.Inc()
	return c, nil
}

// mostCost is what a question costs its caller at most. A dearer one is refused by
// the kernel, which is cheap, and may be a slip.
const mostCost = 100_000

// Spend takes the cost of a question out of what its caller may ask. Where nobody
// was asked who calls, everything may be.
func (c *Caller) Spend(steps int) *Refusal {
	if c == nil {
		return nil
	}
	steps = min(steps, mostCost)
	for i := len(c.limits) - 1; i >= 0; i-- {
		if after := take(c.limits[i].cost, steps); after > 0 {
			return c.tally.refuse(budgetSpent(after))
		}
	}
	c.tally.spent.Add(float64(steps))
	return nil
}

// Owe takes what a question cost beside what was spent for it, which is known only
// when it has been worked. Who has not got so much owes it.
func (c *Caller) Owe(steps int) {
	if c == nil || steps <= 0 {
		return
	}
	for _, l := range c.limits {
		if l.cost != nil {
			l.cost.ReserveN(time.Now(), min(steps, l.cost.Burst()))
		}
	}
	c.tally.spent.Add(float64(steps))
}

type callerKey struct{}

// With is ctx in which c calls.
func With(ctx context.Context, c *Caller) context.Context {
	return context.WithValue(ctx, callerKey{}, c)
}

// Of is who calls, nil where nobody was asked.
func Of(ctx context.Context) *Caller {
	c, _ := ctx.Value(callerKey{}).(*Caller)
	return c
}
