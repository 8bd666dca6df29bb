package org.fizzhull.forecast;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.drying.mix.Hydrates;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.drying.run.JarPressure;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.notice.Notices;
import org.fizzhull.forecast.result.DryLog;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.shape.load.Loaded;

/**
 * What the reader of a drying forecast must know: cautions about closed jars first, then what was measured, then what
 * the course itself says, then how sure the ready time is. Codes are stable. Stateless.
 */
final class DryNotices {
    /** Share of draws above which a notice says that a thing may happen. */
    private static final double TOLD = 0.025;

    /** Air-filled porosity below which drying is outside its model. */
    private static final double TIGHT = 0.02;

    /** How far a cheap hygrometer may be off. */
    private static final double HYGROMETER = 0.05;

    /** Draws that carry the weighings below which the bands are rough. */
    private static final double FEW = 40;

    private static final Notice LABEL = Notice.remark(
            "label-average",
            "The label weight is what such pieces come to on average; the weight of one piece promises nothing."
                    + " Weigh ten dry pieces of your own.");

    private static final Notice LOAD = new Notice(
            "load-dry",
            "Every weight counts what lies on the piece and in it; that is taken to be dry and to hold no water back.");

    private DryNotices() {}

    /** The notices of a forecast, in the order in which they are shown, each once. */
    static List<Notice> of(DryForecast f) {
        List<Notice> notices = new ArrayList<>();
        if (f.stored() || f.sealed()) {
            notices.add(JarPressure.CAUTION);
            notices.add(JarPressure.notice(f.jarOverpressure(), f.jarVolume()));
        }
        f.effervescence().notice().ifPresent(notices::add);
        weighings(f, notices);
        notices.addAll(f.measured());
        Notice.addNew(notices, f.course().notices());
        film(f, notices);
        notices.addAll(f.plan().notices());
        if (f.shape() instanceof Loaded loaded) {
            notices.add(LOAD);
            notices.addAll(Notices.ofThings(loaded));
        }
        if (f.sampling().samples() == 0) {
            notices.add(Notices.CENTRAL_VALUES);
        }
        readiness(f, notices);
        if (f.course().airPorosity() < TIGHT) {
            notices.add(new Notice(
                    "pores-full",
                    "The liquid all but closes the pores: how fast such a piece dries is outside what is modelled."));
        }
        acid(f, notices);
        notices.addAll(f.blend().recipe().notices());
        notices.add(LABEL);
        return List.copyOf(notices);
    }

    /**
     * What the weighings of the batch say: a gain of weight, no draws to use them, a course that is not theirs, few
     * draws.
     */
    private static void weighings(DryForecast f, List<Notice> notices) {
        if (f.asked().weighings().isEmpty()) {
            return;
        }
        DryLog log = f.asked().weighings().get();
        if (log.gains()) {
            notices.add(new Notice(
                    "gains-weight",
                    "A piece gained " + Decimals.tenths(1e3 * log.gain())
                            + " g between two weighings: it takes up water from the air. The air is damper than said, or the"
                            + " scale was not the same."));
        }
        if (f.log().isEmpty()) {
            notices.add(new Notice("log-without-draws", "Without draws the weighings are not used."));
        } else if (!f.log().get().fits()) {
            notices.add(new Notice(
                    "log-misfit",
                    "The weighings do not follow this recipe's course in this room and are not used. Check the air, the recipe"
                            + " and the weights."));
        } else if (f.log().get().effective() < FEW) {
            notices.add(Notice.remark(
                    "log-narrow",
                    "The weighings say so much that only "
                            + Math.round(f.log().get().effective())
                            + " of the draws carry them: the bands are rough. More draws make them smoother."));
        }
    }

    /** Film wraps hold the gas of a damp piece back. */
    private static void film(DryForecast f, List<Notice> notices) {
        double swollen = f.swollenFilms();
        if (swollen > TOLD) {
            notices.add(new Notice(
                    "wrap-blows-up",
                    "The wrap blows up in " + Math.max(1, Math.round(100 * swollen))
                            + " of 100 cases: wrapped damp, the piece goes on making gas, and the film holds it back unless its"
                            + " seal leaks. Wrap it dry."));
        }
    }

    /** How sure it is when the piece is ready, and which air would do. */
    private static void readiness(DryForecast f, List<Notice> notices) {
        double late = f.late();
        if (f.ready().isEmpty()) {
            notices.add(
                    Notice.remark(
                            "not-ready",
                            "No time until it is ready can be given: in " + Math.round(100 * late)
                                    + " of 100 draws it is not dry within 60 days, the air being too damp or the way out closed."));
        } else if (late > TOLD) {
            notices.add(
                    Notice.remark(
                            "ready-open-ended",
                            "In " + Math.round(100 * late)
                                    + " of 100 draws it is not dry within 60 days; the upper end of the time stands for that."));
        }
        if (f.needsHumidity().isEmpty()) {
            notices.add(new Notice(
                    "no-humidity-does", "No air, however dry, makes it ready within " + days(f.dryingTime()) + "."));
        }
        if (f.course().reactionNumber().isEmpty()) {
            notices.add(Notice.remark(
                    "no-reaction-number", "Where it never dries, the reaction goes on: no reaction number is given."));
        }
        if (!f.keeps()) {
            notices.add(Notice.remark(
                    "no-safe-air",
                    "No air keeps this mix for long unwrapped: its salts take up water where it is damp, or give it up where it"
                            + " is dry."));
        }
    }

    /** In damp air acid binds water and keeps it: how much one piece may hold; the bands count it at a rate drawn wide. */
    private static void acid(DryForecast f, List<Notice> notices) {
        boolean damp = false;
        for (DryingPhase phase : f.plan().phases()) {
            damp |= phase.air().humidity() > Hydrates.TAKING_HUMIDITY - HYGROMETER;
        }
        double most = f.course().acidWater();
        if (most > 0 && damp) {
            notices.add(new Notice(
                    "acid-takes-water",
                    "In air from about " + Math.round(100 * Hydrates.TAKING_HUMIDITY)
                            + " % citric acid binds water of its own and keeps it, up to " + Decimals.tenths(1e3 * most)
                            + " g a piece; how fast is not known: hours to weeks are counted."));
        }
    }

    /** A time, s, in days to a tenth, with its unit. */
    private static String days(double seconds) {
        double days = Math.round(seconds / 8640) / 10.0;
        return (days == Math.rint(days) ? Long.toString(Math.round(days)) : Double.toString(days))
                + (days == 1 ? " day" : " days");
    }
}
