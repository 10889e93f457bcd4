// Command knitmathd serves the arithmetic of hand knitting over gRPC and JSON.
//
// Every flag has a default that works and an environment variable of the same
// name: -http-addr is KNITMATHD_HTTP_ADDR. A flag wins over its variable, and a
// variable of no flag's name is a reason not to start.
package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"io"
	"math"
	"os"
	"os/signal"
	"runtime"
	"runtime/debug"
	"syscall"
	"time"

	"github.com/prometheus/client_golang/prometheus"
	"google.golang.org/grpc/grpclog"

	"example.com/knitmath/service"
	"example.com/knitmath/service/garbage"
	"example.com/knitmath/service/trace"
)

// Exit codes: 0 stopped as asked, 1 could not serve, 2 called wrongly.
const (
	exitFailed = 1
	exitUsage  = 2
)

func main() {
	os.Exit(run(os.Args[1:], os.Environ(), os.Stdout, os.Stderr))
}

func run(args, environ []string, stdout, stderr io.Writer) int {
	release := service.ReadRelease()
	options, err := parseOptions(args, environ, stderr)
	switch {
	case errors.Is(err, flag.ErrHelp):
		return 0
	case err != nil:
		_, _ = fmt.Fprintf(stderr, "knitmathd: %v\n", err)
		return exitUsage
	case options.version:
		_, _ = fmt.Fprintln(stdout, "knitmathd", release.Version, release.Commit)
		return 0
	}

	if options.makesKey {
		return makeKey(options.newKey, stdout, stderr)
	}

	ctx, stop := untilSignal()
	defer stop()
	limitMemory()
	garbage.CollectSeldom()

	logger := options.logger(stderr)
	// What the libraries complain of would otherwise be lines of another form.
	grpclog.SetLoggerV2(grpclog.NewLoggerV2(io.Discard, io.Discard, service.LibraryLines(logger, "grpc")))
	options.config.Logger = logger
	options.config.Release = release
	options.config.Registry = prometheus.NewRegistry()
	complaints := service.LibraryLines(logger, "opentelemetry")
	traces, err := trace.Start(ctx, release.Version, logger, func(err error) { _, _ = fmt.Fprintln(complaints, err) })
	if err != nil {
		logger.Error("cannot start", "cause", err)
		return exitFailed
	}
	defer sendRest(traces)
	options.config.Traces = traces
	server, err := service.Listen(options.config)
	if err != nil {
		logger.Error("cannot start", "cause", err)
		return exitFailed
	}
	logger.Info("serving", "release", release.Version, "commit", release.Commit, "go", runtime.Version(),
		"grpc", server.GRPCAddr().String(), "http", server.HTTPAddr().String(), "admin", server.AdminAddr().String())
	if err := server.Serve(ctx); err != nil {
		logger.Error("stopped serving", "cause", err)
		return exitFailed
	}
	return 0
}

// sendingTimeout is how long the last spans may take to be sent.
const sendingTimeout = 2 * time.Second

// sendRest sends the spans that have not been sent yet. If it fails that has been
// said by then.
func sendRest(traces *trace.Tracing) {
	ctx, cancel := context.WithTimeout(context.Background(), sendingTimeout)
	defer cancel()
	_ = traces.Stop(ctx)
}

// usualMemory is what everything that is bounded takes at most when all of it comes
// together.
const usualMemory = 512 << 20

// limitMemory tells the collector to work harder from a point that the service does
// not reach unless it is attacked, where GOMEMLIMIT has not told it another one. It
// is soft: nothing fails beyond it. Without it what is bounded would take twice as
// much for as long as it had not been collected.
func limitMemory() {
	if debug.SetMemoryLimit(-1) == math.MaxInt64 {
		debug.SetMemoryLimit(usualMemory)
	}
}

// untilSignal is a context that ends with the first SIGTERM or interrupt. Signals
// are let go before it ends, so that whoever sees it ended can count on this: the
// next one is no longer caught and ends the process at once.
func untilSignal() (context.Context, context.CancelFunc) {
	ctx, stop := context.WithCancel(context.Background())
	signals := make(chan os.Signal, 1)
	signal.Notify(signals, syscall.SIGTERM, os.Interrupt)
	go func() {
		defer stop()
		defer signal.Stop(signals)
		select {
		case <-signals:
		case <-ctx.Done():
		}
	}()
	return ctx, stop
}
