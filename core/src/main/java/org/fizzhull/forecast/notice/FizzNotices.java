package org.fizzhull.forecast.notice;

import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.fizz.Gas;
import org.fizzhull.fizz.MixEffects;
import org.fizzhull.fizz.Recession;
import org.fizzhull.fizz.WetSkin;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.forecast.attitude.WhichSideUp;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Additives;
import org.fizzhull.shape.Shape;
import org.fizzhull.voyage.VoyageParameters;

/**
 * What the physics of fizzing has to tell a maker, each notice where it applies; called by {@link Notices} for a piece
 * that may fizz. A mix that hardly fizzes gets that notice alone, and first. Codes are stable. Stateless.
 */
final class FizzNotices {
    private static final Notice SMALL = new Notice(
            "small-piece",
            "Clinging gas lifts small pieces most: a small test ball floats where a big one of the same mix sinks.");
    private static final Notice SLOW = new Notice(
            "recession-at-end", "The fizzing speed met an end of the range that is believed and was held there.");
    private static final Notice RICH = new Notice(
            "mix-beyond",
            "More oil or foaming powder than a twentieth of the powder: what it does to the fizz is a guess carried on"
                    + " from smaller amounts.");

    private static final Notice REACTED = new Notice(
            "reacted",
            "It lost part of its fizz before the bath. The gas that left makes it lighter, which helps it float, and it fizzes"
                    + " less; with most of the gas gone water soaks in and it sinks.");

    /** A ball below this diameter counts as small, m (assumed). */
    private static final double SMALL_DIAMETER = 0.040;

    /** Water this much cooler than the usual bath counts as cold, K (assumed). */
    private static final double COLDER = 5;

    /** Share of the fizz whose loss a maker sees (assumed); smaller losses drown in the spread of the recipe. */
    private static final double LOSS = 0.1;

    private FizzNotices() {}

    /** Adds the notices of a piece in a bath, by the central values. */
    static void add(Question question, Piece piece, List<Notice> notices) {
        Optional<Notice> first = question.making()
                .mix()
                .flatMap(mix -> Effervescence.of(mix.moles(), piece.makeup().gasCapacity())
                        .notice());
        if (first.isPresent()) {
            notices.add(0, first.get());
            return;
        }
        if (question.shape().hollow().isEmpty()) {
            WhichSideUp.notice(question.shape()).ifPresent(notices::add);
        }
        if (Math.cbrt(6 * question.shape().volume() / Math.PI) < SMALL_DIAMETER) {
            notices.add(SMALL);
        }
        if (question.bath().temperature() < Question.DEFAULT_TEMPERATURE - COLDER
                && piece.makeup().gasCapacity() >= Effervescence.LEAST_CAPACITY) {
            notices.add(cold(question, piece));
        }
        if (lost(question, piece)) {
            notices.add(REACTED);
        }
        Additives others = piece.makeup().additives();
        if (Math.max(others.oil(), others.surfactant()) > MixEffects.KNOWN_SHARE) {
            notices.add(RICH);
        }
        double speed = Recession.unbounded(
                parameters(piece),
                question.bath().temperature(),
                piece.porosity(),
                piece.makeup().gasCapacity());
        if (speed < Recession.SLOWEST || speed > Recession.FASTEST) {
            notices.add(SLOW);
        }
    }

    /** What cold water does, by the central values, beside the usual bath. */
    private static Notice cold(Question question, Piece piece) {
        Bath bath = question.bath();
        Bath usual = bath.withTemperature(Question.DEFAULT_TEMPERATURE);
        Shape shape = question.shape();
        double limit = (bath.density() - usual.density()) * shape.volume();
        double water = soaked(piece, bath, shape) - soaked(piece, usual, shape);
        double slower = speed(piece, bath) / speed(piece, usual);
        return new Notice(
                "cold-water",
                "Cooler water is not what sinks a piece: its float limit is " + grams(limit) + " higher than in "
                        + Math.round(Units.inCelsius(usual.temperature()))
                        + " C water. What falls is the gas: it fizzes at "
                        + Math.round(100 * slower)
                        + " % of the speed, and against less gas its pores draw in about " + grams(water)
                        + " more water.");
    }

    /** A made piece, or a weighed one whose drying is known, that lost much of its fizz. */
    private static boolean lost(Question question, Piece piece) {
        Piece.Makeup known = piece.makeup();
        if (question.making() instanceof Making.Weighed weighed) {
            known = weighed.dried().orElse(known);
        }
        return 1 - known.fizzLeft() > LOSS;
    }

    /** Standard parameters of fizzing with what the mix holds besides acid and bicarbonate. */
    private static FizzParameters parameters(Piece piece) {
        return FizzParameters.standard().in(piece.makeup().additives());
    }

    /** Speed of the receding face by the central values, m/s, held inside the range that is believed. */
    private static double speed(Piece piece, Bath bath) {
        return Recession.speed(
                parameters(piece),
                bath.temperature(),
                piece.porosity(),
                piece.makeup().gasCapacity());
    }

    /** Water in the wet skin of the piece at the drop, kg. */
    private static double soaked(Piece piece, Bath bath, Shape shape) {
        double molar = Gas.wetMolarVolume(bath.temperature(), PhysicalConstants.ATMOSPHERE, bath.vapourPressure());
        double speed = speed(piece, bath);
        double capacity = piece.makeup().gasCapacity();
        double flux =
                Gas.flux(speed, piece.density(), capacity, parameters(piece).gasShare(), molar)
                        + piece.porosity() * speed;
        double steady = WetSkin.steadyDepth(
                VoyageParameters.standard().wetSkinDepth(),
                WetSkin.wicking(bath.temperature()),
                piece.porosity(),
                flux);
        double depth = WetSkin.depth(steady, WetSkin.fillingTime(steady, piece.porosity(), flux), 0);
        return bath.density() * piece.porosity() * WetSkin.volume(depth, shape.surface(), shape.volume());
    }

    /** A mass, kg, in grams to a tenth. */
    private static String grams(double kilograms) {
        return Math.round(10 * Units.inGrams(kilograms)) / 10.0 + " g";
    }
}
