package org.fizzhull.cli.shapes;

import static org.fizzhull.quantity.Units.inCubicCentimetres;
import static org.fizzhull.quantity.Units.inMillimetres;
import static org.fizzhull.quantity.Units.inSquareCentimetres;

import java.util.List;
import org.fizzhull.answer.body.ShapeAnswer;
import org.fizzhull.cli.text.NoticeText;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.ShapeWords;
import org.fizzhull.cli.text.Table;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Extents;
import org.fizzhull.hydrostatics.BoatLimit;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.shape.Shape;

/** The figures of one shape as a table. */
public final class ShapesText {
    private static final int DIGITS = 4;

    private static final String INSET = "; the shell alone: a weighed piece has its crystals in it";

    private ShapesText() {}

    /** One plain sentence. */
    public static String sentence(Shape shape) {
        ShapeAnswer answer = new ShapeAnswer(shape);
        String text = ShapeWords.piece(shape);
        return Table.paragraph(Character.toUpperCase(text.charAt(0)) + text.substring(1) + " holds "
                + Decimals.text(inCubicCentimetres(shape.volume()), DIGITS) + " cm3 and floats, without gas, up to "
                + NumberText.grams(answer.floatLimit()) + '.');
    }

    /** Sentence and table. */
    public static String of(Shape shape) {
        ShapeAnswer answer = new ShapeAnswer(shape);
        DepthProfile profile = shape.depthProfile(DepthProfile.Exposure.ALL);
        Extents extents = shape.extents();
        Table table = new Table();
        table.row("shape", NumberText.joined(shape.text()))
                .row("size", ShapeWords.box(extents))
                .row("volume", Decimals.text(inCubicCentimetres(shape.volume()), DIGITS) + " cm3")
                .row("surface", Decimals.text(inSquareCentimetres(shape.surface()), DIGITS) + " cm2")
                .row(
                        "surface per volume",
                        Decimals.text(answer.surfaceToVolume() / 100, 3)
                                + " per cm: more surface, more clinging gas, faster fizz and drying")
                .row(
                        "float limit",
                        NumberText.grams(answer.floatLimit()) + " in "
                                + NumberText.celsius(Question.DEFAULT_TEMPERATURE) + " water, without clinging gas"
                                + (shape.insetMass() > 0 ? INSET : ""))
                .row(
                        "deepest point",
                        NumberText.tenths(inMillimetres(profile.deepest())) + NumberText.UNIT
                                + "mm from the nearest face");
        if (shape.hollow().isPresent()) {
            double closed = shape.hullVolume();
            table.row(
                    "closed by its rim",
                    Decimals.text(inCubicCentimetres(closed), DIGITS) + " cm3; placed dry it floats up to "
                            + NumberText.grams(
                                    BoatLimit.displaced(shape, ShapeAnswer.density()) * ShapeAnswer.density()));
        }
        StringBuilder out = new StringBuilder(sentence(shape)).append('\n').append(table);
        List<Notice> notices = answer.notices();
        if (!notices.isEmpty()) {
            out.append('\n');
        }
        return out.append(NoticeText.paragraphs(notices)).toString();
    }
}
