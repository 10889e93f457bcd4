package service

import (
	"context"
	"errors"
	"io"
	"net/http"

	"github.com/grpc-ecosystem/grpc-gateway/v2/runtime"
	rpccode "google.golang.org/genproto/googleapis/rpc/code"
	"google.golang.org/genproto/googleapis/rpc/errdetails"
	"google.golang.org/grpc"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/encoding/protojson"
	"google.golang.org/protobuf/proto"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

// newGateway translates JSON into calls over conn and answers back into JSON.
func newGateway(ctx context.Context, conn grpc.ClientConnInterface) (*runtime.ServeMux, error) {
	mux := runtime.NewServeMux(
		runtime.WithMarshalerOption(runtime.MIMEWildcard, strictJSON{}),
		runtime.WithErrorHandler(writeGatewayError),
		// No handler reads metadata, so no header is worth carrying.
		runtime.WithIncomingHeaderMatcher(func(string) (string, bool) { return "", false }),
		runtime.WithWriteContentLength(),
	)
	return mux, errors.Join(
		knitmathv1.RegisterGaugeServiceHandlerClient(ctx, mux, knitmathv1.NewGaugeServiceClient(conn)),
		knitmathv1.RegisterShapingServiceHandlerClient(ctx, mux, knitmathv1.NewShapingServiceClient(conn)),
		knitmathv1.RegisterShortRowServiceHandlerClient(ctx, mux, knitmathv1.NewShortRowServiceClient(conn)),
		knitmathv1.RegisterYokeServiceHandlerClient(ctx, mux, knitmathv1.NewYokeServiceClient(conn)),
		knitmathv1.RegisterEdgeServiceHandlerClient(ctx, mux, knitmathv1.NewEdgeServiceClient(conn)),
		knitmathv1.RegisterYarnServiceHandlerClient(ctx, mux, knitmathv1.NewYarnServiceClient(conn)),
		knitmathv1.RegisterPatternServiceHandlerClient(ctx, mux, knitmathv1.NewPatternServiceClient(conn)),
	)
}

// answerJSON writes answers with the field names of the proto files, which are
// also the paths of violations. Zero counts and empty lists are written out: a
// web client must be able to tell "0 plain stitches" from a field it misspelt.
// Only what the proto calls absent stays absent.
var answerJSON = protojson.MarshalOptions{UseProtoNames: true, EmitDefaultValues: true}

// questionJSON reads questions. Fields that are not known are refused, as they are
// unless one asks for something else, and so is what is nested too deep.
var questionJSON = protojson.UnmarshalOptions{RecursionLimit: maxDepth}

// strictJSON is how the gateway reads and writes.
type strictJSON struct{}

func (strictJSON) ContentType(any) string { return jsonType }

func (strictJSON) Marshal(v any) ([]byte, error) {
	m, ok := v.(proto.Message)
	if !ok {
		return nil, errors.New("only messages are written")
	}
	return answerJSON.Marshal(m)
}

func (strictJSON) Unmarshal(data []byte, v any) error {
	m, ok := v.(proto.Message)
	if !ok {
		return errors.New("only messages are read")
	}
	return questionJSON.Unmarshal(data, m)
}

// NewDecoder reads a questionBody. When that fails it leaves the full
// explanation with the body, for writeGatewayError to find: the generated code
// in between keeps nothing of an error but its text.
func (s strictJSON) NewDecoder(r io.Reader) runtime.Decoder {
	return runtime.DecoderFunc(func(v any) error {
		body, ok := r.(*questionBody)
		if !ok {
			return errors.New("the body was not read ahead")
		}
		err := s.Unmarshal(body.data, v)
		if m, ok := v.(proto.Message); ok && err != nil {
			body.fault = invalid(explainJSON(body.data, m.ProtoReflect().Descriptor()))
		}
		return err
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

// questionBody is a request body read ahead, so that it is at hand when it has to
// be explained what is wrong with it.
type questionBody struct {
	data  []byte
	fault *status.Status
}

// Read has nothing to give: the decoder takes data.
func (*questionBody) Read([]byte) (int, error) { return 0, io.EOF }

// Close does nothing.
func (*questionBody) Close() error { return nil }

// writeGatewayError sends an error of the gateway or of a call.
func writeGatewayError(_ context.Context, _ *runtime.ServeMux, _ runtime.Marshaler, w http.ResponseWriter, r *http.Request, err error) {
	if body, ok := r.Body.(*questionBody); ok && body.fault != nil {
		writeStatus(w, http.StatusBadRequest, body.fault)
		return
	}
	st := status.Convert(err)
	writeStatus(w, runtime.HTTPStatusFromCode(st.Code()), st)
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
	w.Header().Set("Content-Type", jsonType)
	w.Header().Set("Cache-Control", "no-store")
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
