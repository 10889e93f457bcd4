// Package form cuts a description of a form out of a method: the fields of its
// question with their kinds, units, ranges, defaults, choices and help, as a page
// needs them and no more. A new method so has a form for nothing.
//
// What a page says beyond the contract, such as the order of the fields, their
// grouping and examples, does not belong here but to service/web.
package form

import (
	"errors"
	"fmt"
	"strings"

	"google.golang.org/genproto/googleapis/api/annotations"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"

	"example.com/knitmath/proto/bounds"
)

// A Form describes one question.
type Form struct {
	// Path is where it is asked over JSON, and Get that it may be asked in a link too.
	Path string `json:"path"`
	Get  bool   `json:"get,omitempty"`
	// Title is the name of the method in words.
	Title string `json:"title"`
	About string `json:"about"`
	// Outline: the question has with_outline. Units: it has display_unit. A page sets
	// both itself, so that neither is among the fields.
	Outline bool `json:"outline,omitempty"`
	Units   bool `json:"units,omitempty"`
	// Enums are those of the answer, as their values begin: "SIDE_".
	Enums []string `json:"enums,omitempty"`

	Group
}

// A Group is what stands together: a question, or a part of one.
type Group struct {
	Fields []Field `json:"fields,omitempty"`
	// Choices are sets of fields of which one at most is given.
	Choices [][]string `json:"choices,omitempty"`
}

// A Field is one value of a question, a group of them, or a list of either.
type Field struct {
	Name  string `json:"name"`
	Label string `json:"label"`
	// Unit is the sign of the unit, where the name has one: "cm".
	Unit string `json:"unit,omitempty"`
	Kind Kind   `json:"kind"`
	// List: any number of these may be given, MaxItems at most.
	List     bool    `json:"list,omitempty"`
	MaxItems *uint64 `json:"max_items,omitempty"`

	Help     string   `json:"help,omitempty"`
	Required bool     `json:"required,omitempty"`
	Min      *float64 `json:"min,omitempty"`
	Max      *float64 `json:"max,omitempty"`
	Longest  *uint64  `json:"longest,omitempty"`
	Default  any      `json:"default,omitempty"`
	Example  any      `json:"example,omitempty"`
	Options  []Option `json:"options,omitempty"`

	Group
}

// A Kind says what may be typed.
type Kind string

// The kinds of fields.
const (
	Number Kind = "number"
	Whole  Kind = "whole"
	Text   Kind = "text"
	Flag   Kind = "flag"
	Choice Kind = "choice"
	Parts  Kind = "group"
)

// An Option is one value of a choice.
type Option struct {
	Value string `json:"value"`
	Label string `json:"label"`
	Help  string `json:"help,omitempty"`
}

// Maker makes forms.
type Maker struct {
	Bounds bounds.Reader
	// Comment is what the contract says of a thing, as running text.
	Comment func(protoreflect.Descriptor) string
}

// Name is what the form of a path is called: "gauge.computeCastOn".
func Name(path string) (string, error) {
	name, own := strings.CutPrefix(path, "/v1/")
	room, method, two := strings.Cut(name, ":")
	if !own || !two || strings.ContainsAny(name, "/.") {
		return "", fmt.Errorf("%s is not of the form /v1/room:method", path)
	}
	return room + "." + method, nil
}

// Form describes the question of a method.
func (m Maker) Form(method protoreflect.MethodDescriptor) (*Form, error) {
	rule, ok := proto.GetExtension(method.Options(), annotations.E_Http).(*annotations.HttpRule)
	if !ok || rule.GetPost() == "" {
		return nil, fmt.Errorf("%s has no path to be asked at", method.FullName())
	}
	f := &Form{
		Path: rule.GetPost(), Get: len(rule.GetAdditionalBindings()) > 0,
		Title: sentence(words(string(method.Name()))), About: m.Comment(method),
	}
	question := method.Input()
	f.Outline = question.Fields().ByName("with_outline") != nil
	f.Units = question.Fields().ByName("display_unit") != nil
	f.Enums = enumsIn(method.Output())
	var err error
	f.Group, err = m.group(question, nil)
	return f, err
}

// ofEveryPage are fields that a page sets, or has no use for.
var ofEveryPage = map[protoreflect.Name]bool{"with_outline": true, "display_unit": true, "fields": true}

// group describes a message. within are the messages it lies in: what holds itself
// is described once and not without end.
func (m Maker) group(message protoreflect.MessageDescriptor, within []protoreflect.FullName) (Group, error) {
	var g Group
	var faults []error
	within = append(within, message.FullName())
	for i := range message.Fields().Len() {
		fd := message.Fields().Get(i)
		if len(within) == 1 && ofEveryPage[fd.Name()] || fd.Message() != nil && holds(within, fd.Message().FullName()) {
			continue
		}
		field, err := m.field(fd, within)
		faults = append(faults, err)
		g.Fields = append(g.Fields, field)
	}
	choices, err := m.Bounds.Choices(message)
	faults = append(faults, err)
	for _, choice := range choices {
		g.Choices = append(g.Choices, choice.Fields)
	}
	return g, errors.Join(faults...)
}

func holds(names []protoreflect.FullName, name protoreflect.FullName) bool {
	for _, n := range names {
		if n == name {
			return true
		}
	}
	return false
}
