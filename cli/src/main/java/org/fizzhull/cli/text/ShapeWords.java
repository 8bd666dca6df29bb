package org.fizzhull.cli.text;

import org.fizzhull.shape.Capsule;
import org.fizzhull.shape.Cone;
import org.fizzhull.shape.Egg;
import org.fizzhull.shape.Extents;
import org.fizzhull.shape.Filled;
import org.fizzhull.shape.Heart;
import org.fizzhull.shape.Puck;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.Sphere;
import org.fizzhull.shape.Star;

/** A shape and the way it lies, in the words of a bench. */
public final class ShapeWords {
    private static final double UPRIGHT = 0.99;

    private ShapeWords() {}

    /** The piece with its size: {@code a 65 mm ball}. */
    public static String piece(Shape shape) {
        if (shape instanceof Sphere ball) {
            return sized(ball.diameter(), "ball");
        } else if (shape instanceof Puck puck) {
            return sized(puck.diameter(), "puck") + ", " + Say.size(puck.height()) + " thick";
        } else if (shape instanceof Cone cone) {
            return sized(cone.diameter(), "cone") + ", " + Say.size(cone.height()) + " high";
        } else if (shape instanceof Egg egg) {
            return sized(egg.length(), "egg") + ", " + Say.size(egg.diameter()) + " across";
        } else if (shape instanceof Capsule capsule) {
            return sized(capsule.length(), "capsule") + ", " + Say.size(capsule.diameter()) + " across";
        } else if (shape instanceof Star star) {
            return sized(star.diameter(), "star");
        } else if (shape instanceof Heart heart) {
            return sized(heart.width(), "heart");
        } else if (shape instanceof Filled filled) {
            return "a piece from a mould that holds " + Say.grams(filled.water()) + " of water";
        } else if (shape.kind().equals("block")) {
            return "a block of " + box(shape.extents());
        }
        return sized(size(shape), noun(shape.kind()));
    }

    /** Length x width x height. */
    public static String box(Extents e) {
        return Say.size(e.length()) + " x " + Say.size(e.width()) + " x " + Say.size(e.height());
    }

    /** Which side is up: {@code flat side down}. */
    public static String lies(Shape shape, double upX, double upY, double upZ) {
        boolean upright = upZ > UPRIGHT;
        boolean over = upZ < -UPRIGHT;
        boolean sideways = Math.abs(upZ) < 1 - UPRIGHT;
        String tilted =
                "tilted, " + Say.whole(Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, upZ))))) + " degrees over";
        return switch (shape.kind()) {
            case "sphere" -> "any way up";
            case "dome" -> upright ? "flat side down" : over ? "flat side up" : tilted;
            case "bowl", "geode" -> upright ? "open side up" : over ? "open side down" : tilted;
            case "cone" -> upright ? "wide face down" : over ? "point down" : sideways ? "on its side" : tilted;
            case "puck", "ring", "star", "heart" -> upright || over ? "lying flat" : sideways ? "on its edge" : tilted;
            case "egg", "capsule" -> upright || over ? "upright" : sideways ? "on its side" : tilted;
            case "block" -> block(upX, upY, upZ);
            default -> upright ? "as listed" : over ? "upside down" : sideways ? "on its side" : tilted;
        };
    }

    private static String block(double x, double y, double z) {
        double largest = Math.max(Math.abs(x), Math.max(Math.abs(y), Math.abs(z)));
        if (largest < UPRIGHT) {
            return "tilted, a corner or an edge down";
        }
        if (largest == Math.abs(z)) {
            return "its height upright";
        }
        return largest == Math.abs(x) ? "its length upright" : "its width upright";
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
        String size = Say.size(metres);
        boolean vowel = size.startsWith("8") || size.startsWith("11 ") || size.startsWith("18 ");
        return (vowel ? "an " : "a ") + size + ' ' + noun;
    }
}
