package caller

import (
	"strings"
	"testing"
)

func TestOrigins(t *testing.T) {
	o, err := ReadOrigins("https://shop.example, https://*.yarn.example,http://localhost:3000,https://[::1]:8443,app://knit," +
		"http://*.test.example:8080")
	if err != nil {
		t.Fatal(err)
	}
	for origin, want := range map[string]bool{
		"https://shop.example":                true,
		"https://a.yarn.example":              true,
		"https://a.b-c.yarn.example":          true,
		"http://localhost:3000":               true,
		"https://[::1]:8443":                  true,
		"app://knit":                          true,
		"http://x.test.example:8080":          true,
		"":                                    false,
		"null":                                false,
		"*":                                   false,
		"http://shop.example":                 false, // another scheme
		"https://shop.example:8443":           false, // another port
		"https://shop.example.evil.example":   false,
		"https://evilshop.example":            false,
		"https://SHOP.example":                false, // browsers send small letters
		"https://shop.example/":               false,
		"https://yarn.example":                false, // the star stands for at least one label
		"https://.yarn.example":               false,
		"https://evilyarn.example":            false,
		"https://evil.example/.yarn.example":  false,
		"https://evil.example#.yarn.example":  false,
		"https://u@a.yarn.example":            false,
		"https://evil.example:1.yarn.example": false,
		"https://a..yarn.example":             false,
		"https://a.yarn.example:444":          false,
		"http://x.test.example":               false,
		"https://*.yarn.example":              false,
	} {
		if got := o.Allow(origin); got != want {
			t.Errorf("%q: %v, want %v", origin, got, want)
		}
	}
	if o.Empty() || o.All {
		t.Errorf("%+v", o)
	}
}

func TestEveryOriginAndNone(t *testing.T) {
	all, err := ReadOrigins("*")
	if err != nil || !all.Allow("https://any.example") || !all.Allow("null") || all.Empty() {
		t.Errorf("%+v, %v", all, err)
	}
	none, err := ReadOrigins("")
	if err != nil || none.Allow("") || none.Allow("https://any.example") || !none.Empty() {
		t.Errorf("%+v, %v", none, err)
	}
}

func TestOriginsRefuse(t *testing.T) {
	for list, say := range map[string]string{
		"shop.example":              "no origin",
		"https://shop.example/":     "no origin",
		"https://shop.example/a":    "no origin",
		"https://Shop.example":      "no origin",
		"https://u@shop.example":    "no origin",
		"https://*":                 "no origin",
		"https://a.*.example":       "no origin",
		"https://*shop.example":     "no origin",
		"https://shop.example:0":    "no origin",
		"https://":                  "no origin",
		"null":                      "no origin",
		"https://a.example,":        "no origin",
		"https://*.example":         "far too much",
		"https://*.localhost":       "far too much",
		"https://*.[::1]":           "far too much",
		"https://shop.example:443":  "leave the usual port out",
		"http://shop.example:80":    "leave the usual port out",
		"*,https://shop.example":    "leaves nothing",
		"https://*.shop.example,*":  "leaves nothing",
		"https://shop.example\nabc": "no origin",
	} {
		if _, err := ReadOrigins(list); err == nil || !strings.Contains(err.Error(), say) {
			t.Errorf("%q: %v, want %q", list, err, say)
		}
	}
}
