package service

import (
	"net/http"
	"strings"

	"example.com/knitmath/service/web"
)

// pageFile is the page or file that a browser is shown at a path, if there is one. At
// the root stands the start page for whoever asks for HTML, as browsers do; programs
// are told the paths in plain text, as ever.
func (f *jsonFace) pageFile(r *http.Request) (web.File, bool) {
	if r.URL.Path == web.Start && !strings.Contains(r.Header.Get("Accept"), "text/html") {
		return web.File{}, false
	}
	return f.site.File(r.URL.Path)
}

// isShown knows the paths of the pages for browsers.
func (f *jsonFace) isShown(path string) bool {
	_, ok := f.site.File(path)
	return ok
}

func (f *jsonFace) show(w http.ResponseWriter, r *http.Request, file web.File) {
	for name, value := range file.Header {
		w.Header().Set(name, value)
	}
	f.document(w, r, file.Header["Content-Type"], file.Data)
}
