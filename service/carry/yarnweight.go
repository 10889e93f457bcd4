package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/yarn"
)

func (yarnService) ListYarnWeights(
	ctx context.Context, req *knitmathv1.ListYarnWeightsRequest,
) (*knitmathv1.ListYarnWeightsResponse, error) {
	return answer(ctx, req, weightListIn, yarn.ListYarnWeights, weightListOut)
}

func weightListIn(req *knitmathv1.ListYarnWeightsRequest) yarn.WeightListInput {
	return yarn.WeightListInput{Category: optional(req.Category, countIn)}
}

func weightListOut(out yarn.WeightList) *knitmathv1.ListYarnWeightsResponse {
	return &knitmathv1.ListYarnWeightsResponse{
		Summary:    out.Summary(),
		Directions: out.Directions(),
		Notices:    each(out.Notices, noticeOut),
		Sources:    sourcesOut(out.Sources()),
		Rows:       each(out.Rows, weightListRowOut),
	}
}

func weightListRowOut(r yarn.WeightRow) *knitmathv1.WeightRow {
	return &knitmathv1.WeightRow{
		Category:                  countOut(r.Category),
		Name:                      r.Name,
		OtherNames:                r.OtherNames,
		LowStitches:               optional(r.LowStitches, countOut),
		HighStitches:              countOut(r.HighStitches),
		LowNeedleMm:               r.LowNeedleMm,
		HighNeedleMm:              r.HighNeedleMm,
		LowNeedleUs:               r.LowNeedleUS,
		HighNeedleUs:              r.HighNeedleUS,
		LowWrapsPerInch:           r.LowWrapsPerInch,
		HighWrapsPerInch:          r.HighWrapsPerInch,
		LowSpinnersWrapsPerInch:   r.LowSpinnersWrapsPerInch,
		HighSpinnersWrapsPerInch:  r.HighSpinnersWrapsPerInch,
		LowSpinnersYardsPerPound:  r.LowSpinnersYardsPerPound,
		HighSpinnersYardsPerPound: r.HighSpinnersYardsPerPound,
		Remark:                    r.Remark,
		Citation:                  r.Citation,
		Status:                    knitmathv1.SourceStatus(r.Status),
		Uncertain:                 r.Uncertain,
	}
}
