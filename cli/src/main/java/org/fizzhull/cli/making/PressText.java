package org.fizzhull.cli.making;

import static org.fizzhull.quantity.Units.inGrams;
import static org.fizzhull.quantity.Units.inGramsPerCubicCentimetre;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.answer.body.AnswerBody;
import org.fizzhull.answer.body.PressAnswer;
import org.fizzhull.answer.body.PressReport;
import org.fizzhull.cli.drying.DriedText;
import org.fizzhull.cli.floating.MeasuredText;
import org.fizzhull.cli.text.Answer;
import org.fizzhull.cli.text.FirstAnswer;
import org.fizzhull.cli.text.NoticeText;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.ShapeWords;
import org.fizzhull.cli.text.Table;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.forecast.PressForecast;
import org.fizzhull.forecast.PressForecast.PieceOut;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.pressing.PressWord;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.Role;

/** What a mix does under a press, in a maker's words. */
public final class PressText implements Answer {
    /** Beyond this a number of hours says more than is known, s. */
    static final double HOURS = 4 * 3600;

    /** Nobody feels less than this, kg. */
    private static final double LIGHTEST = 0.1;

    /** A hand on a table: about 40 kg of body on both palms (common practice, no source), N. */
    private static final double HANDS_REACH = 400;

    private static final Notice NO_SHAPE = new Notice("no-shape", "No shape given: liquid is told for a 65 mm ball.");

    private final PressReport report;
    private final PressForecast forecast;
    private final boolean mould;
    private final Blend blend;

    /** Of one answer. */
    public PressText(PressReport report) {
        this.report = report;
        this.forecast = report.forecast();
        this.mould = report.mould();
        this.blend = forecast.blend();
    }

    @Override
    public String brief() {
        return Table.paragraph(fizzless() + sentence()) + cautions();
    }

    @Override
    public String whole() {
        return first().whole();
    }

    @Override
    public String shown() {
        return first().text();
    }

    private FirstAnswer first() {
        List<Notice> notices = new ArrayList<>(report.notices());
        if (!mould) {
            notices.add(NO_SHAPE);
        }
        return FirstAnswer.of(
                Table.paragraph(fizzless() + sentence()) + '\n' + table(),
                notices,
                Effervescence.of(blend.moles()).notice(),
                ownCautions());
    }

    @Override
    public AnswerBody body() {
        return new PressAnswer(report);
    }

    /** What is said before all else of a mix that does not fizz; empty where it does. */
    private String fizzless() {
        return Effervescence.of(blend.moles())
                .notice()
                .map(notice -> notice.text() + ' ')
                .orElse("");
    }

    /** One plain sentence. */
    String sentence() {
        if (forecast.piece().isEmpty()) {
            PressForecast.Point light = at(PressWord.LIGHT);
            PressForecast.Point hard = at(PressWord.HARD);
            return mould
                    ? "This mix fills " + ShapeWords.round(forecast.shape()) + " with about " + round(light.dampMass())
                            + " pressed lightly, " + round(at(PressWord.FIRM).dampMass()) + " firmly and "
                            + round(hard.dampMass()) + " hard, while damp."
                    : "This mix comes out damp at about " + density(light) + " pressed lightly, "
                            + density(at(PressWord.FIRM)) + " firmly and " + density(hard) + " hard.";
        }
        PieceOut piece = forecast.piece().get();
        String name = ShapeWords.round(forecast.shape());
        if (piece.making() instanceof Moulded.Filled filled) {
            return "To get " + NumberText.grams(filled.dampMass()) + " of this mix into " + name + ", lean about "
                    + kilograms(piece.handForce().median()) + NumberText.UNIT + "kg on it"
                    + leaningRange(piece.handForce()) + "; " + hold(piece) + '.';
        }
        String fills = ", this mix fills " + name + " with about "
                + round(piece.dampMass().median()) + range(piece.dampMass()) + " while damp; " + hold(piece);
        Moulded.Pressed pressed = (Moulded.Pressed) piece.making();
        return word(pressed)
                .map(word -> how(word) + fills + ", and you would be " + leaning(piece) + '.')
                .orElseGet(() -> "With about " + kilograms(piece.handForce().median()) + NumberText.UNIT
                        + "kg leaning on it (" + Decimals.text(pressed.pressure() * 1e-3, 3) + NumberText.UNIT + "kPa)"
                        + fills + '.');
    }

    @Override
    public String behind() {
        StringBuilder out = new StringBuilder("\nBehind it\n");
        Table table = new Table();
        table.row(
                "grains alone",
                Decimals.text(inGramsPerCubicCentimetre(blend.trueDensity()), 4) + " g/cm3 without pores");
        forecast.piece().flatMap(PieceOut::narrowing).ifPresent(known -> MeasuredText.behind(known, table));
        forecast.piece().ifPresent(piece -> {
            table.row("solid fraction", interval(piece.solidFraction(), 1));
            table.row("pressure at the top", interval(piece.topPressure(), 1e-3) + " kPa");
            table.row("hand force", interval(piece.handForce(), 1) + " N");
            table.row("saturation", interval(piece.saturation(), 1));
            table.row("damp strength", interval(piece.strength(), 1e-3) + " kPa");
            table.row(
                    "other packing model",
                    Decimals.text(piece.central().modelSpread(), 2)
                            + " on the solid fraction, by a linear mixture model; the forecast allows +- 0.015");
        });
        if (forecast.workingTimeMost() > 0 && !Double.isInfinite(forecast.workingTimeMost())) {
            table.row(
                    "2 % of the fizz is gone",
                    "after " + minutes(forecast.workingTime()) + " (" + minutes(forecast.workingTimeLeast()) + " to "
                            + minutes(forecast.workingTimeMost()) + "; no published rate)");
        }
        return out.append(table)
                .append(Table.paragraph("Press constants below 1 MPa are not published for these powders: they are"
                        + " assumed and wide. One weighed piece sharpens them most."))
                .toString();
    }

    private Table table() {
        Table table = new Table();
        forecast.piece().ifPresent(piece -> {
            table.row("weight, damp", weight(piece.dampMass()) + range(piece.dampMass()));
            table.row("holds", shares(piece));
            piece.narrowing().ifPresent(known -> MeasuredText.pressed(known, piece.dampMass(), table));
            table.row("press", leaning(piece) + leaningRange(piece.handForce()));
        });
        table.row(
                "poured, tapped",
                Decimals.text(inGramsPerCubicCentimetre(forecast.looseDensity()), 3) + " and "
                        + Decimals.text(inGramsPerCubicCentimetre(forecast.tappedDensity()), 3)
                        + " g/cm3, the powders dry");
        table.row("liquid", liquid());
        if (Effervescence.of(blend.moles()).fizzes()) {
            table.row("time to press", hurry(forecast.workingTime()));
        }
        report.dried().ifPresent(dried -> DriedText.rows(dried).forEach(row -> table.row(row[0], row[1])));
        return table;
    }

    private String liquid() {
        double dry = blend.dryMass();
        Pressed.LiquidWindow window = forecast.window();
        String now = NumberText.grams(blend.recipe().wetMass()) + " for " + NumberText.grams(dry) + " of powder; ";
        return now + liquid(window, dry, report.dryingAsked());
    }

    /** The amounts that hold, for a mix with so much powder, kg. */
    static String liquid(Pressed.LiquidWindow window, double dry, boolean inThisAir) {
        String best = "near " + amount(window.best() * dry) + " it holds most surely, with a chance of "
                + NumberText.chance(window.share());
        return window.isEmpty()
                ? "no amount of these liquids together is likelier to hold" + (inThisAir ? " and dry in this air" : "")
                        + " than to fail; " + best
                : amount(window.low() * dry) + " to " + amount(window.high() * dry)
                        + " of these liquids together is likelier to hold than to crumble or be too wet; " + best;
    }

    private static String amount(double kilograms) {
        return NumberText.whole(inGrams(kilograms)) + NumberText.UNIT + "g";
    }

    /** How soon the mix must be pressed; shared with the plan of a batch. */
    static String hurry(double seconds) {
        if (Double.isInfinite(seconds)) {
            return "without water it may wait";
        } else if (seconds < 60) {
            return "at once: this much water takes 2 % of the fizz as it goes in";
        } else if (seconds > HOURS) {
            return "within the hour to be sure";
        }
        return "about " + minutes(seconds) + " until 2 % of the fizz is gone";
    }

    private String cautions() {
        return NoticeText.paragraphs(report.notices(), Notice.Kind.CAUTION) + ownCautions();
    }

    private String ownCautions() {
        StringBuilder out = new StringBuilder();
        PieceOut piece = forecast.piece().orElse(null);
        if (piece != null && piece.likeliest() == Pressed.Feel.TOO_WET) {
            out.append(Table.paragraph("Caution: Too wet, it goes on fizzing and swells: do not close it in."));
        }
        if (piece != null && piece.handForce().median() > HANDS_REACH) {
            out.append(Table.paragraph(
                    "Caution: More than hands press: mind fingers and wrists, and never reach below a lever press."));
        }
        boolean dusty = false;
        for (Recipe.Part part : blend.recipe().dry()) {
            Role role = part.ingredient().role();
            dusty |= role == Role.ACID || role == Role.SURFACTANT;
        }
        if (dusty) {
            out.append(
                    Table.paragraph("Caution: Wear mask and goggles when you tip the powders; dust of acid and foaming"
                            + " powder burns eyes and nose."));
        }
        return out.toString();
    }

    private PressForecast.Point at(PressWord word) {
        for (PressForecast.Point point : forecast.curve()) {
            if (point.topPressure() == word.pressure()) {
                return point;
            }
        }
        throw new IllegalStateException("the curve has no point at " + word);
    }

    /** The word that was said for how hard it is pressed; empty where a force or a pressure was. */
    private static Optional<PressWord> word(Moulded.Pressed pressed) {
        for (PressWord word : PressWord.values()) {
            if (word.pressure() == pressed.pressure() && pressed.pressSpread() > 1) {
                return Optional.of(word);
            }
        }
        return Optional.empty();
    }

    private static String how(PressWord word) {
        return switch (word) {
            case LIGHT -> "Pressed lightly";
            case FIRM -> "Pressed firmly";
            case HARD -> "Pressed hard";
        };
    }

    private static String hold(PieceOut piece) {
        double holds = piece.feel().getOrDefault(Pressed.Feel.HOLDS, 0.0);
        return switch (piece.likeliest()) {
            case HOLDS -> holds > 0.9 ? "it holds" : holds > 0.66 ? "it should hold" : "it may hold";
            case CRUMBLES -> "it will more likely crumble";
            case TOO_WET -> "it is more likely too wet";
        };
    }

    /** How surely it holds: what is not known of the mix is the same for every piece of it, so no share of pieces. */
    static String shares(PieceOut piece) {
        return "chance " + chance(piece, Pressed.Feel.HOLDS) + "; crumbles " + chance(piece, Pressed.Feel.CRUMBLES)
                + ", too wet " + chance(piece, Pressed.Feel.TOO_WET);
    }

    private static String chance(PieceOut piece, Pressed.Feel feel) {
        return NumberText.chance(piece.feel().getOrDefault(feel, 0.0));
    }

    /** Newtons as the weight that would lean on it. */
    private static String leaning(PieceOut piece) {
        return "leaning about " + kilograms(piece.handForce().median()) + NumberText.UNIT + "kg on it";
    }

    private static String interval(Interval x, double unit) {
        return Decimals.text(x.median() * unit, 3) + " (" + Decimals.text(x.low() * unit, 3) + " to "
                + Decimals.text(x.high() * unit, 3) + ')';
    }

    private static String range(Interval kilograms) {
        return kilograms.low() == kilograms.high()
                ? ""
                : " (" + NumberText.whole(inGrams(kilograms.low())) + " to " + round(kilograms.high()) + ')';
    }

    private static String leaningRange(Interval newtons) {
        if (newtons.low() == newtons.high()) {
            return "";
        }
        String most = kilograms(newtons.high()) + NumberText.UNIT + "kg)";
        return newtons.low() < LIGHTEST * PhysicalConstants.GRAVITY
                ? " (up to " + most
                : " (" + kilograms(newtons.low()) + " to " + most;
    }

    private static String kilograms(double newtons) {
        double kilograms = newtons / PhysicalConstants.GRAVITY;
        return kilograms < 0.95 ? Decimals.text(kilograms, 1) : Decimals.text(kilograms, 2);
    }

    /** The weight of a pressed piece: whole grams where its range says that more digits mean nothing. */
    public static String weight(Interval kilograms) {
        return inGrams(kilograms.high() - kilograms.low()) < 1
                ? NumberText.grams(kilograms.median())
                : round(kilograms.median());
    }

    private static String round(double kilograms) {
        return NumberText.whole(inGrams(kilograms)) + NumberText.UNIT + "g";
    }

    private static String density(PressForecast.Point point) {
        return Decimals.text(inGramsPerCubicCentimetre(point.dampDensity()), 3) + NumberText.UNIT + "g/cm3";
    }

    private static String minutes(double seconds) {
        double minutes = seconds / 60;
        return minutes < 100
                ? Decimals.text(minutes, 1) + NumberText.UNIT + "min"
                : Decimals.text(minutes / 60, 1) + NumberText.UNIT + "h";
    }
}
