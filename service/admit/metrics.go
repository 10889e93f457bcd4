package admit

import "github.com/prometheus/client_golang/prometheus"

func newRefused() *prometheus.CounterVec {
	return prometheus.NewCounterVec(prometheus.CounterOpts{
		Name: "knitmath_calls_refused_total", Help: "Calls refused for load before they were worked on, by cause and lane.",
	}, []string{"cause", "lane"})
}

var (
	runningDesc = prometheus.NewDesc("knitmath_calls_in_flight", "Calls that are worked on.", []string{"lane"}, nil)
	waitingDesc = prometheus.NewDesc("knitmath_calls_waiting", "Calls that wait for their turn.", []string{"lane"}, nil)
	costDesc    = prometheus.NewDesc("knitmath_cost_in_flight", "What the calls that are worked on cost, in steps.", []string{"lane"}, nil)
)

// Describe says which figures there are.
func (g *Gate) Describe(to chan<- *prometheus.Desc) {
	to <- runningDesc
	to <- waitingDesc
	to <- costDesc
	g.refused.Describe(to)
}

// Collect gives the figures of the moment.
func (g *Gate) Collect(to chan<- prometheus.Metric) {
	for _, l := range []*lane{g.light, g.dear} {
		running, waiting, cost := l.figures()
		to <- prometheus.MustNewConstMetric(runningDesc, prometheus.GaugeValue, float64(running), l.name)
		to <- prometheus.MustNewConstMetric(waitingDesc, prometheus.GaugeValue, float64(waiting), l.name)
		to <- prometheus.MustNewConstMetric(costDesc, prometheus.GaugeValue, float64(cost), l.name)
	}
	g.refused.Collect(to)
}
