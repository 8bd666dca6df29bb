/**
 * What form has the piece, and what is left of it as it dissolves or dries?
 *
 * <p>Entry: {@link org.fizzhull.shape.ShapeText#read} for shape text, or the factories of the kinds, for example
 * {@link org.fizzhull.shape.Sphere#ofDiameter}. {@link org.fizzhull.shape.Shape} is a plain interface: an embedder may
 * add a kind. Two views carry the rest of the library: the {@link org.fizzhull.shape.Hull}, a closed surface that a plane
 * can cut, and the {@link org.fizzhull.shape.DepthProfile}, the volume and front left at each inward depth.
 *
 * <p>Closed forms: docs/physics/hydrostatics.md, 1. SI; body frame with z up as
 * listed and the origin at the lowest point on the axis. {@link org.fizzhull.shape.MeshShape},
 * {@link org.fizzhull.shape.RevolvedShape} and {@link org.fizzhull.shape.Loaded} are made by the caller, who reads the
 * files. Left out: lift of the closed hollows of meshes, a flat ground on a ball, attitudes of a mould that is known by its
 * volume only.
 */
@NullMarked
package org.fizzhull.shape;

import org.jspecify.annotations.NullMarked;
