package service

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// shapingService answers ShapingService.
type shapingService struct {
	knitmathv1.UnimplementedShapingServiceServer
}

func (shapingService) PlanEvenSpacing(_ context.Context, req *knitmathv1.PlanEvenSpacingRequest) (*knitmathv1.PlanEvenSpacingResponse, error) {
	out, err := shaping.PlanEvenSpacing(spacingIn(req))
	if err != nil {
		return nil, asFailure(err)
	}
	return spacingOut(out), nil
}

func (shapingService) PlanTaper(_ context.Context, req *knitmathv1.PlanTaperRequest) (*knitmathv1.PlanTaperResponse, error) {
	out, err := shaping.PlanTaper(taperIn(req))
	if err != nil {
		return nil, asFailure(err)
	}
	return taperOut(out), nil
}

func (shapingService) PlanShapedSide(_ context.Context, req *knitmathv1.PlanShapedSideRequest) (*knitmathv1.PlanShapedSideResponse, error) {
	out, err := shaping.PlanShapedSide(shapedSideIn(req))
	if err != nil {
		return nil, asFailure(err)
	}
	return shapedSideOut(out), nil
}

func spacingIn(req *knitmathv1.PlanEvenSpacingRequest) shaping.EvenSpacingInput {
	return shaping.EvenSpacingInput{
		StartCount:   countIn(req.StartCount),
		EndCount:     countIn(req.EndCount),
		Operation:    operationIn(req.Operation),
		Construction: stitch.Construction(req.Construction),
		EdgeCount:    optional(req.EdgeCount, countIn),
		Order:        shaping.SpacingOrder(req.Order),
		WithOutline:  req.WithOutline,
	}
}

func spacingOut(out shaping.EvenSpacing) *knitmathv1.PlanEvenSpacingResponse {
	return &knitmathv1.PlanEvenSpacingResponse{
		Operation:     operationOut(out.Operation),
		ChangeCount:   countOut(out.ChangeCount),
		PlainCount:    countOut(out.PlainCount),
		FirstGapCount: countOut(out.FirstGapCount),
		Gaps:          each(out.Gaps, gapRunOut),
		LastGapCount:  countOut(out.LastGapCount),
		Instruction:   instructionOut(out.Instruction),
		Summary:       out.Summary(),
		Notices:       each(out.Notices, noticeOut),
		Sources:       each(out.Sources(), sourceOut),
		Outline:       message(out.Outline, outlineOut),
	}
}

func gapRunOut(g spread.GapRun) *knitmathv1.GapRun {
	return &knitmathv1.GapRun{StitchCount: countOut(g.StitchCount), Times: countOut(g.Times)}
}
