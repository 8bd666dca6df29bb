package org.fizzhull.shape.kind;

import org.fizzhull.geometry.DepthProfile;

/**
 * Frustum with base radius r1, top radius r2 and height h, eroded from side, top and, off a tray, base. With the slope
 * m = (r1 - r2)/h and w = sqrt(1 + m^2) the side moves in horizontally by d w; the top radius falls by d (w - m) and is
 * gone at d = r2 (w + m), from where the rest is a pointed cone.
 */
record ConeErosion(double r1, double r2, double h, boolean onTray) implements Erosion {
    static double frustum(double h, double r1, double r2) {
        return Math.PI * h * (r1 * r1 + r1 * r2 + r2 * r2) / 3;
    }

    DepthProfile profile() {
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

    private double heightAt(double d) {
        return onTray ? h - d : h - 2 * d;
    }

    private double slope() {
        return (r1 - r2) / h;
    }

    private double secant() {
        return Math.hypot(1, slope());
    }

    private double baseRate() {
        return onTray ? secant() : secant() + slope();
    }

    /** w - m, written without its cancellation. */
    private double topRate() {
        return 1 / (secant() + slope());
    }

    private double pointedFrom() {
        return r2 * (secant() + slope());
    }
}
