package org.fizzhull.shape;

import java.util.List;
import java.util.Locale;
import org.fizzhull.quantity.Refusal;

/**
 * Shapes as people write them: {@code dome(diameter=80 mm, height=35 mm)}. {@link Shape#text} writes the canonical form,
 * which reads back to an equal shape; blanks and capitals do not matter, and {@code ball}, {@code half}, {@code cube},
 * {@code doughnut} and {@code tablet} are read too.
 *
 * <p>What cannot be read is a {@link Refusal} with the field {@code shape}, or {@code shape: diameter} for a parameter,
 * and one of the codes missing-value, not-a-shape, unbalanced, extra-text, unknown-shape, unknown-key, missing-key,
 * repeated-key, not-a-number, unknown-family, out-of-range, not-yet, or one of {@code QuantityText}.
 */
public final class ShapeText {
    private ShapeText() {}

    /** Reads a shape. */
    public static Shape read(String text) {
        ShapeCall call = ShapeCall.read(text);
        if (call.name().equals("cube")) {
            return cube(call);
        }
        return make(new ShapeArguments(kind(call.name()), call));
    }

    /** The kind of that name or alias. */
    public static ShapeKind kind(String name) {
        String word = name.trim().toLowerCase(Locale.ROOT);
        for (ShapeKind kind : ShapeKinds.all()) {
            if (kind.isCalled(word)) {
                return kind;
            }
        }
        if (word.equals("mesh") || word.equals("revolved")) {
            throw new Refusal(
                    "not-yet",
                    "shape",
                    word,
                    "one of " + NearestName.list(names(), "or"),
                    "Shapes from files are not read yet. Fill the mould with water, weigh the water and write"
                            + " filled(water=143 g, like=figure).");
        }
        throw new Refusal(
                "unknown-shape",
                "shape",
                ShapeCall.shown(name),
                "one of " + NearestName.list(names(), "or"),
                NearestName.hint(word, ShapeKinds.names()));
    }

    /** An example of the kind of that name, or of any where there is none. */
    static String exampleOf(String name) {
        for (ShapeKind kind : ShapeKinds.all()) {
            if (kind.isCalled(name)) {
                return kind.example();
            }
        }
        return ShapeKinds.all().get(0).example();
    }

    private static Shape make(ShapeArguments of) {
        return switch (of.kind().name()) {
            case "sphere" -> new Sphere(of.length("diameter"), of.length("seam", 0));
            case "dome" ->
                of.has("height")
                        ? new Dome(of.length("diameter"), of.length("height"))
                        : Dome.ofDiameter(of.length("diameter"));
            case "bowl" -> new Bowl(of.length("diameter"), of.length("wall"));
            case "geode" -> new Geode(of.length("diameter"), of.length("wall"), of.mass("crystals"));
            case "puck" -> new Puck(of.length("diameter"), of.length("height"), of.length("edge", 0));
            case "egg" -> new Egg(of.length("length"), of.length("diameter"));
            case "ring" -> new Ring(of.length("diameter"), of.length("tube"));
            case "block" ->
                new Block(of.length("length"), of.length("width"), of.length("height"), of.length("edge", 0));
            case "cone" -> new Cone(of.length("diameter"), of.length("height"), of.length("top", 0));
            case "capsule" -> new Capsule(of.length("length"), of.length("diameter"));
            case "star" -> new Star(of.count("points"), of.length("diameter"), of.length("inner"), of.length("height"));
            case "heart" -> new Heart(of.length("width"), of.length("height"));
            case "filled" ->
                new Filled(of.mass("water"), Filled.Family.named(of.word("like").toLowerCase(Locale.ROOT)));
            default ->
                throw new IllegalStateException(
                        "a kind without a maker: " + of.kind().name());
        };
    }

    private static Shape cube(ShapeCall call) {
        for (int i = 0; i < call.keys().size(); i++) {
            String key = call.keys().get(i);
            if (key.equals("width") || key.equals("height")) {
                throw new Refusal(
                        "unknown-key",
                        SizeCheck.field(key),
                        key + "=" + ShapeCall.shown(call.values().get(i)),
                        "side and edge of a cube",
                        "With unequal sides it is a " + exampleOf("block") + ".");
            }
            if (key.equals("length") && !call.keys().contains("side")) {
                call.keys().set(i, "side");
            }
        }
        ShapeArguments of = new ShapeArguments(ShapeKinds.CUBE, call);
        double side = of.length("side");
        SizeCheck.size("side", side);
        return new Block(side, side, side, of.length("edge", 0));
    }

    private static String[] names() {
        List<ShapeKind> all = ShapeKinds.all();
        String[] names = new String[all.size()];
        for (int i = 0; i < names.length; i++) {
            names[i] = all.get(i).name();
        }
        return names;
    }
}
