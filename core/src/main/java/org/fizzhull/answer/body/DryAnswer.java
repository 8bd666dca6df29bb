package org.fizzhull.answer.body;

import static org.fizzhull.quantity.Units.inGrams;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.result.DryLog;
import org.fizzhull.quantity.Units;
import org.fizzhull.quantity.check.Given;

/**
 * A drying forecast as the object of the command {@code dry}: masses, time until ready, fizz lost on the way, air that keeps
 * the piece, dates, and the central course as a series. Keys and units: cli/docs/contract.md, 4; further:
 *
 * <ul>
 * <li>{@code label_mass_g}: mass once all that can still leave in the drying room has left
 * <li>{@code never_dries_g}: liquid that stays by design, such as oil
 * <li>{@code dries_fraction}: share of the draws that are dry within 60 days
 * <li>{@code needs_humidity_below_percent}: air of the room below which it is ready in the time of the plan
 * <li>{@code keep_below_percent}, {@code keep_above_percent}: air in which a dry piece keeps; 0 for no lower bound
 * <li>{@code store_gain_g}, {@code store_gas_lost_g}, {@code store_water_gain_g}: change while it is stored, by the central values
 * <li>{@code water_gone_g}: water that has left by the end of the drying, negative where it came in
 * <li>{@code wrap_blows_up}: share of the draws whose film wrap swells with gas
 * <li>{@code room_dampest_percent}, {@code room_after_percent}: air of a closed room at its dampest and at the end
 * <li>{@code jar}: overpressure in a tight jar of {@code volume_L}, if 1 % and if all of the fizz reacts
 * <li>{@code ready_at}, {@code ready_by}, {@code ready_by_then}: local times; the share of the draws that are ready by then
 * </ul>
 *
 * <p>Immutable.
 *
 * @param report the forecast and its dates
 * @param sentence the key {@code verdict}, in plain words; empty where nobody words it
 */
public record DryAnswer(DryReport report, Optional<String> sentence) implements AnswerBody {
    /**
     * Refuses what is missing.
     *
     * @param report the forecast and its dates
     * @param sentence the key {@code verdict}, in plain words; empty where nobody words it
     */
    public DryAnswer {
        Given.all("report, sentence", report, sentence);
    }

    /** Grams in a kilogram. */
    private static final double GRAMS = 1e3;
    /** Per cent in one. */
    private static final double PERCENT = 100;
    /** Seconds in an hour. */
    private static final double HOUR = 3600;

    /**
     * {@return the answer to a question, without its sentence}
     *
     * @param report the forecast and its dates
     */
    public static DryAnswer of(DryReport report) {
        return new DryAnswer(report, Optional.empty());
    }

    @Override
    public String command() {
        return "dry";
    }

    @Override
    public void keys(AnswerWriter to) {
        // the draws and what was asked
        DryForecast f = report.forecast();
        to.draws(f.sampling())
                .text("recipe", f.blend().recipe().name())
                .text("shape", f.shape().text());
        LoadKeys.write(to, f.shape());
        to.text("verdict", sentence)
                .interval("damp_mass_g", f.damp().times(GRAMS))
                .interval("final_mass_g", f.last().times(GRAMS))
                .interval("label_mass_g", f.label().times(GRAMS))
                .number("never_dries_g", inGrams(f.course().stays()))
                .interval("ready_after_h", report.ready(), 1 / HOUR)
                .number("dries_fraction", f.dries())
                .number("needs_humidity_below_percent", f.needsHumidity(), PERCENT)
                .interval("fizz_lost_percent", f.fizzLost().times(PERCENT))
                .text("swelling", f.course().swelling().word())
                .number("reaction_number", f.course().reactionNumber())
                .number("keep_below_percent", PERCENT * f.keepsBelow())
                .number("keep_above_percent", PERCENT * f.keepsAbove());
        grams(to, "store_gain_g", f.store().map(DryForecast.Store::gain));
        grams(to, "store_gas_lost_g", f.store().map(DryForecast.Store::gas));
        grams(to, "store_water_gain_g", f.store().map(DryForecast.Store::water));
        to.interval("water_gone_g", f.waterGone().times(GRAMS))
                .number("wrap_blows_up", f.swollenFilms())
                .number("room_dampest_percent", PERCENT * f.dampestRoom())
                .number("room_after_percent", PERCENT * f.roomAfter());
        jar(to, f);
        dates(to);
        to.interval("still_to_go_g", report.weighed().map(DryLog.Fit::stillToGo), GRAMS);
        series(to, f);
    }

    /** Overpressure in a tight jar if 1 % and if all of the fizz reacts: the reason for the caution never to seal damp pieces. */
    private static void jar(AnswerWriter to, DryForecast f) {
        to.object("jar")
                .number("volume_L", 1e3 * f.jarVolume())
                .number("one_percent_kPa", f.jarOverpressure() / PERCENT / 1e3)
                .number("all_kPa", f.jarOverpressure() / 1e3)
                .end();
    }

    /** Local times to the minute; {@code sell_by} is another name of {@code ready_by}. */
    private void dates(AnswerWriter to) {
        to.text("start", report.start().map(DryReport::minute));
        Optional<Interval> ready = report.ready();
        if (report.start().isPresent() && ready.isPresent()) {
            to.object("ready_at")
                    .text("median", moment(ready.get().median()))
                    .text("low", moment(ready.get().low()))
                    .text("high", moment(ready.get().high()))
                    .end();
        } else {
            to.nothing("ready_at");
        }
        Optional<String> by = report.readyBy().map(DryReport::minute);
        to.text("ready_by", by).text("sell_by", by).number("ready_by_then", report.inTime());
    }

    /** The moment so many seconds after pressing, as text. */
    private Optional<String> moment(double seconds) {
        return report.at(seconds).map(DryReport::minute);
    }

    /**
     * The central course at the times of the forecast until the plan or the course ends; a piece that the store soaks ends
     * its course earlier. Masses with what the piece carries.
     */
    private static void series(AnswerWriter to, DryForecast f) {
        to.array("series");
        double end = f.course().end();
        for (double time : f.times()) {
            row(to, f, Math.min(time, end));
            if (time >= end) {
                break;
            }
        }
        to.endArray();
    }

    private static void row(AnswerWriter to, DryForecast f, double time) {
        DryingCourse.State state = f.course().at(time);
        to.object()
                .number("hour", time / HOUR)
                .number("mass_g", inGrams(state.mass() + f.shape().insetMass()))
                .number("water_percent_of_dry", PERCENT * state.waterOfDry())
                .number("fizz_left_percent", PERCENT * state.fizzLeft())
                .end();
    }

    /** A mass in kg under a key in g, null where it is empty. */
    private static void grams(AnswerWriter to, String key, Optional<Double> kilograms) {
        to.number(key, kilograms.stream().mapToDouble(Units::inGrams).findFirst());
    }

    /** {@return the notices, and one for each null that has no meaning for this question} */
    @Override
    public List<Notice> notices() {
        // each null has its reason
        List<Notice> notices = new ArrayList<>(report.forecast().notices());
        if (report.start().isEmpty()) {
            notices.add(new Notice("no-start", "start and ready_at are null: no start was given."));
        }
        if (report.readyBy().isEmpty()) {
            notices.add(new Notice(
                    "no-ready-by", "ready_by, sell_by and ready_by_then are null: no time to be ready by was given."));
        }
        if (!report.forecast().stored()) {
            notices.add(new Notice(
                    "no-store", "store_gain_g, store_gas_lost_g and store_water_gain_g are null: no store was given."));
        }
        if (report.ready().isEmpty()) {
            notices.add(new Notice("not-ready", "ready_after_h and ready_at are null: it is not dry within 60 days."));
        }
        if (report.forecast().course().reactionNumber().isEmpty()) {
            notices.add(new Notice(
                    "no-reaction-number",
                    "reaction_number is null: by the central values it never dries, so there is no time of drying."));
        }
        if (report.forecast().needsHumidity().isEmpty()) {
            notices.add(new Notice(
                    "no-humidity",
                    "needs_humidity_below_percent is null: no air dries it in that time, or it is dry."));
        }
        if (report.forecast().asked().weighings().isEmpty()) {
            notices.add(new Notice("no-log", "still_to_go_g is null: no weighings were given."));
        }
        if (sentence.isEmpty()) {
            notices.add(Notice.remark("no-words", "verdict is null: the answer was asked for without words."));
        }
        return notices;
    }
}
