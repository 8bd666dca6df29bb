package org.fizzhull.shape.kind;

import java.util.Arrays;
import org.fizzhull.geometry.DepthProfile;

/**
 * A flat-ended upright body with every edge rounded by e: a core outline K, thickened. K is a disc or a rectangle of
 * area A0, perimeter P0 and inradius a; widened by rho &gt; 0 it covers A0 + P0 rho + pi rho^2, shrunk it covers A0 +
 * P0 rho + c rho^2 with c = pi for a disc and 4 for a rectangle. With k = H - 2e the Steiner formula (Schneider, Convex
 * Bodies, from memory; docs/physics/hydrostatics.md, 1) gives volume and surface; the body inside at depth d is the
 * same with e - d while d &lt; e, and sharp-edged beyond.
 *
 * <p>Exact. Immutable. The body of {@link Puck} and {@link Block}.
 *
 * @param coreArea A0, m2
 * @param corePerimeter P0, m
 * @param coreInradius a, m
 * @param shrinking c, {@link #DISC} or {@link #RECTANGLE}
 * @param height H, m
 * @param edge e, m
 */
record RoundedPrism(
        double coreArea, double corePerimeter, double coreInradius, double shrinking, double height, double edge)
        implements Erosion {
    /** c of a disc. */
    static final double DISC = Math.PI;
    /** c of a rectangle. */
    static final double RECTANGLE = 4;

    /** Area of the core outline moved outward by rho, m2. */
    double section(double rho) {
        return coreArea + rho * (corePerimeter + (rho > 0 ? Math.PI : shrinking) * rho);
    }

    /** Derivative of {@link #section}, m. */
    double sectionRate(double rho) {
        return corePerimeter + 2 * (rho > 0 ? Math.PI : shrinking) * rho;
    }

    /** Volume under or over one rounded rim of radius rho: the section integrated over the quarter arc, m3. */
    double rim(double rho) {
        return rho * (coreArea + rho * (Math.PI * corePerimeter / 4 + 2 * Math.PI * rho / 3));
    }

    /** Derivative of {@link #rim}: flat and rounded rim of one end, m2. */
    double rimRate(double rho) {
        return coreArea + rho * (Math.PI * corePerimeter / 2 + 2 * Math.PI * rho);
    }

    /** Half the least width, m. */
    double inradius() {
        return coreInradius + edge;
    }

    /** What is left at each depth; the outside of a solid body is every face. */
    DepthProfile profile(DepthProfile.Exposure exposure) {
        if (exposure == DepthProfile.Exposure.TRAY) {
            return new OnTray(this).profile();
        }
        return ProfileTable.cubic(this, 0, edge, Math.min(inradius(), height / 2));
    }

    @Override
    public double volume(double d) {
        double rho = edge - d;
        return rho > 0 ? (height - 2 * edge) * section(rho) + 2 * rim(rho) : (height - 2 * d) * section(rho);
    }

    @Override
    public double front(double d) {
        double rho = edge - d;
        return rho > 0
                ? (height - 2 * edge) * sectionRate(rho) + 2 * rimRate(rho)
                : (height - 2 * d) * sectionRate(rho) + 2 * section(rho);
    }

    /**
     * The same body resting on a tray: its lower flat, which is K itself, is shut, the rounded rim about it is open. A
     * point over K lies {@code hypot(inset, z)} from that rim, so at height z &lt; d the section is K shrunk by
     * sqrt(d^2 - z^2): the floor of the remaining body curves up from the flat.
     */
    record OnTray(RoundedPrism body) implements Erosion {
        /** What is left at each depth, its base on the tray. */
        DepthProfile profile() {
            // nothing is left where side and curved floor, or top and curved floor, have met
            double h = body.height;
            double e = body.edge;
            double a = body.coreInradius;
            double deepest = Math.min(body.inradius(), h <= a ? h : (h * h + a * a) / (2 * h));
            if (e == 0) {
                return ProfileTable.cubic(this, 0, deepest);
            }
            // depth at which the curved floor has risen to the top of the side
            double sideGone = h + e - Math.sqrt(2 * h * e);
            // where the rims, the flat under the floor, and the side vanish
            double[] breaks = {0, Math.min(e, deepest), Math.min(a, deepest), Math.min(sideGone, deepest), deepest};
            Arrays.sort(breaks);
            return ProfileTable.graded(this, breaks);
        }

        @Override
        public double volume(double d) {
            double h = body.height;
            double e = body.edge;
            // the rounded rims are still there: floor over the flat, upright part, and both rims
            if (d < e) {
                return floor(d, emptyBelow(d), d) + (h - 2 * e) * body.section(e - d) + 2 * body.rim(e - d);
            }
            // sharp-edged: the curved floor up to where it meets the side, upright above that
            double side = sideFrom(d);
            double under = floor(d, emptyBelow(d), Math.min(side, h - d));
            return side < h - d ? under + (h - d - side) * body.section(e - d) : under;
        }

        @Override
        public double front(double d) {
            double h = body.height;
            double e = body.edge;
            // side and rims move; the flat under the lower rim, the core outline, does not
            if (d < e) {
                return floorRate(d, emptyBelow(d), d)
                        + (h - 2 * e) * body.sectionRate(e - d)
                        + 2 * body.rimRate(e - d)
                        - body.coreArea;
            }
            // the top moves over what is left of it at its height
            double side = sideFrom(d);
            double moving = floorRate(d, emptyBelow(d), Math.min(side, h - d));
            return side < h - d
                    ? moving + (h - d - side) * body.sectionRate(e - d) + body.section(e - d)
                    : moving + body.section(-Math.sqrt(Math.max(0, d * d - (h - d) * (h - d))));
        }

        /** Height below which nothing is left, m. */
        private double emptyBelow(double d) {
            double a = body.coreInradius;
            return d > a ? Math.sqrt((d - a) * (d + a)) : 0;
        }

        /** Height at which the curved floor meets the side, m. */
        private double sideFrom(double d) {
            return Math.sqrt(body.edge * (2 * d - body.edge));
        }

        /** Volume between heights z0 and z1 of the part over the curved floor, m3. */
        private double floor(double d, double z0, double z1) {
            return z1 > z0 ? floorTo(d, z1) - floorTo(d, z0) : 0;
        }

        /** The same from height 0 to z, m3. */
        private double floorTo(double d, double z) {
            // integral of the core shrunk by sqrt(d^2 - z^2): its area, perimeter and shrinking terms
            double s = Math.sqrt(Math.max(0, (d - z) * (d + z)));
            return body.coreArea * z
                    - body.corePerimeter * (z * s + d * d * Math.atan2(z, s)) / 2
                    + body.shrinking * z * (d * d - z * z / 3);
        }

        /** Rate at which that volume between z0 and z1 falls with d, m2. */
        private double floorRate(double d, double z0, double z1) {
            if (!(z1 > z0)) {
                return 0;
            }
            double s0 = Math.sqrt(Math.max(0, (d - z0) * (d + z0)));
            double s1 = Math.sqrt(Math.max(0, (d - z1) * (d + z1)));
            return d
                    * (body.corePerimeter * (Math.atan2(z1, s1) - Math.atan2(z0, s0)) - 2 * body.shrinking * (z1 - z0));
        }
    }
}
