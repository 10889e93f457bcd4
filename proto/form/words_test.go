package form

import "testing"

func TestWords(t *testing.T) {
	for name, want := range map[string][2]string{
		"width_cm": {"Width", "cm"}, "cm": {"Cm", ""}, "ease_percent": {"Ease", "%"}, "start_stitches": {"Start stitches", ""},
		"ball_m": {"Ball", "m"}, "twist_per_cm": {"Twist per cm", ""}, "rise_angle_degrees": {"Rise angle", "°"},
	} {
		if label, unit := labelled(name); label != want[0] || unit != want[1] {
			t.Errorf("%s: %q %q", name, label, unit)
		}
	}
	for path, want := range map[string]string{
		"/v1/short-row:planWedge": "short-row.planWedge", "/v1/gauge": "", "/v2/gauge:a": "", "/v1/a/b:c": "", "/v1/a.b:c": "",
	} {
		if got, err := Name(path); got != want || (err == nil) != (want != "") {
			t.Errorf("%s: %q %v", path, got, err)
		}
	}
}
