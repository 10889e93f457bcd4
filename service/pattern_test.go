package service

import (
	"encoding/json"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/pattern"
	"example.com/knitmath/knitmath/stitch"
)

// TestWireInstructionsReadBack reads the text of every instruction in every good
// wire case: the reader of written instructions understands all that the service
// writes, whatever plans it.
func TestWireInstructionsReadBack(t *testing.T) {
	read := 0
	for path, file := range readWireFiles(t) {
		if file.Cases != nil || len(file.Response) == 0 {
			continue
		}
		var answer any
		if err := json.Unmarshal(file.Response, &answer); err != nil {
			t.Fatal(err)
		}
		for _, text := range instructionTexts(answer) {
			read++
			p := pattern.Read(text, pattern.Options{})
			findings, _ := p.Findings()
			for _, f := range findings {
				if f.Kind != pattern.KindReading {
					t.Errorf("%s: %q: %+v", path, text, f)
				}
			}
			if got := pattern.Text(p.Lines, pattern.RepeatStyleBrackets); got != text {
				t.Errorf("%s: %q is written again as %q", path, text, got)
			}
		}
	}
	if read < 20 {
		t.Errorf("only %d instructions found", read)
	}
}

// The directions of flat and solid shapes are read back as a text and agree with their counts.
func TestWireDirectionsReadBack(t *testing.T) {
	read := 0
	for path, file := range readWireFiles(t) {
		if file.Method != "FlatService/PlanFlatShape" && file.Method != "SolidService/PlanSolid" || len(file.Response) == 0 {
			continue
		}
		var answer struct {
			Directions   []string
			Construction string
			Wedges       []any // which are worked flat
		}
		if err := json.Unmarshal(file.Response, &answer); err != nil {
			t.Fatal(err)
		}
		read++
		in := pattern.CheckInstructionsInput{Text: strings.Join(answer.Directions, "\n"), Construction: stitch.InTheRound}
		if answer.Construction == "CONSTRUCTION_FLAT" || len(answer.Wedges) > 0 {
			in.Construction = stitch.Flat
		}
		checked, err := pattern.CheckInstructions(t.Context(), in)
		if err != nil || !checked.Agrees {
			t.Errorf("%s: %v", path, err)
			for _, f := range checked.Findings {
				if f.Kind != pattern.KindReading {
					t.Errorf("line %d: %s, %q", f.LineNumber, f.Reason, f.Text)
				}
			}
		}
	}
	if read < 20 {
		t.Errorf("only %d directions found", read)
	}
}

// In no direction of a plan, of any method, a number of rows stands straight before a number of times.
func TestNumbersDoNotRunTogether(t *testing.T) {
	read := 0
	for path, file := range readWireFiles(t) {
		if len(file.Response) == 0 || strings.HasPrefix(file.Method, "PatternService/") { // whose texts are those that were sent
			continue
		}
		var answer struct{ Directions []string }
		_ = json.Unmarshal(file.Response, &answer)
		read += len(answer.Directions)
		if found := knittest.NumbersRunTogether(answer.Directions); found != "" {
			t.Errorf("%s: %q", path, found)
		}
	}
	if read < 1500 {
		t.Errorf("only %d directions", read)
	}
}

// instructionTexts finds the texts of Instruction messages in a JSON answer.
func instructionTexts(v any) []string {
	var out []string
	switch v := v.(type) {
	case []any:
		for _, item := range v {
			out = append(out, instructionTexts(item)...)
		}
	case map[string]any:
		_, hasSteps := v["steps"]
		_, hasStart := v["start_stitches"].(float64) // a list belongs to a checked line
		if text, ok := v["text"].(string); ok && hasSteps && hasStart {
			return []string{text}
		}
		for _, item := range v {
			out = append(out, instructionTexts(item)...)
		}
	}
	return out
}
