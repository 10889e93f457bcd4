package spread

// The sources of what this package gives, for the rooms that answer with it.
const (
	// Cited is the source of every spread of places.
	Cited = "own derivation on the Euclidean spread: Bresenham, IBM Systems Journal 4 (1965) 25-30; " +
		"Toussaint, The Euclidean algorithm generates traditional musical rhythms (2005)"
	// SmallCited is the source of a small fraction near another, from memory.
	SmallCited = "continued fraction with semiconvergents, walked as the tree of fractions: Stern (1858), Brocot (1861); " +
		"Graham, Knuth and Patashnik, Concrete Mathematics, section 4.5"
)
