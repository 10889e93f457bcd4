package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/pattern"
	"example.com/knitmath/knitmath/stitch"
)

// patternService answers PatternService.
type patternService struct {
	knitmathv1.UnimplementedPatternServiceServer
}

func (patternService) CheckInstructions(
	ctx context.Context, req *knitmathv1.CheckInstructionsRequest,
) (*knitmathv1.CheckInstructionsResponse, error) {
	check := func(in pattern.CheckInstructionsInput) (pattern.CheckedInstructions, error) {
		return pattern.CheckInstructions(ctx, in)
	}
	return answer(ctx, req, checkInstructionsIn, check, checkedInstructionsOut)
}

func (patternService) FormatInstructions(
	ctx context.Context, req *knitmathv1.FormatInstructionsRequest,
) (*knitmathv1.FormatInstructionsResponse, error) {
	return answer(ctx, req, formatInstructionsIn, pattern.FormatInstructions, writtenInstructionsOut)
}

func (patternService) MirrorInstructions(
	ctx context.Context, req *knitmathv1.MirrorInstructionsRequest,
) (*knitmathv1.MirrorInstructionsResponse, error) {
	return answer(ctx, req, mirrorInstructionsIn, pattern.MirrorInstructions, mirroredInstructionsOut)
}

func checkInstructionsIn(req *knitmathv1.CheckInstructionsRequest) pattern.CheckInstructionsInput {
	return pattern.CheckInstructionsInput{
		Text:          req.Text,
		StartStitches: each(req.StartStitches, countIn),
		Construction:  stitch.Construction(req.Construction),
		FirstSide:     stitch.Side(req.FirstSide),
		Abbreviations: each(req.Abbreviations, abbreviationIn),
		WithProof:     req.WithProof,
		WithRuns:      req.WithRuns,
	}
}

func formatInstructionsIn(req *knitmathv1.FormatInstructionsRequest) pattern.FormatInstructionsInput {
	return pattern.FormatInstructionsInput{
		Text:          req.Text,
		Rows:          each(req.Rows, patternRowIn),
		Abbreviations: each(req.Abbreviations, abbreviationIn),
		RepeatStyle:   pattern.RepeatStyle(req.RepeatStyle),
	}
}

func mirrorInstructionsIn(req *knitmathv1.MirrorInstructionsRequest) pattern.MirrorInstructionsInput {
	return pattern.MirrorInstructionsInput{
		Text:          req.Text,
		Rows:          each(req.Rows, patternRowIn),
		Abbreviations: each(req.Abbreviations, abbreviationIn),
		RepeatStyle:   pattern.RepeatStyle(req.RepeatStyle),
	}
}

func abbreviationIn(a *knitmathv1.Abbreviation) pattern.Abbreviation {
	return pattern.Abbreviation{Name: a.GetName(), TakesStitches: countIn(a.GetTakesStitches()),
		LeavesStitches: countIn(a.GetLeavesStitches())}
}

func patternRowIn(r *knitmathv1.PatternRow) pattern.Row {
	return pattern.Row{
		Label:                 r.GetLabel(),
		Steps:                 each(r.GetSteps(), patternStepIn),
		ClaimedStitches:       each(r.GetClaimedStitches(), countIn),
		ClaimedChangeStitches: each(r.GetClaimedChangeStitches(), countIn),
		Direction:             r.GetDirection(),
	}
}

func patternStepIn(s *knitmathv1.PatternStep) pattern.Step {
	return pattern.Step{
		Operation:            operationIn(s.GetOperation()),
		Name:                 s.GetName(),
		Steps:                each(s.GetSteps(), patternStepIn),
		Times:                each(s.GetTimes(), countIn),
		RemainingStitches:    each(s.GetRemainingStitches(), countIn),
		BeforeMarkerStitches: each(s.GetBeforeMarkerStitches(), countIn),
		IntoOneStitch:        s.GetIntoOneStitch(),
		Manner:               pattern.SlipManner(s.GetManner()),
	}
}

func patternRowOut(r pattern.Row) *knitmathv1.PatternRow {
	return &knitmathv1.PatternRow{
		Label:                 r.Label,
		Steps:                 each(r.Steps, patternStepOut),
		ClaimedStitches:       each(r.ClaimedStitches, countOut),
		ClaimedChangeStitches: each(r.ClaimedChangeStitches, countOut),
		Direction:             r.Direction,
	}
}

func patternStepOut(s pattern.Step) *knitmathv1.PatternStep {
	return &knitmathv1.PatternStep{
		Operation:            operationOut(s.Operation),
		Name:                 s.Name,
		Steps:                each(s.Steps, patternStepOut),
		Times:                each(s.Times, countOut),
		RemainingStitches:    each(s.RemainingStitches, countOut),
		BeforeMarkerStitches: each(s.BeforeMarkerStitches, countOut),
		IntoOneStitch:        s.IntoOneStitch,
		Manner:               knitmathv1.SlipManner(s.Manner),
	}
}

func findingOut(f pattern.Finding) *knitmathv1.Finding {
	return &knitmathv1.Finding{
		Kind:               knitmathv1.FindingKind(f.Kind),
		Reason:             string(f.Reason),
		LineNumber:         countOut(f.LineNumber),
		ColumnNumber:       countOut(f.ColumnNumber),
		Text:               f.Text,
		Description:        f.Description,
		SizeNumbers:        each(f.SizeNumbers, countOut),
		DifferenceStitches: each(f.DifferenceStitches, countOut),
		WorkedRowNumber:    countOut(f.WorkedRowNumber),
		Corrections:        each(f.Corrections, correctionOut),
	}
}

func correctionOut(c pattern.Correction) *knitmathv1.Correction {
	return &knitmathv1.Correction{
		LineNumber:   countOut(c.LineNumber),
		ColumnNumber: countOut(c.ColumnNumber),
		Text:         c.Text,
		Replacement:  c.Replacement,
		Description:  c.Description,
	}
}

func rowRunOut(r pattern.RowRun) *knitmathv1.RowRun {
	return &knitmathv1.RowRun{
		SizeNumber:     countOut(r.SizeNumber),
		FirstRowNumber: countOut(r.FirstRowNumber),
		LinePlaces:     each(r.LinePlaces, countOut),
		Times:          countOut(r.Times),
		StartStitches:  countOut(r.StartStitches),
		ChangeStitches: each(r.ChangeStitches, countOut),
	}
}

func checkedLineOut(l pattern.CheckedLine) *knitmathv1.CheckedLine {
	return &knitmathv1.CheckedLine{
		LineNumber:            countOut(l.LineNumber),
		Label:                 l.Label,
		Text:                  l.Text,
		Steps:                 each(l.Steps, patternStepOut),
		Direction:             l.Direction,
		Side:                  knitmathv1.Side(l.Side),
		StartStitches:         each(l.StartStitches, countOut),
		TakenStitches:         each(l.TakenStitches, countOut),
		LeftStitches:          each(l.LeftStitches, countOut),
		UnworkedStitches:      each(l.UnworkedStitches, countOut),
		MissingStitches:       each(l.MissingStitches, countOut),
		EndStitches:           each(l.EndStitches, countOut),
		ClaimedStitches:       each(l.ClaimedStitches, countOut),
		ClaimedChangeStitches: each(l.ClaimedChangeStitches, countOut),
	}
}

func checkedInstructionsOut(out pattern.CheckedInstructions) *knitmathv1.CheckInstructionsResponse {
	return &knitmathv1.CheckInstructionsResponse{
		SizeCount:   countOut(out.SizeCount),
		Agrees:      out.Agrees,
		Lines:       each(out.Lines, checkedLineOut),
		EndStitches: each(out.EndStitches, countOut),
		WorkedRows:  each(out.WorkedRows, countOut),
		RowsOpen:    out.RowsOpen,
		Findings:    each(out.Findings, findingOut),
		Proof:       out.Proof,
		Runs:        each(out.Runs, rowRunOut),
		Summary:     out.Summary(),
		Directions:  out.Directions(),
		Notices:     each(out.Notices, noticeOut),
		Sources:     sourcesOut(out.Sources()),
	}
}

func writtenInstructionsOut(out pattern.WrittenInstructions) *knitmathv1.FormatInstructionsResponse {
	return &knitmathv1.FormatInstructionsResponse{
		SizeCount:  countOut(out.SizeCount),
		Text:       out.Text,
		Rows:       each(out.Rows, patternRowOut),
		Findings:   each(out.Findings, findingOut),
		Summary:    out.Summary(),
		Directions: out.Directions(),
		Notices:    each(out.Notices, noticeOut),
		Sources:    sourcesOut(out.Sources()),
	}
}

func mirroredInstructionsOut(out pattern.MirroredInstructions) *knitmathv1.MirrorInstructionsResponse {
	return &knitmathv1.MirrorInstructionsResponse{
		SizeCount:  countOut(out.SizeCount),
		Text:       out.Text,
		Rows:       each(out.Rows, patternRowOut),
		Findings:   each(out.Findings, findingOut),
		Summary:    out.Summary(),
		Directions: out.Directions(),
		Notices:    each(out.Notices, noticeOut),
		Sources:    sourcesOut(out.Sources()),
	}
}
