package org.fizzhull.forecast.question;

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
import org.fizzhull.fizz.GasLayer;
import org.fizzhull.forecast.maker.MakingPriors;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Additives;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;
import org.fizzhull.voyage.VoyageParameters;

/**
 * The default priors of the bath, each with its reason: what is believed of fizzing and of the voyage before anything
 * is measured. Medians are the standard parameters, so that a forecast without draws is the middle of one with draws.
 * The table with its sources is docs/physics/uncertainty.md, 2; what would make a prior narrower, unknowns.md.
 * Stateless.
 */
final class StandardPriors {
    /** Relative standard deviation of a volume of which four standard deviations less still leave some. */
    private static final double MOST_SIZE_SPREAD = 0.7;

    /** Why the speed of recession and its dependence on porosity are believed to be so. */
    private static final Source RECESSION = new Source(
            "recession",
            "Six times of one antacid tablet in water of 2 to 51 C, laboratory pages of two classes (2011), carried into"
                    + " wide assumptions; no speed of hand-pressed pieces is published",
            Seen.SEEN);
    /** The power of the gas capacity in the speed. */
    private static final Source EXPONENT =
            assumed("reactive-exponent", "Between a plain wall of crystals and a full one");
    /** How warmth speeds the recession up. */
    private static final Source ENERGY = new Source(
            "activation-energy",
            "Between diffusion with one solubility (26 kJ/mol) and a bubble-stirred surface (40 kJ/mol)",
            Seen.COMPUTED);
    /** The size of a bubble as it leaves. */
    private static final Source BUBBLE = new Source(
            "bubble-size",
            "Departure diameter, W. Fritz (1935), Physikalische Zeitschrift 36, 379, for contact angles of 10 to 25 degrees,"
                    + " and of bubbles pinned to pores of 6 to 55 um: both about 1 mm",
            Seen.MEMORY);
    /** The gas that clings, over the size of its bubbles. */
    private static final Source LAYER = new Source(
            "gas-layer",
            "One layer of equal spheres holds at most 0.605 of their diameter; mean over their growth, covered share",
            Seen.COMPUTED);
    /** How much more gas undersides hold. */
    private static final Source UNDERSIDE = assumed(
            "underside",
            "Undersides hold large bubbles (Stanic et al., Metals 11 (2021) 965, abstract); how much more");
    /** The share of the carbon dioxide that is gas at the surface. */
    private static final Source SHARE = assumed("gas-share", "The rest of the carbon dioxide dissolves at the surface");
    /** How deep water stands behind the face. */
    private static final Source SKIN = assumed(
            "wet-skin",
            "Pores draw water in at 4 mm/s^(1/2) (Kiesvaara and Yliruusi, Int. J. Pharm. 92 (1993) 81, abstract) against"
                    + " the gas that leaves; never measured on a fizzing face");
    /** What the plume does to the water that lifts. */
    private static final Source PLUME = assumed("plume", "Bubbles lighten the water, the water they drag along lifts");
    /** How oil slows the fizz. */
    private static final Source OIL =
            assumed("oil", "Oil sheds water: slower fizz, bubbles 1.5 times as big above 2 % of the powder");
    /** How foaming powder slows the fizz. */
    private static final Source FOAM =
            assumed("surfactant", "Foam clings: at 5 % bubbles 0.63 times as big, the layer 1.6 times as thick");
    /** How starch acts on the fizz. */
    private static final Source STARCH =
            assumed("starch", "Starch swells and closes pores, or draws water in: the sign is not sure");

    /** Sizes and temperatures as they are measured at home. */
    private static final Source HOUSE =
            new Source("kitchen", "Kitchen thermometer, ruler or calipers", Seen.COMMON_PRACTICE);

    /** How well the volume left of a mesh is known. */
    private static final Source DEPTH = new Source(
            "depth-profile",
            "Standard error of the volume left at depths of a mesh, from parts of the lines it was measured along",
            Seen.COMPUTED);

    /** Error of a depth profile from which it is drawn: closed forms and tables of outlines stay below. */
    private static final double LEAST_IN_DEPTH = 3e-3;

    /** Error of a bath thermometer: one standard deviation is 1 K. */
    private static final Factor BATH_TEMPERATURE = new Factor(Input.BATH_TEMPERATURE, normal(0, 1), HOUSE);

    private StandardPriors() {}

    /**
     * {@return the rows of the table, each with its source: what is believed of fizzing and of the voyage before
     * anything is measured}
     */
    public static List<Factor> rows() {
        FizzParameters fizz = FizzParameters.standard();
        VoyageParameters voyage = VoyageParameters.standard();
        double energy = fizz.activationEnergy();
        return List.of(
                new Factor(Input.RECESSION, lognormal(fizz.recession38(), 1.41), RECESSION),
                new Factor(Input.POROSITY_SLOPE, normal(fizz.porositySlope(), 2.2), RECESSION),
                new Factor(Input.ACTIVATION_ENERGY, cutNormal(energy, 8e3, 0, 2 * energy), ENERGY),
                new Factor(Input.REACTIVE_EXPONENT, uniform(0, 1), EXPONENT),
                new Factor(Input.BUBBLE_SIZE, lognormal(fizz.bubbleDiameter(), 1.45), BUBBLE),
                new Factor(Input.GAS_LAYER, splitUniform(0.2, fizz.layerRatio(), GasLayer.MONOLAYER), LAYER),
                new Factor(Input.UNDERSIDE, uniform(0, 1), UNDERSIDE),
                new Factor(Input.GAS_SHARE, splitUniform(0.35, fizz.gasShare(), 0.9), SHARE),
                new Factor(Input.WET_SKIN_DEPTH, lognormal(voyage.wetSkinDepth(), 2), SKIN),
                new Factor(Input.PLUME, uniform(-0.1, 0.3), PLUME));
    }

    /**
     * The rows that a question brings itself: what was made, on which scale, the mould, the bath.
     */
    static List<Factor> ofQuestion(Question question) {
        List<Factor> own = new ArrayList<>(MakingPriors.of(question.making(), question.scale()));
        double size = size(question);
        own.add(new Factor(Input.MOULD_SIZE, normal(0, size), HOUSE));
        double spread = question.shape().surfaceSpread();
        if (spread > 0) {
            own.add(new Factor(Input.SURFACE, lognormal(1, 1 + spread), assumed("surface", "Surface of a like shape")));
        }
        own.add(BATH_TEMPERATURE);
        return own;
    }

    /**
     * The row of a form whose depth profile is only measured, after all others so that they are drawn as without it. With
     * the areas times k and the depths over k what is left at depth d moves by {@code d A (k - 1)}: by 0.3 to 3.5 times
     * the volume left where 90 to 10 % of a ball is left.
     */
    static List<Factor> ofForm(Shape shape) {
        double error = shape.depthError();
        return error >= LEAST_IN_DEPTH
                ? List.of(new Factor(Input.DEPTH_PROFILE, lognormal(1, 1 + error), DEPTH))
                : List.of();
    }

    /** Standard deviation of a size across, m; refused where draws of it could leave no mould at all. */
    private static double size(Question question) {
        Shape shape = question.shape();
        double share = leftOpen(question.measured(), shape);
        if (share <= MOST_SIZE_SPREAD) {
            return question.measured().sizeDeviation(shape.surface());
        }
        String better = "";
        for (Measured way : Measured.values()) {
            better = leftOpen(way, shape) <= MOST_SIZE_SPREAD ? way.word() : better;
        }
        throw new Refusal(
                "out-of-range",
                "measured",
                question.measured().word() + ", which leaves the volume of so slight a mould open to "
                        + Math.round(100 * share) + " %",
                "a way that leaves at most " + Math.round(100 * MOST_SIZE_SPREAD) + " % open",
                better.isEmpty()
                        ? "No way measures so thin a body well enough: is it the right file or size, in the right unit?"
                        : "Measure it another way: " + better + ".");
    }

    /** Standard deviation of the volume of a shape measured one way, as a share of the volume. */
    private static double leftOpen(Measured way, Shape shape) {
        return 0.5 * shape.surface() * way.sizeDeviation(shape.surface()) / shape.volume();
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

    /** A source that nobody has measured. */
    private static Source assumed(String key, String why) {
        return new Source(key, why, Seen.ASSUMED);
    }
}
