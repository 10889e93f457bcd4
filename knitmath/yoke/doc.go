// Package yoke joins a body and its sleeves on one needle and narrows them to
// the neck: circular yokes, with bands of pattern and a raised back, and raglans.
//
// Whatever is shaped on one piece alone is not here, nor what is picked up at
// the neck afterwards.
//
// A question goes through stages, each judged only where all before it are sound.
// Functions named vet ask whether values may be so; those named settle work one
// out, defaults included, and say what stands in its way.
package yoke
