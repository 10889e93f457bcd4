// Package solid plans knitting that closes round something: the crown of a hat, and the
// closing of any tube by stacks of decreases, which toes and the tops of mittens share; and
// bodies of revolution, such as balls and cones.
//
// A [Closing] knows stitches and rounds alone; who has centimetres turns them into
// rounds first. What lies flat is not here.
package solid
