package org.fizzhull.cli.floating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;
import org.fizzhull.shape.listing.ShapeKinds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What cli/docs/contract.md says of the values of {@code float --json}, for every kind, afloat and sunk, drawn and not.
 */
class FloatContractTest {
    /** Six significant digits of a sum of fractions. */
    private static final double DIGITS = 2e-6;

    /** Which notices explain a null, by the key that is null; a share is null for the placed dry hollow by contract. */
    private static final Map<String, List<String>> EXPLAINED = Map.ofEntries(
            Map.entry("boat_limit_mass_g", List.of("no-hollow")),
            Map.entry("aim_for_g", List.of("no-spread", "no-aim", "central-values")),
            Map.entry("never_above_g", List.of("no-spread", "no-aim", "central-values")),
            Map.entry("rise_time_s", List.of("no-rise")),
            Map.entry("fizz_time_s", List.of("no-fizz-time")),
            Map.entry("fizz_lost_percent", List.of("no-fizz-lost")),
            Map.entry("measured", List.of("not-measured")),
            Map.entry("likelihood", List.of("central-values")),
            Map.entry("likelihood_to_the_end", List.of("central-values")),
            Map.entry("floats_to_the_end", List.of("central-values")),
            Map.entry("share_of_batch", List.of("no-batch")),
            Map.entry("measure_next", List.of("nothing-to-measure")),
            Map.entry("floats_at_once", List.of("central-values")),
            Map.entry("rises_later", List.of("central-values")),
            Map.entry("stays_down", List.of("central-values")),
            Map.entry("sinks_later", List.of("central-values", "still-water")),
            Map.entry("error", List.of("central-values")),
            Map.entry("mass_interval_g", List.of("weighed-piece")),
            Map.entry("share", List.of("boat")));

    static List<List<String>> questions() {
        List<List<String>> all = new ArrayList<>();
        for (var kind : ShapeKinds.all()) {
            for (String density : List.of("0.7 g/cm3", "0.98 g/cm3 +- 0.02 g/cm3", "1.25 g/cm3")) {
                all.add(List.of(
                        "float", "--json", "--shape", kind.example(), "--density", density, "--samples", "128"));
            }
            all.add(List.of(
                    "float",
                    "--json",
                    "--shape",
                    kind.example(),
                    "--density",
                    "0.6 g/cm3",
                    "--samples",
                    "128",
                    "--no-fizz"));
            all.add(List.of("float", "--json", "--shape", kind.example(), "--density", "0.9 g/cm3", "--samples", "0"));
        }
        return all;
    }

    @ParameterizedTest
    @MethodSource("questions")
    void keepsWhatIsPromised(List<String> words) throws IOException {
        CommandRun run = CommandRun.of(words.toArray(new String[0]));
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.out()).doesNotContain("NaN", "Infinity", "\u00A0");
        assertThat(run.err()).doesNotContain("\u00A0", "Exception");
        assertThat(AnswerJson.faults("float", run.out())).isEmpty();
        JsonNode answer = AnswerJson.read(run.out());
        nullsAreExplained(answer);
        probabilitiesAddUp(answer.get("probability"));
        attitudesAreSound(answer);
        driversAreSorted(answer.get("drivers"));
        double spare =
                answer.get("limit_mass_g").asDouble() - answer.get("mass_g").asDouble();
        assertThat(answer.get("spare_g").asDouble()).isCloseTo(spare, within(2e-3));
        JsonNode atDrop = answer.get("spare_at_drop_g");
        assertThat(atDrop.get("low").asDouble())
                .isLessThanOrEqualTo(atDrop.get("median").asDouble());
        assertThat(atDrop.get("median").asDouble())
                .isLessThanOrEqualTo(atDrop.get("high").asDouble());
    }

    private static void nullsAreExplained(JsonNode answer) {
        Set<String> nulls = new TreeSet<>();
        collectNulls(answer, nulls);
        List<String> codes = AnswerJson.codes(answer);
        for (String key : nulls) {
            assertThat(EXPLAINED).containsKey(key);
            assertThat(codes).as(key).containsAnyElementsOf(EXPLAINED.get(key));
        }
        assertThat(codes).doesNotHaveDuplicates();
    }

    private static void collectNulls(JsonNode node, Set<String> nulls) {
        node.properties().forEach(field -> {
            if (field.getValue().isNull()) {
                nulls.add(field.getKey());
            }
            collectNulls(field.getValue(), nulls);
        });
        if (node.isArray()) {
            node.forEach(element -> collectNulls(element, nulls));
        }
    }

    private static void probabilitiesAddUp(JsonNode p) {
        if (p.get("floats_at_once").isNull()) {
            return;
        }
        double floats = p.get("floats_at_once").asDouble();
        assertThat(p.get("floats_to_the_end").asDouble()).isLessThanOrEqualTo(floats);
        double sum =
                floats + p.get("rises_later").asDouble() + p.get("stays_down").asDouble();
        assertThat(sum).isCloseTo(1, within(DIGITS));
        assertThat(p.get("sinks_later").asDouble(0)).isLessThanOrEqualTo(floats + DIGITS);
    }

    /** Analytic: Archimedes for a solid body, and a unit vector is one long. */
    private static void attitudesAreSound(JsonNode answer) {
        double shares = 0;
        boolean drawnShares = false;
        for (JsonNode attitude : answer.get("attitudes")) {
            double length = 0;
            for (JsonNode component : attitude.get("up")) {
                length += component.asDouble() * component.asDouble();
            }
            assertThat(length).isCloseTo(1, within(1e-5));
            if (attitude.get("cavity").asText().equals("none")
                    && !answer.get("shape").asText().startsWith("geode")) {
                double immersed = answer.get("mass_g").asDouble()
                        / answer.get("limit_mass_g").asDouble();
                assertThat(attitude.get("immersed_fraction").asDouble()).isCloseTo(immersed, within(1e-5));
            }
            if (!attitude.get("share").isNull()) {
                drawnShares = true;
                shares += attitude.get("share").asDouble();
            }
        }
        if (drawnShares) {
            assertThat(shares).isCloseTo(1, within(1e-5));
        }
    }

    private static void driversAreSorted(JsonNode drivers) {
        double before = Double.POSITIVE_INFINITY;
        for (JsonNode driver : drivers) {
            assertThat(driver.get("total").asDouble()).isLessThanOrEqualTo(before);
            before = driver.get("total").asDouble();
        }
    }

    @Test
    void aSinkingPieceIsAnAnswerWithoutAttitudes() throws IOException {
        CommandRun run = CommandRun.of(
                "float",
                "--shape",
                "ball(diameter=65 mm)",
                "--mass",
                "200 g",
                "--no-fizz",
                "--json",
                "--samples",
                "128");

        assertThat(run.status()).isZero();
        JsonNode answer = AnswerJson.read(run.out());
        assertThat(answer.get("attitudes")).isEmpty();
        assertThat(answer.get("probability").get("stays_down").asDouble()).isEqualTo(1);
        assertThat(answer.get("likelihood").asText()).isEqualTo("exceptionally unlikely");
    }
}
