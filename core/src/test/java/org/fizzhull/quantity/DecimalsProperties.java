package org.fizzhull.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** Against another program: the JDK's BigDecimal. */
class DecimalsProperties {
    /** Every finite double, zero aside, by its bits; and short decimals, where ties live. */
    @Provide
    Arbitrary<Double> bits() {
        Arbitrary<Double> any = Arbitraries.longs().map(Double::longBitsToDouble);
        Arbitrary<Double> halves = Arbitraries.longs().between(1, 100_000_000).map(n -> n / 8.0);
        Arbitrary<Double> decimals = Arbitraries.longs().between(1, 100_000_000).map(n -> n / 1e7);
        return Arbitraries.oneOf(any, halves, decimals).filter(x -> Double.isFinite(x) && x != 0);
    }

    @Property
    void jsonNumbersAreRoundedToSixDigits(@ForAll("bits") double value) {
        // other program: the JDK's BigDecimal
        BigDecimal expected = new BigDecimal(value).round(new MathContext(6, RoundingMode.HALF_EVEN));
        assertThat(new BigDecimal(Decimals.json(value))).isEqualByComparingTo(expected);
        assertThat(new BigDecimal(Decimals.json(-value))).isEqualByComparingTo(expected.negate());
    }

    @Property
    void anyNumberOfDigitsOfAnyDouble(@ForAll("bits") double value, @ForAll @IntRange(min = 1, max = 17) int digits) {
        BigDecimal expected = new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
        assertThat(new BigDecimal(Decimals.text(value, digits))).isEqualByComparingTo(expected);
    }
}
