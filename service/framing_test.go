package service

import (
	"errors"
	"fmt"
	"log/slog"
	"net"
	"slices"
	"strings"
	"syscall"
	"testing"
)

// A body that is said to be too long is refused before a byte of it is sent; what says two
// lengths, or comes in chunks, is the last request of its connection (RFC 9112, 6.1).
func TestFraming(t *testing.T) {
	server := start(t)
	head := "POST " + castOnPath + " HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\n"
	chunked := fmt.Sprintf("Transfer-Encoding: chunked\r\n\r\n%x\r\n%s\r\n0\r\n\r\n", len(castOnBody), castOnBody)
	whole := fmt.Sprintf("Content-Length: %d\r\n\r\n%s", len(castOnBody), castOnBody)
	after := "GET /version HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n"
	for name, c := range map[string]struct {
		request string
		codes   []int
	}{
		"as it should be": {head + whole + after, []int{200, 200}},
		"too long":        {head + "Content-Length: 99999999999\r\n\r\n{}", []int{413}},
		"one byte more":   {head + fmt.Sprintf("Content-Length: %d\r\n\r\n{}", maxQuestionBytes+1), []int{413}},
		"may it go on":    {head + "Expect: 100-continue\r\nContent-Length: 99999999999\r\n\r\n", []int{413}},
		"in chunks":       {head + chunked + after, []int{200}},
		"two lengths":     {head + "Content-Length: 5\r\n" + chunked + after, []int{200}},
	} {
		if got := raw(t, server, c.request); !slices.Equal(got, c.codes) {
			t.Errorf("%s: %v, not %v", name, got, c.codes)
		}
	}
}

// A scraper that hangs up is no fault of the service; metrics that cannot be gathered are.
func TestScrapesThatFail(t *testing.T) {
	for level, err := range map[string]error{
		"INFO":  fmt.Errorf("writing: %w", &net.OpError{Op: "write", Net: "tcp", Err: syscall.ECONNRESET}),
		"ERROR": errors.New("two metrics of one name"),
	} {
		var log strings.Builder
		scrapes{slog.New(slog.NewTextHandler(&log, nil))}.Println("error encoding and sending metric family:", err)
		if !strings.Contains(log.String(), "level="+level) || !strings.Contains(log.String(), err.Error()) {
			t.Errorf("%v: %s", err, log.String())
		}
	}
}
