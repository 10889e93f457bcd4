package neck

import "example.com/knitmath/knitmath/report"

// The reasons of notices. A count that was exactly half-way is told by the reason of
// package gauge, a V without an easy schedule by that of package shaping.
const (
	// NeckBelowHead: stretched, the neck does not go over the head. Field is empty.
	NeckBelowHead report.Reason = "NECK_BELOW_HEAD"
	// FrontNotBelowBack: the front is no deeper than the back. Field is that of the
	// front's depth.
	FrontNotBelowBack report.Reason = "FRONT_NOT_BELOW_BACK"
	// NeckShareUnusual: the neck is a narrower or a wider part of the width than those of
	// published sweaters. Field is that of the neck, or what it comes from.
	NeckShareUnusual report.Reason = "NECK_SHARE_UNUSUAL"
	// NeckInArmhole: the neck begins so low that armholes may be shaped beside it, and nobody
	// says how. Field is "armhole_rows".
	NeckInArmhole report.Reason = "NECK_IN_ARMHOLE"
)
