package main

import (
	"io"
	"net/http"
	"regexp"
	"strconv"
	"testing"
)

// The program collects its garbage when there is something to collect, and as GOGC says
// where it does.
func TestCollectsSeldom(t *testing.T) {
	for _, c := range []struct {
		name, told string
		most       float64 // how often while 96 MiB are allocated
	}{{"usual", "", 4}, {"told", "100", 1000}} {
		t.Run(c.name, func(t *testing.T) {
			if c.told != "" {
				t.Setenv("GOGC", c.told)
			}
			p := serve(t)
			figures := func() (allocated, collections, percent float64) {
				resp, err := http.Get("http://" + p.Admin + "/metrics")
				if err != nil {
					t.Fatal(err)
				}
				defer resp.Body.Close()
				text, err := io.ReadAll(resp.Body)
				if err != nil {
					t.Fatal(err)
				}
				figure := func(name string) float64 {
					found := regexp.MustCompile(`(?m)^` + name + ` (\S+)$`).FindSubmatch(text)
					if found == nil {
						t.Fatal(name + " is no metric")
					}
					value, err := strconv.ParseFloat(string(found[1]), 64)
					if err != nil {
						t.Fatal(err)
					}
					return value
				}
				return figure("go_memstats_alloc_bytes_total"), figure("go_gc_duration_seconds_count"), figure("go_gc_gogc_percent")
			}
			for { // What is made once is made: from then on, each question for the figures is garbage.
				if _, collections, _ := figures(); collections > 0 {
					break
				}
			}
			began, before, _ := figures()
			for {
				allocated, after, percent := figures()
				if allocated-began < 96<<20 {
					continue
				}
				t.Logf("%.0f MiB, %.0f collections, at growth by %.0f %%", (allocated-began)/(1<<20), after-before, percent)
				if after-before > c.most {
					t.Errorf("%.0f collections, want %.0f at most", after-before, c.most)
				}
				if c.told != "" && strconv.FormatFloat(percent, 'f', 0, 64) != c.told {
					t.Errorf("GOGC %s became %.0f", c.told, percent)
				}
				return
			}
		})
	}
}
