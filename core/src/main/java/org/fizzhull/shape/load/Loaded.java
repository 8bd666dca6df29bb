package org.fizzhull.shape.load;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Notice;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.shape.Shape;
import org.jspecify.annotations.Nullable;

/**
 * A shape that carries what does not fizz: a layer on its top and objects inside. They enter through {@link
 * #insetMass}, {@link #insetVolume} and {@link #insetCentroid}, as the crystals of a geode do. An object inside takes
 * the place of material: {@link #volume} is what is left to fizz, while hull, surface and box are those of the shape.
 * <pre>{@code
 * Shape ball = Shapes.sphere(millimetres(65));
 * Loaded piece = Loaded.with(ball, new Inset(grams(6), 8e-6));        // at its centroid
 * piece = Loaded.with(piece, new Topping("salt", grams(5), 2160, 0.6)); // and salt on top
 * }</pre>
 *
 * <p>Assumed: the layer lies level over the whole plan; the objects inside fill the deepest part of the piece, so that
 * the front reaches them last (docs/physics/hydrostatics.md, 5). Left out: the layer in surface and box, and how it
 * comes off in the bath ({@code voyage}). Immutable, safe for use by several threads; text and kind are those of the
 * shape, which leave the load out.
 */
public final class Loaded implements Shape {
    private static final long serialVersionUID = 1;

    /** The shape without its load; never itself loaded. */
    private final Shape shape;
    /** Layers on top, in the order in which they were put there; all are taken as one mixed layer. */
    private final List<Topping> toppings;
    /** Objects inside and their places. */
    private final List<Held> held;
    /** Volume of the objects inside, m3. */
    private final double hidden;

    private Loaded(Shape shape, List<Topping> toppings, List<Held> held) {
        this.shape = shape;
        this.toppings = List.copyOf(toppings);
        this.held = List.copyOf(held);
        double sum = 0;
        for (Held one : held) {
            sum += one.thing().volume();
        }
        hidden = sum;
    }

    /**
     * {@return a shape with a layer on its top, mixed with what lies there already}
     *
     * @param shape a solid shape, loaded or not
     * @param topping what is laid on its top
     * @throws Refusal {@code conflict} for an open shape, {@code out-of-range} for a layer thicker than the piece is
     *     high
     */
    public static Loaded with(Shape shape, Topping topping) {
        Given.all("shape, topping", shape, topping);
        Loaded before = of(shape);
        if (shape.hollow().isPresent()) {
            throw new Refusal(
                    "conflict",
                    "on top",
                    topping.name() + " on " + shape.text(),
                    "a shape with a closed top",
                    "An open shape has only its rim on top; for a lined hollow write geode(..., crystals=20 g).");
        }
        // all layers together must not be thicker than the piece is high
        List<Topping> more = new ArrayList<>(before.toppings);
        more.add(topping);
        Loaded after = new Loaded(before.shape, more, before.held);
        double high = shape.extents().height();
        Inset.check(
                "on top",
                after.toppingHeight() <= high,
                QuantityText.rounded(after.toppingMass(), Unit.GRAM, 4) + ", a layer " + whole(after.toppingHeight())
                        + " mm thick",
                "a layer no thicker than the piece is high, " + whole(high) + " mm",
                "Check the unit: a topping is a few grams.");
        return after;
    }

    /**
     * {@return a shape with an object inside, at its centroid}
     *
     * @param shape a shape, loaded or not
     * @param inset what is pressed into it
     * @throws Refusal {@code out-of-range} where there is no material, as in the middle of a ring, or less than the
     *     thing takes
     */
    public static Loaded with(Shape shape, Inset inset) {
        Given.all("shape", shape);
        return with(shape, inset, shape.bare().centroid());
    }

    /**
     * {@return a shape with an object inside whose centre of mass and volume is at a point of the body frame, m, in its
     * material} Whether two of them overlap is not checked.
     *
     * @param shape a shape, loaded or not
     * @param inset what is pressed into it
     * @param centre centre of mass and volume of the inset, m, in the body frame
     * @throws Refusal {@code out-of-range} where there is no material, or less of it than the inset takes up
     */
    public static Loaded with(Shape shape, Inset inset, Vec3 centre) {
        Given.all("shape", shape);
        Loaded before = of(shape);
        // what is left of the material, earlier objects inside taken off
        double room = shape.volume();
        Inset.check(
                "inside",
                inset.volume() < room,
                Inset.mL(inset.volume()),
                "less than the " + Inset.mL(room) + " of the piece",
                "Check the volume of the thing: put it in a full glass and weigh what runs over.");
        Optional<Hull> hull = before.shape.hull();
        // propose the deepest place of the section instead
        if (hull.isPresent() && !InsetPlace.holds(hull.get(), centre)) {
            Vec3 deep = InsetPlace.deepest(hull.get());
            // the proposal, as a place that people can measure
            double aside = deep.x() - before.shape.centroid().x();
            throw new Refusal(
                    "out-of-range",
                    "inside",
                    "a thing " + place(centre.z(), Math.hypot(centre.x(), centre.y())) + " in " + shape.text(),
                    "a place where there is material",
                    "Say where it lies, such as " + place(deep.z(), aside) + ".");
        }
        List<Held> more = new ArrayList<>(before.held);
        more.add(new Held(inset, centre));
        return new Loaded(before.shape, before.toppings, more);
    }

    /** The shape itself where it is loaded already, else the same without a load. */
    private static Loaded of(Shape shape) {
        return shape instanceof Loaded loaded ? loaded : new Loaded(shape, List.of(), List.of());
    }

    /** A place as people would write it: height above the base and distance from the axis, m, in whole mm. */
    private static String place(double up, double aside) {
        String height = whole(up) + " mm up";
        return Math.abs(aside) < 0.001 ? height : height + ", " + whole(aside) + " mm aside";
    }

    /** A length, m, in whole mm. */
    private static long whole(double metres) {
        return Math.round(metres * 1e3);
    }

    /** The shape without its load. */
    @Override
    public Shape bare() {
        return shape;
    }

    /** {@return what lies on top, mixed} */
    public List<Topping> toppings() {
        return toppings;
    }

    /** {@return what is pressed into it, and where} */
    public List<Held> held() {
        return held;
    }

    /**
     * {@return whether a ball as large as one of the objects inside would stick out of the surface at its place} A hint
     * only, for a warning: the form of the object is not known, and its distance to the surface is that in one upright
     * section.
     */
    public boolean sticksOut() {
        // a ball wider than the thickest part sticks out anywhere
        double deepest = shape.depthProfile(DepthProfile.Exposure.ALL).deepest();
        for (Held one : held) {
            double radius = Math.cbrt(3 * one.thing().volume() / (4 * Math.PI));
            Optional<Hull> hull = shape.hull();
            if (radius > deepest || (hull.isPresent() && radius > InsetPlace.depth(hull.get(), one.centre()))) {
                return true;
            }
        }
        return false;
    }

    /** {@return the mass of the layer on top, kg} */
    public double toppingMass() {
        double sum = 0;
        for (Topping topping : toppings) {
            sum += topping.mass();
        }
        return sum;
    }

    /** {@return what the layer on top pushes aside, m3} */
    public double toppingVolume() {
        double sum = 0;
        for (Topping topping : toppings) {
            sum += topping.volume();
        }
        return sum;
    }

    /** {@return the thickness of the layer, spread evenly over the plan, m; 0 where there is none} */
    public double toppingHeight() {
        double sum = 0;
        for (Topping topping : toppings) {
            sum += topping.bulk();
        }
        return sum / shape.planArea();
    }

    @Override
    public String kind() {
        return shape.kind();
    }

    /** Of the shape, without the load: an equal text does not mean an equal piece. */
    @Override
    public String text() {
        return shape.text();
    }

    /** What is left to fizz, m3. */
    @Override
    public double volume() {
        return shape.volume() - hidden;
    }

    @Override
    public double surface() {
        return shape.surface();
    }

    /**
     * Of the material round the objects inside, m: {@code (V c - SUM v_i c_i)/(V - SUM v_i)}, V and c of the shape, v_i
     * and c_i of the objects.
     */
    @Override
    public Vec3 centroid() {
        Vec3 at = shape.centroid().times(shape.volume() / volume());
        for (Held one : held) {
            at = at.minus(one.centre().times(one.thing().volume() / volume()));
        }
        return at;
    }

    /** Of the shape; the layer on top is left out. */
    @Override
    public Extents extents() {
        return shape.extents();
    }

    @Override
    public RestingAttitude restingAttitude() {
        return shape.restingAttitude();
    }

    @Override
    public double planArea() {
        return shape.planArea();
    }

    /** That of the shape until its front reaches the things inside, which are taken to fill the deepest part. */
    @Override
    public DepthProfile depthProfile(DepthProfile.Exposure exposure) {
        DepthProfile whole = shape.depthProfile(exposure);
        return hidden == 0 ? whole : whole.without(hidden);
    }

    /** That of the shape, as far as its front reaches the things inside. */
    @Override
    public Optional<DepthProfile> depthProfileAfloat(RestingAttitude rest) {
        return shape.depthProfileAfloat(rest).map(whole -> hidden == 0 ? whole : whole.without(hidden));
    }

    @Override
    public double depthError() {
        return shape.depthError();
    }

    @Override
    public Optional<Hull> hull() {
        return shape.hull();
    }

    @Override
    public Optional<Hollow> hollow() {
        return shape.hollow();
    }

    /** That of the shape, the layer on top, and the things inside, kg. */
    @Override
    public double insetMass() {
        double mass = shape.insetMass() + toppingMass();
        for (Held one : held) {
            mass += one.thing().mass();
        }
        return mass;
    }

    /** That of the shape, the grains of the layer, and the things inside, m3. */
    @Override
    public double insetVolume() {
        return shape.insetVolume() + toppingVolume() + hidden;
    }

    /** That of the shape, and the things inside; a layer on top lies outside the hull. */
    @Override
    public double insetInsideHull() {
        return shape.insetInsideHull() + hidden;
    }

    /** The layer lies level over the whole plan at the top as listed; a slope under it is not followed. */
    @Override
    public Vec3 insetCentroid() {
        Vec3 at = shape.insetCentroid();
        double mass = shape.insetMass();
        if (!toppings.isEmpty()) {
            // height of the middle of the layer
            double middle = shape.extents().height() + toppingHeight() / 2;
            Vec3 layer = new Vec3(shape.centroid().x(), shape.centroid().y(), middle);
            at = Inset.centre(mass, at, toppingMass(), layer);
            mass += toppingMass();
        }
        for (Held one : held) {
            at = Inset.centre(mass, at, one.thing().mass(), one.centre());
            mass += one.thing().mass();
        }
        return at;
    }

    @Override
    public double hullVolume() {
        return shape.hullVolume();
    }

    /** That of the shape: an object inside, which lets no water through, is not looked at. */
    @Override
    public OptionalDouble diffusionTime(DepthProfile.Exposure exposure) {
        return shape.diffusionTime(exposure);
    }

    @Override
    public boolean mouldedInHalves() {
        return shape.mouldedInHalves();
    }

    @Override
    public double surfaceSpread() {
        return shape.surfaceSpread();
    }

    @Override
    public List<Notice> notices() {
        return shape.notices();
    }

    /**
     * An object inside and its place.
     *
     * @param thing its mass and volume
     * @param centre of both, in the body frame, m
     */
    public record Held(Inset thing, Vec3 centre) implements Serializable {}

    /** Equal are equal shapes with equal loads in the same order. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Loaded that
                && shape.equals(that.shape)
                && toppings.equals(that.toppings)
                && held.equals(that.held);
    }

    @Override
    public int hashCode() {
        return Objects.hash(shape, toppings, held);
    }
}
