package main

import (
	"fmt"
	"io"
	"slices"
	"syscall"
	"time"

	"google.golang.org/protobuf/proto"

	"example.com/knitmath/service/answerjson"
)

// rounds is how often a question is timed. The least of the times is told: it is
// what the question takes, and all more is what else the machine did.
const rounds = 30

// table writes what the dearest questions of every method take, as Markdown.
func table(to io.Writer, list []method, folder string) error {
	_, _ = fmt.Fprintln(to, "| Method | accepted, ms | MB | written as JSON, ms | MB | steps | refused, ms | MB |")
	_, _ = fmt.Fprintln(to, "| --- | --- | --- | --- | --- | --- | --- | --- |")
	slices.SortFunc(list, func(a, b method) int { return compare(a.name, b.name) })
	for _, m := range list {
		known, err := readKnown(m, folder)
		if err != nil {
			return err
		}
		var accepted, refused timing
		for _, question := range known {
			t, err := timed(m, question)
			if err != nil {
				return err
			}
			if t.answered {
				accepted = accepted.or(t)
			} else {
				refused = refused.or(t)
			}
		}
		_, err = fmt.Fprintf(to, "| %s | %s | %s | %s | %s | %d | %s | %s |\n",
			m.name, ms(accepted.took), mb(accepted.bytes), ms(accepted.written),
			mb(accepted.writtenBytes), accepted.price, ms(refused.took), mb(refused.bytes))
		if err != nil {
			return err
		}
	}
	return nil
}

func compare(a, b string) int {
	if a < b {
		return -1
	}
	return 1
}

// timing is what a question takes, and what writing its answer as JSON takes.
type timing struct {
	took, written       time.Duration
	bytes, writtenBytes int64
	price               int
	answered            bool
}

// or is the greatest of each figure.
func (t timing) or(u timing) timing {
	return timing{max(t.took, u.took), max(t.written, u.written), max(t.bytes, u.bytes), max(t.writtenBytes, u.writtenBytes),
		max(t.price, u.price), true}
}

func timed(m method, question proto.Message) (timing, error) {
	f, err := measured(m, question)
	if err != nil {
		return timing{}, err
	}
	t := timing{bytes: f.Bytes, price: f.Price, answered: !f.Refused}
	var answer proto.Message
	t.took = least(func() { answer, _ = m.ask(question) })
	if answer != nil {
		write := func() {
			_, err = answerjson.Append(nil, answer)
		}
		t.written = least(write)
		_, t.writtenBytes, _ = counted(write)
	}
	return t, err
}

// least is the least time of the processor that f takes, which others on the machine hardly change.
func least(f func()) time.Duration {
	best := time.Hour
	for range rounds {
		start := processor()
		f()
		best = min(best, processor()-start)
	}
	return best
}

// processor is the time that the process has had so far.
func processor() time.Duration {
	var used syscall.Rusage
	if err := syscall.Getrusage(syscall.RUSAGE_SELF, &used); err != nil {
		panic(err) // there is no other reason than a wrong argument
	}
	return time.Duration(used.Utime.Nano() + used.Stime.Nano())
}

func ms(d time.Duration) string { return fmt.Sprintf("%.2f", float64(d.Microseconds())/1e3) }
func mb(n int64) string         { return fmt.Sprintf("%.2f", float64(n)/1e6) }
