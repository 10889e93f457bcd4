package service

import (
	"context"
	"errors"

	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/encoding"
	protocodec "google.golang.org/grpc/encoding/proto"
	"google.golang.org/grpc/mem"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/proto"

	"example.com/knitmath/knitmath/fault"
)

// What arrives over gRPC is decoded by the generated handlers before any
// interceptor runs, and what cannot be decoded would be INTERNAL and be seen by
// nobody. Two pieces make it a call like any other, refused as the caller's fault:
//
//   - questionCodec puts what it finds wrong beside the message, instead of
//     failing: gRPC answers by itself as soon as a codec fails.
//   - decodedSeen, through which services are registered, asks there, and runs the
//     interceptors for what could not be read too.

// incoming is a message that is read, and what was wrong with it.
type incoming struct {
	into  any
	wrong error
}

// unreadError is the cause of a refusal of what could not be read, for the metrics.
type unreadError struct {
	reason string
	cause  error
}

func (u *unreadError) Error() string { return u.reason + ": " + u.cause.Error() }

// read reads a message by receive, which is gRPC's way to do it.
func (in *incoming) read(receive func(any) error) error {
	err := receive(in)
	switch code := status.Code(err); {
	case err == nil && in.wrong == nil:
		return nil
	case err == nil && errors.Is(in.wrong, errManyParts):
		return asUnread(reasonInvalidInput, invalid([]fault.Violation{manyPartsFault}), in.wrong)
	case err == nil:
		return asUnread(reasonMalformed, invalid([]fault.Violation{malformed(
			"the message cannot be decoded: it is not protobuf of the method's form, holds text that is not UTF-8, " +
				"or is not gzip where it says so")}), in.wrong)
	case code == codes.ResourceExhausted:
		// gRPC has answered already, with a text of its own.
		return asUnread(reasonTooLarge, refusal(code, reasonTooLarge, tooLargeText), err)
	case code == codes.Canceled || code == codes.DeadlineExceeded || code == codes.Unavailable:
		return err
	default:
		// Frames that break the rules of gRPC, which has answered already, too. For
		// us it is a message that could not be read.
		return asUnread(reasonMalformed, invalid([]fault.Violation{malformed("the message is not framed as gRPC wants it")}), err)
	}
}

func asUnread(reason fault.Reason, st *status.Status, cause error) error {
	return &failure{st, &unreadError{string(reason), cause}}
}

// questionCodec is the usual codec, for whatever content type a caller names: one
// that is not protobuf cannot be decoded.
type questionCodec struct {
	encoding.CodecV2
	faults *faults
}

func newQuestionCodec(f *faults) questionCodec {
	return questionCodec{encoding.GetCodecV2(protocodec.Name), f}
}

func (c questionCodec) Unmarshal(data mem.BufferSlice, v any) error {
	in, ok := v.(*incoming)
	if !ok {
		return c.CodecV2.Unmarshal(data, v)
	}
	m, ok := in.into.(proto.Message)
	if !ok { // of the older kind, as reflection's may be
		in.wrong = c.CodecV2.Unmarshal(data, in.into)
		return nil
	}
	whole := data.MaterializeToBuffer(mem.DefaultBufferPool())
	defer whole.Free()
	if wireParts(whole.ReadOnlyData(), m.ProtoReflect().Descriptor(), 0) > maxParts {
		in.wrong = errManyParts
	} else {
		in.wrong = proto.Unmarshal(whole.ReadOnlyData(), m)
	}
	return nil
}

// Marshal writes an answer, and ends the work of its call. It runs where no interceptor sees it: what fails here
// is INTERNAL for the caller, and known to nobody unless it is said here.
func (c questionCodec) Marshal(v any) (data mem.BufferSlice, err error) {
	defer func() {
		if value := recover(); value != nil {
			data, err = nil, c.faults.panicked(context.Background(), whereAnswer, value)
		} else if err != nil {
			err = c.faults.unwritten(context.Background(), faceGRPC, err)
		}
	}()
	if r, ok := v.(*countedReply); ok {
		defer r.work.Leave()
		if data, err = r.write(c.CodecV2); err == nil {
			// Now that nothing can fail any more. A header that is set, to be sent later, would be copied for every call.
			_ = r.stream.SendHeader(r.header) // Fails only when the call has ended already.
		}
		return data, err
	}
	return c.CodecV2.Marshal(v)
}

// decodedSeen registers services whose messages are read as said above. judge is
// asked of every call before that, and named when it ends.
type decodedSeen struct {
	to     grpc.ServiceRegistrar
	judge  func(context.Context) context.Context
	named  *named
	faults *faults
}

// RegisterService registers desc with its handlers wrapped.
func (d decodedSeen) RegisterService(desc *grpc.ServiceDesc, impl any) {
	wrapped := *desc
	wrapped.Methods = make([]grpc.MethodDesc, len(desc.Methods))
	for i, m := range desc.Methods {
		wrapped.Methods[i] = grpc.MethodDesc{MethodName: m.MethodName, Handler: d.seen("/"+desc.ServiceName+"/"+m.MethodName, m.Handler)}
	}
	d.to.RegisterService(&wrapped, impl)
}

func (d decodedSeen) seen(fullMethod string, handler grpc.MethodHandler) grpc.MethodHandler {
	return func(impl any, ctx context.Context, dec func(any) error, interceptor grpc.UnaryServerInterceptor) (answer any, err error) {
		call := openCallOf(ctx)
		call.reached.Store(true)
		defer func() { d.named.ended(ctx, call, err) }()
		// The last net, under interceptors and decoders: gRPC has none, and the
		// process would end.
		defer func() {
			if value := recover(); value != nil {
				answer, err = nil, d.faults.panicked(ctx, whereCall, value)
			}
		}()
		ctx = d.judge(ctx)
		answer, err = handler(impl, ctx, func(into any) error {
			if call.unread = refusedFor(ctx); call.unread == nil {
				call.into = into
				call.unread = call.read(dec)
			}
			return call.unread
		}, interceptor)
		if call.unread == nil || interceptor == nil {
			return answer, err
		}
		refuse := func(context.Context, any) (any, error) { return nil, call.unread }
		return interceptor(ctx, nil, &grpc.UnaryServerInfo{Server: impl, FullMethod: fullMethod}, refuse)
	}
}

// readingStream reads the messages of a stream likewise.
type readingStream struct{ grpc.ServerStream }

func (s readingStream) RecvMsg(m any) error {
	return (&incoming{into: m}).read(s.ServerStream.RecvMsg)
}
