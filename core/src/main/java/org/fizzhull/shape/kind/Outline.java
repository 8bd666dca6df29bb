package org.fizzhull.shape.kind;

/**
 * Planar outline of a prism, with what is left of it when its boundary moves inward along its normals: {@link
 * StarOutline}, {@link HeartOutline}. {@link PrismErosion} makes a body of it.
 */
interface Outline {
    /** Area left at inward distance d, m2. */
    double area(double d);

    /** Length of the boundary that has moved in to d, m: {@code -dA/dd}, the perimeter at 0. */
    double length(double d);

    /**
     * Inward distances at which the formula changes, rising from 0 to the inradius, m. Up to the first of them after 0
     * the area is a square in d.
     */
    double[] breaks();

    /** {@return the distance of the centroid from the nearest line that touches the outline without cutting it, m} */
    double reach();
}
