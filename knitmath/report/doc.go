// Package report is what stands beside the figures of an answer: remarks,
// sources, and counts in words. It works nothing out: whoever has a figure
// brings it, with its noun and with where it comes from.
//
// The grammar of counts in English stands here once, so that no answer says
// "1 stitches" or "21th row".
package report
