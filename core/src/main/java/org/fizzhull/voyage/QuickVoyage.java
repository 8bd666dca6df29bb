package org.fizzhull.voyage;

import org.fizzhull.medium.Bath;

/**
 * The voyage without motion, for many draws: the sign of the balance on 200 depths as a rule, roots found between them,
 * and the time from the bottom to the surface in closed form. Agrees with {@link FullVoyage} on the outcome but for
 * pieces near a border. Allocates nothing; one instance serves one thread and holds the last result.
 */
public final class QuickVoyage {
    /**
     * A balance that would move a rise by more than this, s, if it changed by a thousandth of the displacement, grazes.
     */
    private static final double GRAZING = 30;

    private static final double THOUSANDTH = 1e-3;
    /** Smallest size of a piece that comes up, over its size at the start. */
    private static final double LEAST_HALF = 0.1;

    /** Halvings, at most, of a cell to the moment a balance changes its sign. */
    static final int ROOT_PASSES = 14;

    /** The moment is found to this share of the cell. */
    private static final double ROOT = 1e-5;

    private static final int FIRST_PASSES = 8;

    /** Of the last moment from which a piece is up in time: the way up depends little on it. */
    private static final int MOMENT_PASSES = 3;

    private static final double EARLIER = 0.05;

    /** The wet share of a floating piece is worked out anew at each of so many depths; it moves by 0.3 % a depth. */
    private static final int EVERY = 4;

    /**
     * Only every fourth depth is looked at while the spare, as it runs, would take this many depths to vanish and is at
     * least {@link #NEAR} of the displacement.
     */
    private static final double AHEAD = 12;

    private static final double NEAR = 2e-3;

    private final VoyageForm form;
    private final ForceBalance balance;
    private final PieceForces forces;
    private final DryBoat boat;

    private double volumeScale;
    private double stretch;
    private double areaScale;
    private double speed;
    private double surface;

    /** How deep it lies on the bottom, m. */
    private double bottom;

    /** Whether the piece is taller than the bath is deep, and what share of it is under water on the bottom. */
    private boolean shallow;

    private double covered;

    private double time;
    private double depth;
    private double skin;
    private boolean up;
    private final OutcomeTracker verdict = new OutcomeTracker();
    private boolean grazes;
    private double margin;

    /** Whether the piece is kept at the surface whatever its spare. */
    private boolean held;

    private double reserve;

    /** How wide the piece was when it first came up after it was let go, m; 0 before. */
    private double upWidth;

    /**
     * Voyages of a form in a bath.
     *
     * @param form what the voyage asks of the shape
     * @param bath the water
     */
    public QuickVoyage(VoyageForm form, Bath bath) {
        this.form = form;
        balance = new ForceBalance(new BathProperties(bath, form.halfHeight));
        forces = new PieceForces(form, balance);
        boat = new DryBoat(balance, verdict, form.insetMass);
    }

    /**
     * Computes one voyage.
     *
     * @param launch the piece and the uncertain parameters of one draw
     */
    public void run(Launch launch) {
        verdict.asked(OutcomeTracker.Asked.ALL);
        start(launch);
    }

    /**
     * Computes one voyage until it is known whether the piece floats at once and when it comes up: the fizz time
     * is then without meaning.
     *
     * @param launch the piece and the uncertain parameters of one draw
     */
    public void runUntilRise(Launch launch) {
        verdict.asked(OutcomeTracker.Asked.RISE);
        start(launch);
    }

    /**
     * {@return whether the piece floats at once: the computation stops once that is known}
     *
     * @param launch the piece and the uncertain parameters of one draw
     */
    public boolean floatsAtOnce(Launch launch) {
        verdict.asked(OutcomeTracker.Asked.AT_ONCE);
        start(launch);
        return verdict.outcome == Outcome.FLOATS_AT_ONCE;
    }

    /**
     * {@return whether the piece floats at once and stays up until a tenth of its dissolving body is left, toppings and
     * insets not counted: the computation stops once that is known}
     *
     * @param launch the piece and the uncertain parameters of one draw
     */
    public boolean floatsToTheEnd(Launch launch) {
        verdict.asked(OutcomeTracker.Asked.TO_THE_END);
        start(launch);
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
        verdict.asked(OutcomeTracker.Asked.TO_THE_END);
        held = true;
        start(launch);
        held = false;
        return reserve;
    }

    /**
     * {@return the spare of a piece on the bottom at the last moment from which it is up in time to float at once, over
     * the water that its body keeps out then; 0 where it is too slow to be up in time at all} A piece heavier by nearly
     * that share still floats at once.
     *
     * @param launch the piece and the uncertain parameters of one draw
     */
    public double spareInTime(Launch launch) {
        prepare(launch);
        Stage stage = form.flooded;
        forces.pocket(0, bottom);
        forces.enter(stage, surface);
        double moment = Outcome.AT_ONCE;
        double spare = onBottom(stage, moment);
        for (int pass = 0; pass < MOMENT_PASSES; pass++) {
            double left = left(stage, steps(stage, moment));
            double before = onBottom(stage, moment * (1 - EARLIER));
            double growth = (spare - before) / (balance.water.density * left) / (moment * EARLIER);
            moment = growth > 0 ? Outcome.AT_ONCE - lag(stage, steps(stage, moment), left, growth) : 0;
            if (!(moment > 0)) {
                return 0;
            }
            spare = onBottom(stage, moment);
        }
        return spare / (balance.water.density * left(stage, steps(stage, moment)));
    }

    /** Spare so many seconds after a piece has come to lie on the bottom, kg. */
    private double onBottom(Stage stage, double seconds) {
        double steps = steps(stage, seconds);
        int i = Math.min(stage.grid().cells - 1, (int) steps);
        time = seconds;
        skin = balance.skinDepth(time);
        cover(stage, steps);
        forces.letGo(steps * stage.grid().step);
        return spare(stage, false, left(stage, steps), stage.grid().area(i, steps - i) * areaScale);
    }

    /** Volume of what is left at a depth in steps of the grid, m3. */
    private double left(Stage stage, double steps) {
        int i = Math.min(stage.grid().cells - 1, (int) steps);
        return stage.grid().volume(i, steps - i) * volumeScale;
    }

    /** How far a front gets in a time, s, in steps of the grid, all of it wet; not beyond its end. */
    private double steps(Stage stage, double seconds) {
        return Math.min(stage.grid().cells, seconds * speed / stage.grid().step);
    }

    private void start(Launch launch) {
        prepare(launch);
        walk();
        verdict.judge();
    }

    private void prepare(Launch launch) {
        double surfaceRatio = launch.surfaceRatio();
        double scale = Math.cbrt(launch.volumeRatio());
        volumeScale = launch.volumeRatio();
        stretch = scale;
        areaScale = scale * scale * surfaceRatio;
        balance.set(launch, form.volume);
        // in the depth of the table, which a larger piece stretches and a rougher surface shortens
        speed = balance.recession * surfaceRatio / scale;
        surface = surfaceRatio;
        shallow = balance.water.bathDepth() < 2 * form.halfHeight * scale;
        covered = 1;
        bottom = Math.max(form.halfHeight, balance.water.bathDepth() - form.halfHeight);
        forces.launch(bottom);
        upWidth = 0;
        verdict.start(false, form.flooded.grid().volume[0]);
        reserve = Double.POSITIVE_INFINITY;
        grazes = false;
        time = depth = 0;
        skin = balance.skinDepth(0);
    }

    private void walk() {
        if (form.airy.isPresent()) {
            Stage stage = form.airy.get();
            double left = form.release == Release.PLACED ? placed(stage) : pocket(stage);
            if (!(left > Outcome.END * form.flooded.grid().volume[0])) {
                return;
            }
            depth = form.flooded.grid().depthOf(left);
        }
        forces.pocket(0, bottom);
        under(form.flooded);
    }

    /** A dry hollow, open side up. Volume left when it fills, m3. */
    private double placed(Stage stage) {
        double left = boat.walk(stage, volumeScale, areaScale, speed, held);
        reserve = Math.min(reserve, boat.reserve);
        time = boat.time;
        skin = balance.skinDepth(time);
        margin = boat.margin;
        return left;
    }

    /** A hollow upside down with its air. Volume left when the wall is pierced, m3. */
    private double pocket(Stage stage) {
        forces.pocket(stage.hollow() * volumeScale, bottom);
        return under(stage);
    }

    /** Under water or afloat, every wet face receding. Volume left at its end, m3. */
    private double under(Stage stage) {
        ErosionGrid grid = stage.grid();
        forces.enter(stage, surface);
        int i = Math.min(grid.cells - 1, (int) (depth / grid.step));
        double t = depth / grid.step - i;
        double body = grid.volume(i, t) * volumeScale;
        double front = grid.area(i, t) * areaScale;
        forces.letGo(depth);
        double share = 1;
        boolean first = time == 0;
        boolean wasAfloat = verdict.afloat;
        cover(stage, i + t);
        up = held || spare(stage, true, body, front) >= 0;
        if (first) {
            margin = Math.abs(spare(stage, true, body, front)) / (balance.water.density * body);
            verdict.afloat = up;
        } else if (wasAfloat && !up) {
            verdict.goesDown(time, grid.volume(i, t));
        } else {
            verdict.afloat = up;
        }
        double before = spare(stage, up, body, front);
        if (held && depth < grid.crumb) {
            reserve = Math.min(reserve, before / (balance.water.density * body));
        }
        int passes = FIRST_PASSES;
        double pierced = stage.pierced() / speed;
        double still = grid.step / speed;
        double wet = up ? 1 : stage.immersion().wet(covered);
        double mean = wet;
        // of the spare, kg a depth; not known at first, nor when it has just turned
        double rate = Double.POSITIVE_INFINITY;
        int cells;
        for (; i < grid.cells; i += cells) {
            if (up && (i % EVERY == 0 || passes > 1) && timed(pierced)) {
                double load = forces.weight(body) + soaked(body, front);
                double then = wet;
                for (int pass = 0; pass < passes; pass++) {
                    share = forces.afloat(stage, body, front, load, share, wet);
                    wet = stage.immersion().wet(share);
                }
                // at the middle of the depths it is used for, carried on from the last ones
                double ahead = passes > 1 ? wet : wet + (wet - then) / 2;
                mean = ahead > 0 ? Math.min(1, ahead) : wet;
                passes = 1;
            } else if (!up) {
                share = 1;
                wet = covered < 1 ? stage.immersion().wet(covered) : 1;
                mean = wet;
            }
            boolean far = Math.abs(before) > AHEAD * rate + NEAR * balance.water.density * body;
            cells = far && i % EVERY == 0 && i + EVERY <= grid.cells && !(covered < 1) ? EVERY : 1;
            double cell = (cells - t) * still / mean;
            if (time + cell >= pierced) {
                double steps = i + t + (cells - t) * (pierced - time) / cell;
                time = pierced;
                skin = balance.skinDepth(time);
                return grid.volume((int) steps, steps - (int) steps);
            }
            double start = time;
            time = start + cell;
            skin = balance.skinDepth(time);
            int next = i + cells;
            body = grid.volume[next] * volumeScale;
            front = grid.area[next] * areaScale;
            cover(stage, next);
            forces.letGo(next * grid.step);
            double now = spare(stage, up, body, front);
            rate = Math.abs(now - before) / cells;
            if (held) {
                double left = now / (balance.water.density * body);
                reserve = left < reserve && next * grid.step <= grid.crumb ? left : reserve;
            } else if (up == now < 0) {
                double growth = Math.abs(now - before) / (balance.water.density * body) / cell;
                grazes |= THOUSANDTH > GRAZING * growth;
                crossed(stage, i + t, next, start, before, now, growth);
                passes = FIRST_PASSES;
                now = spare(stage, up, body, front);
                rate = Double.POSITIVE_INFINITY;
            } else if (!up && i * grid.step < grid.crumb && next * grid.step >= grid.crumb) {
                margin = Math.min(margin, Math.abs(now) / (balance.water.density * body));
            }
            verdict.pass(time);
            if (verdict.settled(grid.volume[next])) {
                return 0;
            }
            before = now;
            t = 0;
        }
        return 0;
    }

    /** Whether the clock still bears on what is asked: once the skin is as deep as it gets, the balance is one of depth. */
    private boolean timed(double pierced) {
        return !verdict.untimed() || pierced < Double.POSITIVE_INFINITY || !balance.isSteady(skin);
    }

    /**
     * Finds where between two depths, in steps of the grid, the balance changes its sign, and turns the piece round. The
     * balance is nearly linear there: by the rule of false position, the end that stays halved in its weight (Illinois).
     */
    private void crossed(Stage stage, double from, int to, double start, double before, double now, double growth) {
        ErosionGrid grid = stage.grid();
        double end = time;
        double low = 0;
        double high = 1;
        double atLow = before;
        double atHigh = now;
        // a piece that has just turned may find the balance of its new place against it at once
        boolean turned = before < 0 == up;
        double place = -1;
        double moved = 1;
        double steps = to;
        double left = grid.volume[to];
        for (int pass = 0; pass < (turned ? 1 : ROOT_PASSES) && moved > ROOT; pass++) {
            double then = place;
            place = turned ? 0 : (low * atHigh - high * atLow) / (atHigh - atLow);
            moved = Math.abs(place - then);
            steps = from + (to - from) * place;
            int i = Math.min(grid.cells - 1, (int) steps);
            time = start + place * (end - start);
            skin = balance.skinDepth(time);
            left = grid.volume(i, steps - i);
            cover(stage, steps);
            forces.letGo(steps * grid.step);
            double spare = spare(stage, up, left * volumeScale, grid.area(i, steps - i) * areaScale);
            if (spare < 0 == up) {
                atLow = high == then ? atLow / 2 : atLow;
                high = place;
                atHigh = spare;
            } else {
                atHigh = low == then ? atHigh / 2 : atHigh;
                low = place;
                atLow = spare;
            }
        }
        if (up) {
            verdict.goesDown(time, left);
        } else {
            double lag = lag(stage, steps, left * volumeScale, growth);
            double later = steps + lag * speed / grid.step;
            int j = Math.min(grid.cells - 1, (int) later);
            // what the balance would have to change by for it to come up as a crumb, or not
            margin = Math.min(margin, growth * Math.abs(grid.crumb - later * grid.step) / speed);
            if (!(upWidth > 0)) {
                upWidth = form.planDiameter * half(stage, later) / form.halfHeight;
            }
            verdict.comesUp(time + lag, grid.volume(j, Math.min(1, later - j)) / grid.volume[0]);
        }
        up = !up;
        time = end;
        skin = balance.skinDepth(time);
        cover(stage, to);
        forces.letGo(to * grid.step);
    }

    /** From the balance's change of sign on the bottom to the surface, s. */
    private double lag(Stage stage, double later, double body, double growth) {
        double half = half(stage, later);
        double way = Math.max(0, balance.water.bathDepth() - 2 * half);
        return form.resistance.lag(growth, way, body, form.planDiameter * half / form.halfHeight);
    }

    /** Takes what the bath covers of a piece on the bottom, at a depth in steps of the grid. */
    private void cover(Stage stage, double steps) {
        if (shallow) {
            covered = coveredAt(stage, steps);
        }
    }

    private double coveredAt(Stage stage, double steps) {
        double draft = balance.water.bathDepth() / (2 * half(stage, steps));
        return draft < 1 ? stage.immersion().fraction(draft) : 1;
    }

    private double half(Stage stage, double steps) {
        double whole = form.halfHeight * stretch;
        return Math.max(LEAST_HALF * whole, whole - steps * stage.grid().step * stretch / surface);
    }

    private double soaked(double body, double front) {
        return balance.soaked(skin, front, body);
    }

    /** Spare wholly under water, just below the surface or on the bottom, kg. */
    private double spare(Stage stage, boolean high, double body, double front) {
        return forces.spare(stage, high, body, front, soaked(body, front), covered);
    }

    /** {@return what became of the piece} */
    public Outcome outcome() {
        return verdict.outcome;
    }

    /** {@return whether a piece that floated at once went under before the end} */
    public boolean sinksLater() {
        return verdict.sinksLater;
    }

    /**
     * {@return whether it floated at once and stayed up until a tenth of its dissolving body was left; see {@link
     * #run}}
     */
    public boolean staysToTheEnd() {
        return verdict.floatsToTheEnd();
    }

    /** {@return the time when it came up, s; NaN where it did not rise later} */
    public double riseTime() {
        return verdict.riseTime;
    }

    /**
     * {@return the time when it first came up though it did not float at once, s, however little was left of it; NaN
     * where it never did}
     */
    public double upTime() {
        return verdict.upTime;
    }

    /**
     * {@return how wide it was when it came up, m: the diameter of a disc of its plan area; of a piece that did come
     * up}
     */
    public double upWidth() {
        return upWidth;
    }

    /** {@return the time when 1 % of the body is left, s} */
    public double fizzTime() {
        return time;
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
