package org.fizzhull.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.MathContext;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;

class QuantityTextProperties {
    /** Any double of a workshop's sizes: 1e-9 to 1e9 SI, all 53 bits used. */
    @Provide
    Arbitrary<Double> si() {
        Arbitrary<Double> mantissa =
                Arbitraries.longs().between(1L << 52, (1L << 53) - 1).map(m -> m * 0x1p-52);
        Arbitrary<Integer> power = Arbitraries.integers().between(-30, 29);
        return mantissa.flatMap(m -> power.map(p -> Math.scalb(m, p)));
    }

    /** Temperatures from -73 C to 427 C. */
    @Provide
    Arbitrary<Double> kelvin() {
        return Arbitraries.longs().between(0, 1L << 50).map(n -> 200 + n * (500 * 0x1p-50));
    }

    @Property(tries = 500)
    void everyValueReadsBackToTheSameBits(@ForAll("si") double si, @ForAll Unit unit, @ForAll Measures measures) {
        if (unit.dimension() != Dimension.TEMPERATURE) {
            String text = QuantityText.format(si, unit, measures);
            assertThat(QuantityText.parseExact("x", text, unit.dimension(), measures))
                    .as(text)
                    .isEqualTo(si);
            String negative = QuantityText.format(-si, unit, measures);
            assertThat(QuantityText.parseExact("x", negative, unit.dimension(), measures))
                    .isEqualTo(-si);
        }
    }

    @Property(tries = 500)
    void everyTemperatureReadsBack(@ForAll("kelvin") double kelvin) {
        for (Unit unit : new Unit[] {Unit.CELSIUS, Unit.FAHRENHEIT, Unit.KELVIN}) {
            String text = QuantityText.format(kelvin, unit);
            double back = QuantityText.parseExact("bath", text, Dimension.TEMPERATURE);
            // In F not every double of the Kelvin scale has a double that leads to it.
            double bits = unit == Unit.FAHRENHEIT ? Math.ulp(kelvin) : 0;
            assertThat(Math.abs(back - kelvin)).as(text).isLessThanOrEqualTo(bits);
        }
    }

    @Property(tries = 300)
    void everySpreadReadsBackToTheSameAmount(@ForAll("si") double a, @ForAll("si") double b, @ForAll Unit unit) {
        Dimension dimension = unit.dimension();
        double low = Math.min(a, b);
        double high = Math.max(a, b);
        if (dimension != Dimension.TEMPERATURE) {
            Amount normal = Amount.normal(dimension, a, b);
            Amount range = Amount.between(dimension, low, high);
            assertThat(QuantityText.parse("x", QuantityText.format(normal, unit), dimension))
                    .isEqualTo(normal);
            assertThat(QuantityText.parse("x", QuantityText.format(range, unit), dimension))
                    .isEqualTo(range);
        }
    }

    @Property(tries = 300)
    void aTemperatureSpreadReadsBack(@ForAll("kelvin") double mean, @ForAll("si") double deviation) {
        Amount normal = Amount.normal(Dimension.TEMPERATURE, mean, deviation);
        assertThat(QuantityText.parse("bath", QuantityText.format(normal, Unit.CELSIUS), Dimension.TEMPERATURE))
                .isEqualTo(normal);
    }

    /** Rounded once: the text times the unit's exact ratio, by BigDecimal with 60 digits. */
    @Property(tries = 500)
    void aDecimalTextIsTheNearestDouble(
            @ForAll @CharRange(from = '0', to = '9') @StringLength(min = 1, max = 25) String whole,
            @ForAll @CharRange(from = '0', to = '9') @StringLength(min = 1, max = 25) String part,
            @ForAll Unit unit) {
        if (unit.dimension() == Dimension.TEMPERATURE) {
            return;
        }
        String decimal = whole + "." + part;
        double expected = new BigDecimal(decimal)
                .multiply(BigDecimal.valueOf(unit.numerator(Measures.US_LEGAL)))
                .divide(BigDecimal.valueOf(unit.denominator()), new MathContext(60))
                .doubleValue();
        if (expected != 0 && (expected < 1e-11 || expected > 1e11)) {
            assertThatThrownBy(() -> QuantityText.parseExact("x", decimal + unit.symbol(), unit.dimension()))
                    .isInstanceOfSatisfying(
                            Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("not-representable"));
            return;
        }
        assertThat(QuantityText.parseExact("x", decimal + unit.symbol(), unit.dimension()))
                .isEqualTo(expected);
    }

    /** No text makes anything but an amount or a refusal that names its field. */
    @Property(tries = 1000)
    void everyOtherTextIsRefused(@ForAll("nearlyQuantities") String text) {
        try {
            Amount amount = QuantityText.parseAny("the field", text, Measures.METRIC, Dimension.values());
            assertThat(amount.low()).isLessThanOrEqualTo(amount.high());
        } catch (Refusal refusal) {
            assertThat(refusal.field()).isEqualTo("the field");
            assertThat(refusal.code()).isNotEmpty();
            assertThat(refusal.hint()).isNotEmpty();
        }
    }

    @Provide
    Arbitrary<String> nearlyQuantities() {
        String pieces =
                "1|2.5| |g|mm|oz|lb|C|%|+-|±|to|-|–|/|.|,|½|e|E5|fl|cup|\u00a0|1/2|9999999999|1e308|\"|°|^3|\n|x";
        return Arbitraries.of(pieces.split("\\|"))
                .list()
                .ofMinSize(0)
                .ofMaxSize(8)
                .map(parts -> String.join("", parts));
    }
}
