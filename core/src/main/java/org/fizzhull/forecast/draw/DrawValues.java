package org.fizzhull.forecast.draw;

import java.util.Arrays;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.piece.Piece;
import org.fizzhull.pressing.powder.DensityScores;
import org.fizzhull.pressing.powder.PressingParameters;
import org.fizzhull.voyage.VoyageParameters;

/**
 * From one value of each input to the parameter records. An input that is not drawn keeps its standard value, the one
 * its record calls {@code standard()}; an input that is an error keeps 0, one that is a factor 1
 * ({@link Input#neutral}).
 *
 * <p>The map stands twice, once in each direction: {@link #draw} and {@link #making} write the records from an array,
 * {@code standardValues} the array from the standard records. An input that is added needs both. Stateless.
 */
public final class DrawValues {
    /** No powder differs from the table, no line from the recipe. */
    public static final double[] NO_SCORES = {};

    /** The standard value of each input, SI, at {@link #place}. */
    private static final double[] STANDARD = standardValues();

    private DrawValues() {}

    /** {@return a fresh array of the standard values, indexed by {@link #place}} */
    public static double[] standard() {
        return STANDARD.clone();
    }

    /**
     * {@return the place of an input in the array of values}
     *
     * @param input the input
     */
    @SuppressWarnings("EnumOrdinal") // an index into an array of this run, never stored: the map of a draw
    public static int place(Input input) {
        return input.ordinal();
    }

    /**
     * {@return the parameter records of one draw}
     *
     * @param v one value for each input, SI, indexed by {@link #place}
     * @param scores scores of the powders' densities, standard normal
     * @param amounts scores of the amounts that the recipe gives with a spread
     */
    public static Draw draw(double[] v, double[] scores, double[] amounts) {
        return new Draw(
                at(v, Input.SCALE) + at(v, Input.SCALE_OFFSET) + at(v, Input.HAND),
                at(v, Input.MOULD_SIZE),
                at(v, Input.SURFACE) * at(v, Input.DEPTH_PROFILE),
                at(v, Input.BATH_TEMPERATURE),
                new Piece.Makeup(at(v, Input.TRUE_DENSITY), at(v, Input.GAS_CAPACITY)),
                new FizzParameters(
                        at(v, Input.RECESSION),
                        at(v, Input.POROSITY_SLOPE),
                        at(v, Input.ACTIVATION_ENERGY),
                        at(v, Input.REACTIVE_EXPONENT),
                        at(v, Input.BUBBLE_SIZE),
                        at(v, Input.GAS_LAYER),
                        at(v, Input.UNDERSIDE),
                        at(v, Input.GAS_SHARE),
                        at(v, Input.OIL),
                        at(v, Input.SURFACTANT),
                        at(v, Input.STARCH)),
                new VoyageParameters(at(v, Input.WET_SKIN_DEPTH), at(v, Input.PLUME)),
                v,
                scores,
                amounts);
    }

    /**
     * The records of what is uncertain before the bath; only made pieces ask for them. Parameters without an input stay
     * standard.
     */
    static MakingDraw making(double[] v, double[] scores, double[] amounts) {
        PressingParameters p = PressingParameters.standard();
        return new MakingDraw(
                densities(v, scores),
                amounts,
                new PressingParameters(
                        at(v, Input.PRESS_SCALE),
                        at(v, Input.PACKING_MODEL),
                        at(v, Input.BULKING),
                        at(v, Input.BULKING_PRESSURE),
                        at(v, Input.WALL_FRICTION),
                        p.lateralRatio(),
                        p.springBack(),
                        at(v, Input.PENDULAR_LIMIT),
                        p.capillaryLimit(),
                        at(v, Input.BRIDGE_EFFICIENCY),
                        p.roughness()),
                at(v, Input.PRESS),
                at(v, Input.PRESS_REPEAT),
                DryingParameters.standard()
                        .but()
                        .diffusivityFactor(at(v, Input.PORE_DIFFUSIVITY))
                        .transfer(at(v, Input.SKIN_TRANSFER))
                        .filmActivity(at(v, Input.FILM_ACTIVITY))
                        .promptYield(at(v, Input.PROMPT_YIELD))
                        .filmRate(at(v, Input.FILM_RATE))
                        .hydrateShare(at(v, Input.HYDRATE_SHARE))
                        .acidHydration(at(v, Input.ACID_HYDRATION))
                        .build(),
                at(v, Input.ROOM_HUMIDITY),
                at(v, Input.ROOM_TEMPERATURE));
    }

    /** Three scores a powder: first the true densities of all, then the loose ones, then the tapped ratios. */
    private static DensityScores densities(double[] v, double[] scores) {
        DensityScores shared =
                DensityScores.shared(at(v, Input.GRAIN_SCORE), at(v, Input.LOOSE_SCORE), at(v, Input.TAPPED_SCORE));
        int powders = scores.length / 3;
        return powders == 0
                ? shared
                : shared.withOwn(
                        Arrays.copyOfRange(scores, 0, powders),
                        Arrays.copyOfRange(scores, powders, 2 * powders),
                        Arrays.copyOfRange(scores, 2 * powders, 3 * powders));
    }

    /** Value of an input, SI. */
    private static double at(double[] v, Input input) {
        return v[place(input)];
    }

    /** The array of the standard records. */
    private static double[] standardValues() {
        double[] v = new double[Input.values().length];
        for (Input input : Input.values()) {
            v[place(input)] = input.neutral();
        }
        Piece.Makeup makeup = Piece.Makeup.usual();
        v[place(Input.TRUE_DENSITY)] = makeup.trueDensity();
        v[place(Input.GAS_CAPACITY)] = makeup.gasCapacity();
        FizzParameters fizz = FizzParameters.standard();
        v[place(Input.RECESSION)] = fizz.recession38();
        v[place(Input.POROSITY_SLOPE)] = fizz.porositySlope();
        v[place(Input.ACTIVATION_ENERGY)] = fizz.activationEnergy();
        v[place(Input.REACTIVE_EXPONENT)] = fizz.reactiveExponent();
        v[place(Input.BUBBLE_SIZE)] = fizz.bubbleDiameter();
        v[place(Input.GAS_LAYER)] = fizz.layerRatio();
        v[place(Input.UNDERSIDE)] = fizz.undersideExcess();
        v[place(Input.GAS_SHARE)] = fizz.gasShare();
        v[place(Input.OIL)] = fizz.oilFactor();
        v[place(Input.SURFACTANT)] = fizz.surfactantFactor();
        v[place(Input.STARCH)] = fizz.starchFactor();
        VoyageParameters voyage = VoyageParameters.standard();
        v[place(Input.WET_SKIN_DEPTH)] = voyage.wetSkinDepth();
        v[place(Input.PLUME)] = voyage.plumeFactor();
        PressingParameters press = PressingParameters.standard();
        v[place(Input.PRESS_SCALE)] = press.pressScale();
        v[place(Input.PACKING_MODEL)] = press.packingError();
        v[place(Input.BULKING)] = press.bulking();
        v[place(Input.BULKING_PRESSURE)] = press.bulkingPressure();
        v[place(Input.WALL_FRICTION)] = press.wallFriction();
        v[place(Input.PENDULAR_LIMIT)] = press.pendularLimit();
        v[place(Input.BRIDGE_EFFICIENCY)] = press.bridgeEfficiency();
        DryingParameters dry = DryingParameters.standard();
        v[place(Input.PORE_DIFFUSIVITY)] = dry.diffusivityFactor();
        v[place(Input.SKIN_TRANSFER)] = dry.transfer();
        v[place(Input.FILM_ACTIVITY)] = dry.filmActivity();
        v[place(Input.PROMPT_YIELD)] = dry.promptYield();
        v[place(Input.FILM_RATE)] = dry.filmRate();
        v[place(Input.HYDRATE_SHARE)] = dry.hydrateShare();
        v[place(Input.ACID_HYDRATION)] = dry.acidHydration();
        return v;
    }
}
