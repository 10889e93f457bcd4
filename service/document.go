package service

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"io"
	"net/http"
	"strconv"

	"compress/gzip"
)

// A packedDocument lies in memory compressed, and goes out so to whoever takes it.
type packedDocument struct {
	contentType string
	gzip, plain []byte // gzip is nil where it would not be worth while
	sum         string
}

func newPackedDocument(contentType string, data []byte) (*packedDocument, error) {
	r, err := gzip.NewReader(bytes.NewReader(data))
	if err != nil {
		return nil, err
	}
	plain, err := io.ReadAll(r)
	return &packedDocument{contentType: contentType, gzip: data, plain: plain, sum: sumOf(plain)}, err
}

// packedFile compresses data that goes out more than once.
func packedFile(contentType string, data []byte) *packedDocument {
	d := &packedDocument{contentType: contentType, plain: data, sum: sumOf(data)}
	if len(data) >= minCompressed {
		if packed, err := new(packer).pack(data); err == nil { // Into memory, which takes it.
			d.gzip = packed
		}
	}
	return d
}

// ServeHTTP answers GET and HEAD.
func (d *packedDocument) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	h, data := w.Header(), d.plain
	h.Set("Content-Type", d.contentType)
	h.Add("Vary", "Accept-Encoding")
	if h.Get("Cache-Control") == "" {
		h.Set("Cache-Control", cacheControl)
	}
	if d.gzip != nil && acceptsGzip(r.Header) {
		data = d.gzip
		h.Set("Content-Encoding", codingGzip)
		h.Set("Content-Length", strconv.Itoa(len(data)))
	}
	h.Set("ETag", tag(d.sum, h.Get("Content-Encoding")))
	sendWhole(w, r, data)
}

// document answers with data, which depends on nothing but itself.
func (f *jsonFace) document(w http.ResponseWriter, r *http.Request, contentType string, data []byte) {
	write := http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", contentType)
		_, _ = w.Write(data) // Into memory, which takes it.
	})
	serveCached(w, r, compressing(write), sumOf(data))
}

func sumOf(data []byte) string {
	sum := sha256.Sum256(data)
	return hex.EncodeToString(sum[:])
}
