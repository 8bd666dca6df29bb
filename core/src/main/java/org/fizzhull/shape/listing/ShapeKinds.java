package org.fizzhull.shape.listing;

import static org.fizzhull.shape.listing.ShapeParameter.length;
import static org.fizzhull.shape.listing.ShapeParameter.mass;
import static org.fizzhull.shape.listing.ShapeParameter.maybe;
import static org.fizzhull.shape.listing.ShapeParameter.word;

import java.util.List;
import java.util.stream.Stream;

/**
 * The kinds of shape that can be written as text, as data: name, aliases, what it is, and its parameters with example
 * values. A new kind needs an entry here and a case in {@link ShapeText}.
 * <pre>{@code
 * for (ShapeKind kind : ShapeKinds.all()) {
 *     Shape example = ShapeText.read(kind.example());
 * }
 * }</pre>
 *
 * <p>Immutable.
 */
public final class ShapeKinds {
    /** The rounding that puck, block and cube share. */
    private static final ShapeParameter EDGE = maybe("edge", "radius of the rounded edges", "sharp", "4 mm");

    /** Kinds that need no file, in the order in which they are listed. */
    private static final List<ShapeKind> ALL = List.of(
            new ShapeKind(
                    "sphere",
                    List.of("ball"),
                    "A ball.",
                    List.of(
                            length("diameter", "diameter", "65 mm"),
                            maybe("seam", "belt left between two overfilled halves", "none", "2 mm"))),
            new ShapeKind(
                    "dome",
                    List.of("half"),
                    "Half a ball, or a flatter cap, on its flat base.",
                    List.of(
                            length("diameter", "diameter of the base", "80 mm"),
                            maybe("height", "height, up to half the diameter", "half the diameter", "35 mm"))),
            new ShapeKind(
                    "bowl",
                    List.of(),
                    "Half of a hollow ball, open side up.",
                    List.of(length("diameter", "outer diameter", "90 mm"), length("wall", "wall thickness", "15 mm"))),
            new ShapeKind(
                    "geode",
                    List.of(),
                    "A bowl whose hollow is lined with crystals; its volume and surface leave them out.",
                    List.of(
                            length("diameter", "outer diameter", "80 mm"),
                            length("wall", "wall thickness of the shell", "14 mm"),
                            mass("crystals", "mass of the crystals", "20 g"))),
            new ShapeKind(
                    "puck",
                    List.of("tablet", "cylinder"),
                    "A flat round tablet.",
                    List.of(length("diameter", "diameter", "70 mm"), length("height", "height", "30 mm"), EDGE)),
            new ShapeKind(
                    "egg",
                    List.of(),
                    "An egg with two equal ends, standing on one.",
                    List.of(length("length", "length", "70 mm"), length("diameter", "diameter across", "50 mm"))),
            new ShapeKind(
                    "ring",
                    List.of("doughnut"),
                    "A ring with a round tube, lying flat.",
                    List.of(
                            length("diameter", "outer diameter", "90 mm"),
                            length("tube", "diameter of the tube", "30 mm"))),
            new ShapeKind(
                    "block",
                    List.of("cube"),
                    "A bar; cube(side=50 mm) where all sides are equal.",
                    List.of(
                            length("length", "length", "60 mm"),
                            length("width", "width", "40 mm"),
                            length("height", "height", "30 mm"),
                            EDGE)),
            new ShapeKind(
                    "cone",
                    List.of(),
                    "A cone on its base, or cut flat at the top.",
                    List.of(
                            length("diameter", "diameter of the base", "60 mm"),
                            length("height", "height", "70 mm"),
                            maybe("top", "diameter of the flat top", "pointed", "20 mm"))),
            new ShapeKind(
                    "capsule",
                    List.of(),
                    "A cylinder with round ends, standing on one.",
                    List.of(length("length", "whole length", "80 mm"), length("diameter", "diameter", "35 mm"))),
            new ShapeKind(
                    "star",
                    List.of(),
                    "An upright star.",
                    List.of(
                            new ShapeParameter("points", ShapeParameter.Takes.COUNT, "number of points", true, "", "5"),
                            length("diameter", "diameter over the points", "80 mm"),
                            length("inner", "diameter over the notches", "45 mm"),
                            length("height", "height", "30 mm"))),
            new ShapeKind(
                    "heart",
                    List.of(),
                    "An upright heart: a square with half a disc on two sides.",
                    List.of(length("width", "width across the lobes", "70 mm"), length("height", "height", "28 mm"))),
            new ShapeKind(
                    "filled",
                    List.of(),
                    "A mould known by the water that fills it, weighed at room temperature.",
                    List.of(
                            mass("water", "mass of the water", "143 g"),
                            new ShapeParameter(
                                    "like",
                                    ShapeParameter.Takes.WORD,
                                    "what it resembles: sphere, dome, puck, heart, shell or figure",
                                    true,
                                    "",
                                    "shell"))));

    /** Kinds whose form stands in a file. */
    private static final List<ShapeKind> OF_FILES = List.of(
            new ShapeKind(
                    "mesh",
                    List.of(),
                    "Any closed body from an STL or 3MF file, z up.",
                    List.of(
                            word("file", "name of the file", "\"a thing.stl\""),
                            new ShapeParameter(
                                    "unit",
                                    ShapeParameter.Takes.WORD,
                                    "unit of the file: mm, cm, m, in, ft or um; 3MF names its own",
                                    false,
                                    "its own",
                                    "mm"),
                            new ShapeParameter(
                                    "piece",
                                    ShapeParameter.Takes.WORD,
                                    "body, or hollow where the file is the mould: what fills its hollow to the rim",
                                    false,
                                    "body",
                                    "hollow"))),
            new ShapeKind(
                    "revolved",
                    List.of(),
                    "Any round body from the outline of one half: a CSV file with the columns r_mm, z_mm.",
                    List.of(word("file", "name of the file", "\"profile.csv\""))));

    /** How a cube is written: a block in the end. */
    public static final ShapeKind CUBE = new ShapeKind(
            "cube", List.of(), "A block with equal sides.", List.of(length("side", "length of a side", "50 mm"), EDGE));

    private ShapeKinds() {}

    /** {@return the kinds whose form stands in a file; {@link ShapeText} needs {@link ShapeFiles} for them} */
    public static List<ShapeKind> ofFiles() {
        return OF_FILES;
    }

    /** {@return every kind that needs no file, in the order in which they are listed} */
    public static List<ShapeKind> all() {
        return ALL;
    }

    /** Names of every kind, then the aliases: what a misspelt name is compared with. */
    public static List<String> names() {
        Stream<String> kinds = Stream.concat(OF_FILES.stream(), ALL.stream()).map(ShapeKind::name);
        return Stream.concat(kinds, ALL.stream().flatMap(kind -> kind.aliases().stream()))
                .toList();
    }
}
