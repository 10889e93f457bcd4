package carry

import (
	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/yardage"
)

func remainingIn(req *knitmathv1.PlanRemainingYarnRequest) yardage.RemainingInput {
	return yardage.RemainingInput{
		Yarns:           each(req.Yarns, yarnLeftIn),
		Sections:        each(req.Sections, rowsAheadIn),
		Border:          borderAheadIn(req.Border),
		Stripes:         each(req.Stripes, stripeIn),
		Gauge:           gaugeIn(req.Gauge),
		State:           yardage.FabricState(req.State),
		GaugeOffPercent: req.GaugeOffPercent,
		SharePercents:   req.SharePercents,
		WithOutline:     req.WithOutline,
		DisplayUnit:     measure.DisplayUnit(req.DisplayUnit),
	}
}

func yarnLeftIn(y *knitmathv1.YarnLeft) yardage.YarnLeft {
	if y == nil {
		return yardage.YarnLeft{}
	}
	return yardage.YarnLeft{
		Name:         y.Name,
		LeftG:        y.LeftG,
		LeftM:        y.LeftM,
		ScaleStepG:   y.ScaleStepG,
		PutUp:        putUpIn(y.PutUp),
		Used:         yarnUsedIn(y.Used),
		SharePercent: y.SharePercent,
	}
}

func yarnUsedIn(u *knitmathv1.YarnUsed) *yardage.YarnUsed {
	if u == nil {
		return nil
	}
	return &yardage.YarnUsed{
		MassG:            u.MassG,
		LengthM:          u.LengthM,
		Rows:             optional(u.Rows, countIn),
		FirstRowStitches: countIn(u.FirstRowStitches),
		LastRowStitches:  optional(u.LastRowStitches, countIn),
	}
}

func rowsAheadIn(s *knitmathv1.RowsAhead) yardage.RowsAhead {
	if s == nil {
		return yardage.RowsAhead{}
	}
	return yardage.RowsAhead{
		Name:            s.Name,
		Rows:            optional(s.Rows, countIn),
		Stitches:        optional(s.Stitches, countIn),
		ChangeStitches:  countIn(s.ChangeStitches),
		ChangeEveryRows: optional(s.ChangeEveryRows, countIn),
		RowStitches:     each(s.RowStitches, countIn),
		PatternFactor:   s.PatternFactor,
	}
}

func borderAheadIn(b *knitmathv1.BorderAhead) *yardage.BorderAhead {
	if b == nil {
		return nil
	}
	return &yardage.BorderAhead{
		Rows:          countIn(b.Rows),
		Stitches:      optional(b.Stitches, countIn),
		PatternFactor: b.PatternFactor,
		BindOff:       b.BindOff,
		YarnNumber:    optional(b.YarnNumber, countIn),
	}
}

func stripeIn(s *knitmathv1.Stripe) yardage.Stripe {
	return yardage.Stripe{YarnNumber: countIn(s.GetYarnNumber()), Rows: countIn(s.GetRows())}
}

func remainingOut(out yardage.Remaining) *knitmathv1.PlanRemainingYarnResponse {
	return &knitmathv1.PlanRemainingYarnResponse{
		Lasts:        knitmathv1.YarnLasts(out.Lasts),
		PlannedRows:  optional(out.PlannedRows, countOut),
		MainRows:     countRangeOut(out.MainRows),
		MainStitches: countRangeOut(out.MainStitches),
		Yarns:        each(out.Yarns, remainingYarnOut),
		Marks:        each(out.Marks, workMarkOut),
		Outline:      message(out.Outline, outlineOut),
		Summary:      out.Summary(),
		Directions:   out.Directions(),
		Notices:      each(out.Notices, noticeOut),
		Sources:      sourcesOut(out.Sources()),
	}
}

func remainingYarnOut(y yardage.RemainingYarn) *knitmathv1.RemainingYarn {
	return &knitmathv1.RemainingYarn{
		Name:              y.Name,
		Lasts:             knitmathv1.YarnLasts(y.Lasts),
		LeftG:             message(y.LeftG, rangeOut),
		NeededG:           message(y.NeededG, rangeOut),
		MarginG:           message(y.MarginG, rangeOut),
		LeftM:             message(y.LeftM, rangeOut),
		NeededM:           message(y.NeededM, rangeOut),
		MarginM:           message(y.MarginM, rangeOut),
		EnoughForStitches: rangeOut(y.EnoughForStitches),
		MainRows:          countRangeOut(y.MainRows),
		MoreBalls:         optional(y.MoreBalls, countOut),
		Marks:             each(y.Marks, yarnMarkOut),
		RangeCovers:       y.RangeCovers,
	}
}

func yarnMarkOut(m yardage.YarnMark) *knitmathv1.YarnMark {
	return &knitmathv1.YarnMark{SharePercent: m.SharePercent, Rows: countRangeOut(m.Rows)}
}

func workMarkOut(m yardage.WorkMark) *knitmathv1.WorkMark {
	return &knitmathv1.WorkMark{SharePercent: m.SharePercent, Rows: countOut(m.Rows)}
}

func countRangeOut(r yardage.CountRange) *knitmathv1.CountRange {
	return &knitmathv1.CountRange{
		Low: optional(r.Low, countOut), Likely: optional(r.Likely, countOut), High: optional(r.High, countOut)}
}
