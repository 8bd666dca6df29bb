package org.fizzhull.voyage;

/**
 * The part of a {@link QuickVoyage} in which a hollow, open side up, keeps dry.
 *
 * <ol>
 *   <li>The spare with the rim at the water is looked at; at 0 or below the hollow fills at once.
 *   <li>Cell by cell of the grid the outer faces recede by the speed of a wet surface while the inner ones stay; only
 *       the wet share at the present draft recedes, which sets the time of the cell.
 *   <li>The boat ends where the wall is pierced, or where the rim goes under: the displaced mass has fallen below the
 *       mass of what is left with the water in its pores. That place is found by halving the cell.
 * </ol>
 *
 * <p>No gas clings in this balance and no plume lightens the water: the outer faces fizz, but what lifts a boat is its
 * hollow. Source: docs/physics/voyage.md, 7. Allocates nothing; one instance serves one thread and holds the last
 * result.
 */
final class DryBoat {
    /** The balance of the present launch. */
    private final ForceBalance balance;
    /** Told of the time; judges 20 s after the drop. */
    private final OutcomeTracker verdict;
    /** Mass of what does not dissolve, kg. */
    private final double insetMass;
    /** True volume over that of the table. */
    private double volumeScale;
    /** True area over that of the table. */
    private double areaScale;

    /** Since the drop, s. */
    double time;

    /** How far from zero the spare at the drop was, over the displacement. */
    double margin;

    /** Smallest spare so far, over what keeps water out then. */
    double reserve;

    /** Boats of a form that carries so much, kg, judged by a verdict. */
    DryBoat(ForceBalance balance, OutcomeTracker verdict, double insetMass) {
        this.balance = balance;
        this.verdict = verdict;
        this.insetMass = insetMass;
    }

    /**
     * Follows the piece from the drop.
     *
     * @param scale true volume over that of the table
     * @param areas true area over that of the table
     * @param speed of the front in the depth of the table, m/s
     * @param held whether it is kept up whatever its spare
     * @return volume of the table left when it fills with water, m3; 0 where the voyage is over
     */
    double walk(Stage stage, double scale, double areas, double speed, boolean held) {
        volumeScale = scale;
        areaScale = areas;
        time = 0;
        ErosionGrid grid = stage.grid();
        double room = room(stage, grid.volumeAt(0));
        double spare = spare(stage, grid.volumeAt(0), grid.areaAt(0));
        margin = Math.abs(spare) / (balance.water.density * room);
        reserve = spare / (balance.water.density * room);
        verdict.afloat = held || spare > 0;
        if (!verdict.afloat) {
            return grid.volumeAt(0);
        }
        // the wall is eaten through where it is wet all the time
        double pierced = stage.pierced() / speed;
        for (int i = 0; i < grid.cells; i++) {
            // share of the closed hull out of the water: what may still be loaded, and what lies above the rim
            double dry = (spare / balance.water.density + above(stage)) / room;
            double cell = grid.step / (speed * stage.immersion().wet(dry > 0 ? 1 - dry : 1));
            if (time + cell >= pierced) {
                double share = (pierced - time) / cell;
                time = pierced;
                return grid.volume(i, share);
            }
            double start = time;
            time = start + cell;
            room = room(stage, grid.volumeAt(i + 1));
            spare = spare(stage, grid.volumeAt(i + 1), grid.areaAt(i + 1));
            if (held) {
                reserve = Math.min(reserve, spare / (balance.water.density * room));
            } else if (spare <= 0) {
                return grid.volume(i, swamped(stage, i, start, cell));
            }
            verdict.pass(time);
            if (verdict.settled(grid.volumeAt(i + 1))) {
                return 0;
            }
        }
        return 0;
    }

    /** Finds where in cell i, that starts and lasts so long, s, the rim goes under, and sets the clock to it. */
    private double swamped(Stage stage, int i, double start, double cell) {
        double low = 0;
        double high = 1;
        for (int pass = 0; pass < QuickVoyage.ROOT_PASSES; pass++) {
            double middle = (low + high) / 2;
            time = start + middle * cell;
            if (spare(stage, stage.grid().volume(i, middle), stage.grid().area(i, middle)) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** Spare with the rim at the water, kg, with a volume of the table left, m3, behind an area of it, m2. */
    private double spare(Stage stage, double left, double area) {
        double body = left * volumeScale;
        double soaked = balance.soaked(balance.skinDepth(time), area * areaScale, body);
        double carried = room(stage, left) - above(stage);
        return ForceBalance.spare(balance.water.density, carried, balance.bodyDensity * body + insetMass, soaked);
    }

    /** What stays out of the water till the rim goes under, m3: dry, so it does not recede. */
    private double above(Stage stage) {
        return stage.above() * volumeScale;
    }

    /** What keeps water out with a volume of the table left, m3. */
    private double room(Stage stage, double left) {
        return (left + stage.hollow()) * volumeScale + stage.insetVolume();
    }
}
