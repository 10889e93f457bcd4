package watched

import (
	"log/slog"

	"github.com/prometheus/client_golang/prometheus"
)

// Reports tells the log and the metrics of files that were read again.
type Reports struct {
	logger *slog.Logger
	reads  *prometheus.CounterVec
	stale  *prometheus.GaugeVec
}

// NewReports registers the figures with reg.
func NewReports(logger *slog.Logger, reg prometheus.Registerer) (*Reports, error) {
	r := &Reports{
		logger: logger,
		reads: prometheus.NewCounterVec(prometheus.CounterOpts{
			Name: "knitmath_file_reloads_total", Help: "Files that changed, by whether what they hold was taken or refused."},
			[]string{"what", "result"}),
		stale: prometheus.NewGaugeVec(prometheus.GaugeOpts{
			Name: "knitmath_file_stale", Help: "1 while the files hold what was refused, and what they held before is used."},
			[]string{"what"}),
	}
	for _, c := range []prometheus.Collector{r.reads, r.stale} {
		if err := reg.Register(c); err != nil {
			return nil, err
		}
	}
	return r, nil
}

func (r *Reports) of(what string) teller {
	t := teller{r, what}
	r.reads.WithLabelValues(what, "taken")
	r.reads.WithLabelValues(what, "refused")
	t.current()
	return t
}

// teller tells of the files of one value.
type teller struct {
	to   *Reports
	what string
}

func (t teller) current() { t.to.stale.WithLabelValues(t.what).Set(0) }

func (t teller) taken() {
	t.current()
	t.to.reads.WithLabelValues(t.what, "taken").Inc()
	t.to.logger.Info("files read again", "what", t.what)
}

func (t teller) refused(err error) {
	t.to.stale.WithLabelValues(t.what).Set(1)
	t.to.reads.WithLabelValues(t.what, "refused").Inc()
	t.to.logger.Error("files changed and refused; what they held before is used", "what", t.what, "cause", err)
}
