package org.fizzhull.shape.factory;

import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Block;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Capsule;
import org.fizzhull.shape.kind.Cone;
import org.fizzhull.shape.kind.Dome;
import org.fizzhull.shape.kind.Egg;
import org.fizzhull.shape.kind.Filled;
import org.fizzhull.shape.kind.Geode;
import org.fizzhull.shape.kind.Heart;
import org.fizzhull.shape.kind.Puck;
import org.fizzhull.shape.kind.Ring;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.kind.Star;

/**
 * The shapes with closed forms. Lengths in m, as {@code Units.millimetres} gives them, and those of the piece, that is, inside
 * the mould; z is up as the shape is listed.
 * <pre>{@code
 * Shape ball = Shapes.sphere(millimetres(65));
 * Shape star = Shapes.star(5, millimetres(80), millimetres(45), millimetres(30));
 * }</pre>
 *
 * <p>Volumes, surfaces and depth profiles are exact, of a star to 1e-6 (docs/physics/hydrostatics.md, 1). What comes back is
 * immutable, serializable and equal where its kind and its sizes are; {@link Shape#text} says both. The same kinds are written as
 * text ({@code shape.text.ShapeText}), a body from a file is a {@code shape.meshed.MeshShape}. Sizes out of range are a {@link
 * Refusal} that says the range. Stateless.
 */
public final class Shapes {
    private Shapes() {}

    /**
     * {@return a ball}
     *
     * @param diameter 0.005 to 1 m
     * @throws Refusal {@code out-of-range}
     */
    public static Shape sphere(double diameter) {
        return Sphere.ofDiameter(diameter);
    }

    /**
     * {@return a ball with the belt that stays between two overfilled halves of its mould}
     *
     * @param diameter of the two half balls, 0.005 to 1 m
     * @param seam length of the cylinder between the two half balls, 0 to the diameter, m
     * @throws Refusal {@code out-of-range}
     */
    public static Shape sphere(double diameter, double seam) {
        return Sphere.ofDiameterAndSeam(diameter, seam);
    }

    /**
     * {@return half a ball on its flat base}
     *
     * @param diameter of the base, 0.005 to 1 m
     * @throws Refusal {@code out-of-range}
     */
    public static Shape dome(double diameter) {
        return Dome.ofDiameter(diameter);
    }

    /**
     * {@return a spherical cap on its flat base}
     *
     * @param diameter of the base, 0.005 to 1 m
     * @param height from base to top, more than 0 up to half the diameter, m
     * @throws Refusal {@code out-of-range}
     */
    public static Shape dome(double diameter, double height) {
        return Dome.ofDiameterAndHeight(diameter, height);
    }

    /**
     * {@return half of a hollow ball, open side up}
     *
     * @param diameter outer diameter, 0.005 to 1 m
     * @param wall thickness, between 0 and half the diameter, m
     * @throws Refusal {@code out-of-range}
     */
    public static Shape bowl(double diameter, double wall) {
        return Bowl.ofDiameterAndWall(diameter, wall);
    }

    /**
     * {@return a bowl whose hollow is lined with crystals; its volume and surface leave them out}
     *
     * @param diameter outer diameter, 0.005 to 1 m
     * @param wall thickness of the shell, between 0 and half the diameter, m
     * @param crystals mass of the crystals, kg: more than 0, and no more than the hollow holds
     * @throws Refusal {@code out-of-range}
     */
    public static Shape geode(double diameter, double wall, double crystals) {
        return Geode.ofDiameterWallAndCrystals(diameter, wall, crystals);
    }

    /**
     * {@return a flat round tablet with sharp edges}
     *
     * @param diameter across the round face, 0.005 to 1 m
     * @param height along z, 0.001 to 1 m
     * @throws Refusal {@code out-of-range}
     */
    public static Shape puck(double diameter, double height) {
        return Puck.ofDiameterAndHeight(diameter, height);
    }

    /**
     * {@return a flat round tablet with rounded edges}
     *
     * @param diameter across the round face, edges included, 0.005 to 1 m
     * @param height along z, 0.001 to 1 m
     * @param edge radius of the edges, 0 to half the smaller of diameter and height, m
     * @throws Refusal {@code out-of-range}
     */
    public static Shape puck(double diameter, double height, double edge) {
        return Puck.ofDiameterHeightAndEdge(diameter, height, edge);
    }

    /**
     * {@return an egg with two equal ends, standing on one}
     *
     * @param length along z, from the diameter to 1 m
     * @param diameter across, 0.005 to 1 m
     * @throws Refusal {@code out-of-range}
     */
    public static Shape egg(double length, double diameter) {
        return Egg.ofLengthAndDiameter(length, diameter);
    }

    /**
     * {@return a ring with a round tube, lying flat}
     *
     * @param diameter outer diameter, 0.005 to 1 m
     * @param tube diameter of the tube, up to half the outer diameter, where the hole closes, m
     * @throws Refusal {@code out-of-range}
     */
    public static Shape ring(double diameter, double tube) {
        return Ring.ofDiameterAndTube(diameter, tube);
    }

    /**
     * {@return a bar with sharp edges, lying on the side of length and width}
     *
     * @param length along x, 0.005 to 1 m
     * @param width along y, 0.005 to 1 m
     * @param height along z, 0.001 to 1 m
     * @throws Refusal {@code out-of-range}
     */
    public static Shape block(double length, double width, double height) {
        return Block.ofSides(length, width, height);
    }

    /**
     * {@return a bar with rounded edges, lying on the side of length and width}
     *
     * @param length along x, 0.005 to 1 m
     * @param width along y, 0.005 to 1 m
     * @param height along z, 0.001 to 1 m
     * @param edge radius of the edges, 0 to half the smallest side, m
     * @throws Refusal {@code out-of-range}
     */
    public static Shape block(double length, double width, double height, double edge) {
        return Block.ofSidesAndEdge(length, width, height, edge);
    }

    /**
     * {@return a cone on its base}
     *
     * @param diameter of the base, 0.005 to 1 m
     * @param height along z, 0.001 to 1 m
     * @throws Refusal {@code out-of-range}
     */
    public static Shape cone(double diameter, double height) {
        return Cone.ofDiameterAndHeight(diameter, height);
    }

    /**
     * {@return a cone that ends in a flat top, on its base}
     *
     * @param diameter of the base, 0.005 to 1 m
     * @param height along z, 0.001 to 1 m
     * @param top diameter of the flat top, 0 to that of the base, m
     * @throws Refusal {@code out-of-range}
     */
    public static Shape cone(double diameter, double height, double top) {
        return Cone.ofDiameterHeightAndTop(diameter, height, top);
    }

    /**
     * {@return a cylinder between two half balls, standing}
     *
     * @param length over both ends, along z, from the diameter to 1 m
     * @param diameter across, 0.005 to 1 m
     * @throws Refusal {@code out-of-range}
     */
    public static Shape capsule(double length, double diameter) {
        return Capsule.ofLengthAndDiameter(length, diameter);
    }

    /**
     * {@return an upright star, one point along +x}
     *
     * @param points number of points, 3 to 24
     * @param diameter over the outer points, 0.005 to 1 m
     * @param inner diameter of the circle through the notches, up to that of the points, m
     * @param height along z, 0.001 to 1 m
     * @throws Refusal {@code out-of-range}
     */
    public static Shape star(int points, double diameter, double inner, double height) {
        return Star.ofPointsDiameterInnerAndHeight(points, diameter, inner, height);
    }

    /**
     * {@return an upright heart}
     *
     * @param width across the lobes, 0.005 to 1 m
     * @param height along z, 0.001 to 1 m
     * @throws Refusal {@code out-of-range}
     */
    public static Shape heart(double width, double height) {
        return Heart.ofWidthAndHeight(width, height);
    }

    /**
     * {@return a mould known by the water that fills it: its volume is that of the water, all else that of a family of alike bodies
     * scaled to it, with a spread of the surface that says how far such a mould may differ}
     *
     * @param water mass of the water, kg, 0.001 to 20 kg
     * @param like family: {@code sphere}, {@code dome}, {@code puck}, {@code heart}, {@code shell} or {@code figure}
     * @throws Refusal {@code out-of-range}, {@code unknown-family}
     */
    public static Shape filled(double water, String like) {
        return Filled.ofWater(water, Filled.Family.named(like));
    }
}
