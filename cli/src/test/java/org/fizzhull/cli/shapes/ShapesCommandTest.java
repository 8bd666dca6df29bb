package org.fizzhull.cli.shapes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;
import org.fizzhull.shape.listing.ShapeKinds;
import org.junit.jupiter.api.Test;

class ShapesCommandTest {
    private static JsonNode answer(String... words) throws IOException {
        CommandRun run = CommandRun.of(words);
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(AnswerJson.faults("shapes", run.out())).isEmpty();
        return AnswerJson.read(run.out());
    }

    /** Analytic: the ball of 65 mm, and what is left of it at inward depth d: the ball of radius R - d. */
    @Test
    void theBall() throws IOException {
        JsonNode ball = answer("shapes", "sphere(diameter=65 mm)", "--json");
        assertThat(ball.get("volume_cm3").asDouble()).isCloseTo(143.793, within(5e-4));
        assertThat(ball.get("surface_cm2").asDouble()).isCloseTo(132.732, within(5e-4));
        assertThat(ball.get("centroid_height_mm").asDouble()).isEqualTo(32.5);
        assertThat(ball.get("deepest_mm").asDouble()).isEqualTo(32.5);
        assertThat(ball.get("float_limit_g").asDouble()).isCloseTo(142.8, within(0.05));
        for (JsonNode row : ball.get("depth_profile")) {
            double radius = 3.25 - row.get("depth_mm").asDouble() / 10;
            assertThat(row.get("volume_cm3").asDouble()).isCloseTo(4 * Math.PI / 3 * Math.pow(radius, 3), within(2e-3));
            assertThat(row.get("surface_cm2").asDouble()).isCloseTo(4 * Math.PI * radius * radius, within(2e-3));
        }
    }

    @Test
    void everyKindMeetsTheSchema() throws IOException {
        for (var kind : ShapeKinds.all()) {
            JsonNode shape = answer("shapes", kind.example(), "--json");
            assertThat(shape.get("shape").asText()).startsWith(kind.name() + "(");
        }
        assertThat(answer("shapes", "--json").get("kinds"))
                .hasSize(ShapeKinds.all().size() + ShapeKinds.ofFiles().size());
    }

    @Test
    void theListShowsEveryKindWithAnExampleThatCanBeTyped() {
        String list = CommandRun.of("shapes").out();
        for (var kind : ShapeKinds.all()) {
            assertThat(list).contains(kind.usage());
            assertThat(CommandRun.of("shapes", kind.example()).status()).isZero();
        }
    }

    /** By definition: what the list shows in inches is typed back as it stands, and is a shape of that kind. */
    @Test
    void theListInInchesCanBeTyped() throws IOException {
        String list = CommandRun.of("shapes", "--units", "us").out();
        for (var kind : ShapeKinds.all()) {
            Matcher row = Pattern.compile("  (" + kind.name() + "\\(.*\\))\n").matcher(list);
            assertThat(row.find()).as("%s in %s", kind.name(), list).isTrue();
            assertThat(row.group(1)).doesNotContain(" mm", " g");
            String typed = row.group(1).replaceAll("\\[.*\\]", "");
            assertThat(answer("shapes", typed, "--json").get("shape").asText()).startsWith(kind.name() + "(");
        }
    }
}
