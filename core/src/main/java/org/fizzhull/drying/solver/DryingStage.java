package org.fizzhull.drying.solver;

import org.fizzhull.numeric.Tridiagonal;

/**
 * One implicit stage of the drying equations: vapour diffusion with the film reaction and the acid that binds water in
 * every cell, and the room. Of cell i, counted from the skin inward, and of the room with N like pieces in it, over a stage of h seconds:
 *
 * <pre>
 *   V_i (C_i - C_i0) / h = G_i-1 (a_i-1 - a_i) + G_i (a_i+1 - a_i) + V_i rho_dry (m_w (xi_i - xi_i0) - (b_i - b_i0)) / h
 *   xi_i - xi_i0         = h k(T) max(0, C_i - C_film) / rho_dry (1 - xi_i / xi_max)^p
 *   M (phi - phi_0) / h  = E (phi_in - phi) - D(phi) + G_0 (a_0 - phi)
 * </pre>
 *
 * b water bound by the acid ({@link AcidHydration}), V cell volume (m3), C water that can move per volume of piece (kg/m3), a(C) its water activity ({@link WaterActivity}), G the
 * vapour that passes per unit of activity (kg/s, {@link VapourPath}), xi carbon dioxide made (mol/kg dry), m_w water
 * made with each mole (kg/mol), C_film the content at which films become liquid, phi relative humidity of the room, M
 * vapour that one piece's share of the room holds (kg), E its exchange of air (kg/s), phi_in the humidity that comes
 * in, D the dehumidifier (kg/s, {@link RoomBalance}).
 *
 * <p>Newton's method with the analytic Jacobian, a tridiagonal system whose first unknown is the room's humidity and
 * whose others are the water of the cells. Cost: some three passes over the cells. Allocates nothing per stage; not
 * thread-safe. SI.
 */
final class DryingStage {
    /** Most iterations of Newton's method: the isotherm is piecewise linear, so that three are usual. */
    private static final int MOST_NEWTON = 25;

    /** Conductances between cells and through the skin. */
    final VapourPath path = new VapourPath();
    /** The equation of the room. */
    final RoomBalance air = new RoomBalance();

    /** Rate constant k(T) of the film reaction with its factors, mol/(kg water s); 0 for none. */
    double filmRate;

    /** Water activity against content. */
    private final WaterActivity isotherm;
    /** Law of the slow reaction. */
    private final FilmReaction reaction;
    /** Water that citric acid binds as its hydrate. */
    private final AcidHydration hydration;
    /** Dry mix per volume, kg/m3. */
    private final double rhoDry;

    /** Number of cells. */
    private int n;
    /** Segment of the isotherm in which each cell lies: the guess of the next search. */
    private int[] segment = {};
    /** Water activity of each cell at the present guess. */
    private double[] activity = {};

    /** d activity / d water of each cell, m3/kg. */
    private double[] slope = {};

    /** d extent / d water of each cell at the present guess, mol m3/kg2. */
    private double[] yielding = {};

    /** d bound / d water of each cell at the present guess, m3/kg. */
    private double[] binding = {};

    /** Whether the acid binds water in the present stage. */
    private boolean binds;

    /** Subdiagonal of the linear system; row 0 is the room, row i + 1 cell i. */
    private double[] lower = {};
    /** Its diagonal: kg/s per unit of humidity in row 0, m3/s in the others. */
    private double[] diagonal = {};
    /** Its superdiagonal. */
    private double[] upper = {};
    /**
     * Its right side, kg/s; once solved, the moves: of the humidity of the room, then of the water of the cells, kg/m3.
     */
    private double[] right = {};

    DryingStage(WaterActivity isotherm, FilmReaction reaction, AcidHydration hydration, double rhoDry) {
        this.isotherm = isotherm;
        this.reaction = reaction;
        this.hydration = hydration;
        this.rhoDry = rhoDry;
    }

    /** Makes room for so many cells. */
    void cells(int count) {
        n = count;
        segment = new int[n];
        activity = new double[n];
        slope = new double[n];
        yielding = new double[n];
        binding = new double[n];
        lower = new double[n + 1];
        diagonal = new double[n + 1];
        upper = new double[n + 1];
        right = new double[n + 1];
    }

    /**
     * Whether a cell would give off more gas than it had: the step is too long. One that has none left, but for the
     * rounding of the last step, gives off nothing in a step of any length.
     */
    boolean exhausted(Contents from, Contents to) {
        boolean exhausted = false;
        if (filmRate > 0) {
            for (int i = 0; i < n; i++) {
                exhausted |= to.extent[i] > from.extent[i] && reaction.exceeds(to.extent[i]);
            }
        }
        return exhausted;
    }

    /** Water made between two contents, kg. */
    double made(Contents from, Contents to) {
        double sum = 0;
        if (filmRate > 0) {
            for (int i = 0; i < n; i++) {
                sum += path.volume[i] * (to.extent[i] - from.extent[i]);
            }
        }
        return sum * rhoDry * reaction.waterPerMole();
    }

    /**
     * Solves a stage; false where Newton's method does not settle.
     *
     * @param now what is held at its end; on entry a guess
     * @param base what is held at its start
     * @param h length, s
     */
    boolean solve(Contents now, Contents base, double h) {
        // the method has settled where no cell moves by more than this, kg/m3; a cell at the kink stops just beside it
        double scale = 1e-11 * isotherm.filmContent() + 1e-10;
        double above = isotherm.filmContent() * (1 + 1e-9);
        double below = isotherm.filmContent() * (1 - 1e-9);
        settleBinding(now, base);
        // fields in local variables, as below
        double[] water = now.water;
        double[] moves = right;
        double[] yields = yielding;
        int[] segments = segment;
        boolean acid = binds;
        int count = n;
        for (int iteration = 0; iteration < MOST_NEWTON; iteration++) {
            // one Newton step: the linear system at the guess, its solution, the new guess
            linearise(now, base, h);
            double skinFlux = couple(now.room, base.room, 1 / h);
            Tridiagonal.solve(lower, diagonal, upper, right, n + 1);
            double largest = Math.abs(right[0]) * 1e-3;
            now.room += right[0];
            // the linearised flux closes the balance of the linear system just solved
            now.flux = skinFlux + path.byWater * right[1] + path.byRoom * right[0];
            // where every cell stays on its segment the system was linear, and its solution is the answer
            boolean exact = air.fixed() && now.room <= isotherm.film();
            for (int i = 0; i < count; i++) {
                double move = moves[i + 1];
                double from = water[i];
                double to = from + move;
                double size = Math.abs(move);
                largest = size > largest || Double.isNaN(size) ? size : largest;
                exact = exact && isotherm.holds(to, segments[i]) && reaction.nearlyLinear(yields[i] * move);
                if (acid) {
                    exact = exact && hydration.sameSide(from, to);
                    to = hydration.toKink(from, to);
                }
                water[i] = toKink(from, to, above, below);
            }
            if (largest <= scale) {
                return true;
            }
            if (exact) {
                addLinear(now);
                return true;
            }
            if (!(largest < 1e9)) {
                return false;
            }
        }
        return false;
    }

    /** Whether acid binds water in this stage: not while a film stands anywhere in the piece. */
    private void settleBinding(Contents now, Contents base) {
        binds = !hydration.idle();
        for (int i = 0; i < n && binds; i++) {
            binds = base.water[i] <= isotherm.filmContent();
        }
        if (!binds && !hydration.idle()) {
            System.arraycopy(base.bound, 0, now.bound, 0, n);
        }
    }

    /** What each cell holds, gains and makes at the present guess, and how that changes with its water. */
    private void linearise(Contents now, Contents base, double h) {
        // fields in local variables: the fast compiler of a short command reads them anew in every turn
        double[] content = now.water;
        double[] from = base.water;
        double[] volumes = path.volume;
        int[] segments = segment;
        double[] activities = activity;
        double[] slopes = slope;
        double[] own = diagonal;
        double[] rest = right;
        double perStep = 1 / h;
        int count = n;
        for (int i = 0; i < count; i++) {
            double c = content[i];
            int s = isotherm.segment(c, segments[i]);
            segments[i] = s;
            activities[i] = isotherm.activity(c, s);
            slopes[i] = isotherm.slope(s);
            double stored = volumes[i] * perStep;
            own[i + 1] = stored;
            rest[i + 1] = stored * (from[i] - c);
        }
        if (filmRate > 0) {
            react(now, base, h);
        }
        if (binds) {
            bind(now, base, h);
        }
    }

    /** Film reaction of the cells at the present guess: source and its derivative. */
    private void react(Contents now, Contents base, double h) {
        double[] water = now.water;
        double[] starts = base.extent;
        double[] extents = now.extent;
        double[] volumes = path.volume;
        double[] yields = yielding;
        double[] own = diagonal;
        double[] rest = right;
        double film = isotherm.filmContent();
        double mix = rhoDry;
        double rate = filmRate;
        double perStep = 1 / h;
        double yield = mix * reaction.waterPerMole();
        int count = n;
        for (int i = 0; i < count; i++) {
            double start = starts[i];
            if (water[i] > film) {
                double reach = h * rate * ((water[i] - film) / mix);
                double moved = reaction.implicit(start, reach);
                double steepness = reaction.slope(moved, reach) * h * rate / mix;
                double storedYield = volumes[i] * perStep * yield;
                yields[i] = steepness;
                extents[i] = moved;
                rest[i + 1] += storedYield * (moved - start);
                own[i + 1] -= storedYield * steepness;
            } else {
                extents[i] = start;
                yields[i] = 0;
            }
        }
    }

    /** What the acid of the cells binds at the present guess, and how that changes with their water. */
    private void bind(Contents now, Contents base, double h) {
        double[] water = now.water;
        double[] starts = base.bound;
        double[] bounds = now.bound;
        double[] volumes = path.volume;
        double[] changes = binding;
        double[] own = diagonal;
        double[] rest = right;
        double mix = rhoDry;
        double perStep = 1 / h;
        double onRamp = hydration.slope(h);
        int count = n;
        for (int i = 0; i < count; i++) {
            double moved = hydration.implicit(starts[i], h, water[i]);
            double steepness = hydration.ramps(water[i]) ? onRamp : 0;
            double storedMix = volumes[i] * perStep * mix;
            changes[i] = steepness;
            bounds[i] = moved;
            rest[i + 1] -= storedMix * (moved - starts[i]);
            own[i + 1] += storedMix * steepness;
        }
    }

    /** Adds the diffusion between cells, the skin and the room; returns the flux through the skin, kg/s. */
    private double couple(double room, double baseRoom, double perStep) {
        double skinFlux = path.throughSkin(activity[0], slope[0], room, isotherm.film());
        right[1] -= skinFlux;
        diagonal[1] += path.byWater;
        lower[1] = path.byRoom;
        right[0] = air.surplus(perStep, baseRoom, room, skinFlux);
        diagonal[0] = air.slope(perStep, room, path.byRoom);
        upper[0] = air.fixed() ? 0 : -path.byWater;
        double[] links = path.link;
        double[] activities = activity;
        double[] slopes = slope;
        double[] below = lower;
        double[] own = diagonal;
        double[] above = upper;
        double[] rest = right;
        double near = activities[0];
        for (int i = 1; i < n; i++) {
            double g = links[i];
            double far = activities[i];
            double outer = g * slopes[i - 1];
            double inner = g * slopes[i];
            double flow = g * (far - near);
            near = far;
            rest[i] += flow;
            rest[i + 1] -= flow;
            own[i] += outer;
            own[i + 1] += inner;
            above[i] = -inner;
            below[i + 1] = -outer;
        }
        return skinFlux;
    }

    /** What belongs to the linear system just solved, which was the whole truth: the balance closes. */
    private void addLinear(Contents now) {
        if (filmRate > 0) {
            for (int i = 0; i < n; i++) {
                now.extent[i] += yielding[i] * right[i + 1];
            }
        }
        if (binds) {
            for (int i = 0; i < n; i++) {
                now.bound[i] += binding[i] * right[i + 1];
            }
        }
    }

    /**
     * A cell that would cross the content at which its film vanishes stops just beyond it: the slope changes there from
     * nothing to its steepest, and unlimited steps cycle. Without this a fifth of the steps of a starchy mix failed.
     */
    private static double toKink(double from, double to, double above, double below) {
        if (from > above && to < below) {
            return below;
        }
        return from < below && to > above ? above : to;
    }
}
