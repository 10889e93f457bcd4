package trace

import (
	"strings"
	"testing"
)

// The standard variables are asked what they mean, and nothing else switches traces on.
func TestWanted(t *testing.T) {
	const at = "OTEL_EXPORTER_OTLP_ENDPOINT=http://collector:4318"
	for _, c := range []struct {
		env   string
		want  bool
		fault string
	}{
		{"", false, ""},
		{"OTEL_SERVICE_NAME=knit OTEL_TRACES_SAMPLER=always_on OTEL_TRACES_EXPORTER=otlp", false, ""},
		{at, true, ""},
		{"OTEL_EXPORTER_OTLP_TRACES_ENDPOINT=https://collector/v1/traces", true, ""},
		{at + " OTEL_TRACES_EXPORTER=otlp OTEL_EXPORTER_OTLP_PROTOCOL=http/protobuf", true, ""},
		{at + " OTEL_TRACES_EXPORTER=none", false, ""},
		{at + " OTEL_SDK_DISABLED=true", false, ""},
		{at + " OTEL_TRACES_EXPORTER=console", false, "OTEL_TRACES_EXPORTER"},
		{at + " OTEL_EXPORTER_OTLP_PROTOCOL=grpc", false, "OTEL_EXPORTER_OTLP_PROTOCOL"},
		{at + " OTEL_EXPORTER_OTLP_PROTOCOL=grpc OTEL_EXPORTER_OTLP_TRACES_PROTOCOL=http/protobuf", true, ""},
		{"OTEL_EXPORTER_OTLP_ENDPOINT=collector:4318", false, "OTEL_EXPORTER_OTLP_ENDPOINT"},
		{"OTEL_EXPORTER_OTLP_TRACES_ENDPOINT=collector", false, "OTEL_EXPORTER_OTLP_TRACES_ENDPOINT"},
	} {
		got, err := wanted(func(name string) string {
			for _, set := range strings.Fields(c.env) {
				if value, ok := strings.CutPrefix(set, name+"="); ok {
					return value
				}
			}
			return ""
		})
		if got != c.want || (err != nil) != (c.fault != "") || err != nil && !strings.Contains(err.Error(), c.fault) {
			t.Errorf("%s: %v, %v", c.env, got, err)
		}
	}
}
