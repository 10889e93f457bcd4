package main

// What a step of a price may take, and what every question may take beside its
// price: a refusal has a text, an answer its summary and sources.
const (
	Ground        = 100  // steps
	BlocksPerStep = 2000 // basic blocks of the kernel
	BytesPerStep  = 500  // from one message to the other
	MostBytes     = 16_000_000
)
