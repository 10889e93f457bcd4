package service

import (
	"fmt"
	"io"
	"net/http"
	"runtime"
	"runtime/pprof"
	"runtime/trace"
	"strconv"
	"time"
)

// profileTimeout is how long an answer may take that is a profile: 30 seconds, unless
// more is asked for.
const profileTimeout = 2 * time.Minute

// profile serves what the Go runtime knows of the running program, to those who
// look for where time and memory go, at the paths and with the parameters of `go tool
// pprof`. It is asked for by a flag, since a profile costs while it is taken. The
// standard library's own handlers would take 0.1 MB of the program more, for
// differences between two profiles, and put themselves on the default mux besides.
func profile(mux *http.ServeMux) {
	mux.HandleFunc("GET /debug/pprof/{$}", func(w http.ResponseWriter, _ *http.Request) {
		for _, p := range pprof.Profiles() {
			_, _ = fmt.Fprintf(w, "%s\t%d\n", p.Name(), p.Count())
		}
		_, _ = io.WriteString(w, "profile\ntrace\n")
	})
	mux.HandleFunc("GET /debug/pprof/profile", recorded("cpu.pprof", 30, pprof.StartCPUProfile, pprof.StopCPUProfile))
	mux.HandleFunc("GET /debug/pprof/trace", recorded("trace", 1, trace.Start, trace.Stop))
	mux.HandleFunc("GET /debug/pprof/{name}", func(w http.ResponseWriter, r *http.Request) {
		p := pprof.Lookup(r.PathValue("name"))
		if p == nil {
			http.Error(w, "no such profile", http.StatusNotFound)
			return
		}
		debug, _ := strconv.Atoi(r.FormValue("debug"))
		if p.Name() == "heap" && r.FormValue("gc") == "1" {
			runtime.GC()
		}
		attach(w, p.Name()+".pprof", debug != 0)
		_ = p.WriteTo(w, debug)
	})
}

// recorded serves what is recorded for the seconds that are asked for, or until the
// caller has gone.
func recorded(file string, usual float64, start func(io.Writer) error, stop func()) http.HandlerFunc {
	return func(w http.ResponseWriter, r *http.Request) {
		seconds, err := strconv.ParseFloat(r.FormValue("seconds"), 64)
		if err != nil || !(seconds > 0) {
			seconds = usual
		}
		if seconds >= profileTimeout.Seconds() {
			http.Error(w, fmt.Sprintf("less than %.0f seconds", profileTimeout.Seconds()), http.StatusBadRequest)
			return
		}
		attach(w, file, false)
		if err := start(w); err != nil {
			w.Header().Del("Content-Disposition")
			http.Error(w, err.Error(), http.StatusConflict) // One at a time.
			return
		}
		defer stop()
		select {
		case <-r.Context().Done():
		case <-time.After(time.Duration(seconds * float64(time.Second))):
		}
	}
}

// attach says what follows: a file, or text to read.
func attach(w http.ResponseWriter, file string, text bool) {
	if text {
		w.Header().Set("Content-Type", "text/plain; charset=utf-8")
		return
	}
	w.Header().Set("Content-Type", "application/octet-stream")
	w.Header().Set("Content-Disposition", `attachment; filename="`+file+`"`)
}
