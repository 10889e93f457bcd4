// Package service is the transport around package knitmath: gRPC, the JSON face
// over it, errors, metrics and the lifecycle of one process. It carries questions
// in and answers out and decides nothing about knitting.
//
// A question takes the same way on both faces:
//
//	gRPC:  network -> release -> metrics -> log -> recovery -> handler -> knitmath
//	JSON:  network -> release -> http metrics -> recovery -> strict reading
//	               -> metrics -> log -> recovery -> handler -> knitmath
package service
