package service

import (
	"cmp"
	"encoding/json"
	"net/http"
	"runtime"
	"runtime/debug"

	"github.com/prometheus/client_golang/prometheus"
)

// Release says which build answers. Every HTTP answer has its version in the
// header Knitmath-Release and every answer of a gRPC method in the header
// metadata knitmath-release; log, metrics and /version say the commit too.
type Release struct {
	// Version is the tag of the build, for example "v1.2.0". Between two tags it
	// is what Go makes of the tag before, the commit's time and its hash, with
	// "+dirty" when files differed from the commit; "devel" when nothing is known.
	Version string
	// Commit is the whole hash of the commit, and empty when it is not known.
	// "+dirty" at its end says that files differed from it: then it names no one
	// build.
	Commit string
}

// stampedVersion and stampedCommit win over what Go has written into the
// program. They are for builds from sources without git:
//
//	go build -ldflags '-X example.com/knitmath/service.stampedVersion=v1.2.0' ./cmd/knitmathd
var stampedVersion, stampedCommit string

const (
	releaseHeader = "Knitmath-Release"
	// unknownRelease is the version of a build that nothing is known of.
	unknownRelease = "devel"
)

// ReadRelease says from what the running program was built.
func ReadRelease() Release {
	info, ok := debug.ReadBuildInfo()
	if !ok {
		info = &debug.BuildInfo{}
	}
	return releaseOf(info, stampedVersion, stampedCommit)
}

func releaseOf(info *debug.BuildInfo, version, commit string) Release {
	said := map[string]string{}
	for _, s := range info.Settings {
		said[s.Key] = s.Value
	}
	revision := said["vcs.revision"]
	if revision != "" && said["vcs.modified"] == "true" {
		revision += "+dirty"
	}
	built := info.Main.Version
	if built == "(devel)" { // so Go writes without git
		built = ""
	}
	return Release{Version: cmp.Or(version, built, unknownRelease), Commit: cmp.Or(commit, revision)}
}

// versionPath is where both the JSON face and the admin face say the release: a
// caller asks the one, whoever looks after a single replica the other.
const versionPath = "/version"

// serveVersion answers at versionPath. It is not kept by caches: the next replica
// may be of another release.
func (r Release) serveVersion(w http.ResponseWriter, _ *http.Request) {
	w.Header().Set("Content-Type", jsonType)
	w.Header().Set("Cache-Control", "no-store")
	// Strings can be written as JSON, and a caller who has hung up is no fault of ours.
	_ = json.NewEncoder(w).Encode(struct {
		Release string `json:"release"`
		Commit  string `json:"commit"`
		Go      string `json:"go"`
	}{r.Version, r.Commit, runtime.Version()})
}

// metric is always 1; what it says are its labels.
func (r Release) metric() prometheus.Collector {
	return prometheus.NewGaugeFunc(prometheus.GaugeOpts{
		Name: "knitmath_build_info", Help: "Which release runs: always 1, the labels say it.",
		ConstLabels: prometheus.Labels{"release": r.Version, "commit": r.Commit, "goversion": runtime.Version()},
	}, func() float64 { return 1 })
}
