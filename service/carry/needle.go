package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/swatch"
)

func (gaugeService) ListNeedleSizes(
	ctx context.Context, req *knitmathv1.ListNeedleSizesRequest,
) (*knitmathv1.ListNeedleSizesResponse, error) {
	return answer(ctx, req, needleListIn, swatch.ListNeedleSizes, needleListOut)
}

func needleListIn(req *knitmathv1.ListNeedleSizesRequest) swatch.NeedleListInput {
	return swatch.NeedleListInput{System: swatch.NeedleSystem(req.System), MinMm: req.MinMm, MaxMm: req.MaxMm}
}

func needleListOut(out swatch.NeedleList) *knitmathv1.ListNeedleSizesResponse {
	return &knitmathv1.ListNeedleSizesResponse{
		Summary:    out.Summary(),
		Directions: out.Directions(),
		Notices:    each(out.Notices, noticeOut),
		Sources:    sourcesOut(out.Sources()),
		Rows:       each(out.Rows, needleListRowOut),
	}
}

func needleListRowOut(r swatch.NeedleRow) *knitmathv1.NeedleRow {
	return &knitmathv1.NeedleRow{
		Mm:           r.Mm,
		Us:           r.US,
		Uk:           r.UK,
		Japanese:     r.Japanese,
		Disagreement: r.Disagreement,
		Citation:     r.Citation,
		Status:       knitmathv1.SourceStatus(r.Status),
		Uncertain:    r.Uncertain,
		Remark:       r.Remark,
	}
}
