package main

import (
	"bytes"
	"strings"
	"testing"
	"time"
)

func TestFlagsAndEnvironment(t *testing.T) {
	env := map[string]string{"KNITMATHD_HTTP_ADDR": ":1", "KNITMATHD_GRPC_ADDR": ":2", "KNITMATHD_DRAIN": "7s", "KNITMATHD_LOG_LEVEL": "debug"}
	o, err := parseOptions([]string{"-grpc-addr", ":3"}, func(name string) string { return env[name] }, &bytes.Buffer{})
	if err != nil {
		t.Fatal(err)
	}
	if o.config.HTTPAddr != ":1" || o.config.GRPCAddr != ":3" || o.config.AdminAddr != ":9090" ||
		o.config.Drain != 7*time.Second || o.logLevel.String() != "DEBUG" {
		t.Errorf("%+v", o)
	}
}

// Whoever calls the command wrongly is told what was wrong, and gets exit code 2.
func TestUsage(t *testing.T) {
	for _, c := range []struct {
		args []string
		env  string // KNITMATHD_DRAIN
		code int
		say  string
	}{
		{[]string{"-prot", "1"}, "", 2, "flag provided but not defined: -prot"},
		{[]string{"serve"}, "", 2, `unexpected argument "serve"`},
		{[]string{"-drain", "soon"}, "", 2, `invalid value "soon" for flag -drain`},
		{[]string{"-drain", "-1s"}, "", 2, "must not be negative"},
		{[]string{"-log-level", "loud"}, "", 2, `invalid value "loud" for flag -log-level`},
		{[]string{"-log-format", "xml"}, "", 2, `-log-format is "xml"`},
		{nil, "soon", 2, `KNITMATHD_DRAIN is "soon"`},
		{[]string{"-version"}, "", 0, "knitmathd "},
		{[]string{"-help"}, "", 0, "KNITMATHD_HTTP_ADDR"},
	} {
		var stdout, stderr bytes.Buffer
		code := run(c.args, func(name string) string {
			if name == "KNITMATHD_DRAIN" {
				return c.env
			}
			return ""
		}, &stdout, &stderr)
		if said := stdout.String() + stderr.String(); code != c.code || !strings.Contains(said, c.say) {
			t.Errorf("%q: exit %d, said %q; want %d, %q", c.args, code, said, c.code, c.say)
		}
	}
}

func TestLogFormats(t *testing.T) {
	for format, want := range map[string]string{"json": `"msg":"hello"`, "text": "msg=hello"} {
		var out bytes.Buffer
		options{logFormat: format}.logger(&out).Info("hello")
		if !strings.Contains(out.String(), want) {
			t.Errorf("%s: %s", format, out.String())
		}
	}
}
