package org.fizzhull.cli.shapes;

import static org.fizzhull.quantity.Units.inCubicCentimetres;
import static org.fizzhull.quantity.Units.inGrams;
import static org.fizzhull.quantity.Units.inMillimetres;
import static org.fizzhull.quantity.Units.inSquareCentimetres;

import java.io.OutputStream;
import java.util.List;
import org.fizzhull.cli.text.Json;
import org.fizzhull.cli.text.Say;
import org.fizzhull.cli.text.ShapeWords;
import org.fizzhull.cli.text.Table;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Exposure;
import org.fizzhull.geometry.Extents;
import org.fizzhull.hydrostatics.BoatLimit;
import org.fizzhull.medium.Bath;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.shape.Shape;

/** The figures of one shape, as the {@code shapes} object and as a table. */
public final class ShapesText {
    /** Rows of the depth profile in JSON. */
    private static final int ROWS = 51;

    private static final int DIGITS = 4;

    private static final String INSET = "; the shell alone: a weighed piece has its crystals in it";

    private ShapesText() {}

    /** Writes the object. */
    public static void json(OutputStream out, Shape shape) {
        DepthProfile profile = shape.depthProfile(Exposure.ALL);
        Extents extents = shape.extents();
        try (Json json = Json.open(out, "shapes")) {
            json.text("shape", shape.text())
                    .number("volume_cm3", inCubicCentimetres(shape.volume()))
                    .number("surface_cm2", inSquareCentimetres(shape.surface()))
                    .number("centroid_height_mm", inMillimetres(shape.centroid().z()))
                    .number("length_mm", inMillimetres(extents.length()))
                    .number("width_mm", inMillimetres(extents.width()))
                    .number("height_mm", inMillimetres(extents.height()))
                    .number("surface_to_volume_per_cm", surfaceToVolume(shape))
                    .number("hull_volume_cm3", inCubicCentimetres(shape.hullVolume()))
                    .number("deepest_mm", inMillimetres(profile.deepest()))
                    .number("float_limit_g", inGrams(limit(shape)));
            json.array("depth_profile");
            for (int i = 0; i < ROWS; i++) {
                double depth = profile.deepest() * i / (ROWS - 1);
                json.object()
                        .number("depth_mm", inMillimetres(depth))
                        .number("volume_cm3", inCubicCentimetres(profile.volume(depth)))
                        .number("surface_cm2", inSquareCentimetres(profile.area(depth)))
                        .end();
            }
            json.endArray().notices(notices(shape));
        }
    }

    /** One plain sentence. */
    public static String sentence(Shape shape) {
        String text = ShapeWords.piece(shape);
        return Table.paragraph(Character.toUpperCase(text.charAt(0)) + text.substring(1) + " holds "
                + Decimals.text(inCubicCentimetres(shape.volume()), DIGITS) + " cm3 and floats, without gas, up to "
                + Say.grams(limit(shape)) + '.');
    }

    /** Sentence and table. */
    public static String of(Shape shape) {
        DepthProfile profile = shape.depthProfile(Exposure.ALL);
        Extents extents = shape.extents();
        Table table = new Table();
        table.row("shape", shape.text())
                .row("size", ShapeWords.box(extents))
                .row("volume", Decimals.text(inCubicCentimetres(shape.volume()), DIGITS) + " cm3")
                .row("surface", Decimals.text(inSquareCentimetres(shape.surface()), DIGITS) + " cm2")
                .row(
                        "surface per volume",
                        Decimals.text(surfaceToVolume(shape), 3)
                                + " per cm: more surface, more clinging gas, faster fizz and drying")
                .row(
                        "float limit",
                        Say.grams(limit(shape)) + " in " + Say.celsius(Question.DEFAULT_TEMPERATURE)
                                + " water, without clinging gas" + (shape.insetMass() > 0 ? INSET : ""))
                .row("deepest point", Say.tenths(inMillimetres(profile.deepest())) + " mm from the nearest face");
        if (shape.hollow().isPresent()) {
            double closed = shape.hullVolume();
            table.row(
                    "closed by its rim",
                    Decimals.text(inCubicCentimetres(closed), DIGITS) + " cm3; placed dry it floats up to "
                            + Say.grams(BoatLimit.displaced(shape, density()) * density()));
        }
        StringBuilder out = new StringBuilder(sentence(shape)).append('\n').append(table);
        List<Notice> notices = notices(shape);
        if (!notices.isEmpty()) {
            out.append('\n');
        }
        for (Notice notice : notices) {
            out.append(Table.paragraph("Note: " + notice.text()));
        }
        return out.toString();
    }

    private static double surfaceToVolume(Shape shape) {
        return shape.surface() / shape.volume() / 100;
    }

    private static double limit(Shape shape) {
        return density() * shape.volume();
    }

    private static double density() {
        return Bath.at(Question.DEFAULT_TEMPERATURE).density();
    }

    private static List<Notice> notices(Shape shape) {
        return shape.surfaceSpread() == 0
                ? shape.notices()
                : List.of(new Notice(
                        "surface-estimated",
                        "Surface and depth profile are estimated from a like shape, within about "
                                + Say.percent(shape.surfaceSpread()) + '.'));
    }
}
