package shortrow

import "example.com/knitmath/knitmath/report"

var _ = []report.Answer{Wedge{}, Circle{}}
