package main

import (
	"bytes"

	"compress/gzip"
)

// compressed is data as gzip, for the program to carry: text shrinks to a tenth. The
// library is the one of go.mod and not Go's own, so that the same bytes come out
// whichever Go this runs under.
func compressed(data []byte) ([]byte, error) {
	var b bytes.Buffer
	w, err := gzip.NewWriterLevel(&b, gzip.BestCompression)
	if err != nil {
		return nil, err
	}
	if _, err := w.Write(data); err != nil {
		return nil, err
	}
	err = w.Close()
	return b.Bytes(), err
}
