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

    /** Halvings of a cell to the moment a balance changes its sign. */
    static final int ROOT_PASSES = 14;

    private static final int FIRST_PASSES = 8;

    /** The wet share of a floating piece is worked out anew at each of so many depths; it moves by 0.3 % a depth. */
    private static final int EVERY = 4;

    private final VoyageForm form;
    private final ForceBalance balance;
    private final PieceForces forces;
    private final DryBoat boat;

    private double volumeScale;
    private double stretch;
    private double areaScale;
    private double speed;
    private double surface;

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

    private void start(Launch launch) {
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
        double bottom = Math.max(form.halfHeight, balance.water.bathDepth() - form.halfHeight);
        forces.launch(bottom);
        upWidth = 0;
        verdict.start(false, form.flooded.grid().volume[0]);
        reserve = Double.POSITIVE_INFINITY;
        grazes = false;
        time = depth = 0;
        skin = balance.skinDepth(0);
        walk(bottom);
        verdict.judge();
    }

    private void walk(double bottom) {
        if (form.airy.isPresent()) {
            Stage stage = form.airy.get();
            double left = form.release == Release.PLACED ? placed(stage) : pocket(stage, bottom);
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
    private double pocket(Stage stage, double bottom) {
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
        for (; i < grid.cells; i++) {
            if (up && (i % EVERY == 0 || passes > 1)) {
                double load = forces.weight(body) + soaked(body, front);
                double last = wet;
                for (int pass = 0; pass < passes; pass++) {
                    share = forces.afloat(stage, body, front, load, share, wet);
                    wet = stage.immersion().wet(share);
                }
                // at the middle of the depths it is used for, carried on from the last ones
                double ahead = passes > 1 ? wet : wet + (wet - last) / 2;
                mean = ahead > 0 ? Math.min(1, ahead) : wet;
                passes = 1;
            } else if (!up) {
                share = 1;
                wet = covered < 1 ? stage.immersion().wet(covered) : 1;
                mean = wet;
            }
            double cell = (1 - t) * still / stage.receding(mean, balance.turning);
            if (time + cell >= pierced) {
                double part = (pierced - time) / cell;
                time = pierced;
                skin = balance.skinDepth(time);
                return grid.volume(i, t + (1 - t) * part);
            }
            double start = time;
            time = start + cell;
            skin = balance.skinDepth(time);
            body = grid.volume[i + 1] * volumeScale;
            front = grid.area[i + 1] * areaScale;
            cover(stage, i + 1);
            forces.letGo((i + 1) * grid.step);
            double now = spare(stage, up, body, front);
            if (held) {
                double left = now / (balance.water.density * body);
                reserve = left < reserve && (i + 1) * grid.step <= grid.crumb ? left : reserve;
            } else if (up == now < 0) {
                double growth = Math.abs(now - before) / (balance.water.density * body) / cell;
                grazes |= THOUSANDTH > GRAZING * growth;
                crossed(stage, i, t, start, cell, growth);
                passes = FIRST_PASSES;
                now = spare(stage, up, body, front);
            } else if (!up && i * grid.step < grid.crumb && (i + 1) * grid.step >= grid.crumb) {
                margin = Math.min(margin, Math.abs(now) / (balance.water.density * body));
            }
            verdict.pass(time);
            if (verdict.settled(grid.volume[i + 1])) {
                return 0;
            }
            before = now;
            t = 0;
        }
        return 0;
    }

    /** Finds where in cell i, from its share t on, the balance changes its sign, and turns the piece round. */
    private void crossed(Stage stage, int i, double t, double start, double cell, double growth) {
        ErosionGrid grid = stage.grid();
        double end = time;
        double low = 0;
        double high = 1;
        double place = 1;
        for (int pass = 0; pass < ROOT_PASSES; pass++) {
            double middle = (low + high) / 2;
            place = t + (1 - t) * middle;
            time = start + middle * cell;
            skin = balance.skinDepth(time);
            double body = grid.volume(i, place) * volumeScale;
            cover(stage, i + place);
            forces.letGo((i + place) * grid.step);
            double spare = spare(stage, up, body, grid.area(i, place) * areaScale);
            if (spare < 0 == up) {
                high = middle;
            } else {
                low = middle;
            }
        }
        if (up) {
            verdict.goesDown(time, grid.volume(i, place));
        } else {
            double lag = lag(stage, i + place, grid.volume(i, place) * volumeScale, growth);
            double later = i + place + lag * speed / grid.step;
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
        cover(stage, i + 1);
        forces.letGo((i + 1) * grid.step);
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
