package org.fizzhull.shape.kind;

import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.shape.body.DryingSeries;
import org.fizzhull.shape.revolved.Profile2D;
import org.fizzhull.shape.size.SizeCheck;
import org.fizzhull.shape.size.SizeText;

/**
 * A flat round tablet, its two edges rounded.
 * <pre>{@code
 * Puck tablet = Puck.ofDiameterHeightAndEdge(millimetres(70), millimetres(28), millimetres(3));
 * }</pre>
 *
 * <p>Volume, surface and depth profile by Steiner's formula ({@code RoundedPrism}); exact. Closed forms:
 * docs/physics/hydrostatics.md, 1. Immutable.
 *
 * @param diameter across the round face, edges included, 0.005 to 1 m
 * @param height along z, 0.001 to 1 m
 * @param edge radius of the edges, 0 to half the smaller of diameter and height, m
 */
public record Puck(double diameter, double height, double edge) implements TurnedShape {
    /**
     * Refuses sizes out of range.
     *
     * @param diameter across the round face, edges included, 0.005 to 1 m
     * @param height along z, 0.001 to 1 m
     * @param edge radius of the edges, 0 to half the smaller of diameter and height, m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range}
     */
    public Puck {
        SizeCheck.size("diameter", diameter);
        SizeCheck.height(height);
        SizeCheck.edge(edge, Math.min(diameter, height));
    }

    /**
     * {@return a sharp-edged puck of diameter and height, m}
     *
     * @param diameter across the round face, edges included, 0.005 to 1 m
     * @param height along z, 0.001 to 1 m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for sizes beyond these
     */
    public static Puck ofDiameterAndHeight(double diameter, double height) {
        return new Puck(diameter, height, 0);
    }

    /**
     * {@return a puck whose edges are rounded with radius {@code edge}, m}
     *
     * @param diameter across the round face, edges included, 0.005 to 1 m
     * @param height along z, 0.001 to 1 m
     * @param edge radius of the edges, 0 to half the smaller of diameter and height, m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for sizes beyond these
     */
    public static Puck ofDiameterHeightAndEdge(double diameter, double height, double edge) {
        return new Puck(diameter, height, edge);
    }

    /** The core disc, thickened by the edge. */
    @Override
    public RoundedPrism erosion() {
        double a = diameter / 2 - edge;
        return new RoundedPrism(Math.PI * a * a, 2 * Math.PI * a, a, RoundedPrism.DISC, height, edge);
    }

    @Override
    public String kind() {
        return "puck";
    }

    @Override
    public String text() {
        String rounded = edge == 0 ? "" : ", edge=" + SizeText.mm(edge);
        return "puck(diameter=" + SizeText.mm(diameter) + ", height=" + SizeText.mm(height) + rounded + ")";
    }

    @Override
    public Extents extents() {
        return new Extents(diameter, diameter, height);
    }

    /** Exact. On a tray the lower flat is shut and the rounded rim about it open. */
    @Override
    public DepthProfile depthProfile(DepthProfile.Exposure exposure) {
        return erosion().profile(exposure);
    }

    /** Either flat, where the flats are nearer than the side. */
    @Override
    public Optional<DepthProfile> depthProfileAfloat(RestingAttitude rest) {
        double flat = diameter / 2 - edge;
        return height <= diameter && rest.keepsUp(Math.PI * flat * flat)
                ? Optional.of(depthProfile(DepthProfile.Exposure.TRAY))
                : Optional.empty();
    }

    /** A sharp cylinder by its series; on a tray it dries as one of twice the height. */
    @Override
    public OptionalDouble diffusionTime(DepthProfile.Exposure exposure) {
        if (edge != 0) {
            return TurnedShape.super.diffusionTime(exposure);
        }
        return OptionalDouble.of(
                DryingSeries.cylinder(diameter, exposure == DepthProfile.Exposure.TRAY ? 2 * height : height));
    }

    /** Two quarter circles and the upright side between them; the flats are level faces. */
    @Override
    public Profile2D meridian() {
        double r = diameter / 2;
        double a = r - edge;
        Profile2D.Builder meridian = Profile2D.builder();
        if (edge > 0) {
            meridian.arc(edge, a, edge, edge, 1, 0, edge);
        }
        if (height > 2 * edge) {
            meridian.line(edge, r, height - edge, r);
        }
        if (edge > 0) {
            meridian.arc(height - edge, a, edge, edge, 1, height - edge, height);
        }
        return meridian.build();
    }
}
