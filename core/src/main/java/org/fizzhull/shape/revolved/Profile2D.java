package org.fizzhull.shape.revolved;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.fizzhull.geometry.Vec3;

/**
 * Meridian of a body of revolution about z, as pieces r = f(z) that each hold a solid of revolution between the axis
 * and the curve: outer pieces add it, inner pieces take it away. Horizontal faces need no piece: they lie wherever the
 * sections just below and above a height differ. Metres.
 *
 * <p>A tube of outer radius 30 mm with a bore of 10 mm, 40 mm tall:
 * <pre>{@code
 * Profile2D tube = Profile2D.builder()
 *         .line(0, 0.030, 0.040, 0.030)
 *         .inner()
 *         .line(0, 0.010, 0.040, 0.010)
 *         .build();
 * Hull hull = new RevolvedHull(tube);
 * }</pre>
 *
 * <p>Not checked: that inner pieces lie inside outer ones, and that pieces of one kind do not overlap; outlines that
 * people give come through {@link ProfilePoints}, which checks them. Volume, centroid and surface are computed anew at
 * each call. Immutable, safe for use by several threads.
 */
public final class Profile2D {
    /** In the order given. */
    private final List<Piece> pieces;

    private Profile2D(List<Piece> pieces) {
        this.pieces = List.copyOf(pieces);
    }

    /** The profile of pieces that another has had. */
    static Profile2D of(List<Piece> pieces) {
        return new Profile2D(pieces);
    }

    /** {@return a new, empty builder} */
    public static Builder builder() {
        return new Builder();
    }

    /** {@return the pieces, in the order given} */
    public List<Piece> pieces() {
        return pieces;
    }

    /** Height of the lowest point, m; of no pieces +infinity. */
    double low() {
        return pieces.stream().mapToDouble(Piece::z0).min().orElse(Double.POSITIVE_INFINITY);
    }

    /** Height of the highest point, m; of no pieces -infinity. */
    double high() {
        return pieces.stream().mapToDouble(Piece::z1).max().orElse(Double.NEGATIVE_INFINITY);
    }

    /** {@return the enclosed volume, m3, in closed form} */
    public double volume() {
        return volume(solids());
    }

    /** {@return the centroid of the enclosed volume, m, in closed form} */
    public Vec3 centroid() {
        return centroid(solids());
    }

    /** The pieces as solids of revolution. */
    RevolvedPiece[] solids() {
        return pieces.stream().map(RevolvedPiece::new).toArray(RevolvedPiece[]::new);
    }

    /** Volume that some pieces enclose together, m3. */
    static double volume(RevolvedPiece[] solids) {
        double sum = 0;
        for (RevolvedPiece solid : solids) {
            sum += solid.volume();
        }
        return sum;
    }

    /** Centroid of that volume, m. */
    static Vec3 centroid(RevolvedPiece[] solids) {
        double moment = 0;
        for (RevolvedPiece solid : solids) {
            moment += solid.moment();
        }
        return new Vec3(0, 0, moment / volume(solids));
    }

    /**
     * {@return the total surface, m2: the curved faces and the flat ones between and at the ends of the pieces} Closed
     * form but for an ellipse whose centre is off the axis, which is integrated to about 1e-12.
     */
    public double surface() {
        double sum = 0;
        for (Piece piece : pieces) {
            sum += ProfileFaces.curved(piece);
        }
        for (ProfileFaces.Flat flat : ProfileFaces.flats(this)) {
            sum += flat.area();
        }
        return sum;
    }

    /**
     * One piece r = f(z), z0 &lt; z1: a straight line where {@code bulge} is 0, else the ellipse arc {@code r = rc +
     * bulge p sqrt(1 - ((z - zc)/q)^2)} with bulge +1 (away from the axis) or -1.
     *
     * @param inner true where the piece takes volume away
     * @param z0 height of the lower end, m
     * @param z1 height of the upper end, m, above z0
     * @param r0 radius at the lower end, m, 0 or more
     * @param r1 radius at the upper end, m, 0 or more
     * @param zc height of the centre of the ellipse, m; 0 for a line
     * @param rc radius at which the centre lies, m; 0 for a line
     * @param p half width of the ellipse, m; 0 for a line
     * @param q half height of the ellipse, m; 0 for a line
     * @param bulge 0 for a line, +1 or -1 for the side of the ellipse away from the axis or towards it
     */
    public record Piece(
            boolean inner,
            double z0,
            double z1,
            double r0,
            double r1,
            double zc,
            double rc,
            double p,
            double q,
            int bulge)
            implements Serializable {
        /**
         * {@return the radius at height z, m}
         *
         * @param z height, m, between the ends of the piece
         */
        public double radius(double z) {
            if (bulge == 0) {
                return r0 + (r1 - r0) * (z - z0) / (z1 - z0);
            }
            double t = (z - zc) / q;
            return rc + bulge * p * Math.sqrt(Math.max(0, 1 - t * t));
        }
    }

    /** Collects pieces; not for use by several threads. */
    public static final class Builder {
        /** Pieces so far. */
        private final List<Piece> pieces = new ArrayList<>();
        /** Whether the next piece takes volume away. */
        private boolean inner;

        private Builder() {}

        /**
         * Makes the pieces that follow take volume away.
         *
         * @return this builder
         */
        public Builder inner() {
            inner = true;
            return this;
        }

        /**
         * Makes the pieces that follow add volume (the state at the start).
         *
         * @return this builder
         */
        public Builder outer() {
            inner = false;
            return this;
        }

        /**
         * Adds a straight piece from (r0, z0) up to (r1, z1).
         *
         * @param z0 height of the lower end, m
         * @param r0 radius at the lower end, m
         * @param z1 height of the upper end, m
         * @param r1 radius at the upper end, m
         * @return this builder
         */
        public Builder line(double z0, double r0, double z1, double r1) {
            pieces.add(new Piece(inner, z0, z1, r0, r1, 0, 0, 0, 0, 0));
            return this;
        }

        /**
         * Adds an arc between heights z0 and z1 of the ellipse with centre (rc, zc), half width p and half height q; a
         * circle where they are equal. The arc lies within q of zc; heights beyond are not checked.
         *
         * @param zc height of the centre of the ellipse, m
         * @param rc radius at which the centre lies, m; 0 for one on the axis
         * @param p half width of the ellipse, m
         * @param q half height of the ellipse, m
         * @param bulge 1 for the side of the ellipse away from the axis, -1 for the side towards it
         * @param z0 height of the lower end of the arc, m
         * @param z1 height of the upper end of the arc, m
         * @return this builder
         */
        public Builder arc(double zc, double rc, double p, double q, int bulge, double z0, double z1) {
            Piece arc = new Piece(inner, z0, z1, 0, 0, zc, rc, p, q, bulge);
            pieces.add(new Piece(inner, z0, z1, arc.radius(z0), arc.radius(z1), zc, rc, p, q, bulge));
            return this;
        }

        /** {@return the profile} */
        public Profile2D build() {
            return new Profile2D(pieces);
        }
    }
}
