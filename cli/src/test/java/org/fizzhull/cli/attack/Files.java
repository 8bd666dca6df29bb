package org.fizzhull.cli.attack;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.fizzhull.recipe.IngredientTable;

/** Files of every kind that the program reads, whole and spoilt, written where a line names them. */
final class Files {
    private static final List<String> POWDERS = names(false);
    private static final List<String> LIQUIDS = names(true);

    private final Path folder;
    private final List<Path> written = new ArrayList<>();
    private int count;

    Files(Path folder) {
        this.folder = folder;
    }

    private static List<String> names(boolean wet) {
        return IngredientTable.standard().all().stream()
                .filter(ingredient -> ingredient.role().mayBeWet() == wet)
                .map(ingredient -> ingredient.name())
                .collect(Collectors.toList());
    }

    /** Takes away what the last line had. */
    void clear() {
        for (Path file : written) {
            try {
                java.nio.file.Files.deleteIfExists(file);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        written.clear();
        count = 0;
    }

    String recipe(Dice dice) {
        return write(dice, ".yaml", recipeText(dice).getBytes(StandardCharsets.UTF_8), 8);
    }

    String outline(Dice dice) {
        return write(dice, ".csv", outlineText(dice).getBytes(StandardCharsets.UTF_8), 5);
    }

    String log(Dice dice) {
        return write(dice, ".csv", logText(dice).getBytes(StandardCharsets.UTF_8), 5);
    }

    String mesh(Dice dice) {
        return write(dice, ".stl", meshBytes(dice), 4);
    }

    String chart(Dice dice) {
        Path file = folder.resolve("chart" + count++ + dice.of(".svg", ".svg", ".svg", ".png"));
        written.add(file);
        return file.toString();
    }

    /** The charts that were written for this line. */
    List<Path> charts() {
        return written.stream()
                .filter(file -> file.toString().endsWith(".svg") && java.nio.file.Files.exists(file))
                .collect(Collectors.toList());
    }

    static String recipeText(Dice dice) {
        StringBuilder text = new StringBuilder();
        if (dice.once(2)) {
            text.append("recipe: ")
                    .append(dice.of("Lighthouse lemon", "\"a & <b>\"", "ä°½", "x"))
                    .append('\n');
        }
        double size = dice.once(6) ? dice.spread(1e-3, 1e5) : dice.spread(50, 900);
        text.append("dry:\n");
        if (!dice.once(12)) {
            line(text, "sodium bicarbonate", dice, size);
        }
        if (!dice.once(8)) {
            line(text, dice.of("citric acid anhydrous", "citric acid", "tartaric acid", "malic acid"), dice, size / 2);
        }
        for (int i = dice.below(5); i > 0; i--) {
            String name = dice.of(POWDERS);
            if (text.indexOf(name) < 0) {
                line(text, name, dice, size / 6);
            }
        }
        if (!dice.once(6)) {
            text.append("wet:\n");
            line(
                    text,
                    dice.of("water", "witch hazel", "sweet almond oil", "sunflower oil", "cocoa butter"),
                    dice,
                    size / 40);
            if (dice.once(2)) {
                line(
                        text,
                        dice.once(3)
                                ? dice.of(LIQUIDS)
                                : dice.of(
                                        "lemon fragrance",
                                        "lavender oil",
                                        "polysorbate 80",
                                        "glycerin",
                                        "isopropyl alcohol"),
                        dice,
                        size / 60);
            }
        }
        if (dice.once(6)) {
            text.append("total: ").append(Values.number(dice.spread(1, 5000))).append(" g\n");
        }
        if (dice.once(6)) {
            text.append("acid last: ").append(dice.of("true", "false", "yes")).append('\n');
        }
        if (dice.once(12)) {
            text.append("prices:\n  sodium bicarbonate: ")
                    .append(dice.of("3.10 / kg", "1 / 1e-9 g", "0.01 / kg", "1e9 / g"))
                    .append('\n');
        }
        if (dice.once(12)) {
            text.append("limits:\n  sodium bicarbonate: ")
                    .append(dice.of("1 %", "0.5 %", "50 %", "0.0001 %"))
                    .append('\n');
        }
        if (dice.once(8)) {
            text.append("own ingredients:\n");
            for (int i = dice.of(1, 1, 2, 3, 40); i > 0; i--) {
                text.append("  oat flour ")
                        .append(i)
                        .append(": {true density: ")
                        .append(dice.of("1.42 g/cm3", "1.42 g/cm3", "1.2 g/cm3", "2.9 g/cm3", "0.9 g/cm3"))
                        .append(", loose density: ")
                        .append(dice.of("0.48 g/cm3", "0.48 g/cm3", "0.05 g/cm3", "0.8 g/cm3"))
                        .append("}\n");
            }
            text.insert(text.indexOf("dry:\n") + 5, "  oat flour 1: " + Values.number(size / 10) + " g\n");
        }
        return text.toString();
    }

    private static void line(StringBuilder text, String name, Dice dice, double grams) {
        double amount = dice.once(10) ? dice.spread(1e-6, 1e6) : grams * dice.between(0.2, 2);
        text.append("  ").append(name).append(": ");
        switch (dice.below(8)) {
            case 0 ->
                text.append(Values.number(amount))
                        .append(" to ")
                        .append(Values.number(amount * 1.2))
                        .append(" g");
            case 1 ->
                text.append(Values.number(amount))
                        .append(" g +- ")
                        .append(Values.number(amount / 20))
                        .append(" g");
            case 2 -> text.append(Values.number(amount / 28.35)).append(" oz");
            case 3 -> text.append(Values.number(amount)).append(" mL");
            case 4 -> text.append(Values.number(amount / 100)).append(" cup");
            default -> text.append(Values.number(amount)).append(" g");
        }
        text.append('\n');
    }

    static String outlineText(Dice dice) {
        StringBuilder text = new StringBuilder(dice.of("r_mm,z_mm\n", "r_mm,z_mm\n", "z_cm,r_cm\n", "r_in,z_in\n"));
        int n = dice.of(3, 5, 9, 30, 200);
        double size = dice.once(5) ? dice.spread(0.01, 2000) : dice.between(20, 60);
        boolean hollow = dice.once(3);
        text.append("0,0\n");
        for (int i = 1; i < n; i++) {
            double a = Math.PI * i / n;
            double r = size * (Math.sin(a) + dice.between(0, 0.05));
            text.append(Values.number(r))
                    .append(',')
                    .append(Values.number(size * (1 - Math.cos(a))))
                    .append('\n');
        }
        if (hollow) {
            text.append(Values.number(size / 2))
                    .append(',')
                    .append(Values.number(size * 2))
                    .append("\n0,")
                    .append(Values.number(size * dice.between(0.01, 1.9)))
                    .append('\n');
        } else {
            text.append("0,").append(Values.number(size * 2)).append('\n');
        }
        return text.toString();
    }

    static String logText(Dice dice) {
        StringBuilder text =
                new StringBuilder(dice.of("piece,when,weight_g\n", "when;weight_g\n", "weight_g,when,piece,note\n"));
        String head = text.toString();
        String separator = head.contains(";") ? ";" : ",";
        boolean dates = dice.once(3);
        double grams = dice.once(4) ? dice.spread(0.01, 1e5) : dice.between(100, 200);
        double hours = 0;
        for (int i = dice.of(2, 3, 5, 30, 99); i > 0; i--) {
            hours += dice.once(10) ? dice.spread(1e-9, 1e4) : dice.spread(1, 40);
            grams *= dice.once(6) ? dice.between(0.9, 1.1) : dice.between(0.97, 1);
            String when = dates
                    ? String.format(Locale.ROOT, "2026-08-%02d %02d:30", 14 + (int) (hours / 24) % 17, (int) hours % 24)
                    : Values.number(hours) + " h";
            String weight = Values.number(grams);
            text.append(
                    switch (head.charAt(0)) {
                        case 'p' -> "A" + separator + when + separator + weight;
                        case 'w' ->
                            head.startsWith("when")
                                    ? when + separator + weight
                                    : weight + separator + when + separator + "A" + separator + "x";
                        default -> weight;
                    });
            text.append('\n');
        }
        return text.toString();
    }

    /** A closed body of triangles, in places holed, turned inside out, flattened, torn apart or without end. */
    static byte[] meshBytes(Dice dice) {
        List<double[]> facets = new ArrayList<>();
        double size = dice.once(4) ? dice.spread(0.01, 3000) : dice.between(20, 60);
        double flat = dice.once(6) ? dice.spread(1e-4, 1) : 1;
        boolean ball = dice.once(2);
        int rings = dice.of(2, 3, 6, 12);
        int sides = dice.of(3, 4, 8, 20);
        for (int i = 0; i < rings; i++) {
            for (int k = 0; k < sides; k++) {
                double[] a = corner(i, k, rings, sides, size, flat, ball);
                double[] b = corner(i, k + 1, rings, sides, size, flat, ball);
                double[] c = corner(i + 1, k + 1, rings, sides, size, flat, ball);
                double[] d = corner(i + 1, k, rings, sides, size, flat, ball);
                if (i > 0) {
                    facets.add(new double[] {a[0], a[1], a[2], b[0], b[1], b[2], c[0], c[1], c[2]});
                }
                if (i < rings - 1) {
                    facets.add(new double[] {a[0], a[1], a[2], c[0], c[1], c[2], d[0], d[1], d[2]});
                }
            }
        }
        for (int i = dice.once(3) ? 1 + dice.below(3) : 0; i > 0; i--) {
            double[] facet = dice.of(facets);
            switch (dice.below(5)) {
                case 0 -> facets.remove(facet);
                case 1 -> facets.add(facet.clone());
                case 2 -> facet[dice.below(9)] = dice.of(0.0, 1e30, Double.NaN, -1e9, Double.POSITIVE_INFINITY, 1e-30);
                case 3 -> facet[dice.below(9)] += size * dice.between(-1, 1);
                default -> {
                    double x = facet[0];
                    facet[0] = facet[3];
                    facet[3] = x;
                }
            }
        }
        return dice.once(2) ? binary(facets) : ascii(facets);
    }

    private static double[] corner(int ring, int side, int rings, int sides, double size, double flat, boolean ball) {
        double polar = Math.PI * ring / rings;
        double turn = 2 * Math.PI * (side % sides) / sides;
        double radius = ring == 0 || ring == rings ? 0 : size * (ball ? Math.sin(polar) : 1);
        double height = size * flat * (1 - (ball ? Math.cos(polar) : 1 - 2.0 * ring / rings));
        return new double[] {(float) (radius * Math.cos(turn)), (float) (-radius * Math.sin(turn)), (float) height};
    }

    private static byte[] binary(List<double[]> facets) {
        ByteBuffer bytes = ByteBuffer.allocate(84 + 50 * facets.size()).order(ByteOrder.LITTLE_ENDIAN);
        bytes.position(80);
        bytes.putInt(facets.size());
        for (double[] facet : facets) {
            bytes.putFloat(0).putFloat(0).putFloat(0);
            for (double value : facet) {
                bytes.putFloat((float) value);
            }
            bytes.putShort((short) 0);
        }
        return bytes.array();
    }

    private static byte[] ascii(List<double[]> facets) {
        StringBuilder text = new StringBuilder("solid body\n");
        for (double[] facet : facets) {
            text.append("facet normal 0 0 0\nouter loop\n");
            for (int i = 0; i < 9; i += 3) {
                text.append("vertex ")
                        .append(facet[i])
                        .append(' ')
                        .append(facet[i + 1])
                        .append(' ')
                        .append(facet[i + 2])
                        .append('\n');
            }
            text.append("endloop\nendfacet\n");
        }
        return text.append("endsolid body\n").toString().getBytes(StandardCharsets.UTF_8);
    }

    private String write(Dice dice, String end, byte[] bytes, int spoilOneIn) {
        Path file = folder.resolve("file" + count++ + end);
        try {
            java.nio.file.Files.write(file, dice.once(spoilOneIn) ? Mutation.bytes(dice, bytes) : bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        written.add(file);
        return file.toString();
    }
}
