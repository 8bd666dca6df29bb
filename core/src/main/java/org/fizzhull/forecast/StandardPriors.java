package org.fizzhull.forecast;

import static org.fizzhull.uncertainty.Priors.beta1;
import static org.fizzhull.uncertainty.Priors.cutNormal;
import static org.fizzhull.uncertainty.Priors.lognormal;
import static org.fizzhull.uncertainty.Priors.normal;
import static org.fizzhull.uncertainty.Priors.splitUniform;
import static org.fizzhull.uncertainty.Priors.uniform;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Source;
import org.fizzhull.evidence.Source.Seen;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.recipe.Additives;
import org.fizzhull.recipe.Blend;
import org.fizzhull.voyage.VoyageParameters;

/** The default priors of the bath, each with its reason. Medians are the standard parameters. */
final class StandardPriors {
    private static final Source RECESSION = assumed("recession", "No published speed of hand-pressed pieces was found");
    private static final Source ENERGY = new Source(
            "activation-energy",
            "Between diffusion with one solubility (26 kJ/mol) and a bubble-stirred surface (40 kJ/mol)",
            Seen.COMPUTED);
    private static final Source BUBBLE = new Source(
            "bubble-size",
            "Departure diameter, W. Fritz (1935), Physikalische Zeitschrift 36, 379, for contact angles of 10 to 25 degrees",
            Seen.MEMORY);
    private static final Source COVERAGE = new Source(
            "coverage",
            "Vogt and Balzer (2005), Electrochim. Acta 50, 2073, extrapolated to higher fluxes",
            Seen.SECOND_HAND);
    private static final Source LAYER =
            assumed("gas-layer", "Roughness, craters and foam hold more than single bubbles");
    private static final Source SHARE = assumed("gas-share", "The rest of the carbon dioxide dissolves at the surface");
    private static final Source SOAK =
            assumed("wetted-share", "Air trapped in the pores: capillary pressures of 1 to 7.5 kPa");
    private static final Source PLUME = assumed("plume", "Bubbles lighten the water, the water they drag along lifts");
    private static final Source THROUGH = assumed(
            "soaking-through",
            "Gas keeps water out of a fresh piece, a spent one fills in a minute; wider, it would sink more than makers see");
    private static final Source OIL = assumed(
            "oil", "Oil sheds water: slower fizz, bubbles of 1.2 mm in place of 0.8 mm above 2 % of the powder");
    private static final Source FOAM = assumed(
            "surfactant", "Foam clings: at 5 % bubbles of 0.5 mm in place of 0.8 mm, the layer 1.6 times as thick");
    private static final Source STARCH =
            assumed("starch", "Starch swells and closes pores, or draws water in: the sign is not sure");
    private static final Source HOUSE =
            new Source("kitchen", "Kitchen thermometer, ruler or calipers", Seen.COMMON_PRACTICE);

    /**
     * Geometric standard deviation: a factor of 2 as the 95 % range. As one standard deviation it would take 0.07 off the
     * chance of a ball at its limit, against the common practice that the other defaults were set to.
     */
    private static final double SOAK_CAPACITY_DEVIATION = Math.sqrt(2);

    /** One standard deviation of a bath thermometer, K. */
    private static final double TEMPERATURE_DEVIATION = 1;

    private StandardPriors() {}

    static List<Factor> rows() {
        FizzParameters fizz = FizzParameters.standard();
        VoyageParameters voyage = VoyageParameters.standard();
        double energy = fizz.activationEnergy();
        return List.of(
                new Factor(Input.RECESSION, lognormal(fizz.recession38(), 1.8), RECESSION),
                new Factor(Input.POROSITY_SLOPE, normal(fizz.porositySlope(), 4), RECESSION),
                new Factor(Input.ACTIVATION_ENERGY, cutNormal(energy, 8e3, 0, 2 * energy), ENERGY),
                new Factor(Input.REACTIVE_EXPONENT, uniform(0, 1), RECESSION),
                new Factor(Input.BUBBLE_SIZE, lognormal(fizz.bubbleDiameter(), 1.7), BUBBLE),
                new Factor(Input.COVERAGE, normal(fizz.coverageShift(), 0.15), COVERAGE),
                new Factor(Input.GAS_LAYER, lognormal(fizz.layerMultiplier(), 1.5), LAYER),
                new Factor(Input.GAS_SHARE, splitUniform(0.35, fizz.gasShare(), 0.9), SHARE),
                new Factor(Input.WETTED_SHARE, beta1(0.3, 9), SOAK),
                new Factor(Input.PLUME, uniform(-0.1, 0.3), PLUME),
                new Factor(Input.SOAK_CAPACITY, lognormal(voyage.soakCapacity(), SOAK_CAPACITY_DEVIATION), THROUGH),
                new Factor(Input.SOAK_TIME, splitUniform(5, voyage.soakTime(), 60), THROUGH));
    }

    /** The rows that a question brings itself: what was made, the mould, the bath. */
    static List<Factor> ofQuestion(Question question) {
        List<Factor> own = new ArrayList<>();
        for (Factor row : question.making().factors()) {
            own.add(
                    switch (row.input()) {
                        case SCALE -> question.scale().reading();
                        case SCALE_OFFSET -> question.scale().offset();
                        default -> row;
                    });
        }
        double size = question.measured().sizeDeviation(question.shape().surface());
        own.add(new Factor(Input.MOULD_SIZE, normal(0, size), HOUSE));
        double spread = question.shape().surfaceSpread();
        if (spread > 0) {
            own.add(new Factor(Input.SURFACE, lognormal(1, 1 + spread), assumed("surface", "Surface of a like shape")));
        }
        own.add(new Factor(Input.BATH_TEMPERATURE, normal(0, TEMPERATURE_DEVIATION), HOUSE));
        return own;
    }

    /** The rows of what is in a mix besides acid and bicarbonate; none where no recipe is known. */
    static List<Factor> ofMix(Optional<Blend> mix) {
        Additives others = Additives.of(mix);
        FizzParameters fizz = FizzParameters.standard();
        List<Factor> rows = new ArrayList<>(3);
        if (others.oil() > 0) {
            rows.add(new Factor(Input.OIL, lognormal(fizz.oilFactor(), 1.28), OIL));
        }
        if (others.surfactant() > 0) {
            rows.add(new Factor(Input.SURFACTANT, lognormal(fizz.surfactantFactor(), 1.3), FOAM));
        }
        if (others.starch() > 0) {
            rows.add(new Factor(Input.STARCH, lognormal(fizz.starchFactor(), 1.17), STARCH));
        }
        return rows;
    }

    private static Source assumed(String key, String why) {
        return new Source(key, why, Seen.ASSUMED);
    }
}
