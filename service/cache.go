package service

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"net/http"
	"strconv"
	"time"
)

// cacheControl lets browsers and CDNs keep an answer for a day: it depends on
// nothing but the question and the version of the service.
const cacheControl = "public, max-age=86400"

// keptAnswer holds an answer back until it is whole, so that it can be tagged.
type keptAnswer struct {
	header http.Header
	code   int
	body   bytes.Buffer
}

func (k *keptAnswer) Header() http.Header         { return k.header }
func (k *keptAnswer) WriteHeader(code int)        { k.code = code }
func (k *keptAnswer) Write(p []byte) (int, error) { return k.body.Write(p) }

// send passes the answer on. Only a 200 may be cached.
func (k *keptAnswer) send(w http.ResponseWriter, r *http.Request) {
	if k.code == http.StatusOK {
		serveCached(w, r, k.header.Get("Content-Type"), k.body.Bytes())
		return
	}
	w.WriteHeader(k.code)
	_, _ = w.Write(k.body.Bytes()) // A caller who has hung up is no fault of ours.
}

// serveCached sends a whole document with its ETag, or 304 to a caller who has
// it already. It also answers HEAD.
func serveCached(w http.ResponseWriter, r *http.Request, contentType string, data []byte) {
	sum := sha256.Sum256(data)
	h := w.Header()
	h.Set("Content-Type", contentType)
	h.Set("Cache-Control", cacheControl)
	h.Set("ETag", strconv.Quote(hex.EncodeToString(sum[:12])))
	h.Del("Content-Length")
	// ServeContent knows If-None-Match, HEAD and ranges; the name and the time
	// are not needed.
	http.ServeContent(w, r, "", time.Time{}, bytes.NewReader(data))
}
