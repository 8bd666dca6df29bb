package org.fizzhull.forecast.attitude;

import org.fizzhull.forecast.result.FloatingAttitude;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Filled;
import org.fizzhull.shape.load.Loaded;

/**
 * Which way up a piece lies, and so which face shows, in the words of a bench: {@code flat side down}. The words depend
 * on the kind of shape: a ball has no sides, a dome a flat one, a block three axes, a mesh the axes of its file. Angles
 * are those between the direction that points up and the axis as listed. The words are for people, no key of results.
 * Stateless.
 */
public final class LiesWords {
    /** Cosine of the lean, 8 degrees, up to which a piece counts as straight. */
    private static final double UPRIGHT = 0.99;

    /** Sine of the lean, 15 degrees, from which a side counts as one of those that show. */
    private static final double SEEN = 0.26;

    /** Axes of the body frame, in the order of the components. */
    private static final String[] AXES = {"x", "y", "z"};

    private LiesWords() {}

    /**
     * {@return the way it lies, and whether what is on top shows: {@code flat side down, the coarse sea salt in sight}}
     *
     * @param shape the piece, with what it carries
     * @param rest how it rests
     */
    public static String of(Shape shape, FloatingAttitude rest) {
        String topping = topping(shape, rest);
        return way(shape, rest) + (topping.isEmpty() ? "" : ", " + topping);
    }

    /**
     * {@return whether what is on top shows: {@code the coarse sea salt in sight}; empty where nothing is}
     *
     * @param shape the piece, with what it carries
     * @param rest how it rests
     */
    public static String topping(Shape shape, FloatingAttitude rest) {
        if (rest.topping() == FloatingAttitude.Topping.NONE || !(shape instanceof Loaded loaded)) {
            return "";
        }
        String name = loaded.toppings().size() == 1
                ? "the " + loaded.toppings().get(0).name() + ' '
                : "the topping ";
        return switch (rest.topping()) {
            case SHOWS -> name + "in sight";
            case AT_WATER_LINE -> name + "at the water line";
            default -> name + "under water";
        };
    }

    /**
     * {@return the way it lies alone: {@code flat side down}}
     *
     * @param shape the piece
     * @param rest how it rests
     */
    public static String way(Shape shape, FloatingAttitude rest) {
        Shape bare = shape.bare();
        Shape like = bare instanceof Filled filled ? filled.body() : bare;
        return wayOf(like, rest);
    }

    /** Words of a shape of a known kind; of another one by its axis as listed. */
    private static String wayOf(Shape shape, FloatingAttitude rest) {
        // lean of the listed axis: straight up, straight down, level, or in between
        Vec3 up = rest.up();
        boolean upright = up.z() > UPRIGHT;
        boolean over = up.z() < -UPRIGHT;
        boolean sideways = Math.abs(up.z()) < 1 - UPRIGHT;
        String tilted = "tilted, " + lean(up.z()) + " degrees over";
        return switch (shape.kind()) {
            case "sphere" ->
                rest.turnsFreely()
                        ? "any way up"
                        : upright ? "its top up" : over ? "its top down" : sideways ? "on its side" : tilted;
            case "dome" -> upright ? "flat side down" : over ? "flat side up" : tilted;
            case "bowl", "geode" -> upright ? "open side up" : over ? "open side down" : tilted;
            case "cone" -> upright ? "wide face down" : over ? "point down" : sideways ? "on its side" : tilted;
            case "puck", "ring", "star", "heart" -> upright || over ? "lying flat" : sideways ? "on its edge" : tilted;
            case "egg", "capsule" -> upright || over ? "upright" : sideways ? "on its side" : tilted;
            case "block" -> block(up);
            case "mesh" -> mesh(up);
            default -> upright ? "as listed" : over ? "upside down" : sideways ? "on its side" : tilted;
        };
    }

    /** Which edge of a block stands upright. */
    private static String block(Vec3 up) {
        double x = Math.abs(up.x());
        double y = Math.abs(up.y());
        double z = Math.abs(up.z());
        double largest = Math.max(x, Math.max(y, z));
        if (largest < UPRIGHT) {
            return "tilted, a corner or an edge down";
        }
        return largest == z ? "its height upright" : largest == x ? "its length upright" : "its width upright";
    }

    /** By the axes of its file: the side that shows, or the sides it shows between. */
    private static String mesh(Vec3 up) {
        double[] part = {up.x(), up.y(), up.z()};
        StringBuilder sides = new StringBuilder();
        int seen = 0;
        int first = 0;
        // by size, the largest first
        for (double bound = 2; seen < 3; seen++) {
            int next = -1;
            for (int k = 0; k < 3; k++) {
                double size = Math.abs(part[k]);
                if (size > SEEN && size < bound && (next < 0 || size > Math.abs(part[next]))) {
                    next = k;
                }
            }
            if (next < 0) {
                break;
            }
            bound = Math.abs(part[next]);
            first = seen == 0 ? next : first;
            sides.append(seen == 0 ? "" : " and ")
                    .append(part[next] > 0 ? '+' : '-')
                    .append(AXES[next]);
        }
        if (seen > 1) {
            return "tilted, what is between " + sides + " of the file shows";
        }
        // one side shows: straight up by the file's axis, or leaning
        boolean straight = Math.abs(part[first]) > UPRIGHT;
        String how = !straight
                ? "tilted by " + lean(Math.abs(part[first])) + " degrees"
                : first != 2 ? "on its side" : up.z() > 0 ? "as in the file" : "upside down against the file";
        return how + ", its " + sides + " side shows";
    }

    /** The angle of a cosine in whole degrees. */
    private static String lean(double cosine) {
        return Long.toString(Math.round(Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, cosine))))));
    }
}
