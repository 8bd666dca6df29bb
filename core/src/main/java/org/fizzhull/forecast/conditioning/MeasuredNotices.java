package org.fizzhull.forecast.conditioning;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.load.Loaded;

/**
 * What a reader must know of a forecast that stands on measurements, and the refusals of measurements that a question
 * cannot have. What was taken for granted first, then what was not expected. Codes are stable. Stateless.
 */
final class MeasuredNotices {
    /** Field of a fizz time in refusals. */
    static final String FIZZ = "measured fizz";

    /** Field of a rise time in refusals. */
    static final String RISE = "measured rise";

    /** Field of a dunk in refusals. */
    static final String LIFT = "measured lift";

    /** Field of a result in refusals. */
    static final String RESULT = "measured result";

    /** Field of a drying log in refusals. */
    static final String LOG = "drying log";

    /** Field of a weighed piece in refusals. */
    static final String WEIGHED = "weighed";

    private static final Notice RISE_OF_A_CRUMB = new Notice(
            "measured-rise-any-size",
            "How wide the piece was when it came up was not said: that a mere crumb came up then is counted as possible,"
                    + " which leaves more doubt than a width would.");

    private static final Notice LIFT_UNTIMELY = new Notice(
            "measured-lift-untimely",
            "The first reading under water says most 2 to 5 s after the piece went under: before that its layer of gas is not"
                    + " full, later too much of it has fizzed away.");

    /** Seconds in a minute. */
    private static final double MINUTE = 60;
    /** Time from which minutes are given, s. */
    private static final double LONG = 90;

    private MeasuredNotices() {}

    /** What was taken for granted of the timed pieces. */
    static List<Notice> assumptions(Question question, Observations seen) {
        List<Notice> notices = new ArrayList<>();
        seen.fizz().forEach(piece -> addNew(notices, sameBath("fizz", piece, question)));
        seen.rise().forEach(piece -> addNew(notices, sameBath("rise", piece, question)));
        seen.lift().forEach(piece -> addNew(notices, sameBowl(piece, question)));
        if (seen.lift().stream().anyMatch(piece -> !piece.timely())) {
            notices.add(LIFT_UNTIMELY);
        }
        seen.rise()
                .forEach(piece -> addNew(
                        notices,
                        piece.left().isPresent()
                                ? new Notice(
                                        "measured-rise-left",
                                        "The width seen when it came up is taken as true to "
                                                + Decimals.text(1e3 * TimedPiece.WIDTH_DEVIATION, 2)
                                                + " mm (one standard deviation).")
                                : RISE_OF_A_CRUMB));
        seen.weighed().ifPresent(piece -> notices.add(weighed(piece, question.shape())));
        if (!seen.results().isEmpty()) {
            notices.add(new Notice(
                    "measured-result-as",
                    "What floated or did not is taken as pieces of the same mix and shape in the same bath; floated: up"
                            + " within 20 s; one result in a hundred may be written down wrongly."));
        }
        if (!seen.dried().isEmpty()) {
            notices.add(new Notice(
                    "drying-log-as",
                    "Drying logs are taken as of pieces of the same mix; only what they lose from one weighing to the"
                            + " next counts, true to a tenth of it and the scale."));
        }
        return notices;
    }

    /** Adds a notice whose sentence is not there yet: of several pieces of one weight it is given once. */
    private static void addNew(List<Notice> notices, Notice notice) {
        for (Notice told : notices) {
            if (told.text().equals(notice.text())) {
                return;
            }
        }
        notices.add(notice);
    }

    /** As what a dunk is taken. */
    private static Notice sameBowl(HeldPiece piece, Question question) {
        return new Notice(
                "measured-lift-as",
                (piece.readings().size() > 1
                                ? "The " + piece.readings().size() + " readings under water are taken as those"
                                : "The reading under water is taken as that")
                        + " of a piece of " + mass(piece.mass(), question)
                        + " before, of the same mix and shape, in a bowl as warm as the bath; true to "
                        + grams(piece.first().deviation())
                        + " (one standard deviation"
                        + (piece.readings().size() > 1 ? ", half of its variance the same in all of them" : "")
                        + "). To weigh a piece under water like this is"
                        + " this program's own proposal, checked by simulation only.");
    }

    /** Weight of a measured piece, in words. */
    private static String mass(OptionalDouble known, Question question) {
        return known.isPresent()
                ? grams(known.getAsDouble())
                : question.making() instanceof Making.Weighed weighed ? grams(weighed.mass()) : "this weight";
    }

    /** A reading, kg, outside of what was expected. */
    static Notice liftSurprise(double reading, Interval expected) {
        return new Notice(
                "measured-lift-unexpected",
                "A reading of " + grams(reading) + " lies outside what was expected of such a piece ("
                        + grams(expected.low()) + " to " + grams(expected.high())
                        + "): check that the scale was tared with the bowl, that the hoop touched neither bowl nor bottom,"
                        + " and the weight before, ahead of trusting the rest.");
    }

    /** As what a weighed press piece is taken. */
    static Notice weighed(WeighedPiece piece, Shape asked) {
        boolean loaded = piece.shape().isEmpty() && asked instanceof Loaded;
        return new Notice(
                "weighed-as",
                "The weighed piece is taken as the same mix, fresh from "
                        + (piece.shape().isPresent() ? "its" : "this") + " mould and still damp"
                        + (loaded ? "; its weight is that of the mix alone, without what is on top or inside." : "."));
    }

    /** As what a timed piece is taken. */
    private static Notice sameBath(String what, TimedPiece piece, Question question) {
        String mass = mass(piece.mass(), question);
        return new Notice(
                "measured-" + what + "-as",
                "The " + what + " time is taken as that of a piece of " + mass
                        + " of the same mix and shape in the same bath; true to "
                        + duration(piece.deviation()) + " (one standard deviation, from piece to piece).");
    }

    /** A fizz time, s, outside of what was expected. */
    static Notice fizzSurprise(double time, Interval expected) {
        return new Notice(
                "measured-fizz-unexpected",
                "A fizz time of " + duration(time) + " lies outside what was expected of such a piece ("
                        + band(expected) + "): check the watch, the weight and the bath before you trust the rest.");
    }

    /** A rise time, s, outside of what was expected. */
    static Notice riseSurprise(double time, Interval expected) {
        return new Notice(
                "measured-rise-unexpected",
                "A rise after " + duration(time) + " lies outside what was expected of such a piece where it sinks"
                        + " first (" + band(expected)
                        + "): check the watch, the weight and the size before you trust the rest.");
    }

    /** A rise, where only this share of the draws has any. */
    static Notice hardlyRises(double share) {
        return new Notice(
                "measured-rise-unexpected",
                "That such a piece sinks first and comes up was hardly expected ("
                        + Decimals.text(100 * share, 2)
                        + " of 100): check its weight and its size before you trust the rest.");
    }

    /** A weight, kg, outside of what was expected. */
    static Notice weightSurprise(double mass, Interval expected) {
        return new Notice(
                "weighed-unexpected",
                "A weight of " + grams(mass) + " lies outside what was expected of such a piece ("
                        + grams(expected.low()) + " to " + grams(expected.high())
                        + "): check recipe, mould and press before you trust the rest.");
    }

    /** Few effective draws. */
    static Notice few(double effective) {
        return new Notice(
                "few-draws-agree",
                "Few draws agree with what was measured (worth " + Math.round(effective)
                        + " independent ones): the last digits are rough; more draws make them finer.");
    }

    /** A rise of a piece that floats at once in every draw. */
    static Refusal floats(TimedPiece piece) {
        return new Refusal(
                "contradiction",
                RISE,
                duration(piece.time()) + " until it came up",
                "the time of a piece that can sink first",
                "In every draw a piece of this weight floats at once: check its weight and size, or leave out the time.");
    }

    /** A weighed press piece beside a piece that is not pressed. */
    static Refusal notPressed() {
        return new Refusal(
                "conflict",
                WEIGHED,
                "a weighed piece, and the weight of this one",
                "a weighed piece beside a press",
                "A weighed piece tells how the mix answers to pressing; of a known weight it tells nothing new.");
    }

    /** A drying log beside a piece that is not dried, or of another mix. */
    static Refusal notDried(String read) {
        return new Refusal(
                "conflict",
                LOG,
                read,
                "a log of pieces of this mix, and a piece that dries",
                "A log tells how the mix dries; tell how the piece that is asked about is made and dried, or leave out the"
                        + " log.");
    }

    /** A measurement of the fizz, in still water. */
    static Refusal stillWater() {
        return new Refusal(
                "conflict",
                RISE,
                "a measurement of the fizz, in still water",
                "a measurement of a piece that fizzes",
                "Leave out the still water or the measurement.");
    }

    /** An interval of times, s, in words. */
    private static String band(Interval times) {
        return duration(times.low()) + " to " + duration(times.high());
    }

    /** A time, s, in seconds below {@link #LONG}, else in minutes to a tenth. */
    private static String duration(double seconds) {
        return seconds < LONG
                ? Decimals.text(Math.rint(seconds), 8) + " s"
                : Decimals.text(Math.rint(10 * seconds / MINUTE) / 10, 8) + " min";
    }

    /** A mass, kg, in grams to a tenth. */
    private static String grams(double kilograms) {
        return Decimals.text(Math.rint(10 * Units.inGrams(kilograms)) / 10, 8) + " g";
    }
}
