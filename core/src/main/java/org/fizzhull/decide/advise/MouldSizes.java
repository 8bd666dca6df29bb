package org.fizzhull.decide.advise;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fizzhull.decide.Mould;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.listing.ShapeKinds;
import org.fizzhull.shape.text.ShapeText;

/**
 * Moulds that a maker may take in place of one. A mould of the same kind is one to four steps larger or smaller across, what
 * else lies across in proportion; heights, walls and tubes stay. One of another kind is the generic mould of that kind that
 * holds most nearly as much.
 */
final class MouldSizes {
    private static final int STEPS = 4;

    /** The sizes of shape text that lie across a piece; the first that a kind has is its largest. */
    private static final Pattern ACROSS = Pattern.compile("(diameter|length|width|inner)=([0-9.]+) mm");

    private MouldSizes() {}

    /** Moulds of the same kind, a step each, m, below 0 for smaller ones; none where the kind has no sizes of its own. */
    static List<Shape> others(Shape shape, double step) {
        List<Shape> moulds = new ArrayList<>();
        boolean sized = ShapeKinds.all().stream()
                .anyMatch(kind -> kind.name().equals(shape.bare().kind()));
        for (int k = 1; k <= STEPS && sized; k++) {
            resized(shape.text(), k * Units.inMillimetres(step)).ifPresent(moulds::add);
        }
        return moulds;
    }

    /**
     * The shape of a text with everything across scaled so that the first size grows by {@code more} mm; empty where there is no
     * such shape.
     */
    private static Optional<Shape> resized(String text, double more) {
        Matcher sizes = ACROSS.matcher(text);
        StringBuilder other = new StringBuilder();
        double ratio = 0;
        while (sizes.find()) {
            double size = Double.parseDouble(sizes.group(2));
            ratio = ratio == 0 ? (size + more) / size : ratio;
            sizes.appendReplacement(
                    other, sizes.group(1) + '=' + Decimals.text(rounded(size * ratio, more), 6) + " mm");
        }
        // no size across in the text, or none left of it
        if (!(ratio > 0)) {
            return Optional.empty();
        }
        try {
            return Optional.of(ShapeText.read(sizes.appendTail(other).toString()));
        } catch (Refusal refusal) {
            return Optional.empty(); // no such mould: its walls would meet, say
        }
    }

    /** To tenths of a millimetre; to hundredths where the step itself has them, as a part of an inch does. */
    private static double rounded(double millimetres, double more) {
        double parts = Math.abs(more * 10 - Math.rint(more * 10)) < 1e-6 ? 10 : 100;
        return Math.rint(parts * millimetres) / parts;
    }

    /**
     * {@return one generic mould of each other kind, that whose volume is nearest}
     *
     * @param shape the mould as it is
     */
    static List<Shape> otherKinds(Shape shape) {
        Map<String, Shape> nearest = new LinkedHashMap<>();
        for (Mould mould : Mould.catalogue()) {
            Shape other = mould.shape();
            if (!other.kind().equals(shape.bare().kind()) && other.insetMass() == 0) {
                nearest.merge(other.kind(), other, (a, b) -> apart(a, shape) <= apart(b, shape) ? a : b);
            }
        }
        return List.copyOf(nearest.values());
    }

    /** How far two volumes are apart, on a logarithmic scale. */
    private static double apart(Shape one, Shape two) {
        return Math.abs(Math.log(one.volume() / two.volume()));
    }
}
