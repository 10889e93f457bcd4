package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/yarn"
)

func (yarnService) CompareYarns(ctx context.Context, req *knitmathv1.CompareYarnsRequest) (*knitmathv1.CompareYarnsResponse, error) {
	return answer(ctx, req, comparisonIn, yarn.CompareYarns, comparisonOut)
}

func comparisonIn(req *knitmathv1.CompareYarnsRequest) yarn.CompareInput {
	return yarn.CompareInput{
		First:          comparedIn(req.First),
		Second:         comparedIn(req.Second),
		FirstBallCount: optional(req.FirstBallCount, countIn),
		FirstLengthM:   req.FirstLengthM,
		DisplayUnit:    measure.DisplayUnit(req.DisplayUnit),
	}
}

func comparedIn(y *knitmathv1.ComparedYarn) *yarn.ComparedYarn {
	if y == nil {
		return nil
	}
	return &yarn.ComparedYarn{
		PutUp:        putUpIn(y.PutUp),
		Count:        yarnCountIn(y.Count),
		Strands:      optional(y.Strands, countIn),
		WrapsPerInch: y.WrapsPerInch,
		Stitches:     y.Stitches,
		OverCm:       y.OverCm,
		Fibres:       each(y.Fibres, fibreIn),
		Plies:        optional(y.Plies, countIn),
	}
}

func fibreIn(s *knitmathv1.FibreShare) yarn.FibreShare {
	return yarn.FibreShare{Fibre: yarn.Fibre(s.GetFibre()), Percent: s.GetPercent()}
}

func comparisonOut(out yarn.Comparison) *knitmathv1.CompareYarnsResponse {
	return &knitmathv1.CompareYarnsResponse{
		Summary:              out.Summary(),
		Directions:           out.Directions(),
		Notices:              each(out.Notices, noticeOut),
		Sources:              sourcesOut(out.Sources()),
		Verdict:              knitmathv1.Verdict(out.Verdict),
		Aspects:              each(out.Aspects, aspectOut),
		FirstTex:             out.FirstTex,
		SecondTex:            out.SecondTex,
		FirstMetresPer_100G:  out.FirstMetresPer100G,
		SecondMetresPer_100G: out.SecondMetresPer100G,
		ThicknessRatio:       out.ThicknessRatio,
		FirstCategories:      each(out.FirstCategories, countOut),
		SecondCategories:     each(out.SecondCategories, countOut),
		FirstWrapsPerInch:    out.FirstWrapsPerInch,
		SecondWrapsPerInch:   out.SecondWrapsPerInch,
		NeededM:              out.NeededM,
		NeededG:              out.NeededG,
		SecondBallCount:      optional(out.SecondBallCount, countOut),
	}
}

func aspectOut(a yarn.AspectResult) *knitmathv1.AspectResult {
	return &knitmathv1.AspectResult{Aspect: knitmathv1.YarnAspect(a.Aspect), Verdict: knitmathv1.Verdict(a.Verdict), Why: a.Why}
}
