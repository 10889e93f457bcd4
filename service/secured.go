package service

import (
	"net/http"

	"golang.org/x/net/http2"
	"google.golang.org/grpc"
	"google.golang.org/grpc/credentials"
	"google.golang.org/grpc/credentials/insecure"

	"example.com/knitmath/service/conns"
	"example.com/knitmath/service/tlsfile"
	"example.com/knitmath/service/watched"
)

// secured is the TLS of both public faces; nil for none.
type secured struct{ source *tlsfile.Source }

// secure reads the files of TLS, if there are any, and has them watched.
func (s *Server) secure(told *watched.Reports) (*secured, error) {
	if !s.config.TLS.On() {
		return nil, nil
	}
	source, err := tlsfile.Open(s.config.TLS, told, s.config.Registry)
	if err != nil {
		return nil, err
	}
	s.files = append(s.files, source)
	return &secured{source}, nil
}

// onGRPC says how connections are encrypted. What goes over them is watched inside.
func (s *secured) onGRPC() grpc.ServerOption {
	how := insecure.NewCredentials()
	if s != nil {
		how = credentials.NewTLS(s.source.For("h2"))
	}
	return grpc.Creds(conns.Credentials(how))
}

// onHTTP lets JSON speak HTTP/2 too, with as many requests of one connection at a
// time as gRPC has calls.
// It is the HTTP/2 that grpc-go has its frames from, so that the one within net/http can be
// left out of a release (deploy/build).
func (s *secured) onHTTP(server *http.Server) error {
	if s == nil {
		return nil
	}
	server.TLSConfig = s.source.For("h2", "http/1.1")
	//nolint:staticcheck // It is called so where net/http has an HTTP/2 of its own, as it has not in a release.
	return http2.ConfigureServer(server, &http2.Server{MaxConcurrentStreams: maxStreams})
}

// serveHTTP serves JSON until it is shut down. TLS begins within what the listener
// hands over: net/http finds HTTP/2 only where it has put on TLS itself.
func (s *Server) serveHTTP() error {
	if s.http.TLSConfig == nil {
		return s.http.Serve(s.httpFace)
	}
	return s.http.ServeTLS(s.httpFace, "", "")
}
