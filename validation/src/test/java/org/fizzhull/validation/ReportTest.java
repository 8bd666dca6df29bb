package org.fizzhull.validation;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.fizzhull.validation.table.Outcome;
import org.fizzhull.validation.table.Report;
import org.fizzhull.validation.table.Rounding;
import org.junit.jupiter.api.Test;

/** The committed page is the page of today's library. {@code -Dvalidation.write=true} rewrites it. */
class ReportTest {
    private static final Path PAGE = Path.of(System.getProperty("basedir", ".")).resolve("VALIDATION.md");

    private static final List<Outcome> OUTCOMES = Catalogue.outcomes();

    @Test
    void thePageIsUpToDate() throws IOException {
        String page = page();
        if (Boolean.getBoolean("validation.write")) {
            Files.writeString(PAGE, page);
        }
        assertThat(Files.readString(PAGE, UTF_8))
                .as("rewrite it with: mvn -pl validation -am verify -Dvalidation.write=true")
                .isEqualTo(page);
    }

    @Test
    void thePageDoesNotDependOnTheLocale() {
        String page = page();
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("hi-IN-u-nu-deva"));
            assertThat(page()).isEqualTo(page);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void numbersShowWhatTheToleranceCanTell() {
        assertThat(Rounding.toTolerance(992.96534321, 0.005, 993)).isEqualTo("992.96534");
        assertThat(Rounding.toTolerance(-3e-12, 1e-6, 1)).isEqualTo("0");
        assertThat(Rounding.toTolerance(6633, 1, 6633)).isEqualTo("6633");
        assertThat(Rounding.toTolerance(4e-15, 1e-14, 9.3)).isEqualTo("0");
        assertThat(Rounding.plain(1e-9)).isEqualTo("1e-9");
    }

    private static String page() {
        return Report.of(OUTCOMES, Catalogue.sources());
    }
}
