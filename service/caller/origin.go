package caller

import (
	"errors"
	"fmt"
	"regexp"
	"strings"
)

// Origins are the pages that may ask, as the browsers name them: scheme, host and,
// unless it is the usual one, port.
type Origins struct {
	// All is the origin *, every page there is.
	All   bool
	exact map[string]bool
	under []under
}

// under is every host below another: what stands before and after the star.
type under struct{ scheme, domain string }

var (
	originForm = regexp.MustCompile(`^([a-z][a-z0-9+.-]*://)(\*\.)?([a-z0-9-]+(?:\.[a-z0-9-]+)*|\[[0-9a-f:]+\])(:[1-9][0-9]{0,4})?$`)
	hostForm   = regexp.MustCompile(`^[a-z0-9-]+(\.[a-z0-9-]+)*$`)
	usualPorts = map[string]string{"http://": ":80", "https://": ":443"}
)

// ReadOrigins reads origins with commas between them, none for "".
func ReadOrigins(list string) (Origins, error) {
	o := Origins{exact: map[string]bool{}}
	if list == "" {
		return o, nil
	}
	var faults []error
	for _, text := range strings.Split(list, ",") {
		faults = append(faults, o.add(strings.TrimSpace(text)))
	}
	if o.All && (len(o.exact) > 0 || len(o.under) > 0) {
		faults = append(faults, errors.New("the origin * leaves nothing for others to allow"))
	}
	return o, errors.Join(faults...)
}

func (o *Origins) add(text string) error {
	if text == "*" {
		o.All = true
		return nil
	}
	part := originForm.FindStringSubmatch(text)
	if part == nil {
		return fmt.Errorf("%q is no origin; one is for example https://shop.example, https://*.shop.example or http://localhost:3000", text)
	}
	scheme, star, host, port := part[1], part[2], part[3], part[4]
	if port != "" && usualPorts[scheme] == port {
		return fmt.Errorf("%q is never sent: browsers leave the usual port out", text)
	}
	if star == "" {
		o.exact[text] = true
		return nil
	}
	if !strings.Contains(host, ".") || strings.HasPrefix(host, "[") {
		return fmt.Errorf("%q would allow far too much", text)
	}
	o.under = append(o.under, under{scheme, "." + host + port})
	return nil
}

// Empty says that no page may ask.
func (o Origins) Empty() bool { return !o.All && len(o.exact) == 0 && len(o.under) == 0 }

// Allow says whether a page of this origin may ask. A page without one of its own,
// such as a file, says "null" and may not, except where every page may.
func (o Origins) Allow(origin string) bool {
	if o.All || o.exact[origin] {
		return true
	}
	for _, u := range o.under {
		if rest, ok := strings.CutPrefix(origin, u.scheme); ok {
			if sub, ok := strings.CutSuffix(rest, u.domain); ok && hostForm.MatchString(sub) {
				return true
			}
		}
	}
	return false
}
