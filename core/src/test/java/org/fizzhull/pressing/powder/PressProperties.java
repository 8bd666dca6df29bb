package org.fizzhull.pressing.powder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.recipe.Blend;

/** Identities and directions that hold for any mix. */
class PressProperties {
    private final DeLarrard1999 model = new DeLarrard1999();
    private final Blend blend = Sample.sheet(0.04);

    private static Powders three(double y1, double y2, double d2, double d3, double beta, double index) {
        double y3 = 1;
        double sum = y1 + y2 + y3;
        return Powders.of(
                new double[] {y1 / sum, y2 / sum, y3 / sum},
                new double[] {400e-6, d2 * 1e-6, d3 * 1e-6},
                new double[] {0.65, beta, 0.55},
                new double[] {4, index, 1.6},
                1900);
    }

    /** The compaction index found back, the packing below its virtual limit, denser when squeezed more. */
    @Property(tries = 300)
    void compressiblePacking(
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 5) double y1,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 5) double y2,
            @ForAll @Scale(6) @DoubleRange(min = 10, max = 1000) double d2,
            @ForAll @Scale(6) @DoubleRange(min = 1, max = 50) double d3,
            @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 0.8) double beta,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 6) double index,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 50) double squeeze) {
        Powders mix = three(y1, y2, d2, d3, beta, index);
        double phi = model.solidFraction(mix, squeeze);
        double k = mix.looseIndex() * (1 + squeeze);
        assertThat(model.indexOf(mix, phi)).isCloseTo(k, within(1e-9 * k));
        assertThat(phi).isLessThan(model.virtual(mix));
        assertThat(model.solidFraction(mix, squeeze + 0.1)).isGreaterThan(phi);
    }

    /** What a pressure presses in, weighed, tells the same pressure; the same for the press scale. */
    @Property(tries = 200)
    void fillUndoesPress(
            @ForAll @Scale(6) @DoubleRange(min = 5, max = 800) double kilopascal,
            @ForAll @Scale(6) @DoubleRange(min = 0.005, max = 0.1) double ratio,
            @ForAll @Scale(6) @DoubleRange(min = 30, max = 200) double pressScale) {
        PressingParameters p = PressingParameters.standard().withPressScale(pressScale * 1e3);
        Press press = Press.of(blend, Powders.of(blend), p).withLiquid(ratio);
        Pressed piece = press.press(kilopascal * 1e3, Sample.ball65());
        Pressed weighed = press.fill(piece.dampMass(), Sample.ball65());
        assertThat(weighed.topPressure()).isCloseTo(kilopascal * 1e3, within(1e-4 * kilopascal * 1e3));
        assertThat(press.pressScale(piece.dampMass(), kilopascal * 1e3, Sample.ball65()))
                .isCloseTo(pressScale * 1e3, within(1e-4 * pressScale * 1e3));
    }

    /** Solids, liquid and air fill the piece. */
    @Property(tries = 100)
    void volumesAddUp(
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1000) double kilopascal,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.15) double ratio) {
        Pressed piece = Press.of(blend).withLiquid(ratio).press(kilopascal * 1e3, Sample.ball65());
        double liquid = piece.dryDensity() * ratio / blend.liquid().density();
        assertThat(piece.solidFraction() + liquid + piece.airPorosity()).isCloseTo(1, within(1e-12));
        assertThat(piece.dampMass())
                .isCloseTo(piece.dampDensity() * Sample.ball65().volume(), within(1e-12));
        assertThat(piece.dryMass() * (1 + ratio)).isCloseTo(piece.dampMass(), within(1e-12));
    }
}
