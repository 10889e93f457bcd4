package draft

import "strings"

// set makes a set of words.
func set(text string) map[string]bool {
	m := map[string]bool{}
	for _, w := range strings.Fields(text) {
		m[w] = true
	}
	return m
}

// Headings of what is read by people alone, by their first words. Common practice.
var front = set(`materials material yarn yarns needle needles notions supplies equipment gauge tension size sizes sizing measurements
	measurement finished abbreviations abbreviation abbrev note notes skill level difficulty schematic schematics techniques technique key
	legend copyright glossary construction tips tip hint caption photo photograph figure fig picture image dimensions you'll
	requirements requires required suggested designer design designed care washing errata about introduction description hook hooks
	buttons button extras terms terminology notation disclaimer support website contact email fibre fiber colours colors colourways
	colorways palette shown sample samples model pictured modelled blocking fit ease chest bust actual tools accessories background
	inspiration story special hint hints stitches-used contents skills difficulty-level yardage amount quantity wool yarn-weight
	special-abbreviations translation version published shoe shoes garment circumference`)

// Headings of parts that are knit. Common practice.
var parts = set(`body back front fronts sleeve sleeves cuff cuffs leg legs heel foot toe toes yoke hem brim crown ribbing rib neck neckband
	collar hood pocket pockets border borders edging edge thumb hand palm fingers finger gusset armhole armholes shoulder shoulders
	instructions directions pattern method finishing assembly making-up head ears ear arms arm tail wings wing ball base top bottom
	waist hat mitts mitt bootee bootees bootie booties bonnet mitten mittens sock socks scarf shawl blanket pullover
	cardigan raglan bands band button-band flap instep heel-flap
	heel-turn cap placket straps strap body-panel panel section lace beginning start main square squares strip strips wedge
	ruffle muzzle snout paws paw feet belly center centre left right first second underarm turn shaping short-rows short-row
	begin cast-on bind-off bottom-border top-border bodice skirt peplum beak nose mane fin fins horn horns handle bib trousers dress tunic
	vest waistcoat jacket cowl headband button-bands neckline cape welt welts`)

// Front reports whether a heading that begins with a word stands over what is read
// by people alone, such as materials and gauge.
func Front(word string) bool { return front[word] }

// Headings over what explains the words of the text, and works nothing.
var explaining = set(`abbreviations abbreviation abbrev note notes key legend glossary terms terminology notation techniques technique
	stitches-used special skill skills tips tip hint hints caption photo photograph figure fig picture image special-abbreviations support
	errata difficulty level construction introduction about`)

// Explaining reports whether a heading of front matter stands over explanations, in which
// stitches are named and not worked.
func Explaining(word string) bool { return explaining[word] }

// Part reports whether a word alone is the heading of a part that is knit.
func Part(word string) bool { return parts[word] }
