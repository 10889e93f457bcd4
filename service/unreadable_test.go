package service

import (
	"bufio"
	"io"
	"net"
	"strings"
	"testing"
)

// What net/http answers by itself, as DEVELOPERS.md lists it, is counted, and so is
// whoever begins a request and goes away.
func TestUnreadableRequests(t *testing.T) {
	server := start(t)
	counted := 0.0
	for _, c := range []struct{ name, request, want string }{
		{"good", "GET /version HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n", "200"},
		{"no host", "GET /version HTTP/1.1\r\n\r\n", "400"},
		{"no HTTP", "dear diary\r\n\r\n", "400"},
		{"a name that is none", "GET /version HTTP/1.1\r\nHost: a\r\nDear Diary: x\r\n\r\n", "400"},
		{"two lengths", "POST /version HTTP/1.1\r\nHost: a\r\nContent-Length: 1\r\nContent-Length: 2\r\n\r\n", "400"},
		{"another encoding", "POST /version HTTP/1.1\r\nHost: a\r\nTransfer-Encoding: diary\r\n\r\n", "501"},
		{"another version", "GET /version HTTP/7.0\r\nHost: a\r\n\r\n", "505"},
		{"another expectation", "POST /version HTTP/1.1\r\nHost: a\r\nExpect: diary\r\n\r\n", "417"},
		{"long header", "GET /version HTTP/1.1\r\nHost: a\r\nA: " + strings.Repeat("x", 2*maxHeaderBytes) + "\r\n\r\n", "431"},
		{"gone", "GET /vers", ""},
		{"never begun", "", ""},
		{"of no path", "OPTIONS * HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n", "404"},
	} {
		conn, err := net.Dial("tcp", server.HTTPAddr().String())
		if err != nil {
			t.Fatal(err)
		}
		if _, err := io.WriteString(conn, c.request); err != nil {
			t.Fatal(err)
		}
		if c.want == "" {
			_ = conn.Close()
		} else {
			answer, err := bufio.NewReader(conn).ReadString('\n')
			if err != nil || !strings.HasPrefix(answer, "HTTP/1.1 "+c.want) {
				t.Errorf("%s: %q, %v", c.name, answer, err)
			}
			_ = conn.Close()
		}
		if c.want != "200" && c.want != "404" && c.name != "never begun" {
			counted++
			await(t, c.name+" is counted", func() bool { return server.refusedSoFar(t, faceJSON, reasonUnreadable) >= counted })
		}
	}
	if err := server.stop(); err != nil {
		t.Error(err)
	}
	if got := server.refusedSoFar(t, faceJSON, reasonUnreadable); got != counted {
		t.Errorf("%v counted, want %v", got, counted)
	}
	if strings.Contains(server.log.String(), "iary") {
		t.Errorf("the log has the caller's words:\n%s", server.log)
	}
}
