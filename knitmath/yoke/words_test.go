package yoke

import "example.com/knitmath/knitmath/report"

var (
	_ report.Answer = Circular{}
	_ report.Answer = Raglan{}
)
