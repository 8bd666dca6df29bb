package org.fizzhull.voyage;

import org.fizzhull.numeric.EventIntegrator;
import org.fizzhull.voyage.result.Voyage;

/**
 * The differential equation of a piece in one way of being in the bath, for {@link FullVoyage}.
 *
 * <pre>
 *   dV_t/dt = -v_t A_t s_wet                                          volume left
 *   dl/dt   = (l_eq - l)/1 s                                          layer of gas
 *   dz/dt   = -U                                                      depth of the centre
 *   (m + C_a rho_w V) dU/dt = g B - 1/2 C_d rho_w A_plan U |U|        upward speed
 *   dn/dt   = rho_b c v A s_wet, split into gas seen and dissolved    carbon dioxide
 * </pre>
 *
 * <p>V_t, A_t volume (m3) and area (m2) of the table of the depth profile, v_t speed of the front in the depth of that
 * table (m/s), s_wet wet share of the faces, l thickness of the clinging gas (m), l_eq the same once full, m mass with
 * the soaked water (kg), C_a added mass over that of the displaced water, rho_w density of the water (kg/m3), V volume
 * (m3), U upward speed (m/s), B force over g (kg; {@link ForceBalance}), C_d drag coefficient, A_plan projected area
 * (m2), rho_b density of the body (kg/m3), c carbon dioxide still obtainable (mol/kg), v A true speed and area. Of a
 * piece at rest at the surface with a flat face up, A_t s_wet is the area of {@link AfloatFront}. A
 * bobbing piece also loses energy to waves ({@link VoyageState}).
 *
 * <p>In the way FREE all six are integrated. In the other three the piece is at rest: depth follows from a balance of
 * forces or from the bottom, speed is 0, and the layer has its closed form, so that the step need not be as short as
 * its second. The functions below are events: each rises through 0 where its event happens. Basset's force and the
 * thrust of shed gas are left out. Sources: docs/physics/voyage.md, 1, 3 and 6. Mutable; one instance serves one
 * thread.
 */
final class EquationOfMotion implements EventIntegrator.Equation {
    /** Place in the state of the volume left, in the table of the depth profile, m3. */
    static final int VOLUME = 0;
    /** Place of the thickness of the clinging gas, m; of a free piece only. */
    static final int LAYER = 1;
    /** Place of the depth of the centre below the surface, m; negative above it. */
    static final int CENTRE = 2;
    /** Place of the upward speed, m/s. */
    static final int SPEED = 3;
    /** Place of the carbon dioxide seen as gas at the surface so far, mol. */
    static final int GAS = 4;
    /** Place of the carbon dioxide that went into the bath so far, mol. */
    static final int DISSOLVED = 5;
    /** Length of the state. */
    static final int SIZE = 6;

    /** Below this speed a piece counts as at rest, m/s (judgement). */
    private static final double STILL = 2e-3;

    /** Below this speed a piece does not land on the bottom, m/s: one that lifts off is slower at first (judgement). */
    private static final double CRAWL = 1e-3;

    /** Depth below the bottom, m, at which it has landed whatever its speed (judgement). */
    private static final double HAIR = 1e-4;

    /** Below this acceleration a piece counts as at rest, m/s2 (judgement: a five-hundredth of g). */
    private static final double CALM = 0.02;

    /** Draft over height up to which it can lie still at the surface (judgement). */
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

    /** Forces, gas and recession at the moment of the last call. */
    final VoyageState moment;
    /** How the piece is in the bath now. */
    Way way = Way.FREE;

    /** When it went over to this way, s. */
    private double since;
    /** What the layer lacked of its full thickness then, m. */
    private double lacking;

    /** A piece just let go. */
    EquationOfMotion(VoyageState moment) {
        this.moment = moment;
    }

    /**
     * Goes over to another way of being in the bath at time t, s. Only a free piece changes its depth fast: in the
     * other ways its layer fills by an exponential, and steps need not be as short as its second.
     */
    void turn(Way next, double t, double[] y) {
        y[LAYER] = layer(t, y);
        way = next;
        since = t;
        lacking = 0;
        lacking = layer(t, y) - y[LAYER];
    }

    /** Thickness of the gas at time t, m, after the moment was eroded. */
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

    /** What displaces water once the hull is wholly under with its hollow dry, m3. */
    private double room() {
        return moment.body + moment.hollowVolume() + moment.stage.insetVolume();
    }

    /** Spare of the boat, kg, after the moment was eroded. */
    private double dry(double t) {
        return moment.balance.water.density * (room() - moment.aboveRim()) - moment.laden(t);
    }

    /** Rises through 0 where 1 % of the body is left. */
    double ended(double t, double[] y) {
        return Voyage.Outcome.END - y[VOLUME] / moment.stage.grid().volumeAt(0);
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
        // far from rest the speed alone decides, and nothing else need be worked out
        double speed = y[SPEED] / STILL;
        if (speed * speed >= 1) {
            return 1 - speed * speed;
        }
        set(t, y);
        double push = moment.acceleration / CALM;
        double still = 1 - speed * speed - push * push;
        // it must also stick out, and float: the smallest of the three rises through 0 last
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
