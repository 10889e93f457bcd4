package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/yarn"
)

func (yarnService) ConvertYarnCount(
	ctx context.Context, req *knitmathv1.ConvertYarnCountRequest,
) (*knitmathv1.ConvertYarnCountResponse, error) {
	return answer(ctx, req, countConversionIn, yarn.ConvertYarnCount, countConversionOut)
}

func countConversionIn(req *knitmathv1.ConvertYarnCountRequest) yarn.ConvertInput {
	return yarn.ConvertInput{
		Count:       yarnCountIn(req.Count),
		Systems:     each(req.Systems, countSystemIn),
		DisplayUnit: measure.DisplayUnit(req.DisplayUnit),
	}
}

func yarnCountIn(c *knitmathv1.YarnCount) *yarn.Count {
	if c == nil {
		return nil
	}
	return &yarn.Count{
		Notation:           c.Notation,
		Number:             c.Number,
		System:             yarn.CountSystem(c.System),
		Plies:              optional(c.Plies, countIn),
		NumberOf:           yarn.NumberOf(c.NumberOf),
		ContractionPercent: c.ContractionPercent,
	}
}

func countSystemIn(s knitmathv1.CountSystem) yarn.CountSystem { return yarn.CountSystem(s) }

func countConversionOut(out yarn.Conversion) *knitmathv1.ConvertYarnCountResponse {
	return &knitmathv1.ConvertYarnCountResponse{
		Summary:        out.Summary(),
		Directions:     out.Directions(),
		Notices:        each(out.Notices, noticeOut),
		Sources:        sourcesOut(out.Sources()),
		Tex:            out.Tex,
		SingleTex:      out.SingleTex,
		Plies:          countOut(out.Plies),
		System:         knitmathv1.CountSystem(out.System),
		MetresPer_100G: out.MetresPer100G,
		Counts:         each(out.Counts, countInSystemOut),
	}
}

func countInSystemOut(c yarn.CountInSystem) *knitmathv1.CountInSystem {
	return &knitmathv1.CountInSystem{
		System:       knitmathv1.CountSystem(c.System),
		Number:       c.Number,
		SingleNumber: c.SingleNumber,
		Notation:     c.Notation,
		Rule:         c.Rule,
	}
}
