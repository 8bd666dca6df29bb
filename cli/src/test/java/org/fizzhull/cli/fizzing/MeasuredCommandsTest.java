package org.fizzhull.cli.fizzing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;
import org.junit.jupiter.api.Test;

/** What a stopwatch and a scale do to the answers of {@code float}, {@code fizz}, {@code press} and {@code batch}. */
class MeasuredCommandsTest {
    private static final String BALL = "sphere(diameter=65 mm)";
    private static final String LEMON = Path.of("src/doc/recipes", "lemon.yaml").toString();

    private static CommandRun run(String command, String... more) {
        List<String> words = new ArrayList<>(List.of(command, "--shape", BALL));
        words.addAll(List.of(more));
        CommandRun run = CommandRun.of(words.toArray(new String[0]));
        assertThat(run.status()).as(run.err()).isZero();
        return run;
    }

    private static JsonNode json(String command, String... more) throws IOException {
        List<String> words = new ArrayList<>(List.of(more));
        words.add("--json");
        CommandRun run = run(command, words.toArray(new String[0]));
        assertThat(AnswerJson.faults(command, run.out())).isEmpty();
        return AnswerJson.read(run.out());
    }

    private static double width(JsonNode interval) {
        return interval.get("high").asDouble() - interval.get("low").asDouble();
    }

    /**
     * The numbers are those that were put in; a piece of 150 g that came up makes a lighter one of 142 g likelier to
     * float.
     */
    @Test
    void aRiseOfAHeavierPieceSettlesALighterOne() throws IOException {
        String[] asked = {"--mass", "142 g", "--samples", "512", "--measured-rise", "95 s at 150 g, 50 mm left"};
        JsonNode answer = json("float", asked);
        JsonNode measured = answer.get("measured");
        assertThat(measured.get("rise").get("mass_g").asDouble()).isEqualTo(150);
        assertThat(measured.get("rise").get("left_mm").asDouble()).isEqualTo(50);
        assertThat(measured.get("fizz").isNull()).isTrue();
        double before = measured.get("before").get("floats_at_once").asDouble();
        assertThat(answer.get("probability").get("floats_at_once").asDouble()).isGreaterThan(before + 0.1);
        assertThat(width(answer.get("spare_at_drop_g")))
                .isLessThan(0.5 * width(measured.get("before").get("spare_at_drop_g")));
        assertThat(answer.get("drivers").get(0).get("total").isNull()).isTrue();
        String text = run("float", asked).out();
        assertThat(text).contains("your stopwatch", "up after 95 s at 150 g, 50 mm left");
        List<String> explained = new ArrayList<>(List.of(asked));
        explained.add("--explain");
        assertThat(run("float", explained.toArray(new String[0])).out())
                .contains("what is left", "draws that agree", "first order", "same bath");
    }

    /** ANALYTIC: the weighed piece itself is asked about, so that its weight is the answer: of the mix, and said so. */
    @Test
    void theScaleReadsTheMixWithoutTheThingInside() throws IOException {
        String[] asked = {
            "--recipe",
            LEMON,
            "--inside",
            "8 g, 10 mL",
            "--press",
            "30 kPa",
            "--samples",
            "512",
            "--weighed",
            "131 g at 30 kPa"
        };
        assertThat(json("press", asked).get("damp_mass_g").get("median").asDouble())
                .isCloseTo(131, within(1.0));
        List<String> explained = new ArrayList<>(List.of(asked));
        explained.add("--explain");
        assertThat(run("press", explained.toArray(new String[0])).out().replaceAll("\\s+", " "))
                .contains("without what is on top or inside");
    }

    /**
     * By definition: the measured 250 s is the middle, and 95 % lie within 2 x 1.96 x 6 s and a little more for the
     * next piece.
     */
    @Test
    void aFizzTimeIsMetByFloatAndFizz() throws IOException {
        for (String command : List.of("float", "fizz")) {
            JsonNode answer = json(
                    command,
                    "--recipe",
                    LEMON,
                    "--mass",
                    "142 g",
                    "--samples",
                    "512",
                    "--measured-fizz",
                    "4 min 10 s +- 6 s");
            JsonNode fizz = answer.get("fizz_time_s");
            assertThat(fizz.get("median").asDouble()).isCloseTo(250, within(4.0));
            assertThat(width(fizz)).isLessThan(35);
            assertThat(answer.get("measured").get("fizz").get("spread_s").asDouble())
                    .isCloseTo(6, within(1e-9));
            assertThat(answer.get("measured").get("fizz").get("mass_g").isNull())
                    .isTrue();
        }
        assertThat(run("fizz", "--recipe", LEMON, "--mass", "142 g", "--samples", "128", "--measured-fizz", "250 s")
                        .out())
                .contains("your stopwatch", "gone after 4 min 10 s");
    }

    /** "firm" is 30 kPa by definition (core/docs/physics/packing.md, 6); a measurement narrows. */
    @Test
    void aWeighedPieceNarrowsPressFloatAndBatch() throws IOException {
        String[] hard = {"--recipe", LEMON, "--press", "hard", "--weighed", "141 g at firm"};
        JsonNode press = json("press", hard);
        JsonNode before = press.get("measured").get("before").get("damp_mass_g");
        assertThat(width(press.get("damp_mass_g"))).isLessThan(0.4 * width(before));
        assertThat(press.get("measured").get("weighed").get("pressure_kPa").asDouble())
                .isCloseTo(30, within(1e-9));
        JsonNode other = json(
                "float",
                "--recipe",
                LEMON,
                "--press",
                "firm",
                "--samples",
                "512",
                "--weighed",
                "118 g at firm in dome(diameter=80 mm)");
        JsonNode known = other.get("measured");
        assertThat(known.get("weighed").get("shape").asText()).startsWith("dome");
        assertThat(width(other.get("spare_at_drop_g")))
                .isLessThan(0.75 * width(known.get("before").get("spare_at_drop_g")));
        String lighter = run(
                        "batch",
                        "--recipe",
                        LEMON,
                        "--press",
                        "firm",
                        "--pieces",
                        "12",
                        "--weighed",
                        "130 g",
                        "--explain")
                .out();
        assertThat(lighter).containsPattern("of 1(29|30|31)(\\.\\d)? g each");
    }
}
