package watched

import (
	"bytes"
	"context"
	"errors"
	"log/slog"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/prometheus/client_golang/prometheus"
	dto "github.com/prometheus/client_model/go"
)

// text reads two files as one; what says "broken" is refused.
func text(contents [][]byte) (string, error) {
	all := string(bytes.Join(contents, []byte("|")))
	if strings.Contains(all, "broken") {
		return "", errors.New("it is broken")
	}
	return all, nil
}

// mount is a folder whose files stand behind a link, as a cluster mounts them.
type mount struct {
	tb  testing.TB
	dir string
	n   int
}

func (m *mount) path(name string) string { return filepath.Join(m.dir, "now", name) }

// put points the link at a new folder with these files, all at once.
func (m *mount) put(a, b string) {
	m.n++
	version := filepath.Join(m.dir, string(rune('a'+m.n)))
	link := filepath.Join(m.dir, "next")
	for _, err := range []error{
		os.Mkdir(version, 0o700),
		os.WriteFile(filepath.Join(version, "a"), []byte(a), 0o600),
		os.WriteFile(filepath.Join(version, "b"), []byte(b), 0o600),
		os.Symlink(version, link),
		os.Rename(link, filepath.Join(m.dir, "now")),
	} {
		if err != nil {
			m.tb.Fatal(err)
		}
	}
}

type watching struct {
	*Value[string]
	*mount
	reports *Reports
	log     *bytes.Buffer
}

func open(t *testing.T) *watching {
	t.Helper()
	w := &watching{mount: &mount{tb: t, dir: t.TempDir()}, log: &bytes.Buffer{}}
	w.put("1", "2")
	reports, err := NewReports(slog.New(slog.NewTextHandler(w.log, nil)), prometheus.NewRegistry())
	if err != nil {
		t.Fatal(err)
	}
	w.reports = reports
	if w.Value, err = Open("pair", reports, text, w.path("a"), w.path("b")); err != nil {
		t.Fatal(err)
	}
	return w
}

// figure is what a counter or a gauge says.
func figure(tb testing.TB, of prometheus.Metric) float64 {
	tb.Helper()
	var m dto.Metric
	if err := of.Write(&m); err != nil {
		tb.Fatal(err)
	}
	return m.GetCounter().GetValue() + m.GetGauge().GetValue()
}

// want checks the value and what was counted.
func (w *watching) want(value string, taken, refused, stale float64) {
	w.tb.Helper()
	if got := w.Get(); got != value {
		w.tb.Errorf("value %q, want %q", got, value)
	}
	for _, c := range []struct {
		name      string
		got, want float64
	}{
		{"taken", figure(w.tb, w.reports.reads.WithLabelValues("pair", "taken")), taken},
		{"refused", figure(w.tb, w.reports.reads.WithLabelValues("pair", "refused")), refused},
		{"stale", figure(w.tb, w.reports.stale.WithLabelValues("pair")), stale},
	} {
		if c.got != c.want {
			w.tb.Errorf("%s: %v, want %v", c.name, c.got, c.want)
		}
	}
}

func TestSecondLookTakesAChange(t *testing.T) {
	w := open(t)
	w.Look()
	w.want("1|2", 0, 0, 0)
	w.put("3", "4")
	w.Look()
	w.want("1|2", 0, 0, 0)
	w.Look()
	w.want("3|4", 1, 0, 0)
	w.Look()
	w.want("3|4", 1, 0, 0)
}

// What is still being written differs from look to look.
func TestUnsettledFilesAreLeft(t *testing.T) {
	w := open(t)
	for _, part := range []string{"k", "ke", "key"} {
		w.put(part, "4")
		w.Look()
		w.want("1|2", 0, 0, 0)
	}
	w.Look()
	w.want("key|4", 1, 0, 0)
}

func TestBrokenFilesKeepTheOldValue(t *testing.T) {
	w := open(t)
	w.put("broken", "4")
	for range 4 {
		w.Look()
	}
	w.want("1|2", 0, 1, 1)
	if n := strings.Count(w.log.String(), "it is broken"); n != 1 {
		t.Errorf("told %d times, want once:\n%s", n, w.log)
	}
	w.put("1", "2") // put back as it was
	w.Look()
	w.want("1|2", 0, 1, 0)
	w.put("broken", "4") // and broken in the same way again
	w.Look()
	w.Look()
	w.want("1|2", 0, 2, 1)
	w.put("5", "6")
	w.Look()
	w.Look()
	w.want("5|6", 1, 2, 0)
}

func TestFilesThatAreGoneKeepTheOldValue(t *testing.T) {
	w := open(t)
	if err := os.Remove(filepath.Join(w.dir, "now")); err != nil {
		t.Fatal(err)
	}
	for range 3 {
		w.Look()
	}
	w.want("1|2", 0, 1, 1)
	w.put("1", "2")
	w.Look()
	w.want("1|2", 0, 1, 0)
}

// Text that moves from one file to the next is a change.
func TestFilesAreToldApart(t *testing.T) {
	w := open(t)
	w.put("12", "")
	w.Look()
	w.Look()
	w.want("12|", 1, 0, 0)
}

func TestOpenRefuses(t *testing.T) {
	dir := t.TempDir()
	broken, long := filepath.Join(dir, "broken"), filepath.Join(dir, "long")
	for path, data := range map[string][]byte{broken: []byte("broken"), long: make([]byte, maxBytes+1)} {
		if err := os.WriteFile(path, data, 0o600); err != nil {
			t.Fatal(err)
		}
	}
	reports, err := NewReports(slog.New(slog.DiscardHandler), prometheus.NewRegistry())
	if err != nil {
		t.Fatal(err)
	}
	for path, say := range map[string]string{
		broken: "it is broken", long: "more than", filepath.Join(dir, "none"): "no such file", dir: "directory",
	} {
		if _, err := Open("pair", reports, text, path); err == nil || !strings.Contains(err.Error(), say) {
			t.Errorf("%s: %v, want %q", path, err, say)
		}
	}
}

// Readers never see half a change, and Watch takes it by itself.
func TestWatch(t *testing.T) {
	w := open(t)
	ctx, cancel := context.WithTimeout(t.Context(), 10*time.Second)
	defer cancel()
	done := make(chan struct{})
	go func() {
		defer close(done)
		Watch(ctx, time.Millisecond, w)
	}()
	w.put("3", "4")
	for w.Get() != "3|4" {
		if got := w.Get(); got != "1|2" && got != "3|4" {
			t.Fatalf("half a change: %q", got)
		}
		if ctx.Err() != nil {
			t.Fatal("the change was not taken")
		}
	}
	cancel()
	<-done
	Watch(t.Context(), time.Millisecond) // Nothing to watch: returns.
}
