package abuse

import "time"

// Spent is what the program has taken so far, by its own metrics, and for how many
// calls that it answered. Unlike what an attacker gets answered in a second, it does
// not depend on what the attacker takes of a machine that both share.
type Spent struct {
	Answered  float64
	Processor time.Duration
	// Allocated is how often and Bytes how much memory was allocated.
	Allocated, Bytes float64
}

// Spent asks the program.
func (p *Program) Spent() (s Spent, err error) {
	families, err := p.metrics()
	if err != nil {
		return s, err
	}
	for _, m := range families["grpc_server_handled_total"].GetMetric() {
		if label(m, "grpc_type") == "unary" && label(m, "grpc_code") == "OK" {
			s.Answered += m.GetCounter().GetValue()
		}
	}
	one := func(name string) (value float64) {
		for _, m := range families[name].GetMetric() {
			value += m.GetCounter().GetValue()
		}
		return value
	}
	s.Processor = time.Duration(one("process_cpu_seconds_total") * float64(time.Second))
	s.Allocated, s.Bytes = one("go_memstats_mallocs_total"), one("go_memstats_alloc_bytes_total")
	return s, nil
}

// Less is what was spent beyond what other has.
func (s Spent) Less(other Spent) Spent {
	return Spent{s.Answered - other.Answered, s.Processor - other.Processor, s.Allocated - other.Allocated, s.Bytes - other.Bytes}
}

// Each is what that is for each call that was answered; nothing where those are few.
func (s Spent) Each() Spent {
	if s.Answered < enough {
		return Spent{}
	}
	return Spent{1, time.Duration(float64(s.Processor) / s.Answered), s.Allocated / s.Answered, s.Bytes / s.Answered}
}
