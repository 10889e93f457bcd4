// Package caller decides who may call: by key, by origin and by address, and how
// much. It knows neither HTTP nor gRPC, only what a call of either presents.
//
//	keyfile.go  the file of keys        key.go      a key, and finding it
//	origin.go   where pages come from   address.go  whose address a call has
//	limit.go    how much, by calls and by cost
//	gate.go     the judgement           metrics.go  what is counted of it
package caller
