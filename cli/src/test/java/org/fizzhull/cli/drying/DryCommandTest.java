package org.fizzhull.cli.drying;

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

@Isolated("sets the default locale")
class DryCommandTest {
    private static final String LEMON = "src/doc/recipes/lemon.yaml";
    private static final String FOAM = "src/doc/recipes/sea-foam.yaml";

    @TempDir
    Path folder;

    static String[] words(String recipe, String... more) {
        List<String> words = new ArrayList<>(
                List.of("dry", "--recipe", recipe, "--shape", "sphere(diameter=65 mm)", "--fill", "146 g"));
        words.addAll(Arrays.asList(more));
        if (!words.contains("--samples")) {
            words.addAll(List.of("--samples", "256"));
        }
        return words.toArray(new String[0]);
    }

    static JsonNode answer(String recipe, String... more) throws IOException {
        List<String> words = new ArrayList<>(List.of(words(recipe, more)));
        words.add("--json");
        CommandRun run = CommandRun.of(words.toArray(new String[0]));
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(AnswerJson.faults("dry", run.out())).isEmpty();
        return AnswerJson.read(run.out());
    }

    private static String text(String... more) {
        CommandRun run = CommandRun.of(words(LEMON, more));
        assertThat(run.status()).as(run.err()).isZero();
        return run.out();
    }

    /** Analytic: the fill is the damp mass; 17 g of liquid in 527 g, of which all but the 4 g of water stay. */
    @Test
    void massesComeFromTheRecipe() throws IOException {
        JsonNode answer = answer(LEMON, "--air", "21 C, 50 %", "--samples", "0");
        assertThat(AnswerJson.median(answer, "damp_mass_g")).isCloseTo(146, within(1e-6));
        assertThat(answer.get("never_dries_g").asDouble()).isCloseTo(146 * 13.0 / 527, within(1e-4));
        assertThat(AnswerJson.median(answer, "final_mass_g")).isLessThan(146);
        assertThat(AnswerJson.median(answer, "label_mass_g"))
                .isLessThanOrEqualTo(AnswerJson.median(answer, "final_mass_g") + 1e-6);
        assertThat(AnswerJson.codes(answer)).contains("central-values", "label-average");
    }

    /** Analytic: what goes off in the film leaves as gas; without water nothing dries and nothing goes off. */
    @Test
    void oilAloneLosesNothing() throws IOException {
        JsonNode answer = answer(LEMON, "--air", "21 C, 50 %", "--change", "water = 0 g", "--dry-for", "3 d");
        assertThat(answer.get("fizz_lost_percent").get("high").asDouble()).isZero();
    }

    @Test
    void everyWayOfDryingMeetsTheSchema() throws IOException {
        for (String on : List.of("rack", "tray", "cloth", "mould")) {
            answer(LEMON, "--air", "21 C, 55 %", "--on", on, "--dry-for", "3 d");
        }
        answer(FOAM, "--air", "outside 8 C, 85 %, heated to 21 C", "--fan", "--wrap-after", "2 d");
        answer(LEMON, "--air", "21 C, 55 %", "--room", "25 m3, 0.5 changes/h", "--pieces", "100");
        answer(LEMON, "--air", "21 C, 55 %", "--stored", "60 d", "--stored-air", "20 C, 60 %");
        answer(LEMON, "--air", "20 C, 90 %");
        answer(LEMON, "--air", "21 C, 50 %", "--start", "2026-08-14 18:30", "--sell-by", "2026-08-20");
    }

    /**
     * The films of a plain mix have 0.72 (core/docs/physics/drying.md, 2): air above it never dries them, air that
     * does lies below.
     */
    @Test
    void dampAirIsNotThisRoom() throws IOException {
        JsonNode answer = answer(LEMON, "--air", "20 C, 90 %", "--samples", "0");
        assertThat(answer.get("ready_after_h").isNull()).isTrue();
        assertThat(answer.get("reaction_number").isNull()).isTrue();
        assertThat(answer.get("needs_humidity_below_percent").asDouble()).isBetween(40.0, 72.1);
        assertThat(answer.get("verdict").asText())
                .startsWith("Never dries in this room")
                .contains("needs air below");
        assertThat(AnswerJson.codes(answer)).contains("never-dries", "not-ready", "no-reaction-number");
    }

    /**
     * The verdict and the chance to be ready are of the same draws: air 5 % above the 0.72 of a plain mix's films
     * dries those batches whose films dry there, and "never" beside a chance would be no answer.
     */
    @Test
    void neverIsNotSaidBesideAChance() throws IOException {
        String[] damp = {"--air", "20 C, 77 %", "--start", "2026-08-14 18:30", "--ready-by", "2026-10-14"};
        JsonNode answer = answer(LEMON, damp);
        double share = answer.get("dries_fraction").asDouble();
        assertThat(share).isBetween(0.01, 0.5);
        assertThat(answer.get("ready_by_then").asDouble()).isBetween(0.0, share);
        String told = "about " + Math.round(100 * share) + " of 100 such batches are";
        assertThat(answer.get("verdict").asText()).contains("ikely to be dry within 60 days", told);
        assertThat(text(damp)).doesNotContain("Never dries", "neither dries");
    }

    /** A piece that the store soaks ends its course before the first even time: the series still has both its ends. */
    @Test
    void aSoakedPieceHasASeries() throws IOException {
        String[] words = {
            "dry",
            "--recipe",
            FOAM,
            "--shape",
            "cube(side=9.3 mm)",
            "--press",
            "firm",
            "--air",
            "21 C, 45 %",
            "--stored",
            "3650 d",
            "--stored-air",
            "20 C, 95 %",
            "--samples",
            "0",
            "--json"
        };
        CommandRun run = CommandRun.of(words);
        assertThat(AnswerJson.faults("dry", run.out())).as(run.err()).isEmpty();
        JsonNode series = AnswerJson.read(run.out()).get("series");
        assertThat(series).hasSizeGreaterThan(1);
        double end = AnswerJson.median(AnswerJson.read(run.out()), "final_mass_g");
        assertThat(series.get(series.size() - 1).get("mass_g").asDouble()).isCloseTo(end, within(1e-6 * end));
    }

    /** Analytic: what the store adds is the final weight less that before it; a damp one says so at once. */
    @Test
    void theStoreIsTold() throws IOException {
        String[] damp = {
            "--air",
            "21 C, 45 %",
            "--dry-for",
            "6 d",
            "--stored",
            "10 d",
            "--stored-air",
            "20 C, 75 %",
            "--samples",
            "0"
        };
        JsonNode answer = answer(LEMON, damp);
        double gain = answer.get("store_gain_g").asDouble();
        JsonNode open = answer(LEMON, "--air", "21 C, 45 %", "--dry-for", "6 d", "--samples", "0");
        assertThat(gain)
                .isCloseTo(
                        AnswerJson.median(answer, "final_mass_g") - AnswerJson.median(open, "final_mass_g"),
                        within(1e-3))
                .isGreaterThan(1);
        assertThat(open.get("store_gain_g").isNull()).isTrue();
        assertThat(AnswerJson.codes(open)).contains("no-store");
        assertThat(answer.get("verdict").asText()).contains("put away it takes up");
        assertThat(AnswerJson.codes(answer)).contains("acid-takes-water");
        assertThat(text("--air", "21 C, 45 %", "--dry-for", "6 d", "--stored", "10 d"))
                .contains("keeps its weight")
                .doesNotContain("put away it takes");
    }

    /**
     * Epsom salt brings an input of its own. By hand: half of 7.31 % of 100 g in 610 g of powder is 0.85 g of a piece; it has
     * a sixth less starch to dry out and a sixth less water in it.
     */
    @Test
    void hydratesGiveWaterBack() throws IOException {
        String[] salt = {"--air", "21 C, 40 %", "--dry-for", "60 d", "--change", "epsom salt = 100 g", "--samples", "0"
        };
        JsonNode salty = answer(LEMON, salt);
        JsonNode plain = answer(LEMON, "--air", "21 C, 40 %", "--dry-for", "60 d", "--samples", "0");
        assertThat(AnswerJson.codes(salty)).contains("hydrate-gives-water");
        assertThat(AnswerJson.codes(plain)).doesNotContain("hydrate-gives-water");
        assertThat(AnswerJson.median(plain, "label_mass_g") - AnswerJson.median(salty, "label_mass_g"))
                .isBetween(0.4, 0.85);
        List<String> words = new ArrayList<>(List.of(salt));
        words.add("--explain");
        assertThat(text(words.toArray(new String[0]))).contains("hydrate share");
    }

    /** Directions: each second way is slower than the first. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "21 C, 40 %; --on; rack | 21 C, 60 %; --on; rack",
                "25 C, 50 %; --on; rack | 15 C, 50 %; --on; rack",
                "21 C, 50 %; --fan | 21 C, 50 %; --on; rack",
                "21 C, 50 %; --change; water = 4 g | 21 C, 50 %; --change; water = 8 g",
                "21 C, 50 %; --on; rack | 21 C, 50 %; --room; 2 m3, 0.1 changes/h; --pieces; 200"
            })
    void slower(String fast, String slow) throws IOException {
        assertThat(ready(slow)).isGreaterThan(1.02 * ready(fast));
    }

    private static double ready(String options) throws IOException {
        List<String> words = new ArrayList<>(List.of("--air"));
        for (String word : options.split(";", -1)) {
            words.add(word.strip());
        }
        words.addAll(List.of("--samples", "0"));
        return AnswerJson.median(answer(LEMON, words.toArray(new String[0])), "ready_after_h");
    }

    @Test
    void datesCountFromTheStartGiven() throws IOException {
        JsonNode answer = answer(
                LEMON,
                "--air",
                "21 C, 50 %",
                "--start",
                "2026-08-14 18:30",
                "--sell-by",
                "2026-10-20",
                "--dry-for",
                "3 d");
        double hours = AnswerJson.median(answer, "ready_after_h");
        var ready = java.time.LocalDateTime.of(2026, 8, 14, 18, 30).plusSeconds(Math.round(3600 * hours));
        assertThat(answer.get("ready_at").get("median").asText())
                .isEqualTo(ready.truncatedTo(java.time.temporal.ChronoUnit.MINUTES)
                        .toString()
                        .replace('T', ' '));
        assertThat(answer.get("sell_by").asText()).isEqualTo("2026-10-20 00:00");
        assertThat(answer.get("ready_by_then").asDouble())
                .isEqualTo(answer.get("dries_fraction").asDouble());
        assertThat(text("--air", "21 C, 50 %", "--start", "2026-08-14 18:30"))
                .contains("Saturday"); // 14 August 2026 is a Friday; dry within two days
    }

    @Test
    void theJarLineAlwaysStandsWithStorage() throws IOException {
        for (String wrap : List.of("shrink film", "jar")) {
            JsonNode answer =
                    answer(LEMON, "--air", "21 C, 50 %", "--dry-for", "2 d", "--stored", "30 d", "--wrap", wrap);
            assertThat(AnswerJson.codes(answer)).startsWith("sealed-jars-burst", "jar-pressure");
        }
        CommandRun afloat = CommandRun.of(
                "float",
                "--shape",
                "sphere(diameter=65 mm)",
                "--recipe",
                LEMON,
                "--fill",
                "140 g",
                "--air",
                "21 C, 50 %",
                "--stored",
                "30 d",
                "--samples",
                "128");
        assertThat(afloat.out()).contains("Never close damp or unsure pieces", "glass bursts far below");
        JsonNode plain = answer(LEMON, "--air", "21 C, 50 %");
        // ideal gas, by hand: 150 g of citric acid in 527 g give three moles of gas a mole; 146 g beside a ball in a
        // litre
        double gas = 0.146 / 0.527 * 3 * 0.150 / 0.192123;
        double free = 1e-3 - Math.PI / 6 * Math.pow(0.065, 3);
        double expected = gas * 8.314462618 * 294.15 / free / 1e3;
        assertThat(plain.get("jar").get("all_kPa").asDouble()).isCloseTo(expected, within(1e-4 * expected));
    }

    @Test
    void theDangerousAnswerComesAfterItsCaution() {
        String jar = text("--air", "21 C, 50 %", "--wrap", "jar", "--wrap-after", "6 h");
        assertThat(jar).startsWith("Caution: Never close damp or unsure pieces");
        String hot = text("--air", "46 C, 30 %", "--dry-for", "1 d");
        assertThat(hot).startsWith("Caution: Above 45 C");
        assertThat(text("--air", "21 C, 50 %"))
                .startsWith("Dry in this room")
                .contains("go by weight", "No oven")
                .doesNotContain("guarantee", " safe");
    }

    @Test
    void threadsAndLocalesNeverChangeAByte() {
        Locale before = Locale.getDefault();
        try {
            String[] one = words(LEMON, "--air", "21 C, 55 %", "--json", "--threads", "1");
            String expected = CommandRun.of(one).out();
            for (Locale locale :
                    List.of(Locale.GERMANY, Locale.forLanguageTag("ar-EG"), Locale.forLanguageTag("tr-TR"))) {
                Locale.setDefault(locale);
                String[] many = words(LEMON, "--air", "21 C, 55 %", "--json", "--threads", "3");
                assertThat(CommandRun.of(many).out()).isEqualTo(expected);
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    /** The pieces wet the air of a closed room; the air that dries them within the time cannot be none at all. */
    @Test
    void theAirOfAClosedRoomMayDoWhereDrierAirCannotCome() throws IOException {
        String room = "8 m3, 0.1 changes/h, dehumidifier 300 g/d";
        JsonNode dry = answer(LEMON, "--air", "21 C, 65 %", "--dry-for", "2 d", "--room", room, "--pieces", "400");
        assertThat(AnswerJson.median(dry, "ready_after_h")).isLessThan(48);
        assertThat(dry.get("needs_humidity_below_percent").asDouble()).isGreaterThanOrEqualTo(65);
        assertThat(AnswerJson.codes(dry)).doesNotContain("no-humidity-does");
    }

    @Test
    void thePictureIsWellFormed() throws Exception {
        Path file = folder.resolve("dry.svg");
        answer(LEMON, "--air", "21 C, 55 %", "--wrap-after", "2 d", "--stored", "9 d", "--chart", file.toString());
        var document = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
        assertThat(document.getElementsByTagName("title").getLength()).isEqualTo(1);
        assertThat(Files.readString(file))
                .contains("ready", "wrapped", "put away")
                .doesNotContain("NaN", "url(");
    }

    /**
     * A piece is lighter dry: by most of its free water, 4 g in 527, and by no more than that and all that its starch holds, an
     * eighth of 60 g (common practice, no source). The weighed piece takes what drying left of its fizz.
     */
    @Test
    void dryingOptionsWorkInTheChain() throws IOException {
        String[] damp = {
            "float",
            "--shape",
            "sphere(diameter=65 mm)",
            "--recipe",
            LEMON,
            "--fill",
            "140 g",
            "--samples",
            "128",
            "--json"
        };
        String[] dry = Arrays.copyOf(damp, damp.length + 4);
        System.arraycopy(new String[] {"--air", "21 C, 45 %", "--dry-for", "3 d"}, 0, dry, damp.length, 4);
        double before = mass(CommandRun.of(damp));
        double after = mass(CommandRun.of(dry));
        double water = 140 * 4.0 / 527;
        double starch = 140 * 60.0 / 527 / 8;
        assertThat(after).isBetween(before - water - starch, before - water / 2);
        for (String[] more : new String[][] {{}, {"--fill", "140 g"}}) {
            List<String> weighed = new ArrayList<>(List.of(
                    "float", "--shape", "sphere(diameter=65 mm)", "--recipe", LEMON, "--mass", "139 g", "--samples"));
            weighed.addAll(List.of("128", "--json", "--air", "21 C, 45 %", "--dry-for", "3 d"));
            weighed.addAll(List.of(more));
            assertThat(mass(CommandRun.of(weighed.toArray(new String[0])))).isCloseTo(139, within(1e-3));
        }
    }

    private static double mass(CommandRun run) throws IOException {
        assertThat(run.status()).as(run.err()).isZero();
        return AnswerJson.read(run.out()).get("mass_g").asDouble();
    }
}
