package main

import (
	"bytes"
	"strings"
	"testing"
	"time"
)

func TestFlagsAndEnvironment(t *testing.T) {
	env := []string{"KNITMATHD_HTTP_ADDR=:1", "KNITMATHD_GRPC_ADDR=:2", "KNITMATHD_DRAIN=7s", "KNITMATHD_LOG_LEVEL=debug", "DRAIN=1h"}
	o, err := parseOptions([]string{"-grpc-addr", ":3"}, env, &bytes.Buffer{})
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
		{[]string{"-max-connections", "0"}, "", 2, "-max-connections must be at least 1"},
		{[]string{"-connection-age", "5ms"}, "", 2, "-connection-age at least 1s"},
		{[]string{"-log-level", "loud"}, "", 2, `invalid value "loud" for flag -log-level`},
		{[]string{"-log-format", "xml"}, "", 2, `-log-format is "xml"`},
		{[]string{"-tls-cert", "cert.pem"}, "", 2, "-tls-cert needs -tls-key"},
		{[]string{"-tls-client-ca", "ca.pem"}, "", 2, "-tls-client-ca needs -tls-cert"},
		{[]string{"-tls-cert", "none.pem", "-tls-key", "none.pem"}, "", 1, "none.pem: no such file"},
		{nil, "soon", 2, `KNITMATHD_DRAIN is "soon"`},
		{[]string{"-version"}, "", 0, "knitmathd "},
		{[]string{"-help"}, "", 0, "KNITMATHD_HTTP_ADDR"},
	} {
		var stdout, stderr bytes.Buffer
		code := run(c.args, []string{"KNITMATHD_DRAIN=" + c.env}, &stdout, &stderr)
		if said := stdout.String() + stderr.String(); code != c.code || !strings.Contains(said, c.say) {
			t.Errorf("%q: exit %d, said %q; want %d, %q", c.args, code, said, c.code, c.say)
		}
	}
}

func TestLogFormats(t *testing.T) {
	for format, want := range map[string]string{"json": `"msg":"hello"`, "text": "msg=hello"} {
		var out bytes.Buffer
		options{logFormat: format}.logger(&out).Info("hello", "for", 5*time.Second)
		if !strings.Contains(out.String(), want) || !strings.Contains(strings.ReplaceAll(out.String(), `"`, ""), "5s") {
			t.Errorf("%s: %s", format, out.String())
		}
	}
}

// A variable that no flag has is refused with the nearest name, but for those
// that a cluster sets for its Services.
func TestMisspeltVariable(t *testing.T) {
	for line, say := range map[string]string{
		"KNITMATHD_DRIAN=5s":                    "KNITMATHD_DRIAN is no variable of the program; the nearest is KNITMATHD_DRAIN",
		"KNITMATHD_GRPC_ADRESS=:1":              "the nearest is KNITMATHD_GRPC_ADDR",
		"KNITMATHD_LOGLEVEL=debug":              "the nearest is KNITMATHD_LOG_LEVEL",
		"KNITMATHD_=":                           "KNITMATHD_ is no variable",
		"KNITMATHD_SERVICE_HOST=10.0.0.1":       "",
		"KNITMATHD_ADMIN_SERVICE_PORT_ADMIN=80": "",
		"KNITMATHD_PORT=tcp://10.0.0.1:80":      "",
		"KNITMATHD_PORT_80_TCP_ADDR=10.0.0.1":   "",
		"KNITMATH_DRIAN=5s":                     "",
	} {
		var stdout, stderr bytes.Buffer
		code := run([]string{"-version"}, []string{line}, &stdout, &stderr)
		if refused := code == exitUsage; refused != (say != "") || !strings.Contains(stderr.String(), say) {
			t.Errorf("%s: exit %d, said %q", line, code, stderr.String())
		}
	}
}
