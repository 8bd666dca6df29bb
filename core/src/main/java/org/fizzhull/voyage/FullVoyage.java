package org.fizzhull.voyage;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.medium.Bath;
import org.fizzhull.numeric.EventIntegrator;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.voyage.result.Voyage;

/**
 * The voyage by its equation of motion, from the moment the piece is let go, half under water, until 1 % is left.
 *
 * <pre>{@code
 * FullVoyage voyages = FullVoyage.of(VoyageForm.of(shape, Release.DROPPED), bath);
 * Voyage voyage = voyages.run(piece, FizzParameters.standard(), VoyageParameters.standard());
 * }</pre>
 *
 * <p>A voyage is a chain of legs, in each of which one set of equations holds ({@link EquationOfMotion.Way}):
 *
 * <ol>
 *   <li>FREE: it moves; volume, layer of gas, depth, speed and gas are integrated.
 *   <li>AFLOAT: it lies still at the surface; the draft at each moment is that at which the balance is 0.
 *   <li>BOTTOM: it lies on the bottom; where the bath is shallower than the piece, only what is covered is wet.
 *   <li>BOAT: it floats with its hollow dry.
 * </ol>
 *
 * <p>How a leg runs:
 *
 * <ol>
 *   <li>Watched events are chosen by the way: the end (1 % left) and the piercing of a wall always; touching the
 *       bottom, settling, sinking or surfacing when free; going under when afloat; lifting off from the bottom; the rim
 *       under water of a boat.
 *   <li>{@link EventIntegrator} (Dormand and Prince 5(4)) integrates until the first of them, located in its dense
 *       output, or until 20 s after the drop, when it is judged whether the piece floats at once.
 *   <li>The handler of the event turns the piece to its next way, notes the event, and tells the
 *       {@link OutcomeTracker}, which has the rules for the outcome that the quick voyage uses too.
 * </ol>
 *
 * <p>Error at the usual tolerance: fizz times 3e-4, rise times 0.01 s (docs/physics/voyage.md, 9), far below what the
 * parameters leave open. Cost: about 150 quick voyages. For many draws take {@link QuickVoyage}. Left out: waves and
 * currents of the bath, tilting on the way, pieces that break. Immutable; safe to share between threads.
 */
public final class FullVoyage {
    /** What must be known of a piece that is higher than the water is deep. */
    public static final Notice SHALLOW_BATH = new Notice(
            "shallow-bath",
            "The bath is shallower than the piece is high: a piece that stands on the bottom counts as down,"
                    + " even where its top is dry.");

    /**
     * Longest voyage, in units of the time that a piece wet all over needs to dissolve; a longer one is a fault of
     * the program. The shallowest bath wets a twentieth of the highest piece.
     */
    private static final double MOST_TIMES = 1e4;

    /** Longest integration step of a piece that does not move, s. */
    private static final double LONGEST_STEP = 30;

    /** Longest time between two checks for events of a piece that does not move, s. */
    private static final double LONGEST_CHECK = 5;

    /** Least number of integration steps while a piece wet all over dissolves, where that takes long. */
    private static final double FEWEST_STEPS = 100;

    /** Least number of checks for events in that time. */
    private static final double FEWEST_CHECKS = 600;

    /** Most legs; a voyage that needs more is a fault of the program. */
    private static final int MOST_LEGS = 1000;

    /**
     * Relative tolerance: fizz times to 3e-4, rise times to 0.01 s (measured); ten times coarser saves next to nothing.
     */
    private static final double ACCURACY = 1e-6;

    /** Tolerance of place and speed, m and m/s. */
    private static final double POSITION = 1e-5;

    /** How deep the top may bob and still be at the surface, m (judgement). */
    private static final double BOB = 5e-3;

    /** What the voyage asks of the shape. */
    private final VoyageForm form;
    /** The water. */
    private final Bath bath;
    /** Relative tolerance of a step. */
    private final double accuracy;

    private FullVoyage(VoyageForm form, Bath bath, double accuracy) {
        this.form = form;
        this.bath = bath;
        this.accuracy = accuracy;
    }

    /**
     * {@return the voyages of a form in a bath}
     *
     * @param form what the voyage asks of the shape
     * @param bath the water
     */
    public static FullVoyage of(VoyageForm form, Bath bath) {
        Given.all("form, bath", form, bath);
        return new FullVoyage(form, bath, ACCURACY);
    }

    /**
     * {@return the same with steps of another relative tolerance, 1e-12 to 1e-3; the usual one is 1e-6}
     *
     * @param relative relative tolerance of a step
     * @throws IllegalArgumentException for a tolerance outside that range
     */
    public FullVoyage accurateTo(double relative) {
        if (!(relative >= 1e-12 && relative <= 1e-3)) {
            throw new IllegalArgumentException("relative tolerance " + relative);
        }
        return new FullVoyage(form, bath, relative);
    }

    /**
     * {@return the voyage of a piece whose shape is that of the form}
     *
     * @param piece the piece; its shape is that of the form
     * @param fizz parameters of fizzing
     * @param voyage parameters of the voyage
     */
    public Voyage run(Piece piece, FizzParameters fizz, VoyageParameters voyage) {
        return run(Launch.of(piece, bath, fizz, voyage));
    }

    /**
     * {@return the voyage of a draw}
     *
     * @param launch the piece and the uncertain parameters of one draw
     */
    public Voyage run(Launch launch) {
        VoyageState moment = new VoyageState(form, bath, launch);
        UnderWay voyage = new UnderWay(new EquationOfMotion(moment));
        voyage.run();
        return voyage.log.result(voyage.verdict, voyage.time, launch.temperature());
    }

    /** One voyage under way: state, clock and outcome so far. The state y is that of {@link EquationOfMotion}. */
    private final class UnderWay {
        /** The equation, in its present way. */
        private final EquationOfMotion equation;
        /** State at {@code time}. */
        private final double[] y = new double[EquationOfMotion.SIZE];
        /** Events and rows so far. */
        private final VoyageLog log;
        /** Time since the piece was let go, s. */
        private double time;

        /** How long the piece would last wet all over, s. */
        private final double dissolving;

        /** Whether the end was reached. */
        private boolean over;
        /** The outcome so far. */
        private final OutcomeTracker verdict = new OutcomeTracker();

        /** A whole piece with its centre at the surface, or on the bottom where the bath is too shallow for that. */
        UnderWay(EquationOfMotion equation) {
            this.equation = equation;
            log = new VoyageLog(equation, bath.depth());
            y[EquationOfMotion.VOLUME] = equation.moment.stage.grid().volumeAt(0);
            dissolving = equation.moment.lasting();
            verdict.start(true, form.flooded.grid().volumeAt(0));
            equation.moment.erode(y[EquationOfMotion.VOLUME]);
            y[EquationOfMotion.CENTRE] = Math.min(0, equation.aground());
        }

        /** Runs leg after leg to the end. */
        void run() {
            if (form.release == Release.PLACED && form.airy.isPresent()) {
                equation.turn(EquationOfMotion.Way.BOAT, 0, y);
                y[EquationOfMotion.CENTRE] = equation.set(0, y);
                if (equation.swamped(0, y) >= 0) {
                    flood(Voyage.Event.Kind.SWAMPS);
                }
            }
            for (int leg = 0; !over; leg++) {
                if (leg > MOST_LEGS) {
                    throw new IllegalStateException("a voyage without end: " + log.events());
                }
                leg();
            }
        }

        /** One leg: from now to the first event that ends it. */
        private void leg() {
            if (equation.way == EquationOfMotion.Way.FREE && equation.settled(time, y) > 0) {
                settle();
            }
            List<Watched> watched = watched();
            List<EventIntegrator.Event> events =
                    watched.stream().map(Watched::event).toList();
            double until = verdict.judged ? MOST_TIMES * dissolving : Voyage.Outcome.AT_ONCE;
            EventIntegrator.Stop stop = integrator(equation.way, dissolving).run(equation, time, y, until, events, log);
            time = stop.time();
            if (stop.event() >= 0) {
                watched.get(stop.event()).then().run();
            } else if (!verdict.judged) {
                verdict.judge();
            } else {
                throw new IllegalStateException("no end within " + until + " s: " + log.events());
            }
        }

        /** The events of the present way. */
        private List<Watched> watched() {
            List<Watched> watched = new ArrayList<>(5);
            watched.add(new Watched(equation::ended, this::end));
            if (equation.moment.stage.hollow() > 0) {
                watched.add(new Watched(equation::pierced, () -> flood(Voyage.Event.Kind.PIERCED)));
            }
            switch (equation.way) {
                case FREE -> {
                    watched.add(new Watched(equation::touched, this::touch));
                    watched.add(new Watched(equation::settled, this::settle));
                    if (verdict.afloat) {
                        watched.add(new Watched((t, state) -> equation.under(state) - BOB, this::sink));
                    } else {
                        watched.add(new Watched((t, state) -> -equation.under(state), this::surface));
                    }
                }
                case AFLOAT -> watched.add(new Watched(equation::sunk, this::goUnder));
                case BOTTOM -> watched.add(new Watched(equation::lifted, this::lift));
                case BOAT -> watched.add(new Watched(equation::swamped, () -> flood(Voyage.Event.Kind.SWAMPS)));
            }
            return watched;
        }

        /** An event that ends a leg, and what happens then. */
        private record Watched(EventIntegrator.Event event, Runnable then) {}

        /** Ends the voyage: 1 % is left. */
        private void end() {
            note(Voyage.Event.Kind.END);
            verdict.judge();
            over = true;
        }

        /** The piece touches the bottom; it stays there where its spare is negative. */
        private void touch() {
            equation.moment.erode(y[EquationOfMotion.VOLUME]);
            y[EquationOfMotion.CENTRE] = equation.aground();
            y[EquationOfMotion.SPEED] = 0;
            equation.set(time, y);
            if (equation.moment.spare(time) < 0) {
                ground();
            }
        }

        /** The piece lies on the bottom and counts as down, even where the bath is too shallow to cover it. */
        private void ground() {
            equation.moment.bobbing = false;
            equation.turn(EquationOfMotion.Way.BOTTOM, time, y);
            note(Voyage.Event.Kind.BOTTOM);
            if (verdict.afloat) {
                verdict.goesDown(time, y[EquationOfMotion.VOLUME]);
            }
        }

        /** The piece leaves the bottom from rest; in a shallow bath its top may be out of the water already. */
        private void lift() {
            y[EquationOfMotion.CENTRE] = equation.set(time, y);
            y[EquationOfMotion.SPEED] = 0;
            equation.turn(EquationOfMotion.Way.FREE, time, y);
            note(Voyage.Event.Kind.LIFT_OFF);
            if (equation.under(y) < 0) {
                surface();
            }
        }

        /** The piece comes to rest at the surface. */
        private void settle() {
            if (!verdict.afloat) {
                surface();
            }
            equation.turn(EquationOfMotion.Way.AFLOAT, time, y);
            y[EquationOfMotion.SPEED] = 0;
            note(Voyage.Event.Kind.SETTLES);
        }

        /**
         * A floating piece loses its balance and begins to sink from rest, with its top at the surface; in a bath too
         * shallow to cover it, it is aground.
         */
        private void goUnder() {
            equation.moment.erode(y[EquationOfMotion.VOLUME]);
            y[EquationOfMotion.CENTRE] = Math.min(equation.moment.halfHeight, equation.aground());
            y[EquationOfMotion.SPEED] = 0;
            equation.turn(EquationOfMotion.Way.FREE, time, y);
            if (equation.moment.covered() < 1) {
                ground();
            }
        }

        /** The top of the piece comes out of the water. */
        private void surface() {
            equation.moment.bobbing = true;
            note(Voyage.Event.Kind.SURFACES);
            verdict.comesUp(
                    time, y[EquationOfMotion.VOLUME] / form.flooded.grid().volumeAt(0));
        }

        /** The top of the piece goes under by more than {@link #BOB}. */
        private void sink() {
            verdict.goesDown(time, y[EquationOfMotion.VOLUME]);
            note(Voyage.Event.Kind.SINKS);
        }

        /** The hollow fills: from here on every face is wet. */
        private void flood(Voyage.Event.Kind kind) {
            note(kind);
            VoyageState moment = equation.moment;
            boolean boat = equation.way == EquationOfMotion.Way.BOAT;
            moment.flood();
            if (boat) {
                goUnder();
            } else if (equation.way == EquationOfMotion.Way.AFLOAT) {
                y[EquationOfMotion.CENTRE] = Math.min(y[EquationOfMotion.CENTRE], moment.halfHeight);
                equation.turn(EquationOfMotion.Way.FREE, time, y);
            }
        }

        /** Notes an event at the present time, with a row of the series. */
        private void note(Voyage.Event.Kind kind) {
            log.note(kind, time, y);
        }
    }

    /**
     * The integrator of a way: first step, absolute tolerances of m3, m, m, m/s, mol and mol, relative one, longest
     * step, s.
     */
    private EventIntegrator integrator(EquationOfMotion.Way way, double dissolving) {
        double finer = accuracy / ACCURACY;
        double[] absolute = {1e-11 * finer, 1e-8 * finer, POSITION * finer, POSITION * finer, 1e-9 * finer, 1e-9 * finer
        };
        return way == EquationOfMotion.Way.FREE
                ? new EventIntegrator(1, absolute, accuracy, 0.1)
                : new EventIntegrator(
                        Math.max(LONGEST_STEP, dissolving / FEWEST_STEPS),
                        absolute,
                        accuracy,
                        Math.max(LONGEST_CHECK, dissolving / FEWEST_CHECKS));
    }
}
