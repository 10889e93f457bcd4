package conns

import "github.com/prometheus/client_golang/prometheus"

// What was refused, as the metrics name it.
const (
	refusedConn = "connection"
	refusedCall = "call"
)

var refusals = []string{refusedConn, refusedCall}

func newCut() *prometheus.CounterVec {
	return prometheus.NewCounterVec(prometheus.CounterOpts{
		Name: "knitmath_connections_cut_total", Help: "Connections cut off so that others are served, by face and cause.",
	}, []string{"face", "cause"})
}

func newRefused() *prometheus.CounterVec {
	return prometheus.NewCounterVec(prometheus.CounterOpts{
		Name: "knitmath_refused_unread_total", Help: "Connections closed, and calls refused before their question was read, for want of room.",
	}, []string{"face", "what"})
}

var (
	connsDesc     = prometheus.NewDesc("knitmath_connections", "Connections open.", []string{"face"}, nil)
	openDesc      = prometheus.NewDesc("knitmath_calls_open", "Calls begun and not answered to the end.", []string{"face"}, nil)
	answersDesc   = prometheus.NewDesc("knitmath_answer_bytes_pending", "Bytes of answers made and not taken by their callers.", nil, nil)
	questionsDesc = prometheus.NewDesc("knitmath_question_bytes_pending", "Bytes read of questions that are not answered.", nil, nil)
)

// Describe says which figures there are.
func (k *Keeper) Describe(to chan<- *prometheus.Desc) {
	for _, d := range []*prometheus.Desc{connsDesc, openDesc, answersDesc, questionsDesc} {
		to <- d
	}
	k.cut.Describe(to)
	k.refused.Describe(to)
}

// Collect gives the figures of the moment.
func (k *Keeper) Collect(to chan<- prometheus.Metric) {
	for _, f := range k.faces {
		to <- prometheus.MustNewConstMetric(connsDesc, prometheus.GaugeValue, float64(f.Count()), f.name)
		to <- prometheus.MustNewConstMetric(openDesc, prometheus.GaugeValue, float64(f.Open()), f.name)
	}
	to <- prometheus.MustNewConstMetric(answersDesc, prometheus.GaugeValue, float64(k.answers.Load()))
	to <- prometheus.MustNewConstMetric(questionsDesc, prometheus.GaugeValue, float64(k.questions.Load()))
	k.cut.Collect(to)
	k.refused.Collect(to)
}
