package pattern

import (
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// How many edits are tried; each is seeded by its number.
const editsTried = 900

// TestEditsThatChangeACountAreSaid makes changes of right drafts that put a count wrong, one
// at a time: none of the texts is agreed with.
func TestEditsThatChangeACountAreSaid(t *testing.T) {
	texts := agreeingDrafts(t)
	kinds := []struct {
		name string
		edit func(r *rand.Rand, text string, p *Piece) string
	}{
		{"a number of a claim", claimEdited}, {"a stitch left out", changeLeftOut}, {"a stitch worked twice", changeDoubled},
		{"a number of times", timesEdited}, {"two rows exchanged", rowsExchanged}, {"a letter of a stitch", stitchMisspelt},
	}
	tried := make([]int, len(kinds))
	for n := range editsTried {
		r := rand.New(rand.NewPCG(7, uint64(n)))
		kind := n % len(kinds)
		text := texts[r.IntN(len(texts))]
		edited := kinds[kind].edit(r, text, Read(text, Options{}))
		if edited == text || edited == "" {
			continue
		}
		tried[kind]++
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: edited})
		if err == nil && out.Agrees {
			t.Errorf("%s: agreed with: %s", kinds[kind].name, lineChanged(text, edited))
		}
	}
	for k, n := range tried {
		t.Logf("%-22s %d", kinds[k].name, n)
		if n < 25 {
			t.Errorf("%s: only %d edits", kinds[k].name, n)
		}
	}
}

// agreeingDrafts are the drafts that are agreed with as they are.
func agreeingDrafts(t *testing.T) []string {
	t.Helper()
	var texts []string
	dirs := []string{freshDir, filepath.Join(corpusDir, "drafts"), filepath.Join(secondDir, "drafts"), "../../testdata/pattern"}
	for _, files := range dirs {
		found, err := filepath.Glob(filepath.Join(files, "*.txt"))
		if err != nil || len(found) == 0 {
			t.Fatalf("no drafts in %s, %v", files, err)
		}
		for _, file := range found {
			text, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: string(text)}); err == nil && out.Agrees {
				texts = append(texts, string(text))
			}
		}
	}
	if len(texts) < 12 {
		t.Fatalf("only %d drafts are agreed with", len(texts))
	}
	return texts
}

// lineChanged is the first line in which two texts differ.
func lineChanged(before, after string) string {
	a, b := strings.Split(before, "\n"), strings.Split(after, "\n")
	for i := range b {
		if i >= len(a) || a[i] != b[i] {
			return b[i]
		}
	}
	return ""
}

// claimEdited puts another number into a claim of a count: of one size, where it has several.
func claimEdited(r *rand.Rand, text string, p *Piece) string {
	var at []spot
	for i := range p.Lines {
		if l := &p.Lines[i]; len(l.ClaimedStitches) > 0 {
			at = append(at, run(spotsIn(text, l.info.claimAt), l.ClaimedStitches, false)...)
		}
	}
	if len(at) == 0 {
		return ""
	}
	s := &at[r.IntN(len(at))]
	return text[:s.at.start] + s.rewritten(s.value+1+r.IntN(5)) + text[s.at.end:]
}

// changes are the steps of claimed rows that change the count and stand alone between commas.
func changes(text string, p *Piece) []span {
	var at []span
	var gather func(steps []Step)
	gather = func(steps []Step) {
		for i := range steps {
			s := &steps[i]
			gather(s.Steps)
			said := text[s.at.start:max(s.at.start, s.at.end)]
			if s.Steps == nil && !s.stretch() && s.takes != s.leaves && s.Operation != 0 && !strings.ContainsAny(said, " ,") && said != "" {
				at = append(at, s.at)
			}
		}
	}
	for i := range p.Lines {
		if l := &p.Lines[i]; l.info.kind == lineRow && len(l.ClaimedStitches) > 0 {
			gather(l.Steps)
		}
	}
	return at
}

func changeLeftOut(r *rand.Rand, text string, p *Piece) string {
	at := changes(text, p)
	if len(at) == 0 {
		return ""
	}
	s := at[r.IntN(len(at))]
	rest := strings.TrimPrefix(strings.TrimPrefix(text[s.end:], ","), " ")
	return text[:s.start] + rest
}

func changeDoubled(r *rand.Rand, text string, p *Piece) string {
	at := changes(text, p)
	if len(at) == 0 {
		return ""
	}
	s := at[r.IntN(len(at))]
	return text[:s.end] + ", " + text[s.start:]
}

// timesEdited changes how often rows that change the count are repeated, to a claim.
func timesEdited(r *rand.Rand, text string, p *Piece) string {
	w := p.Work(Start{})
	var at []spot
	for i := range p.Lines {
		l := &p.Lines[i]
		if l.info.kind != lineRepeat || l.info.counts == nil || len(l.ClaimedStitches) == 0 ||
			slices.Equal(w.Lines[i].StartStitches, w.Lines[i].EndStitches) {
			continue
		}
		spots := spotsIn(text, l.info.at)
		found := run(spots, l.info.counts, true)
		at = append(at, found...)
	}
	if len(at) == 0 {
		return ""
	}
	s := &at[r.IntN(len(at))]
	return text[:s.at.start] + s.rewritten(s.value+1+r.IntN(2)) + text[s.at.end:]
}

// rowsExchanged exchanges what is worked in two rows one after the other that claim different
// counts; their labels stay.
func rowsExchanged(r *rand.Rand, text string, p *Piece) string {
	lines := strings.Split(text, "\n")
	var at []int
	last := -1
	for i := range p.Lines {
		l := &p.Lines[i]
		if l.info.kind != lineRow || len(l.ClaimedStitches) == 0 || len(l.info.ranges) == 0 {
			last = -1
			continue
		}
		if last >= 0 && p.Lines[last].Number()+1 == l.Number() && p.Lines[last].ClaimedStitches[0] != l.ClaimedStitches[0] {
			at = append(at, l.Number()-1)
		}
		if last = i; !strings.Contains(lines[l.Number()-1], ":") {
			last = -1
		}
	}
	if len(at) == 0 {
		return ""
	}
	k := at[r.IntN(len(at))]
	first, one, _ := strings.Cut(lines[k-1], ":")
	second, two, _ := strings.Cut(lines[k], ":")
	lines[k-1], lines[k] = first+":"+two, second+":"+one
	return strings.Join(lines, "\n")
}

// stitchMisspelt exchanges two letters of a stitch that changes the count, so that it is none.
func stitchMisspelt(r *rand.Rand, text string, p *Piece) string {
	at := changes(text, p)
	if len(at) == 0 {
		return ""
	}
	s := at[r.IntN(len(at))]
	said := []byte(text[s.start:s.end])
	if len(said) < 3 {
		return ""
	}
	said[len(said)-1], said[len(said)-2] = said[len(said)-2], said[len(said)-1]
	if _, known := lookUp(strings.ToLower(string(said)), nil); known {
		return ""
	}
	return text[:s.start] + string(said) + text[s.end:]
}
