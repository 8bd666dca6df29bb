package org.fizzhull.mesh;

/**
 * What is left of a mesh at inward depths from its open facets, as columns.
 *
 * @param depth rising from 0 to the deepest point, m
 * @param volume left at each depth, m3; the exact volume of the mesh at 0, nothing at the deepest
 * @param area of the moved face at each depth, m2; the exact area of the open facets at 0
 * @param relativeError bound on the relative error of the volume over the first 90 % of the volume
 */
public record DepthColumns(double[] depth, double[] volume, double[] area, double relativeError) {}
