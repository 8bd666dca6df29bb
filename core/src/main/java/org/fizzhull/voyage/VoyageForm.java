package org.fizzhull.voyage;

import java.util.Optional;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.hydrostatics.BoatLimit;
import org.fizzhull.hydrostatics.Immersion;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;

/**
 * All that a voyage needs of a shape, computed once and shared by every draw and thread: its depth profile on a grid,
 * the wet share of its surface at each draft, the area of the plume, added mass and drag.
 *
 * <p>All of these belong to the attitude the piece takes ({@link org.fizzhull.geometry.RestingAttitude}: the nearest
 * side down where it is sunk, up where it floats), never to the way it is listed; a hollow that holds air keeps the
 * attitude it was given. A flat face on that side keeps up and dry while the piece floats, and all others recede ({@link
 * AfloatFront}); a piece without one is taken to turn about, so that what is left keeps the shape of the depth profile.
 * A shape without a hull wets like a ball.
 *
 * <p>Two stages: with air in the hollow, where there is a hollow and it was not simply dropped, and flooded, in which
 * every face is wet. Cost: some 10 us for a ball, 100 us for an egg, tenths of a second for a large mesh. Immutable and
 * safe to share between threads, but for one made for a single voyage ({@link #forOneVoyage}).
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
    /** Mass and volume of topping that have come off by the time the front has moved in to a depth. */
    final ToppingLoss toppingLoss;

    /** Half of the height in its attitude, m. */
    final double halfHeight;

    /** Diameter of a disc of the plan area in its attitude, m. */
    final double planDiameter;

    /** Drag and added mass in its attitude. */
    final Resistance resistance;
    /** How the piece goes into the bath. */
    final Release release;

    /** Stage in which every face is wet. */
    final Stage flooded;

    /** Stage with air in the hollow; empty where there is no hollow or it floods at the drop. */
    final Optional<Stage> airy;

    private VoyageForm(Shape shape, RestingAttitude rest, Release release, int depths, boolean once) {
        Extents box = shape.extents();
        DepthProfile everyFace = shape.depthProfile(DepthProfile.Exposure.ALL);
        Optional<Hollow> hollow = shape.hollow();
        boolean holdsAir = hollow.isPresent() && release != Release.DROPPED;
        double planArea = holdsAir ? shape.planArea() : rest.planArea();
        double height = holdsAir ? box.height() : rest.height();
        this.release = release;
        volume = shape.volume();
        insetMass = shape.insetMass();
        toppingLoss = ToppingLoss.of(shape);
        halfHeight = height / 2;
        planDiameter = Math.sqrt(4 / Math.PI * planArea);
        boolean ball = shape.bare() instanceof Sphere sphere && sphere.seam() == 0;
        resistance = ball
                ? Resistance.ball()
                : Resistance.of(height, planDiameter, shape.bare().volume());
        ErosionGrid every = new ErosionGrid(everyFace, depths);
        flooded = new Stage(
                every,
                new AfloatFront(() -> shape.depthProfileAfloat(rest), every),
                rest.prism() && !holdsAir
                        ? Immersion.ofPrism(planArea, shape.surface())
                        : immersion(shape.hull(), holdsAir ? Vec3.UP : rest.nearest()),
                shape.surface() / planArea,
                shape.insetVolume(),
                0,
                0,
                0);
        airy = holdsAir ? Optional.of(airy(shape, hollow.get(), depths)) : Optional.empty();
        if (!once) {
            flooded.evaluate();
            airy.ifPresent(Stage::evaluate);
        }
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
    private static Stage airy(Shape shape, Hollow hollow, int depths) {
        Hull closed = hollow.closed();
        double outside = closed.wettedArea(0, 0, 1, hollow.rimHeight() * (1 - 1e-9));
        DepthProfile profile = shape.depthProfile(DepthProfile.Exposure.OUTSIDE);
        ErosionGrid grid = new ErosionGrid(profile, depths);
        return new Stage(
                grid,
                new AfloatFront(Optional::empty, grid),
                new Immersion(closed, Vec3.UP, outside),
                profile.area(0) / shape.planArea(),
                // what lines a hollow takes the place of its air and lifts nothing more
                shape.insetInsideHull(),
                hollow.volume(),
                closed.volume() - BoatLimit.displaced(shape, FRESH_WATER),
                hollow.wall());
    }

    /**
     * How much of a hull is under water and wet by its draft, with {@code up} upward; of a shape without a hull as of a
     * ball of any size.
     */
    private static Immersion immersion(Optional<Hull> hull, Vec3 up) {
        if (hull.isEmpty()) {
            return new Immersion(Sphere.ofDiameter(1).hull().orElseThrow(), Vec3.UP, Math.PI);
        }
        Hull known = hull.get();
        double whole = known.wettedArea(up.x(), up.y(), up.z(), Double.POSITIVE_INFINITY);
        return new Immersion(known, up, whole);
    }
}
