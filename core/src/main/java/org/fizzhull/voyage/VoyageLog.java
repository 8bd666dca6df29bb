package org.fizzhull.voyage;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Notice;
import org.fizzhull.numeric.EventIntegrator;
import org.fizzhull.voyage.result.Voyage;

/**
 * What a {@link FullVoyage} writes down on its way: events, rows of the series, the largest rate of gas. A row falls
 * due each tenth of a second at first, later each 2 % of the time, and at every event. The integrator asks
 * {@link #next} and hands its dense output to {@link #take}, so that a row costs no step of its own. One voyage, one
 * thread.
 */
final class VoyageLog implements EventIntegrator.Sampler {
    /** Shortest time between two rows, s. */
    private static final double STEP = 0.1;

    /** Time of the next row over that of the last, where that is longer. */
    private static final double GROWTH = 1.02;

    /** Column of the height in a row. */
    private static final int HEIGHT = 4;

    /** The equation, in its present way. */
    private final EquationOfMotion course;
    /** Depth of the bath, m. */
    private final double bathDepth;
    /** Scratch: rate of change of the state, per second. */
    private final double[] rate = new double[EquationOfMotion.SIZE];
    /** What has happened, in order. */
    private final List<Voyage.Event> events = new ArrayList<>();
    /** Rows of the series in the order of the components of {@link Voyage.Series}, SI. */
    private final List<double[]> rows = new ArrayList<>();
    /** When the next row of the series is due, s. */
    private double next;
    /** Largest rate of gas at the surface so far, mol/s. */
    private double peak;

    /** The log of a voyage that has not begun. */
    VoyageLog(EquationOfMotion course, double bathDepth) {
        this.course = course;
        this.bathDepth = bathDepth;
    }

    /** What has happened so far, in order. */
    List<Voyage.Event> events() {
        return events;
    }

    /** Notes an event at a time (s) and state, with a row of the series. */
    void note(Voyage.Event.Kind kind, double time, double[] state) {
        events.add(new Voyage.Event(kind, time));
        row(time, state);
    }

    @Override
    public double next() {
        return next;
    }

    @Override
    public void take(double time, double[] state) {
        row(time, state);
        next = Math.max(time + STEP, time * GROWTH);
    }

    /** Adds a row: the order of the numbers is that of {@link Voyage.Series}. */
    private void row(double time, double[] state) {
        double centre = course.rated(time, state, rate);
        VoyageState moment = course.moment;
        peak = Math.max(peak, rate[EquationOfMotion.GAS]);
        rows.add(new double[] {
            time,
            moment.depthOf(moment.eroded),
            moment.weight(),
            centre,
            2 * moment.halfHeight,
            moment.fraction,
            rate[EquationOfMotion.GAS],
            state[EquationOfMotion.GAS],
            state[EquationOfMotion.DISSOLVED],
            moment.balance.bodyDensity * moment.balance.gasCapacity * moment.body
        });
    }

    /** The voyage of an outcome that ended at a time (s) in water of a temperature (K). */
    Voyage result(OutcomeTracker verdict, double time, double temperature) {
        return new Voyage(
                verdict.outcome,
                verdict.sinksLater,
                verdict.floatsToTheEnd(),
                verdict.riseTime >= 0 ? OptionalDouble.of(verdict.riseTime) : OptionalDouble.empty(),
                time,
                temperature,
                peak,
                events,
                Voyage.Series.of(rows),
                notices());
    }

    private List<Notice> notices() {
        List<Notice> notices = new ArrayList<>(2);
        if (course.moment.balance.speedHeld()) {
            notices.add(new Notice(
                    "recession-at-end",
                    "The fizzing speed met an end of the range that is believed and was held there."));
        }
        if (rows.get(0)[HEIGHT] > bathDepth) {
            notices.add(FullVoyage.SHALLOW_BATH);
        }
        return notices;
    }
}
