package service

import (
	"context"
	"log/slog"
	"testing"

	"github.com/prometheus/client_golang/prometheus"
)

// Of many calls those are counted, once, that have ended and come to nothing of ours; none is held longer than it waits.
func TestUnreached(t *testing.T) {
	registry := prometheus.NewRegistry()
	m, err := newMetrics(registry, Release{}, slog.New(slog.DiscardHandler))
	if err != nil {
		t.Fatal(err)
	}
	u := newUnreached(m.refusals)
	counted := func() float64 {
		return value(gathered(t, registry), "knitmath_refusals_total", "face", faceGRPC, "reason", reasonUnreadable)
	}
	ended, end := context.WithCancel(t.Context())
	end()
	const each = 1000
	var waiting []*openCall
	for range each {
		come, gone, wait := &openCall{Context: ended}, &openCall{Context: ended}, &openCall{Context: t.Context()}
		come.reached.Store(true)
		waiting = append(waiting, wait)
		for _, c := range []*openCall{come, gone, wait} {
			u.add(c)
		}
		if held, most := len(u.calls), 2*len(waiting)+fewUnreached; held > most {
			t.Fatalf("%d are held while %d wait", held, len(waiting))
		}
	}
	u.look()
	if got := counted(); got != each || len(u.calls) != each {
		t.Errorf("%v are counted and %d held, want %d of both", got, len(u.calls), each)
	}
	for _, c := range waiting {
		c.reached.Store(true)
	}
	u.look()
	if got := counted(); got != each || len(u.calls) != 0 {
		t.Errorf("in the end %v are counted and %d held", got, len(u.calls))
	}
}
