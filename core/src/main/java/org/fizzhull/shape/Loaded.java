package org.fizzhull.shape;

import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.numeric.Vec3;

/**
 * A shape that carries what does not fizz: a layer on its top and a thing inside. Both enter through {@link #insetMass},
 * {@link #insetVolume} and {@link #insetCentroid}, as the crystals of a geode do. The thing inside takes the place of
 * material: {@link #volume} is what is left to fizz, while hull, surface and box are those of the shape. Immutable; text
 * and kind are those of the shape, which knows nothing of its load.
 */
public final class Loaded implements Shape {
    private static final Inset[] NO_INSET = {};
    private static final Topping[] NO_TOPPING = {};

    private final Shape shape;
    private final Topping[] topping;
    private final Inset[] inset;
    private final Vec3[] insetAt;

    private Loaded(Shape shape, Topping[] topping, Inset[] inset, Vec3[] insetAt) {
        this.shape = shape;
        this.topping = topping;
        this.inset = inset;
        this.insetAt = insetAt;
    }

    /** A shape with a layer on its top. */
    public static Loaded with(Shape shape, Topping topping) {
        return shape instanceof Loaded loaded && loaded.topping.length == 0
                ? new Loaded(loaded.shape, new Topping[] {topping}, loaded.inset, loaded.insetAt)
                : new Loaded(shape, new Topping[] {topping}, NO_INSET, new Vec3[0]);
    }

    /** A shape with a thing at its centroid. */
    public static Loaded with(Shape shape, Inset inset) {
        return with(shape, inset, shape.centroid());
    }

    /** A shape with a thing whose centre of mass and volume is at a point of the body frame, m. */
    public static Loaded with(Shape shape, Inset inset, Vec3 centre) {
        Inset.check(
                "inside",
                inset.volume() < shape.volume(),
                inset.volume() * 1e6 + " mL",
                "less than the " + shape.volume() * 1e6 + " mL of the piece");
        return shape instanceof Loaded loaded && loaded.inset.length == 0
                ? new Loaded(loaded.shape, loaded.topping, new Inset[] {inset}, new Vec3[] {centre})
                : new Loaded(shape, NO_TOPPING, new Inset[] {inset}, new Vec3[] {centre});
    }

    /** The shape without its load. */
    public Shape shape() {
        return shape;
    }

    private double hidden() {
        return inset.length == 0 ? 0 : inset[0].volume();
    }

    @Override
    public String kind() {
        return shape.kind();
    }

    @Override
    public String text() {
        return shape.text();
    }

    /** What is left to fizz, m3. */
    @Override
    public double volume() {
        return shape.volume() - hidden();
    }

    @Override
    public double surface() {
        return shape.surface();
    }

    /** Of the material round the thing inside. */
    @Override
    public Vec3 centroid() {
        return inset.length == 0
                ? shape.centroid()
                : shape.centroid().times(shape.volume() / volume()).minus(insetAt[0].times(hidden() / volume()));
    }

    /** Of the shape; the layer on top is left out. */
    @Override
    public Extents extents() {
        return shape.extents();
    }

    @Override
    public double planArea() {
        return shape.planArea();
    }

    /** That of the shape until its front reaches the thing inside, which is taken to fill the deepest part. */
    @Override
    public DepthProfile depthProfile(Exposure exposure) {
        DepthProfile whole = shape.depthProfile(exposure);
        return hidden() == 0 ? whole : whole.without(hidden());
    }

    @Override
    public Optional<Hull> hull() {
        return shape.hull();
    }

    @Override
    public Optional<Hollow> hollow() {
        return shape.hollow();
    }

    @Override
    public double insetMass() {
        double mass = shape.insetMass();
        mass += topping.length == 0 ? 0 : topping[0].mass();
        return mass + (inset.length == 0 ? 0 : inset[0].mass());
    }

    @Override
    public double insetVolume() {
        return shape.insetVolume() + (topping.length == 0 ? 0 : topping[0].volume()) + hidden();
    }

    @Override
    public double insetInsideHull() {
        return shape.insetInsideHull() + hidden();
    }

    /** The layer lies level over the whole plan at the top as listed; a slope under it is not followed. */
    @Override
    public Vec3 insetCentroid() {
        Vec3 at = shape.insetCentroid();
        double mass = shape.insetMass();
        if (topping.length > 0) {
            double top = shape.extents().height() + topping[0].rise(shape.planArea());
            Vec3 layer = new Vec3(shape.centroid().x(), shape.centroid().y(), top);
            at = Inset.centre(mass, at, topping[0].mass(), layer);
            mass += topping[0].mass();
        }
        return inset.length == 0 ? at : Inset.centre(mass, at, inset[0].mass(), insetAt[0]);
    }

    @Override
    public double hullVolume() {
        return shape.hullVolume();
    }

    @Override
    public double surfaceSpread() {
        return shape.surfaceSpread();
    }

    @Override
    public List<Notice> notices() {
        return shape.notices();
    }
}
