package admit

import (
	"context"
	"errors"
	"slices"
	"sync"
	"testing"
	"testing/synctest"
	"time"

	dto "github.com/prometheus/client_model/go"
)

// taker has room as it says.
type taker func(dear bool) bool

func (t taker) Room(dear bool) bool { return t(dear) }

// newCall is of a caller who takes everything.
func newCall(g *Gate) *Call {
	c := g.NewCall(nil)
	return &c
}

// small is a gate with one slot a lane.
func small() *Gate {
	limits := Limits{Running: 1, Waiting: 2, WaitingCost: 100_000, Patience: time.Second, Hurry: 100 * time.Millisecond}
	return NewGate(limits, limits)
}

// enter has a new call enter, and fails the test when it may not.
func enter(t *testing.T, g *Gate, cost int) *Call {
	t.Helper()
	c := newCall(g)
	if err := c.Enter(t.Context(), cost); err != nil {
		t.Fatal(err)
	}
	return c
}

func checkRefused(t *testing.T, err error, want Cause, dear bool) {
	t.Helper()
	var r *Refusal
	if !errors.As(err, &r) || r.Cause != want || r.Dear != dear || r.After < time.Second {
		t.Errorf("%v, want %s, dear %v", err, want, dear)
	}
}

// checkEmpty wants nothing to be held at the end.
func checkEmpty(t *testing.T, g *Gate) {
	t.Helper()
	for _, l := range []*lane{g.light, g.dear} {
		if running, waiting, cost := l.figures(); running != 0 || waiting != 0 || cost != 0 || l.waitingCost != 0 {
			t.Errorf("%s: %d running, %d waiting, cost %d, waiting cost %d", l.name, running, waiting, cost, l.waitingCost)
		}
	}
}

// A light call runs while dear ones fill their lane, and the other way round.
func TestLanesAreApart(t *testing.T) {
	g := small()
	dear, light := enter(t, g, dearCost), enter(t, g, dearCost-1)
	dear.Leave()
	enter(t, g, dearCost).Leave()
	light.Leave()
	checkEmpty(t, g)
}

// What does not fit is refused, and what waits gets its turn.
func TestWaitsAreBounded(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		g := small()
		first := enter(t, g, dearCost)
		var group sync.WaitGroup
		for range 2 {
			group.Go(func() { enter(t, g, dearCost).Leave() })
		}
		synctest.Wait()
		checkRefused(t, newCall(g).Enter(t.Context(), dearCost), TooManyWait, true)
		first.Leave()
		group.Wait()
		checkEmpty(t, g)
		var got dto.Metric
		if err := g.refused.WithLabelValues(string(TooManyWait), "dear").Write(&got); err != nil || got.GetCounter().GetValue() != 1 {
			t.Errorf("refused: %v, %v", &got, err)
		}
	})
}

// The cost of those that wait is bounded as their number is: nobody waits for what
// cannot come in time.
func TestWaitingCostIsBounded(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		g := small()
		first := enter(t, g, dearCost)
		var group sync.WaitGroup
		group.Go(func() { enter(t, g, 90_000).Leave() })
		synctest.Wait()
		checkRefused(t, newCall(g).Enter(t.Context(), 20_000), TooManyWait, true)
		first.Leave()
		group.Wait()
		checkEmpty(t, g)
	})
}

// A burst may wait for a second; where calls have waited all through a second, the
// next have a tenth.
func TestPatience(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		g := small()
		first := enter(t, g, 1)
		waits := func(want time.Duration) {
			t.Helper()
			begin := time.Now()
			checkRefused(t, newCall(g).Enter(t.Context(), 1), WaitedTooLong, false)
			if took := time.Since(begin); took != want {
				t.Errorf("waited %v, want %v", took, want)
			}
		}
		waits(time.Second)
		var group sync.WaitGroup
		group.Go(func() { waits(time.Second) }) // The queue was empty before it, and is not for a second.
		<-time.After(900 * time.Millisecond)
		group.Go(func() { waits(time.Second) })
		<-time.After(200 * time.Millisecond)
		waits(100 * time.Millisecond)
		group.Wait()
		waits(time.Second)
		first.Leave()
		checkEmpty(t, g)
	})
}

// A caller who goes away leaves the queue.
func TestCallerGoesAway(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		g := small()
		first := enter(t, g, 1)
		ctx, cancel := context.WithCancel(t.Context())
		gone := make(chan error)
		go func() { gone <- newCall(g).Enter(ctx, 1) }()
		synctest.Wait()
		cancel()
		if err := <-gone; !errors.Is(err, context.Canceled) {
			t.Error(err)
		}
		first.Leave()
		checkEmpty(t, g)
	})
}

// What its caller has given up is not worked on, though there is room, nor when its turn
// has come in the same moment.
func TestGivenUpIsNotWorkedOn(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		g := small()
		ctx, cancel := context.WithCancel(t.Context())
		cancel()
		if err := newCall(g).Enter(ctx, dearCost); !errors.Is(err, context.Canceled) {
			t.Errorf("a call that was given up before: %v", err)
		}
		for range 100 {
			first := enter(t, g, 1)
			ctx, cancel := context.WithCancel(t.Context())
			var err error
			var group sync.WaitGroup
			group.Go(func() { err = newCall(g).Enter(ctx, 1) })
			synctest.Wait()
			cancel()
			first.Leave()
			if group.Wait(); !errors.Is(err, context.Canceled) {
				t.Fatalf("a call that was given up while it waited: %v", err)
			}
		}
		checkEmpty(t, g)
	})
}

// Of those that wait the cheapest goes first, unless a dearer one has waited ten
// times as long as it takes.
func TestCheapestFirst(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		limits := Limits{Running: 1, Waiting: 9, WaitingCost: 1_000_000, Patience: time.Minute, Hurry: time.Minute}
		g := NewGate(limits, limits)
		first := enter(t, g, dearCost)
		var order []int
		var group sync.WaitGroup
		queue := func(cost int) {
			group.Go(func() {
				c := enter(t, g, cost)
				order = append(order, cost) // One at a time: there is one slot.
				c.Leave()
			})
			synctest.Wait()
		}
		queue(20_000)
		queue(50_000)
		<-time.After(250 * time.Millisecond)
		queue(1000)
		first.Leave()
		group.Wait()
		if want := []int{20_000, 1000, 50_000}; !slices.Equal(order, want) {
			t.Errorf("%v, want %v", order, want)
		}
	})
}

// A call whose price rises changes lanes, once, and holds one slot.
func TestPriceRises(t *testing.T) {
	g := small()
	c := enter(t, g, 100)
	if err := c.Enter(t.Context(), 100); err != nil || c.lane != g.light {
		t.Errorf("%v in %s", err, c.lane.name)
	}
	if _, _, cost := g.light.figures(); cost != 200 {
		t.Errorf("cost %d", cost)
	}
	if err := c.Enter(t.Context(), dearCost); err != nil || c.lane != g.dear {
		t.Errorf("%v in %s", err, c.lane.name)
	}
	enter(t, g, 1).Leave() // The slot of the light lane is free.
	c.Leave()
	c.Leave()
	checkEmpty(t, g)
}

// Whoever does not take answers is refused before the work, and holds nothing.
func TestAnswersNotTaken(t *testing.T) {
	g := small()
	asked := 0
	c := g.NewCall(taker(func(bool) bool { asked++; return asked == 1 }))
	checkRefused(t, c.Enter(t.Context(), dearCost), AnswersNotTaken, true) // Found out after the wait.
	checkRefused(t, c.Enter(t.Context(), 1), AnswersNotTaken, false)
	checkEmpty(t, g)
}

// Without a gate everything is worked on.
func TestNoGate(t *testing.T) {
	if err := Enter(t.Context(), 1<<40); err != nil {
		t.Error(err)
	}
}
