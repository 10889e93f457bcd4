package service

import "net/http"

// answerWriter knows what has been answered. It also hides that a writer knows a
// short cut from files to the network: an answer comes from memory, and by the
// short cut its header and its body would be sent apart.
type answerWriter struct {
	http.ResponseWriter
	code int // 0 before there is one
}

// answerOf wraps w, unless it is wrapped already.
func answerOf(w http.ResponseWriter) *answerWriter {
	if a, ok := w.(*answerWriter); ok {
		return a
	}
	return &answerWriter{ResponseWriter: w}
}

// WriteHeader notes the code, but for those that announce another.
func (a *answerWriter) WriteHeader(code int) {
	if a.code == 0 && code >= http.StatusOK {
		a.code = code
	}
	a.ResponseWriter.WriteHeader(code)
}

func (a *answerWriter) Write(p []byte) (int, error) {
	if a.code == 0 {
		a.code = http.StatusOK
	}
	return a.ResponseWriter.Write(p)
}

// Unwrap lets http.ResponseController reach the connection.
func (a *answerWriter) Unwrap() http.ResponseWriter { return a.ResponseWriter }
