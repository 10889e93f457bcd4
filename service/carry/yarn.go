package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/handspun"
	"example.com/knitmath/knitmath/yardage"
)

// yarnService answers YarnService.
type yarnService struct {
	knitmathv1.UnimplementedYarnServiceServer
}

func (yarnService) EstimateYarn(ctx context.Context, req *knitmathv1.EstimateYarnRequest) (*knitmathv1.EstimateYarnResponse, error) {
	return answer(ctx, req, estimateIn, yardage.EstimateYarn, estimateOut)
}

func (yarnService) PlanRemainingYarn(
	ctx context.Context, req *knitmathv1.PlanRemainingYarnRequest,
) (*knitmathv1.PlanRemainingYarnResponse, error) {
	return answer(ctx, req, remainingIn, yardage.PlanRemainingYarn, remainingOut)
}

func (yarnService) PlanHandspun(ctx context.Context, req *knitmathv1.PlanHandspunRequest) (*knitmathv1.PlanHandspunResponse, error) {
	return answer(ctx, req, handspunIn, handspun.PlanHandspun, handspunOut)
}
