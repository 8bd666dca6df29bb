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
 * <p>A voyage is a chain of legs; in each the piece is in one way ({@link EquationOfMotion.Way}) and one set of equations holds:
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
     * A voyage that takes so many times as long as a piece wet all over needs to dissolve has lost its way. The
     * shallowest bath wets a twentieth of the highest piece.
     */
    private static final double MOST_TIMES = 1e4;

    /** Of a piece that does not move: longest step and longest time between two looks at the events, s. */
    private static final double STEP = 30;

    private static final double LOOK = 5;

    /** The same as parts of the time that a piece wet all over needs to dissolve, where that is long. */
    private static final double STEPS = 100;

    private static final double LOOKS = 600;

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
        voyage.sail();
        return voyage.log.result(voyage.verdict, voyage.time, launch.temperature());
    }

    /** One voyage under way: state, clock and outcome so far. The state y is that of {@link EquationOfMotion}. */
    private final class UnderWay {
        /** The equation, in its present way. */
        private final EquationOfMotion course;
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
        UnderWay(EquationOfMotion course) {
            this.course = course;
            log = new VoyageLog(course, bath.depth());
            y[EquationOfMotion.VOLUME] = course.moment.stage.grid().volumeAt(0);
            dissolving = course.moment.lasting();
            verdict.start(true, form.flooded.grid().volumeAt(0));
            course.moment.erode(y[EquationOfMotion.VOLUME]);
            y[EquationOfMotion.CENTRE] = Math.min(0, course.aground());
        }

        /** Runs leg after leg to the end. */
        void sail() {
            if (form.release == Release.PLACED && form.airy.isPresent()) {
                course.turn(EquationOfMotion.Way.BOAT, 0, y);
                y[EquationOfMotion.CENTRE] = course.set(0, y);
                if (course.swamped(0, y) >= 0) {
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
            if (course.way == EquationOfMotion.Way.FREE && course.settled(time, y) > 0) {
                settle();
            }
            List<Watched> watched = watched();
            List<EventIntegrator.Event> events =
                    watched.stream().map(Watched::event).toList();
            double until = verdict.judged ? MOST_TIMES * dissolving : Voyage.Outcome.AT_ONCE;
            EventIntegrator.Stop stop = integrator(course.way, dissolving).run(course, time, y, until, events, log);
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
            watched.add(new Watched(course::ended, this::end));
            if (course.moment.stage.hollow() > 0) {
                watched.add(new Watched(course::pierced, () -> flood(Voyage.Event.Kind.PIERCED)));
            }
            switch (course.way) {
                case FREE -> {
                    watched.add(new Watched(course::touched, this::touch));
                    watched.add(new Watched(course::settled, this::settle));
                    if (verdict.afloat) {
                        watched.add(new Watched((t, state) -> course.under(state) - BOB, this::sink));
                    } else {
                        watched.add(new Watched((t, state) -> -course.under(state), this::surface));
                    }
                }
                case AFLOAT -> watched.add(new Watched(course::sunk, this::letGo));
                case BOTTOM -> watched.add(new Watched(course::lifted, this::lift));
                case BOAT -> watched.add(new Watched(course::swamped, () -> flood(Voyage.Event.Kind.SWAMPS)));
            }
            return watched;
        }

        /** An event that ends a leg, and what happens then. */
        private record Watched(EventIntegrator.Event event, Runnable then) {}

        /** 1 % is left. */
        private void end() {
            note(Voyage.Event.Kind.END);
            verdict.judge();
            over = true;
        }

        /** It comes down on the bottom; it stays there where its spare is negative. */
        private void touch() {
            course.moment.erode(y[EquationOfMotion.VOLUME]);
            y[EquationOfMotion.CENTRE] = course.aground();
            y[EquationOfMotion.SPEED] = 0;
            course.set(time, y);
            if (course.moment.spare(time) < 0) {
                ground();
            }
        }

        /** On the bottom it is down, even where the bath is too shallow to cover it. */
        private void ground() {
            course.moment.bobbing = false;
            course.turn(EquationOfMotion.Way.BOTTOM, time, y);
            note(Voyage.Event.Kind.BOTTOM);
            if (verdict.afloat) {
                verdict.goesDown(time, y[EquationOfMotion.VOLUME]);
            }
        }

        /** It leaves the bottom from rest; in a shallow bath its top may be out of the water already. */
        private void lift() {
            y[EquationOfMotion.CENTRE] = course.set(time, y);
            y[EquationOfMotion.SPEED] = 0;
            course.turn(EquationOfMotion.Way.FREE, time, y);
            note(Voyage.Event.Kind.LIFT_OFF);
            if (course.under(y) < 0) {
                surface();
            }
        }

        /** It comes to rest at the surface. */
        private void settle() {
            if (!verdict.afloat) {
                surface();
            }
            course.turn(EquationOfMotion.Way.AFLOAT, time, y);
            y[EquationOfMotion.SPEED] = 0;
            note(Voyage.Event.Kind.SETTLES);
        }

        /**
         * A piece at rest goes under, from rest, its top at the surface; in a bath too shallow to cover it, it is
         * aground.
         */
        private void letGo() {
            course.moment.erode(y[EquationOfMotion.VOLUME]);
            y[EquationOfMotion.CENTRE] = Math.min(course.moment.halfHeight, course.aground());
            y[EquationOfMotion.SPEED] = 0;
            course.turn(EquationOfMotion.Way.FREE, time, y);
            if (course.moment.covered() < 1) {
                ground();
            }
        }

        /** Its top comes out of the water. */
        private void surface() {
            course.moment.bobbing = true;
            note(Voyage.Event.Kind.SURFACES);
            verdict.comesUp(
                    time, y[EquationOfMotion.VOLUME] / form.flooded.grid().volumeAt(0));
        }

        /** Its top goes under by more than a bob. */
        private void sink() {
            verdict.goesDown(time, y[EquationOfMotion.VOLUME]);
            note(Voyage.Event.Kind.SINKS);
        }

        /** The hollow fills: from here on every face is wet. */
        private void flood(Voyage.Event.Kind kind) {
            note(kind);
            VoyageState moment = course.moment;
            boolean boat = course.way == EquationOfMotion.Way.BOAT;
            moment.flood();
            if (boat) {
                letGo();
            } else if (course.way == EquationOfMotion.Way.AFLOAT) {
                y[EquationOfMotion.CENTRE] = Math.min(y[EquationOfMotion.CENTRE], moment.halfHeight);
                course.turn(EquationOfMotion.Way.FREE, time, y);
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
                        Math.max(STEP, dissolving / STEPS), absolute, accuracy, Math.max(LOOK, dissolving / LOOKS));
    }
}
