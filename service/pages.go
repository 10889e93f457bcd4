package service

import (
	"net/http"
	"net/url"
	"strings"

	"google.golang.org/grpc/codes"

	"example.com/knitmath/service/web"
)

// pageFile is the page or file that a browser is shown at a path, if there is one. At
// the root stands the start page for whoever asks for HTML, as browsers do; programs
// are told the paths in plain text, as ever.
func (f *jsonFace) pageFile(r *http.Request) (web.File, bool) {
	if r.URL.Path == web.Start && !readsHTML(r) {
		return web.File{}, false
	}
	return f.site.File(r.URL.Path)
}

// readsHTML tells a person's browser from a program.
func readsHTML(r *http.Request) bool { return strings.Contains(r.Header.Get("Accept"), "text/html") }

// isShown knows the paths of the pages for browsers, also with a slash too many.
func (f *jsonFace) isShown(path string) bool {
	_, ok := f.site.File(strings.TrimSuffix(path, "/"))
	return ok
}

// withoutSlash sends whoever asks for a page with a slash behind its path to the page.
func withoutSlash(w http.ResponseWriter, r *http.Request) {
	to := url.URL{Path: strings.TrimSuffix(r.URL.Path, "/"), RawQuery: r.URL.RawQuery}
	http.Redirect(w, r, to.String(), http.StatusPermanentRedirect)
}

// unknownPath answers where nothing is: a program in JSON, a person with a way on.
func (f *jsonFace) unknownPath(w http.ResponseWriter, r *http.Request, reading bool) {
	st := refusal(codes.NotFound, "UNKNOWN_PATH", "no such path; /reference shows them, and /openapi.json lists them all")
	w.Header().Add("Vary", "Accept")
	if !reading || !readsHTML(r) {
		f.refuse(w, r, http.StatusNotFound, st)
		return
	}
	f.logRefusal(r, http.StatusNotFound, st)
	for name, value := range f.site.Lost.Header {
		w.Header().Set(name, value)
	}
	w.Header().Set("Cache-Control", "no-store")
	w.WriteHeader(http.StatusNotFound)
	_, _ = w.Write(f.site.Lost.Data)
}

func (f *jsonFace) show(w http.ResponseWriter, r *http.Request, file web.File) {
	for name, value := range file.Header {
		w.Header().Set(name, value)
	}
	f.packed(file).ServeHTTP(w, r)
}

// packed is a file as it goes out. Each is compressed when somebody first asks for it:
// the largest take a millisecond, which anybody could have had spent with every GET. A
// file has several paths, and any number under names of other releases, so that it is
// known by where its bytes lie.
func (f *jsonFace) packed(file web.File) *packedDocument {
	if len(file.Data) == 0 {
		return packedFile(file.Header["Content-Type"], nil)
	}
	if known, ok := f.shown.Load(&file.Data[0]); ok {
		return known.(*packedDocument)
	}
	made, _ := f.shown.LoadOrStore(&file.Data[0], packedFile(file.Header["Content-Type"], file.Data))
	return made.(*packedDocument)
}
