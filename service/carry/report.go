package carry

import (
	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/report"
)

func noticeOut(n report.Notice) *knitmathv1.Notice {
	return &knitmathv1.Notice{Reason: string(n.Reason), Field: n.Field, Description: n.Description}
}

// sourcesOut has all messages in one piece of memory.
func sourcesOut(from []report.Source) []*knitmathv1.Source {
	messages, to := make([]knitmathv1.Source, len(from)), make([]*knitmathv1.Source, len(from))
	for i, s := range from {
		to[i] = &messages[i]
		to[i].Figure, to[i].Citation, to[i].Status = s.Figure, s.Citation, knitmathv1.SourceStatus(s.Status)
		to[i].Uncertain = doubtOut(s.Uncertain)
	}
	return to
}

// doubtOut is true or nothing: what is not in doubt says nothing of it.
func doubtOut(doubt bool) *bool {
	if !doubt {
		return nil
	}
	return &doubt
}
