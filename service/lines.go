package service

import (
	"bytes"
	"context"
	"io"
	"log/slog"
	"sync/atomic"
	"time"

	"golang.org/x/time/rate"

	"example.com/knitmath/service/trace"
)

// Lines of one kind that the log takes: so many at once, and then so many a second.
// Whoever sends nonsense must not fill a disk with it; the metrics count all of it.
const (
	linesAtOnce   = 20
	linesASecond  = 2
	unloggedLabel = "unlogged"
)

// lineLimit bounds the lines of one kind. What was left out is said in the next
// line that is written.
type lineLimit struct {
	bucket   *rate.Limiter
	unlogged atomic.Int64
}

func newLineLimit() *lineLimit {
	return &lineLimit{bucket: rate.NewLimiter(rate.Every(time.Second/linesASecond), linesAtOnce)}
}

// log writes a line, if there may be one; what it says is asked for only then.
func (l *lineLimit) log(ctx context.Context, logger *slog.Logger, level slog.Level, message string, say func() []slog.Attr) {
	if !logger.Enabled(ctx, level) {
		return
	}
	if !l.bucket.Allow() {
		l.unlogged.Add(1)
		return
	}
	attrs := append(say(), trace.Attrs(ctx)...)
	if n := l.unlogged.Swap(0); n > 0 {
		attrs = append(attrs, slog.Int64(unloggedLabel, n))
	}
	logger.LogAttrs(ctx, level, message, attrs...)
}

// LibraryLines is a writer for what libraries log line by line, at a bounded rate
// like everything else that callers can cause.
func LibraryLines(logger *slog.Logger, library string) io.Writer {
	return &libraryLines{logger: logger, library: library, lines: newLineLimit()}
}

type libraryLines struct {
	logger  *slog.Logger
	library string
	lines   *lineLimit
}

// maxLibraryLine cuts a line: what a library says of a fault is short.
const maxLibraryLine = 500

func (l *libraryLines) Write(p []byte) (int, error) {
	l.lines.log(context.Background(), l.logger, slog.LevelWarn, "library", func() []slog.Attr {
		return []slog.Attr{slog.String("library", l.library), slog.String("said", shorten(string(bytes.TrimSpace(p)), maxLibraryLine))}
	})
	return len(p), nil
}
