package caller

import "time"

// Kind is what a refusal comes to.
type Kind int

const (
	// Unauthenticated: it is not known who calls.
	Unauthenticated Kind = iota
	// Denied: it is known, and may not.
	Denied
	// Limited: it may, but not so much at once.
	Limited
)

// The reasons of refusals.
const (
	KeyRequired      = "KEY_REQUIRED"
	KeyUnknown       = "KEY_UNKNOWN"
	KeyMalformed     = "KEY_MALFORMED"
	OriginNotAllowed = "ORIGIN_NOT_ALLOWED"
	RateLimited      = "RATE_LIMITED"
	BudgetSpent      = "BUDGET_SPENT"
)

// Reasons are all of them.
var Reasons = []string{KeyRequired, KeyUnknown, KeyMalformed, OriginNotAllowed, RateLimited, BudgetSpent}

// Refusal is why a call goes no further.
type Refusal struct {
	Kind   Kind
	Reason string
	Text   string
	// After is when to ask again, of what is Limited.
	After time.Duration
}

// Error makes a refusal the error of the call.
func (r *Refusal) Error() string { return r.Text }

var (
	refusedKeyless = Refusal{Kind: Unauthenticated, Reason: KeyRequired,
		Text: "a key is needed, as Authorization: Bearer KEY or x-api-key: KEY"}
	refusedUnknown = Refusal{Kind: Unauthenticated, Reason: KeyUnknown,
		Text: "no such key"}
	refusedTwoKeys = Refusal{Kind: Unauthenticated, Reason: KeyMalformed,
		Text: "one key only, as Authorization: Bearer KEY or x-api-key: KEY"}
	refusedScheme = Refusal{Kind: Unauthenticated, Reason: KeyMalformed,
		Text: "the Authorization header must be Bearer KEY"}
	refusedOrigin = Refusal{Kind: Denied, Reason: OriginNotAllowed,
		Text: "this key is for the pages it was made for, which say so in the Origin header"}
)

func rateLimited(after time.Duration) *Refusal {
	return &Refusal{Kind: Limited, Reason: RateLimited, After: after, Text: "too many calls from this caller; ask again later"}
}

func budgetSpent(after time.Duration) *Refusal {
	return &Refusal{Kind: Limited, Reason: BudgetSpent, After: after,
		Text: "this caller has asked for more work than it may for now; ask again later, or for less at a time"}
}
