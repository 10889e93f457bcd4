package web

import (
	"encoding/json"
	"fmt"
	"html"
	"strings"
)

// shown is what a page is filled with.
type shown struct {
	Files, Question, Path, Title, Intro, Example string
	Groups                                       []group
	// Under is where the questions of the groups stand.
	Under string
	// Asked is the title of the question's own page, Ways how a program asks it and
	// Body what is known of it, both written already; for a page of the reference.
	Asked, Ways, Body string
}

// A group of questions on the start page.
type group struct {
	Title     string
	Questions []shown
}

// addPages makes the start page and a page for each question.
func (s *Site) addPages(base string, questions []question) error {
	front := shown{Files: base, Under: "/ask/"}
	if err := front.arrange(s.own["start.json"], questions); err != nil {
		return err
	}
	if err := s.addPage(Start, "start.html", front); err != nil {
		return err
	}
	for _, q := range questions {
		page := shown{Files: base, Question: q.at(), Path: q.path, Title: q.title, Intro: q.intro}
		if err := s.addPage("/ask/"+q.at(), "question.html", page); err != nil {
			return err
		}
	}
	lost, err := s.page("lost.html", shown{Files: base})
	if err != nil {
		return err
	}
	s.Lost = lost
	return s.addReference(base, questions, front.Groups)
}

// addPage puts a page at its path.
func (s *Site) addPage(at, page string, with shown) error {
	filled, err := s.page(page, with)
	s.files[at] = filled
	return err
}

// page fills a page in. Go's templates are not used: they keep every exported
// method in the program, 5 MB of them, and little is needed of them here.
func (s *Site) page(page string, with shown) (File, error) {
	text, ok := s.own["files/"+page]
	if !ok {
		return File{}, fmt.Errorf("the page %s is missing", page)
	}
	filled := strings.NewReplacer("{{files}}", html.EscapeString(with.Files), "{{question}}", html.EscapeString(with.Question),
		"{{path}}", html.EscapeString(with.Path), "{{key}}", html.EscapeString(s.config.Key), "{{title}}", html.EscapeString(with.Title),
		"{{intro}}", html.EscapeString(with.Intro),
		"{{example}}", html.EscapeString(with.Example), "{{groups}}", with.lists(),
		"{{asked}}", html.EscapeString(with.Asked), "{{ways}}", with.Ways, "{{body}}", with.Body).Replace(text)
	return File{Data: []byte(filled), Header: map[string]string{
		"Content-Type": "text/html; charset=utf-8", "Cache-Control": askAgain, "Content-Security-Policy": s.config.policy(),
		"Referrer-Policy": "same-origin", "Cross-Origin-Opener-Policy": "same-origin",
		"Permissions-Policy": "camera=(), geolocation=(), microphone=()",
	}}, nil
}

// lists are the groups of questions as a page shows them.
func (front shown) lists() string {
	var b strings.Builder
	for _, g := range front.Groups {
		fmt.Fprintf(&b, "<h2>%s</h2>\n<ul class=\"list-of-questions\">\n", html.EscapeString(g.Title))
		for _, q := range g.Questions {
			fmt.Fprintf(&b, "<li><a href=\"%s\">%s</a></li>\n", html.EscapeString(front.Under+q.Question), html.EscapeString(q.Title))
		}
		b.WriteString("</ul>\n")
	}
	return b.String()
}

// arrange puts the questions into the groups of start.json; those it does not know
// come last, so that none is missing.
func (front *shown) arrange(start string, questions []question) error {
	var order struct {
		Example string
		Groups  []struct {
			Title     string
			Questions []string
		}
	}
	if err := json.Unmarshal([]byte(start), &order); err != nil {
		return fmt.Errorf("start.json: %w", err)
	}
	front.Example = order.Example
	left := map[string]question{}
	for _, q := range questions {
		left[q.at()] = q
	}
	for _, g := range order.Groups {
		made := group{Title: g.Title}
		for _, at := range g.Questions {
			q, ok := left[at]
			if !ok {
				return fmt.Errorf("start.json: there is no question %s, or it stands there twice", at)
			}
			delete(left, at)
			made.Questions = append(made.Questions, shown{Question: at, Title: q.title})
		}
		front.Groups = append(front.Groups, made)
	}
	more := group{Title: "More questions"}
	for _, q := range questions {
		if _, unlisted := left[q.at()]; unlisted {
			more.Questions = append(more.Questions, shown{Question: q.at(), Title: q.title})
		}
	}
	if len(more.Questions) > 0 {
		front.Groups = append(front.Groups, more)
	}
	return nil
}
