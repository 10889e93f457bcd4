package service

import (
	"context"
	"fmt"

	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/metadata"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"

	"example.com/knitmath/service/trace"
)

// inProcess is the gateway's connection to the handlers of its own process. It
// calls them through the same interceptors as the gRPC server does, so that a
// JSON call is counted, logged and recovered exactly once and like any other.
//
// The two usual ways do worse. Registering the handlers with the gateway
// directly runs no interceptor at all. Dialling the own gRPC server runs them,
// but every question is then written to bytes, framed as HTTP/2, sent through
// the loopback device, read back, and the answer likewise: BenchmarkGatewayHop
// has the ratio, six to ten times the call itself. Nothing is lost by leaving
// that out: deadlines travel in the context, metadata is carried over, and the
// size limit is the HTTP body's.
type inProcess struct {
	methods     map[string]boundMethod
	interceptor grpc.UnaryServerInterceptor
	traces      *trace.Tracing // nil for none
}

// boundMethod is a generated method handler with the implementation to call.
type boundMethod struct {
	handler grpc.MethodHandler
	impl    any
}

// Both faces are registered through one interface and dialled through another.
var (
	_ grpc.ServiceRegistrar    = (*inProcess)(nil)
	_ grpc.ClientConnInterface = (*inProcess)(nil)
)

func newInProcess(interceptor grpc.UnaryServerInterceptor) *inProcess {
	return &inProcess{methods: map[string]boundMethod{}, interceptor: interceptor}
}

// RegisterService makes the unary methods of a service callable.
func (p *inProcess) RegisterService(desc *grpc.ServiceDesc, impl any) {
	for _, m := range desc.Methods {
		p.methods["/"+desc.ServiceName+"/"+m.MethodName] = boundMethod{m.Handler, impl}
	}
}

// Invoke calls a method. The question is handed over, not copied: the gateway
// makes one for each call and does not look at it again.
func (p *inProcess) Invoke(ctx context.Context, method string, args, reply any, _ ...grpc.CallOption) error {
	m, ok := p.methods[method]
	if !ok {
		return status.Errorf(codes.Unimplemented, "unknown method %s", method)
	}
	if err := ctx.Err(); err != nil {
		return status.FromContextError(err).Err()
	}
	md, _ := metadata.FromOutgoingContext(ctx)
	ctx = metadata.NewIncomingContext(ctx, md)
	ctx = context.WithValue(ctx, faceKey{}, faceJSON)
	ctx, end := p.traces.Call(ctx, method)
	read := func(into any) error { return handOver(into, args) }
	answer, err := m.handler(m.impl, ctx, read, p.interceptor)
	code := status.Code(err)
	end(code == codes.Internal || code == codes.Unknown) // As otelgrpc sees it, what callers do wrong is no failure.
	if err != nil {
		return err
	}
	return handOver(reply, answer)
}

// NewStream refuses: no method of the JSON face streams.
func (p *inProcess) NewStream(context.Context, *grpc.StreamDesc, string, ...grpc.CallOption) (grpc.ClientStream, error) {
	return nil, status.Error(codes.Unimplemented, "no streams over JSON")
}

// handOver gives the fields of one message to another of its kind. What they
// hold is shared, not copied.
func handOver(to, from any) error {
	dst, ok1 := to.(proto.Message)
	src, ok2 := from.(proto.Message)
	if !ok1 || !ok2 || dst.ProtoReflect().Descriptor() != src.ProtoReflect().Descriptor() {
		return asFailure(fmt.Errorf("cannot hand a %T over to a %T", from, to))
	}
	m := dst.ProtoReflect()
	src.ProtoReflect().Range(func(fd protoreflect.FieldDescriptor, v protoreflect.Value) bool {
		m.Set(fd, v)
		return true
	})
	return nil
}

// faceKey marks the context of a call that came in as JSON.
type faceKey struct{}

// The two faces, as the log names them.
const (
	faceGRPC = "grpc"
	faceJSON = "json"
)

func faceOf(ctx context.Context) string {
	if face, ok := ctx.Value(faceKey{}).(string); ok {
		return face
	}
	return faceGRPC
}
