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
