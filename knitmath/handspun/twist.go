package handspun

import (
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/yardage"
)

var (
	angleCited = report.Source{Figure: "usual angles", Status: report.SourceStatusCommonPractice,
		Citation: "common practice of spinners by hand: 15 degrees at least, 20 soft knitting yarn, 30 to 35 socks"}
	balanceCited = report.Source{Figure: "balanced ply", Status: report.SourceStatusSecondHand,
		Citation: "ply turns equal the turns left in the singles, attributed to Ross, Handspinner's Workbook: " +
			"P = sum of S / (n + 1); 0.9 to 1.125 times that, which for two plies is 0.6 to 0.75 of the singles"}
)

// balancedPly is the ply twist at which as many turns are put in as are left in the singles,
// when all their turns make so many to the cm together:
//
//	P = sum of (S - P) over n plies, so that P = sum of S / (n + 1)
//
// two thirds of the singles' for two plies, three quarters for three. It holds of plies
// of about one thickness, freshly spun; set twist, fibre and washing move it, hence the
// range: 0.6 to 0.75 of the singles for two plies, and in proportion for more.
//
// Source: the condition is attributed to Ross, Handspinner's Workbook (second-hand); the
// solution and its range for more than two plies are own derivation.
func balancedPly(turns float64, n int) yardage.Range {
	p := turns / float64(n+1)
	return yardage.Range{Low: 0.9 * p, Likely: p, High: 1.125 * p}
}
