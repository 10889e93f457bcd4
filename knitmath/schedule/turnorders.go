package schedule

import (
	"slices"
	"sync"
)

// mostThings is how many things of a nest may take turns: back, front and sleeves.
const mostThings = 3

// A turnStep is one step of a block: after a short interval or a long one, and how many
// of the things are done in it.
type turnStep struct {
	long  bool
	level int
}

// A turnOrder is the steps of a block, in order.
type turnOrder [mostAlike]turnStep

// perThing is a number for each thing of a nest.
type perThing [mostThings]int

// A turnKind is all blocks of so many steps that do every thing as often.
type turnKind struct {
	steps   int
	does    perThing
	classes []turnClass
}

// A turnClass is all orders of its steps that have as many long intervals.
type turnClass struct {
	longs  int
	orders []turnOrder
}

// turnKinds are those of blocks of so many steps. The one of none does nothing.
type turnKinds [mostSteps + 1][]turnKind

// kindsOf are the kinds for so many things, made when they are first asked for.
var kindsOf = [mostThings + 1]func() turnKinds{
	1: sync.OnceValue(func() turnKinds { return newTurnClasses(1) }),
	2: sync.OnceValue(func() turnKinds { return newTurnClasses(2) }),
	3: sync.OnceValue(func() turnKinds { return newTurnClasses(3) }),
}

func newTurnClasses(things int) turnKinds {
	var all turnKinds
	all[0] = []turnKind{{classes: []turnClass{{orders: make([]turnOrder, 1)}}}}
	for steps := 1; steps <= mostSteps; steps++ {
		all.fill(turnOrder{}, 0, steps, things)
	}
	return all
}

// fill tries every step at every place from one on.
func (all *turnKinds) fill(order turnOrder, at, steps, things int) {
	if at == steps {
		all.add(order, steps)
		return
	}
	for level := 1; level <= things; level++ {
		for _, long := range [...]bool{false, true} {
			order[at] = turnStep{long, level}
			all.fill(order, at+1, steps, things)
		}
	}
}

// add puts an order to those like it, unless it is a shorter one several times.
func (all *turnKinds) add(order turnOrder, steps int) {
	for size := 1; size < steps; size++ {
		if steps%size == 0 && order.comesAgain(size, steps) {
			return
		}
	}
	var does perThing
	longs := 0
	for _, s := range order[:steps] {
		for t := range s.level {
			does[t]++
		}
		if s.long {
			longs++
		}
	}
	i := slices.IndexFunc(all[steps], func(k turnKind) bool { return k.does == does })
	if i < 0 {
		i = len(all[steps])
		all[steps] = append(all[steps], turnKind{steps: steps, does: does})
	}
	kind := &all[steps][i]
	j := slices.IndexFunc(kind.classes, func(c turnClass) bool { return c.longs == longs })
	if j < 0 {
		j = len(kind.classes)
		kind.classes = append(kind.classes, turnClass{longs: longs})
	}
	kind.classes[j].orders = append(kind.classes[j].orders, order)
}

// comesAgain reports whether every step is the same so many later.
func (o turnOrder) comesAgain(size, steps int) bool {
	for i := size; i < steps; i++ {
		if o[i] != o[i-size] {
			return false
		}
	}
	return true
}
