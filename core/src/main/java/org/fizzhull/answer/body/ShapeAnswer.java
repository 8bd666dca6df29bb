package org.fizzhull.answer.body;

import static org.fizzhull.quantity.Units.inCubicCentimetres;
import static org.fizzhull.quantity.Units.inGrams;
import static org.fizzhull.quantity.Units.inMillimetres;
import static org.fizzhull.quantity.Units.inSquareCentimetres;

import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Extents;
import org.fizzhull.medium.Bath;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.shape.Shape;

/**
 * The geometry of one shape as the object that the command for shapes writes: sizes, surface, depth profile, and the mass that
 * just floats. Keys and units: cli/docs/contract.md, 4. No recipe and no fizz enter. Immutable.
 *
 * @param shape the shape asked about
 */
public record ShapeAnswer(Shape shape) implements AnswerBody {
    /**
     * Refuses what is missing.
     *
     * @param shape the shape asked about
     */
    public ShapeAnswer {
        Given.all("shape", shape);
    }

    /** Rows of the depth profile, evenly from the surface to the deepest point. */
    private static final int ROWS = 51;

    /** 1/cm in one 1/m. */
    private static final double PER_CENTIMETRE = 1e-2;

    @Override
    public String command() {
        return "shapes";
    }

    @Override
    public void keys(AnswerWriter to) {
        // all faces open: what is left at an inward depth, as in a bath
        DepthProfile profile = shape.depthProfile(DepthProfile.Exposure.ALL);
        Extents extents = shape.extents();
        to.text("shape", shape.text())
                .number("volume_cm3", inCubicCentimetres(shape.volume()))
                .number("surface_cm2", inSquareCentimetres(shape.surface()))
                .number("centroid_height_mm", inMillimetres(shape.centroid().z()))
                .number("length_mm", inMillimetres(extents.length()))
                .number("width_mm", inMillimetres(extents.width()))
                .number("height_mm", inMillimetres(extents.height()))
                .number("surface_to_volume_per_cm", PER_CENTIMETRE * surfaceToVolume())
                .number("hull_volume_cm3", inCubicCentimetres(shape.hullVolume()))
                .number("deepest_mm", inMillimetres(profile.deepest()))
                .number("float_limit_g", inGrams(floatLimit()));
        to.array("depth_profile");
        for (int i = 0; i < ROWS; i++) {
            double depth = profile.deepest() * i / (ROWS - 1);
            to.object()
                    .number("depth_mm", inMillimetres(depth))
                    .number("volume_cm3", inCubicCentimetres(profile.volume(depth)))
                    .number("surface_cm2", inSquareCentimetres(profile.area(depth)))
                    .end();
        }
        to.endArray();
    }

    /** {@return surface over volume, 1/m} */
    public double surfaceToVolume() {
        return shape.surface() / shape.volume();
    }

    /** {@return the mass that just floats in 38 C water, without gas, kg} */
    public double floatLimit() {
        return density() * shape.volume();
    }

    /** {@return the density of 38 C water, kg/m3} */
    public static double density() {
        return Bath.at(Question.DEFAULT_TEMPERATURE).density();
    }

    /** {@return that surface and profile are estimated, where they are; else what the shape itself tells} */
    @Override
    public List<Notice> notices() {
        return shape.surfaceSpread() == 0
                ? shape.notices()
                : List.of(new Notice(
                        "surface-estimated",
                        "Surface and depth profile are estimated from a like shape, within about "
                                + Math.round(100 * shape.surfaceSpread()) + "\u00A0%."));
    }
}
