// Package advice says what would do where a question is refused because its values have no
// answer together: the nearest below and above of each field that may be turned, every one of
// which it has asked. It knows no room's question, only how to turn its fields and to ask it
// again, and what that costs; what is refused, and why, says package fault.
package advice
