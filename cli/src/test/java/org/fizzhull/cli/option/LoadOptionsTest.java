package org.fizzhull.cli.option;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.reading.StlWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code --on-top} and {@code --inside} from the command line to every answer. */
class LoadOptionsTest {
    private static final String BALL = "sphere(diameter=65 mm)";
    private static final double BALL_CM3 = Math.PI / 6 * 6.5 * 6.5 * 6.5;

    /** Coarse salt, sodium chloride: 2.165 g/cm3 (from memory: halite at room temperature). */
    private static final double SALT = 2.165;

    @TempDir
    Path folder;

    private static JsonNode answer(String command, String... more) throws IOException {
        List<String> words = new ArrayList<>(List.of(command));
        words.addAll(List.of(more));
        words.addAll(List.of("--samples", "128", "--json"));
        CommandRun run = CommandRun.of(words.toArray(new String[0]));
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(AnswerJson.faults(command, run.out())).isEmpty();
        return AnswerJson.read(run.out());
    }

    private static double number(JsonNode node, String key) {
        return node.get(key).asDouble();
    }

    /** Archimedes: limit = water (hull + grains); what fizzes is the ball less the toy; one teaspoon is 5 mL at 1.06. */
    @Test
    void masses() throws IOException {
        JsonNode all = answer(
                "float", "--shape", BALL, "--mass", "130 g", "--on-top", "6 g coarse salt", "--inside", "8 g, 25 mL");
        double water = number(all.get("bath"), "density_g_per_cm3");
        assertThat(number(all, "limit_mass_g")).isCloseTo(water * (BALL_CM3 + 6 / SALT), within(2e-3));
        assertThat(number(all, "volume_cm3")).isCloseTo(BALL_CM3 - 25, within(1e-3));
        assertThat(number(all, "mass_g")).isEqualTo(130);
        assertThat(number(all, "density_g_per_cm3")).isCloseTo((130 - 14) / (BALL_CM3 - 25), within(1e-5));
        assertThat(all.get("on_top").get(0).get("name").asText()).isEqualTo("coarse sea salt");
        assertThat(number(all.get("on_top").get(0), "volume_mL")).isCloseTo(6 / SALT, within(1e-5));
        assertThat(number(all.get("inside").get(0), "volume_mL")).isEqualTo(25);
        assertThat(number(all.get("inside").get(0).get("centre_mm"), 2)).isCloseTo(32.5, within(1e-9));
        assertThat(AnswerJson.codes(all)).contains("on-top", "inside").doesNotContain("inside-heavy", "crystals");
        JsonNode spoon = answer("float", "--shape", BALL, "--mass", "130 g", "--on-top", "1 tsp coarse salt");
        assertThat(number(spoon.get("on_top").get(0), "mass_g")).isCloseTo(5.3, within(1e-9));
        JsonNode stone = answer("float", "--shape", BALL, "--mass", "130 g", "--inside", "8 g, 3 mL");
        assertThat(AnswerJson.codes(stone)).contains("inside-heavy");
        JsonNode density = answer(
                "float", "--shape", BALL, "--density", "0.9 g/cm3", "--on-top", "6 g coarse salt, 2 g rose petals");
        assertThat(number(density, "mass_g")).isCloseTo(0.9 * BALL_CM3 + 8, within(1e-3));
        assertThat(density.get("on_top")).hasSize(2);
    }

    private static double number(JsonNode array, int i) {
        return array.get(i).asDouble();
    }

    /** The heavier end goes down: a ball turns its salt under, and a stone off its middle pulls that side down. */
    @Test
    void whatLiesDown() throws IOException {
        JsonNode salted = answer("float", "--shape", BALL, "--mass", "130 g", "--on-top", "6 g coarse salt");
        JsonNode way = salted.get("attitudes").get(0);
        assertThat(salted.get("attitudes")).hasSize(1);
        assertThat(number(way.get("up"), 2)).isEqualTo(-1);
        assertThat(way.get("topping").asText()).isEqualTo("under water");
        assertThat(way.get("lies").asText()).isEqualTo("its top down, the coarse sea salt under water");
        JsonNode stone = answer("float", "--shape", BALL, "--mass", "130 g", "--inside", "20 g, 8 mL, 20 mm aside");
        assertThat(number(stone.get("attitudes").get(0).get("up"), 0)).isCloseTo(-1, within(1e-5));
        assertThat(stone.get("attitudes").get(0).get("lies").asText()).isEqualTo("on its side");
        JsonNode plain = answer("float", "--shape", BALL, "--mass", "130 g", "--inside", "8 g, 25 mL");
        assertThat(plain.get("attitudes").get(0).get("lies").asText()).isEqualTo("any way up");
        assertThat(plain.get("attitudes").get(0).get("topping").asText()).isEqualTo("none");
    }

    /** A box from a file, twice as long as high: it floats on a wide face, and the words name the side of the file. */
    @Test
    void whichSideOfAMeshShows() throws IOException {
        int[] corners = {
            0, 2, 3, 0, 3, 1, 4, 5, 7, 4, 7, 6, 0, 1, 5, 0, 5, 4, 2, 6, 7, 2, 7, 3, 0, 4, 6, 0, 6, 2, 1, 3, 7, 1, 7, 5
        };
        double[] sides = {0.03, 0.06, 0.06};
        double[] xyz = new double[24];
        for (int i = 0; i < 24; i++) {
            xyz[i] = (((i / 3) >> (i % 3)) & 1) * sides[i % 3];
        }
        byte[] stl = StlWriter.ascii(new TriangleMesh(xyz, corners), "box", 0.001);
        String file = Files.write(folder.resolve("box.stl"), stl).toString();
        String mesh = "mesh(file=\"" + file + "\", unit=mm)";
        List<String> lies = new ArrayList<>();
        answer("float", "--shape", mesh, "--density", "0.9 g/cm3")
                .get("attitudes")
                .forEach(way -> lies.add(way.get("lies").asText()));
        assertThat(lies).containsExactlyInAnyOrder("on its side, its +x side shows", "on its side, its -x side shows");
        CommandRun salted = CommandRun.of(
                "float", "--shape", mesh, "--density", "0.9 g/cm3", "--samples", "0", "--on-top", "2 g coarse salt");
        assertThat(salted.out().replaceAll("\\s+", " "))
                .contains("its +x side shows, the coarse sea salt at the water line");
    }

    /** By addition: fill and load make the damp weight, and everything after it keeps the load. */
    @Test
    void dryCountsTheLoad() throws IOException {
        String[] plain = words("--fill", "120 g", "--air", "21 C, 55 %", "--dry-for", "3 d");
        String[] salted =
                words("--fill", "120 g", "--air", "21 C, 55 %", "--dry-for", "3 d", "--on-top", "6 g coarse salt");
        JsonNode one = answer("dry", plain);
        JsonNode two = answer("dry", salted);
        for (String key : new String[] {"damp_mass_g", "final_mass_g", "label_mass_g"}) {
            assertThat(number(two.get(key), "median")).isCloseTo(number(one.get(key), "median") + 6, within(1e-3));
        }
        // the shape factor of a ball is 1, solved for to 0.2 %
        double ready = number(one.get("ready_after_h"), "median");
        assertThat(number(two.get("ready_after_h"), "median")).isCloseTo(ready, within(2e-3 * ready));
        assertThat(AnswerJson.codes(two)).contains("load-dry");
        // weighings of the salted piece are six grams more, and say the same of its drying
        JsonNode first = answer("dry", with(plain, "--log", log(one, 0)));
        JsonNode second = answer("dry", with(salted, "--log", log(one, 6)));
        assertThat(number(second.get("still_to_go_g"), "median"))
                .isCloseTo(number(first.get("still_to_go_g"), "median"), within(2e-3));
    }

    private String log(JsonNode answer, double more) throws IOException {
        StringBuilder text = new StringBuilder("piece,when,weight_g\n");
        for (int k : new int[] {0, 6, 12}) {
            JsonNode row = answer.get("series").get(k);
            text.append("A,")
                    .append(row.get("hour").asText())
                    .append(" h,")
                    .append(number(row, "mass_g") + more)
                    .append('\n');
        }
        return Files.writeString(folder.resolve("log" + more + ".csv"), text).toString();
    }

    private static String[] words(String... more) {
        return with(new String[] {"--recipe", "src/doc/recipes/lemon.yaml", "--shape", BALL}, more);
    }

    private static String[] with(String[] words, String... more) {
        return Stream.concat(Stream.of(words), Stream.of(more)).toArray(String[]::new);
    }

    /** By addition: a fill of 110 g, salt and toy weigh 124 g; what fizzes is the fill alone. */
    @Test
    void recipesFillRoundTheThing() throws IOException {
        String[] load = {"--on-top", "6 g coarse salt", "--inside", "8 g, 25 mL"};
        JsonNode filled = answer("float", with(words("--fill", "110 g"), load));
        assertThat(number(filled, "mass_g")).isCloseTo(124, within(0.6)); // the prompt reaction takes some tenths
        JsonNode press = answer("press", words("--press", "firm", "--inside", "8 g, 25 mL"));
        for (JsonNode point : press.get("curve")) {
            double expected = number(point, "damp_density_g_per_cm3") * (BALL_CM3 - 25);
            assertThat(number(point, "mass_g")).isCloseTo(expected, within(1e-4 * expected));
        }
        assertThat(AnswerJson.codes(press)).contains("mix-alone");
        JsonNode fizz = answer("fizz", with(words("--mass", "124 g"), load));
        JsonNode without = answer("fizz", words("--mass", "110 g"));
        assertThat(number(fizz, "co2_max_g")).isCloseTo(number(without, "co2_max_g"), within(1e-4));
        assertThat(AnswerJson.codes(fizz)).contains("on-top-apart");
    }

    /** Two things in one piece, and an ingredient of the recipe's own on top. */
    @Test
    void severalThingsAndOwnIngredients() throws IOException {
        JsonNode two = answer(
                "float",
                "--shape",
                BALL,
                "--mass",
                "130 g",
                "--inside",
                "4 g, 5 mL, 20 mm up",
                "--inside",
                "2 g, 3 mL, 45 mm up");
        assertThat(two.get("inside")).hasSize(2);
        assertThat(number(two, "volume_cm3")).isCloseTo(BALL_CM3 - 8, within(1e-3));
        String recipe = Files.readString(Path.of("src/doc/recipes/lemon.yaml"))
                + "\nown ingredients:\n  beach sand: {true density: 2.65 g/cm3, loose density: 1.5 g/cm3}\n";
        Path own = Files.writeString(folder.resolve("own.yaml"), recipe);
        JsonNode sand = answer(
                "float",
                "--shape",
                BALL,
                "--mass",
                "130 g",
                "--recipe",
                own.toString(),
                "--on-top",
                "5.3 g beach sand");
        assertThat(number(sand.get("on_top").get(0), "volume_mL")).isCloseTo(2, within(1e-6));
    }

    /** By hand: 10 pieces and 1 spare, 6 g of salt and a thing of 8 g each. */
    @Test
    void aBatchListsWhatGoesOnAndIn() throws IOException {
        JsonNode extras = answer(
                        "batch",
                        "--recipe",
                        Path.of("src/doc/recipes/lemon.yaml").toString(),
                        "--shape",
                        BALL,
                        "--fill",
                        "140 g",
                        "--pieces",
                        "10",
                        "--on-top",
                        "6 g coarse salt",
                        "--inside",
                        "8 g, 6 mL")
                .get("extras");
        assertThat(extras).hasSize(2);
        assertThat(number(extras.get(0), "each_g")).isEqualTo(6);
        assertThat(number(extras.get(0), "all_g") / 6).isCloseTo(number(extras.get(1), "all_g") / 8, within(1e-9));
        assertThat(number(extras.get(0), "all_g")).isGreaterThanOrEqualTo(6 * 11);
    }

    /** Says itself where it cannot be used. */
    @Test
    void otherCommandsSayWhy() {
        assertThat(CommandRun.of("ingredients", "--on-top", "6 g coarse salt").err())
                .contains("take it");
        assertThat(CommandRun.of("shapes", BALL, "--inside", "8 g, 25 mL").err())
                .contains("float, fizz and dry");
    }
}
