package org.fizzhull.cli.shapes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.reading.StlWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Shapes from files: figures against closed forms, and bad files refused in one line that names the file. */
class ShapeFilesTest {
    /** Corners of a facet pair a face, outward, of a box whose corner k has x, y, z in the bits 1, 2, 4 of k. */
    private static final int[] BOX = {
        0, 2, 3, 0, 3, 1, 4, 5, 7, 4, 7, 6, 0, 1, 5, 0, 5, 4, 2, 6, 7, 2, 7, 3, 0, 4, 6, 0, 6, 2, 1, 3, 7, 1, 7, 5
    };

    @TempDir
    Path folder;

    private static byte[] cube(double side, int facets) {
        double[] xyz = new double[24];
        for (int i = 0; i < 24; i++) {
            xyz[i] = (((i / 3) >> (i % 3)) & 1) * side;
        }
        TriangleMesh mesh = new TriangleMesh(xyz, java.util.Arrays.copyOf(BOX, 3 * facets));
        return StlWriter.ascii(mesh, "cube", 0.001);
    }

    private String file(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes).toString();
    }

    private String csv(String name, String text) throws IOException {
        return "revolved(file=\"" + Files.writeString(folder.resolve(name), text) + "\")";
    }

    private static JsonNode answer(String schema, String... words) throws IOException {
        CommandRun run = CommandRun.of(words);
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(AnswerJson.faults(schema, run.out())).isEmpty();
        return AnswerJson.read(run.out());
    }

    /** Analytic: a cube of 5 cm; what is left at inward depth d is the cube of side 5 cm - 2 d. */
    @Test
    void aCubeFromAMesh() throws IOException {
        String file = file("a cube (50 mm), red.stl", cube(0.05, 12));
        JsonNode cube = answer("shapes", "shapes", "mesh(file=\"" + file + "\", unit=mm)", "--json");
        assertThat(cube.get("shape").asText()).isEqualTo("mesh(file=\"" + file + "\", unit=mm)");
        assertThat(cube.get("volume_cm3").asDouble()).isCloseTo(125, within(1e-4));
        assertThat(cube.get("surface_cm2").asDouble()).isCloseTo(150, within(1e-4));
        assertThat(cube.get("centroid_height_mm").asDouble()).isCloseTo(25, within(1e-4));
        assertThat(cube.get("height_mm").asDouble()).isCloseTo(50, within(1e-4));
        for (JsonNode row : cube.get("depth_profile")) {
            double side = 5 - row.get("depth_mm").asDouble() / 5;
            double left = side * side * side;
            if (left > 12.5) {
                assertThat(row.get("volume_cm3").asDouble()).isCloseTo(left, within(0.005 * 125));
                assertThat(row.get("surface_cm2").asDouble()).isCloseTo(6 * side * side, within(0.01 * 150));
            }
        }
    }

    /** Analytic: a tray of 80 x 60 x 40 mm with a pocket of 60 x 40 x 30 mm: 120 cm3, 192 closed by its rim; m/(a b) deep. */
    @Test
    void aTrayFromAMeshIsABoat() throws IOException {
        String mesh = "mesh(file=\"" + file("tray.stl", tray()) + "\", unit=mm)";
        JsonNode figures = answer("shapes", "shapes", mesh, "--json");
        assertThat(figures.get("volume_cm3").asDouble()).isCloseTo(120, within(1e-3));
        assertThat(figures.get("hull_volume_cm3").asDouble()).isCloseTo(192, within(1e-3));
        JsonNode boat = answer("float", "float", "--shape", mesh, "--mass", "150 g", "--samples", "128", "--json");
        double density = boat.get("limit_mass_g").asDouble() / 120;
        assertThat(boat.get("boat_limit_mass_g").asDouble()).isCloseTo(192 * density, within(1e-3));
        JsonNode rest = boat.get("attitudes").get(0);
        assertThat(rest.get("cavity").asText()).isEqualTo("dry");
        double draft = 150 / density / (8 * 6) * 10;
        assertThat(rest.get("draft_mm").asDouble()).isCloseTo(draft, within(1e-3));
        assertThat(rest.get("freeboard_mm").asDouble()).isCloseTo(40 - draft, within(1e-3));
        assertThat(boat.get("probability").get("floats_at_once").asDouble()).isGreaterThan(0.95);
        assertThat(CommandRun.of("float", "--shape", mesh, "--mass", "150 g").out())
                .contains("the hollow dry", "rim limit");
    }

    private static byte[] tray() {
        double[] xyz = new double[48];
        int[] corners = new int[84];
        double[][] level = {{40, 30, 0}, {40, 30, 40}, {30, 20, 40}, {30, 20, 10}};
        int used = put(corners, 0, 0, 2, 1);
        used = put(corners, used, 0, 3, 2);
        for (int k = 0; k < 4; k++) {
            for (int i = 0; i < 4; i++) {
                xyz[3 * (4 * k + i)] = (i == 0 || i == 3 ? -1 : 1) * level[k][0] / 1000;
                xyz[3 * (4 * k + i) + 1] = (i < 2 ? -1 : 1) * level[k][1] / 1000;
                xyz[3 * (4 * k + i) + 2] = level[k][2] / 1000;
                int j = (i + 1) % 4;
                if (k < 3) {
                    used = put(corners, used, 4 * k + i, 4 * k + j, 4 * k + 4 + j);
                    used = put(corners, used, 4 * k + i, 4 * k + 4 + j, 4 * k + 4 + i);
                }
            }
        }
        used = put(corners, used, 12, 13, 14);
        put(corners, used, 12, 14, 15);
        return StlWriter.ascii(new TriangleMesh(xyz, corners), "tray", 0.001);
    }

    private static int put(int[] corners, int at, int a, int b, int c) {
        corners[at] = a;
        corners[at + 1] = b;
        corners[at + 2] = c;
        return at + 3;
    }

    /** The same cube as a block: the same contract keys from another path through the program. */
    @Test
    void aCubeFromAMeshFloatsAsTheBlockDoes() throws IOException {
        String file = file("cube.stl", cube(0.05, 12));
        String[] tail = {"--mass", "110 g", "--samples", "128", "--json"};
        JsonNode mesh = answer("float", words("float", "--shape", "mesh(file=\"" + file + "\", unit=mm)", tail));
        JsonNode block = answer("float", words("float", "--shape", "cube(side=50 mm)", tail));
        for (String key : new String[] {"volume_cm3", "surface_cm2", "limit_mass_g", "spare_g"}) {
            assertThat(mesh.get(key).asDouble())
                    .as(key)
                    .isCloseTo(block.get(key).asDouble(), within(1e-3));
        }
        assertThat(mesh.get("attitudes").get(0).get("draft_mm").asDouble())
                .isCloseTo(block.get("attitudes").get(0).get("draft_mm").asDouble(), within(0.05));
    }

    /** Two cubes of 50 mm, the second pushed 30 mm into the first, are one block of 70 mm: one solid, two files. */
    @Test
    void twoCubesThatOverlapFloatAsTheBlockTheyMake() throws IOException {
        double[] xyz = new double[48];
        int[] corners = new int[72];
        for (int i = 0; i < 48; i++) {
            xyz[i] = (((i % 24 / 3) >> (i % 3)) & 1) * 0.05 + (i >= 24 && i % 3 == 0 ? 0.02 : 0);
        }
        for (int i = 0; i < 72; i++) {
            corners[i] = BOX[i % 36] + (i < 36 ? 0 : 8);
        }
        byte[] both = StlWriter.ascii(new TriangleMesh(xyz, corners), "two cubes", 0.001);
        String two = "mesh(file=\"" + file("two.stl", both) + "\", unit=mm)";
        double[] box = new double[24];
        for (int i = 0; i < 24; i++) {
            box[i] = (((i / 3) >> (i % 3)) & 1) * (i % 3 == 0 ? 0.07 : 0.05);
        }
        byte[] block = StlWriter.ascii(new TriangleMesh(box, BOX), "a block", 0.001);
        String one = "mesh(file=\"" + file("one.stl", block) + "\", unit=mm)";
        // near the limit, where the chance to float moves most
        String[] tail = {"--mass", "172 g", "--samples", "512", "--json"};
        JsonNode united = answer("float", words("float", "--shape", two, tail));
        JsonNode solid = answer("float", words("float", "--shape", one, tail));
        assertThat(united.get("volume_cm3").asDouble()).isCloseTo(175, within(1e-3));
        assertThat(united.get("surface_cm2").asDouble()).isCloseTo(190, within(1e-3));
        assertThat(united.get("probability").get("floats_at_once").asDouble())
                .isCloseTo(solid.get("probability").get("floats_at_once").asDouble(), within(0.01));
        double time = solid.get("fizz_time_s").asDouble();
        assertThat(united.get("fizz_time_s").asDouble()).isCloseTo(time, within(0.02 * time));
        assertThat(united.get("notices").toString()).contains("mesh-united", "2 bodies", "75 cm3");
        assertThat(CommandRun.of("shapes", two).out()).contains("2 bodies that overlap or touch were united; 75 cm3");
    }

    private static String[] words(String command, String option, String shape, String[] tail) {
        String[] words = new String[3 + tail.length];
        words[0] = command;
        words[1] = option;
        words[2] = shape;
        System.arraycopy(tail, 0, words, 3, tail.length);
        return words;
    }

    /** Analytic: a ball of 65 mm as an outline of n chords is that many cone frustums; 2000 chords are 1e-6 short. */
    @Test
    void aBallFromAnOutline() throws IOException {
        StringBuilder text = new StringBuilder("z_cm,r_mm\r\n");
        int n = 2000;
        for (int i = 0; i <= n; i++) {
            double angle = Math.PI * i / n;
            double r = i == 0 || i == n ? 0 : 32.5 * Math.sin(angle);
            text.append(-3.25 * Math.cos(angle)).append(',').append(r).append("\r\n");
        }
        JsonNode ball = answer("shapes", "shapes", csv("ball.csv", text.toString()), "--json");
        assertThat(ball.get("volume_cm3").asDouble()).isCloseTo(143.793, within(2e-3));
        assertThat(ball.get("surface_cm2").asDouble()).isCloseTo(132.732, within(2e-3));
        assertThat(ball.get("centroid_height_mm").asDouble()).isCloseTo(32.5, within(1e-4));
        assertThat(ball.get("deepest_mm").asDouble()).isCloseTo(32.5, within(0.05));
    }

    @Test
    void whatWasMendedIsSaid() throws IOException {
        String text = new String(cube(0.05, 12), java.nio.charset.StandardCharsets.UTF_8).replace("endsolid cube", "");
        String shape = "mesh(file=\"" + Files.writeString(folder.resolve("cut.stl"), text) + "\", unit=mm)";
        assertThat(CommandRun.of("shapes", shape).out()).contains("no endsolid");
        assertThat(CommandRun.of("float", "--shape", shape, "--mass", "110 g", "--samples", "0")
                        .out())
                .contains("no endsolid");
    }

    @Test
    void badFilesAreRefusedInOneLineWithTheirName() throws IOException {
        mesh("open.stl", cube(0.05, 11), "mm", "mesh-open", "open edges");
        mesh("inches.stl", cube(0.05, 12), "in", "out-of-range", "With unit=mm it would be 50 mm");
        mesh(
                "text.stl",
                "a letter to a friend, of no importance but long enough to be looked at by a program"
                        .getBytes(java.nio.charset.StandardCharsets.UTF_8),
                "mm",
                "",
                "STL");
        mesh("empty.stl", new byte[0], "mm", "", "0 bytes");
        refused("no-file", "nothere.stl", "mesh(file=\"" + folder.resolve("nothere.stl") + "\", unit=mm)", "there");
        refused("a-folder", folder.getFileName().toString(), "mesh(file=\"" + folder + "\", unit=mm)", "folder");
        refused("no-header", "a.csv, line 1", csv("a.csv", "r_mm;z_mm\n0;0\n"), "comma");
        refused("missing-unit", "b.csv, line 1", csv("b.csv", "r,z\n0,0\n10,0\n0,10\n"), "r_mm");
        refused("unknown-unit", "c.csv, line 1", csv("c.csv", "r_mn,z_mm\n0,0\n10,0\n0,10\n"), "r_mm");
        refused("not-a-number", "d.csv, line 3", csv("d.csv", "r_mm,z_mm\n0,0\nten,0\n0,10\n"), "ten");
        refused("not-a-point", "e.csv, line 3", csv("e.csv", "r_mm,z_mm\n0,0\n10,5,0\n0,10\n"), "10,5,0");
        refused(
                "profile-crossing",
                "f.csv",
                csv("f.csv", "r_mm,z_mm\n0,0\n20,20\n20,0\n10,20\n0,20\n"),
                "meets itself");
        refused("profile-open", "g.csv", csv("g.csv", "r_mm,z_mm\n0,0\n20,0\n20,20\n"), "axis");
        refused("profile-points", "h.csv", csv("h.csv", "r_mm,z_mm\n"), "points");
        refused("no-header", "i.csv", csv("i.csv", ""), "r_mm,z_mm");
    }

    @Test
    void aMeshNeedsItsUnit() throws IOException {
        String file = file("cube.stl", cube(0.05, 12));
        refused("missing-key", "unit", "mesh(file=\"" + file + "\")", "unit=mm");
        refused("unknown-unit", "unit", "mesh(file=\"" + file + "\", unit=MM)", "unit=mm");
    }

    private void mesh(String name, byte[] bytes, String unit, String code, String says) throws IOException {
        refused(code, name, "mesh(file=\"" + file(name, bytes) + "\", unit=" + unit + ")", says);
    }

    private static void refused(String code, String place, String shape, String says) throws IOException {
        CommandRun run = CommandRun.of("float", "--shape", shape, "--mass", "100 g", "--json");
        assertThat(run.status()).as(shape).isEqualTo(2);
        assertThat(run.err().lines()).hasSize(1);
        assertThat(run.err()).contains(place).contains(says);
        assertThat(AnswerJson.read(run.out()).get("error").get("code").asText()).contains(code);
    }
}
