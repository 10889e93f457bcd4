package stitch

// Op is one stitch operation, such as k2tog. The zero Op is none.
type Op uint8

// The operations. Each takes stitches off the left needle and leaves stitches
// on the right; the numbers stand in the table below.
const (
	Knit        Op = iota + 1 // k: knit
	Purl                      // p: purl
	Slip                      // sl: slip, without working
	KnitTbl                   // k tbl: knit through the back loop
	PurlTbl                   // p tbl: purl through the back loop
	K2tog                     // k2tog: knit two together, leans right
	SSK                       // ssk: slip, slip, knit the two together, leans left
	P2tog                     // p2tog: purl two together
	SSP                       // ssp: slip, slip, purl the two together
	SKP                       // skp: slip one, knit one, pass the slipped stitch over
	K3tog                     // k3tog: knit three together
	SSSK                      // sssk: as ssk, on three stitches
	P3tog                     // p3tog: purl three together
	SSSP                      // sssp: as ssp, on three stitches
	CDD                       // CDD: centred double decrease
	SK2P                      // sk2p: slip one, knit two together, pass the slipped stitch over
	M1L                       // M1L: make one leaning left, knit
	M1R                       // M1R: make one leaning right, knit
	M1LP                      // M1LP: make one leaning left, purl
	M1RP                      // M1RP: make one leaning right, purl
	M1                        // M1: make one, knit
	M1P                       // M1P: make one, purl
	KFB                       // kfb: knit into the front, then the back, of one stitch
	PFB                       // pfb: purl into the front, then the back, of one stitch
	YO                        // yo: yarn over
	CastOn                    // co: cast on
	BindOff                   // bo: bind off
	PlaceMarker               // pm: place a marker
	SlipMarker                // sm: slip a marker
	Turn                      // turn: turn the work before the end of the row
	WrapTurn                  // w&t: wrap the next stitch and turn
	MakeDouble                // make DS: slip one with the yarn in front and pull it up into a double stitch
	KnitDouble                // k DS: knit both legs of a double stitch as one
	PurlDouble                // p DS: purl both legs of a double stitch as one
	KnitWrapped               // k1 tog with its wrap: knit a wrapped stitch together with its wrap
	PurlWrapped               // p1 tog with its wrap: purl a wrapped stitch together with its wrap
	ShortRowYO                // yo: the yarn over made at once after a short-row turn
	PickUp                    // pick up and knit: draw up a stitch through a row of an edge
	PickUpTwo                 // pick up and knit 2 in one row: draw up two stitches through one row of an edge
	SkipRow                   // skip: pass over a row of an edge
	Hold                      // place sts on hold: leave on a holder or on waste yarn, without working

	opEnd
)

// form says how a number is written with an operation.
type form uint8

const (
	bracketed form = iota // "k2tog", "[k2tog] 3 times"
	joined                // "k1", "k5", "k5 tbl"
	spaced                // "sl 1", "BO 4"
	placed                // "place 1 st on hold", "place 4 sts on hold"
)

// opFacts is one line of the table of operations.
type opFacts struct {
	abbr          string
	takes, leaves int
	form          form
	tail          string // what follows the number: the "tbl" of "k5 tbl"
}

// opTable holds what every operation is called, takes and leaves.
//
// Source: the trade's published list as transcribed in
// testdata/stitch/abbreviations.csv (from memory of the list; what is taken and
// left follows from the definition), compared by a test. The lines marked
// "common practice" are not on that list under this name.
var opTable = [opEnd]opFacts{
	Knit:        {"k", 1, 1, joined, ""},
	Purl:        {"p", 1, 1, joined, ""},
	Slip:        {"sl", 1, 1, spaced, ""},
	KnitTbl:     {"k tbl", 1, 1, joined, " tbl"}, // k and tbl are listed, the pair is common practice
	PurlTbl:     {"p tbl", 1, 1, joined, " tbl"}, // p and tbl are listed, the pair is common practice
	K2tog:       {"k2tog", 2, 1, bracketed, ""},
	SSK:         {"ssk", 2, 1, bracketed, ""},
	P2tog:       {"p2tog", 2, 1, bracketed, ""},
	SSP:         {"ssp", 2, 1, bracketed, ""},
	SKP:         {"skp", 2, 1, bracketed, ""},
	K3tog:       {"k3tog", 3, 1, bracketed, ""},
	SSSK:        {"sssk", 3, 1, bracketed, ""},
	P3tog:       {"p3tog", 3, 1, bracketed, ""},
	SSSP:        {"sssp", 3, 1, bracketed, ""},
	CDD:         {"CDD", 3, 1, bracketed, ""},
	SK2P:        {"sk2p", 3, 1, bracketed, ""},
	M1L:         {"M1L", 0, 1, bracketed, ""},
	M1R:         {"M1R", 0, 1, bracketed, ""},
	M1LP:        {"M1LP", 0, 1, bracketed, ""},
	M1RP:        {"M1RP", 0, 1, bracketed, ""},
	M1:          {"M1", 0, 1, bracketed, ""},
	M1P:         {"M1P", 0, 1, bracketed, ""},
	KFB:         {"kfb", 1, 2, bracketed, ""},
	PFB:         {"pfb", 1, 2, bracketed, ""},
	YO:          {"yo", 0, 1, bracketed, ""},
	CastOn:      {"CO", 0, 1, spaced, ""},
	BindOff:     {"BO", 1, 0, spaced, ""},
	PlaceMarker: {"pm", 0, 0, bracketed, ""},
	SlipMarker:  {"sm", 0, 0, bracketed, ""},
	Turn:        {"turn", 0, 0, bracketed, ""}, // common practice
	WrapTurn:    {"w&t", 0, 0, bracketed, ""},
	MakeDouble:  {"make DS", 1, 1, bracketed, ""},                       // common practice, capitals too
	KnitDouble:  {"k DS", 1, 1, bracketed, ""},                          // common practice
	PurlDouble:  {"p DS", 1, 1, bracketed, ""},                          // common practice
	KnitWrapped: {"k1 tog with its wrap", 1, 1, bracketed, ""},          // common practice
	PurlWrapped: {"p1 tog with its wrap", 1, 1, bracketed, ""},          // common practice
	ShortRowYO:  {"yo", 0, 1, bracketed, ""},                            // common practice: written as any yarn over
	PickUp:      {"pick up and knit", 1, 1, spaced, ""},                 // common practice
	PickUpTwo:   {"pick up and knit 2 in one row", 1, 2, bracketed, ""}, // common practice
	SkipRow:     {"skip", 1, 0, spaced, ""},                             // common practice
	Hold:        {"place sts on hold", 1, 0, placed, " on hold"},        // common practice
}

// Valid reports whether op is one of the operations above.
func (op Op) Valid() bool { return op > 0 && op < opEnd }

// facts returns the line of the table, or an empty line for an unknown op.
func (op Op) facts() *opFacts {
	if !op.Valid() {
		return &unknown
	}
	return &opTable[op]
}

var unknown = opFacts{abbr: "?"}

// Abbr returns the abbreviation in lower case, as rows of patterns are written:
// "k2tog". An Op that is not valid gives "?".
func (op Op) Abbr() string { return op.facts().abbr }

// String returns Abbr.
func (op Op) String() string { return op.Abbr() }

// Takes returns how many stitches op takes off the left needle; for an op that
// picks up, how many rows of the edge it takes.
func (op Op) Takes() int { return op.facts().takes }

// Leaves returns how many stitches op leaves on the right needle.
//
// Binding off takes one and leaves none, as the published list counts it: a row
// that binds off every stitch leaves none, the last being fastened off.
func (op Op) Leaves() int { return op.facts().leaves }

// Net returns Leaves less Takes: -1 for k2tog, +1 for M1L.
func (op Op) Net() int { return op.Leaves() - op.Takes() }

// EndsRow reports whether nothing can follow op in its row: the work is turned.
func (op Op) EndsRow() bool { return op == Turn || op == WrapTurn }

// picksUp reports whether op takes rows of an edge rather than stitches.
func (op Op) picksUp() bool { return op == PickUp || op == PickUpTwo || op == SkipRow }

// Ops returns all operations in the order of their declaration.
func Ops() []Op {
	all := make([]Op, 0, opEnd-1)
	for op := Knit; op < opEnd; op++ {
		all = append(all, op)
	}
	return all
}
