package pattern

import (
	"fmt"
	"path/filepath"
	"strings"
	"testing"
)

// freshDir holds whole right drafts in other house styles, with mistakes to plant: in the
// form of the corpus, but written by somebody who knows this room.
const freshDir = "../../testdata/pattern/fresh"

// freshStood is what the fresh drafts show today.
var freshStood = proofread{agreeing: 11, questions: 2, countsRight: 66, found: 102}

// TestFreshDrafts is a technical editor's day: twelve drafts that are right, and each of
// them again with one mistake.
func TestFreshDrafts(t *testing.T) {
	files, err := filepath.Glob(filepath.Join(freshDir, "*.json"))
	if err != nil || len(files) == 0 {
		t.Fatalf("no drafts in %s, %v", freshDir, err)
	}
	var sum proofread
	for _, file := range files {
		var d corpusDraft
		text := readDraft(t, file, &d)
		one := proofreadDraft(t, strings.TrimSuffix(filepath.Base(file), ".json"), text, &d)
		sum.add(one)
	}
	sum.hold(t, freshStood)
}

// proofread is how drafts were read.
type proofread struct {
	agreeing                 int // drafts that are called right
	alarms, questions        int // in right drafts
	counts, countsRight      int // counts of right drafts after the lines that claim them
	planted, found           int // mistakes, and those said at their place
	elsewhere, asked, silent int // those said at another place, lost in a question, not said at all
}

func (p *proofread) add(q proofread) {
	p.agreeing, p.alarms, p.questions = p.agreeing+q.agreeing, p.alarms+q.alarms, p.questions+q.questions
	p.counts, p.countsRight = p.counts+q.counts, p.countsRight+q.countsRight
	p.planted, p.found = p.planted+q.planted, p.found+q.found
	p.elsewhere, p.asked, p.silent = p.elsewhere+q.elsewhere, p.asked+q.asked, p.silent+q.silent
}

// hold prints how drafts were read, and fails where that is worse than it stood: fewer drafts called
// right, counts or mistakes found, more alarms, questions, or mistakes that nothing is said of.
func (p *proofread) hold(t *testing.T, stood proofread) {
	t.Helper()
	t.Logf("%+v", *p)
	if p.agreeing < stood.agreeing || p.alarms > stood.alarms || p.questions > stood.questions ||
		p.countsRight < stood.countsRight || p.found < stood.found || p.silent > stood.silent {
		t.Errorf("worse than it stood: %+v, %+v", *p, stood)
	}
}

// proofreadDraft reads a draft as it is and with each of its mistakes.
func proofreadDraft(t *testing.T, name, text string, d *corpusDraft) proofread {
	var p proofread
	right, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
	if err != nil {
		t.Logf("%s: refused: %v", name, err)
	}
	if right.Agrees {
		p.agreeing++
	}
	p.alarms, p.questions = right.mistakes, right.questions
	for _, f := range right.Findings {
		if f.Kind != KindReading {
			t.Logf("%s:%d:%d %s %v %q: %s", name, f.LineNumber, f.ColumnNumber, f.Reason, f.SizeNumbers, f.Text, f.Description)
		}
	}
	for _, c := range d.Counts {
		p.counts++
		if countAfter(&right, c.Line, c.Stitches) {
			p.countsRight++
		} else {
			t.Logf("%s:%d: not %v", name, c.Line, c.Stitches)
		}
	}
	for _, m := range d.Mistakes {
		lines := strings.Split(text, "\n")
		lines[m.Line-1] = strings.Replace(lines[m.Line-1], m.From, m.To, 1)
		wrong, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: strings.Join(lines, "\n")})
		found := err == nil && shows(&right, &wrong, m.Line, m.ShowsAt, m.Sizes)
		if m.NeverShows != "" {
			if found {
				t.Errorf("%s line %d: %q is said to show in no count, and is found", name, m.Line, m.To)
			}
			continue
		}
		p.planted++
		switch {
		case found:
			p.found++
			continue
		case wrong.mistakes > right.mistakes:
			p.elsewhere++
		case err == nil && wrong.Agrees:
			p.silent++
		default:
			p.asked++ // a question stands where the mistake would show
		}
		t.Logf("%s: line %d, %q for %q, sizes %v: %s", name, m.Line, m.To, m.From, m.Sizes, said(&wrong))
	}
	return p
}

// said are the mistakes and questions in short.
func said(out *CheckedInstructions) string {
	var b strings.Builder
	for _, f := range out.Findings {
		if f.Kind != KindReading {
			fmt.Fprintf(&b, "%d:%d %s %v; ", f.LineNumber, f.ColumnNumber, f.Reason, f.SizeNumbers)
		}
	}
	return b.String()
}
