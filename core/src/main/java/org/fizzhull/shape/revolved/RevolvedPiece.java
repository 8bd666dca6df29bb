package org.fizzhull.shape.revolved;

import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.numeric.GaussLegendre;

/**
 * One piece of a meridian as a solid of revolution, cut by the plane {@code S x + C z = c} with S >= 0: the body frame
 * turned about its axis so that the plane leans in x. At height z the section is a disc of radius f(z); the part of it
 * with x at most t(z) = (c - C z)/S is a circular segment with closed forms. These are integrated along the plane with
 * sigma the distance from the foot of the origin: z = c C + S sigma, t = c S - C sigma, so that nothing is divided by a
 * small S.
 *
 * <p>The half chord h = sqrt(f^2 - t^2) ends in square roots where the plane enters or leaves the solid, t = +-f. Those
 * points are roots of a line (straight piece) or of A cos + B sin = D (arc, in its own angle), found in closed form;
 * the integrals are split there and a substitution takes the square roots away: sine where both ends lie on or near a
 * root, y^2 where one does. Then 32 Gauss points give volumes to about 1e-14 of the body and areas to 1e-13, at worst
 * 1e-11 where a plane all but touches the hole of a ring (measured against the same bodies cut in seven pieces).
 *
 * <p>Sums go into the holder in the turned frame: mx and mz are moments in x and z, ax holds the integral of sigma, jww
 * of sigma^2 over the cut face; {@link RevolvedHull} turns them back.
 */
final class RevolvedPiece {
    /** Below this slope an arc is integrated along sigma, in which it is nearly a cylinder. */
    private static final double FLAT = 1e-4;

    /** The piece. */
    private final Profile2D.Piece piece;
    /** 1 where the piece adds volume, -1 where it takes it away. */
    private final double sign;
    /** Height of the lower end, m. */
    private final double z0;
    /** Height of the upper end, m. */
    private final double z1;
    /** Radius at the lower end, m. */
    private final double r0;
    /** dr/dz of a straight piece. */
    private final double slope;
    /** 0 for a line; for an elliptic arc the side away from the axis, 1, or towards it, -1. */
    private final int bulge;
    /** Height of the centre of the ellipse, m. */
    private final double zc;
    /** Radius at which that centre lies, m. */
    private final double rc;
    /** Half width of the ellipse, m. */
    private final double p;
    /** Half height of the ellipse, m. */
    private final double q;
    /** Angle of the lower end of an arc, rad, -pi/2 to pi/2. */
    private final double lowAngle;
    /** Angle of its upper end, rad. */
    private final double highAngle;
    /** Largest radius, m, for an arc that of its middle. */
    private final double widest;
    /** Unsigned volume, m3. */
    private final double volume;
    /** Unsigned first moment in z, m4. */
    private final double moment;

    /** A piece of a profile, with what does not depend on the plane worked out once. */
    RevolvedPiece(Profile2D.Piece piece) {
        this.piece = piece;
        sign = piece.inner() ? -1 : 1;
        z0 = piece.z0();
        z1 = piece.z1();
        r0 = piece.r0();
        slope = (piece.r1() - piece.r0()) / (z1 - z0);
        bulge = piece.bulge();
        zc = piece.zc();
        rc = piece.rc();
        p = piece.p();
        q = piece.q();
        lowAngle = bulge == 0 ? 0 : ProfileFaces.angle(piece, z0);
        highAngle = bulge == 0 ? 0 : ProfileFaces.angle(piece, z1);
        widest = bulge == 0 ? Math.max(piece.r0(), piece.r1()) : Math.max(rc, rc + bulge * p);
        volume = volumeBetween(z0, z1);
        moment = momentBetween(z0, z1, volume);
    }

    /** Signed volume, m3. */
    double volume() {
        return sign * volume;
    }

    /** Signed first moment in z, m4. */
    double moment() {
        return sign * moment;
    }

    /** Largest {@code S x + C z}, m. */
    double reach(double s, double c) {
        double best = Math.max(s * radius(z0) + c * z0, s * radius(z1) + c * z1);
        // the point of the arc whose normal is the direction, if it lies between the ends
        if (bulge > 0) {
            double length = Math.sqrt(s * p * (s * p) + c * q * (c * q));
            double top = zc + q * (c * q / length);
            if (top > z0 && top < z1) {
                best = Math.max(best, s * rc + c * zc + length);
            }
        }
        return best;
    }

    /** Cut by the horizontal plane at height {@code level}, all in closed form. */
    void cutLevel(double level, boolean below, PlaneCut out) {
        double at = Math.max(z0, Math.min(z1, level));
        double v = volumeBetween(z0, at);
        double m = momentBetween(z0, at, v);
        out.volume += sign * (below ? v : volume - v);
        out.mz += sign * (below ? m : moment - m);
        if (level >= z0 && level < z1) {
            double square = radius(level) * radius(level);
            out.area += sign * Math.PI * square;
            out.juu += sign * Math.PI * square * square / 4;
            out.jww += sign * Math.PI * square * square / 4;
        }
    }

    /** Cut by the plane {@code s x + co z = c}. */
    void cut(double s, double co, double c, PlaneCut out) {
        if (bulge != 0 && !(s < FLAT && smooth(c * co, s * (widest + Math.abs(c) * s)))) {
            cutArc(s, co, c, out);
            return;
        }
        // sigma where the plane enters the disc, t = -f or t = f, and where it leaves it
        double foot = c * co;
        double enter;
        double leave;
        if (bulge == 0) {
            double f = r0 + slope * (foot - z0);
            enter = (c * s - f) / (slope * s + co);
            leave = (-c * s - f) / (slope * s - co);
        } else {
            enter = rootAlong(s, co, c, 1);
            leave = rootAlong(s, co, c, -1);
        }
        // the ends of the piece along the plane
        double low = (z0 - foot) / s;
        double high = (z1 - foot) / s;
        // between the roots the section is all of the disc, nothing, or a segment
        double a = low;
        while (a < high) {
            double b = Math.min(high, next(a, enter, leave, Double.NaN, Double.NaN));
            double middle = a / 2 + b / 2;
            double f = radius(foot + s * middle);
            double t = c * s - co * middle;
            if (t >= f) {
                whole(a == low ? z0 : foot + s * a, b == high ? z1 : foot + s * b, out);
            } else if (t > -f) {
                // the plane leaves a segment of each disc between a and b; the roots beside them say where its chord
                // ends
                double left = last(a, enter, leave, Double.NaN, Double.NaN);
                double right = next(Math.nextDown(b), enter, leave, Double.NaN, Double.NaN);
                segments(false, a, b, left, right, s, co, c, out);
            }
            a = b;
        }
    }

    /** As {@link #cut} for an arc, in its own angle: there f is a cosine, and the roots have closed forms. */
    private void cutArc(double s, double co, double c, PlaneCut out) {
        double d = c - co * zc;
        double east = s * bulge * p;
        double north = co * q;
        double length = Math.hypot(east, north);
        // f = t: east cos + north sin = d - s rc; f = -t: east cos - north sin = -d - s rc
        // each equation has the roots one +- spreadOne, two +- spreadTwo; NaN where it has none
        double one = Math.atan2(north, east);
        double spreadOne = spread((d - s * rc) / length);
        double two = Math.atan2(-north, east);
        double spreadTwo = spread((-d - s * rc) / length);
        double e1 = wrap(one - spreadOne);
        double e2 = wrap(one + spreadOne);
        double e3 = wrap(two - spreadTwo);
        double e4 = wrap(two + spreadTwo);
        double a = lowAngle;
        while (a < highAngle) {
            double b = Math.min(highAngle, next(a, e1, e2, e3, e4));
            double middle = (a + b) / 2;
            double f = rc + bulge * p * Math.cos(middle);
            double t = (d - co * q * Math.sin(middle)) / s;
            if (t >= f) {
                whole(a == lowAngle ? z0 : zc + q * Math.sin(a), b == highAngle ? z1 : zc + q * Math.sin(b), out);
            } else if (t > -f) {
                double left = last(a, e1, e2, e3, e4);
                double right = next(Math.nextDown(b), e1, e2, e3, e4);
                segments(true, a, b, left, right, s, co, c, out);
            }
            a = b;
        }
    }

    /** Adds the circular segments for the parameter (sigma, or the angle of the arc) between a and b. */
    private void segments(
            boolean angular,
            double a,
            double b,
            double left,
            double right,
            double s,
            double co,
            double c,
            PlaneCut out) {
        // the substitution that takes the roots away: sine where both ends are near one, square where one is
        double length = b - a;
        boolean nearLeft = a - left < length;
        boolean nearRight = right - b < length;
        boolean both = nearLeft && nearRight;
        double centre = both ? (left + right) / 2 : nearLeft ? left : nearRight ? right : 0;
        double half = both ? (right - left) / 2 : 0;
        double from;
        double to;
        if (both) {
            from = a <= left ? -Math.PI / 2 : Math.asin(Math.max(-1, (a - centre) / half));
            to = b >= right ? Math.PI / 2 : Math.asin(Math.min(1, (b - centre) / half));
        } else if (nearLeft) {
            from = Math.sqrt(a - left);
            to = Math.sqrt(b - left);
        } else if (nearRight) {
            from = Math.sqrt(right - b);
            to = Math.sqrt(right - a);
        } else {
            from = a;
            to = b;
        }
        double middle = (from + to) / 2;
        double reach = (to - from) / 2;
        double foot = c * co;
        for (int i = 0; i < GaussLegendre.POINTS; i++) {
            double y = middle + reach * GaussLegendre.node(i);
            double weight = reach * GaussLegendre.weight(i);
            double x;
            if (both) {
                x = centre + half * Math.sin(y);
                weight *= half * Math.cos(y);
            } else if (nearLeft) {
                x = centre + y * y;
                weight *= 2 * y;
            } else if (nearRight) {
                x = centre - y * y;
                weight *= 2 * y;
            } else {
                x = y;
            }
            // height, radius and place of this section, and the length of plane that it stands for
            double z;
            double f;
            double sigma;
            double along;
            if (angular) {
                double sine = Math.sin(x);
                double cosine = Math.cos(x);
                z = zc + q * sine;
                f = rc + bulge * p * cosine;
                sigma = (z - foot) / s;
                along = weight * q * cosine / s;
            } else {
                sigma = x;
                z = foot + s * sigma;
                f = radius(z);
                along = weight;
            }
            // the segment at this height: area, chord and their moments
            double t = c * s - co * sigma;
            double h = Math.sqrt(Math.max(0, (f - t) * (f + t)));
            double disc = f * f * (Math.PI / 2 + Math.atan2(t, h)) + t * h;
            double deep = sign * s * along;
            double cube = 2 * h * h * h / 3;
            double chord = sign * along * 2 * h;
            out.volume += deep * disc;
            out.mx -= deep * cube;
            out.mz += deep * disc * z;
            out.area += chord;
            out.ax += chord * sigma;
            out.juu += sign * along * cube;
            out.jww += chord * sigma * sigma;
        }
    }

    /** Adds whole discs between two heights, m. */
    private void whole(double from, double to, PlaneCut out) {
        double part = volumeBetween(from, to);
        out.volume += sign * part;
        out.mz += sign * momentBetween(from, to, part);
    }

    /** Unsigned volume between two heights, m3. */
    private double volumeBetween(double from, double to) {
        if (bulge == 0) {
            double a = radius(from);
            double b = radius(to);
            return Math.PI * (to - from) * (a * a + a * b + b * b) / 3;
        }
        double sa = ProfileFaces.sine(piece, from);
        double sb = ProfileFaces.sine(piece, to);
        double round = p * p * (sb - sa) * (1 - (sb * sb + sb * sa + sa * sa) / 3);
        // about the axis no angle is needed
        if (rc == 0) {
            return Math.PI * q * round;
        }
        double swept = ProfileFaces.angle(piece, to) - ProfileFaces.angle(piece, from);
        double turned = swept + sb * cosine(sb) - sa * cosine(sa);
        return Math.PI * q * (rc * rc * (sb - sa) + bulge * rc * p * turned + round);
    }

    /** First moment in z of that volume, m3, m4. */
    private double momentBetween(double from, double to, double part) {
        if (bulge == 0) {
            double a = radius(from);
            double b = radius(to);
            return Math.PI
                    * (to - from)
                    * (from * (3 * a * a + 2 * a * b + b * b) + to * (a * a + 2 * a * b + 3 * b * b))
                    / 12;
        }
        double sa = ProfileFaces.sine(piece, from);
        double sb = ProfileFaces.sine(piece, to);
        double ca = cosine(sa);
        double cb = cosine(sb);
        double a2 = ca * ca;
        double b2 = cb * cb;
        return zc * part
                + Math.PI
                        * q
                        * q
                        * (rc * rc * (sb * sb - sa * sa) / 2
                                - 2 * bulge * rc * p * (cb * b2 - ca * a2) / 3
                                - p * p * (b2 * b2 - a2 * a2) / 4);
    }

    /** Radius of the piece at a height within it, m. */
    private double radius(double z) {
        if (bulge == 0) {
            return r0 + slope * (z - z0);
        }
        double t = (z - zc) / q;
        return rc + bulge * p * Math.sqrt(Math.max(0, 1 - t * t));
    }

    /** Cosine of an angle of the arc by its sine: 0 or more. */
    private static double cosine(double sine) {
        return Math.sqrt(Math.max(0, (1 - sine) * (1 + sine)));
    }

    /** Whether the arc is far from its poles within {@code reach} of a height. */
    private boolean smooth(double z, double reach) {
        return Math.abs(z - zc) + 2 * reach < 0.995 * q;
    }

    /** Sigma where f = side t, for a nearly horizontal plane, by Newton's method. */
    private double rootAlong(double s, double co, double c, int side) {
        double sigma = (c * s - side * radius(c * co)) / co;
        for (int pass = 0; pass < 4; pass++) {
            double z = c * co + s * sigma;
            double t = (z - zc) / q;
            double root = Math.sqrt(1 - t * t);
            double f = rc + bulge * p * root;
            double rise = -bulge * p * t / (q * root) * s;
            sigma -= (f - side * (c * s - co * sigma)) / (rise + side * co);
        }
        return sigma;
    }

    /** Half the distance between the two roots; just outside, the point of near touch stands for both. */
    private static double spread(double ratio) {
        if (Math.abs(ratio) <= 1) {
            return Math.acos(ratio);
        }
        return ratio > 1 && ratio < 1.3 ? 0 : ratio < -1 && ratio > -1.3 ? Math.PI : Double.NaN;
    }

    /** An angle within half a turn of 0. */
    private static double wrap(double angle) {
        return angle > Math.PI ? angle - 2 * Math.PI : angle < -Math.PI ? angle + 2 * Math.PI : angle;
    }

    /** The first of four roots after a place, +infinity where there is none; NaN is no root. */
    private static double next(double a, double e1, double e2, double e3, double e4) {
        double best = Double.POSITIVE_INFINITY;
        best = e1 > a && e1 < best ? e1 : best;
        best = e2 > a && e2 < best ? e2 : best;
        best = e3 > a && e3 < best ? e3 : best;
        return e4 > a && e4 < best ? e4 : best;
    }

    /** The last of four roots up to a place, -infinity where there is none. */
    private static double last(double a, double e1, double e2, double e3, double e4) {
        double best = Double.NEGATIVE_INFINITY;
        best = e1 <= a && e1 > best ? e1 : best;
        best = e2 <= a && e2 > best ? e2 : best;
        best = e3 <= a && e3 > best ? e3 : best;
        return e4 <= a && e4 > best ? e4 : best;
    }
}
