package shaping

import "example.com/knitmath/knitmath/report"

var _ = []report.Answer{EvenSpacing{}, Taper{}, ShapedSide{}}
