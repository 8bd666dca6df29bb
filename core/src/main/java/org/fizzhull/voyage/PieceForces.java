package org.fizzhull.voyage;

/**
 * What carries and what weighs a piece whose front has moved in: displacement, clinging gas and trapped air against
 * weight and soaked water, in the rising water of its own bubbles. Set for each launch and each stage; allocates
 * nothing, serves one thread.
 */
final class PieceForces {
    private final VoyageForm form;
    private final ForceBalance balance;

    /** Whether something lies on top that comes off on the way. */
    private final boolean topped;

    private double fluxUp;
    private double fluxDown;
    private double layerUp;
    private double layerDown;
    private double liftUp;
    private double liftDown;
    private double pocketUp;
    private double pocketDown;
    private double wetPerPlan;
    private double goneMass;
    private double goneVolume;

    PieceForces(VoyageForm form, ForceBalance balance) {
        this.form = form;
        this.balance = balance;
        topped = form.letGo.any();
    }

    /** A new launch, which {@link ForceBalance#set} has taken; the piece lies this deep on the bottom, m. */
    void launch(double bottom) {
        fluxUp = balance.flux(balance.water.molarVolume);
        fluxDown = balance.flux(balance.water.molarVolume(bottom));
        goneMass = goneVolume = 0;
        pocketUp = pocketDown = 0;
    }

    /** Air under a hollow, m3 at the pressure of the surface, while it lies upside down; 0 once it is out. */
    void pocket(double hollow, double bottom) {
        pocketUp = hollow * balance.water.squeeze(form.halfHeight);
        pocketDown = hollow * balance.water.squeeze(bottom);
    }

    /** Enters a stage; its wet face is rougher than the plain one by a factor. */
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
            goneMass = form.letGo.mass(front);
            goneVolume = form.letGo.volume(front);
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
     * {@return the share of the hull under water nearer to where lift meets a load, kg} A step of Newton's method, halved
     * where it would leave the water. What floats wets some of itself, or nothing would dissolve.
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
