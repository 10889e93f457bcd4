// Package swatch makes a gauge out of readings: mean and scatter, the change on
// washing, what the scatter does to a size, and what yarn and needle the trade
// would call it. It plans nothing, and takes no gauge for granted: whoever has one
// already has no business here.
package swatch
