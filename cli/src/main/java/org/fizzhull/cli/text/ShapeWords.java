package org.fizzhull.cli.text;

import org.fizzhull.geometry.Extents;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Capsule;
import org.fizzhull.shape.kind.Cone;
import org.fizzhull.shape.kind.Egg;
import org.fizzhull.shape.kind.Filled;
import org.fizzhull.shape.kind.Heart;
import org.fizzhull.shape.kind.Puck;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.kind.Star;

/** A shape with its size, in the words of a bench. */
public final class ShapeWords {
    private ShapeWords() {}

    /** The piece with its size and what it carries: {@code a 65 mm ball with 6 g of coarse sea salt on top}. */
    public static String piece(Shape shape) {
        String bare = bare(shape.bare());
        return bare + LoadWords.with(shape, bare.indexOf(',') >= 0);
    }

    /** The piece with its size as it closes round what is pressed in: {@code a 65 mm ball round a thing of 8 g}. */
    public static String round(Shape shape) {
        return bare(shape.bare()) + LoadWords.round(shape);
    }

    /** What the piece carries alone: {@code with 6 g of coarse sea salt on top}; empty where it carries nothing. */
    public static String load(Shape shape) {
        return LoadWords.with(shape, false).strip();
    }

    private static String bare(Shape shape) {
        if (shape instanceof Sphere ball) {
            return sized(ball.diameter(), "ball");
        } else if (shape instanceof Puck puck) {
            return sized(puck.diameter(), "puck") + ", " + NumberText.size(puck.height()) + " thick";
        } else if (shape instanceof Cone cone) {
            return sized(cone.diameter(), "cone") + ", " + NumberText.size(cone.height()) + " high";
        } else if (shape instanceof Egg egg) {
            return sized(egg.length(), "egg") + ", " + NumberText.size(egg.diameter()) + " across";
        } else if (shape instanceof Capsule capsule) {
            return sized(capsule.length(), "capsule") + ", " + NumberText.size(capsule.diameter()) + " across";
        } else if (shape instanceof Star star) {
            return sized(star.diameter(), "star");
        } else if (shape instanceof Heart heart) {
            return sized(heart.width(), "heart");
        } else if (shape instanceof Filled filled) {
            return "a piece from a mould that holds " + NumberText.grams(filled.water()) + " of water";
        } else if (shape.kind().equals("block")) {
            return "a block of " + box(shape.extents());
        }
        return sized(size(shape), noun(shape.kind()));
    }

    /** Length x width x height. */
    public static String box(Extents e) {
        return NumberText.size(e.length()) + " x " + NumberText.size(e.width()) + " x " + NumberText.size(e.height());
    }

    private static String noun(String kind) {
        return switch (kind) {
            case "mesh" -> "body from its mesh";
            case "revolved" -> "turned body";
            default -> kind;
        };
    }

    /** Of bodies from a file the largest side, of others their length. */
    private static double size(Shape shape) {
        Extents e = shape.extents();
        boolean ofFile = shape.kind().equals("mesh") || shape.kind().equals("revolved");
        return ofFile ? Math.max(e.length(), Math.max(e.width(), e.height())) : e.length();
    }

    private static String sized(double metres, String noun) {
        String size = NumberText.size(metres);
        boolean vowel = size.startsWith("8") || size.startsWith("11 ") || size.startsWith("18 ");
        return (vowel ? "an " : "a ") + size + ' ' + noun;
    }
}
