package org.fizzhull.voyage;

import java.util.Optional;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Exposure;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.hydrostatics.BoatLimit;
import org.fizzhull.hydrostatics.Immersion;
import org.fizzhull.quantity.Given;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;

/**
 * All that a voyage asks of a shape, worked out once and shared by every draw and thread: its depth profile on a grid,
 * how much is wet at each draft, area of the plume, added mass and drag.
 *
 * <p>All of these belong to the attitude the piece takes ({@link org.fizzhull.geometry.RestingAttitude}: the nearest
 * side down where it is sunk, up where it floats), never to the way it is listed; a hollow that holds air keeps the
 * attitude it was given. A flat face on that side keeps up and dry while the piece floats, and all others recede ({@link
 * AfloatFront}); a piece without one is taken to turn about, so that what is left keeps the shape of the depth profile.
 * A shape without a hull wets like a ball.
 *
 * <p>Two stages: with air in the hollow, where there is a hollow and it was not simply dropped, and flooded, in which
 * every face is wet. Cost: some 10 us for a ball, 100 us for an egg, tenths of a second for a large mesh. Immutable and
 * safe to share between threads, but for one that is made for a single voyage ({@link #forOneVoyage}).
 */
public final class VoyageForm {
    /**
     * Density at which the limit of a boat is taken, kg/m3: it only matters where the weight of an inset makes a boat
     * lean.
     */
    private static final double FRESH_WATER = 1000;

    /** Volume of what dissolves, as computed, m3. */
    final double volume;
    /** Mass of what does not dissolve: toppings, insets, things inside, kg. */
    final double insetMass;
    /** How a topping comes off as the front moves in. */
    final ToppingLoss letGo;

    /** Half of the height in its attitude, m. */
    final double halfHeight;

    /** Diameter of a disc of the plan area in its attitude, m. */
    final double planDiameter;

    /** Drag and added mass in its attitude. */
    final Resistance resistance;
    /** How it goes into the bath. */
    final Release release;

    /** Every face wet. */
    final Stage flooded;

    /** With air in the hollow; empty where there is no hollow or it floods at the drop. */
    final Optional<Stage> airy;

    private VoyageForm(Shape shape, RestingAttitude rest, Release release, int depths, boolean once) {
        Extents box = shape.extents();
        DepthProfile everyFace = shape.depthProfile(Exposure.ALL);
        Optional<Hollow> hollow = shape.hollow();
        boolean holdsAir = hollow.isPresent() && release != Release.DROPPED;
        double planArea = holdsAir ? shape.planArea() : rest.planArea();
        double height = holdsAir ? box.height() : rest.height();
        this.release = release;
        volume = shape.volume();
        insetMass = shape.insetMass();
        letGo = ToppingLoss.of(shape);
        halfHeight = height / 2;
        planDiameter = Math.sqrt(4 / Math.PI * planArea);
        boolean ball = shape.bare() instanceof Sphere sphere && sphere.seam() == 0;
        resistance = ball
                ? Resistance.ball()
                : Resistance.of(height, planDiameter, shape.bare().volume());
        ErosionGrid every = grid(everyFace, depths, once);
        flooded = new Stage(
                everyFace,
                every,
                once
                        ? AfloatFront.forOneVoyage(() -> shape.depthProfileAfloat(rest), every)
                        : AfloatFront.whole(shape.depthProfileAfloat(rest), every),
                rest.prism() && !holdsAir
                        ? prism(planArea, shape.surface(), once)
                        : immersion(shape.hull(), holdsAir ? Vec3.UP : rest.nearest(), once),
                shape.surface() / planArea,
                shape.insetVolume(),
                0,
                0,
                0);
        airy = holdsAir ? Optional.of(airy(shape, hollow.get(), depths, once)) : Optional.empty();
    }

    /**
     * {@return the form of a shape that goes into the bath in a way}
     *
     * @param shape form of the piece
     * @param release how it goes in
     */
    public static VoyageForm of(Shape shape, Release release) {
        Given.all("release", release);
        return of(shape, release, ErosionGrid.USUAL);
    }

    /**
     * {@return the form of a shape whose attitude is known already}
     *
     * @param shape form of the piece
     * @param rest attitude of the shape, as {@link Shape#restingAttitude} gives it
     * @param release how it goes in
     */
    public static VoyageForm of(Shape shape, RestingAttitude rest, Release release) {
        Given.all("release, rest", release, rest);
        return new VoyageForm(shape, rest, release, ErosionGrid.USUAL, false);
    }

    /**
     * {@return the same for a single voyage: depths and drafts are worked out where the voyage comes past them, which
     * of most are few; serves one thread}
     *
     * @param shape form of the piece
     * @param rest attitude of the shape, as {@link Shape#restingAttitude} gives it
     * @param release how it goes in
     */
    public static VoyageForm forOneVoyage(Shape shape, RestingAttitude rest, Release release) {
        Given.all("release, rest", release, rest);
        return new VoyageForm(shape, rest, release, ErosionGrid.USUAL, true);
    }

    /**
     * {@return the same with another number of depths than the usual 200, 10 to 100,000}
     *
     * @param shape form of the piece
     * @param release how it goes in
     * @param depths number of depths, 10 to 100,000
     * @throws IllegalArgumentException for any other number of depths
     */
    public static VoyageForm of(Shape shape, Release release, int depths) {
        Given.all("release", release);
        if (!(depths >= 10 && depths <= 100_000)) {
            throw new IllegalArgumentException("a form has 10 to 100,000 depths, not " + depths);
        }
        return new VoyageForm(shape, shape.restingAttitude(), release, depths, false);
    }

    /** The stage in which the outer faces alone are wet, the hull closed over the hollow. */
    private static Stage airy(Shape shape, Hollow hollow, int depths, boolean once) {
        Hull closed = hollow.closed();
        double outside = closed.wettedArea(0, 0, 1, hollow.rimHeight() * (1 - 1e-9));
        Immersion immersion = tables(closed, Vec3.UP, outside, once);
        DepthProfile profile = shape.depthProfile(Exposure.OUTSIDE);
        ErosionGrid grid = grid(profile, depths, once);
        return new Stage(
                profile,
                grid,
                AfloatFront.whole(Optional.empty(), grid),
                immersion,
                profile.area(0) / shape.planArea(),
                // what lines a hollow takes the place of its air and lifts nothing more
                shape.insetInsideHull(),
                hollow.volume(),
                hollow.closed().volume() - BoatLimit.displaced(shape, FRESH_WATER),
                hollow.wall());
    }

    /**
     * How much of a hull is under water and wet by its draft, with {@code up} upward; of a shape without a hull as of a
     * ball.
     */
    private static Immersion immersion(Optional<Hull> hull, Vec3 up, boolean once) {
        if (hull.isEmpty()) {
            return likeABall(once);
        }
        Hull known = hull.get();
        double whole = known.wettedArea(up.x(), up.y(), up.z(), Double.POSITIVE_INFINITY);
        return tables(known, up, whole, once);
    }

    /** Tables of a hull, whole or for one voyage. */
    private static Immersion tables(Hull hull, Vec3 up, double whole, boolean once) {
        return once ? Immersion.forOneVoyage(hull, up, whole) : new Immersion(hull, up, whole);
    }

    /** Tables of an upright prism, whole or for one voyage. */
    private static Immersion prism(double flat, double whole, boolean once) {
        return once ? Immersion.prismForOneVoyage(flat, whole) : Immersion.ofPrism(flat, whole);
    }

    /** A profile on even depths, whole or for one voyage. */
    private static ErosionGrid grid(DepthProfile profile, int depths, boolean once) {
        return once ? ErosionGrid.forOneVoyage(profile, depths) : ErosionGrid.whole(profile, depths);
    }

    /** That of a ball of diameter 1: the shares do not depend on its size. */
    private static Immersion likeABall(boolean once) {
        Hull ball = Sphere.ofDiameter(1).hull().orElseThrow();
        return tables(ball, Vec3.UP, Math.PI, once);
    }
}
