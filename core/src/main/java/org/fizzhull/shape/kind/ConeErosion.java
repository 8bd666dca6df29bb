package org.fizzhull.shape.kind;

import org.fizzhull.geometry.DepthProfile;

/**
 * Frustum with base radius r1, top radius r2 and height h, eroded from side, top and, off a tray, base. With the slope
 * m = (r1 - r2)/h and w = sqrt(1 + m^2) the side moves in horizontally by d w; the top radius falls by d (w - m) and is
 * gone at d = r2 (w + m), from where the rest is a pointed cone. The base, where it moves up, falls by d (w + m), on a
 * tray by d w.
 *
 * <p>V is a cubic in d on each of the two stretches, so a table of cubics is exact. Elementary geometry, derived for
 * this class. Immutable.
 *
 * @param r1 radius of the base, m, above 0
 * @param r2 radius of the top, m, 0 to r1
 * @param h height, m, above 0
 * @param onTray whether the base is shut
 */
record ConeErosion(double r1, double r2, double h, boolean onTray) implements Erosion {
    /** Volume of a frustum, m3. */
    static double frustum(double h, double r1, double r2) {
        return Math.PI * h * (r1 * r1 + r1 * r2 + r2 * r2) / 3;
    }

    /** What is left at each depth, exact. */
    DepthProfile profile() {
        // depth at which top and base meet, if they are still there
        double flat = onTray ? h : h / 2;
        double pointed = pointedFrom();
        if (pointed >= flat) {
            return ProfileTable.cubic(this, 0, flat);
        }
        // An upright side leaves no cone behind: top and base vanish together.
        double deepest = slope() == 0 ? pointed : r1 / baseRate();
        return ProfileTable.cubic(this, 0, pointed, deepest);
    }

    @Override
    public double volume(double d) {
        double base = r1 - d * baseRate();
        if (d >= pointedFrom()) {
            return slope() == 0 ? 0 : Math.PI * base * base * base / (3 * slope());
        }
        return frustum(heightAt(d), base, r2 - d * topRate());
    }

    @Override
    public double front(double d) {
        double base = r1 - d * baseRate();
        if (d >= pointedFrom()) {
            return slope() == 0 ? 0 : Math.PI * base * base * baseRate() / slope();
        }
        double top = r2 - d * topRate();
        double ends = base * base + base * top + top * top;
        double closing = (2 * base + top) * baseRate() + (2 * top + base) * topRate();
        return Math.PI * ((onTray ? 1 : 2) * ends + heightAt(d) * closing) / 3;
    }

    /** Height of what is left, m, while it has a flat top. */
    private double heightAt(double d) {
        return onTray ? h - d : h - 2 * d;
    }

    /** m: fall of the radius over the height. */
    private double slope() {
        return (r1 - r2) / h;
    }

    /** w: horizontal way of the side for each unit of depth. */
    private double secant() {
        return Math.hypot(1, slope());
    }

    /** Fall of the base radius for each unit of depth. */
    private double baseRate() {
        return onTray ? secant() : secant() + slope();
    }

    /** Fall of the top radius for each unit of depth: w - m, written without its cancellation. */
    private double topRate() {
        return 1 / (secant() + slope());
    }

    /** Depth at which the flat top is gone, m. */
    private double pointedFrom() {
        return r2 * (secant() + slope());
    }
}
