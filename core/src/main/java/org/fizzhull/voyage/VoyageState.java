package org.fizzhull.voyage;

import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.medium.Bath;

/**
 * Forces, gas and recession of a piece at one moment of the full voyage, from how far it is eroded, how thick its layer
 * is, where it is and how fast. {@link EquationOfMotion} has the equations, this class what stands in them.
 *
 * <p>Order of calls: {@link #erode} sets what depends on the volume left, {@link #dive} what depends on the depth,
 * {@link #immerse} what depends on the share under water, {@link #move} or {@link #rest} all of it. Each skips what the
 * last call has set already: an integrator asks for the same moment several times, for the rate and for its events.
 *
 * <p>Force: {@link ForceBalance}. Wet area, plume and gas layer belong to the attitude of {@link VoyageForm}. All SI.
 * Mutable: each call overwrites the last moment and allocates nothing. One instance serves one thread.
 */
final class VoyageState {
    /**
     * Waves a bobbing piece makes: share of rho V omega of a half-submerged ball at a wave number of 1/radius; Hulme
     * (1982), J. Fluid Mech. 121, 443 (from memory, rough). Only how soon the bobbing dies depends on it.
     */
    private static final double WAVES = 0.27;

    /** Water plane of a half-submerged ball as {@link org.fizzhull.hydrostatics.Immersion#plane} gives it. */
    private static final double BALL_PLANE = 1.5;

    /** The layer of gas follows its supply within this time, s (assumed). */
    private static final double LAYER_TIME = 1;

    /** A piece this much smaller than at the start has no size left, so that no length becomes 0. */
    private static final double LEAST_SIZE = 1e-3;

    /** Share of the weight to which the draft of a floating piece is solved: a few roundings. */
    private static final double ROUNDING = 1e-12;

    /** What a voyage asks of the shape. */
    final VoyageForm form;
    /** The balance of this launch. */
    final ForceBalance balance;
    /** The faces that are wet now. */
    Stage stage;

    /** True volume over that of the table. */
    private final double volumeScale;
    /** True area over that of the table. */
    private final double areaScale;
    /** True length over that of the table, the cube root of the volume ratio. */
    private final double stretch;
    /** True surface over the computed one, size apart. */
    private final double surfaceRatio;
    /** Kinematic viscosity of the water, m2/s. */
    private final double viscosity;

    /** Volume of the table of the last {@link #erode}, m3; NaN for none. */
    private double tableLeft = Double.NaN;
    /** Area of the table there, m2. */
    private double tableArea;
    /** Time of the last depth of the wet skin, s; NaN for none. */
    private double skinTime = Double.NaN;
    /** That depth, m. */
    private double skin;
    /** Depth of the last {@link #dive}, m; NaN for none. */
    private double depth = Double.NaN;
    /** Gas given off per wet area and time at that depth, m/s. */
    private double flux;
    /** Share of the hull under water at the last rest: where the next search begins. */
    private double restShare = 1;
    /** Part of a topping that has come off, kg. */
    private double goneMass;
    /** The same, m3. */
    private double goneVolume;

    /** How far the front has moved in, in the depth of the table, m. */
    double eroded;
    /** What is left of the body, m3. */
    double body;
    /** Area of its faces in this stage, m2. */
    double front;
    /** Half of the height of what is left, m. */
    double halfHeight;
    /** Share of the hull under water, 0 to 1. */
    double fraction;
    /** Share of the faces that is wet, 0 to 1. */
    double wet;
    /** Area of the table that recedes, m2. */
    private double receding;
    /** Whether a moving piece has come up and not touched the bottom since: it bobs about its place at the surface. */
    boolean bobbing;
    /** Air trapped in the hollow at this depth, m3. */
    double pocket;
    /** What displaces water at this immersion, clinging gas included, m3. */
    double carried;
    /** Density of the lifting water in the plume, kg/m3. */
    double lifting;
    /** Thickness of the clinging gas once the layer is full, m. */
    double fullLayer;
    /** Upward acceleration of a free piece, m/s2. */
    double acceleration;

    /** The piece of a draw in a bath. */
    VoyageState(VoyageForm form, Bath bath, Launch launch) {
        this.form = form;
        surfaceRatio = launch.surfaceRatio();
        balance = new ForceBalance(new BathProperties(bath, form.halfHeight));
        stage = form.airy.orElse(form.flooded);
        stretch = Math.cbrt(launch.volumeRatio());
        volumeScale = launch.volumeRatio();
        areaScale = stretch * stretch * surfaceRatio;
        balance.set(launch, form.volume);
        viscosity = balance.water.kinematicViscosity();
    }

    /** Speed of the front in the depth of the table when all of it is wet, m/s. */
    double tableSpeed() {
        return balance.recession * surfaceRatio / stretch;
    }

    /** Time in which the front would go through all of the piece if all of it were wet, s. */
    double lasting() {
        return form.flooded.grid().step * form.flooded.grid().cells / tableSpeed();
    }

    /** Depth in the body, m, of a depth of the table. */
    double depthOf(double eroded) {
        return eroded * stretch / surfaceRatio;
    }

    /** The hollow fills: what was of the old stage is forgotten. */
    void flood() {
        stage = form.flooded;
        tableLeft = Double.NaN;
        depth = Double.NaN;
    }

    /** Sets body, front and size for a volume left in the table, m3, unless it is that of the last call. */
    void erode(double left) {
        if (left == tableLeft) {
            return;
        }
        tableLeft = left;
        ErosionGrid grid = stage.grid();
        double steps = grid.stepsTo(left, (int) (eroded / grid.step));
        eroded = steps * grid.step;
        tableArea = grid.areaAfter(steps);
        body = left * volumeScale;
        front = tableArea * areaScale;
        goneMass = form.toppingLoss.mass(eroded);
        goneVolume = form.toppingLoss.volume(eroded);
        double whole = form.halfHeight * stretch;
        halfHeight = Math.max(whole - depthOf(eroded), LEAST_SIZE * whole);
    }

    /** Air in the hollow at the pressure of the surface, m3. */
    double hollowVolume() {
        return stage.hollow() * volumeScale;
    }

    /** What of the hull stays out of the water till the rim goes under, m3. */
    double aboveRim() {
        return stage.above() * volumeScale;
    }

    /** Pressed body and inset, kg. */
    double weight() {
        return balance.bodyDensity * body + form.insetMass - goneMass;
    }

    /** What displaces water when all of it is under, without the clinging gas, m3. */
    private double room() {
        return body + pocket + stage.insetVolume() - goneVolume;
    }

    /** The same with the water in its pores, kg. */
    double laden(double time) {
        return weight() + balance.soaked(skin(time), front, body);
    }

    /** Depth of the wet skin at a time, s, in m. */
    private double skin(double time) {
        if (time != skinTime) {
            skinTime = time;
            skin = balance.skinDepth(time);
        }
        return skin;
    }

    /**
     * Sets what is wet and what lifts, for a share of the hull under water and the depth of the centre, m.
     *
     * @param layer thickness of the gas, m
     */
    void immerse(double share, double centre, double layer) {
        fraction = share;
        wet = stage.immersion().wet(share);
        receding = tableArea * wet;
        dive(Math.max(0, centre));
        double filled = fullLayer > 0 ? layer / fullLayer : 0;
        double plume = balance.plume(flux * stage.facePerPlan() * surfaceRatio * wet) * filled;
        lifting = balance.lifting(plume);
        double gas = ForceBalance.clingingGasVolume(layer, wet * front, body);
        carried = share * room() + gas;
    }

    /** Sets what depends on the depth alone, unless it is that of the last call. */
    void dive(double deep) {
        if (deep != depth) {
            depth = deep;
            flux = balance.flux(balance.water.molarVolume(deep));
            fullLayer = balance.fullLayer(flux, stage.facePerPlan());
            pocket = hollowVolume() * balance.water.squeeze(deep);
        }
    }

    /** Largest share of the hull under water: less than 1 where the piece is taller than the bath is deep. */
    double covered() {
        double draft = balance.water.bathDepth() / (2 * halfHeight);
        return draft < 1 ? stage.immersion().fraction(draft) : 1;
    }

    /** Spare at that immersion, kg. */
    double spare(double time) {
        return ForceBalance.spare(lifting, carried, weight(), balance.soaked(skin(time), front, body));
    }

    /** Depth of the lowest point below the surface over the height, 0 to 1, for the depth of the centre, m. */
    double draft(double centre) {
        return Math.min(1, Math.max(0, (centre + halfHeight) / (2 * halfHeight)));
    }

    /** Depth of the centre, m, for a share of the hull under water. */
    double centre(double share) {
        return halfHeight * (2 * stage.immersion().depth(share) - 1);
    }

    /**
     * Sets the acceleration upward of the free piece: spare over inertia, less drag and the waves it makes at the
     * surface.
     *
     * @param time s since the drop
     * @param centre depth of the centre, m
     * @param speed upward speed, m/s
     * @param layer thickness of the gas, m
     */
    void move(double time, double centre, double speed, double layer) {
        double draft = draft(centre);
        immerse(stage.immersion().fraction(draft), centre, layer);
        if (bobbing) {
            leaveFlatFaceDry();
        }
        double laden = laden(time);
        double density = balance.water.density;
        double size = form.planDiameter * halfHeight / form.halfHeight;
        // drag and added mass in proportion to what is under water; damping by the waves a bobbing piece sends out
        double drag = fraction * form.resistance.force(speed, size, density, viscosity);
        double displaced = fraction * density * (body + pocket);
        double bobbing = Math.sqrt(PhysicalConstants.GRAVITY / halfHeight);
        double waves = WAVES * displaced * bobbing * stage.immersion().plane(draft) / BALL_PLANE * speed;
        double inertia = laden + form.resistance.addedMass() * displaced;
        acceleration = (spare(time) * PhysicalConstants.GRAVITY - drag - waves) / inertia;
    }

    /**
     * Sets the moment of a piece that floats at rest, and returns the depth of its centre, m. Newton's method from the
     * last rest, a bracket where it leaves 0 to 1. What recedes is what is wet, or all but a flat face that keeps up.
     *
     * @param time s since the drop
     * @param layer thickness of the gas, m
     * @param guess depth of the centre, m, at which the pressure of the gas is taken
     */
    double rest(double time, double layer, double guess) {
        double centre = balanced(time, layer, guess);
        leaveFlatFaceDry();
        return centre;
    }

    /** Of a piece at the surface all recedes but a flat face that keeps up, where it has one; else what is wet. */
    private void leaveFlatFaceDry() {
        if (stage.afloat().keepsUp()) {
            receding = stage.afloat().area(tableLeft, eroded / stage.grid().step);
        }
    }

    /** The same without what recedes. */
    private double balanced(double time, double layer, double guess) {
        double share = restShare;
        for (int pass = 0; pass < 15; pass++) {
            double at = spareAt(time, share, guess, layer);
            if (Math.abs(at) <= ROUNDING * weight()) {
                restShare = share;
                return centre(share);
            }
            double gas = layer * front * stage.immersion().wetting(share);
            share -= at / (lifting * (room() + gas));
            if (!(share > 0 && share < 1)) {
                break;
            }
        }
        restShare = bracketed(time, guess, layer);
        immerse(restShare, guess, layer);
        return centre(restShare);
    }

    /**
     * The share of the hull under water at rest, by regula falsi with halved ends (Illinois); 1 where it cannot float.
     */
    private double bracketed(double time, double guess, double layer) {
        double low = 0;
        double high = 1;
        double below = spareAt(time, low, guess, layer);
        double above = spareAt(time, high, guess, layer);
        double share = high;
        if (above > 0) {
            int side = 0;
            for (int pass = 0; pass < 60 && high - low > 1e-12; pass++) {
                share = (low * above - high * below) / (above - below);
                double at = spareAt(time, share, guess, layer);
                if (Math.abs(at) <= ROUNDING * weight()) {
                    break;
                }
                if (at > 0) {
                    high = share;
                    above = at;
                    below = side == 1 ? below / 2 : below;
                    side = 1;
                } else {
                    low = share;
                    below = at;
                    above = side == -1 ? above / 2 : above;
                    side = -1;
                }
            }
        }
        return share;
    }

    /** Spare with a share of the hull under water, kg. */
    double spareAt(double time, double share, double centre, double layer) {
        immerse(share, centre, layer);
        return spare(time);
    }

    /** Volume of the table lost, m3/s. */
    double lost() {
        return receding * tableSpeed();
    }

    /** Share of a layer that is not there yet after a time, s. */
    double unfilled(double time) {
        return Math.exp(-time / LAYER_TIME);
    }

    /** Growth of the layer, m/s. */
    double layerRate(double layer) {
        return (fullLayer - layer) / LAYER_TIME;
    }

    /** Carbon dioxide made, mol/s. */
    double made() {
        return balance.bodyDensity * balance.gasCapacity * balance.recession * receding * areaScale;
    }
}
