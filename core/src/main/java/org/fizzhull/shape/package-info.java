/**
 * What form has the piece, and what is left of it as it dissolves or dries?
 *
 * <p>Entry: {@link org.fizzhull.shape.Shape}, a plain interface: an embedder may add a kind. The kinds that come with
 * the library stand in {@code shape.kind} (closed forms), {@code shape.revolved} (turned from an outline) and
 * {@code shape.meshed} (from triangles); {@code shape.text} reads the text of a shape, and {@code shape.load} puts
 * toppings and insets on one. SI; body frame with z up as listed and the origin at the lowest point on the axis. Left
 * out: opening files, a flat ground on a ball, attitudes of a mould that is known by its volume only.
 */
@NullMarked
package org.fizzhull.shape;

import org.jspecify.annotations.NullMarked;
