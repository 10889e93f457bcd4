package service

import (
	"bufio"
	"io"
	"net"
	"net/http"
	"strings"
	"testing"
	"time"

	"example.com/knitmath/service/caller"
)

// raw sends bytes over a connection of its own and returns the codes of what is
// answered, up to the end of the connection.
func raw(t *testing.T, server *running, request string) (codes []int) {
	t.Helper()
	conn, err := net.Dial("tcp", server.HTTPAddr().String())
	if err != nil {
		t.Fatal(err)
	}
	defer func() { _ = conn.Close() }()
	_ = conn.SetDeadline(time.Now().Add(20 * time.Second))
	if _, err := io.WriteString(conn, request); err != nil {
		t.Fatal(err)
	}
	in := bufio.NewReader(conn)
	for {
		resp, err := http.ReadResponse(in, nil)
		if err != nil {
			return codes
		}
		codes = append(codes, resp.StatusCode)
		_, _ = io.Copy(io.Discard, resp.Body) // The end of the connection ends the loop.
		_ = resp.Body.Close()
	}
}

// No form of a request brings a call past the gate, alone or behind another one.
// The last request of each says that the connection ends.
func TestNoFormOfARequestPasses(t *testing.T) {
	server, _ := withCallers(t, keyLine("server", "secret"), caller.Config{})
	const get = "GET " + castOnQuery + " HTTP/1.1\r\nHost: knit\r\nConnection: close\r\n"
	const keyed = get + "X-Api-Key: server\r\n\r\n"
	body := "POST " + castOnPath + " HTTP/1.1\r\nHost: knit\r\nContent-Type: application/json\r\n"
	for _, c := range []struct {
		what, request string
		codes         []int
	}{
		{"a key", keyed, []int{200}},
		{"a key in another spelling", get + "x-aPI-kEY:\tserver \r\n\r\n", []int{200}},
		{"none", get + "\r\n", []int{401}},
		{"a name with low lines", get + "X_Api_Key: server\r\n\r\n", []int{401}},
		{"a space before the colon", get + "X-Api-Key : server\r\n\r\n", []int{400}},
		{"a key on a second line", get + "X-Api-Key:\r\n server\r\n\r\n", []int{200}},
		{"a line feed for the end", get + "X-Other: a\nX-Api-Key: server\r\n\r\n", []int{200}},
		{"a key behind a return", get + "X-Other: a\rX-Api-Key: server\r\n\r\n", []int{400}},
		{"two lists", get + "X-Api-Key: nobody\r\nX-Api-Key: server\r\n\r\n", []int{401}},
		{"as the gateway passes metadata", get + "Grpc-Metadata-X-Api-Key: server\r\n\r\n", []int{401}},
		{"a cookie", get + "Cookie: x-api-key=server\r\n\r\n", []int{401}},
		{"a name and password", "GET http://server@knit" + castOnQuery + " HTTP/1.1\r\nHost: knit\r\nConnection: close\r\n\r\n", []int{401}},
		{"another way to a document", strings.Replace(get, castOnPath, "/openapi.json/..//"+castOnPath[1:], 1) + "\r\n", []int{404}},
		{"a header that is too long", get + "X-Api-Key: " + strings.Repeat("server", 10_000) + "\r\n\r\n", []int{431}},
		{"a key in the trailer", body + "Connection: close\r\nTrailer: X-Api-Key\r\nTransfer-Encoding: chunked\r\n\r\n" +
			"0\r\nX-Api-Key: server\r\n\r\n", []int{401}},
		{"two lengths", body + "Content-Length: 0\r\nContent-Length: 5\r\n\r\n" + keyed, []int{400}},
		{"a length and chunks", body + "Content-Length: 4\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n" + keyed, []int{401}},
		{"a call within the body of another", body + "Content-Length: 99\r\n\r\n" + keyed + strings.Repeat(" ", 99), nil},
		// Each request of a connection is judged by itself.
		{"a call behind one with a key",
			"GET " + castOnQuery + " HTTP/1.1\r\nHost: knit\r\nX-Api-Key: server\r\n\r\n" + get + "\r\n", []int{200, 401}},
		{"a preflight", "OPTIONS " + castOnPath + " HTTP/1.1\r\nHost: knit\r\nOrigin: https://shop.example\r\n" +
			"Access-Control-Request-Method: POST\r\nContent-Length: 3\r\nConnection: close\r\n\r\n{ }", []int{204}},
	} {
		got := raw(t, server, c.request)
		if c.codes == nil { // Whatever it is taken for, it is not answered.
			for _, code := range got {
				if code == 200 {
					t.Errorf("%s: HTTP %d", c.what, got)
				}
			}
		} else if len(got) != len(c.codes) || got[0] != c.codes[0] || got[len(got)-1] != c.codes[len(c.codes)-1] {
			t.Errorf("%s: HTTP %d, want %d", c.what, got, c.codes)
		}
	}
}
