package org.fizzhull.answer.body;

import static org.fizzhull.quantity.Units.inCelsius;
import static org.fizzhull.quantity.Units.inCubicCentimetres;
import static org.fizzhull.quantity.Units.inGrams;
import static org.fizzhull.quantity.Units.inGramsPerCubicCentimetre;
import static org.fizzhull.quantity.Units.inMillimetres;
import static org.fizzhull.quantity.Units.inSquareCentimetres;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.attitude.LiesWords;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.forecast.result.Probability;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.shape.Shape;

/**
 * A forecast of floating as the object of the command {@code float}: the piece, its limits in still water, how it lies, the
 * chances, what weight to aim for, what decides and what to measure next. Keys and units: cli/docs/contract.md, 4.
 *
 * <pre>{@code
 * Forecast forecast = FloatPredictor.standard().forecast(Question.weighed(ball, 0.142));
 * double chance = FloatAnswer.of(forecast).tree().number("/probability/floats_to_the_end").orElseThrow();
 * }</pre>
 *
 * <p>Without draws the chances are null. Immutable.
 *
 * @param forecast chances, limits and attitudes of one piece
 * @param words sentences for what to measure next; {@link NextWords#NONE} leaves their keys null
 */
public record FloatAnswer(Forecast forecast, NextWords words) implements AnswerBody {
    /**
     * Refuses what is missing.
     *
     * @param forecast chances, limits and attitudes of one piece
     * @param words sentences for what to measure next; {@link NextWords#NONE} leaves their keys null
     */
    public FloatAnswer {
        Given.all("forecast, words", forecast, words);
    }

    /** Grams in a kilogram. */
    private static final double GRAMS = 1e3;

    /**
     * {@return the answer to a question, without words for what to measure next}
     *
     * @param forecast chances, limits and attitudes of one piece
     */
    public static FloatAnswer of(Forecast forecast) {
        return new FloatAnswer(forecast, NextWords.NONE);
    }

    @Override
    public String command() {
        return "float";
    }

    @Override
    public void keys(AnswerWriter to) {
        // the question: piece and bath
        Question question = forecast.question();
        Shape shape = question.shape();
        double mass = forecast.piece().mass();
        to.draws(forecast.sampling())
                .text("shape", shape.text())
                .number("volume_cm3", inCubicCentimetres(shape.volume()))
                .number("surface_cm2", inSquareCentimetres(shape.surface()))
                .number("mass_g", inGrams(mass))
                .number(
                        "density_g_per_cm3",
                        inGramsPerCubicCentimetre(forecast.piece().density()))
                .interval("mass_interval_g", forecast.mass(), GRAMS);
        LoadKeys.write(to, shape);
        to.object("bath")
                .number("temperature_C", inCelsius(question.bath().temperature()))
                .number(
                        "density_g_per_cm3",
                        inGramsPerCubicCentimetre(question.bath().density()))
                .end()
                // limits in still water, then of the forecast
                .number("limit_mass_g", inGrams(forecast.limitMass()))
                .number("spare_g", inGrams(forecast.limitMass() - mass))
                .number("boat_limit_mass_g", forecast.boatLimitMass(), GRAMS)
                .interval("critical_weight_g", forecast.critical().interval().times(GRAMS))
                .interval("spare_at_drop_g", forecast.spareAtDrop().times(GRAMS));
        verdict(to);
        attitudes(to, shape);
        probability(to, forecast.probability());
        // one piece, then the batch and what to aim for, then times
        to.text("likelihood", forecast.likelihood().map(Probability.Likelihood::words))
                .text("likelihood_to_the_end", forecast.likelihoodToTheEnd().map(Probability.Likelihood::words));
        share(to, forecast.share());
        to.number("aim_for_g", told(forecast.aim(), CriticalWeights.BatchAim::aimFor), GRAMS)
                .number("never_above_g", told(forecast.aim(), CriticalWeights.BatchAim::neverAbove), GRAMS)
                .text("weights_are", question.making() instanceof Moulded.Filled ? "damp" : "dry");
        NextKeys.write(to, forecast.next(), question, words, NextKeys.LESS_THE_PIECES_OWN);
        to.interval("rise_time_s", forecast.riseTime(), 1)
                .interval("fizz_time_s", forecast.fizzTime(), 1)
                .interval("fizz_lost_percent", forecast.fizzLost(), 100);
        drivers(to);
        MeasuredKeys.write(to, forecast.narrowing());
    }

    /** What decides, what it comes to, and in how many draws the critical weight could not be read cleanly. */
    private void verdict(AnswerWriter to) {
        Forecast.GoverningLimit limit = forecast.limit();
        to.object("governing_limit")
                .text("kind", limit.kind().word())
                .number("mass_g", inGrams(limit.mass()))
                .number("spare_g", inGrams(limit.spare()))
                .end();
        to.object("verdict")
                .text("answer", forecast.verdict().answer().word())
                .text("reason", forecast.verdict().reason().word())
                .end();
        to.object("critical_draws")
                .whole("not_monotone", forecast.critical().count(CriticalWeights.Met.NOT_MONOTONE))
                .whole("at_heavy_end", forecast.critical().count(CriticalWeights.Met.ABOVE_RANGE))
                .whole("at_light_end", forecast.critical().count(CriticalWeights.Met.BELOW_RANGE))
                .end();
    }

    /** The share of a batch that floats to the end, over what is unknown for the whole of it. */
    private static void share(AnswerWriter to, Optional<CriticalWeights.BatchShare> share) {
        to.object(
                "share_of_batch",
                share,
                of -> to.points(of.share()).number("mean", of.mean()).number("nine_of_ten", of.nineOfTen()));
    }

    /**
     * How the piece lies in still water, likeliest first; lengths in mm. {@code lies} says in words which face is down, {@code
     * topping} where the layer on top is.
     */
    private void attitudes(AnswerWriter to, Shape shape) {
        to.objects(
                "attitudes",
                forecast.attitudes(),
                rest -> to.numbers("up", rest.up().x(), rest.up().y(), rest.up().z())
                        .number("draft_mm", inMillimetres(rest.draft()))
                        .number("freeboard_mm", inMillimetres(rest.freeboard()))
                        .number("immersed_fraction", rest.immersedFraction())
                        .number("gm_mm", inMillimetres(rest.gm()))
                        .flag("turns_freely", rest.turnsFreely())
                        .number("share", rest.share())
                        .text("cavity", rest.cavity().word())
                        .text("lies", LiesWords.of(shape, rest))
                        .text("topping", rest.topping().word()));
    }

    /** Writes the chances, each null where nothing was drawn; {@code compare} has the same object. */
    static void probability(AnswerWriter to, Optional<Probability> known) {
        to.object("probability")
                .number("floats_to_the_end", told(known, Probability::floatsToTheEnd))
                .number("floats_at_once", told(known, Probability::floatsAtOnce))
                .number("rises_later", known.map(Probability::risesLater).orElseGet(OptionalDouble::empty))
                .number("stays_down", known.map(Probability::staysDown).orElseGet(OptionalDouble::empty))
                .number("sinks_later", known.map(Probability::sinksLater).orElseGet(OptionalDouble::empty))
                .number("error", told(known, Probability::error))
                .end();
    }

    /** A number of something that may not be known. */
    private static <T> OptionalDouble told(Optional<T> known, ToDoubleFunction<T> number) {
        return known.stream().mapToDouble(number).findFirst();
    }

    /** What the spread of the margin comes from, largest first; a total of NaN (after a measurement) is null. */
    private void drivers(AnswerWriter to) {
        to.objects(
                "drivers",
                forecast.drivers(),
                driver -> to.text("input", driver.input().label())
                        .text("kind", driver.input().kind() == Input.Kind.PIECE ? "piece" : "batch")
                        .number("first_order", driver.firstOrder())
                        .number(
                                "total",
                                Double.isNaN(driver.total())
                                        ? OptionalDouble.empty()
                                        : OptionalDouble.of(driver.total()))
                        .number("error", driver.error()));
    }

    /** {@return the forecast's notices and one for each null that has no meaning for this question} */
    @Override
    public List<Notice> notices() {
        List<Notice> notices = new ArrayList<>(forecast.notices());
        if (forecast.boatLimitMass().isEmpty()) {
            notices.add(new Notice("no-hollow", "boat_limit_mass_g is null: this shape has no hollow."));
        }
        if (forecast.mass().isEmpty()) {
            notices.add(new Notice("weighed-piece", "mass_interval_g is null: the piece was weighed."));
        }
        if (forecast.riseTime().isEmpty()) {
            notices.add(new Notice("no-rise", "rise_time_s is null: too few of the draws sink first and rise later."));
        }
        if (forecast.fizzTime().isEmpty()) {
            notices.add(new Notice("no-fizz-time", "fizz_time_s is null: still water, or a piece that does not fizz."));
        }
        if (forecast.fizzLost().isEmpty()) {
            notices.add(new Notice("no-fizz-lost", "fizz_lost_percent is null: no recipe was given, or still water."));
        }
        // no aim has two reasons: no spread to aim with, or no weight that would be true
        if (forecast.aim().isEmpty()
                && forecast.question().making().hand().isPresent()
                && forecast.probability().isPresent()) {
            notices.add(new Notice("no-weight", "aim_for_g and never_above_g are null: no weight would be true."));
        }
        if (forecast.probability().isEmpty()) {
            notices.add(new Notice("not-drawn", "likelihood and likelihood_to_the_end are null: nothing was drawn."));
        }
        if (forecast.question().making().hand().isEmpty()
                || forecast.probability().isEmpty()) {
            notices.add(
                    new Notice(
                            "no-spread",
                            "aim_for_g and never_above_g are null: the weight was given without a spread, or nothing was drawn."));
        }
        if (forecast.share().isEmpty()) {
            notices.add(new Notice("no-batch", "share_of_batch is null: one weighed piece, or no draws."));
        }
        if (forecast.next().isEmpty()) {
            notices.add(new Notice(
                    "nothing-to-measure",
                    "measure_next is null: no further measurement would tell much, or no draws."));
        }
        if (forecast.narrowing().isEmpty()) {
            notices.add(
                    new Notice("not-measured", "measured is null: no fizz time, rise time, lift or weighed piece."));
        } else {
            notices.add(new Notice(
                    "first-order-only",
                    "After a measurement the inputs depend on one another: drivers have no total, and error is that of"
                            + " first_order."));
        }
        NextKeys.unworded(forecast.next(), words).ifPresent(notices::add);
        return notices;
    }
}
