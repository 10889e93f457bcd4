package report

// A Notice is a remark that does not stop the answer.
type Notice struct {
	// Reason is machine-readable and public for ever.
	Reason string
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
)

// A Source says where one figure of an answer comes from.
type Source struct {
	Figure   string
	Citation string
	Status   SourceStatus
}
