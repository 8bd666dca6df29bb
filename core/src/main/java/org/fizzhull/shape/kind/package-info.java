/**
 * The shapes with closed forms: ball, dome, bowl, geode, puck, egg, ring, block, cone, capsule, star, heart, and a
 * piece of a mould that is known only by the water it holds.
 *
 * <p>Not offered: programs call {@code shape.factory.Shapes}, which has a method for every kind; inside the library a kind is made by
 * its own factories, for example {@link org.fizzhull.shape.kind.Sphere#ofDiameter}. Volumes, areas
 * and depth profiles are exact; the classes named Erosion hold V(d) and A(d) in closed form. Star, heart and rounded
 * block carry a mesh as their hull. SI; sizes are those of the piece, that is, inside the mould. Left out: how their
 * text is read ({@code shape.text}). Closed forms: docs/physics/hydrostatics.md, 1.
 */
@NullMarked
package org.fizzhull.shape.kind;

import org.jspecify.annotations.NullMarked;
