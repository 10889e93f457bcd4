package service

import (
	"fmt"
	"log"
	"log/slog"
	"net/http"
	"strings"
	"sync"
	"sync/atomic"
	"time"

	"example.com/knitmath/gen/openapi"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/service/conns"
	"example.com/knitmath/service/web"
)

const jsonType = "application/json"

// tooLargeText says what a question may have, on both faces.
var tooLargeText = fmt.Sprintf("the body may have %d bytes at most", maxQuestionBytes)

// jsonFace answers HTTP. It refuses before it asks what cannot be a question.
type jsonFace struct {
	routes  map[string]route
	methods *inProcess
	answers http.Handler // of calls that were let in
	index   []byte
	site    *web.Site
	shown   sync.Map // of *packedDocument, by where the bytes of a file of the site lie
	release Release
	metrics *metrics
	callers callers
	admission
	openapi *packedDocument
}

// newJSONFace is the JSON face of methods, counted by m.
func newJSONFace(methods *inProcess, m *metrics, who callers, in admission, config Config) (*jsonFace, error) {
	routes, err := readRoutes()
	if err != nil {
		return nil, err
	}
	face := &jsonFace{routes: routes, methods: methods, index: []byte(index(routes)), release: config.Release, metrics: m, callers: who,
		admission: in}
	if face.site, err = web.New(web.Config{Key: config.Callers.PageKey, FramedBy: config.FramedBy}); err != nil {
		return nil, err
	}
	if face.openapi, err = newPackedDocument(jsonType, openapi.Gzip); err != nil {
		return nil, err
	}
	face.answers = compressing(held(http.HandlerFunc(face.answer)))
	for path, at := range routes {
		m.expect(path, strings.Split(at.allowed(), ", ")...)
	}
	return face, nil
}

// whole is the face with everything in front of it: the release, counting, whose
// pages may read it, recovery and what bounds a connection, which gets as old as age.
func (f *jsonFace) whole(age time.Duration, ready *atomic.Bool) http.Handler {
	answers := f.metrics.faults.recoverHTTP(whereHTTP, f.callers.cors(f.onHTTP(f, age, ready)))
	return onHTTP(f.release, f.metrics.observe(f.label, answers))
}

// newHTTPServer bounds every stage of a request.
func newHTTPServer(handler http.Handler, logger *slog.Logger) *http.Server {
	return &http.Server{
		Handler:           handler,
		ReadHeaderTimeout: 5 * time.Second,
		ReadTimeout:       10 * time.Second,
		WriteTimeout:      20 * time.Second,
		// Longer than the minute for which load balancers keep connections, so that
		// it is them who close.
		IdleTimeout:    75 * time.Second,
		ConnContext:    conns.Known,
		MaxHeaderBytes: maxHeaderBytes,
		ErrorLog:       log.New(LibraryLines(logger, "net/http"), "", 0),
	}
}

// label is the route of a request for the metrics, out of a fixed set.
func (f *jsonFace) label(r *http.Request) string {
	if _, known := f.routes[r.URL.Path]; known || isPage(r.URL.Path) {
		return r.URL.Path
	}
	if f.isShown(r.URL.Path) {
		return "pages"
	}
	return "other"
}

// isQuestion knows the paths that are.
func (f *jsonFace) isQuestion(path string) bool {
	_, known := f.routes[path]
	return known
}

// isPage knows the paths that are no questions.
func isPage(path string) bool {
	return path == "/" || path == "/openapi.json" || path == versionPath
}

func (f *jsonFace) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	w.Header().Set("X-Content-Type-Options", "nosniff")
	reading := r.Method == http.MethodGet || r.Method == http.MethodHead
	at, known := f.routes[r.URL.Path]
	if at.table { // whose answers, refusals too, depend on it
		w.Header().Add("Vary", "Accept")
	}
	r, ok := f.judged(w, r)
	if !ok {
		return
	}
	switch {
	case isPage(r.URL.Path) || f.isShown(r.URL.Path):
		f.page(w, r, reading)
	case !known:
		f.unknownPath(w, r, reading)
	case reading && at.get:
		f.get(w, r, at)
	case r.Method == http.MethodPost:
		f.post(w, r, at)
	default:
		f.wrongMethod(w, r, at.allowed())
	}
}

// page serves the documents that are no questions.
func (f *jsonFace) page(w http.ResponseWriter, r *http.Request, reading bool) {
	if r.URL.Path == web.Start {
		w.Header().Add("Vary", "Accept")
	}
	file, shown := f.pageFile(r)
	switch {
	case !reading:
		f.wrongMethod(w, r, "GET, HEAD")
	case shown:
		f.show(w, r, file)
	case f.isShown(r.URL.Path):
		withoutSlash(w, r)
	case r.URL.Path == "/":
		f.document(w, r, "text/plain; charset=utf-8", f.index)
	case r.URL.Path == versionPath:
		f.release.serveVersion(w, r)
	default:
		f.openapi.ServeHTTP(w, r)
	}
}

// get answers a question in a query string, for a cache to keep.
func (f *jsonFace) get(w http.ResponseWriter, r *http.Request, at route) {
	call := &jsonCall{route: at, table: wantsTable(r.Header, at)}
	in, r, ok := f.enter(w, r, call, len(r.URL.RawQuery))
	if !ok {
		return
	}
	defer call.work.Leave()
	faults, unlisted := explainQuery(r.URL.RawQuery, at.question)
	if r.ContentLength != 0 {
		faults = append(faults, malformed("a GET has no body; POST it"))
	}
	if len(faults) > 0 {
		f.refuse(in, r, http.StatusBadRequest, invalidBeyond(faults, unlisted))
		return
	}
	serveCached(in, r, f.answers, f.release.questionOf(r, call.table)...)
}

// post answers a question in a body.
func (f *jsonFace) post(w http.ResponseWriter, r *http.Request, at route) {
	if st := mediaFault(r.Header); st != nil {
		w.Header().Set("Accept-Encoding", codingGzip)
		f.refuse(w, r, http.StatusUnsupportedMediaType, st)
		return
	}
	data, err := readBody(w, r)
	if err != nil {
		f.refuseBody(w, r, err)
		return
	}
	call := &jsonCall{route: at, table: wantsTable(r.Header, at)}
	in, r, ok := f.enter(w, r, call, len(data))
	if !ok {
		return
	}
	defer call.work.Leave()
	if call.body, err = inflateBody(in, r.Header, data); err != nil {
		f.refuseBody(in, r, err)
		return
	}
	// What it inflates to has to be read too.
	if err := call.work.Enter(r.Context(), (len(call.body)-len(data))/bytesPerStep); err != nil {
		f.refuseForLoad(in, r, err)
		return
	}
	if r.URL.RawQuery != "" {
		f.refuse(in, r, http.StatusBadRequest, invalid([]fault.Violation{malformed("a POST has no query string; put the fields in the body")}))
		return
	}
	w.Header().Set("Cache-Control", "no-store")
	f.answers.ServeHTTP(in, r)
}
