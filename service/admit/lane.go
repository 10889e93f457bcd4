package admit

import (
	"container/heap"
	"context"
	"sync"
	"time"
)

// lane lets some calls run and some more wait.
type lane struct {
	name   string
	limits Limits

	mu          sync.Mutex
	running     int
	cost        int // of those that run
	waiting     queue
	waitingCost int
	// calm is when last nobody waited.
	calm time.Time
}

func newLane(name string, limits Limits) *lane { return &lane{name: name, limits: limits} }

// enter returns when the call may run, or why it may not, and when to try again.
func (l *lane) enter(ctx context.Context, cost int) (Cause, time.Duration, error) {
	l.mu.Lock()
	if l.running < l.limits.Running && len(l.waiting) == 0 {
		l.start(cost)
		l.mu.Unlock()
		return "", 0, nil
	}
	now := time.Now()
	if len(l.waiting) == 0 {
		l.calm = now
	}
	wait := l.limits.Patience
	if now.Sub(l.calm) >= l.limits.Patience {
		wait = l.limits.Hurry
	}
	// What waits at a microsecond a step, shared over the slots, is what this call
	// would wait for. Of those that wait the cheapest come first, so a light call
	// may still get through where a dear one is told that it would be too late.
	share := time.Duration(l.waitingCost/l.limits.Running) * time.Microsecond
	if len(l.waiting) >= l.limits.Waiting || l.waitingCost+cost > l.limits.WaitingCost || share > wait {
		l.mu.Unlock()
		return TooManyWait, max(share, time.Second), nil
	}
	w := &waiter{cost: cost, turn: now.Add(time.Duration(cost) * headStart), ready: make(chan struct{})}
	heap.Push(&l.waiting, w)
	l.waitingCost += cost
	l.mu.Unlock()

	timer := time.NewTimer(wait)
	defer timer.Stop()
	select {
	case <-w.ready:
		return "", 0, nil
	case <-timer.C:
		if l.giveUp(w) {
			return WaitedTooLong, max(share, time.Second), nil
		}
	case <-ctx.Done():
		if l.giveUp(w) {
			return "", 0, ctx.Err()
		}
	}
	return "", 0, nil // Its turn came in the same moment.
}

// giveUp takes a call out of the queue, unless its turn has come.
func (l *lane) giveUp(w *waiter) bool {
	l.mu.Lock()
	defer l.mu.Unlock()
	if w.at < 0 {
		return false
	}
	heap.Remove(&l.waiting, w.at)
	l.waitingCost -= w.cost
	return true
}

// add puts more on the account of a call that runs.
func (l *lane) add(cost int) {
	l.mu.Lock()
	l.cost += cost
	l.mu.Unlock()
}

// leave ends a call, and lets the next one run.
func (l *lane) leave(cost int) {
	l.mu.Lock()
	defer l.mu.Unlock()
	l.running--
	l.cost -= cost
	for l.running < l.limits.Running && len(l.waiting) > 0 {
		w := heap.Pop(&l.waiting).(*waiter)
		l.waitingCost -= w.cost
		l.start(w.cost)
		close(w.ready)
	}
}

func (l *lane) start(cost int) {
	l.running++
	l.cost += cost
}

// figures are what the metrics show.
func (l *lane) figures() (running, waiting, cost int) {
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.running, len(l.waiting), l.cost
}

// headStart is how much later a call counts as having come for each step it costs:
// ten times what it takes. A cheap call passes a dear one, and a dear one that has
// waited long is passed no more.
const headStart = 10 * time.Microsecond

// waiter is a call whose turn has not come.
type waiter struct {
	cost  int
	turn  time.Time
	at    int // its place in the queue, -1 when it has left it
	ready chan struct{}
}

// queue is a heap of those that wait, the next one first.
type queue []*waiter

func (q queue) Len() int           { return len(q) }
func (q queue) Less(i, j int) bool { return q[i].turn.Before(q[j].turn) }

func (q queue) Swap(i, j int) {
	q[i], q[j] = q[j], q[i]
	q[i].at, q[j].at = i, j
}

func (q *queue) Push(x any) {
	w, _ := x.(*waiter) // Nothing else is pushed.
	w.at = len(*q)
	*q = append(*q, w)
}

func (q *queue) Pop() any {
	last := len(*q) - 1
	w := (*q)[last]
	(*q)[last] = nil
	*q = (*q)[:last]
	w.at = -1
	return w
}
