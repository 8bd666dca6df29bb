package org.fizzhull.geometry;

import java.io.Serializable;

/**
 * Size of the axis-parallel box around a shape in its body frame: x and y level, z up as the shape is listed.
 *
 * @param length along x, m
 * @param width along y, m
 * @param height along z, m
 */
public record Extents(double length, double width, double height) implements Serializable {}
