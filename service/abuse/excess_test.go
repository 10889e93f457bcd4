package abuse

import (
	"sync"
	"testing"
)

// excessCalls is how many questions are asked in all, however many ask.
const excessCalls = 6000

// Ten times as many callers make no answer dearer: what it takes of memory is counted,
// since time is the machine's (.ci/abuse shows the processor's too).
func TestManyCallersMakeNoAnswerDearer(t *testing.T) {
	path, err := binary()
	if err != nil {
		t.Fatal(err)
	}
	for _, face := range []string{faceGRPC, faceJSON} {
		t.Run(face, func(t *testing.T) {
			t.Parallel()
			p, err := Start(path)
			if err != nil {
				t.Fatal(err)
			}
			t.Cleanup(func() { _ = p.Stop() })
			spentBy(t, p, face, 10) // What the program makes once is made now.
			few, many := spentBy(t, p, face, 12), spentBy(t, p, face, 120)
			t.Logf("an answer to one of 12 callers takes %.1f allocations of %.0f bytes, of 120 %.1f of %.0f",
				few.Allocated, few.Bytes, many.Allocated, many.Bytes)
			if many.Allocated > 1.1*few.Allocated || many.Bytes > 1.1*few.Bytes {
				t.Error("that is more than a tenth more")
			}
		})
	}
}

// spentBy is what an answer takes of the program while so many ask.
func spentBy(t *testing.T, p *Program, face string, callers int) Spent {
	t.Helper()
	before, err := p.Spent()
	if err != nil {
		t.Fatal(err)
	}
	ask, end := askerOf(face, p.Addresses, max(callers/50, 1))
	defer end()
	var group sync.WaitGroup
	for i := range callers {
		group.Go(func() {
			for answered := 0; answered < excessCalls/callers && t.Context().Err() == nil; {
				switch err := ask(t.Context(), castOn, i); {
				case err == nil:
					answered++
				case !isRefusal(err):
					t.Error(err)
					return
				}
			}
		})
	}
	group.Wait()
	after, err := p.Spent()
	if err != nil {
		t.Fatal(err)
	}
	return after.Less(before).Each()
}
