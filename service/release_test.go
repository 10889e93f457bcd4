package service

import (
	"context"
	"encoding/json"
	"maps"
	"runtime"
	"runtime/debug"
	"strings"
	"testing"

	dto "github.com/prometheus/client_model/go"
	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
	healthv1 "google.golang.org/grpc/health/grpc_health_v1"
	"google.golang.org/grpc/metadata"
	"google.golang.org/grpc/status"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

func TestReleaseOf(t *testing.T) {
	const hash = "597ec98d1e0d5d1f6a1a2b3c4d5e6f708192a3b4"
	built := func(version string, settings ...string) *debug.BuildInfo {
		info := &debug.BuildInfo{Main: debug.Module{Version: version}}
		for i := 0; i < len(settings); i += 2 {
			info.Settings = append(info.Settings, debug.BuildSetting{Key: settings[i], Value: settings[i+1]})
		}
		return info
	}
	clean := built("v1.2.0", "vcs.revision", hash, "vcs.modified", "false")
	for _, c := range []struct {
		name            string
		info            *debug.BuildInfo
		version, commit string
		want            Release
	}{
		{"tagged", clean, "", "", Release{"v1.2.0", hash}},
		{"files differ", built("v1.2.1-0.20260101000000-597ec98d1e0d+dirty", "vcs.revision", hash, "vcs.modified", "true"), "", "",
			Release{"v1.2.1-0.20260101000000-597ec98d1e0d+dirty", hash + "+dirty"}},
		{"without git", built("(devel)"), "", "", Release{"devel", ""}},
		{"nothing known", &debug.BuildInfo{}, "", "", Release{"devel", ""}},
		{"modified, but from what", built("", "vcs.modified", "true"), "", "", Release{"devel", ""}},
		{"stamped without git", built("(devel)"), "v2.0.0", hash, Release{"v2.0.0", hash}},
		{"stamps win", clean, "v1.2.0-patched", "abc", Release{"v1.2.0-patched", "abc"}},
		{"one stamp", clean, "v1.2.0-patched", "", Release{"v1.2.0-patched", hash}},
	} {
		if got := releaseOf(c.info, c.version, c.commit); got != c.want {
			t.Errorf("%s: %+v, want %+v", c.name, got, c.want)
		}
	}
}

// Whatever is asked over HTTP, on either face, the answer names the release.
func TestReleaseInEveryHTTPAnswer(t *testing.T) {
	server := start(t)
	face, admin := server.HTTPAddr().String(), server.AdminAddr().String()
	for _, c := range []struct {
		addr, method, path, body string
		code                     int
	}{
		{face, "GET", "/", "", 200},
		{face, "GET", "/openapi.json", "", 200},
		{face, "GET", versionPath, "", 200},
		{face, "HEAD", versionPath, "", 200},
		{face, "GET", castOnQuery, "", 200},
		{face, "POST", castOnPath, castOnBody, 200},
		{face, "POST", castOnPath, "{", 400},
		{face, "POST", castOnPath, "{}", 400},
		{face, "GET", "/nothing", "", 404},
		{face, "DELETE", versionPath, "", 405},
		{admin, "GET", versionPath, "", 200},
		{admin, "GET", "/metrics", "", 200},
		{admin, "GET", "/healthz", "", 200},
		{admin, "GET", "/nothing", "", 404},
		{admin, "POST", versionPath, "{}", 405},
	} {
		got := server.sendTo(t, c.addr, c.method, c.path, c.body)
		if got.code != c.code || got.header.Get(releaseHeader) != testRelease.Version {
			t.Errorf("%s %s: HTTP %d, want %d; %s %q", c.method, c.path, got.code, c.code, releaseHeader, got.header.Get(releaseHeader))
		}
	}
	again := server.send(t, "GET", castOnQuery, "", "If-None-Match", server.send(t, "GET", castOnQuery, "").header.Get("ETag"))
	if again.code != 304 || again.header.Get(releaseHeader) != testRelease.Version {
		t.Errorf("HTTP %d, %v", again.code, again.header)
	}
}

func TestVersionDocument(t *testing.T) {
	server := start(t)
	for _, addr := range []string{server.HTTPAddr().String(), server.AdminAddr().String()} {
		got := server.sendTo(t, addr, "GET", versionPath, "")
		var said map[string]string
		if err := json.Unmarshal(got.body, &said); err != nil {
			t.Fatalf("%s: %v", got.body, err)
		}
		if len(said) != 3 || said["release"] != testRelease.Version || said["commit"] != testRelease.Commit || said["go"] != runtime.Version() {
			t.Errorf("%v", said)
		}
		if got.header.Get("Content-Type") != jsonType || got.header.Get("Cache-Control") != "no-store" {
			t.Errorf("header %v", got.header)
		}
	}
	if root := server.send(t, "GET", "/", ""); !strings.Contains(string(root.body), versionPath) {
		t.Errorf("%s is not in the index:\n%s", versionPath, root.body)
	}
}

// Answered or streamed: the header metadata names the release. Refused or panicked: the
// trailer does, and there is no header, after which nobody would ask again.
func TestReleaseInGRPCMetadata(t *testing.T) {
	server := start(t, registerOdd)
	key := strings.ToLower(releaseHeader)
	ask := func(method string, question *knitmathv1.ComputeCastOnRequest) (header, trailer metadata.MD, err error) {
		err = server.conn.Invoke(t.Context(), method, question, &knitmathv1.ComputeCastOnResponse{},
			grpc.Header(&header), grpc.Trailer(&trailer))
		return header, trailer, err
	}
	good := &knitmathv1.ComputeCastOnRequest{Gauge: &knitmathv1.Gauge{Stitches: 22, Rows: 30}, WidthCm: new(50.0)}
	for _, c := range []struct {
		method   string
		question *knitmathv1.ComputeCastOnRequest
		want     codes.Code
	}{
		{"/knitmath.v1.GaugeService/ComputeCastOn", good, codes.OK},
		{"/knitmath.v1.GaugeService/ComputeCastOn", &knitmathv1.ComputeCastOnRequest{}, codes.InvalidArgument},
		{"/knitmath.test.OddService/Panic", good, codes.Internal},
	} {
		header, trailer, err := ask(c.method, c.question)
		there, elsewhere := header, trailer
		if err != nil {
			there, elsewhere = trailer, header
		}
		if status.Code(err) != c.want || strings.Join(there[key], ",") != testRelease.Version || elsewhere[key] != nil {
			t.Errorf("%s: %v, want %v; header %v, trailer %v", c.method, err, c.want, header, trailer)
		}
	}
	ctx, cancel := context.WithCancel(t.Context())
	defer cancel()
	watch, err := healthv1.NewHealthClient(server.conn).Watch(ctx, &healthv1.HealthCheckRequest{})
	if err != nil {
		t.Fatal(err)
	}
	if header, err := watch.Header(); err != nil || strings.Join(header[key], ",") != testRelease.Version {
		t.Errorf("a stream: %v, %v", header, err)
	}
}

func TestBuildInfoMetric(t *testing.T) {
	for _, c := range []struct{ given, want Release }{
		{testRelease, testRelease},
		{Release{}, Release{Version: unknownRelease}},
	} {
		config := testConfig(&lockedBuffer{})
		config.Release = c.given
		server, err := Listen(config)
		if err != nil {
			t.Fatal(err)
		}
		server.closeListeners()
		families, err := config.Registry.Gather()
		if err != nil {
			t.Fatal(err)
		}
		var found []*dto.Metric
		for _, f := range families {
			if f.GetName() == "knitmath_build_info" {
				found = f.GetMetric()
			}
		}
		if len(found) != 1 || found[0].GetGauge().GetValue() != 1 {
			t.Fatalf("knitmath_build_info: %v", found)
		}
		labels := map[string]string{}
		for _, l := range found[0].GetLabel() {
			labels[l.GetName()] = l.GetValue()
		}
		want := map[string]string{"release": c.want.Version, "commit": c.want.Commit, "goversion": runtime.Version()}
		if !maps.Equal(labels, want) {
			t.Errorf("labels %v, want %v", labels, want)
		}
	}
}
