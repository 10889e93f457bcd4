// Package report is what stands beside the figures of an answer: remarks on the
// question, sources, and counts in words. It works nothing out: whoever has a
// figure brings it, with its noun and with where it comes from. What every answer
// can say of itself is an [Answer].
//
// The grammar of counts in English stands here once, so that no answer says
// "1 stitches" or "21th row".
package report
