// Package knitmath is the plan of the house; it holds no code. The arithmetic of
// hand-knitting lies in the packages below it, a room for every noun of the
// craft: pure functions on plain structs, standard library only.
//
// The kernel, each room on nothing but the standard library:
//
//   - [example.com/knitmath/knitmath/stitch]: operations, rows, their notation,
//     and the machine that knits them;
//   - [example.com/knitmath/knitmath/fault]: refusing a question, every fault
//     with path, reason and limit;
//   - [example.com/knitmath/knitmath/measure]: lengths in whole micrometres, the
//     named roundings, sizes in words;
//   - [example.com/knitmath/knitmath/spread]: k things over n places as evenly as
//     integers allow;
//   - [example.com/knitmath/knitmath/schedule]: when something is done again and
//     again, and which plan of it is least to remember;
//   - [example.com/knitmath/knitmath/report]: what stands beside the figures of
//     an answer;
//   - [example.com/knitmath/knitmath/cost]: what a question takes, before it is
//     worked;
//   - [example.com/knitmath/knitmath/draft]: what a designer's text is made of
//     beside rows.
//
// On it:
//
//   - [example.com/knitmath/knitmath/advice]: what would do where a question is refused;
//   - [example.com/knitmath/knitmath/gauge]: centimetres into stitches;
//   - [example.com/knitmath/knitmath/swatch]: readings into a gauge;
//   - [example.com/knitmath/knitmath/body]: how large people are;
//   - [example.com/knitmath/knitmath/yarn]: what a yarn is;
//   - [example.com/knitmath/knitmath/yardage]: how much of it is needed, and whether it lasts;
//   - [example.com/knitmath/knitmath/handspun]: yarn that its knitter spins;
//   - [example.com/knitmath/knitmath/outline]: a plan as lines to draw;
//   - [example.com/knitmath/knitmath/pattern]: written instructions read, worked,
//     checked, written and mirrored.
//
// And the planners, the later ones on the earlier:
//
//   - [example.com/knitmath/knitmath/curve]: edges that follow any curve;
//   - [example.com/knitmath/knitmath/shaping]: even spacing, tapers, shaped sides;
//   - [example.com/knitmath/knitmath/shortrow]: wedges, curves, circles of wedges;
//   - [example.com/knitmath/knitmath/flat]: discs, polygons, squares, triangles;
//   - [example.com/knitmath/knitmath/armhole]: armholes, and the caps of sleeves set in;
//   - [example.com/knitmath/knitmath/neck]: necklines, and the shoulders beside them;
//   - [example.com/knitmath/knitmath/edge]: pick-ups and buttonholes;
//   - [example.com/knitmath/knitmath/yoke]: circular yokes and raglans;
//   - [example.com/knitmath/knitmath/solid]: what closes: balls, other bodies, crowns;
//   - [example.com/knitmath/knitmath/hand]: thumbs, and tops of mittens;
//   - [example.com/knitmath/knitmath/sock]: heels and toes.
//
// Arrows run downward only; a test holds the table of those that are allowed.
//
// A question flows one way,
//
//	input -> checks (all faults) -> lengths in whole micrometres
//	      -> counts -> places in the row -> stitch.Row -> answer
//
// Every public function either answers or returns a *fault.InputError that lists
// all faults found. Answers are finite, and bounded by limits that stand in the
// room they belong to. What is written down to be worked is a stitch.Row, and what
// an answer says in words it says as a report.Answer.
package knitmath
