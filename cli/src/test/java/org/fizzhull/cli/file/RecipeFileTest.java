package org.fizzhull.cli.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Price;
import org.fizzhull.recipe.Recipe;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Recipes as people write them, and every way to get one wrong: each with the file, the line and a mend. */
class RecipeFileTest {
    private static final String GOOD = "dry:\n  baking soda: 200 g\n  citric acid: 100 g\n";

    @TempDir
    Path folder;

    private Recipe read(String text) {
        return read(text, Measures.US_LEGAL).recipe();
    }

    private RecipeFile read(String text, Measures cups) {
        return RecipeFile.read(FileAccess.ANY, "--recipe", file(text.getBytes(StandardCharsets.UTF_8)), cups);
    }

    private String file(byte[] bytes) {
        try {
            return Files.write(folder.resolve("mix.yaml"), bytes).toString();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static double grams(Recipe recipe, String name) {
        return recipe.part(name).map(Recipe.Part::mass).orElseThrow() * 1e3;
    }

    /** The example of cli/docs/contract.md, its own ingredient put into use. */
    @Test
    void theContractsExample() {
        Recipe recipe = read("""
                recipe: Lighthouse lemon
                dry:
                  sodium bicarbonate: 300 g
                  citric acid: 150 g
                  corn starch: 1/2 cup
                  oat flour: 20 g
                wet:
                  sweet almond oil: 10 g
                  water: 4 g
                  lemon fragrance: 3 g
                acid last: true                              # optional
                prices: {sodium bicarbonate: 3.10 / kg}      # optional, own money
                limits: {lemon fragrance: 1 %}
                own ingredients:
                  oat flour: {true density: 1.42 g/cm3, loose density: 0.48 g/cm3}
                """);
        assertThat(recipe.name()).isEqualTo("Lighthouse lemon");
        assertThat(recipe.acidLast()).isTrue();
        assertThat(grams(recipe, "sodium bicarbonate")).isCloseTo(300, within(1e-9));
        assertThat(grams(recipe, "oat flour")).isCloseTo(20, within(1e-9));
        Price price = Objects.requireNonNull(recipe.prices().get("sodium bicarbonate"));
        assertThat(price.perKilogram()).isCloseTo(3.1, within(1e-12));
        assertThat(recipe.limits().get("lemon fragrance")).isCloseTo(0.01, within(1e-15));
    }

    /** Every mistake once, by its line, and none that only follows from another. */
    @Test
    void severalMistakesAtOnce() {
        Refusal first = catchThrowableOfType(Refusal.class, () -> read("""
                dry:
                  sodium bicarbonate: 300
                  citric acid: 150 g
                  kaolinn: 3 g
                  oat dust: 20 g
                wet:
                  water: 4 tsp x
                prices:
                  kaolinn: 3 / kg
                own ingredients:
                  oat dust: {density: 0.4 g/cm3}
                colour: 3
                """));
        List<Integer> lines = new ArrayList<>(List.of(first.line()));
        first.others().forEach(other -> lines.add(other.line()));
        assertThat(lines).containsExactly(2, 4, 7, 11, 12);
        assertThat(first.others()).allSatisfy(other -> assertThat(other.file()).endsWith("mix.yaml"));
    }

    /** In braces a decimal comma parts a number in two: YAML itself takes the second part for a key. */
    @Test
    void aDecimalCommaInBraces() {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> read("""
                dry:
                  oat flour: 66 g
                own ingredients:
                  oat flour: {true density: 1,42 g/cm3, loose density: 0.5 g/cm3}
                """));
        assertThat(refusal.line()).isEqualTo(4);
        assertThat(refusal.read()).isEqualTo("42 g/cm3");
        assertThat(refusal.hint()).isEqualTo("A comma between braces parts two entries.");
    }

    /** A screen holds the first ten mistakes of a file; the JSON has them all. */
    @Test
    void aScreenHoldsTenMistakes() throws IOException {
        StringBuilder text = new StringBuilder("dry:\n");
        for (int i = 0; i < 25; i++) {
            text.append("  kaolinn ").append(i).append(": 3 g\n");
        }
        Path file = Files.writeString(folder.resolve("many.yaml"), text);
        CommandRun run = CommandRun.of(
                "press", "--shape", "cube(side=40 mm)", "--press", "firm", "--json", "--recipe", "" + file);
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err().lines())
                .hasSize(11)
                .last()
                .asString()
                .isEqualTo("fizzhull: and 15 more; --json names them all.");
        assertThat(AnswerJson.read(run.out()).get("error").get("others")).hasSize(24);
    }

    /** The line without a colon is blamed, not the one that YAML stumbles over. */
    @ParameterizedTest
    @CsvSource({
        "'dry:\n  bicarb: 3 g\n  citric acid 2 g\n  kaolin: 3 g\n',3",
        "'dry:\n  bicarb: 3 g\nwet:\n  water: 1 g\n  oil 2 g\n',5"
    })
    void theLineWithoutItsColon(String text, int line) {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> read(text));
        assertThat(refusal.line()).isEqualTo(line);
        assertThat(refusal.hint()).contains("colon");
    }

    /** What makes a small file large, deep or other than it looks is called what it is. */
    @Test
    void bombsAndHiddenCharacters() {
        Refusal deep = catchThrowableOfType(Refusal.class, () -> read("dry: " + "[".repeat(2000)));
        assertThat(deep.read()).contains("levels deep");
        Refusal alias = catchThrowableOfType(Refusal.class, () -> read("a: &a {b: *a}\n" + GOOD));
        assertThat(alias.read()).contains("anchor");
        for (String hidden : List.of("\\u202e", "\\e", "\\0", "\\u2066")) {
            Refusal refusal =
                    catchThrowableOfType(Refusal.class, () -> read("recipe: \"ab" + hidden + "cd\"\n" + GOOD));
            assertThat(refusal.getMessage()).doesNotContain("\u202e", "\u001b", "\u0000", "\u2066");
        }
        String many = "own ingredients:\n" + "  x%d: {cup: 90 g}\n".repeat(3).formatted(1, 2, 3);
        assertThat(read(GOOD + many).notices()).isNotEmpty();
        StringBuilder more = new StringBuilder(GOOD + "own ingredients:\n");
        for (int i = 0; i < 101; i++) {
            more.append("  dust ").append(i).append(": {cup: 90 g}\n");
        }
        assertThat(catchThrowableOfType(Refusal.class, () -> read(more.toString()))
                        .code())
                .isEqualTo("too-long");
    }

    /** Amounts beyond any workshop, packs of nothing, and a batter are refused with what is allowed. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "dry: {bicarb: 1e300 kg, citric acid: 3 g}",
                "dry: {bicarb: 450 g, citric acid: 3 g}\nwet: {water: 300 g}",
                "dry: {bicarb: 450 g}\nwet: {water: 100 to 300 g}",
                "dry: {bicarb: 450 g}\nprices: {bicarb: 1 / 1e-9 g}"
            })
    void beyondAnyWorkshop(String text) {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> read(text));
        assertThat(refusal.allowed()).isNotEmpty();
        assertThat(refusal.hint()).isNotEmpty();
    }

    /** A list of weighed pieces, the commas inside a shape's brackets left in their place. */
    @Test
    void weighedPieces() {
        RecipeFile file = read(
                GOOD + "weighed: [146 g at firm, 151 g at hard in bowl(diameter=90 mm, wall=15 mm), 9 g at light]\n",
                Measures.US_LEGAL);
        assertThat(file.weighed())
                .extracting(WrittenLine::text)
                .containsExactly("146 g at firm", "151 g at hard in bowl(diameter=90 mm, wall=15 mm)", "9 g at light");
        assertThat(file.weighed().get(0).line()).isEqualTo(4);
        assertThat(read(GOOD + "weighed: 146 g at firm\n", Measures.US_LEGAL).weighed())
                .hasSize(1);
    }

    /** 36 own powders and 30 ranges: more inputs than the table of direction numbers has dimensions. */
    @Test
    void manyOwnIngredientsAndRanges() {
        StringBuilder text = new StringBuilder("dry:\n  bicarb: 290 to 310 g\n  citric acid: 140 to 160 g\n");
        for (int i = 0; i < 36; i++) {
            text.append("  dust ").append(i).append(": 1 to 2 g\n");
        }
        text.append("wet: {sunflower oil: 10 to 12 g}\nown ingredients:\n");
        for (int i = 0; i < 36; i++) {
            text.append("  dust ").append(i).append(": {like: kaolin, cup: 90 g}\n");
        }
        CommandRun run = CommandRun.of(
                "press",
                "--recipe",
                file(text.toString().getBytes(StandardCharsets.UTF_8)),
                "--shape",
                "sphere(diameter=65 mm)",
                "--press",
                "firm",
                "--samples",
                "128");
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isZero();
    }

    /** JSON is YAML. */
    @Test
    void json() {
        Recipe recipe = read("{\"dry\": {\"bicarb\": \"2 parts\", \"citric acid\": \"1 part\"}, \"total\": \"600 g\"}");
        assertThat(grams(recipe, "sodium bicarbonate")).isCloseTo(400, within(1e-9));
        assertThat(grams(recipe, "citric acid")).isCloseTo(200, within(1e-9));
    }

    /** Cups of the three systems are 240, 250 and 236.588 mL, one after another; drops are 0.05 mL. */
    @Test
    void cupsAndDrops() {
        String text = GOOD + "  corn starch: 1 cup\nwet:\n  water: 20 drops\n";
        double legal = grams(read(text, Measures.US_LEGAL).recipe(), "corn starch");
        assertThat(grams(read(text, Measures.METRIC).recipe(), "corn starch") / legal)
                .isCloseTo(250.0 / 240, within(1e-12));
        assertThat(grams(read(text, Measures.US_CUSTOMARY).recipe(), "corn starch") / legal)
                .isCloseTo(236.588 / 240, within(1e-6));
        assertThat(grams(read(text), "water")).isCloseTo(1, within(0.01));
    }

    /** By hand: the middle of the range, and the standard deviation of an even spread, width over the root of 12. */
    @Test
    void aRangeIsASpread() {
        Recipe.Part water =
                read(GOOD + "wet:\n  water: 4 to 8 g\n").part("water").orElseThrow();
        assertThat(water.mass()).isCloseTo(0.006, within(1e-12));
        assertThat(water.sigma()).isCloseTo(0.004 / Math.sqrt(12), within(1e-12));
    }

    /** The grams that stand in the text. */
    @Test
    void aByteOrderMarkAndWindowsLineEndsAreRead() {
        assertThat(grams(read("\uFEFF" + GOOD.replace("\n", "\r\n")), "citric acid"))
                .isCloseTo(100, within(1e-9));
    }

    /** Each text stands behind {@link #GOOD}; the line is counted by hand, GOOD has three. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            ignoreLeadingAndTrailingWhitespace = false,
            value = {
                "unknown-key|4|powders:~  kaolin: 20 g",
                "unknown-key|4|kaolin: 20 g",
                "unknown-key|5|acid last: true~Dry: 3 g",
                "unknown-ingredient|4|  moon dust: 20 g",
                "unknown-ingredient|4|  kaolinn: 20 g",
                "forbidden-ingredient|4|  borax: 20 g",
                "ambiguous-ingredient|4|  corn flour: 20 g",
                "missing-unit|4|  kaolin: 20",
                "unknown-unit|4|  kaolin: 20 gallopers",
                "*|4|  kaolin: a handful",
                "*|4|  kaolin: -20 g",
                "*|4|  kaolin: 20,5 g",
                "wrong-dimension|4|  kaolin: 20 mm",
                "*|4|  kaolin:",
                "repeated|4|  baking soda: 20 g",
                "repeated|4|  bicarbonate of soda: 20 g",
                "misplaced|4|  water: 20 g",
                "misplaced|5|wet:~  kaolin: 20 g",
                "repeated|4|dry:~  kaolin: 20 g",
                "missing|1|  kaolin: 1 part",
                "out-of-range|4|total: 0 g",
                "missing-unit|4|total: 500",
                "not-in-recipe|4|prices: {kaolin: 3 / kg}",
                "missing-unit|5|prices:~  citric acid: 3.10",
                "*|5|prices:~  citric acid: 3.10 EUR / kg",
                "not-in-recipe|5|limits:~  lemon fragrance: 1 %",
                "out-of-range|5|limits:~  citric acid: 120 %",
                "unknown-word|4|acid last: perhaps",
                "unknown-key|5|own ingredients:~  oat flour: {colour: brown}",
                "out-of-range|6|own ingredients:~  corn starch: {loose cup: 150 g,~    tapped cup: 118 g}",
                "out-of-range|7|own ingredients:~  corn starch:~    loose cup: 300 g~    tapped cup: 390 g",
                "missing|5|own ingredients:~  corn starch: {tapped cup: 150 g}",
                "missing|5|own ingredients:~  corn starch: {cup: 200 mL}",
                "conflict|6|own ingredients:~  corn starch:~    loose cup: 118 g~    loose density: 0.5 g/cm3",
                "wrong-dimension|5|own ingredients:~  corn starch: {loose cup: 118 mL}",
                "missing-unit|5|own ingredients:~  corn starch: {loose cup: 118}",
                "out-of-range|5|own ingredients:~  corn starch: {loose cup: 0 g}",
                "out-of-range|6|own ingredients:~  corn starch: {loose cup: 118 g,~    cup: 1 mL}",
                "missing|5|own ingredients:~  moon flour: {true density: 1.42 g/cm3}",
                "out-of-range|6|own ingredients:~  oat flour:~    true density: 142 g/cm3~    loose density: 0.48 g/cm3",
                "forbidden-ingredient|5|own ingredients:~  borax: {true density: 1.7 g/cm3, loose density: 0.8 g/cm3}",
                "not-a-value|5|wet:~  water:~    - 4 g",
                "not-a-list-of-lines|5|wet:~  - water 4 g",
                "not-a-list-of-lines|4|wet: some water",
                "unreadable|5|wet:~\twater: 4 g",
                "unreadable|4|wet: {water: 4 g",
                "unreadable|5|wet:~  water: \"4 g",
            })
    void refusedWithLineAndMend(String code, int line, String text) {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> read(GOOD + text.replace('~', '\n') + '\n'));
        assertThat(refusal).as(text).isNotNull();
        if (!code.equals("*")) {
            assertThat(refusal.code()).isEqualTo(code);
        }
        assertThat(refusal.file()).endsWith("mix.yaml");
        assertThat(refusal.line()).isEqualTo(line);
        assertThat(refusal.hint() + refusal.allowed()).isNotBlank();
        assertThat(refusal.getMessage()).contains("mix.yaml");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "# nothing but a remark\n", "just words\n", "- a\n- list\n", "recipe: Nothing\n", "dry:\n"})
    void notARecipe(String text) {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> read(text));
        assertThat(refusal.file()).endsWith("mix.yaml");
        assertThat(refusal.hint() + refusal.allowed()).isNotBlank();
    }

    @Test
    void noPowderAtAll() {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> read("dry:\n  baking soda: 0 g\n"));
        assertThat(refusal.code()).isEqualTo("empty");
        assertThat(refusal.line()).isEqualTo(1);
    }

    @Test
    void nearestNamesAreOffered() {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> read(GOOD + "  kaolinn: 20 g\n"));
        assertThat(refusal.hint()).contains("kaolin");
    }

    @Test
    void filesThatAreNone() {
        String[] names = {
            folder.resolve("not-there.yaml").toString(), folder.toString(), file(new byte[] {'a', (byte) 0xff})
        };
        String[] codes = {"no-file", "not-a-file", "not-text"};
        for (int i = 0; i < names.length; i++) {
            String name = names[i];
            Refusal refusal = catchThrowableOfType(
                    Refusal.class, () -> RecipeFile.read(FileAccess.ANY, "--recipe", name, Measures.US_LEGAL));
            assertThat(refusal.code()).isEqualTo(codes[i]);
            assertThat(refusal.hint()).isNotBlank();
        }
        Refusal zero = catchThrowableOfType(Refusal.class, () -> read("dry:\n  \u0000: 3 g\n"));
        assertThat(zero.code()).isEqualTo("hidden-character");
        assertThat(zero.hint()).contains("\\u0000");
        assertThat(zero.line()).isEqualTo(2);
    }

    /** A small file must not blow up: aliases of aliases are not expanded. */
    @Test
    void manyAliases() {
        StringBuilder bomb = new StringBuilder("a0: &a0 {b: c}\n");
        for (int i = 1; i < 30; i++) {
            bomb.append("a")
                    .append(i)
                    .append(": &a")
                    .append(i)
                    .append(" {x: *a")
                    .append(i - 1)
                    .append(", y: *a")
                    .append(i - 1)
                    .append("}\n");
        }
        assertThat(catchThrowableOfType(Refusal.class, () -> read(bomb.toString()))
                        .code())
                .isIn("unknown-key", "unreadable");
    }
}
