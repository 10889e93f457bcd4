package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/flat"
	"example.com/knitmath/knitmath/measure"
)

// flatService answers FlatService.
type flatService struct {
	knitmathv1.UnimplementedFlatServiceServer
}

func (flatService) PlanFlatShape(ctx context.Context, req *knitmathv1.PlanFlatShapeRequest) (*knitmathv1.PlanFlatShapeResponse, error) {
	return answer(ctx, req, flatIn, flat.PlanFlatShape, flatOut)
}

func flatIn(req *knitmathv1.PlanFlatShapeRequest) flat.Input {
	return flat.Input{
		Gauge:         gaugeIn(req.Gauge),
		Form:          flat.Form(req.Form),
		AcrossCm:      req.AcrossCm,
		HoleCm:        req.HoleCm,
		TurnDegrees:   req.TurnDegrees,
		SideCm:        req.SideCm,
		CornerCount:   optional(req.CornerCount, countIn),
		WidthCm:       req.WidthCm,
		HeightCm:      req.HeightCm,
		LengthCm:      req.LengthCm,
		Direction:     flat.Direction(req.Direction),
		Arrangement:   flat.Arrangement(req.Arrangement),
		WedgeCount:    optional(req.WedgeCount, countIn),
		StartStitches: optional(req.StartStitches, countIn),
		ToleranceRows: req.ToleranceRows,
		DisplayUnit:   measure.DisplayUnit(req.DisplayUnit),
		WithOutline:   req.WithOutline,
		ValleyCm:      req.ValleyCm,
	}
}

func flatOut(out flat.Shape) *knitmathv1.PlanFlatShapeResponse {
	return &knitmathv1.PlanFlatShapeResponse{
		Construction:              knitmathv1.Construction(out.Construction),
		StartStitches:             countOut(out.StartStitches),
		EndStitches:               countOut(out.EndStitches),
		TotalRows:                 countOut(out.TotalRows),
		GrowthStitches:            out.GrowthStitches,
		WedgeCount:                countOut(out.WedgeCount),
		WantedRimStitches:         out.WantedRimStitches,
		GreatestDepartureStitches: out.GreatestDepartureStitches,
		Effort:                    countOut(out.Effort),
		WidthCm:                   out.WidthCm,
		HeightCm:                  out.HeightCm,
		LeanDegrees:               out.LeanDegrees,
		Rows:                      each(out.Rows, flatRowOut),
		Recipes:                   each(out.Recipes, flatRecipeOut),
		Summary:                   out.Summary(),
		Directions:                out.Directions(),
		Notices:                   each(out.Notices, noticeOut),
		Sources:                   sourcesOut(out.Sources()),
		Wedges:                    each(out.Wedges, circleWedgeOut),
		Sequence:                  each(out.Sequence, circleRunOut),
		Outline:                   message(out.Outline, outlineOut),
	}
}

func flatRowOut(r flat.Row) *knitmathv1.FlatRow {
	return &knitmathv1.FlatRow{
		RowNumber:         countOut(r.RowNumber),
		Side:              knitmathv1.Side(r.Side),
		WantedStitches:    r.WantedStitches,
		DepartureStitches: r.DepartureStitches,
		Instruction:       instructionOut(r.Instruction),
	}
}

func flatRecipeOut(r flat.Recipe) *knitmathv1.FlatRecipe {
	return &knitmathv1.FlatRecipe{
		Name:             r.Name,
		GrowthStitches:   r.GrowthStitches,
		RimStitches:      r.RimStitches,
		DeparturePercent: r.DeparturePercent,
		DepartureCm:      r.DepartureCm,
		Effect:           knitmathv1.FlatEffect(r.Effect),
	}
}
