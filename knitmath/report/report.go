package report

// An Answer says in words what it has in figures.
type Answer interface {
	// Summary is the answer in one or two sentences.
	Summary() string
	// Directions are what to do, step by step; empty where there is nothing to do.
	Directions() []string
	// Sources say where the figures come from.
	Sources() []Source
}

// Reason says, for a machine, what a notice or a finding is about. Reasons are
// public for ever: clients branch on them. Each is a constant of the room that
// gives it, and described in the proto file of its noun.
type Reason string

// A Notice is a remark that does not stop the answer.
type Notice struct {
	Reason Reason
	// Field is the path of the field it is about; empty for the whole question.
	Field string
	// Description is the remark in words.
	Description string
}

// SourceStatus says how far a figure can be trusted, by where it comes from.
type SourceStatus int32

// The statuses of a source.
const (
	SourceStatusUnspecified SourceStatus = iota
	SourceStatusPublished
	SourceStatusCommonPractice
	SourceStatusOwnDerivation
	SourceStatusFromMemory
	// SourceStatusSecondHand is of what was read in somebody else's account of the
	// named work.
	SourceStatusSecondHand
)

// A Source says where one figure of an answer comes from.
type Source struct {
	Figure   string
	Citation string
	Status   SourceStatus
	// Uncertain marks a reading that is itself in doubt, whatever its status.
	Uncertain bool
}
