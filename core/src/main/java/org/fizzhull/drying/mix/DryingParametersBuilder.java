package org.fizzhull.drying.mix;

/** Changes some of the weak numbers of drying and keeps the others; what each means stands at {@link DryingParameters}. */
public final class DryingParametersBuilder {
    private double diffusivityFactor;
    private double transfer;
    private double fanFactor;
    private double filmActivity;
    private double promptYield;
    private double filmRate;
    private double activationEnergy;
    private double oilFactor;
    private double acidLastFactor;
    private double reactionOrder;
    private double hydrateWaters;
    private double startActivity;
    private double retainedGas;
    private double sealLeak;
    private double hydrateShare;

    DryingParametersBuilder(DryingParameters from) {
        diffusivityFactor = from.diffusivityFactor();
        transfer = from.transfer();
        fanFactor = from.fanFactor();
        filmActivity = from.filmActivity();
        promptYield = from.promptYield();
        filmRate = from.filmRate();
        activationEnergy = from.activationEnergy();
        oilFactor = from.oilFactor();
        acidLastFactor = from.acidLastFactor();
        reactionOrder = from.reactionOrder();
        hydrateWaters = from.hydrateWaters();
        startActivity = from.startActivity();
        retainedGas = from.retainedGas();
        sealLeak = from.sealLeak();
        hydrateShare = from.hydrateShare();
    }

    /** Factor on the diffusivity through the pores. */
    public DryingParametersBuilder diffusivityFactor(double value) {
        diffusivityFactor = value;
        return this;
    }

    /** From skin to still air, m/s. */
    public DryingParametersBuilder transfer(double value) {
        transfer = value;
        return this;
    }

    /** Factor of a gentle fan on the transfer, 1 to 20. */
    public DryingParametersBuilder fanFactor(double value) {
        fanFactor = value;
        return this;
    }

    /** Water activity of the film solution without further salts. */
    public DryingParametersBuilder filmActivity(double value) {
        filmActivity = value;
        return this;
    }

    /** CO2 when liquid meets powder, mol per kg of water. */
    public DryingParametersBuilder promptYield(double value) {
        promptYield = value;
        return this;
    }

    /** Rate of the film reaction at 25 C, mol per kg of free water and second; 0 for none. */
    public DryingParametersBuilder filmRate(double value) {
        filmRate = value;
        return this;
    }

    /** Of the film reaction, J/mol. */
    public DryingParametersBuilder activationEnergy(double value) {
        activationEnergy = value;
        return this;
    }

    /** Factor on the film reaction where oil coats the grains, 0 to 1. */
    public DryingParametersBuilder oilFactor(double value) {
        oilFactor = value;
        return this;
    }

    /** Factor on the film reaction where the acid went in last, 0 to 1. */
    public DryingParametersBuilder acidLastFactor(double value) {
        acidLastFactor = value;
        return this;
    }

    /** Of the film reaction in what is left, 0.5 to 3. */
    public DryingParametersBuilder reactionOrder(double value) {
        reactionOrder = value;
        return this;
    }

    /** Water bound per citrate, 0 to 2. */
    public DryingParametersBuilder hydrateWaters(double value) {
        hydrateWaters = value;
        return this;
    }

    /** Water activity at which the powders are bought. */
    public DryingParametersBuilder startActivity(double value) {
        startActivity = value;
        return this;
    }

    /** Factor on the share of gas that swells the piece. */
    public DryingParametersBuilder retainedGas(double value) {
        retainedGas = value;
        return this;
    }

    /** Vapour through seals and holes of a wrap against what its film passes. */
    public DryingParametersBuilder sealLeak(double value) {
        sealLeak = value;
        return this;
    }

    /** Share of the water of hydrated salts that moves, 0 to 1. */
    public DryingParametersBuilder hydrateShare(double value) {
        hydrateShare = value;
        return this;
    }

    /** The parameters; refuses what cannot be computed with. */
    public DryingParameters build() {
        return new DryingParameters(
                diffusivityFactor,
                transfer,
                fanFactor,
                filmActivity,
                promptYield,
                filmRate,
                activationEnergy,
                oilFactor,
                acidLastFactor,
                reactionOrder,
                hydrateWaters,
                startActivity,
                retainedGas,
                sealLeak,
                hydrateShare);
    }
}
