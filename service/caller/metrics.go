package caller

import "github.com/prometheus/client_golang/prometheus"

// admitted is the verdict on a call that is not refused.
const admitted = "ADMITTED"

// figures count calls by caller. The label is the name of a key, Public or Unknown,
// never anything that a caller has sent.
type figures struct {
	calls  *prometheus.CounterVec
	cost   *prometheus.CounterVec
	public *tally
}

func newFigures(reg prometheus.Registerer) (*figures, error) {
	f := &figures{
		calls: prometheus.NewCounterVec(prometheus.CounterOpts{
			Name: "knitmath_caller_calls_total",
			Help: "Calls by whose they were, and whether they were admitted or why not; BUDGET_SPENT are some of those admitted.",
		}, []string{"caller", "verdict"}),
		cost: prometheus.NewCounterVec(prometheus.CounterOpts{
			Name: "knitmath_caller_cost_total", Help: "Steps of work that callers have asked for."}, []string{"caller"}),
	}
	for _, c := range []prometheus.Collector{f.calls, f.cost} {
		if err := reg.Register(c); err != nil {
			return nil, err
		}
	}
	f.public = f.of(Public)
	for _, reason := range []string{KeyRequired, KeyUnknown, KeyMalformed, RateLimited} {
		f.calls.WithLabelValues(Unknown, reason)
	}
	return f, nil
}

// tally is what is counted of one caller.
type tally struct {
	admitted, spent prometheus.Counter
	figures         *figures
	name            string
}

// of is the tally of a caller, all of whose series begin at 0.
func (f *figures) of(name string) *tally {
	for _, reason := range []string{OriginNotAllowed, RateLimited, BudgetSpent} {
		f.calls.WithLabelValues(name, reason)
	}
	return &tally{f.calls.WithLabelValues(name, admitted), f.cost.WithLabelValues(name), f, name}
}

func (t *tally) refuse(r *Refusal) *Refusal {
	t.figures.calls.WithLabelValues(t.name, r.Reason).Inc()
	return r
}

// metric is how many addresses are remembered.
func (a *addresses) metric() prometheus.Collector {
	return prometheus.NewGaugeFunc(prometheus.GaugeOpts{
		Name: "knitmath_caller_addresses", Help: "Addresses whose calls are counted; the oldest are forgotten beyond 65536.",
	}, func() float64 { return float64(a.known.Len()) })
}
