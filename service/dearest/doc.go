// Command dearest looks for the questions that take the most, and measures those
// that it found before. It is for the gate, which runs it through its own test, and
// for whoever changes a planner.
//
// What a question takes is counted, not timed: the basic blocks of the kernel that
// ran, as the counters of coverage have them, and the bytes allocated. Both are the
// same on any machine. The counters see every loop, those that allocate nothing too,
// and nobody has to keep them; what they do not see is the standard library, which
// works on what was allocated. They are there only in a program that is built so:
//
//	go build -cover -covermode=atomic -coverpkg=example.com/knitmath/knitmath/...,example.com/knitmath/service/dearest \
//		-o /tmp/dearest ./service/dearest
//	GOCOVERDIR=/tmp /tmp/dearest -climb 2000 -seed 7 -method PlanWedge
//
// Built plainly it times the same questions, which is where the table in
// DEVELOPERS.md comes from:
//
//	go run ./service/dearest -time
package main
