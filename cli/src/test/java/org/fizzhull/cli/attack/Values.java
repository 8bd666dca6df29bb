package org.fizzhull.cli.attack;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/** A value for each option: one that the program should take, or one from the ends of its range. */
final class Values {
    private static final String[] SIGNS = {
        "sank", "sank-later", "rose-late", "puffed", "cracked", "crumbled", "soft", "weak-fizz", "tipped", "never-dried"
    };

    private final Workspace files;
    private final Map<String, Function<Dice, String>> makers = new LinkedHashMap<>();

    /** Volume of the shape of this line, cm3: weights are drawn around it. */
    private double volume = 144;

    Values(Workspace files) {
        this.files = files;
        put("shape", dice -> dice.once(10) ? Shapes.any(dice, files) : Shapes.good(dice, files));
        put("mass", dice -> weight(dice, 0.4, 1.5));
        put("density", dice -> number(dice.between(0.25, 2.2)) + " g/cm3" + (dice.once(4) ? " +- 0.02 g/cm3" : ""));
        put("fill", dice -> weight(dice, 0.6, 1.6));
        put("press", Values::press);
        put("recipe", files::recipe);
        put("change", Values::change);
        put("cups", dice -> dice.of("us-legal", "metric", "us-customary"));
        put("air", Values::air);
        put("stored-air", Values::air);
        put("dry-for", Values::time);
        put("wrap-after", Values::time);
        put("stored", Values::time);
        put("on", dice -> dice.of("rack", "tray", "cloth", "mould"));
        put(
                "wrap",
                dice -> dice.of(
                        "shrink film", "cling film", "polyethylene bag", "polypropylene bag", "jar", "none", "paper"));
        put(
                "room",
                dice -> dice.once(6)
                        ? dice.of("8 x 8 x 8 ft", "2x3x4", "3 m x 4 m x 250 cm", "1e9 x 1e9 x 1e9 m", "x", "25,5 m3")
                        : dice.spread(0.1, 1e5) + " m3"
                                + dice.of(
                                        "",
                                        ", 0.5 changes/h",
                                        ", 0 changes/h, dehumidifier 300 g/d",
                                        ", 100 changes/h",
                                        ", dehumidifier 1 L/h"));
        put("pieces", dice -> Integer.toString((int) dice.spread(1, 100_000)));
        put("bath", Values::bath);
        put("bath-salt", dice -> number(dice.spread(0.1, 30_000)) + " g");
        put("into-bath", dice -> dice.of("placed", "dropped"));
        put("measured", dice -> dice.of("nominal", "ruler", "calipers", "water"));
        put("measured-fizz", dice -> stopwatch(dice, 10, 3600) + at(dice));
        put("measured-rise", dice -> stopwatch(dice, 1, 1000) + at(dice) + dice.of("", "", ", 40 mm left"));
        put("measured-lift", dice -> weight(dice, 0.6, 1.3) + " after " + number(dice.spread(1, 60)) + " s" + at(dice));
        put("measured-result", dice -> dice.of("sank", "floated", "rose", "Sank", "flew") + at(dice));
        put("weighed", this::weighed);
        put("on-top", Values::topping);
        put("inside", this::inside);
        put(
                "tap-alkalinity",
                dice -> dice.of("2 mmol/L", "0 mmol/L", "100 mmol/L", "120 mg/L as CaCO3", "14 dKH", "5.1 mmol/L"));
        put("seed", dice -> dice.of("1", "0", "-1", "9223372036854775807", "-9223372036854775808", "77"));
        put(
                "samples",
                dice -> dice.of(
                        "128",
                        "128",
                        "128",
                        "128",
                        "0",
                        "0",
                        "64",
                        "127",
                        "1",
                        "-0",
                        "+128",
                        "00128",
                        "128.0",
                        "1048577",
                        "\uff11\uff12\uff18"));
        put("threads", dice -> dice.of("1", "2", "8"));
        put("mix-size", dice -> number(dice.spread(1, 5000)) + " g");
        put(
                "start",
                dice -> dice.of(
                        "2026-08-14 18:30",
                        "2026-02-28 23:59",
                        "+999999999-12-31 23:59",
                        "0001-01-01 00:00",
                        "-999999999-01-01 00:00",
                        "1582-10-10 12:00",
                        "2026-08-14 24:00",
                        "2026-12-31T23:59",
                        "0000-01-01 00:00"));
        put(
                "sell-by",
                dice -> dice.of(
                        "2026-08-20",
                        "2026-08-14 18:31",
                        "+999999999-12-31 23:59",
                        "9999-12-31",
                        "0001-01-01",
                        "-0001-12-31",
                        "2028-02-29"));
        put(
                "ready-by",
                dice -> dice.of("2026-08-20", "2026-08-14 18:31", "9999-12-31", "+999999999-12-31", "0001-01-01"));
        put("log", files::log);
        put("chart", dice -> files.written(dice, ".svg", ".svg", ".svg", ".png"));
        put("report", dice -> files.written(dice, ".html"));
        put("out", dice -> files.written(dice, ".yaml"));
        put("trials", files::trials);
        put("moulds", dice -> dice.once(12) ? "built-in" : files.catalogue(dice));
        put("baths", dice -> "homes");
        put("sort", dice -> dice.of("float", "fizz", "dry", "cost"));
        put("saw", dice -> dice.of(SIGNS));
        put("seen", this::seen);
        put(
                "date",
                dice -> dice.of(
                        "2026-08-14",
                        "2026-02-29",
                        "today",
                        "9999-12-31",
                        "0000-00-00",
                        "0001-01-01",
                        "+10000-01-01",
                        "-999999999-01-01"));
        put("files", dice -> files.folder().toString());
        put("scale", dice -> dice.of("0.1 g", "1 g", "0.01 g", "5 g"));
        put("units", dice -> dice.of("us", "metric", "as-given"));
        put("powders", files::powders);
        put("bench", dice -> dice.once(4) ? files.recipe(dice) : files.bench(dice));
        put(
                "goal",
                dice -> dice.of(
                        "9 of 10", "1 of 2", "99 of 100", "999999 of 1000000", "1e-9 %", "99.9999999 %", "1/3"));
        put("keep", dice -> dice.of("water", "kaolin", "citric acid", "sodium bicarbonate", "sand", ""));
    }

    private void put(String option, Function<Dice, String> maker) {
        makers.put(option, maker);
    }

    /** The weights of the next line are those of a piece of this volume, cm3. */
    void around(double cubicCentimetres) {
        volume = cubicCentimetres > 0 && cubicCentimetres < 1e7 ? cubicCentimetres : 144;
    }

    /** A value for an option; a quantity of any kind for one that is new here. */
    String of(Dice dice, String option) {
        Function<Dice, String> maker = makers.get(option);
        return maker == null ? dice.of("1", "5 g", "20 C", "3 d", "lemon", "50 %") : maker.apply(dice);
    }

    /** The word that a command takes free of any option. */
    String free(Dice dice, String command) {
        return switch (command) {
            case "shapes" -> Shapes.any(dice, files);
            case "start" ->
                files.folder()
                        .resolve(dice.of("workshop", "my workshop", "ä", "deep/er"))
                        .toString();
            default -> dice.of("kaolin", "salt", "corn flour", "acid", "sls", "oil", "citric acid", "a");
        };
    }

    private String seen(Dice dice) {
        return dice.of("", "across " + Values.number(dice.between(20, 110)) + " mm, ")
                + Values.number(volume * dice.between(0.6, 1.4))
                + " g"
                + dice.of("", "", ", fizzed " + Values.number(dice.spread(1, 60)) + " min")
                + dice.of("", "", ", room " + Values.number(dice.between(0, 100)) + " %")
                + dice.of("", "", ", lost " + Values.number(dice.spread(0.01, 20)) + " g");
    }

    private String weight(Dice dice, double light, double heavy) {
        double density = dice.once(10) ? dice.spread(1e-3, 100) : dice.between(light, heavy);
        double grams = density * volume;
        String text = dice.once(8) ? number(grams / 28.349523125) + " oz" : number(grams) + " g";
        return switch (dice.below(8)) {
            case 0 -> text + " +- " + number(grams * dice.between(0, 0.1)) + " g";
            case 1 -> number(grams) + " to " + number(grams * dice.between(1, 1.1)) + " g";
            case 2 -> text + ", " + number(grams * dice.between(0.95, 1.05)) + " g";
            default -> text;
        };
    }

    private static String press(Dice dice) {
        String how = dice.once(2)
                ? dice.of("light", "firm", "hard")
                : dice.of(number(dice.spread(0.1, 2000)) + " kPa", number(dice.spread(0.1, 400)) + " kg");
        return how + dice.of("", "", "", ", one plunger", ", two halves");
    }

    private static String change(Dice dice) {
        return dice.of(
                        "kaolin",
                        "water",
                        "corn starch",
                        "citric acid",
                        "sodium bicarbonate",
                        "sunflower oil",
                        "table salt")
                + dice.of(" +", " -", " = ")
                + number(dice.spread(0.1, 500))
                + dice.of(" g", " g", " mL", " tsp", " cup");
    }

    private static String air(Dice dice) {
        String humidity = number(dice.once(3) ? dice.between(0, 100) : dice.between(30, 85)) + " %";
        return dice.once(4)
                ? "outside " + number(dice.between(-30, 40)) + " C, " + humidity + ", heated to "
                        + number(dice.between(5, 45)) + " C"
                : number(dice.once(3) ? dice.between(-10, 60) : dice.between(10, 32)) + " C, " + humidity;
    }

    private static String time(Dice dice) {
        return dice.of(
                number(dice.spread(0.1, 2000)) + " h",
                number(dice.spread(0.01, 400)) + " d",
                dice.of("3 d", "0.001 s", "3650 d", "1 min", "2 weeks", "36 h", "4.9e-324 d", "1e-12 h"));
    }

    private static String bath(Dice dice) {
        return number(dice.once(4) ? dice.between(0, 60) : dice.between(30, 42)) + " C"
                + dice.of("", "", ", " + number(dice.spread(1, 200)) + " cm")
                + dice.of("", "", ", " + number(dice.spread(1, 1000)) + " L");
    }

    private static String stopwatch(Dice dice, double low, double high) {
        double seconds = dice.spread(low, high);
        return dice.once(3) ? number(seconds / 60) + " min" : number(seconds) + " s";
    }

    private String at(Dice dice) {
        return dice.once(2) ? "" : " at " + weight(dice, 0.6, 1.4);
    }

    private String weighed(Dice dice) {
        return weight(dice, 0.6, 1.6)
                + dice.of("", " at firm", " at hard", " at " + number(dice.spread(1, 500)) + " kPa")
                + (dice.once(4) ? " in " + Shapes.good(dice, files) : "");
    }

    private static String topping(Dice dice) {
        return number(dice.spread(0.1, 60))
                + dice.of(" g", " g", " tsp", " mL")
                + " "
                + dice.of("coarse salt", "dried petals", "sugar", "table salt", "kaolin", "corn starch")
                + dice.of("", "", ", 1 g dried petals");
    }

    private String inside(Dice dice) {
        double millilitres = volume * dice.spread(1e-3, 0.6);
        return number(millilitres * dice.spread(0.1, 8))
                + " g, "
                + number(millilitres)
                + " mL"
                + dice.of("", "", ", 20 mm up", ", 10 mm up, 5 mm aside", ", 0 mm up");
    }

    static String number(double value) {
        return String.format(Locale.ROOT, value < 1 ? "%.5f" : "%.2f", value);
    }
}
