package org.fizzhull.drying.mix;

/**
 * Changes some of the uncertain parameters of drying and keeps the others; what each means is said in {@link
 * DryingParameters}.
 *
 * <pre>{@code
 * DryingParameters tight = DryingParameters.standard().but().filmActivity(0.75).transfer(5e-3).build();
 * }</pre>
 *
 * <p>Nothing is checked before {@link #build}. Mutable; one instance serves one thread.
 */
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
    private double acidHydration;

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
        acidHydration = from.acidHydration();
    }

    /**
     * Sets the factor on the diffusivity through the pores.
     *
     * @param value factor on the diffusivity through the pores
     * @return this builder
     */
    public DryingParametersBuilder diffusivityFactor(double value) {
        diffusivityFactor = value;
        return this;
    }

    /**
     * Sets the mass transfer coefficient from skin to still air, m/s.
     *
     * @param value mass transfer coefficient from skin to still air, m/s
     * @return this builder
     */
    public DryingParametersBuilder transfer(double value) {
        transfer = value;
        return this;
    }

    /**
     * Sets the factor of a gentle fan on the transfer, 1 to 20.
     *
     * @param value factor of a gentle fan on the transfer, 1 to 20
     * @return this builder
     */
    public DryingParametersBuilder fanFactor(double value) {
        fanFactor = value;
        return this;
    }

    /**
     * Sets the water activity of the film solution without further salts.
     *
     * @param value water activity of the film solution without further salts
     * @return this builder
     */
    public DryingParametersBuilder filmActivity(double value) {
        filmActivity = value;
        return this;
    }

    /**
     * Sets the CO2 when liquid meets powder, mol per kg of water.
     *
     * @param value CO2 when liquid meets powder, mol per kg of water
     * @return this builder
     */
    public DryingParametersBuilder promptYield(double value) {
        promptYield = value;
        return this;
    }

    /**
     * Sets the rate of the film reaction at 25 C, mol per kg of free water and second; 0 for none.
     *
     * @param value rate of the film reaction at 25 C, mol per kg of free water and second; 0 for none
     * @return this builder
     */
    public DryingParametersBuilder filmRate(double value) {
        filmRate = value;
        return this;
    }

    /**
     * Sets the activation energy of the film reaction, J/mol.
     *
     * @param value activation energy of the film reaction, J/mol
     * @return this builder
     */
    public DryingParametersBuilder activationEnergy(double value) {
        activationEnergy = value;
        return this;
    }

    /**
     * Sets the factor on the film reaction where oil coats the grains, 0 to 1.
     *
     * @param value factor on the film reaction where oil coats the grains, 0 to 1
     * @return this builder
     */
    public DryingParametersBuilder oilFactor(double value) {
        oilFactor = value;
        return this;
    }

    /**
     * Sets the factor on the film reaction where the acid went in last, 0 to 1.
     *
     * @param value factor on the film reaction where the acid went in last, 0 to 1
     * @return this builder
     */
    public DryingParametersBuilder acidLastFactor(double value) {
        acidLastFactor = value;
        return this;
    }

    /**
     * Sets the order of the film reaction in what is left, 0.5 to 3.
     *
     * @param value order of the film reaction in what is left, 0.5 to 3
     * @return this builder
     */
    public DryingParametersBuilder reactionOrder(double value) {
        reactionOrder = value;
        return this;
    }

    /**
     * Sets the water bound per citrate, 0 to 2.
     *
     * @param value water bound per citrate, 0 to 2
     * @return this builder
     */
    public DryingParametersBuilder hydrateWaters(double value) {
        hydrateWaters = value;
        return this;
    }

    /**
     * Sets the water activity at which the powders are bought.
     *
     * @param value water activity at which the powders are bought
     * @return this builder
     */
    public DryingParametersBuilder startActivity(double value) {
        startActivity = value;
        return this;
    }

    /**
     * Sets the factor on the share of gas that swells the piece.
     *
     * @param value factor on the share of gas that swells the piece
     * @return this builder
     */
    public DryingParametersBuilder retainedGas(double value) {
        retainedGas = value;
        return this;
    }

    /**
     * Sets the vapour through seals and holes of a wrap against what its film passes.
     *
     * @param value vapour through seals and holes of a wrap against what its film passes
     * @return this builder
     */
    public DryingParametersBuilder sealLeak(double value) {
        sealLeak = value;
        return this;
    }

    /**
     * Sets the share of the water of hydrated salts that moves, 0 to 1.
     *
     * @param value share of the water of hydrated salts that moves, 0 to 1
     * @return this builder
     */
    public DryingParametersBuilder hydrateShare(double value) {
        hydrateShare = value;
        return this;
    }

    /**
     * Sets the rate at which anhydrous citric acid becomes its monohydrate and back, 1/s.
     *
     * @param value rate, 1/s; 0 binds nothing
     * @return this builder
     */
    public DryingParametersBuilder acidHydration(double value) {
        acidHydration = value;
        return this;
    }

    /**
     * {@return the parameters} Refuses what cannot be computed with.
     *
     * @throws IllegalArgumentException for a value outside its range
     */
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
                hydrateShare,
                acidHydration);
    }
}
