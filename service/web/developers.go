package web

import (
	"errors"
	"fmt"
	"html"
	"strings"

	"example.com/knitmath/gen/grammar"
	"example.com/knitmath/gen/openapi"
	"example.com/knitmath/gen/reasons"
	"example.com/knitmath/service/web/reference"
)

// Reference is the path of the page that lists the methods for developers.
const Reference = "/reference"

// addReference makes the pages for developers, of the OpenAPI document: one that
// lists all methods in the groups of the start page, and one for each.
func (s *Site) addReference(base string, questions []question, groups []group) error {
	document, err := readDocument()
	if err != nil {
		return err
	}
	method := map[string]string{}
	for _, q := range questions {
		page := shown{Files: base, Question: q.at(), Path: q.path, Title: q.method(), Intro: document.About(q.path), Asked: q.title,
			Ways: waysTo(q, document.Links(q.path))}
		if page.Body, err = document.Question(q.path); err != nil {
			return err
		}
		if err := s.addPage(Reference+"/"+q.at(), "reference.html", page); err != nil {
			return err
		}
		method[q.at()] = q.method()
	}
	index := shown{Files: base, Under: Reference + "/", Body: document.Refusals()}
	for _, g := range groups {
		named := group{Title: g.Title}
		for _, q := range g.Questions {
			named.Questions = append(named.Questions, shown{Question: q.Question, Title: method[q.Question] + ": " + q.Title})
		}
		index.Groups = append(index.Groups, named)
	}
	return errors.Join(s.addTexts(), s.addPage(Reference, "references.html", index))
}

// addTexts adds what the reference refers to and is long: plain text, in Markdown.
func (s *Site) addTexts() error {
	for name, packed := range map[string][]byte{"reasons.md": reasons.Gzip, "grammar.md": grammar.Gzip} {
		text, err := inflated(packed)
		if err != nil {
			return err
		}
		s.files[Reference+"/"+name] = File{Data: text, Header: map[string]string{
			"Content-Type": "text/plain; charset=utf-8", "Cache-Control": askAgain}}
	}
	return nil
}

// readDocument reads the OpenAPI document, which the program carries compressed.
func readDocument() (*reference.Document, error) {
	data, err := inflated(openapi.Gzip)
	if err != nil {
		return nil, err
	}
	return reference.Read(data)
}

// waysTo says how a program asks a question.
func waysTo(q question, inLinks bool) string {
	ways := "POST"
	if inLinks {
		ways = "POST or GET"
	}
	return fmt.Sprintf("<code>%s %s</code>; over gRPC <code>knitmath.v1.%s/%s</code>.", ways, html.EscapeString(q.path),
		html.EscapeString(q.service()), html.EscapeString(q.method()))
}

// method is the name of the method in the contract, of which the path has all but the
// capital: "gauge/computeCastOn" is ComputeCastOn.
func (q question) method() string {
	_, method, _ := strings.Cut(q.at(), "/")
	return capital(method)
}

// service is the name of the service likewise: "short-row" is ShortRowService.
func (q question) service() string {
	room, _, _ := strings.Cut(q.at(), "/")
	var name strings.Builder
	for part := range strings.SplitSeq(room, "-") {
		name.WriteString(capital(part))
	}
	return name.String() + "Service"
}

func capital(word string) string { return strings.ToUpper(word[:1]) + word[1:] }
