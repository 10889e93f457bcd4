package service

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath"
	"example.com/knitmath/knitmath/pattern"
)

// instructionService answers InstructionService.
type instructionService struct {
	knitmathv1.UnimplementedInstructionServiceServer
}

func (instructionService) CheckInstructions(_ context.Context, req *knitmathv1.CheckInstructionsRequest) (*knitmathv1.CheckInstructionsResponse, error) {
	out, err := knitmath.CheckInstructions(checkInstructionsIn(req))
	if err != nil {
		return nil, asFailure(err)
	}
	return checkedInstructionsOut(out), nil
}

func (instructionService) FormatInstructions(_ context.Context, req *knitmathv1.FormatInstructionsRequest) (*knitmathv1.FormatInstructionsResponse, error) {
	out, err := knitmath.FormatInstructions(formatInstructionsIn(req))
	if err != nil {
		return nil, asFailure(err)
	}
	return writtenInstructionsOut(out), nil
}

func (instructionService) MirrorInstructions(_ context.Context, req *knitmathv1.MirrorInstructionsRequest) (*knitmathv1.MirrorInstructionsResponse, error) {
	out, err := knitmath.MirrorInstructions(mirrorInstructionsIn(req))
	if err != nil {
		return nil, asFailure(err)
	}
	return mirroredInstructionsOut(out), nil
}

func checkInstructionsIn(req *knitmathv1.CheckInstructionsRequest) knitmath.CheckInstructionsInput {
	return knitmath.CheckInstructionsInput{
		Text:          req.Text,
		StitchCounts:  each(req.StitchCounts, countIn),
		Construction:  knitmath.Construction(req.Construction),
		FirstSide:     knitmath.Side(req.FirstSide),
		Abbreviations: each(req.Abbreviations, abbreviationIn),
	}
}

func formatInstructionsIn(req *knitmathv1.FormatInstructionsRequest) knitmath.FormatInstructionsInput {
	return knitmath.FormatInstructionsInput{
		Text:          req.Text,
		Rows:          each(req.Rows, patternRowIn),
		Abbreviations: each(req.Abbreviations, abbreviationIn),
		RepeatStyle:   knitmath.RepeatStyle(req.RepeatStyle),
	}
}

func mirrorInstructionsIn(req *knitmathv1.MirrorInstructionsRequest) knitmath.MirrorInstructionsInput {
	return knitmath.MirrorInstructionsInput{
		Text:          req.Text,
		Rows:          each(req.Rows, patternRowIn),
		Abbreviations: each(req.Abbreviations, abbreviationIn),
		RepeatStyle:   knitmath.RepeatStyle(req.RepeatStyle),
	}
}

func abbreviationIn(a *knitmathv1.Abbreviation) knitmath.Abbreviation {
	return knitmath.Abbreviation{Name: a.GetName(), TakesCount: countIn(a.GetTakesCount()), LeavesCount: countIn(a.GetLeavesCount())}
}

func patternRowIn(r *knitmathv1.PatternRow) knitmath.PatternRow {
	return knitmath.PatternRow{
		Label:          r.GetLabel(),
		Steps:          each(r.GetSteps(), patternStepIn),
		ClaimedCounts:  each(r.GetClaimedCounts(), countIn),
		ClaimedChanges: each(r.GetClaimedChanges(), countIn),
		Direction:      r.GetDirection(),
	}
}

func patternStepIn(s *knitmathv1.PatternStep) knitmath.PatternStep {
	return knitmath.PatternStep{
		Operation:     operationIn(s.GetOperation()),
		Name:          s.GetName(),
		Steps:         each(s.GetSteps(), patternStepIn),
		Counts:        each(s.GetCounts(), countIn),
		LastCounts:    each(s.GetLastCounts(), countIn),
		IntoOneStitch: s.GetIntoOneStitch(),
		Manner:        pattern.SlipManner(s.GetManner()),
	}
}

func patternRowOut(r knitmath.PatternRow) *knitmathv1.PatternRow {
	return &knitmathv1.PatternRow{
		Label:          r.Label,
		Steps:          each(r.Steps, patternStepOut),
		ClaimedCounts:  each(r.ClaimedCounts, countOut),
		ClaimedChanges: each(r.ClaimedChanges, countOut),
		Direction:      r.Direction,
	}
}

func patternStepOut(s knitmath.PatternStep) *knitmathv1.PatternStep {
	return &knitmathv1.PatternStep{
		Operation:     operationOut(s.Operation),
		Name:          s.Name,
		Steps:         each(s.Steps, patternStepOut),
		Counts:        each(s.Counts, countOut),
		LastCounts:    each(s.LastCounts, countOut),
		IntoOneStitch: s.IntoOneStitch,
		Manner:        knitmathv1.SlipManner(s.Manner),
	}
}

func findingOut(f knitmath.Finding) *knitmathv1.Finding {
	return &knitmathv1.Finding{
		Kind:             knitmathv1.FindingKind(f.Kind),
		Reason:           f.Reason,
		Line:             countOut(f.Line),
		Column:           countOut(f.Column),
		Text:             f.Text,
		Description:      f.Description,
		SizeNumbers:      each(f.SizeNumbers, countOut),
		DifferenceCounts: each(f.DifferenceCounts, countOut),
		WorkedRow:        countOut(f.WorkedRow),
	}
}

func checkedLineOut(l knitmath.CheckedLine) *knitmathv1.CheckedLine {
	return &knitmathv1.CheckedLine{
		LineNumber:     countOut(l.LineNumber),
		Label:          l.Label,
		Text:           l.Text,
		Steps:          each(l.Steps, patternStepOut),
		Direction:      l.Direction,
		Side:           knitmathv1.Side(l.Side),
		StartCounts:    each(l.StartCounts, countOut),
		TakenCounts:    each(l.TakenCounts, countOut),
		LeftCounts:     each(l.LeftCounts, countOut),
		UnworkedCounts: each(l.UnworkedCounts, countOut),
		MissingCounts:  each(l.MissingCounts, countOut),
		EndCounts:      each(l.EndCounts, countOut),
		ClaimedCounts:  each(l.ClaimedCounts, countOut),
		ClaimedChanges: each(l.ClaimedChanges, countOut),
	}
}

func checkedInstructionsOut(out knitmath.CheckedInstructions) *knitmathv1.CheckInstructionsResponse {
	return &knitmathv1.CheckInstructionsResponse{
		SizeCount: countOut(out.SizeCount),
		Agrees:    out.Agrees,
		Lines:     each(out.Lines, checkedLineOut),
		EndCounts: each(out.EndCounts, countOut),
		RowCounts: each(out.RowCounts, countOut),
		RowsOpen:  out.RowsOpen,
		Findings:  each(out.Findings, findingOut),
		Summary:   out.Summary(),
		Notices:   each(out.Notices, noticeOut),
		Sources:   each(out.Sources(), sourceOut),
	}
}

func writtenInstructionsOut(out knitmath.WrittenInstructions) *knitmathv1.FormatInstructionsResponse {
	return &knitmathv1.FormatInstructionsResponse{
		SizeCount: countOut(out.SizeCount),
		Text:      out.Text,
		Rows:      each(out.Rows, patternRowOut),
		Findings:  each(out.Findings, findingOut),
		Summary:   out.Summary(),
		Notices:   each(out.Notices, noticeOut),
		Sources:   each(out.Sources(), sourceOut),
	}
}

func mirroredInstructionsOut(out knitmath.MirroredInstructions) *knitmathv1.MirrorInstructionsResponse {
	return &knitmathv1.MirrorInstructionsResponse{
		SizeCount: countOut(out.SizeCount),
		Text:      out.Text,
		Rows:      each(out.Rows, patternRowOut),
		Findings:  each(out.Findings, findingOut),
		Summary:   out.Summary(),
		Notices:   each(out.Notices, noticeOut),
		Sources:   each(out.Sources(), sourceOut),
	}
}
