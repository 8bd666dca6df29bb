package org.fizzhull.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.fizzhull.quantity.Dimension.DENSITY;
import static org.fizzhull.quantity.Dimension.DURATION;
import static org.fizzhull.quantity.Dimension.FRACTION;
import static org.fizzhull.quantity.Dimension.LENGTH;
import static org.fizzhull.quantity.Dimension.MASS;
import static org.fizzhull.quantity.Dimension.PRESSURE;
import static org.fizzhull.quantity.Dimension.TEMPERATURE;
import static org.fizzhull.quantity.Dimension.VOLUME;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What may not be written, with the code for programs and the mend for people. */
@Isolated("sets the default locale")
class RefusedTextTest {

    static Object[][] refused() {
        return new Object[][] {
            {"", LENGTH, "missing-value", "such as 65 mm"},
            {"  \u00a0 ", MASS, "missing-value", "such as 138 g"},
            {"65", LENGTH, "missing-unit", "65 has no unit; write 65 mm or 6.5 cm."},
            {"138", MASS, "missing-unit", "138 has no unit; write 138 g or 0.138 kg."},
            {"38", TEMPERATURE, "missing-unit", "write 38 C or 38 F."},
            {"36", DURATION, "missing-unit", "write 36 h or 1.5 d."},
            {"0.95", DENSITY, "missing-unit", "write 0.95 g/cm3 or 950 kg/m3."},
            {"30", PRESSURE, "missing-unit", "write 30 kPa or 30000 Pa."},
            {"45", FRACTION, "missing-unit", "45 has no unit; write 45 %."},
            {"0.45", FRACTION, "missing-unit", "or 45 % for that part of the whole."},
            {"2 1/2", LENGTH, "missing-unit", "2 1/2 has no unit; write 2 1/2 mm"},
            {"1 lb 2", MASS, "missing-unit", "2 has no unit"},
            {"4 to 8", MASS, "missing-unit", "has no unit"},
            {"138 g +- 4", MASS, "missing-unit", "4 has no unit; write 4 g"},
            {"6,5 cm", LENGTH, "comma-decimal", "Write 6.5 cm, with a point."},
            {",5 cm", LENGTH, "comma-decimal", "Write 0.5 cm, with a point."},
            {"1,000 g", MASS, "comma-decimal", "Write 1.000 g, with a point, or 1000 g for thousands."},
            {"6,5", LENGTH, "comma-decimal", "Write 6.5 mm, with a point."},
            {"38 to 40,5 C", TEMPERATURE, "comma-decimal", "Write 38 to 40.5 C, with a point."},
            {
                "772.1,50 mm",
                LENGTH,
                "comma-decimal",
                "one decimal sign, a point. Write a number and a unit, such as 65 mm."
            },
            {"1.234,5 mm", LENGTH, "comma-decimal", "Write 1234.5 mm, with a point."},
            {"1,234.5 mm", LENGTH, "comma-decimal", "Write 1234.5 mm, with a point."},
            {"1,2,3 mm", LENGTH, "comma-decimal", "one decimal sign"},
            {"65, mm", LENGTH, "comma-decimal", "Leave out the comma: 65 mm."},
            {"1e300", LENGTH, "missing-unit", "1e300 has no unit. Write a number and a unit, such as 65 mm."},
            {"4-8-9 g", MASS, "range-dash", "for a range write to, as in 4 to 8."},
            {"65 MM", LENGTH, "unknown-unit", "MM is no unit known here. Did you mean 65 mm?"},
            {"12 gramms", MASS, "unknown-unit", "Did you mean 12 g?"},
            {"4 onces", MASS, "unknown-unit", "Did you mean 4 oz?"},
            {"38 c", TEMPERATURE, "unknown-unit", "Did you mean 38 C?"},
            {"2.5\"", LENGTH, "unknown-unit", "Write in for inches."},
            {"2 gal", VOLUME, "unknown-unit", "differs between the US and the UK"},
            {"20 gr", MASS, "unknown-unit", "grams or grains: write g"},
            {"1 T", VOLUME, "unknown-unit", "write tsp or tbsp"},
            {"1 pinch", VOLUME, "unknown-unit", "no agreed size"},
            {"65 xyzzy", LENGTH, "unknown-unit", "xyzzy is no unit known here."},
            {"12 cm2", LENGTH, "unknown-unit", "Did you mean 12 cm?"},
            {"0x41 mm", LENGTH, "unknown-unit", "x41 is no unit known here."},
            {"1f", MASS, "unknown-unit", "f is no unit known here."},
            {"1e g", MASS, "unknown-unit", "e is no unit known here."},
            {"65 µm", LENGTH, "unknown-unit", "µm is no unit known here."},
            {"20 mL", MASS, "wrong-dimension", "mL measures a volume, and a mass is needed. Weigh it"},
            {"2 fl oz", MASS, "wrong-dimension", "an ounce of mass is oz"},
            {"2 oz", VOLUME, "wrong-dimension", "An ounce of liquid is fl oz."},
            {"4 m", DURATION, "wrong-dimension", "Minutes are min."},
            {"1d", MASS, "wrong-dimension", "d measures a duration, and a mass is needed."},
            {"65 g", LENGTH, "wrong-dimension", "g measures a mass, and a length is needed."},
            {"138 g +- 3 %", MASS, "wrong-dimension", "% measures a percentage"},
            {"NaN mm", LENGTH, "not-a-number", "There is no number."},
            {"Infinity g", MASS, "not-a-number", "There is no number."},
            {"heavy", MASS, "not-a-number", "such as 138 g"},
            {"g 12", MASS, "not-a-number", "The number has to come first."},
            {"--65 mm", LENGTH, "not-a-number", "There are two signs."},
            {"+-4 g", MASS, "not-a-number", "There are two signs."},
            {"-", MASS, "not-a-number", "The number is missing."},
            {"138 g +-", MASS, "not-a-number", "The number is missing."},
            {"4 to g", MASS, "not-a-number", "There is no number."},
            {"65. mm", LENGTH, "not-a-number", "A point needs a digit after it."},
            {"6.5.1 mm", LENGTH, "not-a-number", "There is a point too many."},
            {"1 000 g", MASS, "not-a-number", "without a gap"},
            {"1.5 1/2 in", LENGTH, "not-a-number", "side by side"},
            {"1/0 cup", VOLUME, "not-a-number", "A fraction over zero"},
            {"1.5/2 cup", VOLUME, "not-a-number", "two whole numbers"},
            {"12345678901/2 cup", VOLUME, "not-a-number", "too long"},
            {"\u0661\u0662 mm", LENGTH, "not-a-number", "There is no number."},
            {"1".repeat(200) + " g", MASS, "not-a-number", "The text is too long."},
            {"1e400 g", MASS, "not-representable", "too large"},
            {"1e-400 g", MASS, "not-representable", "too small"},
            {"4.9e-324 d", DURATION, "not-representable", "too small"},
            {"1e-9 g", MASS, "not-representable", "too small"},
            {"3:20", DURATION, "unknown-unit", "write 3 min 20 s"},
            {"2 months", DURATION, "unknown-unit", "write days or weeks"},
            {"1e99999999999999999999 g", MASS, "not-representable", "too large"},
            {"-1e308 to 1e308 kg", MASS, "not-representable", "too large"},
            {"1 kg +- 1e308 kg", MASS, "not-representable", "too large"},
            {"1e308 MPa", PRESSURE, "not-representable", "too large"},
            {"2 oz 1 lb", MASS, "unit-order", "Write lb before oz."},
            {"12 g 3 g", MASS, "unit-order", "g is there twice"},
            {"10 s 4 min", DURATION, "unit-order", "Write min before s."},
            {"12 g g", MASS, "extra-text", "Leave out g after 12 g."},
            {"12 drops of oil", VOLUME, "extra-text", "Leave out of oil after 12 drops."},
            {"65 mm, 70 mm", LENGTH, "extra-text", "after 65 mm."},
            {"38 C 2 F", TEMPERATURE, "extra-text", "do not add up"},
            {"4 g to 8 g to 9 g", MASS, "extra-text", "Leave out to 9 g"},
            {"4-8 g", MASS, "range-dash", "for a range write 4 to 8 g."},
            {"4\u20138 g", MASS, "range-dash", "for a range write 4 to 8 g."},
            {"4 g - 8 g", MASS, "range-dash", "for a range write 4 g to 8 g."},
            {"8 to 4 g", MASS, "range-order", "Write the smaller end first."},
            {"138 g +- -4 g", MASS, "negative-spread", "write +- 4 g"},
        };
    }

    @ParameterizedTest
    @MethodSource("refused")
    void isRefusedWithAMend(String text, Dimension dimension, String code, String mend) {
        Refusal refusal = refusal(text, dimension);
        assertThat(refusal.code()).isEqualTo(code);
        assertThat(refusal.field()).isEqualTo("the field");
        assertThat(refusal.hint()).contains(mend);
        String read = text.length() > 60 ? text.substring(0, 57) + "..." : text;
        assertThat(refusal.read()).isEqualTo(read);
        assertThat(refusal.allowed()).startsWith(dimension.noun() + " with a unit: ");
        assertThat(refusal.getMessage()).startsWith("the field: read ").contains(read, refusal.allowed(), mend);
    }

    @Test
    void theListOfUnitsIsReadable() {
        assertThat(refusal("65", LENGTH).allowed()).isEqualTo("a length with a unit: mm, cm, m, in, ft or um");
        assertThat(refusal("65", FRACTION).allowed()).isEqualTo("a percentage with a unit: %");
    }

    @Test
    void severalDimensionsAreNamed() {
        Refusal refusal = catchThrowableOfType(
                Refusal.class, () -> QuantityText.parseAny("starch", "3 cm", Measures.METRIC, MASS, VOLUME));
        assertThat(refusal.code()).isEqualTo("wrong-dimension");
        assertThat(refusal.hint()).isEqualTo("cm measures a length, and a mass or a volume is needed.");
        assertThat(refusal.allowed()).isEqualTo("a mass or a volume with a unit, such as 138 g or 20 mL");
    }

    @Test
    void aSpreadWhereOneValueIsNeeded() {
        for (String text : new String[] {"65 mm +- 1 mm", "60 to 70 mm"}) {
            Refusal refusal =
                    catchThrowableOfType(Refusal.class, () -> QuantityText.parseExact("diameter", text, LENGTH));
            assertThat(refusal.code()).isEqualTo("spread-not-allowed");
            assertThat(refusal.read()).isEqualTo(text);
        }
    }

    @Test
    void controlCharactersDoNotBreakTheMessage() {
        assertThat(refusal("65 mm\nexit 0", LENGTH).getMessage()).doesNotContain("\n");
    }

    @Test
    void unitsAndMeasuresByWrongNames() {
        Refusal unit = catchThrowableOfType(Refusal.class, () -> QuantityText.unit("unit", "mn", LENGTH));
        assertThat(unit.code()).isEqualTo("unknown-unit");
        assertThat(unit.hint()).isEqualTo("mn is no unit known here. Did you mean mm?");
        Refusal kind = catchThrowableOfType(Refusal.class, () -> QuantityText.unit("unit", "kg", LENGTH));
        assertThat(kind.code()).isEqualTo("wrong-dimension");
        Refusal cups = catchThrowableOfType(Refusal.class, () -> Measures.named("--cups", "imperial"));
        assertThat(cups.code()).isEqualTo("unknown-measures");
        assertThat(cups.allowed()).contains("us-legal", "metric", "us-customary");
    }

    /** By definition: the schema of a refusal asks for a field, and a key of a file may have no letters. */
    @Test
    void aFieldWithoutLettersIsShown() {
        for (String name : new String[] {"", " "}) {
            Refusal refusal = new Refusal("unknown-key", name, "3 g", "keys with a name", "");
            assertThat(refusal.field()).isEqualTo('"' + name + '"');
            assertThat(refusal.of(name).field()).isEqualTo('"' + name + '"');
            assertThat(refusal.at("a.yaml", 3).field()).isEqualTo('"' + name + '"');
            assertThat(refusal).hasMessageStartingWith('"' + name + "\": read 3 g");
        }
    }

    @Test
    void noLocaleMatters() {
        Locale before = Locale.getDefault();
        try {
            for (String tag : new String[] {"tr-TR", "de-DE", "ar-EG"}) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(QuantityText.parseExact("x", "6.5 in", LENGTH)).isEqualTo(0.1651);
                assertThat(QuantityText.format(0.1651, Unit.CENTIMETRE)).isEqualTo("16.51 cm");
                assertThat(Decimals.json(1234.5)).isEqualTo("1234.5");
                // the Turkish lower case of I has no dot, so a default locale would miss this name
                assertThat(refusal("2 IN", LENGTH).hint()).contains("Did you mean 2 in?");
                assertThat(refusal("3 MIN", DURATION).hint()).contains("Did you mean 3 min?");
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    private static Refusal refusal(String text, Dimension dimension) {
        return catchThrowableOfType(Refusal.class, () -> QuantityText.parse("the field", text, dimension));
    }
}
