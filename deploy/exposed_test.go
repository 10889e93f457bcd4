package deploy

import (
	"context"
	"io"
	"log/slog"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/prometheus/client_golang/prometheus"
	"github.com/prometheus/common/expfmt"
	"github.com/prometheus/common/model"

	"example.com/knitmath/service"
	"example.com/knitmath/service/tlsfile"
	"example.com/knitmath/service/tlsfile/tlstest"
)

// pairOf writes a certificate and its key, for what there is of metrics with TLS alone.
func pairOf(t *testing.T, authority *tlstest.Authority) tlsfile.Config {
	t.Helper()
	dir := t.TempDir()
	files := tlsfile.Config{Cert: filepath.Join(dir, "cert"), Key: filepath.Join(dir, "key")}
	cert, key := authority.Issue(time.Hour)
	for path, data := range map[string][]byte{files.Cert: cert, files.Key: key} {
		if err := os.WriteFile(path, data, 0o600); err != nil {
			t.Fatal(err)
		}
	}
	return files
}

// series are the metrics of a running service: name, label, its values.
type series map[string]map[string]map[string]bool

// exposed starts the service, asks it good and bad questions and scrapes it, and
// adds what Prometheus itself adds.
func exposed(t *testing.T) series {
	t.Helper()
	authority := tlstest.NewAuthority(t)
	server, err := service.Listen(service.Config{GRPCAddr: "127.0.0.1:0", HTTPAddr: "127.0.0.1:0", AdminAddr: "127.0.0.1:0",
		TLS: pairOf(t, authority), ShutdownTimeout: 10 * time.Second, Logger: slog.New(slog.NewJSONHandler(io.Discard, nil)),
		Registry: prometheus.NewRegistry()})
	if err != nil {
		t.Fatal(err)
	}
	ctx, cancel := context.WithCancel(context.Background())
	ended := make(chan error, 1)
	go func() { ended <- server.Serve(ctx) }()
	defer func() {
		cancel()
		if err := <-ended; err != nil {
			t.Error(err)
		}
	}()
	client := &http.Client{Transport: &http.Transport{TLSClientConfig: authority.Client()}}
	defer client.CloseIdleConnections()
	for _, body := range []string{`{"gauge": {"stitches": 22, "rows": 30}, "width_cm": 50}`, `{}`} {
		resp, err := client.Post("https://"+server.HTTPAddr().String()+"/v1/gauge:computeCastOn", "application/json", strings.NewReader(body))
		if err != nil {
			t.Fatal(err)
		}
		_ = resp.Body.Close()
	}
	resp, err := client.Get("http://" + server.AdminAddr().String() + "/metrics")
	if err != nil {
		t.Fatal(err)
	}
	defer resp.Body.Close()
	parser := expfmt.NewTextParser(model.UTF8Validation)
	families, err := parser.TextToMetricFamilies(resp.Body)
	if err != nil {
		t.Fatal(err)
	}
	all := series{"up": {}}
	for name, family := range families {
		names := []string{name}
		if family.GetType().String() == "HISTOGRAM" {
			names = []string{name + "_bucket", name + "_sum", name + "_count"}
		}
		for _, name := range names {
			all[name] = map[string]map[string]bool{}
			if strings.HasSuffix(name, "_bucket") {
				all[name]["le"] = map[string]bool{}
			}
			for _, m := range family.GetMetric() {
				for _, l := range m.GetLabel() {
					if all[name][l.GetName()] == nil {
						all[name][l.GetName()] = map[string]bool{}
					}
					all[name][l.GetName()][l.GetValue()] = true
				}
			}
		}
	}
	for _, labels := range all {
		labels["job"], labels["instance"], labels["pod"] = map[string]bool{"knitmath": true}, map[string]bool{}, map[string]bool{}
	}
	return all
}
