package org.fizzhull.cli.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;
import org.fizzhull.cli.file.FileAccess;
import org.fizzhull.cli.file.RecipeFile;
import org.fizzhull.quantity.Measures;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code press}, {@code batch}, {@code ingredients} and {@code float --recipe} on the workshop's own recipes. */
@Isolated("sets the default locale")
class RecipeCommandsTest {
    private static final String BALL = "sphere(diameter=65 mm)";

    @TempDir
    Path folder;

    private static String recipe(String name) {
        return Path.of("src/doc/recipes", name + ".yaml").toString();
    }

    private static CommandRun run(String command, String name, String... more) {
        List<String> words = new ArrayList<>(List.of(command, "--recipe", recipe(name)));
        words.addAll(List.of(more));
        return CommandRun.of(words.toArray(new String[0]));
    }

    private static JsonNode json(String schema, CommandRun run) throws IOException {
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(AnswerJson.faults(schema, run.out())).isEmpty();
        return AnswerJson.read(run.out());
    }

    /** The files are the example recipes of the library. */
    @Test
    void filesAndLibraryHoldTheSameRecipes() {
        for (String name : List.of("lemon", "harbour-clay", "sea-foam")) {
            RecipeFile file = RecipeFile.read(FileAccess.ANY, "--recipe", recipe(name), Measures.US_LEGAL);
            Recipe same = switch (name) {
                case "lemon" -> ExampleRecipes.lemon(file.table());
                case "harbour-clay" -> ExampleRecipes.harbourClay(file.table());
                default -> ExampleRecipes.seaFoam(file.table());
            };
            assertThat(file.recipe().name()).isEqualTo(same.name());
            assertThat(file.recipe().dry()).extracting(Recipe.Part::mass).isEqualTo(masses(same.dry()));
            assertThat(file.recipe().wet()).extracting(Recipe.Part::mass).isEqualTo(masses(same.wet()));
        }
    }

    private static List<Double> masses(List<Recipe.Part> parts) {
        return parts.stream().map(Recipe.Part::mass).toList();
    }

    /** One weight from three commands, to the gram; what the bath sees is less by the gas of the prompt reaction. */
    @ParameterizedTest
    @ValueSource(strings = {"lemon", "harbour-clay", "sea-foam"})
    void pressBatchAndFloatAgreeToTheGram(String name) throws IOException {
        JsonNode pressed =
                json("press", run("press", name, "--shape", BALL, "--press", "firm", "--samples", "0", "--json"));
        double mass = pressed.get("damp_mass_g").get("median").asDouble();
        JsonNode batch = json(
                "batch",
                run("batch", name, "--shape", BALL, "--press", "firm", "--pieces", "9", "--samples", "0", "--json"));
        assertThat(batch.get("damp_mass_g").asDouble()).isCloseTo(mass, within(1e-3));
        JsonNode drawn = json("press", run("press", name, "--shape", BALL, "--press", "firm", "--json"));
        JsonNode planned =
                json("batch", run("batch", name, "--shape", BALL, "--press", "firm", "--pieces", "9", "--json"));
        assertThat(planned.get("damp_mass_g"))
                .isEqualTo(drawn.get("damp_mass_g").get("median"));
        assertThat(planned.get("feel")).isEqualTo(drawn.get("feel"));
        assertThat(planned.get("feel_share")).isEqualTo(drawn.get("feel_share"));
        String fill = String.format(Locale.ROOT, "%.3f g", mass);
        for (String[] how : new String[][] {{"--press", "firm"}, {"--fill", fill}}) {
            JsonNode floats =
                    json("float", run("float", name, "--shape", BALL, how[0], how[1], "--samples", "0", "--json"));
            assertThat(floats.get("mass_g").asDouble())
                    .isCloseTo(mass, within(1.0))
                    .isLessThanOrEqualTo(mass + 1e-3);
        }
        JsonNode filled =
                json("press", run("press", name, "--shape", BALL, "--fill", fill, "--samples", "0", "--json"));
        assertThat(filled.get("pressure_kPa").get("median").asDouble()).isCloseTo(30, within(0.05));
    }

    /** By hand: 12 kg on the 33.18 cm2 of a 65 mm ball are 12 x 9.80665/0.0033183 = 35.464 kPa. */
    @Test
    void aWeightLeantOnTheMouldIsAPressure() throws IOException {
        JsonNode leant =
                json("press", run("press", "lemon", "--shape", BALL, "--press", "12 kg", "--samples", "0", "--json"));
        assertThat(leant.get("pressure_kPa").get("median").asDouble()).isCloseTo(35.464, within(0.01));
        assertThat(leant.get("hand_force_N").get("median").asDouble()).isCloseTo(12 * 9.80665, within(0.01));
        assertThat(run("press", "lemon", "--shape", BALL, "--press", "9000 kg").status())
                .isEqualTo(2);
    }

    /** The rack of the text is that of the JSON object and of the picture, piece by piece. */
    @Test
    void oneRack() throws IOException {
        JsonNode batch =
                json("batch", run("batch", "lemon", "--shape", BALL, "--press", "firm", "--pieces", "40", "--json"));
        String text = run("batch", "lemon", "--shape", BALL, "--press", "firm", "--pieces", "40", "--explain")
                .out();
        String size = Math.round(batch.get("rack_length_cm").asDouble()) + " cm x "
                + Math.round(batch.get("rack_width_cm").asDouble()) + " cm";
        assertThat(text).contains(size);
        assertThat(batch.get("rack_area_m2").asDouble())
                .isCloseTo(
                        batch.get("rack_length_cm").asDouble()
                                * batch.get("rack_width_cm").asDouble()
                                / 1e4,
                        within(1e-6));
    }

    /** A fill far above the float limit (142.8 g of a 65 mm ball in 38 C water, less what gas lifts) is said to sink. */
    @Test
    void aBatchThatSinksSaysSo() throws IOException {
        String text = run("batch", "lemon", "--shape", BALL, "--fill", "190 g", "--pieces", "40", "--quiet")
                .out();
        assertThat(text).contains("that a piece sinks before the end").contains("sodium bicarbonate");
        JsonNode batch =
                json("batch", run("batch", "lemon", "--shape", BALL, "--fill", "190 g", "--pieces", "40", "--json"));
        assertThat(batch.get("floats_to_the_end").asDouble()).isLessThan(0.1);
    }

    /** Without acid nothing fizzes, and every command says so first. */
    @Test
    void noAcidIsToldFirst() {
        String[] change = {"--change", "citric acid = 0 g", "--shape", BALL, "--press", "firm", "--samples", "256"};
        List<String> press = new ArrayList<>(List.of("press", "--recipe", recipe("lemon")));
        press.addAll(List.of(change));
        assertThat(CommandRun.of(press.toArray(new String[0])).out()).startsWith("It does not fizz");
        List<String> batch = new ArrayList<>(List.of("batch", "--recipe", recipe("lemon"), "--pieces", "5"));
        batch.addAll(List.of(change));
        assertThat(CommandRun.of(batch.toArray(new String[0])).out())
                .startsWith("It does not fizz")
                .doesNotContain("hurr");
    }

    /** Every null has its notice, and nothing of a piece is told without one. */
    @Test
    void nullsAreExplained() throws IOException {
        Map<String, String> explained = Map.ofEntries(
                Map.entry("shape", "no-mould"),
                Map.entry("pressure_kPa", "no-press"),
                Map.entry("damp_mass_g", "no-press"),
                Map.entry("feel", "no-press"));
        JsonNode bare = json("press", run("press", "lemon", "--json"));
        List<String> codes = AnswerJson.codes(bare);
        explained.forEach((key, code) -> {
            assertThat(bare.get(key).isNull()).as(key).isTrue();
            assertThat(codes).contains(code);
        });
        assertThat(bare.get("curve").get(3).get("mass_g").isNull()).isTrue();
        JsonNode batch =
                json("batch", run("batch", "sea-foam", "--shape", BALL, "--fill", "140 g", "--pieces", "3", "--json"));
        assertThat(batch.get("ready_after_h").isNull()).isTrue();
        assertThat(batch.get("cost_each").isNull()).isTrue();
        List<String> batchCodes = AnswerJson.codes(batch);
        assertThat(batchCodes).contains("not-dried", "no-prices");
    }

    /** By hand: 12 kg of pieces are no single mix; masses of one mix times mixes are the total; spares beyond the wish. */
    @Test
    void aBatchAddsUp() throws IOException {
        JsonNode batch =
                json("batch", run("batch", "lemon", "--shape", BALL, "--fill", "146 g", "--pieces", "80", "--json"));
        double sum = 0;
        for (JsonNode line : batch.get("ingredients")) {
            sum += line.get("mass_g").asDouble();
        }
        int mixes = batch.get("mixes").asInt();
        assertThat(sum * mixes).isCloseTo(batch.get("total_g").asDouble(), within(0.1));
        assertThat(batch.get("mix_g").asDouble()).isLessThanOrEqualTo(2000);
        assertThat(mixes * batch.get("pieces_per_mix").asInt())
                .isEqualTo(80 + batch.get("spare_pieces").asInt());
        assertThat(batch.get("cost_each").asDouble()).isPositive();
        // 17 of 527 g of the recipe are liquid
        assertThat(batch.get("liquid_percent").asDouble()).isCloseTo(100 * 17 / 527.0, within(1e-4));
    }

    /** A page a person works from: boxes to tick, where one may stop, no mix above 2 kg, no cup in decimals. */
    @Test
    void aBatchReadsLikeABench() {
        String page = run("batch", "lemon", "--shape", BALL, "--press", "firm", "--pieces", "48", "--explain")
                .out();
        assertThat(page).contains("[ ] ", "you may stop here", "mask", "almond", "rack");
        assertThat(page).doesNotContainPattern("\\d\\.\\d+ cups?").doesNotContain("null", "NaN");
        String dear = run(
                        "batch",
                        "lemon",
                        "--change",
                        "lemon fragrance +10 g",
                        "--shape",
                        BALL,
                        "--press",
                        "firm",
                        "--pieces",
                        "4")
                .out();
        assertThat(dear)
                .contains("lemon fragrance is 2.44 % of the dried piece"); // 13 of 533 g without the water, limit 1 %
    }

    /** Common practice, no source: clay makes it heavier, pressing harder too; without liquid it crumbles. */
    @Test
    void changesGoTheMakersWay() throws IOException {
        double firm = mass("--press", "firm");
        assertThat(mass("--press", "hard")).isGreaterThan(firm);
        assertThat(mass("--press", "firm", "--change", "corn starch = 0 g", "--change", "kaolin = 60 g"))
                .isGreaterThan(firm);
        JsonNode dry = json(
                "press",
                run(
                        "press",
                        "lemon",
                        "--shape",
                        BALL,
                        "--press",
                        "firm",
                        "--json",
                        "--samples",
                        "128",
                        "--change",
                        "water = 0 g",
                        "--change",
                        "sweet almond oil = 0 g",
                        "--change",
                        "lemon fragrance = 0 g"));
        assertThat(dry.get("feel").asText()).isEqualTo("crumbles");
        assertThat(dry.get("working_time_min").isNull()).isTrue();
    }

    private static double mass(String... how) throws IOException {
        List<String> words = new ArrayList<>(List.of("--shape", BALL, "--samples", "0", "--json"));
        words.addAll(List.of(how));
        return json("press", run("press", "lemon", words.toArray(new String[0])))
                .get("damp_mass_g")
                .get("median")
                .asDouble();
    }

    @Test
    void theSameBytesOnAnyNumberOfThreadsAndInAnyLocale() {
        String[] words = {"--shape", BALL, "--press", "firm", "--json", "--samples", "32768", "--threads", "1"};
        String one = run("press", "lemon", words).out();
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            words[words.length - 1] = "4";
            assertThat(run("press", "lemon", words).out()).isEqualTo(one);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void thePictureIsWritten() throws IOException {
        Path picture = folder.resolve("press.svg");
        assertThat(run("press", "lemon", "--shape", BALL, "--press", "firm", "--chart", picture.toString())
                        .status())
                .isZero();
        assertThat(Files.readString(picture))
                .contains("<title>", "polyline", "firm")
                .doesNotContain("NaN");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "missing-option|press --shape {ball}",
                "missing-option|press --change kaolin +2 g",
                "missing-option|float --shape {ball} --fill 146 g",
                "missing-option|float --shape {ball} --recipe {lemon}",
                "missing-option|press --recipe {lemon} --press firm",
                "missing-option|batch --recipe {lemon} --pieces 3 --press firm",
                "missing-option|batch --recipe {lemon} --shape {ball} --press firm",
                "missing-option|batch --recipe {lemon} --shape {ball} --pieces 3",
                "conflict|press --recipe {lemon} --shape {ball} --press firm --fill 146 g",
                "conflict|float --recipe {lemon} --shape {ball} --mass 138 g --fill 146 g",
                "does-not-fit|press --recipe {lemon} --shape {ball} --fill 300 g",
                "does-not-fit|float --recipe {lemon} --shape {ball} --fill 300 g",
                "does-not-fit|batch --recipe {lemon} --shape {ball} --pieces 3 --fill 300 g",
                "out-of-range|press --recipe {lemon} --shape {ball} --fill 3 g",
                "out-of-range|press --recipe {lemon} --shape {ball} --press 3 MPa",
                "unknown-word|press --recipe {lemon} --shape {ball} --press gently",
                "wrong-dimension|press --recipe {lemon} --shape {ball} --press 3 mL",
                "unknown-measures|press --recipe {lemon} --cups imperial",
                "unknown-ingredient|press --recipe {lemon} --change kaolinn +2 g",
                "not-in-recipe|press --recipe {lemon} --change kaolin -2 g",
                "unreadable|press --recipe {lemon} --change more kaolin",
                "out-of-range|press --recipe {lemon} --change water -20 g",
                "no-file|press --recipe missing.yaml",
                "out-of-range|batch --recipe {lemon} --shape {ball} --pieces 3 --press firm --mix-size 3 kg",
                "out-of-range|batch --recipe {lemon} --shape {ball} --pieces 0 --press firm",
                "unknown-ingredient|ingredients zzzzzz",
            })
    void refused(String code, String line) throws IOException {
        List<String> words = new ArrayList<>();
        for (String word : line.split(" ", -1)) {
            words.add(word.equals("{ball}") ? BALL : word.equals("{lemon}") ? recipe("lemon") : word);
        }
        words.add("--json");
        CommandRun run = CommandRun.of(words.toArray(new String[0]));
        assertThat(run.status()).as(line).isEqualTo(2);
        assertThat(AnswerJson.faults("error", run.out())).isEmpty();
        JsonNode error = AnswerJson.read(run.out()).get("error");
        assertThat(error.get("code").asText()).isEqualTo(code);
        assertThat(error.get("hint").asText() + error.get("allowed").asText()).isNotBlank();
    }

    /** A wrong recipe is refused with its place in the JSON too. */
    @Test
    void fileAndLineInTheErrorObject() throws IOException {
        Path file = Files.writeString(folder.resolve("wrong.yaml"), "dry:\n  bicarb: 3\n");
        CommandRun run = CommandRun.of("press", "--recipe", file.toString(), "--json");
        JsonNode error = AnswerJson.read(run.out()).get("error");
        assertThat(error.get("file").asText()).endsWith("wrong.yaml");
        assertThat(error.get("line").asInt()).isEqualTo(2);
        assertThat(run.err()).contains("wrong.yaml").contains("2");
    }

    @Test
    void ingredients() throws IOException {
        JsonNode all = json("ingredients", CommandRun.of("ingredients", "--json"));
        assertThat(all.get("rows").size()).isGreaterThanOrEqualTo(60);
        JsonNode kaolin = json("ingredients", CommandRun.of("ingredients", "china", "clay", "--json"))
                .get("rows");
        assertThat(kaolin.size()).isEqualTo(1);
        assertThat(kaolin.get(0).get("name").asText()).isEqualTo("kaolin");
        assertThat(CommandRun.of("ingredients", "borax").out()).contains("Not for this");
        assertThat(CommandRun.of("ingredients", "kaolin").out()).contains("seen", "Caution: ");
        assertThat(CommandRun.of("ingredients", "corn flour").out()).contains("more than one thing");
    }

    /** The file's own ingredients with the line each value stands on. */
    @Test
    void ingredientsOfARecipe() throws IOException {
        Path file = Files.writeString(folder.resolve("own.yaml"), """
                recipe: Breakwater
                dry:
                  sodium bicarbonate: 200 g
                  citric acid: 100 g
                own ingredients:
                  bicarb:
                    loose cup: 230 g
                    tapped cup: 310 g
                """);
        CommandRun page = CommandRun.of("ingredients", "--recipe", file.toString(), "--explain");
        assertThat(page.out()).contains("Breakwater", "Your own bicarb", "your recipe, line 7", "your recipe, line 8");
        JsonNode rows = json(
                        "ingredients",
                        CommandRun.of("ingredients", "baking", "soda", "--recipe", file.toString(), "--json"))
                .get("rows");
        assertThat(rows.size()).isEqualTo(1);
        assertThat(rows.get(0).toString()).contains("your recipe, line 7");
        assertThat(CommandRun.of("ingredients", "--recipe", recipe("lemon")).out())
                .contains("no ingredients of its own");
        assertThat(CommandRun.of("ingredients", "--cups", "metric").status()).isEqualTo(2);
    }
}
