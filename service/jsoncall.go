package service

import (
	"context"
	"net/http"
	"net/url"
	"strconv"

	"github.com/grpc-ecosystem/grpc-gateway/v2/runtime"
	"github.com/grpc-ecosystem/grpc-gateway/v2/utilities"
	rpccode "google.golang.org/genproto/googleapis/rpc/code"
	"google.golang.org/genproto/googleapis/rpc/errdetails"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/encoding/protojson"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/types/dynamicpb"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/service/admit"
)

// jsonCall is a question over JSON with all that is known of it, from when it is let in (admission.enter): one context,
// as openCall is of gRPC.
//
// The usual gateway stood here until its way to a handler took longer than a short sum: for each call it matches the path
// again with all it has, carries the header over as metadata that no handler reads, makes contexts and a message more, and
// hands that to a client. Routes, bodies, forms and errors had been this package's own for long; what is left of the
// gateway is how it reads a query string and which HTTP code stands for which of gRPC. Calls within calls stay few here,
// too: the stack of a connection is most of what it costs (DEVELOPERS.md, Tests).
type jsonCall struct {
	context.Context
	route   route
	body    []byte // of a POST
	table   bool   // The answer is wanted as CSV.
	work    admit.Call
	leaving leavingWriter
	part    mask // what is asked for of the answer, nil for all of it
}

type jsonCallKey struct{}

// Value has what is known of the call at its places, and else what its context has.
func (c *jsonCall) Value(key any) any {
	switch key.(type) {
	case jsonCallKey:
		return c
	case admit.CallKey:
		return &c.work
	case maskKey:
		return &c.part
	case faceKey:
		return faceJSON
	}
	return c.Context.Value(key)
}

// answer asks the question of a call that was let in, and writes what comes of it.
func (f *jsonFace) answer(w http.ResponseWriter, r *http.Request) {
	call := r.Context().Value(jsonCallKey{}).(*jsonCall)
	var unread error
	answer, err := f.methods.ask(r.Context(), call.route.method, func(into proto.Message) error {
		if r.Method == http.MethodPost {
			unread = readJSON(call.body, into)
		} else {
			unread = readQuery(r.URL.RawQuery, into)
		}
		return unread
	})
	if unread != nil {
		f.refuseUnread(w, r, call)
		return
	}
	if err != nil {
		st := status.Convert(err)
		writeStatus(w, runtime.HTTPStatusFromCode(st.Code()), st)
		return
	}
	kind, data, err := call.write(w.Header(), answer)
	if err != nil {
		st := status.Convert(f.metrics.faults.unwritten(r.Context(), faceJSON, err))
		writeStatus(w, http.StatusInternalServerError, st)
		return
	}
	w.Header().Set("Content-Type", kind)
	w.Header().Set("Content-Length", strconv.Itoa(len(data)))
	_, _ = w.Write(data) // A caller who has hung up is no fault of ours.
}

// write makes an answer into bytes of the kind that is wanted, with what CSV has no place for in the header.
func (c *jsonCall) write(h http.Header, answer proto.Message) (kind string, data []byte, err error) {
	if c.table && (c.part == nil || c.part.hasRows(answer)) {
		besideTable(h, answer)
		data, err = writeTable(answer.ProtoReflect(), c.part)
		return csvKind, data, err
	}
	data, err = writeJSON(answer, c.part)
	return jsonType, data, err
}

// everyParameter is told to the reader of query strings, which may be told of fields that the path has.
var everyParameter = utilities.NewDoubleArray(nil)

// readQuery reads a question in which explainQuery has found no fault.
func readQuery(raw string, into proto.Message) error {
	values, err := url.ParseQuery(raw)
	if err != nil {
		return err
	}
	return runtime.PopulateQueryParameters(into, values, everyParameter)
}

// refuseUnread says what is wrong with a question that could not be read. A body is looked through only now that reading
// it has failed.
func (f *jsonFace) refuseUnread(w http.ResponseWriter, r *http.Request, call *jsonCall) {
	var faults []fault.Violation
	unlisted := 0
	if r.Method == http.MethodPost && readJSON(call.body, dynamicpb.NewMessage(call.route.question)) != nil {
		faults, unlisted = explainJSON(call.body, call.route.question)
	}
	if len(faults) == 0 {
		faults = []fault.Violation{malformed(notOfTheForm)}
	}
	f.refuse(w, r, http.StatusBadRequest, invalidBeyond(faults, unlisted))
}

// writeStatus sends a google.rpc.Status as JSON, the same that gRPC sends in its
// trailer. Every error has an ErrorInfo, those of gRPC itself too.
func writeStatus(w http.ResponseWriter, httpCode int, st *status.Status) {
	if !hasErrorInfo(st) {
		st = refusal(st.Code(), rpccode.Code(st.Code()).String(), st.Message())
	}
	data, err := protojson.MarshalOptions{UseProtoNames: true}.Marshal(st.Proto())
	if err != nil {
		httpCode, data = http.StatusInternalServerError, []byte(`{"code": 13, "message": "`+internalText+`"}`)
	}
	if httpCode == http.StatusUnauthorized {
		w.Header().Set("WWW-Authenticate", challenge)
	}
	w.Header().Set("Content-Type", jsonType)
	w.Header().Set("Cache-Control", "no-store")
	if after := retryAfter(st); after != "" {
		w.Header().Set("Retry-After", after)
	}
	w.WriteHeader(httpCode)
	_, _ = w.Write(data) // A caller who has hung up is no fault of ours.
}

func hasErrorInfo(st *status.Status) bool {
	for _, d := range st.Details() {
		if _, ok := d.(*errdetails.ErrorInfo); ok {
			return true
		}
	}
	return false
}
