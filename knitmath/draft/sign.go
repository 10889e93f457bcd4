package draft

import (
	"strings"
	"unicode/utf8"
)

// Invisible reports whether a character is not seen in print: byte order marks,
// zero-width spaces and joiners, soft hyphens, direction marks, variation
// selectors.
func Invisible(c rune) bool {
	switch {
	case c == '\u00AD', c == '\uFEFF', c >= '\u200B' && c <= '\u200F', c >= '\u2060' && c <= '\u2064',
		c >= '\u202A' && c <= '\u202E', c >= '\uFE00' && c <= '\uFE0F':
		return true
	}
	return false
}

// signs are the many shapes of a few signs.
var signs = func() map[rune]rune {
	m := map[rune]rune{}
	for plain, shapes := range map[rune]string{
		'*':  "※∗⁎✱✳✲✻✽❋⚹٭﹡＊✶★☆",
		'~':  "～〜",
		'-':  "‐‑‒–—―−﹣－⸺",
		'x':  "хХ×✕✖⨯╳✗",
		'\'': "’‘ʼ′`´",
		'"':  "“”„″",
		'•':  "◦▪●‣∙■□○▸►",
		' ':  "\u00A0\u2002\u2003\u2007\u2009\u202F\u3000",
		',':  "、﹐",
		'.':  "。﹒",
		'[':  "【〔",
		']':  "】〕",
		'=':  "≡",
		'/':  "∕⁄",
	} {
		for _, c := range shapes {
			m[c] = plain
		}
	}
	return m
}()

// Plain is a character as it would be typed: full-width ones in ordinary width,
// every star a star, every dash a hyphen.
func Plain(c rune) rune {
	if c < utf8.RuneSelf {
		return c
	}
	if p, ok := signs[c]; ok {
		return p
	}
	if c >= '！' && c <= '～' { // the full-width forms, in the order of ASCII
		return c - '！' + '!'
	}
	return c
}

// Fraction reports whether a character is a fraction such as ½.
func Fraction(c rune) bool {
	return c >= '¼' && c <= '¾' || c >= '⅐' && c <= '⅞'
}

// Word is a word in plain signs, without what is not seen, in lower case.
func Word(s string) string {
	for i := range len(s) {
		if s[i] >= utf8.RuneSelf {
			return strings.ToLower(strings.Map(func(c rune) rune {
				if Invisible(c) {
					return -1
				}
				return Plain(c)
			}, s))
		}
	}
	return strings.ToLower(s)
}
