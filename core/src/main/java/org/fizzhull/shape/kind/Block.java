package org.fizzhull.shape.kind;

import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.body.DryingSeries;
import org.fizzhull.shape.body.PolyhedronHull;
import org.fizzhull.shape.size.SizeCheck;
import org.fizzhull.shape.size.SizeText;

/**
 * A bar or a cube, its twelve edges rounded, lying on the side of length and width.
 * <pre>{@code
 * Block bar = Block.ofSides(millimetres(60), millimetres(40), millimetres(30));
 * }</pre>
 *
 * <p>Volume, surface and depth profile by Steiner's formula ({@code RoundedPrism}); exact. Closed forms:
 * docs/physics/hydrostatics.md, 1. As a hull: the polyhedron, or for rounded edges facets that enclose the same volume
 * ({@link RoundedBlockMesh}). Immutable.
 *
 * @param length along x, 0.005 to 1 m
 * @param width along y, 0.005 to 1 m
 * @param height along z, 0.001 to 1 m
 * @param edge radius of the edges, 0 to half the smallest side, m
 */
public record Block(double length, double width, double height, double edge) implements ClosedForm {
    /**
     * Refuses sizes out of range.
     *
     * @param length along x, 0.005 to 1 m
     * @param width along y, 0.005 to 1 m
     * @param height along z, 0.001 to 1 m
     * @param edge radius of the edges, 0 to half the smallest side, m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range}
     */
    public Block {
        SizeCheck.size("length", length);
        SizeCheck.size("width", width);
        SizeCheck.height(height);
        SizeCheck.edge(edge, Math.min(Math.min(length, width), height));
    }

    /**
     * {@return a sharp-edged block, m}
     *
     * @param length along x, 0.005 to 1 m
     * @param width along y, 0.005 to 1 m
     * @param height along z, 0.001 to 1 m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for sizes beyond these
     */
    public static Block ofSides(double length, double width, double height) {
        return new Block(length, width, height, 0);
    }

    /**
     * {@return a block whose edges are rounded with radius {@code edge}, m}
     *
     * @param length along x, 0.005 to 1 m
     * @param width along y, 0.005 to 1 m
     * @param height along z, 0.001 to 1 m
     * @param edge radius of the edges, 0 to half the smallest side, m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for sizes beyond these
     */
    public static Block ofSidesAndEdge(double length, double width, double height, double edge) {
        return new Block(length, width, height, edge);
    }

    /** The core rectangle, thickened by the edge. */
    @Override
    public RoundedPrism erosion() {
        double x = length - 2 * edge;
        double y = width - 2 * edge;
        return new RoundedPrism(x * y, 2 * (x + y), Math.min(x, y) / 2, RoundedPrism.RECTANGLE, height, edge);
    }

    @Override
    public String kind() {
        return "block";
    }

    @Override
    public String text() {
        String rounded = edge == 0 ? "" : ", edge=" + SizeText.mm(edge);
        return "block(length=" + SizeText.mm(length) + ", width=" + SizeText.mm(width) + ", height="
                + SizeText.mm(height) + rounded + ")";
    }

    @Override
    public Extents extents() {
        return new Extents(length, width, height);
    }

    @Override
    public double planArea() {
        return erosion().section(edge);
    }

    /** Exact. On a tray the lower flat is shut and the rounded rim about it open. */
    @Override
    public DepthProfile depthProfile(DepthProfile.Exposure exposure) {
        return erosion().profile(exposure);
    }

    /** Either of its two largest sides, whichever side it is listed on. */
    @Override
    public Optional<DepthProfile> depthProfileAfloat(RestingAttitude rest) {
        Block lying = lying();
        double flat = (lying.length - 2 * edge) * (lying.width - 2 * edge);
        return rest.keepsUp(flat) ? Optional.of(lying.depthProfile(DepthProfile.Exposure.TRAY)) : Optional.empty();
    }

    /** The same block with its least side upright. */
    private Block lying() {
        double least = Math.min(height, Math.min(width, length));
        return height == least
                ? this
                : width == least ? new Block(length, height, width, edge) : new Block(height, width, length, edge);
    }

    /** A sharp block by its series; on a tray it dries as one of twice the height. */
    @Override
    public OptionalDouble diffusionTime(DepthProfile.Exposure exposure) {
        if (edge != 0) {
            return ClosedForm.super.diffusionTime(exposure);
        }
        return OptionalDouble.of(
                DryingSeries.block(length, width, exposure == DepthProfile.Exposure.TRAY ? 2 * height : height));
    }

    /** On the side across its least size, the first of equal ones in the order height, width, length. */
    @Override
    public RestingAttitude restingAttitude() {
        double least = Math.min(height, Math.min(width, length));
        Vec3 up = height == least ? Vec3.UP : width == least ? new Vec3(0, 1, 0) : new Vec3(1, 0, 0);
        double across = height == least ? length : height;
        double along = width == least && height != least ? length : width;
        double corners = (4 - Math.PI) * edge * edge;
        return new RestingAttitude(up, least, across * along - corners, edge == 0);
    }

    /** Twelve facets where the edges are sharp; else facets in their place, of exactly the same volume. */
    @Override
    public Optional<Hull> hull() {
        RoundedBlockMesh mesh = new RoundedBlockMesh(this);
        return Optional.of(new PolyhedronHull(mesh.mesh(), mesh.relativeError()));
    }
}
