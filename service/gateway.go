package service

import (
	"bytes"
	"context"
	"errors"
	"io"
	"net/http"
	"strings"

	"github.com/grpc-ecosystem/grpc-gateway/v2/runtime"
	rpccode "google.golang.org/genproto/googleapis/rpc/code"
	"google.golang.org/genproto/googleapis/rpc/errdetails"
	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/encoding/protojson"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/types/dynamicpb"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/service/answerjson"
)

// newGateway translates JSON into calls over conn and answers back into JSON.
//
// It is made with the gateway's own options. Only in two places does the face in
// front (http.go) do what the gateway could be thought to do:
//
//   - A query string is checked before the gateway sees it, since the gateway's
//     parser passes over what it does not know (query.go says why it is not
//     replaced).
//   - The answer to a GET is kept until it is whole, to be tagged (cache.go).
//
// Bodies pass through as they are. What is wrong with one is found out when the
// gateway has failed to read it (gatewayError), not before and not on the way.
func newGateway(ctx context.Context, conn grpc.ClientConnInterface, onError runtime.ErrorHandlerFunc) (gateway, error) {
	g := gateway{}
	var faults []error
	part := func(room string, register func(*runtime.ServeMux) error) {
		mux := runtime.NewServeMux(
			runtime.WithMarshalerOption(runtime.MIMEWildcard, strictJSON{}),
			runtime.WithMarshalerOption(csvType, csvTable{}),
			runtime.WithErrorHandler(onError),
			// No handler reads metadata, so no header is worth carrying.
			runtime.WithIncomingHeaderMatcher(func(string) (string, bool) { return "", false }),
			runtime.WithWriteContentLength(),
			runtime.WithMiddlewares(keepMask),
			runtime.WithForwardResponseOption(besideTable),
			runtime.WithForwardResponseRewriter(partOfAnswer),
		)
		faults = append(faults, register(mux))
		g["/v1/"+room] = mux
	}
	part("gauge", func(mux *runtime.ServeMux) error {
		return knitmathv1.RegisterGaugeServiceHandlerClient(ctx, mux, knitmathv1.NewGaugeServiceClient(conn))
	})
	part("shaping", func(mux *runtime.ServeMux) error {
		return knitmathv1.RegisterShapingServiceHandlerClient(ctx, mux, knitmathv1.NewShapingServiceClient(conn))
	})
	part("short-row", func(mux *runtime.ServeMux) error {
		return knitmathv1.RegisterShortRowServiceHandlerClient(ctx, mux, knitmathv1.NewShortRowServiceClient(conn))
	})
	part("curve", func(mux *runtime.ServeMux) error {
		return knitmathv1.RegisterCurveServiceHandlerClient(ctx, mux, knitmathv1.NewCurveServiceClient(conn))
	})
	part("yoke", func(mux *runtime.ServeMux) error {
		return knitmathv1.RegisterYokeServiceHandlerClient(ctx, mux, knitmathv1.NewYokeServiceClient(conn))
	})
	part("edge", func(mux *runtime.ServeMux) error {
		return knitmathv1.RegisterEdgeServiceHandlerClient(ctx, mux, knitmathv1.NewEdgeServiceClient(conn))
	})
	part("flat", func(mux *runtime.ServeMux) error {
		return knitmathv1.RegisterFlatServiceHandlerClient(ctx, mux, knitmathv1.NewFlatServiceClient(conn))
	})
	part("hand", func(mux *runtime.ServeMux) error {
		return knitmathv1.RegisterHandServiceHandlerClient(ctx, mux, knitmathv1.NewHandServiceClient(conn))
	})
	part("solid", func(mux *runtime.ServeMux) error {
		return knitmathv1.RegisterSolidServiceHandlerClient(ctx, mux, knitmathv1.NewSolidServiceClient(conn))
	})
	part("neck", func(mux *runtime.ServeMux) error {
		return knitmathv1.RegisterNeckServiceHandlerClient(ctx, mux, knitmathv1.NewNeckServiceClient(conn))
	})
	part("armhole", func(mux *runtime.ServeMux) error {
		return knitmathv1.RegisterArmholeServiceHandlerClient(ctx, mux, knitmathv1.NewArmholeServiceClient(conn))
	})
	part("yarn", func(mux *runtime.ServeMux) error {
		return knitmathv1.RegisterYarnServiceHandlerClient(ctx, mux, knitmathv1.NewYarnServiceClient(conn))
	})
	part("body", func(mux *runtime.ServeMux) error {
		return knitmathv1.RegisterBodyServiceHandlerClient(ctx, mux, knitmathv1.NewBodyServiceClient(conn))
	})
	part("pattern", func(mux *runtime.ServeMux) error {
		return knitmathv1.RegisterPatternServiceHandlerClient(ctx, mux, knitmathv1.NewPatternServiceClient(conn))
	})
	part("sock", func(mux *runtime.ServeMux) error {
		return knitmathv1.RegisterSockServiceHandlerClient(ctx, mux, knitmathv1.NewSockServiceClient(conn))
	})
	return g, errors.Join(faults...)
}

// A gateway has a part for each service, by the beginning of its paths. A part tries its
// methods one after the other, which for forty of them took longer than a short question.
type gateway map[string]http.Handler

func (g gateway) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	room, _, _ := strings.Cut(r.URL.Path, ":")
	if part, ok := g[room]; ok {
		part.ServeHTTP(w, r)
		return
	}
	http.NotFound(w, r) // Not asked: paths that no method has are refused in front.
}

// questionJSON reads questions. Fields that are not known are refused, as they are
// unless one asks for something else, and so is what is nested too deep.
var questionJSON = protojson.UnmarshalOptions{RecursionLimit: maxDepth}

// strictJSON is how the gateway reads and writes. Answers have the field names of the
// proto files, which are also the paths of violations. Zero counts and empty lists are
// written out: a web client must be able to tell "0 plain stitches" from a field it
// misspelt. Only what the proto calls absent stays absent.
type strictJSON struct{}

func (strictJSON) ContentType(any) string { return jsonType }

// jsonPerByte is how many bytes of JSON most answers have for each of the message.
const jsonPerByte = 2

func (strictJSON) Marshal(v any) ([]byte, error) {
	switch v := v.(type) {
	case proto.Message:
		// About as long as most become: a buffer that grows is copied each time.
		return answerjson.Append(make([]byte, 0, max(minCompressed, jsonPerByte*proto.Size(v))), v)
	case partialAnswer:
		return v.MarshalJSON()
	}
	return nil, errors.New("only messages are written")
}

func (strictJSON) Unmarshal(data []byte, v any) error {
	m, ok := v.(proto.Message)
	if !ok {
		return errors.New("only messages are read")
	}
	if jsonParts(data) > maxParts {
		return errManyParts
	}
	return questionJSON.Unmarshal(data, m)
}

func (s strictJSON) NewDecoder(r io.Reader) runtime.Decoder {
	return runtime.DecoderFunc(func(v any) error {
		data, err := io.ReadAll(r)
		if err != nil {
			return err
		}
		return s.Unmarshal(data, v)
	})
}

func (s strictJSON) NewEncoder(w io.Writer) runtime.Encoder {
	return runtime.EncoderFunc(func(v any) error {
		data, err := s.Marshal(v)
		if err == nil {
			_, err = w.Write(data)
		}
		return err
	})
}

// withBody is a copy of r whose body is data, which GetBody gives once more: when
// it cannot be read it has to be explained what is wrong with it.
func withBody(r *http.Request, data []byte) *http.Request {
	r = r.WithContext(r.Context())
	r.GetBody = func() (io.ReadCloser, error) { return io.NopCloser(bytes.NewReader(data)), nil }
	r.Body, _ = r.GetBody()
	return r
}

// gatewayError sends an error of the gateway or of a call. Of a body that cannot be
// read the gateway passes on no more than a text, so that is explained here; every
// error of a call has details.
func (f *jsonFace) gatewayError(
	_ context.Context, _ *runtime.ServeMux, _ runtime.Marshaler, w http.ResponseWriter, r *http.Request, err error,
) {
	st, told := status.FromError(err)
	if !told { // No call has failed: its answer could not be written.
		st = status.Convert(f.metrics.faults.unwritten(r.Context(), faceJSON, err))
	}
	if st.Code() == codes.InvalidArgument && !hasErrorInfo(st) {
		faults, unlisted := bodyFaults(r, f.routes[r.URL.Path].question)
		if len(faults) == 0 {
			faults = []fault.Violation{malformed(notOfTheForm)}
		}
		f.refuse(w, r, http.StatusBadRequest, invalidBeyond(faults, unlisted))
		return
	}
	writeStatus(w, runtime.HTTPStatusFromCode(st.Code()), st)
}

// bodyFaults says why a body could not be read as the question; nothing when it
// can be.
func bodyFaults(r *http.Request, question protoreflect.MessageDescriptor) (found []fault.Violation, unlisted int) {
	if r.GetBody == nil {
		return nil, 0
	}
	body, err := r.GetBody()
	if err != nil {
		return nil, 0
	}
	data, err := io.ReadAll(body)
	if err != nil || (strictJSON{}).Unmarshal(data, dynamicpb.NewMessage(question)) == nil {
		return nil, 0
	}
	return explainJSON(data, question)
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
