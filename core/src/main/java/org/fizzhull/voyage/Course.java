package org.fizzhull.voyage;

import org.fizzhull.numeric.EventIntegrator;

/**
 * The differential equation of a piece in one way of being in the bath. State: volume left (of the table), layer of
 * gas, depth of the centre, upward speed, moles of gas seen and of gas dissolved.
 *
 * <pre>  (m + C_a rho_w V) dU/dt = g B - 1/2 C_d rho_w A_plan U |U|,   dl/dt = (l_eq - l)/1 s</pre>
 *
 * <p>m mass (kg), C_a added mass over that of the displaced water, rho_w density of the water (kg/m3), V volume (m3), U
 * upward speed (m/s), B force over g (kg; {@link ForceBalance}), C_d drag coefficient, A_plan projected area (m2), l
 * thickness of the clinging gas (m). Basset's force and the thrust of shed gas are left out. Sources:
 * docs/physics/voyage.md, 3 and 6. Mutable; one instance serves one thread.
 */
final class Course implements EventIntegrator.Equation {
    static final int VOLUME = 0;
    static final int LAYER = 1;
    static final int CENTRE = 2;
    static final int SPEED = 3;
    static final int GAS = 4;
    static final int DISSOLVED = 5;
    static final int SIZE = 6;

    /** Below this speed a piece counts as at rest, m/s. */
    private static final double STILL = 2e-3;

    /** Below this speed a piece does not land on the bottom, m/s. */
    private static final double CRAWL = 1e-3;

    /** Depth below the bottom, m, at which it has landed whatever its speed. */
    private static final double HAIR = 1e-4;

    /** Below this acceleration a piece counts as at rest, m/s2. */
    private static final double CALM = 0.02;

    /** Draft over height up to which it can lie still at the surface. */
    private static final double AWASH = 0.9995;

    /** How a piece is in the bath. */
    enum Way {
        /** It moves. */
        FREE,
        /** It lies at the surface. */
        AFLOAT,
        /** It lies on the bottom. */
        BOTTOM,
        /** It floats with its hollow dry. */
        BOAT
    }

    final VoyageState moment;
    Way way = Way.FREE;

    private double since;
    private double lacking;

    /** A piece just let go. */
    Course(VoyageState moment) {
        this.moment = moment;
    }

    /**
     * Goes over to another way of being in the bath. Only a free piece changes its depth fast: in the other ways its
     * layer fills by an exponential, and steps need not be as short as its second.
     */
    void turn(Way next, double t, double[] y) {
        y[LAYER] = layer(t, y);
        way = next;
        since = t;
        lacking = 0;
        lacking = layer(t, y) - y[LAYER];
    }

    /** Thickness of the gas, m, after the moment was eroded. */
    double layer(double t, double[] y) {
        if (way == Way.FREE) {
            return y[LAYER];
        }
        moment.dive(Math.max(0, way == Way.BOTTOM ? aground() : y[CENTRE]));
        return lacking == 0 ? moment.fullLayer : moment.fullLayer - lacking * moment.unfilled(t - since);
    }

    @Override
    public void rate(double t, double[] y, double[] dydt) {
        rated(t, y, dydt);
    }

    /** As {@link #rate}; returns the depth of the centre, m. */
    double rated(double t, double[] y, double[] dydt) {
        double centre = set(t, y);
        dydt[VOLUME] = -moment.lost();
        dydt[LAYER] = way == Way.FREE ? moment.layerRate(y[LAYER]) : 0;
        dydt[CENTRE] = way == Way.FREE ? -y[SPEED] : 0;
        dydt[SPEED] = way == Way.FREE ? moment.acceleration : 0;
        double made = moment.made();
        double seen = moment.balance.gasShareReachingSurface(Math.max(0, centre));
        dydt[GAS] = made * seen;
        dydt[DISSOLVED] = made * (1 - seen);
        return centre;
    }

    /** Sets the moment and returns the depth of the centre, m. */
    double set(double t, double[] y) {
        moment.erode(y[VOLUME]);
        switch (way) {
            case FREE -> {
                moment.move(t, y[CENTRE], y[SPEED], y[LAYER]);
                return y[CENTRE];
            }
            case AFLOAT -> {
                return moment.rest(t, layer(t, y), y[CENTRE]);
            }
            case BOTTOM -> {
                double centre = aground();
                moment.immerse(moment.stage.immersion().fraction(moment.draft(centre)), centre, layer(t, y));
                return centre;
            }
            case BOAT -> {
                double share = Math.min(1, moment.laden(t) / (moment.balance.water.density * room()));
                moment.immerse(share, y[CENTRE], layer(t, y));
                return moment.centre(share);
            }
        }
        throw new IllegalStateException(way.toString());
    }

    private double room() {
        return moment.body + moment.hollowVolume() + moment.stage.insetVolume();
    }

    /** Spare of the boat, kg, after the moment was eroded. */
    private double dry(double t) {
        return moment.balance.water.density * (room() - moment.aboveRim()) - moment.laden(t);
    }

    /** Rises through 0 where 1 % of the body is left. */
    double ended(double t, double[] y) {
        return Outcome.END - y[VOLUME] / moment.stage.grid().volume[0];
    }

    /** Rises through 0 where the wall of a hollow is eaten through. */
    double pierced(double t, double[] y) {
        return t * moment.tableSpeed() / moment.stage.pierced() - 1;
    }

    /** Rises through 0 where the rim goes under. */
    double swamped(double t, double[] y) {
        moment.erode(y[VOLUME]);
        return -dry(t);
    }

    /** Rises through 0 where the free piece comes down on the bottom: one that lifts off from it slowly does not. */
    double touched(double t, double[] y) {
        moment.erode(y[VOLUME]);
        double below = y[CENTRE] + moment.halfHeight - moment.balance.water.bathDepth();
        return Math.max(Math.min(below, -y[SPEED] - CRAWL), below - HAIR);
    }

    /** Rises through 0 where the free piece comes to rest at the surface. */
    double settled(double t, double[] y) {
        double speed = y[SPEED] / STILL;
        if (speed * speed >= 1) {
            return 1 - speed * speed;
        }
        set(t, y);
        double push = moment.acceleration / CALM;
        double still = 1 - speed * speed - push * push;
        double out = 100 * (AWASH - moment.draft(y[CENTRE]));
        return Math.min(Math.min(still, out), sunk(t, y) * -1e3 / moment.laden(t));
    }

    /** Rises through 0 where a piece at the surface goes under or runs aground, kg. */
    double sunk(double t, double[] y) {
        moment.erode(y[VOLUME]);
        return -moment.spareAt(t, moment.covered(), Math.max(y[CENTRE], 0), layer(t, y));
    }

    /** Depth of the centre of a piece on the bottom, m, after the moment was eroded. */
    double aground() {
        return moment.balance.water.bathDepth() - moment.halfHeight;
    }

    /** Rises through 0 where a piece on the bottom lifts off, kg. */
    double lifted(double t, double[] y) {
        set(t, y);
        return moment.spare(t);
    }

    /** Depth of the top under the surface, m. */
    double under(double[] y) {
        moment.erode(y[VOLUME]);
        return y[CENTRE] - moment.halfHeight;
    }
}
