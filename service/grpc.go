package service

import (
	"time"

	"google.golang.org/grpc"
	"google.golang.org/grpc/health"
	healthv1 "google.golang.org/grpc/health/grpc_health_v1"
	"google.golang.org/grpc/keepalive"
)

// Limits of both faces. The longest question that the stated limits allow, 350
// counts to convert with names of a hundred characters, fits (longest_test.go). How
// much of it is held at a time is bounded by package conns.
const (
	maxQuestionBytes = 256 << 10
	maxHeaderBytes   = 16 << 10
)

// maxStreams bounds the calls one connection has open at a time.
const maxStreams = 100

// streamWorkers is how many calls of a server use stacks again, of 8 KiB or so each.
const streamWorkers = 64

// newHealth is not ready: that it is only when every listener serves.
func newHealth() *health.Server {
	h := health.NewServer()
	h.SetServingStatus("", healthv1.HealthCheckResponse_NOT_SERVING)
	return h
}

// newGRPCServer makes a server with health and reflection, whose connections get as
// old as age. Services are registered through what it returns beside it, so that
// nothing they are sent goes unseen.
func newGRPCServer(
	m *metrics, release Release, who callers, in admission,
	unary grpc.UnaryServerInterceptor, stream grpc.StreamServerInterceptor, h *health.Server, age time.Duration, more ...grpc.ServerOption,
) (*grpc.Server, grpc.ServiceRegistrar) {
	says := newNamed(release)
	s := grpc.NewServer(append(more,
		grpc.UnaryInterceptor(in.around(unary)),
		grpc.ChainStreamInterceptor(in.stream, says.stream, who.stream, stream),
		grpc.UnknownServiceHandler(unknownMethod(m.refusals)),
		grpc.InTapHandle(in.begin),
		grpc.ForceServerCodecV2(newQuestionCodec(m.faults)),
		grpc.RPCDecompressor(&gzipQuestions{}), //nolint:staticcheck // What replaced it is one for the whole process, clients too.
		grpc.MaxRecvMsgSize(maxQuestionBytes),
		grpc.MaxHeaderListSize(maxHeaderBytes),
		grpc.MaxConcurrentStreams(maxStreams),
		// Calls take turns on goroutines whose stacks have grown: growing one anew is a
		// twelfth of what a short call takes. Where all are busy a call gets its own.
		grpc.NumStreamWorkers(streamWorkers),
		grpc.ConnectionTimeout(5*time.Second),
		// A buffer of 32 KiB for each connection would be most of what an idle one
		// costs. Questions are short; what is written goes through shared buffers.
		grpc.ReadBufferSize(4<<10),
		grpc.KeepaliveParams(keepalive.ServerParameters{
			// A peer that vanished without a word is noticed within 80 s.
			Time:    time.Minute,
			Timeout: 20 * time.Second,
			// Clients dial again now and then, and so find new replicas.
			MaxConnectionAge:      age,
			MaxConnectionAgeGrace: 30 * time.Second,
			MaxConnectionIdle:     2 * time.Minute,
		}),
		// Clients may ping twice a minute, also between calls; the stock limit of
		// one ping in five minutes cuts off common client settings.
		grpc.KeepaliveEnforcementPolicy(keepalive.EnforcementPolicy{
			MinTime:             30 * time.Second,
			PermitWithoutStream: true,
		}),
	)...)
	seen := decodedSeen{s, who.judge, says, m.faults}
	healthv1.RegisterHealthServer(seen, h)
	registerReflection(s)
	return s, seen
}
