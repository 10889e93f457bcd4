package curve

import (
	"math/rand/v2"
	"reflect"
	"sync"
	"testing"
)

// A plan is the same whatever the memory it is looked for in has been used for: in new
// memory, in that of other questions, and beside other questions.
func TestMemoryLeavesNoTrace(t *testing.T) {
	type question struct {
		course   Course
		settings Settings
		plan     Plan
		ok       bool
	}
	r := rand.New(rand.NewPCG(11, 2026))
	var all []question
	for range 400 {
		q := question{course: randomCourse(r, 40, 90), settings: randomSettings(r)}
		q.course.Gains, q.course.RowsBefore, q.settings.Steady = r.IntN(3) == 0, r.IntN(4), r.IntN(2) == 0
		workspaces = sync.Pool{New: workspaces.New}
		q.plan, q.ok = Follow(q.course, q.settings)
		all = append(all, q)
	}
	again := func(order []int) {
		for _, i := range order {
			q := all[i]
			if p, ok := Follow(q.course, q.settings); ok != q.ok || !reflect.DeepEqual(p, q.plan) {
				t.Errorf("%+v %+v: %+v, and in new memory %+v", q.course, q.settings, p, q.plan)
				return
			}
		}
	}
	again(r.Perm(len(all)))
	var group sync.WaitGroup
	for range 4 {
		order := r.Perm(len(all))
		group.Go(func() { again(order) })
	}
	group.Wait()
}
