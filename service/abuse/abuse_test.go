package abuse

import (
	"context"
	"os"
	"sync"
	"testing"
	"time"
)

// binary is the program, built once.
var binary = sync.OnceValues(func() (string, error) {
	dir, err := os.MkdirTemp("", "abuse")
	if err != nil {
		return "", err
	}
	return Build(dir)
})

func TestMain(m *testing.M) {
	code := m.Run()
	if path, err := binary(); err == nil {
		_ = os.RemoveAll(path)
	}
	os.Exit(code)
}

// mostMiB is the memory limit of the Kubernetes manifest.
const mostMiB = 640

// answers are the figures of which at least one must have risen, so that an attack
// is known to have been one. Of the dearest of every method some are refused for what
// they ask, also where the callers are too slow to be refused for load.
var answers = map[string][]string{
	"long answers never taken, gRPC":               {"knitmath_calls_refused_total", "knitmath_refused_unread_total"},
	"long answers never taken, gRPC, compressed":   {"knitmath_calls_refused_total", "knitmath_refused_unread_total"},
	"short answers never taken, gRPC":              {"knitmath_refused_unread_total"},
	"long answers never read, JSON":                {"knitmath_calls_refused_total"},
	"callers of the dearest, gRPC":                 {"knitmath_calls_refused_total"},
	"callers of the dearest, JSON":                 {"knitmath_calls_refused_total"},
	"very many callers of the dearest, gRPC":       {"knitmath_calls_refused_total"},
	"very many callers of the dearest, JSON":       {"knitmath_calls_refused_total"},
	"callers of the dearest of every method, gRPC": {"knitmath_calls_refused_total", "knitmath_refusals_total"},
	"callers of the dearest of every method, JSON": {"knitmath_calls_refused_total", "knitmath_refusals_total"},
	"idle connections, gRPC":                       {"knitmath_connections_cut_total", "knitmath_refused_unread_total"},
	"idle connections, JSON":                       {"knitmath_connections_cut_total", "knitmath_refused_unread_total"},
	"bodies never sent to the end, gRPC":           {"knitmath_connections_cut_total", "knitmath_refused_unread_total"},
	"bodies never sent to the end, JSON":           {"knitmath_connections_cut_total", "knitmath_refused_unread_total"},
	"calls given up at once, gRPC":                 {"knitmath_connections_cut_total", "knitmath_refused_unread_total"},
}

// Each attack in its short form: the program keeps to its memory, answers probes and
// light callers all the while, and has given back everything in the end.
func TestAttacks(t *testing.T) {
	path, err := binary()
	if err != nil {
		t.Fatal(err)
	}
	// Read before any time runs: that takes long where the race detector looks on.
	if all, err := dearestOfAll(); err != nil || len(all) == 0 {
		t.Fatal(err)
	}
	for _, a := range Attacks {
		if a.Short == 0 { // Not for what it hurts, but to compare others with.
			continue
		}
		t.Run(a.Name, func(t *testing.T) {
			t.Parallel()
			p, err := Start(path, "-max-connections=200")
			if err != nil {
				t.Fatal(err)
			}
			t.Cleanup(func() { _ = p.Stop() })
			ctx, cancel := context.WithTimeout(t.Context(), longest)
			defer cancel()
			var light, probes Beside
			var group sync.WaitGroup
			began := make(chan struct{})
			group.Go(func() { light = Light(ctx, p.Addresses, func() { close(began) }) })
			<-began
			group.Go(func() { a.Run(ctx, p.Addresses, a.Short) })
			group.Go(func() { probes = Probes(ctx, p.Addresses) })
			pause(ctx, shortest)
			if answers[a.Name] != nil {
				awaitRise(t, ctx, p, answers[a.Name])
			}
			cancel()
			group.Wait()
			if probes.Asked == 0 || probes.Failed > 0 {
				t.Errorf("of %d probes %d failed", probes.Asked, probes.Failed)
			}
			if answered := light.Answered(); answered == 0 || light.Failed > 0 {
				t.Errorf("of %d light questions %d were answered and %d failed", light.Asked, answered, light.Failed)
			}
			checkSettled(t, p)
			most, err := p.HighWaterMiB()
			if err != nil || most > mostMiB {
				t.Errorf("%v MiB, %v", most, err)
			}
			t.Logf("%.0f MiB at most; %d light calls, %d refused", most, light.Asked, light.Refused)
		})
	}
}

const (
	shortest = time.Second      // how long an attack goes on in any case
	longest  = 30 * time.Second // and until it has been answered
)

// awaitRise waits until one of the figures has risen.
func awaitRise(t *testing.T, ctx context.Context, p *Program, names []string) {
	t.Helper()
	for ctx.Err() == nil {
		if sum(t, p, names) > 0 {
			return
		}
		pause(ctx, waitStep)
	}
	t.Errorf("none of %q has risen", names)
}

// checkSettled wants nothing to be held any more after a while.
func checkSettled(t *testing.T, p *Program) {
	t.Helper()
	held := []string{"knitmath_calls_in_flight", "knitmath_calls_waiting", "knitmath_cost_in_flight",
		"knitmath_answer_bytes_pending", "knitmath_question_bytes_pending", "knitmath_calls_open"}
	for range 100 {
		if sum(t, p, held) == 0 {
			return
		}
		pause(t.Context(), waitStep)
	}
	t.Errorf("not all of %q was given back", held)
}

func sum(t *testing.T, p *Program, names []string) (sum float64) {
	t.Helper()
	figures, err := p.Figures()
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range names {
		sum += figures[name]
	}
	return sum
}
