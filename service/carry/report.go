package carry

import (
	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/report"
)

func noticeOut(n report.Notice) *knitmathv1.Notice {
	return &knitmathv1.Notice{Reason: string(n.Reason), Field: n.Field, Description: n.Description}
}

func sourceOut(s report.Source) *knitmathv1.Source {
	return &knitmathv1.Source{Figure: s.Figure, Citation: s.Citation, Status: knitmathv1.SourceStatus(s.Status),
		Uncertain: doubtOut(s.Uncertain)}
}

// doubtOut is true or nothing: what is not in doubt says nothing of it.
func doubtOut(doubt bool) *bool {
	if !doubt {
		return nil
	}
	return &doubt
}
