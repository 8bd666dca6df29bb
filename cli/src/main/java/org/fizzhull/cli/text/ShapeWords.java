package org.fizzhull.cli.text;

import org.fizzhull.shape.Extents;
import org.fizzhull.shape.Shape;

/** A shape and the way it lies, in the words of a bench. */
public final class ShapeWords {
    private static final double UPRIGHT = 0.99;

    private ShapeWords() {}

    /** The piece with its size: {@code a 65 mm ball}. */
    public static String piece(Shape shape) {
        Extents e = shape.extents();
        String across = Say.size(Math.max(e.length(), e.width()));
        String by = Say.size(e.length()) + " x " + Say.size(e.width()) + " x " + Say.size(e.height());
        return switch (shape.kind()) {
            case "sphere" -> article(across) + " ball";
            case "dome", "bowl", "geode", "star", "ring" -> article(across) + ' ' + shape.kind();
            case "heart" -> article(Say.size(e.width())) + " heart";
            case "puck" -> article(across) + " puck, " + Say.size(e.height()) + " thick";
            case "cone" -> article(across) + " cone, " + Say.size(e.height()) + " high";
            case "egg", "capsule" -> article(Say.size(e.height())) + ' ' + shape.kind() + ", " + across + " across";
            case "block" -> "a block of " + by;
            default -> "a piece (" + shape.text() + ')';
        };
    }

    /** Which side is up: {@code flat side down}. */
    public static String lies(Shape shape, double upX, double upY, double upZ) {
        boolean upright = upZ > UPRIGHT;
        boolean over = upZ < -UPRIGHT;
        boolean sideways = Math.abs(upZ) < 1 - UPRIGHT;
        String tilted = "tilted, " + Say.whole(Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, upZ))))) + " degrees over";
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

    private static String article(String size) {
        boolean vowel = size.startsWith("8") || size.startsWith("11 ") || size.startsWith("18 ");
        return (vowel ? "an " : "a ") + size;
    }
}
