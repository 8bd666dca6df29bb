package org.fizzhull.voyage;

/**
 * What carries and what weighs a piece whose front has moved in, for the {@link QuickVoyage}: displacement, clinging
 * gas and trapped air against weight and soaked water, in the rising water of its own bubbles ({@link ForceBalance}).
 *
 * <p>Everything that depends on the depth of the piece alone is worked out once a launch for two depths, just below the
 * surface (up) and on the bottom (down), and what depends on the wet faces once a stage: what is left for each depth of
 * the grid is a dozen operations. Allocates nothing, serves one thread. Use: {@link #launch}, for each stage
 * {@link #enter}, for each depth {@link #letGo} and {@link #spare} or {@link #afloat}.
 */
final class PieceForces {
    /** What a voyage asks of the shape. */
    private final VoyageForm form;
    /** The balance of the present launch. */
    private final ForceBalance balance;

    /** Whether something lies on top that comes off on the way. */
    private final boolean topped;

    /** Gas given off per wet area and time just below the surface, m/s. */
    private double fluxUp;
    /** The same on the bottom, m/s: the deeper, the smaller. */
    private double fluxDown;
    /** Thickness of the full layer of clinging gas just below the surface, m. */
    private double layerUp;
    /** The same on the bottom, m. */
    private double layerDown;
    /** Density of the lifting water in the plume just below the surface, all faces wet, kg/m3. */
    private double liftUp;
    /** The same on the bottom, kg/m3. */
    private double liftDown;
    /** Air trapped in the hollow just below the surface, m3. */
    private double pocketUp;
    /** The same on the bottom, m3: the deeper, the smaller. */
    private double pocketDown;
    /** Wet area over plan area in this stage. */
    private double wetPerPlan;
    /** Part of a topping that has come off, kg. */
    private double goneMass;
    /** The same, m3. */
    private double goneVolume;

    PieceForces(VoyageForm form, ForceBalance balance) {
        this.form = form;
        this.balance = balance;
        topped = form.toppingLoss.any();
    }

    /**
     * Takes a new launch, which {@link ForceBalance#set} has taken before.
     *
     * @param bottom depth of the centre of a piece that lies on the bottom, m
     */
    void launch(double bottom) {
        fluxUp = balance.flux(balance.water.molarVolume);
        fluxDown = balance.flux(balance.water.molarVolume(bottom));
        goneMass = goneVolume = 0;
        pocketUp = pocketDown = 0;
    }

    /**
     * Sets the air trapped in a hollow that lies upside down.
     *
     * @param hollow volume of that air at the pressure of the surface, m3; 0 once it is out
     * @param bottom depth of the centre on the bottom, m
     */
    void pocket(double hollow, double bottom) {
        pocketUp = hollow * balance.water.squeeze(form.halfHeight);
        pocketDown = hollow * balance.water.squeeze(bottom);
    }

    /**
     * Enters a stage.
     *
     * @param stage the faces that are wet from now on
     * @param roughness true area of them over the computed one
     */
    void enter(Stage stage, double roughness) {
        wetPerPlan = stage.facePerPlan() * roughness;
        layerUp = balance.fullLayer(fluxUp, stage.facePerPlan());
        layerDown = balance.fullLayer(fluxDown, stage.facePerPlan());
        liftUp = balance.lifting(balance.plume(fluxUp * wetPerPlan));
        liftDown = balance.lifting(balance.plume(fluxDown * wetPerPlan));
    }

    /** What lies on top comes off as the front moves in, m of the table. */
    void letGo(double front) {
        if (topped) {
            goneMass = form.toppingLoss.mass(front);
            goneVolume = form.toppingLoss.volume(front);
        }
    }

    /** {@return the mass of what is left, kg, of a body of so many m3} */
    double weight(double body) {
        return balance.bodyDensity * body + form.insetMass - goneMass;
    }

    /**
     * {@return what there is to spare wholly under water, just below the surface (high) or on the bottom, kg}
     *
     * @param body volume of what dissolves, m3
     * @param front area of its wet face, m2
     * @param soaked mass of the water it has taken up, kg
     * @param covered share of it that the bath covers on the bottom
     */
    double spare(Stage stage, boolean high, double body, double front, double soaked, double covered) {
        double hull = body + stage.insetVolume() - goneVolume + (high ? pocketUp : pocketDown);
        double wet = front;
        if (covered < 1) {
            hull *= covered;
            wet *= stage.immersion().wet(covered);
        }
        double room = hull + ForceBalance.clingingGasVolume(high ? layerUp : layerDown, wet, body);
        return ForceBalance.spare(high ? liftUp : liftDown, room, weight(body), soaked);
    }

    /**
     * {@return the share of the hull under water, nearer to that where lift meets a load} One step of Newton's method
     * from {@code share}, halved where it would leave the water: what floats wets some of itself, or nothing would
     * dissolve.
     *
     * @param body volume of what dissolves, m3
     * @param front area of all its faces, m2
     * @param load mass to be carried, with the soaked water, kg
     * @param share share of the hull under water so far, 0 to 1
     * @param wet wet share of the faces at that immersion, 0 to 1
     */
    double afloat(Stage stage, double body, double front, double load, double share, double wet) {
        double lift = balance.lifting(balance.plume(fluxUp * wetPerPlan * wet));
        double room = body + pocketUp + stage.insetVolume() - goneVolume;
        double carried = lift * (share * room + ForceBalance.clingingGasVolume(layerUp, front * wet, body));
        double next = share
                - (carried - load)
                        / (lift * (room + layerUp * front * stage.immersion().wetting(share)));
        return next > 0 ? next < 1 ? next : 1 : share / 2;
    }
}
