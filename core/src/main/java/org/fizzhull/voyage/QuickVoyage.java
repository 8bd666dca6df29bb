package org.fizzhull.voyage;

import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Makeup;

/**
 * The voyage without motion, for many draws: the sign of the balance on 200 depths, roots found between them, 8 s from
 * the bottom to the surface. Agrees with {@link FullVoyage} on the outcome but for pieces near a border. Allocates
 * nothing; one instance serves one thread and holds the last result.
 */
public final class QuickVoyage {
    /** From the balance's change of sign on the bottom to the surface, s (computed: 5 to 14). */
    public static final double RISE_LAG = 8;

    /** A balance that would move a rise by more than this, s, if it changed by a thousandth of the displacement, grazes. */
    private static final double GRAZING = 30;

    private static final double THOUSANDTH = 1e-3;
    private static final int ROOT_PASSES = 14;
    private static final int FIRST_PASSES = 8;

    private final VoyageForm form;
    private final Balance balance;

    private double mass;
    private double volumeScale;
    private double areaScale;
    private double speed;
    private double layerUp;
    private double layerDown;
    private double fluxUp;
    private double fluxDown;
    private double surface;
    private double liftUp;
    private double liftDown;
    private double pocketUp;
    private double pocketDown;
    private double wetPerPlan;

    private double time;
    private double depth;
    private double decay;
    private boolean up;
    private boolean judged;
    private boolean afloat;
    private Outcome outcome = Outcome.STAYS_DOWN;
    private boolean sinksLater;
    private boolean grazes;
    private double riseTime;
    private double margin;

    /** Voyages of a form in a bath. */
    public QuickVoyage(VoyageForm form, Bath bath) {
        this.form = form;
        balance = new Balance(new Waters(bath, form.listedHalfHeight));
    }

    /**
     * Walks one voyage.
     *
     * @param pieceMass of everything, kg
     * @param temperature of the bath, K
     * @param volumeRatio true volume over the computed one
     * @param surfaceRatio true surface over the computed one
     */
    public void run(
            double pieceMass,
            double temperature,
            double volumeRatio,
            double surfaceRatio,
            Makeup makeup,
            FizzParameters fizz,
            VoyageParameters voyage) {
        double scale = Math.cbrt(volumeRatio);
        volumeScale = volumeRatio;
        areaScale = scale * scale * surfaceRatio;
        mass = pieceMass;
        balance.set(temperature, (mass - form.insetMass) / (form.volume * volumeRatio), makeup, fizz, voyage);
        // in the depth of the table, which a larger piece stretches and a rougher surface shortens
        speed = balance.recession * surfaceRatio / scale;
        surface = surfaceRatio;
        double bottom = Math.max(form.listedHalfHeight, balance.water.bathDepth() - form.halfHeight);
        fluxUp = balance.flux(balance.water.molarVolume);
        layerUp = balance.fullLayer(fluxUp);
        fluxDown = balance.flux(balance.water.molarVolume(bottom));
        layerDown = balance.fullLayer(fluxDown);
        outcome = Outcome.STAYS_DOWN;
        judged = afloat = sinksLater = grazes = false;
        riseTime = Double.NaN;
        time = depth = 0;
        decay = 1;
        walk(bottom);
        judge();
    }

    private void walk(double bottom) {
        if (form.airy.isPresent()) {
            Stage stage = form.airy.get();
            double left = form.release == Release.PLACED ? boat(stage) : pocket(stage, bottom);
            if (!(left > Outcome.END * form.flooded.grid().volume[0])) {
                return;
            }
            depth = form.flooded.grid().depthOf(left);
        }
        pocketUp = pocketDown = 0;
        under(form.flooded);
    }

    /** A dry hollow, open side up: ends when the rim goes under or the wall is pierced. Volume left then, m3. */
    private double boat(Stage stage) {
        ErosionGrid grid = stage.grid();
        afloat = true;
        double before = 0;
        double cell = 0;
        for (int i = 0; i < ErosionGrid.CELLS; i++) {
            double body = grid.volume[i] * volumeScale;
            double room = body + stage.hollow() * volumeScale;
            double spare = Balance.spare(balance.water.density, room, weight(body), soaked(body, decay));
            if (i == 0) {
                margin = Math.abs(spare) / (balance.water.density * room);
            }
            if (spare <= 0 && i == 0) {
                afloat = false;
                return grid.volume[0];
            }
            if (spare <= 0) {
                double share = before / (before - spare);
                time -= (1 - share) * cell;
                decay = balance.decayed(1, time);
                return grid.volume(i - 1, share);
            }
            before = spare;
            cell = grid.step / (speed * stage.immersion().wet(1 - spare / (balance.water.density * room)));
            double pierced = stage.pierced() / speed;
            if (time + cell >= pierced) {
                double share = (pierced - time) / cell;
                time = pierced;
                decay = balance.decayed(1, time);
                return grid.volume(i, share);
            }
            time += cell;
            decay = balance.decayed(decay, cell);
            pass(time);
        }
        return 0;
    }

    /** A hollow upside down with its air. Volume left when the wall is pierced, m3. */
    private double pocket(Stage stage, double bottom) {
        pocketUp = stage.hollow() * volumeScale * balance.water.squeeze(form.listedHalfHeight);
        pocketDown = stage.hollow() * volumeScale * balance.water.squeeze(bottom);
        return under(stage);
    }

    /** Under water or afloat, every wet face receding. Volume left at its end, m3. */
    private double under(Stage stage) {
        ErosionGrid grid = stage.grid();
        wetPerPlan = stage.facePerPlan() * surface;
        liftUp = balance.lifting(balance.plume(fluxUp * wetPerPlan));
        liftDown = balance.lifting(balance.plume(fluxDown * wetPerPlan));
        int i = Math.min(ErosionGrid.CELLS - 1, (int) (depth / grid.step));
        double t = depth / grid.step - i;
        double body = grid.volume(i, t) * volumeScale;
        double front = grid.area(i, t) * areaScale;
        double share = 1;
        boolean first = time == 0;
        boolean wasAfloat = afloat;
        up = spare(stage, true, body, front, decay) >= 0;
        if (first) {
            margin = Math.abs(spare(stage, true, body, front, decay)) / (balance.water.density * body);
            afloat = up;
        } else if (wasAfloat && !up) {
            goesDown(time);
        } else {
            afloat = up;
        }
        double before = spare(stage, up, body, front, decay);
        int passes = FIRST_PASSES;
        for (; i < ErosionGrid.CELLS; i++) {
            double wet = 1;
            if (up) {
                double load = weight(body) + soaked(body, decay);
                for (int pass = 0; pass < passes; pass++) {
                    share = wet(stage, body, front, load, share);
                }
                wet = share;
            }
            double cell = (1 - t) * grid.step / (speed * wet);
            double pierced = stage.pierced() / speed;
            if (time + cell >= pierced) {
                double part = (pierced - time) / cell;
                time = pierced;
                decay = balance.decayed(1, time);
                return grid.volume(i, t + (1 - t) * part);
            }
            double start = time;
            double left = grid.volume[i] / grid.volume[0];
            time = start + cell;
            decay = balance.decayed(decay, cell);
            passes = 1;
            body = grid.volume[i + 1] * volumeScale;
            front = grid.area[i + 1] * areaScale;
            double now = spare(stage, up, body, front, decay);
            if (before < 0 != now < 0) {
                crossed(stage, i, t, start, cell);
                double slope = Math.abs(now - before) / (balance.water.density * body) / cell;
                grazes |= THOUSANDTH / slope > GRAZING;
                now = spare(stage, up, body, front, decay);
            } else if (!up && left > Outcome.CRUMB && grid.volume[i + 1] / grid.volume[0] <= Outcome.CRUMB) {
                margin = Math.min(margin, Math.abs(now) / (balance.water.density * body));
            }
            pass(time);
            before = now;
            t = 0;
        }
        return 0;
    }

    /** Finds where in cell i, from its share t on, the balance changes its sign, and turns the piece round. */
    private void crossed(Stage stage, int i, double t, double start, double cell) {
        ErosionGrid grid = stage.grid();
        double end = time;
        double low = 0;
        double high = 1;
        double place = 1;
        for (int pass = 0; pass < ROOT_PASSES; pass++) {
            double middle = (low + high) / 2;
            place = t + (1 - t) * middle;
            time = start + middle * cell;
            double body = grid.volume(i, place) * volumeScale;
            double spare = spare(stage, up, body, grid.area(i, place) * areaScale, balance.decayed(1, time));
            if (spare < 0 == up) {
                high = middle;
            } else {
                low = middle;
            }
        }
        double left = grid.volume(i, place) / grid.volume[0];
        if (up) {
            goesDown(time);
        } else {
            comesUp(time + RISE_LAG, left);
        }
        up = !up;
        time = end;
    }

    private void comesUp(double when, double left) {
        pass(when);
        afloat = true;
        if (judged && outcome == Outcome.STAYS_DOWN && left >= Outcome.CRUMB) {
            outcome = Outcome.RISES_LATER;
            riseTime = when;
        }
    }

    private void goesDown(double when) {
        pass(when);
        afloat = false;
        sinksLater |= outcome == Outcome.FLOATS_AT_ONCE;
    }

    /** Judges what is afloat when the clock passes the moment. */
    private void pass(double when) {
        if (!judged && when > Outcome.AT_ONCE) {
            judge();
        }
    }

    private void judge() {
        if (!judged) {
            judged = true;
            outcome = afloat ? Outcome.FLOATS_AT_ONCE : Outcome.STAYS_DOWN;
        }
    }

    private double weight(double body) {
        return balance.bodyDensity * body + form.insetMass;
    }

    private double soaked(double body, double after) {
        return balance.soaked(balance.soakedShareOf(after), body);
    }

    /** Spare wholly under water, just below the surface or on the bottom, kg, at an exp(-t/tau) of soaking. */
    private double spare(Stage stage, boolean high, double body, double front, double after) {
        double gas = Balance.gas(high ? layerUp : layerDown, front, body);
        double room = body + gas + stage.insetVolume() + (high ? pocketUp : pocketDown);
        return Balance.spare(high ? liftUp : liftDown, room, weight(body), soaked(body, after));
    }

    /** Wet share of the surface where lift meets a load, kg, from a near guess of it. */
    private double wet(Stage stage, double body, double front, double load, double guess) {
        double lift = balance.lifting(balance.plume(fluxUp * wetPerPlan * guess));
        double gas = Balance.gas(layerUp, front * guess, body);
        double room = body + pocketUp + stage.insetVolume();
        return stage.immersion().wet((load - lift * gas) / (lift * room));
    }

    /** What became of the piece. */
    public Outcome outcome() {
        return outcome;
    }

    /** Whether a piece that floated at once went under before the end. */
    public boolean sinksLater() {
        return sinksLater;
    }

    /** When it came up, s; NaN where it did not rise later. */
    public double riseTime() {
        return riseTime;
    }

    /** When 1 % of the body is left, s. */
    public double fizzTime() {
        return time;
    }

    /** Whether the balance grazed zero, so that the times may be far off. */
    public boolean grazes() {
        return grazes;
    }

    /** How far from zero the balances that decided the outcome were, over the displacement. */
    public double margin() {
        return margin;
    }
}
