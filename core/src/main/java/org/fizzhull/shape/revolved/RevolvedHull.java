package org.fizzhull.shape.revolved;

import java.util.List;
import java.util.OptionalDouble;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;

/**
 * Hull of a body of revolution about the z axis: the signed sum of the cuts of its pieces. Three cases:
 * <ol>
 *   <li>a whole spheroid is cut in closed form ({@link SpheroidHull}); the symmetry of a ball is {@code BALL};
 *   <li>a level plane cuts every piece in closed form;
 *   <li>any other plane by exact chord sections integrated over the height ({@link RevolvedPiece}): volumes to about
 *       1e-14 of the body, faces to 1e-13, at worst 1e-11.
 * </ol>
 * <pre>{@code
 * Hull hull = new RevolvedHull(ProfilePoints.profile(radii, heights));
 * Draft draft = Draft.of(hull, Vec3.UP, mass / bath.density());
 * }</pre>
 *
 * <p>A cut costs some microseconds per piece and allocates nothing. Left out: whether inner pieces lie inside outer
 * ones, see {@link Profile2D}. Sources of the closed forms: docs/physics/hydrostatics.md, 1. Immutable, safe for use by
 * several threads. For meshes: {@link org.fizzhull.shape.meshed.PolyhedronHull}.
 */
public final class RevolvedHull implements Hull {
    /** A plane this close to horizontal is horizontal: the error is of the order of this number. */
    private static final double LEVEL = 1e-12;

    /** Angles to the axis of the scan for the nearest plane: a quarter of a degree each. */
    private static final int ANGLES = 720;
    /** Of these one in so many bounds the search. */
    private static final int COARSE = 24;
    /** Step, rad, at which that search ends. */
    private static final double LAST_STEP = 1e-9;

    /** Nearer by less than this share is not nearer. */
    private static final double SAME = 1e-12;

    /** The meridian. */
    private final Profile2D profile;
    /** Its pieces, ready to be cut. */
    private final RevolvedPiece[] pieces;
    /** Enclosed volume, m3. */
    private final double volume;
    /** Centroid of that volume, on the axis, m. */
    private final Vec3 centroid;
    /** The whole spheroid that this is, or nothing. */
    private final SpheroidHull[] spheroid;
    /** Its level faces. */
    private final List<ProfileFaces.Flat> flats;

    /**
     * The hull of a meridian.
     *
     * @param profile the meridian, which must enclose a volume
     * @throws IllegalArgumentException where the pieces enclose no volume
     */
    public RevolvedHull(Profile2D profile) {
        this.profile = profile;
        pieces = profile.solids();
        volume = Profile2D.volume(pieces);
        if (!(volume > 0)) {
            throw new IllegalArgumentException("the pieces of a revolved hull enclose no volume: " + volume + " m3");
        }
        centroid = Profile2D.centroid(pieces);
        spheroid = spheroid(profile);
        flats = ProfileFaces.flats(profile);
    }

    /** {@return the meridian} */
    public Profile2D profile() {
        return profile;
    }

    @Override
    public double volume() {
        return volume;
    }

    @Override
    public Vec3 centroid() {
        return centroid;
    }

    /** Over the outer pieces alone: inner ones lie inside them. */
    @Override
    public double reach(double nx, double ny, double nz) {
        double s = Math.sqrt(nx * nx + ny * ny);
        double best = Double.NEGATIVE_INFINITY;
        for (RevolvedPiece piece : pieces) {
            if (piece.volume() > 0) {
                best = Math.max(best, piece.reach(s, nz));
            }
        }
        return best;
    }

    /** A level plane and a spheroid in closed form, any other plane by quadrature along each piece. */
    @Override
    public void cut(double nx, double ny, double nz, double c, PlaneCut out) {
        // three cases: a spheroid, a level plane, and any other plane by the pieces
        if (spheroid.length > 0) {
            spheroid[0].cut(nx, ny, nz, c, out);
            return;
        }
        out.clear();
        out.frame(nx, ny, nz);
        // sine of the angle between plane and horizontal
        double s = Math.sqrt(nx * nx + ny * ny);
        // upside down, the part below the plane is the upper part of the body
        if (s < LEVEL) {
            double level = nz > 0 ? c : -c;
            for (RevolvedPiece piece : pieces) {
                piece.cutLevel(level, nz > 0, out);
            }
            out.az = level;
            return;
        }
        for (RevolvedPiece piece : pieces) {
            piece.cut(s, nz, c, out);
        }
        // the pieces summed in the frame turned so that the plane leans in x: back into the body frame
        double side = out.mx;
        out.mx = side * nx / s;
        out.my = side * ny / s;
        // centroid of the face, and its second moment moved there
        double sigma = out.area > 0 ? out.ax / out.area : 0;
        out.jww -= out.area * sigma * sigma;
        out.ax = c * nx + sigma * out.wx;
        out.ay = c * ny + sigma * out.wy;
        out.az = c * nz + sigma * out.wz;
    }

    /** Level planes exact, others to about 1e-10 of the whole surface. */
    @Override
    public double wettedArea(double nx, double ny, double nz, double c) {
        return RevolvedSurface.below(profile, flats, nx, ny, nz, c);
    }

    /** From one solve in radius and height, to about 0.2 %; 5 to 100 ms: keep the result. */
    @Override
    public OptionalDouble diffusionTime(DepthProfile.Exposure exposure, double deepest) {
        return OptionalDouble.of(
                MeridianPoisson.time(Meridian.of(profile), volume, exposure == DepthProfile.Exposure.TRAY));
    }

    /** By a scan of the angle to the axis, to 1e-9 rad. */
    @Override
    public Vec3 nearestPlane() {
        if (isBall()) {
            return Vec3.UP;
        }
        // a coarse scan bounds the least distance; at h the next (h - bound)/farthest rad hold nothing below that
        // bound,
        // since the distance of the touching plane changes by no more than the farthest point's for each rad
        double bound = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= ANGLES; i += COARSE) {
            bound = Math.min(bound, support(Math.PI * i / ANGLES));
        }
        double farthest = farthest() * Math.PI / ANGLES;
        // the best of the scan, then steps to both sides that are halved
        double best = 0;
        double least = support(best);
        double last = least;
        for (int i = 1; i <= ANGLES; i++) {
            i += Math.max(0, (int) ((last - bound) / farthest * (1 - 1e-9) - 1));
            if (i > ANGLES) {
                break;
            }
            last = support(Math.PI * i / ANGLES);
            if (last < least * (1 - SAME)) {
                least = last;
                best = Math.PI * i / ANGLES;
            }
        }
        for (double step = Math.PI / ANGLES; step > LAST_STEP; step /= 2) {
            for (int side = -1; side <= 1; side += 2) {
                double angle = Math.min(Math.PI, Math.max(0, best + side * step));
                double h = support(angle);
                if (h < least * (1 - SAME)) {
                    least = h;
                    best = angle;
                }
            }
        }
        return leaning(best);
    }

    /** A bound on the distance of the farthest point from the centroid, m. */
    private double farthest() {
        double up = Math.max(reach(0, 0, 1) - centroid.z(), reach(0, 0, -1) + centroid.z());
        return Math.hypot(reach(1, 0, 0), up);
    }

    /** Distance of the touching plane from the centroid, m, whose normal leans by an angle, rad, from the axis. */
    private double support(double angle) {
        Vec3 n = leaning(angle);
        return reach(n.x(), n.y(), n.z()) - n.dot(centroid);
    }

    /** Unit vector at an angle, rad, to the axis, in the x z plane. */
    private static Vec3 leaning(double angle) {
        return new Vec3(angle == Math.PI ? 0 : Math.sin(angle), 0, Math.cos(angle));
    }

    /** To 1e-4 of itself; holes along the axis are seen only along it. */
    @Override
    public OptionalDouble shadow(Vec3 along) {
        return OptionalDouble.of(RevolvedShadow.area(profile, along.z()));
    }

    @Override
    public Symmetry symmetry() {
        return isBall() ? Symmetry.BALL : Symmetry.REVOLVED;
    }

    @Override
    public boolean isEllipsoid() {
        return spheroid.length > 0;
    }

    /** Whether it is a whole ball. */
    private boolean isBall() {
        return spheroid.length > 0 && spheroid[0].ball();
    }

    /** The meridian and its mirror image, leaning as the body does; arcs as 64 chords. */
    @Override
    public List<double[][]> section(Vec3 up) {
        return ProfileOutline.of(profile, up);
    }

    /** One entry where the pieces are the two sides of one ellipse about the axis from pole to pole. */
    private static SpheroidHull[] spheroid(Profile2D profile) {
        SpheroidHull[] none = {};
        double across = 0;
        double along = 0;
        double centre = 0;
        double length = 0;
        for (Profile2D.Piece piece : profile.pieces()) {
            // an outer arc about the axis
            boolean round = !piece.inner() && piece.bulge() == 1 && piece.rc() == 0;
            boolean same = across == 0 || (piece.p() == across && piece.q() == along && piece.zc() == centre);
            if (!round || !same) {
                return none;
            }
            across = piece.p();
            along = piece.q();
            centre = piece.zc();
            length += piece.z1() - piece.z0();
        }
        return Math.abs(length - 2 * along) <= 1e-15 * along
                ? new SpheroidHull[] {new SpheroidHull(centre, across, along)}
                : none;
    }
}
