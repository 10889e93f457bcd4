package service

import (
	"encoding/json"
	"log/slog"
	"strings"
	"testing"

	"golang.org/x/time/rate"
)

// What is left out of the log is told by the next line that is not.
func TestUnloggedLinesAreTold(t *testing.T) {
	log := &lockedBuffer{}
	logger := slog.New(slog.NewJSONHandler(log, nil))
	lines := newLineLimit()
	lines.bucket = rate.NewLimiter(0, linesAtOnce)
	say := func() []slog.Attr { return []slog.Attr{slog.Int("n", 1)} }
	for range 100 {
		lines.log(t.Context(), logger, slog.LevelInfo, "refused", say)
	}
	if got := strings.Count(log.String(), "\n"); got != linesAtOnce {
		t.Errorf("%d lines, want %d", got, linesAtOnce)
	}
	lines.bucket = rate.NewLimiter(rate.Inf, 1)
	lines.log(t.Context(), logger, slog.LevelDebug, "refused", say) // Nobody wants it: nothing is used up.
	lines.log(t.Context(), logger, slog.LevelInfo, "refused", say)
	lines.log(t.Context(), logger, slog.LevelInfo, "refused", say)
	written := strings.Split(strings.TrimSpace(log.String()), "\n")
	for i, want := range map[int]int{linesAtOnce: 100 - linesAtOnce, linesAtOnce + 1: 0} {
		var line struct{ Unlogged int }
		if err := json.Unmarshal([]byte(written[i]), &line); err != nil || line.Unlogged != want {
			t.Errorf("%s: %v, want %d unlogged", written[i], err, want)
		}
	}
}

// What a library says is a line of the log like any other, and a short one.
func TestLibraryLines(t *testing.T) {
	log := &lockedBuffer{}
	w := LibraryLines(slog.New(slog.NewJSONHandler(log, nil)), "grpc")
	for range 100 {
		if _, err := w.Write([]byte("ERROR: something \xff\n" + strings.Repeat("x", 10_000))); err != nil {
			t.Fatal(err)
		}
	}
	lines := strings.Split(strings.TrimSpace(log.String()), "\n")
	for _, line := range lines {
		var said struct{ Level, Library, Said string }
		err := json.Unmarshal([]byte(line), &said)
		if err != nil || said.Level != "WARN" || said.Library != "grpc" || len(said.Said) > maxLibraryLine+3 {
			t.Errorf("%v: %s", err, line)
		}
	}
	if len(lines) >= 100 {
		t.Errorf("%d lines", len(lines))
	}
}
