package caller

import (
	"crypto/rand"
	"crypto/sha256"
	"crypto/subtle"
	"encoding/base64"
	"encoding/binary"
	"encoding/hex"
	"errors"
	"strings"
)

// key is a line of the file. The key itself is not known, only its hash: it is
// random and long, so that a plain hash can be neither guessed nor turned back, and
// a slow one would only cost every call.
type key struct {
	name        string
	sum         [sha256.Size]byte
	publishable bool
	origins     Origins
	rates       Rates
	limit       *limit
	tally       *tally
}

// keys are those of the file.
type keys struct {
	all []key
	// sums are their hashes once more, close together, since every call is compared
	// with all of them.
	sums []words
}

// words is a hash in four words, which are compared four times faster than bytes.
type words [4]uint64

func wordsOf(sum [sha256.Size]byte) (w words) {
	for i := range w {
		w[i] = binary.BigEndian.Uint64(sum[8*i:])
	}
	return w
}

// same is 1 when two hashes are the same and 0 when they are not, without a branch.
func (w words) same(v words) int {
	differ := (w[0] ^ v[0]) | (w[1] ^ v[1]) | (w[2] ^ v[2]) | (w[3] ^ v[3])
	return int(1 ^ (differ|-differ)>>63) // The highest bit of n or of -n is 1, unless n is 0.
}

// find is the key with this text, nil when there is none. All are compared, each in
// the same time whatever the text, so that the time says neither how much of a
// guess was right nor where in the file a key stands.
func (k keys) find(text string) *key {
	asked := wordsOf(sha256.Sum256([]byte(text)))
	at := -1
	for i, sum := range k.sums {
		at = subtle.ConstantTimeSelect(sum.same(asked), i, at)
	}
	if at < 0 {
		return nil
	}
	return &k.all[at]
}

// checkPageKey finds what is wrong with the key of the pages: everybody can read it
// there, so that a secret one must never be it.
func (k keys) checkPageKey(text string) error {
	if text == "" {
		return nil
	}
	switch found := k.find(text); {
	case found == nil:
		return errors.New("the key of -page-key is not in the file")
	case !found.publishable:
		return errors.New("-page-key is the secret key " + found.name + ", which everybody could read in the pages; it must be a publishable one")
	default:
		return nil
	}
}

const (
	// keyPrefix makes a key that has strayed into a page or a repository findable.
	keyPrefix = "knitmath_"
	keyBytes  = 32
	// maxKeyLength is the longest text that is looked up. What people have made
	// themselves may be longer than ours.
	maxKeyLength = 256
)

// NewKey makes a key and its line for the file. words are what the line says beside
// the hash: a name, and then what it may do, "secret" if nothing is said.
func NewKey(words string) (text, line string, err error) {
	said := strings.Fields(words)
	if len(said) == 0 {
		return "", "", errors.New("a key needs a name")
	}
	if len(said) == 1 {
		said = append(said, kindSecret)
	}
	random := make([]byte, keyBytes)
	_, _ = rand.Read(random) // Never fails: the program would rather end.
	text = keyPrefix + base64.RawURLEncoding.EncodeToString(random)
	sum := sha256.Sum256([]byte(text))
	line = said[0] + " " + hex.EncodeToString(sum[:]) + " " + strings.Join(said[1:], " ")
	if _, err := readKeys([]byte(line)); err != nil {
		return "", "", err
	}
	return text, line, nil
}
