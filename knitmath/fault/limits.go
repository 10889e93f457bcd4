package fault

// MaxViolations is the most faults listed of one question. Transports carry
// errors in headers, which are not made for more; a question with a thousand
// wrong items learns of the first hundred.
const MaxViolations = 100

// MaxNameLength is the most characters in a caller's own name for something.
const MaxNameLength = 100
