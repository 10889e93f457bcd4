// Package flat is flat shapes that are no garment: discs, rings, sectors, polygons,
// squares, triangles, strips on the bias, from the centre outwards or from the rim
// inwards, growing by what lies flat at the gauge. Shapes made of short rows belong to
// room shortrow, edges that follow a curve to room curve, surfaces in space to room solid.
package flat
