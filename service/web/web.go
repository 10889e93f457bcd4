// Package web holds what a browser is shown: a start page, a page for each question,
// and what a page of somebody else needs to put a question on it. All of it is made
// once, when the program starts, of files that lie in it and of the forms that are
// cut out of the contract (gen/forms); nothing is fetched from anywhere.
//
// A page asks the JSON face like everybody else: no knitting is decided here, and
// what a question means is said by the contract. Words, order and examples of a page
// lie in questions/.
package web

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"mime"
	"path"
	"slices"
	"strings"
)

// A File is one answer.
type File struct {
	Header map[string]string
	Data   []byte
}

// Site is all that is shown, by path.
type Site struct {
	config Config
	own    sources
	files  map[string]File
	// unversioned are the files that stand under the name of the release, by the rest
	// of their path: another release may ask for them while replicas are replaced.
	unversioned map[string]File
	// Lost is what a person is shown where no page is.
	Lost File
}

// Start is the path of the start page.
const Start = "/"

const (
	under = "/web/"
	// What stands under the name of all that is in it never changes.
	forEver = "public, max-age=31536000, immutable"
	// The pages name those files, so that they are asked for anew each time: an ETag
	// makes it cheap.
	askAgain = "no-cache"
)

// Config is what the pages are told when the program starts.
type Config struct {
	// Key is what they ask with, where the service wants keys; everybody can read it.
	Key string
	// FramedBy are the origins whose pages may show them in a frame, with commas
	// between them, as caller.ReadOrigins reads them.
	FramedBy string
}

// policy is what a page may do: run, read and ask what comes from here, and nothing
// else; and who may show it in a frame.
func (c Config) policy() string {
	frames := "'none'"
	if c.FramedBy != "" {
		frames = strings.Join(strings.FieldsFunc(c.FramedBy, func(r rune) bool { return r == ',' || r == ' ' }), " ")
	}
	return "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; " +
		"base-uri 'none'; form-action 'none'; frame-ancestors " + frames
}

// New makes the site.
func New(c Config) (*Site, error) {
	own, err := readSources()
	if err != nil {
		return nil, err
	}
	questions, err := own.questions()
	if err != nil {
		return nil, err
	}
	static := own.fetched()
	for _, q := range questions {
		static["forms/"+q.name+".json"] = q.described()
	}
	base := under + digest(static) + "/"
	s := &Site{config: c, own: own, files: map[string]File{}, unversioned: map[string]File{}}
	for name, data := range static {
		kept := File{Data: data, Header: map[string]string{"Content-Type": typeOf(name), "Cache-Control": forEver}}
		s.files[base+name] = kept
		kept.Header = map[string]string{"Content-Type": typeOf(name), "Cache-Control": askAgain}
		s.unversioned[name] = kept
	}
	return s, errors.Join(s.addPages(base, questions), s.addEmbed(base, static))
}

// File is what stands at a path.
func (s *Site) File(at string) (File, bool) {
	if file, ok := s.files[at]; ok {
		return file, true
	}
	rest, ok := strings.CutPrefix(at, under)
	if !ok {
		return File{}, false
	}
	_, name, _ := strings.Cut(rest, "/")
	file, ok := s.unversioned[name]
	return file, ok
}

// digest names files by what is in all of them: a script asks for descriptions by names
// next to its own, so that one name has to change with any of them.
func digest(files map[string][]byte) string {
	names := make([]string, 0, len(files))
	for name := range files {
		names = append(names, name)
	}
	slices.Sort(names)
	sum := sha256.New()
	for _, name := range names {
		fmt.Fprintf(sum, "%s %d\n", name, len(files[name]))
		sum.Write(files[name])
	}
	return hex.EncodeToString(sum.Sum(nil)[:8])
}

// typeOf does not ask the machine, whose tables differ.
func typeOf(name string) string {
	switch ext := path.Ext(name); ext {
	case ".js":
		return "text/javascript; charset=utf-8"
	case ".json":
		return "application/json"
	default:
		return mime.TypeByExtension(ext) // .css and .svg, which Go knows by itself
	}
}
