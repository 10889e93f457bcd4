package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// A set-up that contradicts itself, or names what cannot be read, does not start.
func TestCallersAreSetUpInEarnest(t *testing.T) {
	broken := filepath.Join(t.TempDir(), "keys")
	if err := os.WriteFile(broken, []byte("# keys\nshop 1234 secret\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		args string
		code int
		say  string
	}{
		{"-keyless", 2, "-keyless allows what nothing forbids"},
		{"-trusted-proxies 10.0.0.0/8", 2, "-trusted-proxies needs -address-rate"},
		{"-trusted-proxies ::/0 -address-rate 1", 2, "would let every caller choose an address"},
		{"-allowed-origins shop.example", 2, `"shop.example" is no origin`},
		{"-address-rate many", 2, `invalid value "many"`},
		{"-api-keys /none", 1, "/none: no such file"},
		{"-api-keys " + broken, 1, "line 2: the SHA-256 of shop must be 64 hexadecimal digits"},
		{"-page-key pages", 2, "-page-key goes with -api-keys"},
		{"-framed-by shop.example", 2, `-framed-by: "shop.example" is no origin`},
		{"-new-key Shop", 2, "a name has small letters"},
		{"-new-key=", 2, "-new-key: "},
	} {
		var stdout, stderr bytes.Buffer
		args := append(strings.Fields(c.args), "-grpc-addr", "127.0.0.1:0", "-http-addr", "127.0.0.1:0", "-admin-addr", "127.0.0.1:0")
		if code := run(args, nil, &stdout, &stderr); code != c.code || !strings.Contains(stderr.String(), c.say) || stdout.Len() > 0 {
			t.Errorf("%s: exit %d, said %q; want %d, %q", c.args, code, stdout.String()+stderr.String(), c.code, c.say)
		}
	}
}

// The line goes to standard output alone, so that it can be appended to the file.
func TestNewKey(t *testing.T) {
	var stdout, stderr bytes.Buffer
	if code := run([]string{"-new-key", "shop-pages publishable calls=20 origins=https://shop.example"}, nil, &stdout, &stderr); code != 0 {
		t.Fatal(code)
	}
	line, said := stdout.String(), stderr.String()
	if !strings.HasPrefix(line, "shop-pages ") || !strings.HasSuffix(line, " publishable calls=20 origins=https://shop.example\n") ||
		strings.Contains(line, "knitmath_") || strings.Count(said, "knitmath_") != 1 {
		t.Errorf("%q and %q", line, said)
	}
}
