// Package fault refuses questions: it gathers every fault with the path of its
// field, a reason for machines, and the limit in words. It knows nothing of what is
// asked, and no limit of it: a room brings its own fields and ranges. Nor does it
// know a transport, which turns an [InputError] into whatever it speaks.
//
// A question is checked in one way. Everything is asked of every field, in the
// order of the fields; then, if [Checks.Err] is nil, what the values are together:
//
//	var c fault.Checks
//	c.RequiredCount("", "stitches", in.Stitches, 1, MaxStitches)
//	c.OptionalNumber("", "width_cm", in.WidthCm, MinCm, MaxCm)
//	if err := c.Err(); err != nil {
//		return Answer{}, err
//	}
//
// Where a part of the question can be judged although another part is wrong,
// [Checks.Sound] tells whether its own fields are in order.
package fault
