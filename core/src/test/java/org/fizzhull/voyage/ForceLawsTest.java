package org.fizzhull.voyage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.fizzhull.quantity.Units.celsius;

import java.util.List;
import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.voyage.result.Voyage;
import org.junit.jupiter.api.Test;

/** The laws that a voyage puts together, each against its formula worked out by hand. */
class ForceLawsTest {
    private static final Bath BATH = Bath.at(celsius(38));
    private static final double RHO = BATH.density();
    private static final double G = PhysicalConstants.GRAVITY;
    private static final double R = 0.0325;
    private static final double WHOLE = 4 * Math.PI / 3 * R * R * R;
    private static final Shape BALL = Sphere.ofDiameter(2 * R);

    private static ForceBalance balance(double speed, double gasCapacity, VoyageParameters voyage) {
        ForceBalance balance = new ForceBalance(new BathProperties(BATH, R));
        FizzParameters fizz = new FizzParameters(speed, 0, 0, 0, 1e-3, 0.45, 0, 0.65);
        Piece.Makeup makeup = new Piece.Makeup(1900, gasCapacity);
        balance.set(Launch.of(new Piece(BALL, 0.16, makeup), BATH, fizz, voyage), WHOLE);
        return balance;
    }

    /** By hand, C_d 0.42 and C_a 1/2 of a ball: g growth t^3 = 9 d + (3 d/2)^2 C_d A/(2 V). */
    @Test
    void timeOfTheWayUp() {
        double area = Math.PI / 4 * 0.06 * 0.06;
        double body = Math.PI / 6 * 0.06 * 0.06 * 0.06;
        assertThat(Resistance.ball().area(0.06)).isCloseTo(0.42 * area, withinPercentage(1e-9));
        double cube = (9 * 0.3 + Math.pow(0.45, 2) * 0.42 * area / (2 * body)) / (9.80665 * 1e-3);
        assertThat(Resistance.ball().lag(1e-3, 0.3, body, 0.06)).isCloseTo(Math.cbrt(cube), withinPercentage(1e-6));
        assertThat(Resistance.ball().lag(1e-3, 0, body, 0.06)).isZero();
    }

    /**
     * Half as high as wide and rounded (volume 2/3 of height times plan area): 0.75 x 1/2 beyond a ball's drag, and
     * 1.05 of a cube where it is fuller than 0.83.
     */
    @Test
    void dragOfAFlatBody() {
        double width = 0.08;
        double plan = Math.PI / 4 * width * width;
        Resistance lens = Resistance.of(0.04, width, 2.0 / 3 * 0.04 * plan);
        double reynolds = 0.5 * width / 1e-6;
        double drag = 0.5 * 1000 * plan * (BrownLawler2003.coefficient(reynolds) + 0.375) * 0.25;
        assertThat(lens.force(0.5, width, 1000, 1e-6)).isCloseTo(drag, withinPercentage(1e-9));
        assertThat(lens.force(-0.5, width, 1000, 1e-6)).isCloseTo(-drag, withinPercentage(1e-9));
        assertThat(lens.area(width)).isCloseTo((0.42 + 0.375) * plan, withinPercentage(1e-9));
        assertThat(Resistance.of(0.08, width, 0.84 * width * plan).area(width))
                .isCloseTo(1.05 * plan, withinPercentage(1e-9));
        assertThat(Resistance.of(0.08, width, 0.82 * width * plan).area(width))
                .isCloseTo(0.42 * plan, withinPercentage(1e-9));
        // higher than wide it counts as a ball, also in the water it carries along
        Resistance high = Resistance.of(0.16, width, 0.1 * plan);
        assertThat(high.area(width)).isCloseTo(0.42 * plan, withinPercentage(1e-9));
        assertThat(high.addedMass()).isEqualTo(0.5);
    }

    /** Lamb's formula by hand at f = 3/5, z = 3/4: a = 2 x 1.5625 (1 - 0.75 (pi/2 - atan 0.75)) = 0.951716. */
    @Test
    void addedMassOfASpheroid() {
        double a = 2 * 1.5625 * (1 - 0.75 * (Math.PI / 2 - Math.atan(0.75)));
        assertThat(Lamb1932.oblate(0.6)).isCloseTo(a / (2 - a), within(1e-12));
        assertThatThrownBy(() -> Lamb1932.oblate(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Lamb1932.oblate(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Hydrostatics and the gas law: p0 + rho g d; V_m = R T/(p - p_v), so that p V_m less p_v V_m is R T. */
    @Test
    void pressureAndGasAtADepth() {
        BathProperties water = new BathProperties(BATH, 0.2);
        water.at(celsius(38));
        assertThat(water.pressure(0)).isCloseTo(101325, within(1e-9));
        assertThat(water.pressure(0.5)).isCloseTo(101325 + RHO * G * 0.5, within(1e-6));
        assertThat(water.squeeze(0.5)).isCloseTo(101325 / (101325 + RHO * G * 0.5), within(1e-12));
        // 6.63 kPa of vapour at 38 C (steam tables [from memory])
        double kelvin = celsius(38);
        assertThat(water.molarVolume(0.5))
                .isCloseTo(8.314463 * kelvin / (101325 + RHO * G * 0.5 - 6630), withinPercentage(0.01));
        assertThat(water.molarVolume).isEqualTo(water.molarVolume(0.2));
        assertThat(water.temperature()).isEqualTo(kelvin);
        // 0.68e-6 m2/s of water at 38 C (handbooks [from memory])
        assertThat(water.kinematicViscosity()).isCloseTo(0.68e-6, withinPercentage(1));
        assertThat(water.bathDepth()).isEqualTo(BATH.depth());
        water.at(celsius(20));
        assertThat(water.density).isCloseTo(998.2, within(0.1));
        // sigma/mu over that at 38 C: 72.75 and 69.96 mN/m, 1.002 and 0.678 mPa s (handbooks [from memory])
        assertThat(water.wicking).isCloseTo(72.75 / 69.96 * 0.678 / 1.002, withinPercentage(0.5));
    }

    /** The terms of the balance, core/docs/physics/voyage.md, 2: what is displaced, weighs, clings and has soaked in. */
    @Test
    void termsOfTheBalance() {
        ForceBalance balance = balance(1e-4, 4.6, new VoyageParameters(1e-6, 0.1));
        assertThat(balance.bodyDensity).isCloseTo(0.16 / WHOLE, withinPercentage(1e-9));
        double porosity = 1 - 0.16 / WHOLE / 1900;
        assertThat(balance.porosity).isCloseTo(porosity, within(1e-12));
        assertThat(balance.speedHeld()).isFalse();
        assertThat(balance(1e-3, 4.6, VoyageParameters.standard()).speedHeld())
                .as("20 mm/min are the fastest believed")
                .isTrue();
        assertThat(ForceBalance.spare(1000, 1.5e-4, 0.1, 0.02)).isCloseTo(0.03, within(1e-15));
        assertThat(ForceBalance.clingingGasVolume(1e-3, 0.01, 1e-4)).isCloseTo(1e-5, within(1e-18));
        assertThat(ForceBalance.clingingGasVolume(1e-2, 0.01, 1e-4))
                .as("at most 0.3 of the body")
                .isCloseTo(3e-5, within(1e-18));
        assertThat(balance.lifting(0.2)).isCloseTo(RHO * 0.98, withinPercentage(1e-9));
        assertThat(balance.flux(0.0267)).isCloseTo(1e-4 * 0.16 / WHOLE * 4.6 * 0.65 * 0.0267, withinPercentage(1e-9));
        // a thin skin holds eps rho times its volume
        assertThat(balance.soaked(1e-7, 0.013, WHOLE)).isCloseTo(porosity * RHO * 1e-7 * 0.013, withinPercentage(0.1));
        double late = balance.skinDepth(1e6);
        assertThat(balance.isSteady(late)).isTrue();
        assertThat(balance.isSteady(late / 2)).isFalse();
        assertThat(balance.gasShareReachingSurface(0.5)).isCloseTo(0.65 * Math.exp(-1), within(1e-12));
    }

    /** A mix that cannot fizz has no layer of gas; one that can has. */
    @Test
    void noLayerWithoutFizz() {
        double least = Effervescence.LEAST_CAPACITY;
        VoyageParameters voyage = VoyageParameters.standard();
        assertThat(balance(1e-4, 0.99 * least, voyage).fullLayer(1e-3, 4)).isZero();
        assertThat(balance(1e-4, least, voyage).fullLayer(1e-3, 4)).isPositive();
    }

    /** Columns are rows turned round; series are equal by what they hold. */
    @Test
    void aSeriesHoldsItsRows() {
        List<double[]> rows = List.of(
                new double[] {0, 1, 2, 3, 4, 5, 6, 7, 8, 9}, new double[] {10, 11, 12, 13, 14, 15, 16, 17, 18, 19});
        Voyage.Series series = Voyage.Series.of(rows);
        assertThat(series.rows()).isEqualTo(2);
        assertThat(series.time()).containsExactly(0, 10);
        assertThat(series.centreDepth()).containsExactly(3, 13);
        assertThat(series.left()).containsExactly(9, 19);
        assertThat(series).isEqualTo(Voyage.Series.of(rows)).hasSameHashCodeAs(Voyage.Series.of(rows));
        assertThat(series).isNotEqualTo(Voyage.Series.of(rows.subList(0, 1)));
        assertThat(series.equals((Object) "rows")).isFalse();
        assertThat(series).hasToString("2 rows to 10.0 s");
    }
}
