package org.fizzhull.forecast.notice;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.drying.run.JarPressure;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.load.Loaded;

/**
 * What the reader of a forecast must know. Codes are stable. Those of the fizz stand in {@link
 * FizzNotices}, those of the drying beside its forecast; {@link #of} has their order. Stateless.
 */
public final class Notices {
    /** Told in place of a weight to aim for where no pressed weight reaches nine of ten. */
    public static final Notice NO_AIM = new Notice(
            "no-aim", "No weight of a pressed piece is where nine of ten of this batch just float, so none is given.");
    /** Told in its place where floating is not monotone in the weight in a tenth of the draws. */
    public static final Notice BENT = new Notice(
            "no-aim",
            "In a tenth of the draws or more some lighter piece sinks or some heavier one floats: no weight to aim for"
                    + " would be true of such pieces, so none is given.");
    /** Told where no draws were asked for. */
    public static final Notice CENTRAL_VALUES = new Notice(
            "central-values", "No draws were asked for: central values only, without probabilities or intervals.");

    /** Told where the balance of many draws stays near zero for long. */
    public static final Notice GRAZING = new Notice(
            "grazing",
            "In some draws its lift only just meets its weight for a long time: when it rises is then known to half a minute"
                    + " at best.");

    private static final Notice STILL = new Notice(
            "still-water", "Still water: no fizz and no clinging gas; whether it soaks through later is not computed.");
    private static final Notice USUAL_MIX =
            new Notice("usual-mix", "No recipe given: 2 parts bicarbonate, 1 citric acid, some starch assumed.");
    private static final Notice CLOSE = new Notice(
            "too-close-to-call",
            "In still water its weight is within half a per cent of the limit: too close to call.");
    private static final Notice SURFACE =
            new Notice("surface-estimated", "The surface of this shape is only estimated from a like one.");
    private static final Notice INSET = new Notice(
            "crystals",
            "A weight includes the crystals, and the float limit counts the water they push aside; they stay until the"
                    + " shell is gone and go down then.");
    private static final Notice ON_TOP = new Notice(
            "on-top",
            "What lies on top is taken to lie level at the highest point as listed, not to fizz, and to come off evenly"
                    + " while the face under it moves in by the layer's own thickness; nobody has measured that.");
    private static final Notice INSIDE =
            new Notice("inside", "The thing inside is taken to be sealed and to stay in until the piece is gone.");
    private static final Notice INSIDE_HEAVY = new Notice(
            "inside-heavy",
            "The thing inside is heavier than water: it takes the last of every floating piece down, which counts as"
                    + " sinking later.");
    private static final Notice INSIDE_LARGE = new Notice(
            "inside-large",
            "A ball as large as the thing inside would stick out there; it is taken to be flat enough to be covered.");
    private static final Notice BOAT =
            new Notice("boat", "An open hollow floats like a boat while its rim is dry; a ripple or a leak floods it.");
    /**
     * Distance from the still-water limit below which it is too close to call, share of the displacement (voyage.md,
     * 2).
     */
    private static final double CLOSE_SHARE = 0.005;

    /** A smaller share of the draws is not worth a word. */
    private static final double WORTH_TELLING = 0.005;

    private Notices() {}

    /**
     * {@return what the search for the critical weights met, with the number of draws it met it in}
     *
     * @param critical critical weights of the draws
     */
    public static List<Notice> critical(CriticalWeights critical) {
        List<Notice> notices = new ArrayList<>();
        int draws = critical.draws();
        int bent = critical.count(CriticalWeights.Met.NOT_MONOTONE);
        if (bent > 0) {
            notices.add(Notice.remark(
                    "not-monotone",
                    "In " + bent + " of " + draws + " draws some lighter piece sinks or some heavier one floats: the"
                            + " critical weight is the border that was looked for, and the piece of the draw itself was"
                            + " walked."));
        }
        ended(
                notices,
                critical,
                CriticalWeights.Met.ABOVE_RANGE,
                "above-range",
                "even the heaviest pressed piece floats");
        ended(
                notices,
                critical,
                CriticalWeights.Met.BELOW_RANGE,
                "below-range",
                "even the lightest pressed piece sinks");
        return notices;
    }

    /**
     * Adds that the search stopped at an end of its range, where that happened in more than half a per cent of the
     * draws.
     */
    private static void ended(
            List<Notice> notices, CriticalWeights critical, CriticalWeights.Met met, String code, String what) {
        if (critical.share(met) > WORTH_TELLING) {
            notices.add(Notice.remark(
                    code,
                    "In " + critical.count(met) + " of " + critical.draws() + " draws " + what
                            + ": there the critical weight is the end of the range, 0.3 to 1.67 g/cm3."));
        }
    }

    /**
     * {@return notices of a question and its central piece, in the order in which they are shown}
     *
     * @param question what is asked
     * @param piece the central piece
     */
    public static List<Notice> of(Question question, Piece piece) {
        Shape shape = question.shape();
        List<Notice> notices = new ArrayList<>(question.bath().notices());
        notices.addAll(shape.notices());
        notices.addAll(ofStorage(question, piece));
        notices.addAll(question.making().plan().notices());
        if (question.stillWater()) {
            notices.add(STILL);
        } else {
            fizzing(question, piece, notices);
        }
        double displaced = question.bath().density() * (shape.volume() + shape.insetVolume());
        if (Math.abs(piece.mass() / displaced - 1) < CLOSE_SHARE) {
            notices.add(CLOSE);
        }
        if (shape.bare().insetMass() > 0) {
            notices.add(INSET);
        }
        if (shape instanceof Loaded loaded) {
            notices.addAll(ofLoad(loaded, question));
        }
        if (shape.hollow().isPresent() && question.into() == Question.IntoBath.PLACED) {
            notices.add(BOAT);
        }
        question.making().mix().ifPresent(blend -> notices.addAll(blend.recipe().notices()));
        return notices;
    }

    /** How what a piece carries is taken. */
    private static List<Notice> ofLoad(Loaded loaded, Question question) {
        List<Notice> notices = new ArrayList<>(3);
        if (!loaded.toppings().isEmpty()) {
            notices.add(ON_TOP);
        }
        if (!loaded.held().isEmpty()) {
            notices.add(INSIDE);
        }
        double sunk = 0;
        for (Loaded.Held held : loaded.held()) {
            sunk += held.thing().mass()
                    - question.bath().density() * held.thing().volume();
        }
        if (sunk > 0 && !question.stillWater()) {
            notices.add(INSIDE_HEAVY);
        }
        notices.addAll(ofThings(loaded));
        return notices;
    }

    /**
     * {@return what is odd about the things inside}
     *
     * @param loaded what a piece carries
     */
    public static List<Notice> ofThings(Loaded loaded) {
        return loaded.sticksOut() ? List.of(INSIDE_LARGE) : List.of();
    }

    /** Pieces that are put away or wrapped in a rigid vessel always carry the line about jars, and their pressure. */
    private static List<Notice> ofStorage(Question question, Piece piece) {
        if (!(question.making() instanceof Moulded made)) {
            return List.of();
        }
        for (DryingPhase phase : made.plan().phases()) {
            if (phase.storage() || phase.wrap().rigid()) {
                double volume = JarPressure.volume(question.shape());
                double dry = (piece.mass() - question.shape().insetMass())
                        / (1 + made.blend().liquid().staying());
                JarPressure jar = JarPressure.of(
                        made.blend().moles().gas(),
                        dry,
                        1,
                        volume - question.shape().volume(),
                        phase.air().temperature());
                return List.of(JarPressure.CAUTION, JarPressure.notice(jar.overpressure(), volume));
            }
        }
        return List.of();
    }

    /** Adds what holds of a piece that may fizz. */
    private static void fizzing(Question question, Piece piece, List<Notice> notices) {
        Shape shape = question.shape();
        if (question.making() instanceof Making.Weighed weighed
                && weighed.blend().isEmpty()) {
            notices.add(USUAL_MIX);
        }
        if (shape.surfaceSpread() > 0) {
            notices.add(SURFACE);
        }
        FizzNotices.add(question, piece, notices);
    }
}
