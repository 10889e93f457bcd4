package pattern

// facing, gauge of needles and yarn before stitches are cast on or picked up.
const (
	castLead = "<|Using 4 mm needles, |With smaller needles, |Using the long-tail method, |With yarn A, |Using MC and " +
		"larger needles, |" +
		"With 3¾ mm needles and A, |Using the cable method and MC, |With size 6 needles and double yarn, |With waste yarn, |" +
		"" +
		"Using two strands held together, |Using a provisional cast-on, |Using the thumb method, |With a circular needle " +
		"and CC, >"
	castOn   = "<cast on|CO|loosely cast on|Cast on|Loosely CO>"
	castTail = "<| loosely| quite loosely| rather loosely| very loosely| using the long-tail method| with the thumb " +
		"method| on a 4 mm needle|" +
		", leaving a long tail| fairly tightly| in MC>"
	pickLead = "<With RS facing, |With right side facing and smaller needles, |With RS facing, using MC, |" +
		"With RS facing and yarn B, |Beg at lower right edge, with RS facing, |Join yarn at right shoulder and, with RS " +
		"facing, |" +
		"With 3.25 mm circular needle, RS facing and starting at right shoulder seam, |Using smaller needles and with RS " +
		"facing, |" +
		"With right side of work facing, join A and |With RS of work facing you, using 3¼ mm needles and MC, |Turn work 90 " +
		"degrees and |" +
		"Rejoin yarn at the corner; with RS facing, >"
	pickUp  = "<pick up and knit|pick up and k|pick up & knit|pick up|knit up|pick up knitwise>"
	handSts = "<sts|stitches>"
	joinRnd = "<Join in the rnd.|Join, being careful not to twist.|Join into a round, placing a marker.|Pm and join in " +
		"the round.|" +
		"Join to work in the round, taking care not to twist sts; pm for beg of rnd.|Place marker and join.|Join for " +
		"working in the round.>"
	onHolder = "<on a holder|on a st holder|onto a holder|on a spare needle|on waste yarn|on to a stitch holder|onto " +
		"scrap yarn|on a thread|" +
		"to a holder|on a length of waste yarn>"
	putThem = "<place|slip|put|leave|sl|transfer>"
)

var wordedScenes = []scene{
	{name: "cast on", text: castLead + castOn + " {a} " + handSts + castTail + ".\nKnit {r} rows. {a!} " +
		"sts.\nNext row: K1, k2tog, k to end. {end!} sts.",
		numbers: func(i int) map[string]int {
			return map[string]int{"a": 40 + 8*i, "r": 4 + 2*i, "end": 39 + 8*i, "rows": 5 + 2*i}
		}},
	{name: "cast on over needles", text: castOn + " {a} " + handSts +
		" <on 4 dpns, {n} on each,|onto 4 needles, {n!} on each,|divided over 4 needles|on four double-pointed needles " +
		"({n!} sts on each needle)|" +
		"on 4 needles with {n!} on each|upon four needles, {n!} on each|and divide them over 4 needles|and divide evenly " +
		"among 4 dpns ({n!} sts each)|" +
		"and distribute over 4 dpns, {n!} sts on each|arranged over 4 needles with {n!} sts on each|on 4 needles ({n!}, " +
		"{n!}, {n!}, {n!})|" +
		", {n!} on each of 4 needles|, {n!} sts to each of 4 needles>. " +
		joinRnd + "\nKnit {r} rnds. {a!} sts.",
		numbers: func(i int) map[string]int {
			return map[string]int{"a": 48 + 8*i, "n": 12 + 2*i, "r": 4 + i, "end": 48 + 8*i, "rows": 4 + i}
		}},
	{name: "picked up along one edge", text: "CO 30 sts.\nKnit 20 rows.\nBO.\n" + pickLead + pickUp + " {a} " +
		"" + handSts +
		" <along side edge|evenly along left front edge|along the side of the square|along the edge of the band|evenly up " +
		"right front edge|" +
		"around the armhole|from cast-on edge|across the bound-off edge|evenly around neck|along the row ends of the piece|" +
		"down left side|" +
		"along left edge of the strip|from the side of the work>< (1 st in each ridge)||, making sure the edge lies flat>. " +
		"{a!} sts.\nKnit {r} rows. <|{a!} sts.>",
		numbers: func(i int) map[string]int { return map[string]int{"a": 44 + 6*i, "r": 6 + i, "end": 44 + 6*i} }},
	{name: "picked up around a neck", text: "CO 30 sts.\nKnit 20 rows.\nBO.\n" + pickLead + pickUp + " {a} " +
		"sts <down|along|evenly down> <left front neck|left side of neck|left neck edge>, " +
		"<|and >{b} <sts |>< from| across| along> <centre front|centre front neck|front neck>, {c} <sts |><up|along|up " +
		"along> <right front neck|right side of neck>" +
		"<,|> and {d} <sts |><across|along|from> <back neck|back of neck|the back neck>. {end!} sts<| in all| in " +
		"total>.\nWork in k1, p1 rib for {r} rows.",
		numbers: func(i int) map[string]int {
			return map[string]int{"a": 18 + i, "b": 14 + 2*i, "c": 18 + i, "d": 30 + 2*i, "end": 80 + 6*i, "r": 7}
		}},
	{name: "held in a row", text: castOn + " {a} sts.\nWork {r} rows in St st.\nNext row<| (RS)>: K{b}, " +
		"" + putThem + " <the |>next {c} " + handSts + " " + onHolder +
		"< for neck| for front neck||>, <knit|k> to end. {end!} sts< rem||>.",
		numbers: func(i int) map[string]int {
			return map[string]int{"a": 60 + 8*i, "b": 20 + 2*i, "c": 20 + 4*i, "end": 40 + 4*i, "r": 10, "rows": 11}
		}},
	{name: "held by a direction", text: castOn + " {a} sts.\nKnit {r} rows.\n<Next row: K{b}, turn, leaving " +
		"rem {c!} sts " + onHolder + "|Next row: K{b}, turn; leave rem {c!} sts " + onHolder +
		"|Next row: K{b}, turn and leave rem {c!} sts " + onHolder + "|Next row: K{b} and turn, leaving remaining {c!} sts " +
		"" + onHolder +
		"|Next row: K{b}, turn, put rem {c!} sts " + onHolder + "|Next row: K{b}, turn. Leave rem {c!} sts " + onHolder +
		"|Next row: K{b}, slip rem {c!} sts " + onHolder + ", turn|Next row: K{b}; place rem {c!} sts " + onHolder +
		"|Next row: Knit first {b} sts, turn, leaving rem {c!} sts " + onHolder + ">.\n<Work on these {b!} sts only.|Cont " +
		"on these {b!} sts.|> Next row: Purl. {b!} sts.",
		numbers: func(i int) map[string]int {
			return map[string]int{"a": 60 + 8*i, "b": 20 + 2*i, "c": 40 + 6*i, "end": 20 + 2*i, "r": 10, "rows": 12}
		}},
	{name: "held and taken up", text: castOn + " {a} sts.\nKnit {r} rows.\nNext row: K{b}, " + putThem + " " +
		"next {c} sts " + onHolder + ", k to end. {d!} sts.\nBO all sts.\n" +
		"<Return {c!} held sts to needle|Place {c!} held sts on needle|Slip {c!} sts from holder onto needle|Return the " +
		"{c!} sts from holder to a needle|" +
		"Transfer {c!} held sts back to needle|Put the {c!} held sts back on the needle|With RS facing, return {c!} held " +
		"sts to needle|" +
		"Slip the {c!} sts from the holder to the needle and rejoin yarn|Place the {c!} sts on hold onto smaller needle|" +
		"With RS facing, slip {c!} sts from waste yarn onto needle and join yarn|Rejoin yarn to {c!} held sts|With RS " +
		"facing, rejoin yarn to the {c!} sts on holder|" +
		"Return to the {c!} held sts|With RS facing, knit across the {c!} sts on holder|Next row: Knit the {c!} held sts|" +
		"With smaller needles, knit across {c!} sts from holder>.\n" +
		"Work {s} rows in k1, p1 rib. {c!} sts.",
		numbers: func(i int) map[string]int {
			return map[string]int{"a": 60 + 8*i, "b": 20 + 2*i, "c": 20 + 4*i, "d": 40 + 4*i, "end": 20 + 4*i, "r": 10, "s": 5}
		}},
	{name: "heel set apart", text: castOn + " {a} sts. " + joinRnd + "\nKnit 20 rnds.\n" +
		"<Heel flap|HEEL|Heel>\n<Next row: Knit the first {q} sts, turn, p{h} onto one needle; leave rem {h!} sts on a " +
		"spare needle for instep." +
		"|K{q}, turn, p{h}, turn. Leave rem {h!} sts on hold for instep." +
		"|Next row: K{q}, turn; p{h}. Leave other {h!} sts on a holder for instep." +
		"|Next row: K{q}, turn. Next row: Sl 1, p{hm}, turn. Work on these {h!} sts only." +
		"|K{q}, turn. P{h}, leaving rem {h!} sts unworked for the instep." +
		"|Next row: K{q}, turn and purl {h}; place rem {h!} sts on a holder for instep." +
		">\nRow 1 (RS): *Sl 1, k1; rep from * to end.\nRow 2: Sl 1, p to end.\nRep <these 2 rows|Rows 1 and 2|last 2 rows> " +
		"{t} <more times|times more>. <{h!} heel sts.|>",
		numbers: func(i int) map[string]int {
			return map[string]int{"a": 56 + 8*i, "q": 14 + 2*i, "h": 28 + 4*i, "hm": 27 + 4*i, "t": 11 + i, "end": 28 + 4*i}
		}},
	{name: "heel worked on so many", text: castOn + " {a} sts. " + joinRnd + "\nKnit 20 rnds.\n<Heel flap|" +
		"HEEL|HEEL FLAP>\n" +
		"<Heel is worked over {h!} sts.|The heel flap is worked back and forth on needles 1 and 4 ({h!} sts).|Work the heel " +
		"flap back and forth over the first {h!} sts." +
		"|Work back and forth on {h!} sts for heel, leaving the rem {h!} sts on hold for instep.|Work heel flap over next " +
		"{h!} sts; leave rem {h!} sts on hold." +
		"|The heel flap is worked over half of the sts ({h!} sts).|Work the heel flap on these {h!} sts only.|Place last " +
		"{h!} sts on hold for instep and work heel on first {h!} sts." +
		"|Cont on {h!} heel sts only, working back and forth.|Slip next {h!} sts onto one needle for heel; rem {h!} sts are " +
		"held for instep." +
		"|Sl next {h!} sts to a holder for instep. Work back and forth on rem {h!} sts.|Work heel flap on N1 and N4 only, " +
		"{h!} sts.|Work on heel sts only ({h!} sts).>\n" +
		"Row 1 (RS): *Sl 1, k1; rep from * to end.\nRow 2 (WS): Sl 1, p to end.\nRep <these 2 rows|Rows 1 and 2|last 2 " +
		"rows> {t} <more times|times more>. {h!} <heel |>sts.",
		numbers: func(i int) map[string]int {
			return map[string]int{"a": 56 + 8*i, "h": 28 + 4*i, "t": 11 + i, "end": 28 + 4*i, "rows": 44 + 2*i}
		}},
	{name: "heel turned", text: "<Turn heel|TURN HEEL|Heel turn|Shape heel>\n<Row 1|1st row|Row 1 (RS)|Next " +
		"row (RS)>: <K{k}|Sl 1, k{km}>, <ssk|skpo|skp|k2tog tbl|sl 1, k1, psso>, k1, turn.\n" +
		"<Row 2|2nd row|Row 2 (WS)>: Sl 1, p5, p2tog, p1, turn<|, leaving rem sts unworked>.\n" +
		"<Row 3|3rd row>: Sl 1, k< to 1 st before gap| to 1 st before the gap| to within 1 st of gap| to one st before " +
		"gap>, <ssk|skpo> <|(across gap)|(1 st from each side of gap)|to close gap>, k1, turn.\n" +
		"Row 4: Sl 1, p to <1 st before gap|one st before gap|1 st before the turn>, p2tog, p1, turn.\n" +
		"<Rep Rows 3 and 4 <until all sts have been worked|{t} times more>|Repeat last 2 rows until all heel sts have been " +
		"worked|Rep these 2 rows {t!} more times|" +
		"Cont in this way until all sts are used up>. {end!} sts< rem| remain||>.",
		numbers: func(i int) map[string]int {
			m := 15 + 2*i
			return map[string]int{"start": 2 * m, "k": m + 2, "km": m + 1, "t": (m-5)/2 - 1, "end": m + 3}
		}},
	{name: "gusset", text: "CO {s} sts.\nKnit 4 rows.\n" +
		"<With RS facing, pick up and knit {g} sts along side of heel flap|Pick up and k {g} sts along left side of flap|" +
		"Pick up and knit {g} sts down side of heel>" +
		"<, knit across {h} held instep sts,|; with a new needle, knit across {h} instep sts from holder;|, with 2nd needle " +
		"k{h} instep sts,|, work across {h} instep sts,|, knit {h} sts from holder,>" +
		" <pick up and knit {g} sts|with another needle pick up and k {g} sts|then pick up and knit {g} sts> <along other " +
		"side of flap|along second side of heel|up the other side of the heel flap>. {a!} sts.\n" +
		"Join.\nRnd 1: Knit. <{a!} sts.|>",
		numbers: func(i int) map[string]int {
			return map[string]int{"s": 18 + 2*i, "g": 14 + i, "h": 30 + 4*i, "a": 76 + 8*i, "end": 76 + 8*i}
		}},
	{name: "thumb held", text: castOn + " {a} sts. " + joinRnd + "\nKnit 30 rnds.\nNext rnd: K{b}, " +
		"" + putThem + " <next|foll> {c} " + handSts + " " + onHolder +
		"< for thumb|, >< and|,> <cast on|CO> {d} sts< over the gap| in their place| across the gap| using the " +
		"backward-loop method| over gap|>, k to end. {end!} sts.\nKnit 10 rnds.",
		numbers: func(i int) map[string]int {
			return map[string]int{"a": 48 + 8*i, "b": 20 + 2*i, "c": 13 + 2*i, "d": 3, "end": 38 + 6*i, "rows": 41}
		}},
	{name: "thumb taken up", text: "Thumb\n<Place|Slip|Return> <the |>{a} <held sts|sts from waste yarn|thumb " +
		"sts|held thumb sts> <on|onto|to|on to> <needles|dpns|double-pointed needles>" +
		"<. Rejoin yarn and|; join yarn,| and rejoin yarn,|, join yarn and> <knit these {a} sts, then |knit across these " +
		"sts, then |k{a}, |>pick up and knit {b} sts <over the gap|along the CO edge|from the base of the hand|over gap>. " +
		"{c!} sts. Join.\nKnit 12 rnds.\nNext rnd: *K2tog; rep from * to end. {end!} sts.",
		numbers: func(i int) map[string]int {
			return map[string]int{"a": 13 + 2*i, "b": 3, "c": 16 + 2*i, "end": 8 + i}
		}},
	{name: "yoke divided", round: true, text: "<Divide for body and sleeves|DIVIDE|Separate sleeves>\nNext " +
		"rnd: K{f} <|front sts|sts for front>, " + putThem + " next {s} <sts|sleeve sts|sts for sleeve> " + onHolder +
		", <CO|cast on> {u} sts< for underarm||>, k{k}<| sts for back| back sts>, " + putThem + " next {s} sts " +
		"" + onHolder + ", <CO|cast on> {u} <underarm |>sts<|, join to front>. {end!} sts< for body||>.\nKnit 20 rnds.",
		numbers: func(i int) map[string]int {
			return map[string]int{"start": 200 + 20*i, "f": 60 + 6*i, "s": 40 + 4*i, "k": 60 + 6*i, "u": 6 + i, "end": 132 + 14*i, "rows": 21}
		}},
	{name: "short rows by numbers", text: castOn + " {a} sts.\nKnit 2 rows.\n<Row 1|Next row|Short row 1> " +
		"(RS): <K{b}, w&t|Knit {b}, wrap and turn|K{b}, W&T|Knit to last {x} sts, w&t|K{b}, wrap next st and turn|K{b}, yb, " +
		"sl 1, yf, return sl st to left needle, turn>.\n" +
		"<Row 2|Next row|Short row 2>: <Purl|P> <to end|all sts|back>.\nNext row: K{c}, <w&t|wrap and turn|w & t|wrap & " +
		"turn>.\nNext row: Purl <to end|back to end>.\n" +
		"Next row: Knit <to end|across all sts>, <picking up wraps|picking up the wraps as you come to them|working wraps " +
		"tog with wrapped sts|knitting wraps together with their sts|hiding wraps|working wraps as you come to them>. {a!} " +
		"sts.",
		numbers: func(i int) map[string]int {
			return map[string]int{"a": 40 + 8*i, "b": 30 + 8*i, "x": 10, "c": 20 + 4*i, "end": 40 + 8*i, "rows": 7}
		}},
	{name: "German short rows", text: castOn + " {a} sts.\nKnit 2 rows.\nRow 1 (RS): K{b}, turn.\nRow 2: " +
		"<Make DS|DS|Make double st|MDS>, p<|url> to <end|last 10 sts>, <turn|turn work>.\n" +
		"Row 3: <Make DS|DS|MDS>, k to <2 sts before last turn|2 sts before last DS|2 sts before previous turn|2 sts before " +
		"DS>, turn.\nRow 4: <Make DS|MDS>, p to 2 sts before <last turn|DS|previous DS>, turn.\n" +
		"Row 5: <Make DS|MDS>, k to end, <working DS as one st|working each DS as one st|knitting double sts as one|working " +
		"double stitches as single sts|resolving DS as you come to them>.\n" +
		"Row 6: Purl, working <rem DS as one st|the remaining DS as one st|DS as single sts>. {a!} sts.",
		numbers: func(i int) map[string]int { return map[string]int{"a": 60 + 8*i, "b": 50 + 8*i, "end": 60 + 8*i} }},
	{name: "short rows repeated", text: castOn + " {a} sts.\nKnit 2 rows.\nRow 1 (RS): K<nit|> to last {x} " +
		"sts, <w&t|turn|wrap and turn>.\nRow 2: <P|Purl> to last {x} sts, w&t.\n" +
		"Row 3: K to {y} sts before <wrapped st|last wrap|wrapped stitch|last wrapped st|previous wrap>, w&t.\nRow 4: P to " +
		"{y} sts before <wrapped st|last wrap|last wrapped st|previous wrap>, <w&t|wrap and turn>.\n" +
		"Rep <Rows 3 and 4|last 2 rows|these 2 rows> <twice more|2 more times|2 times more>.\nNext row: Knit to end<, " +
		"picking up wraps|>.\nNext row: Purl<, picking up rem wraps| across all sts|, picking up remaining wraps>. {a!} sts.",
		numbers: func(i int) map[string]int {
			return map[string]int{"a": 60 + 8*i, "x": 6, "y": 4, "end": 60 + 8*i, "rows": 12}
		}},
	{name: "shoulders joined or bound off", text: castOn + " {a} sts.\nKnit 20 rows.\n<Shape shoulders|Shape " +
		"shoulders:|SHOULDERS>\n<BO|Cast off|Bind off> {b} sts at beg of next 4 rows<, then| and|. BO|, then BO> {c} sts at " +
		"beg of <next|foll> 2 rows.\n" +
		"<BO rem {d!} sts|Bind off remaining {d!} sts for back neck|Cast off rem {d!} sts loosely|Leave rem {d!} sts on a " +
		"holder for back neck|Place rem {d!} back neck sts on holder|BO rem {d!} back neck sts|Cast off the remaining {d!} " +
		"sts for neck|Slip rem {d!} sts onto a holder>.",
		numbers: func(i int) map[string]int {
			return map[string]int{"a": 80 + 8*i, "b": 8 + i, "c": 7, "d": 34 + 4*i, "end": 0}
		}},
	{name: "sleeve taken up", text: "<SLEEVES|Sleeve>\n" +
		"<Return {a} held sleeve sts to dpns.|Place {a} held sleeve sts on needles.|Slip {a} sleeve sts from waste yarn to " +
		"dpns.> " +
		"<Beg at center of underarm, |Starting at centre of underarm, |Join yarn at underarm and |With RS facing, >pick up " +
		"and knit {u} sts, " +
		"<knit across {a} sleeve sts|knit {a} sleeve sts|knit {a} sts>, <then |>pick up and knit {u} sts" +
		"< to center of underarm| along underarm|>. {end!} sts.\n" + joinRnd + "\nKnit 5 rnds.",
		numbers: func(i int) map[string]int { return map[string]int{"a": 54 + 4*i, "u": 4 + i, "end": 62 + 6*i} }},
	{name: "gusset held up to its marker", text: castOn + " {a} sts. " + joinRnd + "\nSet-up rnd: K{b}, pm, k{c}, pm, k " +
		"to end.\nKnit 3 rnds.\n" +
		"Next rnd: K to m, <remove marker|rm>, <place gusset sts on waste yarn|place sts to next marker on hold|" +
		"slip all sts between markers onto waste yarn|put the gusset sts on a holder>, <remove marker|rm>, CO 3 sts" +
		"< over the gap| over gap|>, k to end. {end!} sts.\nKnit 5 rnds.",
		numbers: func(i int) map[string]int {
			return map[string]int{"a": 53 + 8*i, "b": 20 + 2*i, "c": 13 + 2*i, "end": 43 + 6*i, "rows": 10}
		}},
	{name: "bound off in a row", round: true, text: "<Next rnd|Rnd 1>: <Bind off the {b} steek sts|BO {b} sts|Bind off " +
		"next {b} sts|Cast off first {b} sts|" +
		"BO {b} underarm sts>, knit to end<| of rnd>. {end!} sts.",
		numbers: func(i int) map[string]int {
			return map[string]int{"start": 207 + 8*i, "b": 7, "end": 200 + 8*i, "rows": 1}
		}},
}
