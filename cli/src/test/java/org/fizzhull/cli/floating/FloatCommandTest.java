package org.fizzhull.cli.floating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Isolated("sets the default locale")
class FloatCommandTest {
    private static final String BALL = "sphere(diameter=65 mm)";

    private static JsonNode ball(String... more) throws IOException {
        List<String> words = new ArrayList<>(List.of("float", "--shape", BALL, "--json"));
        words.addAll(List.of(more));
        return answer(words.toArray(new String[0]));
    }

    private static JsonNode answer(String... words) throws IOException {
        CommandRun run = CommandRun.of(words);
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(AnswerJson.faults("float", run.out())).isEmpty();
        return AnswerJson.read(run.out());
    }

    @Test
    void theSchemaCatchesAMissingKeyAndAWrongType() throws IOException {
        ObjectNode answer = (ObjectNode) ball("--mass", "138 g", "--samples", "128");
        for (String key : List.of("limit_mass_g", "attitudes", "aim_for_g", "notices")) {
            ObjectNode without = answer.deepCopy();
            without.remove(key);
            assertThat(AnswerJson.faults("float", without.toString())).as(key).isNotEmpty();
        }
        assertThat(AnswerJson.faults(
                        "float", answer.deepCopy().put("likelihood", "sure").toString()))
                .isNotEmpty();
        assertThat(AnswerJson.faults(
                        "float", answer.deepCopy().put("mass_g", "138").toString()))
                .isNotEmpty();
    }

    /**
     * Limits and rim limits as a makers' table has them, computed apart from this library with water of 0.99297 g/cm3; that
     * of the geode by Archimedes: its shell of 97.23 cm3 and 20 g of salt of 2.165 g/cm3.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "sphere(diameter=65 mm) | 142.8 | ",
                "sphere(diameter=65 mm, seam=3 mm) | 152.7 | ",
                "dome(diameter=80 mm) | 133.1 | ",
                "bowl(diameter=90 mm, wall=15 mm) | 133.4 | 190",
                "geode(diameter=80 mm, wall=14 mm, crystals=20 g) | 105.7 | 133",
                "ring(diameter=90 mm, tube=30 mm) | 132.3 | ",
                "star(points=5, diameter=80 mm, inner=45 mm, height=30 mm) | 78.8 | "
            })
    void limitsOfMoulds(String shape, double limit, Double rim) throws IOException {
        JsonNode answer = answer("float", "--json", "--shape", shape, "--density", "0.95 g/cm3", "--samples", "0");
        assertThat(answer.get("limit_mass_g").asDouble()).isCloseTo(limit, within(0.051));
        if (rim == null) {
            assertThat(answer.get("boat_limit_mass_g").isNull()).isTrue();
        } else {
            assertThat(answer.get("boat_limit_mass_g").asDouble()).isCloseTo(rim, within(0.51));
            assertThat(answer.get("attitudes").get(0).get("cavity").asText()).isEqualTo("dry");
            assertThat(answer.get("attitudes").get(0).get("share").isNull()).isTrue();
        }
    }

    @Test
    void everyNullHasANotice() throws IOException {
        JsonNode answer = ball("--mass", "120 g", "--samples", "128");
        List<String> codes = AnswerJson.codes(answer);
        assertThat(answer.get("boat_limit_mass_g").isNull()).isTrue();
        assertThat(answer.get("aim_for_g").isNull()).isTrue();
        assertThat(codes).contains("no-hollow", "no-spread", "usual-mix");
        if (answer.get("rise_time_s").isNull()) {
            assertThat(codes).contains("no-rise");
        }
    }

    /** cli/docs/contract.md, 1: six significant digits; more than 60 numbers were looked at. */
    @Test
    void numbersHaveSixSignificantDigits() throws IOException {
        int met = digits(ball("--mass", "138.123456 g", "--samples", "128"));
        assertThat(met).isGreaterThan(60);
    }

    private static int digits(JsonNode node) {
        int met = 0;
        Iterator<JsonNode> all = node.elements();
        while (all.hasNext()) {
            met += digits(all.next());
        }
        if (node.isNumber()) {
            String mantissa = node.decimalValue()
                    .stripTrailingZeros()
                    .unscaledValue()
                    .abs()
                    .toString();
            assertThat(mantissa.length()).as(node.toString()).isLessThanOrEqualTo(6);
            return 1;
        }
        return met;
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG", "en-US"})
    void sameBytesInAnyLocaleAndOnAnyThreads(String tag) {
        Locale before = Locale.getDefault();
        String[] alone = {
            "float", "--shape", BALL, "--mass", "138 g +- 4 g", "--json", "--samples", "1024", "--threads", "1"
        };
        String[] many = {
            "float", "--shape", BALL, "--mass", "138 g +- 4 g", "--json", "--samples", "1024", "--threads", "7"
        };
        String expected = CommandRun.of(alone).out();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertThat(CommandRun.of(alone).out()).isEqualTo(expected);
            assertThat(CommandRun.of(many).out()).isEqualTo(expected);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void noticesGoToStandardErrorWithJsonAndNowhereWhenQuiet() {
        CommandRun json = CommandRun.of("float", "--shape", BALL, "--mass", "138 g", "--json");
        assertThat(json.err()).contains("fizzhull: No recipe given");
        CommandRun quiet = CommandRun.of("float", "--shape", BALL, "--mass", "138 g", "--json", "--quiet");
        assertThat(quiet.err()).isEmpty();
        assertThat(quiet.out()).isEqualTo(json.out());
    }

    @Test
    void textHasOneSentenceFirstAndTheCautionLast() {
        String text = CommandRun.of("float", "--shape", BALL, "--mass", "138 g").out();
        assertThat(text)
                .startsWith(
                        "Very likely: 138 g in a 65 mm ball, to float to the end: 4.8 g below its float\nlimit of 142.8 g.");
        assertThat(text).endsWith("Caution: Floating is not a sign that a piece is dry or safe.\n");
        assertThat(text).doesNotContainPattern("[\\u0370-\\u03FF]").doesNotContain("Sobol", "J. ", "prior");
        assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
        String brief = CommandRun.of("float", "--shape", BALL, "--mass", "138 g", "--quiet")
                .out();
        assertThat(brief.lines()).hasSize(3);
        assertThat(brief).contains("Caution: ");
    }

    @Test
    void explainShowsEveryPriorWithItsSource() {
        String text = CommandRun.of("float", "--shape", BALL, "--mass", "138 g", "--explain", "--samples", "128")
                .out();
        for (var row : org.fizzhull.forecast.question.Factors.standard().rows()) {
            assertThat(text).contains(row.input().label());
        }
        assertThat(text).contains("[assumed]", "[from memory]", "weakly supported");
    }

    @Test
    void saltAndMeasuringAreHeard() throws IOException {
        double fresh =
                ball("--mass", "138 g", "--samples", "0").get("limit_mass_g").asDouble();
        // Laliberte and Cooper (2004) at 1 %: 0.684 kg/m3 per g/L at 38 C, so 1.5 kg in 150 L lift the limit of 143.79
        // cm3 by 0.98 g.
        double salty = ball("--mass", "138 g", "--samples", "0", "--bath-salt", "1.5 kg")
                .get("limit_mass_g")
                .asDouble();
        assertThat(salty - fresh).isCloseTo(0.98, within(0.01));
        JsonNode calipers = ball("--mass", "138 g", "--no-fizz").get("spare_at_drop_g");
        JsonNode nominal =
                ball("--mass", "138 g", "--no-fizz", "--measured", "nominal").get("spare_at_drop_g");
        // Analytic: rho S/2 times 1.96 mm, 12.92 g to each side, where calipers leave 2.58 g beside 1 g of the scale.
        double wide = (nominal.get("high").asDouble() - nominal.get("low").asDouble()) / 2;
        assertThat(wide).isCloseTo(Math.hypot(12.92, Math.hypot(0.98, 0.10)), within(0.3));
        double narrow = (calipers.get("high").asDouble() - calipers.get("low").asDouble()) / 2;
        assertThat(narrow).isCloseTo(Math.hypot(2.583, Math.hypot(0.98, 0.10)), within(0.06));
    }

    @Test
    void helpNamesEveryOption() {
        String help = CommandRun.of("float", "--help").out();
        for (String option : List.of(
                "--shape",
                "--mass",
                "--density",
                "--bath",
                "--bath-salt",
                "--into-bath",
                "--no-fizz",
                "--measured",
                "--chart",
                "--json",
                "--quiet",
                "--explain",
                "--seed",
                "--samples",
                "--threads")) {
            assertThat(help).contains(option + " ");
        }
        for (Map.Entry<String, Integer> line :
                Map.of("--help", 0, "--version", 0).entrySet()) {
            assertThat(CommandRun.of(line.getKey()).status()).isEqualTo(line.getValue());
        }
        CommandRun nothing = CommandRun.of();
        assertThat(nothing.status()).isEqualTo(2);
        assertThat(nothing.out()).contains("float", "shapes");
    }
}
