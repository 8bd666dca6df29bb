package org.fizzhull.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;

/** Whatever a refusal proposes to write can be written: the same reader takes it. */
class ProposedTextProperties {
    /** Where a hint proposes a text: each group is one. */
    private static final List<Pattern> PROPOSALS = List.of(
            Pattern.compile("^Write (.+?), with a point(?:, or (.+?) for thousands)?\\.$"),
            Pattern.compile("^Leave out the comma: (.+)\\.$"),
            Pattern.compile("^\\S.* has no unit; write (.+?)(?:,? or (.+?)(?: for that part of the whole)?)?\\.$"),
            Pattern.compile("for a range write (?!to, as in)(.+)\\.$"),
            Pattern.compile("^Leave out .* after (.+)\\.$"),
            Pattern.compile(" is no unit known here\\. Did you mean (\\S+ .+)\\?$"),
            Pattern.compile("such as (.+)\\.$"));

    /** Numbers with slips: commas, points, dashes, gaps and units that are missing, twice or unknown. */
    @Provide
    Arbitrary<String> slips() {
        Arbitrary<String> number = Arbitraries.of(
                "65", "6", ".5", "772.1", "1.234", "000", "50", "1e300", "1e-300", "12345", "½", "2 1/2", "0");
        Arbitrary<String> between =
                Arbitraries.of(",", ",", ",", ".", " ", ", ", "-", " - ", " to ", " +- ", "/", " mm ", " g,", "");
        Arbitrary<String> end =
                Arbitraries.of(" mm", " g", "mm", " gg", " milimeter", " onces", "", ",", " mm mm", " of oil", " C");
        return number.flatMap(a -> between.flatMap(b -> number.flatMap(c -> between.flatMap(
                d -> Arbitraries.of(a, a + b + c, a + b + c + d + a).flatMap(text -> end.map(unit -> text + unit))))));
    }

    @Property(tries = 3000)
    void canBeTyped(@ForAll("slips") String text, @ForAll Dimension dimension) {
        String hint = "";
        try {
            QuantityText.parse("the field", text, dimension);
        } catch (Refusal refusal) {
            hint = refusal.hint();
            assertThat(hint).as(text).isNotBlank();
        }
        int met = 0;
        for (Pattern pattern : PROPOSALS) {
            Matcher matcher = pattern.matcher(hint);
            while (matcher.find()) {
                for (int group = 1; group <= matcher.groupCount(); group++) {
                    String proposal = matcher.group(group);
                    if (proposal != null) {
                        met++;
                        assertThatCode(() -> QuantityText.parse("the field", proposal, dimension))
                                .as(text + ": " + proposal)
                                .doesNotThrowAnyException();
                    }
                }
            }
        }
        Statistics.label("proposals").collect(met > 0);
        Statistics.label("proposals").coverage(coverage -> coverage.check(true).percentage(share -> share > 30));
    }
}
