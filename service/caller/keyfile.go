package caller

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"regexp"
	"strconv"
	"strings"
)

// The file has a key a line: a name, the SHA-256 of the key in hexadecimal digits,
// the word secret or publishable, and what bounds it.
//
//	# for the shop's own server
//	shop-server  5f2b...  secret       calls=50 cost=200000
//	# for the shop's pages, where everybody can read it
//	shop-pages   90c1...  publishable  calls=20 origins=https://shop.example,https://*.shop.example
//
// calls is how many a second, cost how many steps of work a second; ten seconds'
// worth of either may be saved up. Without them a key is bounded by nothing, which
// a publishable one must not be. Lines that begin with # say nothing.
const (
	kindSecret      = "secret"
	kindPublishable = "publishable"
)

// maxKeys bounds the keys of a file, all of which are compared for every call.
const maxKeys = 1000

// The names of those who have no key of the file.
const (
	// Public is everybody without a key, where they may call.
	Public = "public"
	// Unknown is everybody whose key is not in the file.
	Unknown = "unknown"
)

var nameForm = regexp.MustCompile(`^[a-z][a-z0-9-]{0,39}$`)

// readKeys reads the file and finds everything that is wrong with it.
func readKeys(file []byte) (keys, error) {
	var found keys
	var faults []error
	names, sums := map[string]int{}, map[[sha256.Size]byte]int{}
	n := 0
	for text := range strings.Lines(string(file)) {
		n++
		words := strings.Fields(text)
		if len(words) == 0 || strings.HasPrefix(words[0], "#") {
			continue
		}
		k, err := readKey(words)
		if err == nil && names[k.name] > 0 {
			err = fmt.Errorf("the name %s stands in line %d already", k.name, names[k.name])
		}
		if err == nil && sums[k.sum] > 0 {
			err = fmt.Errorf("the key of %s stands in line %d already", k.name, sums[k.sum])
		}
		if err != nil {
			faults = append(faults, fmt.Errorf("line %d: %w", n, err))
			continue
		}
		names[k.name], sums[k.sum] = n, n
		found.all, found.sums = append(found.all, k), append(found.sums, wordsOf(k.sum))
	}
	if len(found.all) > maxKeys {
		faults = append(faults, fmt.Errorf("there are %d keys; at most %d", len(found.all), maxKeys))
	}
	return found, errors.Join(faults...)
}

// readKey reads the words of a line. No fault repeats a word that is not known to
// be a name: it may be a key, and faults go to the log.
func readKey(words []string) (key, error) {
	var k key
	if k.name = words[0]; !nameForm.MatchString(k.name) {
		return k, errors.New("a name has small letters, digits and hyphens, begins with a letter, and is 40 long at most")
	}
	if k.name == Public || k.name == Unknown {
		return k, fmt.Errorf("the name %s means those without a key", k.name)
	}
	if len(words) < 3 {
		return k, fmt.Errorf("after the name %s come the SHA-256 of the key and the word %s or %s", k.name, kindSecret, kindPublishable)
	}
	sum, err := hex.DecodeString(words[1])
	if err != nil || copy(k.sum[:], sum) != len(k.sum) || len(sum) != len(k.sum) {
		return k, fmt.Errorf("the SHA-256 of %s must be 64 hexadecimal digits", k.name)
	}
	if k.sum == sha256.Sum256(nil) || k.sum == sha256.Sum256([]byte("\n")) {
		return k, fmt.Errorf("the SHA-256 of %s is that of nothing", k.name)
	}
	if words[2] != kindSecret && words[2] != kindPublishable {
		return k, fmt.Errorf("the third word of %s must be %s or %s", k.name, kindSecret, kindPublishable)
	}
	k.publishable = words[2] == kindPublishable
	return k, k.bound(words[3:])
}

// bound reads what bounds a key.
func (k *key) bound(words []string) (err error) {
	said := map[string]bool{}
	for _, word := range words {
		option, value, _ := strings.Cut(word, "=")
		if said[option] {
			return fmt.Errorf("%s says %s= twice", k.name, option)
		}
		said[option] = true
		switch option {
		case "calls":
			k.rates.Calls, err = readRate(value)
		case "cost":
			k.rates.Cost, err = readRate(value)
		case "origins":
			k.origins, err = ReadOrigins(value)
		default:
			return fmt.Errorf("%s has an unknown word; what bounds a key is calls=, cost= and origins=", k.name)
		}
		if err != nil {
			return fmt.Errorf("%s= of %s: %w", option, k.name, err)
		}
	}
	switch {
	case k.publishable && k.origins.Empty():
		return fmt.Errorf("%s is publishable and needs origins=, the pages that may use it", k.name)
	case k.publishable && k.origins.All:
		return fmt.Errorf("%s is bound to no page by the origin *", k.name)
	case k.publishable && k.rates.Calls == 0:
		return fmt.Errorf("%s is publishable, so anybody can have it, and needs calls=", k.name)
	case !k.publishable && said["origins"]:
		return fmt.Errorf("%s is secret and cannot have origins=: what a page knows is no secret; make it publishable", k.name)
	}
	return nil
}

func readRate(value string) (float64, error) {
	n, err := strconv.ParseFloat(value, 64)
	if err != nil || !(n > 0 && n <= maxRate) {
		return 0, fmt.Errorf("must be a number above 0, up to %g", float64(maxRate))
	}
	return n, nil
}
