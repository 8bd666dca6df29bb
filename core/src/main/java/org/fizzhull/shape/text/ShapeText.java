package org.fizzhull.shape.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Block;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Capsule;
import org.fizzhull.shape.kind.Cone;
import org.fizzhull.shape.kind.Dome;
import org.fizzhull.shape.kind.Egg;
import org.fizzhull.shape.kind.Filled;
import org.fizzhull.shape.kind.Geode;
import org.fizzhull.shape.kind.Heart;
import org.fizzhull.shape.kind.Puck;
import org.fizzhull.shape.kind.Ring;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.kind.Star;
import org.fizzhull.shape.listing.ShapeKind;
import org.fizzhull.shape.listing.ShapeKinds;
import org.fizzhull.shape.meshed.MeshShape;
import org.fizzhull.shape.size.FileName;
import org.fizzhull.shape.size.SizeCheck;
import org.fizzhull.text.NearName;
import org.jspecify.annotations.Nullable;

/**
 * Shapes as people write them: {@code dome(diameter=80 mm, height=35 mm)}. {@link Shape#text} writes the canonical
 * form, which reads back to an equal shape; blanks and capitals do not matter, and {@code ball}, {@code half}, {@code
 * cube}, {@code doughnut} and {@code tablet} are read too.
 * <pre>{@code
 * Shape dome = ShapeText.read("dome(diameter=80 mm, height=35 mm)");
 * Shape figure = ShapeText.read("mesh(file=\"duck.stl\", unit=mm)", files);   // files: a ShapeFiles of the caller
 * }</pre>
 *
 * <p>What cannot be read is a {@link Refusal} with the field {@code shape}, or {@code shape: diameter} for a parameter,
 * and one of the codes missing-value, not-a-shape, unbalanced, extra-text, unknown-shape, unknown-key, missing-key,
 * repeated-key, not-a-number, unknown-family, unknown-word, unknown-unit, bad-file-name, out-of-range, no-files, or one
 * of {@code QuantityText}. Stateless.
 */
public final class ShapeText {
    private ShapeText() {}

    /**
     * Reads a shape that needs no file.
     *
     * @param text shape text, for example {@code sphere(diameter=65 mm)}
     * @return the shape
     * @throws Refusal for a text that is no shape, and {@code no-files} for a kind that needs a file
     */
    public static Shape read(String text) {
        return read(text, null);
    }

    /**
     * Reads a shape; {@code files} opens the file of a mesh or an outline, and is only asked where one is named.
     *
     * @param text shape text
     * @param files opens named files; null where there are none
     * @return the shape
     * @throws Refusal for a text that is no shape, or as {@code files} refuses
     */
    public static Shape read(String text, @Nullable ShapeFiles files) {
        // a cube is read as a block with one size
        ShapeCall call = ShapeCall.read(text);
        if (call.name().equals("cube")) {
            return cube(call);
        }
        ShapeKind kind = kind(call.name());
        ShapeArguments of = new ShapeArguments(kind, call);
        return kind.readsFile() ? ofFile(kind, of, files) : make(of);
    }

    /** The shape whose form stands in a file, as the caller's {@code files} opens it. */
    private static Shape ofFile(ShapeKind kind, ShapeArguments of, @Nullable ShapeFiles files) {
        String file = FileName.checked(of.word("file"));
        if (files == null) {
            throw new Refusal(
                    "no-files",
                    SizeCheck.field("file"),
                    file,
                    "a shape with its sizes",
                    "No file is opened here: read the shape with ShapeFiles, or make a MeshShape or RevolvedShape.");
        }
        if (!kind.name().equals("mesh")) {
            return files.revolved(file);
        }
        // a mesh file holds the piece, or with piece=hollow the mould around it
        Shape body = files.mesh(file, of.has("unit") ? unit(of.word("unit")) : null);
        return of.has("piece") ? piece(of.word("piece"), body) : body;
    }

    /** The body itself, or what fills its hollow, as the word of {@code piece} says. */
    private static Shape piece(String word, Shape body) {
        if (word.equals("body")) {
            return body;
        }
        if (word.equals("hollow") && body instanceof MeshShape mesh) {
            return mesh.filling();
        }
        throw new Refusal(
                "unknown-word",
                SizeCheck.field("piece"),
                ShapeCall.shown(word),
                "body or hollow",
                "Write piece=hollow where the file is that of a mould, else leave it out.");
    }

    /** The unit of length of that name; the names are those of {@link Unit}, where m and M are not the same. */
    private static Unit unit(String word) {
        for (Unit unit : Unit.values()) {
            if (unit.dimension() == Dimension.LENGTH && unit.names().contains(word)) {
                return unit;
            }
        }
        throw new Refusal(
                "unknown-unit",
                SizeCheck.field("unit"),
                ShapeCall.shown(word),
                "mm, cm, m, in, ft or um",
                "A mesh file carries no unit: most programs write millimetres, unit=mm.");
    }

    /**
     * {@return the kind of that name or alias}
     *
     * @param name name or alias; capitals do not matter
     * @throws Refusal {@code unknown-shape}, with the nearest name
     */
    static ShapeKind kind(String name) {
        // a cube is written like a kind of its own but is no kind: it is listed as a block
        String word = name.trim().toLowerCase(Locale.ROOT);
        ShapeKind kind = known(word);
        if (kind != null && !kind.name().equals(ShapeKinds.CUBE.name())) {
            return kind;
        }
        throw unknown(name);
    }

    /** No kind has that name or alias. */
    static Refusal unknown(String name) {
        return new Refusal(
                "unknown-shape",
                "shape",
                ShapeCall.shown(name),
                "one of " + NearName.list(names(), "or"),
                orElse(
                        NearName.hint(name.trim().toLowerCase(Locale.ROOT), ShapeKinds.names()),
                        "Write one of them with its sizes: " + exampleOf("") + "."));
    }

    /** The kind of that name or alias, or null. */
    static @Nullable ShapeKind known(String name) {
        if (ShapeKinds.CUBE.isCalled(name)) {
            return ShapeKinds.CUBE;
        }
        for (ShapeKind kind : ShapeKinds.all()) {
            if (kind.isCalled(name)) {
                return kind;
            }
        }
        for (ShapeKind kind : ShapeKinds.ofFiles()) {
            if (kind.isCalled(name)) {
                return kind;
            }
        }
        return null;
    }

    /** An example of the kind of that name, or of any where there is none. */
    static String exampleOf(String name) {
        ShapeKind kind = known(name);
        return (kind == null ? ShapeKinds.all().get(0) : kind).example();
    }

    /** A shape of a kind that needs no file; sizes are checked by its constructor. */
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

    /**
     * A block with equal sides: {@code side}, or {@code length} for it. Other sides are refused with the text of a
     * block.
     */
    private static Shape cube(ShapeCall call) {
        // the one size may be called length as well
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

    /** Names of every kind, without aliases, as a refusal lists them. */
    private static List<String> names() {
        List<String> names = new ArrayList<>();
        for (ShapeKind kind : ShapeKinds.all()) {
            names.add(kind.name());
        }
        for (ShapeKind kind : ShapeKinds.ofFiles()) {
            names.add(kind.name());
        }
        return names;
    }

    /** The hint, or another sentence where there is none. */
    private static String orElse(String hint, String other) {
        return hint.isEmpty() ? other : hint;
    }
}
