package shortrow

// Technique says what the words of a way of turning mean, once for all rows that
// have them. For those who print the rows of a [Raise].
func Technique(m TurnMethod) string { return m.explained() }
