package edge

import "example.com/knitmath/knitmath/report"

var _ = []report.Answer{PickUp{}, Buttonholes{}}
