package draft

import "strings"

// Verbs with which a sentence begins that changes no stitch: what is done to the
// yarn, the needles or the finished piece. Common practice.
var harmless = set(`break cut fasten weave block sew seam measure try wash steam press stuff darn attach secure tie adjust check read refer
	see count please use enjoy download hide neaten trim lay pin dry soak fold mark tack rotate whipstitch backstitch mattress carry twist
	catch strand float remember ensure be always never do don't keep note begin repeat-as thread run match choose allow insert embroider
	reinforce snip soak wet spray iron lightly gently stretch continue-as using-a pull tighten wind switch change drop lay
	ease fit set line join-sides sewn slide`)

// Harmless reports whether a sentence that begins with a verb changes no stitch,
// whatever yarn, needle or seam it is about.
func Harmless(verb string) bool { return harmless[verb] }

// Words about a change of the width: where they are not understood they are asked about.
var changing = set(`narrow narrows narrowed narrowing narrower widen widens widened widening wider reduce reduces reduced reducing reduction
	lose loses losing gain gains gaining add adds adding lessen lessening fewer taper tapering tapers flare flaring eliminate
	eliminating consume consuming together cast-off bind-off cast-on casting binding increases decreases increased decreased`)

// Changing reports whether a word is about a change of the width.
func Changing(word string) bool { return changing[word] }

// The small words of the language, by which a sentence of it is known: those that are no
// words of its neighbours, as "in", "a", "on" and "or" are.
var english = set(`the and of to is are was be it its this that these those with for from by you your not when until but each my we our they
	them there which will can may should have has see how up out into by`)

// English reports whether a word shows that a sentence is English.
func English(word string) bool { return english[word] || len(word) > 3 && manner[word] }

// Words of how something is done, with what, and where: they change no count.
var manner = set(`loosely tightly firmly evenly neatly carefully gently elastic stretchy stretch very elastically same now again once-more
	cir circ fold foldline line turning
	in the a an with using and or of on to onto for from at by as per into over under through than that this these those it its be is are
	was being careful not twist twisting twisted sure making taking care patt pattern pat est established set-before set knitwise purlwise
	kwise pwise method tail long-tail long tails provisional tubular german italian cable crochet knitted cast-on bind-off sewn your
	you favorite favourite preferred any which both each all one two circular double-pointed pointed straight dpn dpns needle needles smaller
	larger size sizes sized spare waste yarn wool cotton main contrast contrasting colour color colours colors mc cc strand strands double
	doubled
	together hold held-double cm mm in inch inches ins us uk no
	edge edges side sides right wrong rs ws facing front back left neck neckline armhole shoulder shoulders sleeve sleeves body hem cuff
	cuffs underarm top bottom beginning beg start starting end ending finish finishing finished row rnd round rounds rows st sts stitch
	stitches marker markers m bor eor place remove slip as before above below throughout if needed necessary desired only also then next
	first last second third other opposite same work working worked piece pieces fabric seam seams thumb hand palm finger fingers leg heel
	foot toe flap gusset brim crown hat mitten mittens sock scarf shawl blanket center centre middle band bands collar pocket opening
	buttonband purl-side knit-side ridge ridges turning ribbing rib garter stockinette stocking st-st stst moss seed plain even straight
	without shaping total rem remaining remain while when after before until there enough leaving about approx approximately
	piece meas measures measure measuring from-beg have has had so should will can may used live new ball balls skein
	separate another set aside later use following foll three-needle 3-needle picot i-cord suspended normal usual usually regular regularly
	inside outside spaced flat like this obtain gauge thumbless gap gaps rotate jeny's surprisingly cast bind off kitchener graft grafting`)

// Manner reports whether a word says how, with what or where something is done.
func Manner(word string) bool {
	if manner[word] {
		return true
	}
	head, tail, ok := strings.Cut(word, "-")
	return ok && manner[head] && manner[tail]
}

// fabrics are the stitch patterns that every knitter knows: they keep the count.
var fabrics = set(`stockinette stocking st-st stst garter g-st gst moss seed rib ribbing ribs reverse rev double-moss irish twisted-rib
	pattern patt pat
	linen basketweave waffle brioche fisherman's i-cord icord`)

// Fabric reports whether a word names a stitch pattern that every knitter knows.
func Fabric(word string) bool { return fabrics[word] }
