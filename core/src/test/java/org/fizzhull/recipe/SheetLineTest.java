package org.fizzhull.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.quantity.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** BY DEFINITION: the words of data sheets that {@link SheetLine} names, on invented lines. */
class SheetLineTest {
    /** The longest word that fits is meant; the words of the table count too, and a colon is left out. */
    @Test
    void aLine() {
        assertThat(SheetLine.read(
                        "x",
                        " Bulk density 0.55 g/cm3;; Tapped bulk density: 0.7 g/cm3; LIQUID UPTAKE 0.2 g/g; d50 : 5 um"))
                .containsExactly(
                        entry("loose density", "0.55 g/cm3"),
                        entry("tapped density", "0.7 g/cm3"),
                        entry("liquid uptake", "0.2 g/g"),
                        entry("grain size", "5 um"));
        assertThatThrownBy(() -> SheetLine.read("x", "colour white"))
                .isInstanceOfSatisfying(Refusal.class, r -> assertThat(r.read()).isEqualTo("colour white"));
    }

    /** A hyphen or an en dash between two digits stands for "to"; any other stays, and so does the sign of a number. */
    @ParameterizedTest
    @CsvSource({
        "550-650 g/L,550 to 650 g/L",
        "0 - 9 um,0 to 9 um",
        "9\u20130 um,9 to 0 um",
        "5-,5-",
        "-5,-5",
        "5 -,5 -",
        "5-g,5-g",
        "a-5,a-5",
        "5- ,5-",
        "5-:,5-:",
        "/-5,/-5",
        "1-2,1 to 2",
        "7,7"
    })
    void ranges(String text, String read) {
        assertThat(SheetLine.range(text)).isEqualTo(read);
    }

    /** One pound (0.45359237 kg) in a cubic foot (0.3048 m each way), both exact: 16.018463 kg/m3. */
    @ParameterizedTest
    @CsvSource({"30 lb/ft3,480.5539", "30 pcf,480.5539", "20-40 lbs/ft3,480.5539", "550-650 g/L,600", "0.6 g/cm3,600"})
    void densities(String text, double kilogramsPerCubicMetre) {
        assertThat(SheetLine.density("x", text)).isCloseTo(kilogramsPerCubicMetre, within(1e-4));
    }
}
