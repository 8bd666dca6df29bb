package org.fizzhull.cli.agreement;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.text.ShapeText;

/** Questions by chance; the same seed and number is the same question. Invented pieces of an invented workshop. */
final class Questions {
    private final Path folder;
    private final long seed;

    Questions(Path folder, long seed) {
        this.folder = folder;
        this.seed = seed;
    }

    /** The question of that number; its recipe is written. */
    Asked at(long number) {
        SplittableRandom dice = new SplittableRandom(seed * 1_000_003 + number);
        String shape = readable(dice);
        boolean hollow = shape.startsWith("bowl") || shape.startsWith("geode");
        Asked.Mix mix = mix(dice);
        List<String> making = making(dice, shape);
        boolean weighed = making.get(0).equals("--mass");
        List<String> load = hollow ? List.of() : load(dice);
        List<String> drying = weighed || once(dice, 3) ? List.of() : drying(dice);
        return new Asked(number, shape, mix, making, load, drying, bath(dice, hollow), 1 + dice.nextInt(60));
    }

    /** A shape that can be pressed: drawn again where the crystals do not fit their hollow. */
    private static String readable(SplittableRandom dice) {
        while (true) {
            String shape = shape(dice);
            try {
                ShapeText.read(shape);
                return shape;
            } catch (Refusal refused) {
                // drawn again
            }
        }
    }

    private static String shape(SplittableRandom dice) {
        int d = 45 + dice.nextInt(50);
        return switch (dice.nextInt(12)) {
            case 0, 1, 2 -> "sphere(diameter=" + d + " mm)";
            case 3, 4 -> "dome(diameter=" + d + " mm)";
            case 5 -> "bowl(diameter=" + (d + 10) + " mm, wall=" + (11 + dice.nextInt(7)) + " mm)";
            case 6 ->
                "geode(diameter=" + (d + 15) + " mm, wall=" + (11 + dice.nextInt(6)) + " mm, crystals="
                        + (5 + dice.nextInt(25)) + " g)";
            case 7 -> "puck(diameter=" + d + " mm, height=" + (18 + dice.nextInt(25)) + " mm)";
            case 8 -> "block(length=" + d + " mm, width=" + (d - 10) + " mm, height=" + (d - 18) + " mm)";
            case 9 -> "heart(width=" + d + " mm, height=" + (20 + dice.nextInt(20)) + " mm)";
            case 10 -> "star(points=5, diameter=" + (d + 15) + " mm, inner=" + (d - 10) + " mm, height=30 mm)";
            default -> "cone(diameter=" + d + " mm, height=" + (d - 5) + " mm)";
        };
    }

    private Asked.Mix mix(SplittableRandom dice) {
        boolean acid = !once(dice, 8);
        boolean priced = once(dice, 2);
        StringBuilder text = new StringBuilder("recipe: Lamp room " + dice.nextInt(100) + "\ndry:\n");
        text.append("  sodium bicarbonate: 300 g\n");
        if (acid) {
            text.append("  citric acid anhydrous: ")
                    .append(once(dice, 8) ? 3 : 90 + dice.nextInt(110))
                    .append(" g\n");
        }
        text.append("  corn starch: ").append(10 + dice.nextInt(90)).append(" g\n");
        String[] extras = {"kaolin", "table salt", "epsom salt", "skimmed milk powder", "slsa"};
        if (once(dice, 2)) {
            text.append("  ").append(extras[dice.nextInt(extras.length)]).append(": ");
            text.append(10 + dice.nextInt(60)).append(" g\n");
        }
        text.append("wet:\n");
        text.append("  ")
                .append(once(dice, 3) ? "cocoa butter" : "sweet almond oil")
                .append(": ");
        text.append(4 + dice.nextInt(20)).append(" g\n");
        String[] wets = {"water", "witch hazel", "glycerine"};
        if (!once(dice, 5)) {
            text.append("  ").append(wets[dice.nextInt(wets.length)]).append(": ");
            text.append(once(dice, 8) ? 60 : 1 + dice.nextInt(10)).append(" g\n");
        }
        if (priced) {
            text.append("prices: {sodium bicarbonate: 3.10 / kg, corn starch: 2.40 / kg}\n");
        }
        Path file = folder.resolve("lamp-room.yaml");
        try {
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Asked.Mix(file.toString(), acid, priced);
    }

    /** Weights near the border of floating, where answers differ most. */
    private static List<String> making(SplittableRandom dice, String shape) {
        double grams = 1e6 * ShapeText.read(shape).volume() * (0.80 + 0.35 * dice.nextDouble());
        if (shape.startsWith("bowl") || shape.startsWith("geode")) {
            grams *= 1 + 0.4 * dice.nextDouble();
        }
        String weight = (grams < 60 ? Math.round(grams * 10) / 10.0 : Math.round(grams)) + " g";
        String spread = once(dice, 2) ? " +- " + (1 + dice.nextInt(4)) + " g" : "";
        return switch (dice.nextInt(4)) {
            case 0 -> List.of("--mass", weight + spread);
            case 1 ->
                List.of("--press", List.of("light", "firm", "hard", "40 kPa").get(dice.nextInt(4)));
            default -> List.of("--fill", weight + spread);
        };
    }

    private static List<String> load(SplittableRandom dice) {
        return switch (dice.nextInt(6)) {
            case 0 -> List.of("--on-top", (1 + dice.nextInt(6)) + " g coarse salt");
            case 1 -> List.of("--inside", (2 + dice.nextInt(9)) + " g, " + (3 + dice.nextInt(9)) + " mL");
            default -> List.of();
        };
    }

    private static List<String> drying(SplittableRandom dice) {
        List<String> words = new ArrayList<>(List.of(
                "--air",
                (12 + dice.nextInt(16)) + " C, " + (once(dice, 4) ? 75 + dice.nextInt(15) : 35 + dice.nextInt(35))
                        + " %"));
        words.addAll(List.of("--dry-for", (1 + dice.nextInt(5)) + " d"));
        if (once(dice, 5)) {
            words.addAll(List.of("--wrap-after", "1 d", "--wrap", once(dice, 2) ? "shrink film" : "polyethylene bag"));
        }
        if (once(dice, 4)) {
            words.addAll(List.of("--stored", (10 + dice.nextInt(90)) + " d"));
            if (once(dice, 2)) {
                words.addAll(List.of("--stored-air", "16 C, " + (40 + dice.nextInt(45)) + " %"));
            }
        }
        return words;
    }

    private static List<String> bath(SplittableRandom dice, boolean hollow) {
        List<String> words = new ArrayList<>();
        if (once(dice, 3)) {
            words.addAll(List.of("--bath", (34 + dice.nextInt(8)) + " C, " + (15 + dice.nextInt(25)) + " cm"));
        }
        if (once(dice, 6)) {
            words.addAll(List.of("--bath-salt", (1 + dice.nextInt(20)) * 50 + " g"));
        }
        if (hollow && once(dice, 2)) {
            words.addAll(List.of("--into-bath", "dropped"));
        }
        return words;
    }

    private static boolean once(SplittableRandom dice, int in) {
        return dice.nextInt(in) == 0;
    }
}
