package carry

import (
	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/yardage"
	"example.com/knitmath/knitmath/yarn"
)

func estimateIn(req *knitmathv1.EstimateYarnRequest) yardage.EstimateInput {
	return yardage.EstimateInput{
		Gauge:             gaugeIn(req.Gauge),
		StitchGauge:       stitchGaugeIn(req.StitchGauge),
		GaugeOffPercent:   req.GaugeOffPercent,
		Edges:             each(req.Edges, edgeWorkIn),
		Fringe:            fringeIn(req.Fringe),
		Pompoms:           pompomsIn(req.Pompoms),
		ColourWork:        yardage.ColourWork(req.ColourWork),
		SlippedPercent:    req.SlippedPercent,
		FloatSlackPercent: req.FloatSlackPercent,
		BallWasteM:        req.BallWasteM,
		SpareBalls:        countIn(req.SpareBalls),
		Pieces:            each(req.Pieces, pieceIn),
		State:             yardage.FabricState(req.State),
		Swatch:            weighedIn(req.Swatch),
		PutUp:             putUpIn(req.PutUp),
		ReservePercent:    req.ReservePercent,
		Colours:           each(req.Colours, shareIn),
		DyeLot:            yardage.DyeLot(req.DyeLot),
		WithOutline:       req.WithOutline,
		DisplayUnit:       measure.DisplayUnit(req.DisplayUnit),
	}
}

func weighedIn(s *knitmathv1.WeighedSwatch) *yardage.WeighedSwatch {
	if s == nil {
		return nil
	}
	return &yardage.WeighedSwatch{MassG: s.MassG, WidthCm: s.WidthCm, HeightCm: s.HeightCm, ScaleStepG: s.ScaleStepG,
		RulerStepCm: s.RulerStepCm}
}

func putUpIn(p *knitmathv1.PutUp) *yarn.PutUp {
	if p == nil {
		return nil
	}
	return &yarn.PutUp{BallM: p.BallM, BallG: p.BallG}
}

func shareIn(s *knitmathv1.ColourShare) yardage.ColourShare {
	return yardage.ColourShare{Name: s.GetName(), SharePercent: s.GetSharePercent()}
}

func estimateOut(out yardage.Estimate) *knitmathv1.EstimateYarnResponse {
	return &knitmathv1.EstimateYarnResponse{
		ByLoop:       methodOut(out.ByLoop),
		BySwatch:     message(out.BySwatch, methodOut),
		LoopLengthCm: out.LoopLengthCm,
		LoopConstant: out.LoopConstant,
		RowsToStitch: out.RowsToStitch,
		Stitches:     out.Stitches,
		AreaCm2:      out.AreaCm2,
		Pieces:       each(out.Pieces, pieceOut),
		Edges:        each(out.Edges, edgeYarnOut),
		TrimmingsM:   message(out.TrimmingsM, rangeOut),
		LeftOverM:    message(out.LeftOverM, rangeOut),
		LengthM:      rangeOut(out.LengthM),
		MassG:        message(out.MassG, rangeOut),
		BallCount:    optional(out.BallCount, countOut),
		Colours:      each(out.Colours, colourOut),
		Outline:      message(out.Outline, outlineOut),
		Summary:      out.Summary(),
		Directions:   out.Directions(),
		Notices:      each(out.Notices, noticeOut),
		Sources:      sourcesOut(out.Sources()),
	}
}

func methodOut(m yardage.MethodResult) *knitmathv1.YarnMethodResult {
	return &knitmathv1.YarnMethodResult{
		LengthM:     message(m.LengthM, rangeOut),
		MassG:       message(m.MassG, rangeOut),
		RangeCovers: m.RangeCovers,
	}
}

func rangeOut(r yardage.Range) *knitmathv1.YarnRange {
	return &knitmathv1.YarnRange{Low: r.Low, Likely: r.Likely, High: r.High}
}

func colourOut(c yardage.ColourYarn) *knitmathv1.ColourYarn {
	return &knitmathv1.ColourYarn{
		Name:      c.Name,
		LengthM:   rangeOut(c.LengthM),
		MassG:     message(c.MassG, rangeOut),
		BallCount: optional(c.BallCount, countOut),
	}
}

// pieceIn carries a piece. Its shape is one of three on the wire and three
// pointers, at most one of them set, in the kernel.
func pieceIn(p *knitmathv1.Piece) yardage.Piece {
	piece := yardage.Piece{
		Name:          p.GetName(),
		Times:         optional(p.Times, countIn),
		Pattern:       yardage.StitchPattern(p.GetPattern()),
		PatternFactor: p.PatternFactor,
		Gauge:         gaugeIn(p.GetGauge()),
	}
	if c := p.GetCounted(); c != nil {
		piece.Counted = &yardage.CountedPiece{Stitches: countIn(c.Stitches), Rows: countIn(c.Rows)}
	}
	if t := p.GetTrapezoid(); t != nil {
		piece.Trapezoid = &yardage.TrapezoidPiece{
			StartWidthCm: t.StartWidthCm, EndWidthCm: t.EndWidthCm, HeightCm: t.HeightCm}
	}
	if r := p.GetRowwise(); r != nil {
		piece.Rowwise = &yardage.RowwisePiece{RowStitches: each(r.RowStitches, countIn)}
	}
	return piece
}

func pieceOut(p yardage.PieceYarn) *knitmathv1.PieceYarn {
	return &knitmathv1.PieceYarn{Name: p.Name, Stitches: p.Stitches, AreaCm2: p.AreaCm2, LengthM: p.LengthM,
		LoopLengthCm: p.LoopLengthCm, LoopConstant: p.LoopConstant}
}

func stitchGaugeIn(g *knitmathv1.StitchGauge) *yardage.StitchGauge {
	if g == nil {
		return nil
	}
	return &yardage.StitchGauge{Stitches: g.Stitches, OverCm: g.OverCm}
}

func edgeWorkIn(e *knitmathv1.EdgeWork) yardage.EdgeWork {
	if e == nil {
		return yardage.EdgeWork{}
	}
	return yardage.EdgeWork{
		Name:     e.Name,
		Kind:     yardage.EdgeKind(e.Kind),
		Stitches: optional(e.Stitches, countIn),
		LengthCm: e.LengthCm,
		Times:    optional(e.Times, countIn),
	}
}

func fringeIn(f *knitmathv1.Fringe) *yardage.Fringe {
	if f == nil {
		return nil
	}
	return &yardage.Fringe{Tassels: countIn(f.Tassels), Strands: optional(f.Strands, countIn), FinishedCm: f.FinishedCm, KnotCm: f.KnotCm}
}

func pompomsIn(p *knitmathv1.Pompoms) *yardage.Pompoms {
	if p == nil {
		return nil
	}
	return &yardage.Pompoms{Times: optional(p.Times, countIn), DiameterCm: p.DiameterCm, Windings: countIn(p.Windings)}
}

func edgeYarnOut(e yardage.EdgeYarn) *knitmathv1.EdgeYarn {
	return &knitmathv1.EdgeYarn{Name: e.Name, LengthCm: e.LengthCm, LengthM: rangeOut(e.LengthM), TailCm: e.TailCm}
}
