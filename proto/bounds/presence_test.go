package bounds_test

import (
	"strings"
	"testing"
)

// A message that is always sent says so, and so does what needs a field beside it.
func TestPresence(t *testing.T) {
	for _, c := range []struct {
		field string
		sent  bool
		needs string
		fault string
	}{
		{"int32 a = 1;", true, "", ""},
		{"optional int32 a = 1;", false, "", ""},
		{"repeated Other a = 1;", true, "", ""},
		{"Other a = 1;", false, "", ""},
		{"Other a = 1 [(always_sent) = true];", true, "", ""},
		{"Other a = 1 [(always_sent) = false];", false, "", ""},
		{"int32 a = 1 [(always_sent) = true];", false, "", "says nothing of it"},
		{"repeated Other a = 1 [(always_sent) = true];", false, "", "says nothing of it"},
		{`int32 a = 1 [(needs) = "b"]; int32 b = 2;`, true, "b", ""},
		{`int32 a = 1 [(needs) = "c"]; int32 b = 2;`, true, "", "no field beside it"},
		{`int32 a = 1 [(needs) = "a"];`, true, "", "no field beside it"},
	} {
		reader, md := compiled(t, c.field)
		fd := md.Fields().Get(0)
		sent, err := reader.AlwaysSent(fd)
		needs := ""
		if with, fault := reader.Needs(fd); fault != nil {
			err = fault
		} else if with != nil {
			needs = string(with.Name())
		}
		switch {
		case c.fault != "":
			if err == nil || !strings.Contains(err.Error(), c.fault) {
				t.Errorf("%s gives %v, want %q", c.field, err, c.fault)
			}
		case err != nil || sent != c.sent || needs != c.needs:
			t.Errorf("%s: always sent %v, needs %q, %v", c.field, sent, needs, err)
		}
	}
}
