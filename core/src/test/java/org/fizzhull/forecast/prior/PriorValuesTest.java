package org.fizzhull.forecast.prior;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.fizzhull.evidence.Source;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Priors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** BY DEFINITION: what each class says of its limits; BY HAND: spreads worked out beside each test. */
class PriorValuesTest {
    private static final Source INVENTED = new Source("invented", "invented for this test", Source.Seen.ASSUMED);

    private static Refusal refusal(ThrowingCallable call) {
        Refusal[] got = new Refusal[1];
        assertThatThrownBy(call).isInstanceOfSatisfying(Refusal.class, r -> got[0] = r);
        return got[0];
    }

    /** Draws: 0, or a multiple of 16 from 128 to 2^20; the nearest of those is named. */
    @ParameterizedTest
    @CsvSource({"0,0", "128,0", "1048576,0", "144,0", "112,128", "1,128", "1048592,1048576", "-16,128", "200,208"})
    void sampling(int samples, int nearest) {
        if (nearest == 0) {
            assertThat(new Sampling(5, samples).samples()).isEqualTo(samples);
        } else {
            assertThat(refusal(() -> new Sampling(5, samples)).hint()).startsWith("The nearest is " + nearest + ";");
        }
        assertThat(Sampling.standard().samples()).isEqualTo(4096);
        assertThat(Sampling.standard().seed()).isEqualTo(1);
    }

    /** Half a step each way is an even law of step/sqrt(12); the offset is a normal one of step/sqrt(6), cut at 1.5 steps. */
    @Test
    void errorsOfAScale() {
        Scale scale = new Scale(0.002);
        Prior reading = scale.reading().prior();
        assertThat(reading.quantile(0)).isEqualTo(-0.001);
        assertThat(reading.quantile(1)).isEqualTo(0.001);
        assertThat(scale.reading().input()).isEqualTo(Input.SCALE);
        Prior offset = scale.offset().prior();
        assertThat(offset.median()).isCloseTo(0, within(1e-12));
        // one standard deviation of the uncut law; the cut at 3.7 of them takes 2e-4 away
        assertThat(offset.quantile(0.8413447)).isCloseTo(0.002 / Math.sqrt(6), within(3e-7));
        assertThat(offset.quantile(1)).isCloseTo(0.003, within(1e-9));
        assertThat(offset.quantile(0)).isCloseTo(-0.003, within(1e-9));
        assertThat(scale.offset().input()).isEqualTo(Input.SCALE_OFFSET);
        // both together: step^2 (1/12 + 1/6) = (step/2)^2
        assertThat(scale.deviation()).isCloseTo(Math.sqrt(0.002 * 0.002 * (1.0 / 12 + 1.0 / 6)), within(1e-15));
    }

    /** A gram; of what is lighter than fifty of them, a fiftieth. */
    @ParameterizedTest
    @CsvSource({"0.1,0.001", "0.05,0.001", "0.049,0.00098", "0.005,0.0001", "NaN,0.001", "0,0.001"})
    void usualScale(double mass, double step) {
        assertThat(Scale.usual(mass).step()).isCloseTo(step, within(1e-15));
        assertThat(Scale.written(mass, 0).step()).isCloseTo(step, within(1e-15));
    }

    @Test
    void scaleAsWritten() {
        assertThat(Scale.written(0.1, 0.0001).step()).isEqualTo(0.0001);
        assertThat(Scale.written(0.1, 0.05).step()).isCloseTo(0.01, within(1e-15));
        assertThat(refusal(() -> Scale.written(0.1, -1)).field()).isEqualTo("last place");
        assertThat(refusal(() -> new Scale(0)).read()).isEqualTo("0.0 g");
        assertThat(refusal(() -> new Scale(-0.002)).read()).isEqualTo("-2.0 g");
        assertThat(refusal(() -> new Scale(Double.POSITIVE_INFINITY)).field()).isEqualTo("scale");
        assertThat(refusal(() -> new Scale(Double.NaN)).field()).isEqualTo("scale");
    }

    /** Four steps are enough, three and a half are not. */
    @Test
    void hardlyAStep() {
        Scale scale = new Scale(0.25);
        scale.check(1);
        Refusal light = refusal(() -> scale.check(0.875));
        assertThat(light.read()).isEqualTo("steps of 250.0 g for a weight of 875.0 g");
        assertThat(refusal(() -> scale.check(Double.NaN)).field()).isEqualTo("mass");
    }

    /** 1 g of water moves the faces of a ball of 65 mm (surface pi d^2) by 1e-6/S each, its size by the double: 0.15 mm. */
    @Test
    void waysToMeasureASize() {
        double surface = Math.PI * 0.065 * 0.065;
        assertThat(Measured.WATER.sizeDeviation(surface)).isCloseTo(0.15068e-3, within(1e-8));
        assertThat(Measured.NOMINAL.sizeDeviation(surface)).isEqualTo(1e-3);
        assertThat(Measured.RULER.sizeDeviation(surface)).isEqualTo(0.7e-3);
        assertThat(Measured.CALIPERS.sizeDeviation(surface)).isEqualTo(0.2e-3);
        assertThat(Measured.CALIPERS.word()).isEqualTo("calipers");
        assertThat(refusal(() -> Measured.RULER.sizeDeviation(Double.NaN)).field())
                .isEqualTo("surface");
    }

    /** The share of gas lies from 0 to 1, both included; a prior that leaves it is refused by name and unit. */
    @Test
    void whatIsPossible() {
        Factor share = new Factor(Input.GAS_SHARE, Priors.uniform(0, 1), INVENTED);
        assertThat(share.checked(0)).isZero();
        assertThat(share.checked(1)).isEqualTo(1);
        assertThat(share.checked(0.25)).isEqualTo(0.25);
        assertThat(refusal(() -> share.checked(1.001)).field()).isEqualTo("gas share");
        assertThat(refusal(() -> share.checked(-0.001)).read()).isEqualTo("-0.001 in SI, that is -0.001");
        assertThat(refusal(() -> share.checked(Double.NaN)).code()).isEqualTo("out-of-range");
        assertThat(refusal(() -> new Factor(Input.GAS_SHARE, Priors.uniform(0.5, 1.1), INVENTED))
                        .code())
                .isEqualTo("out-of-range");
        assertThat(refusal(() -> new Factor(Input.HAND, Priors.certain(2e4), INVENTED))
                        .read())
                .isEqualTo("20000.0 in SI, that is 2.0E7 g");
        assertThat(refusal(() -> new Factor(Input.SCALE, new Outlier(), INVENTED))
                        .code())
                .isEqualTo("out-of-range");
    }

    /** A prior whose median alone, a number of its own, is outside. */
    private record Outlier() implements Prior {
        @Override
        public double quantile(double u) {
            return 0;
        }

        @Override
        public double median() {
            return 1e6;
        }

        @Override
        public double logDensity(double value) {
            return 0;
        }
    }

    @Test
    void columnsOfAnInput() {
        Factor one = new Factor(Input.POWDER_SCORES, Priors.normal(0, 1), INVENTED);
        assertThat(one.columns()).isEqualTo(1);
        assertThat(one.columns(1)).isSameAs(one);
        assertThat(one.columns(6)).isEqualTo(new Factor(Input.POWDER_SCORES, Priors.normal(0, 1), INVENTED, 6));
        assertThatThrownBy(() -> one.columns(0)).isInstanceOf(IllegalArgumentException.class);
    }

    /** The stages that Input lists: the weights and the mix are of the making, the air and the film of the drying. */
    @ParameterizedTest
    @EnumSource(Input.class)
    void stages(Input input) {
        boolean making = switch (input) {
            case SCALE,
                    SCALE_OFFSET,
                    HAND,
                    GRAIN_SCORE,
                    LOOSE_SCORE,
                    TAPPED_SCORE,
                    POWDER_SCORES,
                    RECIPE_SCORES,
                    PACKING_MODEL,
                    PRESS_SCALE,
                    PRESS,
                    PRESS_REPEAT,
                    BULKING,
                    BULKING_PRESSURE,
                    BRIDGE_EFFICIENCY,
                    PENDULAR_LIMIT,
                    WALL_FRICTION,
                    TRUE_DENSITY,
                    GAS_CAPACITY -> true;
            default -> drying(input);
        };
        assertThat(input.isOfMaking()).isEqualTo(making);
        assertThat(input.isOfDrying()).isEqualTo(drying(input));
        boolean piece = input == Input.SCALE || input == Input.HAND || input == Input.PRESS_REPEAT;
        assertThat(input.kind()).isEqualTo(piece ? Input.Kind.PIECE : Input.Kind.BATCH);
        assertThat(input.label()).isNotBlank();
        assertThat(input.words()).isNotBlank();
    }

    private static boolean drying(Input input) {
        return switch (input) {
            case ROOM_HUMIDITY,
                    ROOM_TEMPERATURE,
                    PORE_DIFFUSIVITY,
                    SKIN_TRANSFER,
                    FILM_ACTIVITY,
                    HYDRATE_SHARE,
                    ACID_HYDRATION,
                    PROMPT_YIELD,
                    FILM_RATE -> true;
            default -> false;
        };
    }

    /** SI to the unit that people read: 1 mm/min is 1/60000 m/s, a day has 86400 s. */
    @ParameterizedTest
    @CsvSource({
        "RECESSION,1.6666666666666667e-5,1",
        "SCALE,0.001,1",
        "ACID_HYDRATION,1.1574074074074074e-5,1",
        "ACTIVATION_ENERGY,32000,32",
        "TRUE_DENSITY,1900,1.9",
        "ROOM_HUMIDITY,0.05,5",
        "PRESS_SCALE,1000,1"
    })
    void units(Input input, double si, double shown) {
        assertThat(input.inUnit(si)).isCloseTo(shown, within(1e-12));
        assertThat(input.unit()).isNotEmpty();
    }

    /** Errors add: 0 is no error; factors multiply: 1 is none; a parameter has its own middle elsewhere. */
    @Test
    void neutralValues() {
        assertThat(Input.SCALE.neutral()).isZero();
        assertThat(Input.PRESS.neutral()).isEqualTo(1);
        assertThat(Input.RECESSION.neutral()).isNaN();
    }
}
