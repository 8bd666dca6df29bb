package org.fizzhull.cli.program;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.fizzhull.cli.CommandRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The contract of {@code stream}: an answer a line, in order, the answer of the command line, and no file but the allowed. */
class StreamTest {
    private static final String BALL = "\"shape\": \"sphere(diameter=65 mm)\"";
    private static final String GOOD = "{\"command\": \"float\", " + BALL + ", \"mass\": \"138 g\", \"samples\": 0}";
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path folder;

    @Test
    void answersLikeTheCommandLine() throws IOException {
        ObjectNode request = JSON.createObjectNode();
        request.put("id", 7).put("command", "float").put("shape", "bowl(diameter=90 mm, wall=15 mm)");
        request.put("mass", "140 g +- 3 g")
                .put("samples", 128)
                .put("no_fizz", true)
                .put("into_bath", "placed");
        JsonNode answer = answers(request.toString()).get(0);

        CommandRun alone = CommandRun.of(
                "float",
                "--shape",
                "bowl(diameter=90 mm, wall=15 mm)",
                "--mass",
                "140 g +- 3 g",
                "--samples",
                "128",
                "--no-fizz",
                "--into-bath",
                "placed",
                "--json");
        assertThat(alone.status()).isZero();
        assertThat(answer.get("id").asInt()).isEqualTo(7);
        assertThat(answer.get("result")).isEqualTo(JSON.readTree(alone.out()));
        assertThat(answer.has("error")).isFalse();
    }

    /** A question of many draws stands before one of none: the second is ready first and waits for its turn. */
    @Test
    void keepsTheOrderOnManyThreads() throws IOException {
        StringBuilder lines = new StringBuilder();
        for (int id = 0; id < 60; id++) {
            int samples = id % 7 == 0 ? 1024 : 0;
            lines.append("{\"id\": ")
                    .append(id)
                    .append(", \"command\": \"float\", ")
                    .append(BALL);
            lines.append(", \"mass\": \"")
                    .append(100 + id)
                    .append(" g\", \"samples\": ")
                    .append(samples);
            lines.append("}\n");
        }
        List<JsonNode> answers = read(stream(lines.toString(), "--threads", "4"));

        assertThat(answers).hasSize(60);
        for (int id = 0; id < 60; id++) {
            assertThat(answers.get(id).get("id").asInt()).isEqualTo(id);
            assertThat(answers.get(id).get("result").get("mass_g").asDouble()).isEqualTo(100 + id);
        }
    }

    @Test
    void takesListsFlagsNumbersAndTheFreeWordOfShapes() throws IOException {
        List<JsonNode> answers = answers(
                "{\"id\": \"a\\\"b\", \"command\": \"shapes\", \"shape\": \"ball(diameter=50 mm)\"}",
                "{\"id\": 1e3, \"command\": \"ingredients\", \"name\": \"kaolin\"}",
                "{\"id\": null, \"command\": \"compare\", \"density\": \"1.0 g/cm3\", \"samples\": 128, \"shape\":"
                        + " [\"sphere(diameter=60 mm)\", \"dome(diameter=80 mm)\"], \"no_fizz\": false}",
                "{\"command\": \"shapes\"}");

        assertThat(answers.get(0).get("id").asText()).isEqualTo("a\"b");
        // PUBLISHED: volume of a sphere, pi d^3 / 6
        assertThat(answers.get(0).get("result").get("volume_cm3").asDouble())
                .isCloseTo(Math.PI * 125 / 6, org.assertj.core.api.Assertions.within(1e-3));
        assertThat(stream("{\"id\": 1e3, \"command\": \"shapes\"}\n")).startsWith("{\"id\":1e3,");
        // RFC 8259, section 7: an escape is the character it names
        String turned = stream("{\"id\": \"a\u202eb\", \"command\": \"shapes\"}\n");
        assertThat(turned).startsWith("{\"id\":\"a\\u202Eb\",");
        assertThat(JSON.readTree(turned).get("id").asText()).isEqualTo("a\u202eb");
        assertThat(answers.get(1).get("result").get("rows").get(0).get("name").asText())
                .isEqualTo("kaolin");
        assertThat(answers.get(2).get("result").get("rows")).hasSize(2);
        assertThat(answers.get(3).get("result").get("command").asText()).isEqualTo("shapes");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "   ",
                "{",
                "}",
                "[]",
                "null",
                "7",
                "\"float\"",
                "{}",
                "{\"command\": null}",
                "{\"command\": 7}",
                "{\"command\": \"\"}",
                "{\"command\": \"flaot\"}",
                "{\"command\": \"stream\"}",
                "{\"command\": \"--help\"}",
                "{\"command\": \"float\"} {\"command\": \"float\"}",
                "{\"command\": \"float\", \"command\": \"float\"}",
                "{\"command\": \"float\", \"id\": [1]}",
                "{\"command\": \"float\", \"id\": true}",
                "{\"command\": \"float\", \"shape\": {\"diameter\": 65}}",
                "{\"command\": \"float\", \"shape\": [[\"sphere(diameter=65 mm)\"]]}",
                "{\"command\": \"float\", \"help\": true}",
                "{\"command\": \"float\", \"explain\": true}",
                "{\"command\": \"float\", \"version\": true}",
                "{\"command\": \"float\", \"no-fizz\": true}",
                "{\"command\": \"float\", \"\": true}",
                "{\"command\": \"float\", \"mass=5\": \"g\"}",
                "{\"command\": \"float\", \"no_fizz\": \"yes\"}",
                "{\"command\": \"float\", \"mass\": true}",
                "{\"command\": \"float\", \"shape\": \"--json\", \"mass\": \"138 g\"}",
                "{\"command\": \"float\", \"shape\": \"sphere(diameter=65 mm)\", \"mass\": \"138 g --no-fizz\"}",
                "{\"command\": \"float\", \"shape\": \"sphere(diameter=65 mm)\", \"mass\": \"--no-fizz\"}",
                "{\"command\": \"float\", \"shape\": \"sphere(diameter=65 mm)\", \"mass\": [\"1 g\", \"2 g\"]}",
                "{\"command\": \"shapes\", \"shape\": \"--chart=x.svg\"}",
                "{\"command\": \"shapes\", \"shape\": \"-h\"}",
                "{\"command\": \"shapes\", \"shape\": \"a\\u0000b\"}",
                "{\"command\": \"float\", \"mass\": NaN}",
                "{'command': 'float'}",
                "\u0000\u0001\u0002",
            })
    void aBadLineIsAnsweredAndStopsNothing(String bad) throws IOException {
        List<JsonNode> answers = answers(GOOD, bad, GOOD);

        assertThat(answers).hasSize(3);
        JsonNode error = answers.get(1).get("error");
        assertThat(error).as(answers.get(1).toString()).isNotNull();
        assertThat(error.get("code").asText()).isNotBlank().isNotEqualTo("internal-failure");
        assertThat(error.get("hint").asText()).isNotBlank();
        assertThat(answers.get(0).get("result")).isEqualTo(answers.get(2).get("result"));
    }

    @Test
    void aFaultBehindTheIdIsAnsweredUnderIt() throws IOException {
        List<JsonNode> answers = answers("{\"id\": 5, \"command\": \"float\",,}", "{\"command\",, \"id\": 5}");

        assertThat(answers.get(0).get("id").asInt()).isEqualTo(5);
        assertThat(answers.get(1).get("id").isNull()).isTrue();
    }

    /** 1 MiB is 2^20 bytes. */
    @Test
    void aLineAboveOneMebibyteIsRefused() throws IOException {
        String start = "{\"id\": 1, \"command\": \"float\", \"shape\": \"";
        String end = "\"}";
        int fill = (1 << 20) - start.length() - end.length();
        String just = start + "x".repeat(fill) + end;
        String above = start + "x".repeat(fill + 1) + end;
        List<JsonNode> answers = answers(just, above, "x".repeat(5 << 20), GOOD);

        assertThat(answers).hasSize(4);
        assertThat(answers.get(0).get("id").asInt()).isEqualTo(1);
        assertThat(answers.get(0).get("error").get("code").asText()).isNotEqualTo("too-long");
        assertThat(answers.get(1).get("error").get("code").asText()).isEqualTo("too-long");
        assertThat(answers.get(1).get("id").isNull()).isTrue();
        assertThat(answers.get(2).get("error").get("code").asText()).isEqualTo("too-long");
        assertThat(answers.get(3).has("result")).isTrue();
    }

    @Test
    void bytesThatAreNoTextAreRefused() throws IOException {
        ByteArrayOutputStream lines = new ByteArrayOutputStream();
        lines.write(new byte[] {(byte) 0xff, (byte) 0xfe, 0x7b, '\n', (byte) 0xc0, (byte) 0x80, '\n'});
        lines.writeBytes(GOOD.getBytes(StandardCharsets.UTF_8)); // and no line end behind the last
        List<JsonNode> answers = read(stream(new ByteArrayInputStream(lines.toByteArray())));

        assertThat(answers).hasSize(3);
        assertThat(answers.get(0).get("error").get("code").asText()).isEqualTo("not-text");
        assertThat(answers.get(1).get("error").get("code").asText()).isEqualTo("not-text");
        assertThat(answers.get(2).has("result")).isTrue();
    }

    @Test
    void opensAndWritesNothingWithoutFiles() throws IOException {
        Path recipe = Files.writeString(folder.resolve("recipe.yaml"), "dry:\n  citric acid: 100 g\n");
        Path chart = folder.resolve("chart.svg");
        List<JsonNode> answers = answers(
                request("press", "recipe", recipe.toString(), "press", "firm", "shape", "sphere(diameter=65 mm)"),
                request("shapes", "shape", "ball(diameter=65 mm)", "chart", chart.toString()),
                request("shapes", "shape", "mesh(file=\"" + recipe + "\", unit=mm)"),
                request("shapes", "shape", "revolved(file=\"" + recipe + "\")"),
                request("compare", "moulds", recipe.toString(), "density", "1 g/cm3"));

        assertThat(answers)
                .allSatisfy(answer ->
                        assertThat(answer.get("error").get("code").asText()).isEqualTo("no-files"));
        assertThat(chart).doesNotExist();
    }

    @Test
    void opensAndWritesOnlyInsideTheFolder() throws IOException {
        Path inside = Files.createDirectories(folder.resolve("inside"));
        Path outside = Files.writeString(folder.resolve("outline.csv"), "r_mm,z_mm\n0,0\n20,0\n20,30\n0,30\n");
        Files.copy(outside, inside.resolve("outline.csv"));
        Files.createSymbolicLink(inside.resolve("link.csv"), outside);
        Files.createSymbolicLink(inside.resolve("up"), folder);
        Files.createSymbolicLink(inside.resolve("nowhere"), folder.resolve("new.svg"));
        Files.writeString(inside.resolve("moulds.csv"), "name;shape\ntower;revolved(file=\"../outline.csv\")\n");
        List<JsonNode> answers = read(stream(
                String.join(
                        "\n",
                        request("shapes", "shape", "revolved(file=\"outline.csv\")", "chart", "tower.svg"),
                        request("shapes", "shape", "revolved(file=\"../outline.csv\")"),
                        request("shapes", "shape", "revolved(file=\"" + outside + "\")"),
                        request("shapes", "shape", "revolved(file=\"link.csv\")"),
                        request("shapes", "shape", "revolved(file=\"up/outline.csv\")"),
                        request("shapes", "shape", "revolved(file=\"../missing.csv\")"),
                        request("shapes", "shape", "ball(diameter=65 mm)", "chart", "../new.svg"),
                        request("shapes", "shape", "ball(diameter=65 mm)", "chart", "up/new.svg"),
                        request("shapes", "shape", "ball(diameter=65 mm)", "chart", "nowhere/new.svg"),
                        request("compare", "moulds", "moulds.csv", "density", "1 g/cm3"),
                        request("shapes", "shape", "revolved(file=\"missing.csv\")")),
                "--files",
                inside.toString()));

        assertThat(answers.get(0).has("result")).as(answers.get(0).toString()).isTrue();
        assertThat(inside.resolve("tower.svg")).exists();
        for (JsonNode refused : answers.subList(1, 10)) {
            assertThat(refused.get("error").get("code").asText())
                    .as(refused.toString())
                    .isEqualTo("outside-folder");
        }
        assertThat(folder.resolve("new.svg")).doesNotExist();
        assertThat(answers.get(10).get("error").get("code").asText()).isEqualTo("no-file");
    }

    /** A program that asks and waits has its answer before it closes the stream. */
    @Test
    void answersBeforeTheInputEnds() throws Exception {
        PipedOutputStream questions = new PipedOutputStream();
        PipedInputStream in = new PipedInputStream(questions);
        PipedInputStream answers = new PipedInputStream(1 << 16);
        PrintStream out = new PrintStream(new PipedOutputStream(answers), false, StandardCharsets.UTF_8);
        CompletableFuture<Integer> run =
                CompletableFuture.supplyAsync(() -> new Program(in, out, System.err).run("stream"));
        questions.write((GOOD + "\n").getBytes(StandardCharsets.UTF_8));
        questions.flush();
        CompletableFuture<Integer> first = CompletableFuture.supplyAsync(() -> {
            try {
                return answers.read();
            } catch (IOException e) {
                return -2;
            }
        });
        assertThat(first.get(60, TimeUnit.SECONDS)).isEqualTo('{');
        questions.close();
        assertThat(run.get(60, TimeUnit.SECONDS)).isZero();
    }

    /** The input would go on for ever: reading ends since nobody takes the answers. */
    @Test
    void endsWhereNobodyTakesTheAnswers() {
        byte[] line = (GOOD + "\n").getBytes(StandardCharsets.UTF_8);
        InputStream endless = new InputStream() {
            private int at;

            @Override
            public int read() {
                return line[at++ % line.length];
            }

            @Override
            public int read(byte[] into, int from, int most) {
                for (int i = 0; i < most; i++) {
                    into[from + i] = (byte) read();
                }
                return most;
            }
        };
        PrintStream closed = new PrintStream(
                new OutputStream() {
                    @Override
                    public void write(int b) throws IOException {
                        throw new IOException("closed");
                    }
                },
                false,
                StandardCharsets.UTF_8);

        assertThat(new Program(endless, closed, System.err).run("stream")).isZero();
    }

    private static String request(String command, String... pairs) {
        ObjectNode request = JSON.createObjectNode().put("command", command);
        for (int i = 0; i < pairs.length; i += 2) {
            request.put(pairs[i], pairs[i + 1]);
        }
        return request.toString();
    }

    private static List<JsonNode> answers(String... lines) throws IOException {
        return read(stream(String.join("\n", lines) + "\n"));
    }

    private static List<JsonNode> read(String out) throws IOException {
        List<JsonNode> answers = new ArrayList<>();
        for (String line : out.split("\n", -1)) {
            if (!line.isEmpty()) {
                answers.add(JSON.readTree(line));
            }
        }
        return answers;
    }

    private static String stream(String lines, String... options) {
        return stream(new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8)), options);
    }

    private static String stream(InputStream in, String... options) {
        List<String> words = new ArrayList<>(List.of("stream"));
        words.addAll(List.of(options));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = new Program(
                        in,
                        new PrintStream(out, false, StandardCharsets.UTF_8),
                        new PrintStream(err, false, StandardCharsets.UTF_8))
                .run(words.toArray(new String[0]));
        assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
        assertThat(status).isZero();
        return out.toString(StandardCharsets.UTF_8);
    }
}
