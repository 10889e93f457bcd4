package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"log/slog"
	"time"

	"example.com/knitmath/service"
)

// options are what the flags said.
type options struct {
	config    service.Config
	logLevel  slog.Level
	logFormat string
	version   bool
	newKey    string
	makesKey  bool
}

// parseOptions reads the environment, as os.Environ gives it, then the flags,
// which win.
func parseOptions(args, environ []string, stderr io.Writer) (options, error) {
	var o options
	flags := flag.NewFlagSet("knitmathd", flag.ContinueOnError)
	flags.StringVar(&o.config.GRPCAddr, "grpc-addr", ":50051", "`address` for gRPC")
	flags.StringVar(&o.config.HTTPAddr, "http-addr", ":8080", "`address` for JSON and the OpenAPI document")
	flags.StringVar(&o.config.AdminAddr, "admin-addr", ":9090", "`address` for /metrics, /healthz, /readyz and /version")
	flags.DurationVar(&o.config.Drain, "drain", 3*time.Second,
		"how long to go on answering after readiness went off")
	flags.DurationVar(&o.config.ShutdownTimeout, "shutdown-timeout", 10*time.Second,
		"how long calls under way may take to end after that")
	flags.IntVar(&o.config.MaxConnections, "max-connections", service.DefaultMaxConnections,
		"how many `connections` each public face has at most; idle ones make room for new ones")
	flags.DurationVar(&o.config.ConnectionAge, "connection-age", service.DefaultConnectionAge,
		"how old a connection gets before its caller is asked to make a new one")
	callerFlags(flags, &o.config)
	flags.TextVar(&o.logLevel, "log-level", slog.LevelInfo, "debug, info, warn or error")
	flags.StringVar(&o.logFormat, "log-format", "json", "json or text")
	flags.BoolVar(&o.config.Pprof, "pprof", false, "serve profiles of the running program at -admin-addr, under /debug/pprof/")
	flags.Func("new-key",
		"make a key called `name`, print its line for the file of -api-keys to standard output and the key to standard error, and stop",
		func(words string) error {
			o.newKey, o.makesKey = words, true // an empty name is refused and starts no server
			return nil
		})
	flags.BoolVar(&o.version, "version", false, "print the release and stop")
	// The package would print the whole usage below every fault; the fault alone
	// is easier to find.
	flags.SetOutput(io.Discard)

	var faults []error
	var known []string
	env := environment(environ)
	flags.VisitAll(func(f *flag.Flag) {
		name := variableOf(f.Name)
		known = append(known, name)
		if value := env[name]; value != "" {
			if err := flags.Set(f.Name, value); err != nil {
				faults = append(faults, fmt.Errorf("%s is %q: %w", name, value, err))
			}
		}
	})
	faults = append(faults, unknownVariables(env, known)...)
	if err := flags.Parse(args); errors.Is(err, flag.ErrHelp) {
		_, _ = fmt.Fprint(stderr, "knitmathd serves the arithmetic of hand knitting over gRPC and JSON.\n\n"+
			"Each flag may also be set by an environment variable: -http-addr by KNITMATHD_HTTP_ADDR.\n\n")
		flags.SetOutput(stderr)
		flags.PrintDefaults()
		return o, err
	} else if err != nil {
		return o, err
	}
	if flags.NArg() > 0 {
		faults = append(faults, fmt.Errorf("unexpected argument %q; there are only flags", flags.Arg(0)))
	}
	if o.logFormat != "json" && o.logFormat != "text" {
		faults = append(faults, fmt.Errorf("-log-format is %q; must be json or text", o.logFormat))
	}
	if o.config.Drain < 0 || o.config.ShutdownTimeout < 0 {
		faults = append(faults, errors.New("-drain and -shutdown-timeout must not be negative"))
	}
	if o.config.MaxConnections < 1 || o.config.ConnectionAge < time.Second {
		faults = append(faults, errors.New("-max-connections must be at least 1 and -connection-age at least 1s"))
	}
	faults = append(faults, o.config.Check())
	return o, errors.Join(faults...)
}

// logger writes to w as the flags say.
func (o options) logger(w io.Writer) *slog.Logger {
	how := &slog.HandlerOptions{Level: o.logLevel, ReplaceAttr: readable}
	if o.logFormat == "text" {
		return slog.New(slog.NewTextHandler(w, how))
	}
	return slog.New(slog.NewJSONHandler(w, how))
}

// readable writes durations as people do, 5s and not 5000000000.
func readable(_ []string, a slog.Attr) slog.Attr {
	if a.Value.Kind() == slog.KindDuration {
		a.Value = slog.StringValue(a.Value.Duration().String())
	}
	return a
}
