package org.fizzhull.cli.deciding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code compare} from the command line. What its numbers are is held against {@code float}, the laws and by hand. */
@Isolated("sets the default locale")
class CompareCommandTest {
    private static final String LEMON = "src/doc/recipes/lemon.yaml";
    private static final String FOAM = "src/doc/recipes/sea-foam.yaml";
    private static final String BALL = "sphere(diameter=65 mm)";
    private static final String DOME = "dome(diameter=80 mm)";

    /** A corner of a cube of 60 mm: 36 cm3. */
    private static final String PYRAMID = """
            solid corner
            facet normal 0 0 0 outer loop vertex 0 0 0 vertex 0 60 0 vertex 60 0 0 endloop endfacet
            facet normal 0 0 0 outer loop vertex 0 0 0 vertex 60 0 0 vertex 0 0 60 endloop endfacet
            facet normal 0 0 0 outer loop vertex 0 0 0 vertex 0 0 60 vertex 0 60 0 endloop endfacet
            facet normal 0 0 0 outer loop vertex 60 0 0 vertex 0 60 0 vertex 0 0 60 endloop endfacet
            endsolid corner
            """;

    @TempDir
    Path folder;

    private static CommandRun run(String... words) {
        List<String> all = new ArrayList<>(List.of("compare"));
        all.addAll(Arrays.asList(words));
        if (!all.contains("--samples")) {
            all.addAll(List.of("--samples", "256"));
        }
        return CommandRun.of(all.toArray(new String[0]));
    }

    private static CommandRun pressed(String... more) {
        List<String> all = new ArrayList<>(List.of("--recipe", LEMON, "--press", "light"));
        all.addAll(Arrays.asList(more));
        return run(all.toArray(new String[0]));
    }

    private static JsonNode json(CommandRun run) throws IOException {
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(AnswerJson.faults("compare", run.out())).isEmpty();
        return AnswerJson.read(run.out());
    }

    private CommandRun catalogue(String text) throws IOException {
        Path file = folder.resolve("moulds.csv");
        Files.writeString(file, text);
        return pressed("--moulds", file.toString(), "--json");
    }

    /** Two commands, one answer: what {@code float} says of the same piece from the same draws. */
    @Test
    void aRowSaysWhatFloatSays() throws IOException {
        String[] same = {"--recipe", LEMON, "--press", "light", "--air", "21 C, 50 %", "--samples", "256", "--json"};
        List<String> both = new ArrayList<>(List.of(same));
        both.addAll(List.of("--shape", BALL, "--shape", DOME));
        JsonNode rows = json(run(both.toArray(new String[0]))).get("rows");
        for (JsonNode row : rows) {
            List<String> alone =
                    new ArrayList<>(List.of("float", "--shape", row.get("shape").asText()));
            alone.addAll(List.of(same));
            JsonNode answer =
                    AnswerJson.read(CommandRun.of(alone.toArray(new String[0])).out());
            for (String key : List.of("probability", "critical_weight_g", "fizz_time_s", "likelihood_to_the_end")) {
                assertThat(row.get(key)).as(key).isEqualTo(answer.get(key));
            }
        }
    }

    /** The same of pieces that were measured: on the line of {@code float} each is one of the mould asked about. */
    @Test
    void aRowSaysWhatFloatSaysOfMeasuredPieces() throws IOException {
        String in = " in " + BALL;
        String[] same = {"--recipe", LEMON, "--press", "light", "--samples", "256", "--json"};
        List<String> table = new ArrayList<>(List.of(same));
        table.addAll(List.of("--shape", DOME, "--shape", BALL, "--weighed", "139 g at light" + in));
        table.addAll(
                List.of("--measured-fizz", "5 min at 139 g" + in, "--measured-lift", "139 g after 5 s at 139 g" + in));
        JsonNode rows = json(run(table.toArray(new String[0]))).get("rows");
        JsonNode row = rows.get(0).get("shape").asText().equals(BALL) ? rows.get(0) : rows.get(1);
        List<String> alone = new ArrayList<>(List.of("float", "--shape", BALL, "--weighed", "139 g at light" + in));
        alone.addAll(List.of(same));
        alone.addAll(List.of("--measured-fizz", "5 min at 139 g", "--measured-lift", "139 g after 5 s at 139 g"));
        JsonNode answer =
                AnswerJson.read(CommandRun.of(alone.toArray(new String[0])).out());
        double error = answer.get("probability").get("error").asDouble();
        assertThat(row.get("probability").get("floats_to_the_end").asDouble())
                .isCloseTo(answer.get("probability").get("floats_to_the_end").asDouble(), within(4 * error));
        assertThat(row.get("fizz_time_s").get("median").asDouble()).isCloseTo(300, within(15.0));
    }

    /** A dunk in the bench file is the dunk that was typed; of no named mould it could be of any, and that is said. */
    @Test
    void whatTheBenchHasOfTheBathCountsAsTyped() throws IOException {
        String dunk = "139 g after 5 s at 139 g";
        Path bench = Files.writeString(folder.resolve("bench.yaml"), "dunks:\n  - \"" + dunk + " in " + BALL + "\"\n");
        List<String> line = List.of(
                "--recipe", LEMON, "--press", "light", "--samples", "128", "--json", "--shape", DOME, "--shape", BALL);
        List<String> typed = new ArrayList<>(line);
        typed.addAll(List.of("--measured-lift", dunk + " in " + BALL));
        List<String> written = new ArrayList<>(line);
        written.addAll(List.of("--bench", bench.toString()));
        JsonNode rows = json(run(written.toArray(new String[0]))).get("rows");
        assertThat(rows).isEqualTo(json(run(typed.toArray(new String[0]))).get("rows"));
        assertThat(rows).isNotEqualTo(json(run(line.toArray(new String[0]))).get("rows"));

        Files.writeString(bench, "dunks:\n  - \"" + dunk + "\"\n");
        assertThat(json(run(written.toArray(new String[0]))).get("notices").findValuesAsText("code"))
                .contains("bathed-of-several");
    }

    /** A weight of no named mould could be that of any. */
    @Test
    void aWeighedPieceOfTheRecipeWithoutAMouldIsSaidNotToCount() throws IOException {
        Path file = folder.resolve("weighed.yaml");
        Files.writeString(file, Files.readString(Path.of(LEMON)) + "\nweighed: [146 g at firm]\n");
        String[] line = {"--recipe", file.toString(), "--press", "firm", "--json", "--shape", BALL, "--shape", DOME};
        JsonNode two = json(run(line));
        assertThat(two.get("notices").findValuesAsText("code")).contains("weighed-without-mould");
        JsonNode one = json(run(Arrays.copyOf(line, line.length - 2)));
        assertThat(one.get("notices").findValuesAsText("code"))
                .contains("weighed-as")
                .doesNotContain("weighed-without-mould");
    }

    /** By the law: of one density the shape with more surface for its volume has more clinging gas to carry it. */
    @Test
    void ofOneDensityMoreSurfaceFloatsBetter() throws IOException {
        JsonNode answer = json(run(
                "--density",
                "1.0 g/cm3",
                "--shape",
                BALL,
                "--shape",
                "star(points=5, diameter=80 mm, inner=45 mm, height=30 mm)",
                "--json"));
        JsonNode rows = answer.get("rows");
        assertThat(rows.get(0).get("shape").asText()).startsWith("star");
        assertThat(answer.get("best").get("shape").asText()).startsWith("star");
        assertThat(rows.get(0).get("surface_to_volume_per_cm").asDouble())
                .isGreaterThan(rows.get(1).get("surface_to_volume_per_cm").asDouble());
        assertThat(rows.get(1).get("regret_pieces_per_100").asDouble())
                .isGreaterThan(rows.get(0).get("regret_pieces_per_100").asDouble());
    }

    /** By hand: 1000 kg/m3 in a ball of pi d^3 / 6. */
    @Test
    void theWeightIsThatOfTheDensity() throws IOException {
        JsonNode row = json(run("--density", "1.0 g/cm3", "--shape", BALL, "--json"))
                .get("rows")
                .get(0);
        assertThat(row.get("mass_g").asDouble()).isCloseTo(Math.PI * 6.5 * 6.5 * 6.5 / 6, within(0.05));
        assertThat(row.get("recipe").isNull()).isTrue();
        assertThat(row.get("pieces_per_batch").isNull()).isTrue();
    }

    @Test
    void twoAlikeAreTooCloseToCall() throws IOException {
        CommandRun told = run("--density", "0.98 g/cm3", "--shape", BALL, "--shape", "sphere(diameter=65.1 mm)");
        assertThat(told.out()).startsWith("Too close to call: the 65").contains("65.1 mm ball", "65 mm ball");
        JsonNode answer =
                json(run("--density", "0.98 g/cm3", "--shape", BALL, "--shape", "sphere(diameter=65.1 mm)", "--json"));
        assertThat(answer.get("best").isNull()).isTrue();
        assertThat(answer.get("level")).hasSize(2);
        assertThat(AnswerJson.codes(answer)).contains("too-close-to-call");
    }

    @Test
    void aCatalogueIsReadWithEitherSeparator() throws IOException {
        JsonNode comma = json(catalogue("name,shape,price\nround one,\"sphere(diameter=65 mm, seam=2 mm)\",4.50\n"));
        JsonNode semicolon =
                json(catalogue("# mine\nName;Shape;Price\n\nround one;sphere(diameter=65 mm, seam=2 mm);4.50\n"));
        JsonNode row = comma.get("rows").get(0);
        assertThat(row.get("name").asText()).isEqualTo("round one");
        assertThat(row.get("mould").get("price").asDouble()).isEqualTo(4.5);
        assertThat(semicolon.get("rows")).isEqualTo(comma.get("rows"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            name,shape~a,sphere(diameter=65 mm, seam=2 mm)                | 2 | row      | too-many
            name,shape~a,"sphere(diameter=65)"                           | 2 | shape: diameter | missing-unit
            name,shape~,"cone(diameter=60 mm, height=70 mm)"             | 2 | name     | missing
            name~a                                                       | 1 | shape    | missing
            name,shape,colour~a,sphere(diameter=65 mm),red               | 1 | header   | unknown-column
            name,shape,price~a,sphere(diameter=65 mm),free               | 2 | price    | not-a-number
            name;shape;price~a;sphere(diameter=65 mm);4,50               | 2 | price    | not-a-number
            name,shape,cavities~a,sphere(diameter=65 mm),0               | 2 | cavities | out-of-range
            name,shape~a,sphere(diameter=65 mm)~a,sphere(diameter=70 mm) | 3 | name     | repeated
            name,shape                                                   | 1 | catalogue | empty
            name,shape,,~a,sphere(diameter=65 mm),,                      | 1 | header   | missing
            """)
    void whatIsWrongInACatalogueIsToldWithItsLineAndColumn(String text, int line, String field, String code)
            throws IOException {
        CommandRun run = catalogue(text.strip().replace('~', '\n') + '\n');
        assertThat(run.status()).isEqualTo(2);
        JsonNode error = AnswerJson.read(run.out()).get("error");
        assertThat(error.get("code").asText()).as(run.err()).isEqualTo(code);
        assertThat(error.get("field").asText()).isEqualTo(field);
        assertThat(error.get("line").asInt()).isEqualTo(line);
        assertThat(error.get("file").asText()).endsWith("moulds.csv");
    }

    @Test
    void shapesOfEverySourceAreRowsLikeAnyOther() throws IOException {
        Path mesh = folder.resolve("pyramid.stl");
        Files.writeString(mesh, PYRAMID);
        JsonNode answer = json(pressed(
                "--shape",
                "mesh(file=\"" + mesh + "\", unit=mm)",
                "--shape",
                "filled(water=143 g, like=shell)",
                "--shape",
                "revolved(file=src/doc/tower.csv)",
                "--shape",
                "geode(diameter=80 mm, wall=14 mm, crystals=20 g)",
                "--json"));
        assertThat(answer.get("rows")).hasSize(4);
        for (JsonNode row : answer.get("rows")) {
            if (row.get("shape").asText().startsWith("geode")) {
                assertThat(row.get("special").toString()).contains("geode");
            }
        }
    }

    /** 63 rows: at most 25 lines, progress on standard error, every row behind it. */
    @Test
    void aLongTableIsCutToAPageAndTellsHowFarItIs() {
        String page = pressed("--moulds", "built-in", "--samples", "128").out();
        CommandRun run = pressed("--moulds", "built-in", "--samples", "128", "--explain");
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(page.lines().count()).isLessThanOrEqualTo(25);
        assertThat(page).containsPattern("and \\d+ more: --explain");
        assertThat(run.err()).contains("7 of 63 rows").contains("56 of 63 rows");
        assertThat(run.out()).contains("63. ");
        assertThat(pressed("--moulds", "built-in", "--samples", "128", "--quiet")
                        .err())
                .isEmpty();
    }

    /** A sheet has room for the table and for the figures of its best twelve; how many are missing stands there. */
    @Test
    void aPageHasTheFiguresOfTheBestTwelve() throws IOException {
        Path page = folder.resolve("moulds.html");
        pressed("--moulds", "built-in", "--samples", "128", "--report", page.toString());
        assertThat(Files.readString(page))
                .contains("<h3>12. ")
                .doesNotContain("<h3>13. ")
                .contains("Figures of the other 51: <span class=\"option\">--explain</span>");
    }

    @Test
    void theWorstOfThePanelCounts() throws IOException {
        JsonNode row = json(pressed("--shape", BALL, "--baths", "homes", "--json"))
                .get("rows")
                .get(0);
        assertThat(row.get("baths")).hasSize(5);
        double least = 1;
        String worst = "";
        for (JsonNode bath : row.get("baths")) {
            if (bath.get("floats_to_the_end").asDouble() < least) {
                least = bath.get("floats_to_the_end").asDouble();
                worst = bath.get("name").asText();
            }
        }
        assertThat(row.get("worst_bath").asText()).isEqualTo(worst);
        assertThat(row.get("probability").get("floats_to_the_end").asDouble()).isEqualTo(least);
    }

    @Test
    void threadsAndLocaleChangeNothing() {
        String[] words = {"--shape", BALL, "--shape", DOME, "--samples", "1024", "--json"};
        String one = pressed(add(words, "--threads", "1")).out();
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(pressed(add(words, "--threads", "3")).out()).isEqualTo(one);
        } finally {
            Locale.setDefault(before);
        }
    }

    private static String[] add(String[] words, String... more) {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of(more));
        return all.toArray(new String[0]);
    }

    @Test
    void thePictureDrawsEveryRow() throws Exception {
        Path file = folder.resolve("moulds.svg");
        CommandRun run = pressed("--shape", BALL, "--shape", DOME, "--chart", file.toString());
        assertThat(run.status()).as(run.err()).isZero();
        var document = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
        // a hundred dots and the middle of the bar for each row
        assertThat(document.getElementsByTagName("circle").getLength()).isEqualTo(2 * 101);
        assertThat(document.getElementsByTagName("title").item(0).getTextContent())
                .isEqualTo("Which to take");
        String said =
                document.getElementsByTagName("desc").item(0).getTextContent().replaceAll("\\s+", " ");
        assertThat(run.out().replaceAll("\\s+", " ")).startsWith(said);
    }

    @Test
    void severalRecipesInOneMould() throws IOException {
        JsonNode answer = json(pressed("--recipe", FOAM, "--shape", BALL, "--json"));
        assertThat(answer.get("rows")).hasSize(2);
        assertThat(answer.get("rows").get(0).get("recipe").asText())
                .isNotEqualTo(answer.get("rows").get(1).get("recipe").asText());
        CommandRun filled = run("--recipe", LEMON, "--recipe", FOAM, "--shape", BALL, "--fill", "140 g");
        assertThat(filled.status()).as(filled.err()).isZero();
        assertThat(filled.out()).contains("Sea foam").contains("fill below");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --density 1.0 g/cm3                                                          | missing-option | --moulds
            --shape sphere(diameter=65 mm)                                               | missing-option | --recipe
            --shape sphere(diameter=65 mm) --recipe src/doc/recipes/lemon.yaml           | missing-option | --press
            --shape sphere(diameter=65 mm) --mass 138 g                                  | no-one-weight  | --mass
            --shape sphere(diameter=65 mm) --shape dome(diameter=80 mm) --recipe src/doc/recipes/lemon.yaml --fill 140 g | conflict | --fill
            --shape sphere(diameter=65 mm) --density 1.0 g/cm3 --sort price              | unknown-word   | --sort
            --shape sphere(diameter=65 mm) --density 1.0 g/cm3 --sort dry                | not-known      | --sort
            --shape sphere(diameter=65 mm) --density 1.0 g/cm3 --baths hotel             | unknown-word   | --baths
            --shape sphere(diameter=65 mm) --density 1.0 g/cm3 --baths homes --bath 30 C | conflict       | --baths
            --shape sphere(diameter=65 mm) --density 1.0 g/cm3 --samples 0               | out-of-range   | --samples
            --moulds nowhere.csv --density 1.0 g/cm3                                     | no-file        | --moulds
            --shape sphere(diameter=65 mm) --shape dome(diameter=80 mm) --density 1.0 g/cm3 --measured-fizz 5 min at 140 g | missing-value | --measured-fizz
            --shape sphere(diameter=65 mm) --density 1.0 g/cm3 --baths homes --measured-fizz 5 min at 140 g | conflict | --measured-fizz
            --shape sphere(diameter=65 mm) --density 1.0 g/cm3 --no-fizz --measured-lift 140 g after 5 s at 140 g | conflict | --measured-lift
            --shape sphere(diameter=65 mm) --density 1.0 g/cm3 --measured-lift 140 g after 5 s at 140 g in spere(diameter=65 mm) | unknown-shape | shape
            """)
    void whatCannotBeComparedIsRefused(String line, String code, String field) throws IOException {
        List<String> words = new ArrayList<>(List.of("compare"));
        words.addAll(List.of(line.split(" (?=--)", -1)).stream()
                .flatMap(option -> Arrays.stream(option.split(" ", 2)))
                .toList());
        words.add("--json");
        CommandRun run = CommandRun.of(words.toArray(new String[0]));
        assertThat(run.status()).as(run.out()).isEqualTo(2);
        JsonNode error = AnswerJson.read(run.out()).get("error");
        assertThat(error.get("code").asText()).as(run.err()).isEqualTo(code);
        assertThat(error.get("field").asText()).isEqualTo(field);
        assertThat(run.err().lines().count()).isEqualTo(1);
    }
}
