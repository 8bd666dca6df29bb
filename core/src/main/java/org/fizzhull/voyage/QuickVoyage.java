package org.fizzhull.voyage;

import org.fizzhull.medium.Bath;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.voyage.result.Voyage;

/**
 * The voyage without motion, for many draws: the sign of the balance on 200 depths as a rule, roots found between them,
 * and the time from the bottom to the surface in closed form. {@link org.fizzhull.voyage} has it step by step; here
 * {@link #start} takes the launch, {@link #walk} its stages, {@link #under} the cells of a stage, {@link #crossed} the
 * moment at which the balance changes its sign. A front depth is that of the table of the shape, a volume that of the
 * piece unless it is called left.
 *
 * <p>Error: fizz times to 4e-3 and rise times to 0.04 s against the same method on 12,800 depths; the outcome is that
 * of {@link FullVoyage} for 98.98 % of random pieces (docs/physics/voyage.md, 9). Cost: a few microseconds, a 150th of
 * the full one. Allocates nothing; one instance serves one thread and holds the last result.
 */
public final class QuickVoyage {
    /** A balance grazes where a thousandth of the displacement more or less moves a rise by more than this, s. */
    private static final double GRAZING = 30;
    /** The change of the balance that is looked at, over the displacement. */
    private static final double THOUSANDTH = 1e-3;
    /** Evaluations of a balance, at most, to the moment at which it changes its sign. */
    static final int ROOT_PASSES = 14;
    /** The moment is found to this share of the time looked at. */
    private static final double ROOT = 1e-5;
    /** Newton steps of the draft where the last one is no guess: at the start and after a change of sign. */
    private static final int FIRST_PASSES = 8;
    /** Of the last moment from which a piece is up in time: the way up depends little on it. */
    private static final int MOMENT_PASSES = 3;
    /** Share of a time that is gone back to see how fast the spare grows. */
    private static final double EARLIER = 0.05;
    /** The wet share of a floating piece is worked out anew at each of so many depths; it moves by 0.3 % a depth. */
    private static final int EVERY = 4;
    /** Only those depths are looked at while the spare, as it runs, would take so many depths to vanish, */
    private static final double AHEAD = 12;
    /** and is at least this share of the displacement. */
    private static final double NEAR = 2e-3;

    /** What a voyage asks of the shape. */
    private final VoyageForm form;
    /** The piece of the launch with its front at a depth, and the clock. */
    private final ErodedPiece piece;
    /** The part of a voyage with a dry hollow. */
    private final DryBoat boat;
    /** Depth of the front at which the present stage begins, m. */
    private double depth;
    /** Whether the balance is taken at the surface, or on the bottom. */
    private boolean up;
    /** The outcome so far. */
    private final OutcomeTracker verdict = new OutcomeTracker();
    /** Whether a balance stayed near zero for long where it changed its sign. */
    private boolean grazes;
    /** Least distance from zero of the balances that decided the outcome, over the displacement. */
    private double margin;
    /** Whether the piece is kept at the surface whatever its spare: then {@link #reserve} is the smallest spare. */
    private boolean held;
    /** Smallest spare so far of a piece that is held, over what keeps water out then. */
    private double reserve;
    /** How wide the piece was when it first came up after it was let go, m; 0 before. */
    private double upWidth;
    /** When it last came up, s: balance and way up over; 0 for a piece that floats from the start. */
    private double surfaced;

    /**
     * Voyages of a form in a bath.
     *
     * @param form what the voyage asks of the shape
     * @param bath the water
     */
    public QuickVoyage(VoyageForm form, Bath bath) {
        Given.all("bath", bath);
        this.form = form;
        piece = new ErodedPiece(form, bath);
        boat = new DryBoat(piece.balance, verdict, form.insetMass);
    }

    /**
     * Computes one voyage.
     *
     * @param launch the piece and the uncertain parameters of one draw
     */
    public void run(Launch launch) {
        start(launch, OutcomeTracker.Asked.ALL);
    }

    /**
     * Computes one voyage until it is known whether the piece floats at once and when it comes up: the fizz time
     * is then without meaning.
     *
     * @param launch the piece and the uncertain parameters of one draw
     */
    public void runUntilRise(Launch launch) {
        start(launch, OutcomeTracker.Asked.RISE);
    }

    /**
     * {@return whether the piece floats at once: the computation stops once that is known}
     *
     * @param launch the piece and the uncertain parameters of one draw
     */
    public boolean floatsAtOnce(Launch launch) {
        start(launch, OutcomeTracker.Asked.AT_ONCE);
        return verdict.outcome == Voyage.Outcome.FLOATS_AT_ONCE;
    }

    /**
     * {@return whether the piece floats at once and stays up until a tenth of its dissolving body is left, toppings and
     * insets not counted: the computation stops once that is known}
     *
     * @param launch the piece and the uncertain parameters of one draw
     */
    public boolean floatsToTheEnd(Launch launch) {
        start(launch, OutcomeTracker.Asked.TO_THE_END);
        return verdict.floatsToTheEnd();
    }

    /**
     * {@return the smallest spare on the way of a piece that is kept at the surface, a boat dry, until a tenth of it is
     * left or its wall is pierced, over what keeps water out then} Unlike the outcome it is continuous in the weight: 0
     * at the heaviest piece that does not go under, negative above.
     *
     * @param launch the piece and the uncertain parameters of one draw
     */
    public double reserve(Launch launch) {
        held = true;
        start(launch, OutcomeTracker.Asked.TO_THE_END);
        held = false;
        return reserve;
    }

    /**
     * {@return the spare of a piece on the bottom at the last moment from which it is up in time to float at once, over
     * the displacement of its body then; 0 where it is too slow to be up in time at all} A piece heavier by nearly that
     * share still floats at once.
     *
     * @param launch the piece and the uncertain parameters of one draw
     */
    public double spareInTime(Launch launch) {
        piece.launch(launch);
        piece.enter(form.flooded);
        double moment = Voyage.Outcome.AT_ONCE;
        double spare = onBottom(moment);
        for (int pass = 0; pass < MOMENT_PASSES; pass++) {
            double growth = (spare - onBottom(moment * (1 - EARLIER))) / (moment * EARLIER);
            moment = growth > 0 ? Voyage.Outcome.AT_ONCE - piece.lag(piece.stepsIn(moment), growth) : 0;
            if (!(moment > 0)) {
                return 0;
            }
            spare = onBottom(moment);
        }
        return spare;
    }

    /** Spare so many seconds after it has come to lie on the bottom, over the displacement of its body. */
    private double onBottom(double seconds) {
        double steps = piece.stepsIn(seconds);
        piece.reach(steps, seconds);
        double body = piece.body(steps);
        return piece.spare(false, body, piece.front(steps)) / piece.displaced(body);
    }

    /** One voyage of a launch, as far as what is asked needs it. */
    private void start(Launch launch, OutcomeTracker.Asked asked) {
        verdict.asked(asked);
        piece.launch(launch);
        upWidth = 0;
        surfaced = 0;
        verdict.start(false, form.flooded.grid().volumeAt(0));
        reserve = Double.POSITIVE_INFINITY;
        grazes = false;
        depth = 0;
        walk();
        verdict.judge();
    }

    /** The stages in order: with air in the hollow, where there is any, then with every face wet. */
    private void walk() {
        if (form.airy.isPresent()) {
            Stage stage = form.airy.get();
            double left = form.release == Release.PLACED ? placed(stage) : under(stage);
            if (!(left > Voyage.Outcome.END * form.flooded.grid().volumeAt(0))) {
                return;
            }
            depth = form.flooded.grid().stepsTo(left, 0) * form.flooded.grid().step;
        }
        under(form.flooded);
    }

    /** A dry hollow, open side up. Volume left when it fills, m3. */
    private double placed(Stage stage) {
        double left = boat.walk(stage, piece.volumeScale, piece.areaScale, piece.speed, held);
        reserve = Math.min(reserve, boat.reserve);
        piece.clock(boat.time);
        margin = boat.margin;
        return left;
    }

    /** Under water or afloat, every wet face receding; a hollow upside down keeps its air. Volume left at its end, m3. */
    private double under(Stage stage) {
        ErosionGrid grid = stage.grid();
        piece.enter(stage);
        // the first moment of the stage: in cell i, a share t of the way, up or down by the sign of the balance
        int i = Math.min(grid.cells - 1, (int) (depth / grid.step));
        double t = depth / grid.step - i;
        double body = piece.body(i + t);
        double front = piece.front(i + t);
        double share = 1;
        boolean wasAfloat = verdict.afloat;
        piece.reach(i + t, piece.time);
        up = held || piece.spare(true, body, front) >= 0;
        if (piece.time == 0) {
            margin = Math.abs(piece.spare(true, body, front)) / piece.displaced(body);
        }
        if (wasAfloat && !up) {
            verdict.goesDown(piece.time, piece.left(i + t));
        } else {
            verdict.afloat = up;
        }
        double before = piece.spare(up, body, front);
        if (held && depth < grid.crumb) {
            reserve = Math.min(reserve, before / piece.displaced(body));
        }
        // cell by cell: its wet share, then its time, then the balance at its end
        int passes = FIRST_PASSES;
        double pierced = stage.pierced() / piece.speed;
        double still = grid.step / piece.speed;
        double wet = up ? 1 : stage.immersion().wet(piece.covered);
        double mean = wet;
        // of the spare, kg a depth; not known at first, nor when it has just turned
        double rate = Double.POSITIVE_INFINITY;
        int cells;
        for (; i < grid.cells; i += cells) {
            boolean far = Math.abs(before) > AHEAD * rate + NEAR * piece.displaced(body);
            cells = far && i % EVERY == 0 && i + EVERY <= grid.cells && !(piece.covered < 1) ? EVERY : 1;
            if (up && piece.time >= surfaced && byFront(stage)) {
                mean = (cells - t) * grid.step / stage.afloat().way(i + t, i + cells);
            } else if (up && (i % EVERY == 0 || passes > 1) && timed(stage)) {
                double load = piece.load(body, front);
                double last = wet;
                for (int pass = 0; pass < passes; pass++) {
                    share = piece.afloat(body, front, load, share, wet);
                    wet = stage.immersion().wet(share);
                }
                // at the middle of the depths it is used for, carried on from the last ones
                double ahead = passes > 1 ? wet : wet + (wet - last) / 2;
                mean = ahead > 0 ? Math.min(1, ahead) : wet;
                passes = 1;
            } else if (!up) {
                share = 1;
                wet = piece.covered < 1 ? stage.immersion().wet(piece.covered) : 1;
                mean = wet;
            }
            double cell = (cells - t) * still / mean;
            double start = piece.time;
            if (start + cell >= pierced) {
                piece.clock(pierced);
                return piece.left(i + t + (cells - t) * (pierced - start) / cell);
            }
            int next = i + cells;
            body = grid.volumeAt(next) * piece.volumeScale;
            front = grid.areaAt(next) * piece.areaScale;
            piece.reach(next, start + cell);
            double now = piece.spare(up, body, front);
            rate = Math.abs(now - before) / cells;
            if (held) {
                double spare = now / piece.displaced(body);
                reserve = spare < reserve && next * grid.step <= grid.crumb ? spare : reserve;
            } else if (up == now < 0) {
                double growth = Math.abs(now - before) / piece.displaced(body) / cell;
                grazes |= THOUSANDTH > GRAZING * growth;
                crossed(stage, i + t, next, start, before, now, growth);
                passes = FIRST_PASSES;
                now = piece.spare(up, body, front);
                rate = Double.POSITIVE_INFINITY;
            } else if (!up && i * grid.step < grid.crumb && next * grid.step >= grid.crumb) {
                margin = Math.min(margin, Math.abs(now) / piece.displaced(body));
            }
            verdict.pass(piece.time);
            if (verdict.settled(grid.volumeAt(next))) {
                return 0;
            }
            before = now;
            t = 0;
        }
        return 0;
    }

    /** Whether the clock still bears on what is asked; if not, nobody needs the wet share of a floating piece. */
    private boolean timed(Stage stage) {
        return !verdict.untimed() || stage.hollow() > 0 || !piece.soaked();
    }

    /** Whether the front leaves a flat face dry; while only 20 s are waited for, the wet share of the hull is enough. */
    private boolean byFront(Stage stage) {
        return (verdict.timeAsked() || !piece.soaked())
                && timed(stage)
                && stage.afloat().keepsUp();
    }

    /**
     * Finds where between two depths, in steps of the grid, the balance changes its sign, and turns the piece round. The
     * balance is nearly linear there: false position, with the weight of an end that stays halved (Illinois).
     */
    private void crossed(Stage stage, double from, int to, double start, double before, double now, double growth) {
        ErosionGrid grid = stage.grid();
        double end = piece.time;
        double low = 0;
        double high = 1;
        double atLow = before;
        double atHigh = now;
        // a piece that has just turned may find the balance of its new place against it at once
        boolean turned = before < 0 == up;
        double place = -1;
        double moved = 1;
        double steps = from;
        for (int pass = 0; pass < (turned ? 1 : ROOT_PASSES) && moved > ROOT; pass++) {
            double last = place;
            place = turned ? 0 : (low * atHigh - high * atLow) / (atHigh - atLow);
            moved = Math.abs(place - last);
            steps = from + (to - from) * place;
            piece.reach(steps, start + place * (end - start));
            double spare = piece.spare(up, piece.body(steps), piece.front(steps));
            if (spare < 0 == up) {
                atLow = high == last ? atLow / 2 : atLow;
                high = place;
                atHigh = spare;
            } else {
                atHigh = low == last ? atHigh / 2 : atHigh;
                low = place;
                atLow = spare;
            }
        }
        double moment = piece.time;
        if (up) {
            verdict.goesDown(moment, piece.left(steps));
        } else {
            double lag = piece.lag(steps, growth);
            double later = steps + lag * piece.speed / grid.step;
            // what the balance would have to change by for it to come up as a crumb, or not
            margin = Math.min(margin, growth * Math.abs(grid.crumb - later * grid.step) / piece.speed);
            if (!(upWidth > 0)) {
                upWidth = piece.width(later);
            }
            surfaced = moment + lag;
            verdict.comesUp(surfaced, piece.left(Math.min(later, grid.cells)) / grid.volumeAt(0));
        }
        up = !up;
        piece.reach(to, end);
    }

    /** {@return what became of the piece} */
    public Voyage.Outcome outcome() {
        return verdict.outcome;
    }

    /** {@return whether a piece that floated at once went under before the end} */
    public boolean sinksLater() {
        return verdict.sinksLater;
    }

    /** {@return whether it floated at once and stayed up until a tenth of its dissolving body was left} */
    public boolean staysToTheEnd() {
        return verdict.floatsToTheEnd();
    }

    /** {@return the time when it came up, s; NaN where it did not rise later} */
    public double riseTime() {
        return verdict.riseTime;
    }

    /** {@return when it first came up, unless it floats at once, s, however little was left; NaN where it never did} */
    public double upTime() {
        return verdict.upTime;
    }

    /** {@return how wide it was when it came up, m: the diameter of a disc of its plan area; 0 where it never did} */
    public double upWidth() {
        return upWidth;
    }

    /** {@return the time when 1 % of the body is left, s} */
    public double fizzTime() {
        return piece.time;
    }

    /** {@return whether the balance grazed zero, so that the times may be far off} */
    public boolean grazes() {
        return grazes;
    }

    /** {@return how far from zero the balances that decided the outcome were, over the displacement} */
    public double margin() {
        return margin;
    }
}
