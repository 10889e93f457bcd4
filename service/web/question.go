package web

import (
	"bytes"
	"encoding/json"
	"fmt"
	"regexp"
	"strings"
)

// A question is a method of the contract as a page shows it.
type question struct {
	name string // as its files are called, "gauge.computeCastOn"
	form []byte
	made []byte

	path, title, intro string
}

// at is how the question is called in addresses: "gauge/computeCastOn".
func (q question) at() string { return strings.Replace(q.name, ".", "/", 1) }

// described is all that a page fetches of the question.
func (q question) described() []byte {
	return fmt.Appendf(nil, `{"form":%s,"made":%s}`, q.form, q.made)
}

// readQuestion reads the form of a question and, where there is one, the text of the file
// that says what the contract cannot.
func readQuestion(name string, contract []byte, own string, words map[string]map[string]string) (question, error) {
	q := question{name: name, form: contract, made: []byte("{}")}
	var form struct{ Path, Title, About string }
	if err := json.Unmarshal(contract, &form); err != nil {
		return q, fmt.Errorf("the form %s: %w", name, err)
	}
	// The contract begins with the method's name, which a page does not have.
	_, about, _ := strings.Cut(form.About, " ")
	q.path, q.title, q.intro = form.Path, form.Title, strings.ToUpper(about[:min(1, len(about))])+about[min(1, len(about)):]
	made := map[string]any{}
	if own != "" {
		if err := json.Unmarshal([]byte(own), &made); err != nil {
			return q, fmt.Errorf("questions/%s.json: %w", name, err)
		}
	}
	if title, ok := made["title"].(string); ok {
		q.title = title
		q.intro, _ = made["intro"].(string)
	}
	addWords(made, words, contract)
	var err error
	if q.form, err = shortened(contract, hintsOf(made)); err != nil {
		return q, err
	}
	leaveOut(made)
	q.made, err = json.Marshal(made)
	return q, err
}

// leaveOut takes away what no page reads: what stands on the page already, and hints of
// nothing, since the help that they stand for is gone from the form. One that keeps a hint
// of a bare name from its field stays.
func leaveOut(made map[string]any) {
	delete(made, "intro")
	hints, _ := made["hints"].(map[string]any)
	for name, text := range hints {
		bare, _ := hints[name[strings.LastIndex(name, ".")+1:]].(string)
		if text == "" && bare == "" {
			delete(hints, name)
		}
	}
}

// addWords adds what words.json says of the fields and values of a form, where the
// file of the question says nothing of its own. There a bare name is that of a field
// at any place, and so it is here.
func addWords(made map[string]any, words map[string]map[string]string, form []byte) {
	for kind, shared := range words {
		mark := `"name":"`
		if kind == "values" {
			mark = `"value":"`
		}
		said, _ := made[kind].(map[string]any)
		if said == nil {
			said = map[string]any{}
		}
		for name, text := range shared {
			if _, own := said[name]; !own && bytes.Contains(form, []byte(mark+name[strings.LastIndex(name, ".")+1:]+`"`)) {
				said[name] = text
			}
		}
		made[kind] = said
	}
}

// hintsOf are the fields of which a page says something of its own, or nothing.
func hintsOf(made map[string]any) map[string]bool {
	said, _ := made["hints"].(map[string]any)
	hints := map[string]bool{}
	for name := range said {
		hints[name] = true
	}
	return hints
}

// shortened is a form with no more of each help than a page shows of it: its first sentence,
// or nothing where there is a hint.
func shortened(form []byte, hints map[string]bool) ([]byte, error) {
	var whole map[string]any
	if err := json.Unmarshal(form, &whole); err != nil {
		return nil, err
	}
	var shorten func(group map[string]any, path string)
	shorten = func(group map[string]any, path string) {
		fields, _ := group["fields"].([]any)
		for _, inner := range fields {
			field := inner.(map[string]any)
			name, _ := field["name"].(string)
			help, _ := field["help"].(string)
			if field["help"] = firstSentence(help); hints[path+name] || hints[name] || help == "" {
				delete(field, "help")
			}
			below := path + name
			if list, _ := field["list"].(bool); list {
				below += "[]"
			}
			shorten(field, below+".")
		}
	}
	shorten(whole, "")
	delete(whole, "about") // The pages have it written out.
	return json.Marshal(whole)
}

// sentenceEnds is where a sentence ends before another begins.
var sentenceEnds = regexp.MustCompile(`\.\s+[A-Z]`)

func firstSentence(text string) string {
	if end := sentenceEnds.FindStringIndex(text); end != nil {
		return text[:end[0]+1]
	}
	return text
}
