package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/body"
)

// bodyService answers BodyService.
type bodyService struct {
	knitmathv1.UnimplementedBodyServiceServer
}

func (bodyService) ListBodySizes(ctx context.Context, req *knitmathv1.ListBodySizesRequest) (*knitmathv1.ListBodySizesResponse, error) {
	return answer(ctx, req, bodyListIn, body.ListBodySizes, bodyListOut)
}

func bodyListIn(req *knitmathv1.ListBodySizesRequest) body.ListInput {
	return body.ListInput{Group: body.Group(req.Group), Measure: body.Measure(req.Measure)}
}

func bodyListOut(out body.List) *knitmathv1.ListBodySizesResponse {
	return &knitmathv1.ListBodySizesResponse{
		Summary:    out.Summary(),
		Directions: out.Directions(),
		Notices:    each(out.Notices, noticeOut),
		Sources:    sourcesOut(out.Sources()),
		Rows:       each(out.Rows, bodyListRowOut),
	}
}

func bodyListRowOut(r body.SizeRow) *knitmathv1.BodySizeRow {
	return &knitmathv1.BodySizeRow{
		Group:     knitmathv1.BodyGroup(r.Group),
		Size:      r.Size,
		Measure:   knitmathv1.BodyMeasure(r.Measure),
		LowCm:     r.LowCm,
		HighCm:    r.HighCm,
		LowIn:     r.LowIn,
		HighIn:    r.HighIn,
		Basis:     r.Basis,
		Citation:  r.Citation,
		Status:    knitmathv1.SourceStatus(r.Status),
		Uncertain: r.Uncertain,
	}
}
