// Package body is how large people are: the trade's size charts and measured bodies, each
// figure with its source and how sure it is. It adds no ease and shapes nothing, and it
// never guesses a measure that no source here has: that is asked of the person.
package body
