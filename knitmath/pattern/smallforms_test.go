package pattern

import (
	"math/rand"
	"strconv"
	"strings"
)

// extentCase is a round of decreases, with a star, with brackets or with neither, and how far it is worked in any words.
// All words are common practice.
func extentCase(r *rand.Rand) smallCase {
	n, times := 2+r.Intn(9), 4+r.Intn(9)
	k := strconv.Itoa(n)
	extent := pick(r, "to end", "around", "across", "all round", "all around", "all the way round", "all the way around", "right across",
		"to end of round", "to the end", "across the row", "all across", "to the end of the row", "right round", "all the way across")
	row := pick(r, "(K"+k+", k2tog) "+extent, "*K"+k+", k2tog; rep from * "+extent, "K"+k+", k2tog; repeat "+extent,
		"*k"+k+", k2tog* "+extent, "k"+k+" k2tog repeat "+extent, "*Knit "+k+", knit 2 together; repeat from * "+extent,
		"K"+k+", k2tog, rep "+extent, "*k"+k+", k2tog, repeat from * "+extent)
	label := pick(r, "Rnd 1: ", "Next rnd: ", "round 1: ", "Dec rnd: ", "R1: ", "1st round: ", "Then decrease: Rnd 1: ",
		"Crown shaping: Rnd 1: ", "Now work the crown: Rnd 1: ")
	tail := pick(r, ". C sts.", " (C sts).", " (C).", " - C sts.")
	write := func(count int) string { return label + row + strings.ReplaceAll(tail, "C", strconv.Itoa(count)) }
	return smallCase{write(times * (n + 1)), write(times*(n+1) + 1), times * (n + 2), times * (n + 1), true}
}

// beginCase is a cast-on behind words of any kind, and rows of a rib that is told by its stitches, by its name or both.
func beginCase(r *rand.Rand) smallCase {
	n := 4 * (5 + r.Intn(20))
	rows := strconv.Itoa(2 + 2*r.Intn(15))
	all := strconv.Itoa(n)
	lead := pick(r, "", "Take No. 14 needles and ", "Using 4 mm needles, ", "With MC, ", "Scarf - ", "Cowl: ", "With No. 12 needles ",
		"Hat (worked flat): ", "With two needles, ", "Using larger needles and yarn held double, ", "Begin at the cuff. ")
	rib := pick(r, "k2, p2 rib", "2x2 rib", "k1, p1 ribbing", "moss stitch", "garter stitch", "single rib", "k2p2 rib")
	body := pick(r, "Work "+rows+" rows in "+rib, "Work in "+rib+" for "+rows+" rows", "Knit 2, purl 2 for "+rows+" rows",
		"Rib 2 and 2 for "+rows+" rows", "Knit 2 plain, 2 purl, for "+rows+" rows", "Change to "+rib+" and work "+rows+" rows",
		"Knit 1 row, purl 1 row, alternately, for "+rows+" rows", "Work in rib of k2, p2 for "+rows+" rows", rib+" for "+rows+" rows",
		"(K2, p2) to end for "+rows+" rows", "For "+rows+" rows, work in "+rib, "Without shaping, work "+rows+" rows in "+rib)
	count := pick(r, ". C sts.", " (C sts).", " - C sts.")
	write := func(c int) string {
		return lead + pick(r, "cast on ", "CO ") + all + pick(r, " sts. ", " stitches. ", ". ") + body +
			strings.ReplaceAll(count, "C", strconv.Itoa(c))
	}
	return smallCase{write(n), write(n + 2), 0, n, false}
}
