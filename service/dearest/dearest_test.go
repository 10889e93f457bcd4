package main

import (
	"bytes"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"example.com/knitmath/knitmath/cost"
)

// shortClimb is how many changed questions the gate asks for each method and aim.
const shortClimb = "4"

// Every question takes what its price says, and none more than a question may: those
// that longer climbs have found, and those of a short one. The program is built anew,
// since blocks are counted only where the compiler was asked to.
func TestDearestQuestions(t *testing.T) {
	program := filepath.Join(t.TempDir(), "dearest")
	build := exec.Command("go", "build", "-cover", "-covermode=atomic",
		"-coverpkg=example.com/knitmath/knitmath/...,example.com/knitmath/service/dearest", "-o", program, ".")
	if out, err := build.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	run := exec.Command(program, "-climb", shortClimb, "-known", "testdata")
	run.Env = append(os.Environ(), "GOCOVERDIR="+t.TempDir())
	var complaints bytes.Buffer
	run.Stderr = &complaints
	out, err := run.Output()
	if err != nil {
		t.Fatalf("%v\n%s", err, complaints.String())
	}
	asked, accepted := map[string]int{}, map[string]int{}
	for dec := json.NewDecoder(bytes.NewReader(out)); dec.More(); {
		var f found
		if err := dec.Decode(&f); err != nil {
			t.Fatal(err)
		}
		asked[f.Method]++
		if !f.Refused {
			accepted[f.Method]++
		}
		f.check(t)
	}
	for _, m := range methods() {
		if asked[m.name] != 2*len(aims) || accepted[m.name] == 0 {
			t.Errorf("%s: %d questions, %d of them accepted", m.name, asked[m.name], accepted[m.name])
		}
	}
}

func (f found) check(t *testing.T) {
	t.Helper()
	steps := int64(f.steps())
	if f.Blocks < 1 || f.Blocks > BlocksPerStep*steps {
		t.Errorf("%s, %s: %d blocks for %d steps", f.Method, f.Aim, f.Blocks, steps)
	}
	if f.Bytes > BytesPerStep*steps || f.Bytes > MostBytes {
		t.Errorf("%s, %s: %d bytes for %d steps", f.Method, f.Aim, f.Bytes, steps)
	}
	if !f.Refused && f.Price > cost.Limit {
		t.Errorf("%s, %s: accepted at a price of %d; the dearest is %d", f.Method, f.Aim, f.Price, cost.Limit)
	}
}
