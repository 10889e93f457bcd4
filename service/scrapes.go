package service

import (
	"errors"
	"fmt"
	"log/slog"
	"net"
	"strings"
)

// scrapes logs what goes wrong while the metrics are written: as an error, but for a
// scraper that hangs up or does not read, which is no fault of the service.
type scrapes struct{ logger *slog.Logger }

func (s scrapes) Println(said ...any) {
	text := strings.TrimSpace(fmt.Sprintln(said...))
	for _, v := range said {
		var gone *net.OpError
		if err, ok := v.(error); ok && errors.As(err, &gone) {
			s.logger.Info("scrape", slog.String("said", shorten(text, maxLibraryLine)))
			return
		}
	}
	s.logger.Error(text)
}
