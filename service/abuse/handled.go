package abuse

import (
	"math"
	"time"

	dto "github.com/prometheus/client_model/go"
)

// enough is how many calls of a method say something of the slowest hundredth.
const enough = 100

// Handled is what 99 of 100 accepted calls took at most within the program, from when
// they had come to when they were answered, waiting for room included: the bound of a
// bucket of the program's own histogram, of the method that took longest. What a caller
// sees beside is what he and the network take. Refused calls are taken to be the
// fastest; where they have waited, the figure is too great and never too small.
func (p *Program) Handled() (time.Duration, error) {
	families, err := p.metrics()
	if err != nil {
		return 0, err
	}
	refused := map[string]float64{}
	for _, m := range families["grpc_server_handled_total"].GetMetric() {
		if label(m, "grpc_code") == "ResourceExhausted" {
			refused[label(m, "grpc_method")] = m.GetCounter().GetValue()
		}
	}
	worst := 0.0
	for _, m := range families["grpc_server_handling_seconds"].GetMetric() {
		h := m.GetHistogram()
		all := float64(h.GetSampleCount())
		accepted := all - refused[label(m, "grpc_method")]
		if label(m, "grpc_type") != "unary" || accepted < enough {
			continue
		}
		for _, b := range h.GetBucket() {
			if float64(b.GetCumulativeCount()) >= all-accepted/100 {
				worst = max(worst, b.GetUpperBound())
				break
			}
		}
	}
	if math.IsInf(worst, 1) {
		return math.MaxInt64, nil
	}
	return time.Duration(worst * float64(time.Second)), nil
}

func label(m *dto.Metric, name string) string {
	for _, l := range m.GetLabel() {
		if l.GetName() == name {
			return l.GetValue()
		}
	}
	return ""
}
