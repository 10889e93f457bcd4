package service

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"net/http"
	"strings"
	"time"

	"example.com/knitmath/service/conns"
)

// cacheControl lets browsers and CDNs keep an answer for a day: it depends on
// nothing but the question and the version of the service.
const cacheControl = "public, max-age=86400"

// keptAnswer holds an answer back until it is whole, compressed or not, so that it
// can be tagged.
type keptAnswer struct {
	header http.Header
	code   int
	body   bytes.Buffer
}

func (k *keptAnswer) Header() http.Header         { return k.header }
func (k *keptAnswer) WriteHeader(code int)        { k.code = code }
func (k *keptAnswer) Write(p []byte) (int, error) { return k.body.Write(p) }

// serveCached answers GET and HEAD with what next writes, or with 304 to a caller
// who has it already. Only a 200 may be cached. madeOf is everything that the
// answer depends on, beside the encoding; when it is not known what it depends on
// there is no ETag.
func serveCached(w http.ResponseWriter, r *http.Request, next http.Handler, madeOf ...string) {
	get := r.WithContext(r.Context()) // A copy: what is kept is what a GET gets.
	get.Method = http.MethodGet
	kept := &keptAnswer{header: w.Header(), code: http.StatusOK}
	next.ServeHTTP(kept, get)
	if kept.code != http.StatusOK {
		w.WriteHeader(kept.code)
		_, _ = w.Write(kept.body.Bytes()) // A caller who has hung up is no fault of ours.
		return
	}
	h := w.Header()
	if h.Get("Cache-Control") == "" {
		h.Set("Cache-Control", cacheControl)
	}
	if len(madeOf) > 0 {
		h.Set("ETag", tag(append(madeOf, h.Get("Content-Encoding"))...))
	}
	if conn := conns.OfRequest(r); conn != nil {
		conn.Hold(kept.body.Len())
		defer conn.Let(kept.body.Len())
	}
	sendWhole(w, r, kept.body.Bytes())
}

// sendWhole sends data to whoever does not have it. ServeContent knows If-None-Match and
// HEAD; the name and the time are not needed. Parts of an answer are asked for by fields,
// not by bytes, and a weak tag matches no If-Match.
func sendWhole(w http.ResponseWriter, r *http.Request, data []byte) {
	whole := r.Clone(r.Context())
	for _, condition := range []string{"Range", "If-Range", "If-Match", "If-Unmodified-Since"} {
		whole.Header.Del(condition)
	}
	http.ServeContent(wholeOnly{w}, whole, "", time.Time{}, bytes.NewReader(data))
}

// wholeOnly offers no ranges of bytes.
type wholeOnly struct{ http.ResponseWriter }

func (w wholeOnly) WriteHeader(code int) {
	w.Header().Del("Accept-Ranges")
	w.ResponseWriter.WriteHeader(code)
}

// tag is a weak one: of two builds of one commit the answers mean the same and may
// differ in white space and in the last place of a fraction.
func tag(madeOf ...string) string {
	sum := sha256.Sum256([]byte(strings.Join(madeOf, "\n")))
	return `W/"` + hex.EncodeToString(sum[:12]) + `"`
}

// questionOf is what the answer to a GET depends on: the commit the program was
// built from, the question with the fields asked for, and the form that was chosen for
// it. Nothing is known of a program built from files that are in no commit.
func (r Release) questionOf(req *http.Request, table bool) []string {
	if r.Commit == "" || strings.HasSuffix(r.Commit, "+dirty") {
		return nil
	}
	form := ""
	if table {
		form = csvType
	}
	return []string{r.Commit, req.URL.Path, req.URL.RawQuery, form}
}
