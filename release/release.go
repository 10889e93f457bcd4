// Package release says which release this tree is, or becomes when it is next
// tagged. It is the one place where that is decided: the OpenAPI document has its
// number, and a program built from the tag can be held to it.
package release

// Version is the release, written as its git tag is. It is moved on in the commit
// that is then tagged, after which `go run ./proto/generate` carries it into the
// document. Before v1 the wire may change with the second number.
const Version = "v0.1.0"
