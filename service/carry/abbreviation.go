package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/pattern"
)

func (patternService) ListAbbreviations(
	ctx context.Context, req *knitmathv1.ListAbbreviationsRequest,
) (*knitmathv1.ListAbbreviationsResponse, error) {
	return answer(ctx, req, abbreviationListIn, pattern.ListAbbreviations, abbreviationListOut)
}

func abbreviationListIn(req *knitmathv1.ListAbbreviationsRequest) pattern.AbbreviationListInput {
	return pattern.AbbreviationListInput{Category: pattern.Category(req.Category)}
}

func abbreviationListOut(out pattern.AbbreviationList) *knitmathv1.ListAbbreviationsResponse {
	return &knitmathv1.ListAbbreviationsResponse{
		Summary:    out.Summary(),
		Directions: out.Directions(),
		Notices:    each(out.Notices, noticeOut),
		Sources:    sourcesOut(out.Sources()),
		Rows:       each(out.Rows, abbreviationListRowOut),
	}
}

func abbreviationListRowOut(r pattern.AbbreviationRow) *knitmathv1.AbbreviationRow {
	return &knitmathv1.AbbreviationRow{
		Abbreviation:   r.Abbreviation,
		Meaning:        r.Meaning,
		Category:       knitmathv1.AbbreviationCategory(r.Category),
		TakesStitches:  optional(r.TakesStitches, countOut),
		LeavesStitches: optional(r.LeavesStitches, countOut),
		Disagreement:   r.Disagreement,
		Citation:       r.Citation,
		Status:         knitmathv1.SourceStatus(r.Status),
		Uncertain:      r.Uncertain,
	}
}
