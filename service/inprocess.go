package service

import (
	"context"

	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/proto"

	"example.com/knitmath/service/trace"
)

// inProcess is the JSON face's way to the handlers of its own process. It calls them
// through the same interceptors as the gRPC server does, so that a JSON call is
// counted, logged and recovered exactly once and like any other.
//
// Dialling the own gRPC server would do that too, but every question would then be written
// to bytes, framed as HTTP/2, sent through the loopback device, read back, and the answer
// likewise: BenchmarkGatewayHop has the ratio, six to ten times the call itself. Nothing is
// lost by leaving that out: deadlines travel in the context, no handler reads metadata, and
// the size limit is the HTTP body's.
type inProcess struct {
	methods     map[string]boundMethod
	interceptor grpc.UnaryServerInterceptor
}

// boundMethod is a generated method handler with the implementation to call.
type boundMethod struct {
	handler grpc.MethodHandler
	impl    any
}

func newInProcess(interceptor grpc.UnaryServerInterceptor) *inProcess {
	return &inProcess{methods: map[string]boundMethod{}, interceptor: interceptor}
}

// RegisterService makes the unary methods of a service callable.
func (p *inProcess) RegisterService(desc *grpc.ServiceDesc, impl any) {
	for _, m := range desc.Methods {
		p.methods["/"+desc.ServiceName+"/"+m.MethodName] = boundMethod{m.Handler, impl}
	}
}

// ask calls a method, whose question read gives. A question that cannot be read is none
// that the interceptors see.
func (p *inProcess) ask(ctx context.Context, method string, read func(into proto.Message) error) (proto.Message, error) {
	m, ok := p.methods[method]
	if !ok {
		return nil, status.Errorf(codes.Unimplemented, "unknown method %s", method)
	}
	if err := ctx.Err(); err != nil {
		return nil, status.FromContextError(err).Err()
	}
	answer, err := m.handler(m.impl, ctx, func(into any) error { return read(into.(proto.Message)) }, p.interceptor)
	if err != nil {
		return nil, err
	}
	return answer.(proto.Message), nil
}

// spanned makes a span of each call within the process, none without traces.
func spanned(traces *trace.Tracing, inner grpc.UnaryServerInterceptor) grpc.UnaryServerInterceptor {
	if traces == nil {
		return inner
	}
	return func(ctx context.Context, req any, info *grpc.UnaryServerInfo, handler grpc.UnaryHandler) (any, error) {
		ctx, end := traces.Call(ctx, info.FullMethod)
		answer, err := inner(ctx, req, info, handler)
		code := status.Code(err)
		end(code == codes.Internal || code == codes.Unknown) // As otelgrpc sees it, what callers do wrong is no failure.
		return answer, err
	}
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
