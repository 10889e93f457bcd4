package service

import (
	"errors"
	"log/slog"
	"mime"
	"net/http"
	"strings"

	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/status"

	"example.com/knitmath/knitmath/fault"
)

// refuseBody says why a body could not be read.
func (f *jsonFace) refuseBody(w http.ResponseWriter, r *http.Request, err error) {
	var tooLarge *http.MaxBytesError
	if errors.As(err, &tooLarge) {
		f.refuse(w, r, http.StatusRequestEntityTooLarge, refusal(codes.ResourceExhausted, reasonTooLarge, tooLargeText))
		return
	}
	detail := "the body could not be read to its end"
	if contentCoding(r.Header) == codingGzip {
		detail += ", or is not gzip"
	}
	f.refuse(w, r, http.StatusBadRequest, invalid([]fault.Violation{malformed(detail)}))
}

// mediaFault says what is wrong with the form of a body. JSON without a content
// type is taken as what it is.
func mediaFault(h http.Header) *status.Status {
	kind, params, err := mime.ParseMediaType(h.Get("Content-Type"))
	plain := h.Get("Content-Type") == "" || err == nil && kind == jsonType &&
		(params["charset"] == "" || strings.EqualFold(params["charset"], "utf-8"))
	coding := contentCoding(h)
	if plain && (coding == "" || coding == codingGzip) {
		return nil
	}
	return refusal(codes.InvalidArgument, "UNSUPPORTED_MEDIA_TYPE",
		"the body must be application/json in UTF-8, as it is or compressed with Content-Encoding: gzip")
}

func (f *jsonFace) wrongMethod(w http.ResponseWriter, r *http.Request, allowed string) {
	w.Header().Set("Allow", allowed)
	f.refuse(w, r, http.StatusMethodNotAllowed, refusal(codes.Unimplemented, "METHOD_NOT_ALLOWED",
		"this path answers "+allowed))
}

// malformed is a fault of the request as a whole.
func malformed(detail string) fault.Violation {
	return fault.Violation{Reason: reasonMalformed, Detail: detail}
}

// refuse answers a request that goes no further.
func (f *jsonFace) refuse(w http.ResponseWriter, r *http.Request, httpCode int, st *status.Status) {
	f.logRefusal(r, httpCode, st)
	writeStatus(w, httpCode, st)
}

// logRefusal counts and logs what never became a call; calls are logged by their
// interceptor.
func (f *jsonFace) logRefusal(r *http.Request, httpCode int, st *status.Status) {
	reason := reasonOfStatus(st)
	f.metrics.refusals.refused(r.Context(), faceJSON, reason, "refused", func() []slog.Attr {
		return []slog.Attr{slog.String("method", methodLabel(r.Method)), slog.String("route", f.label(r)), slog.Int("code", httpCode),
			slog.Any("fields", violatedFields(st))}
	})
}
